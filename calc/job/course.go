package job

import (
	"saltbite/calc/field"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// Course is whether the piece is on course: by weight, by the ammeter, by the
// clock.
type Course struct {
	Heavier bool // it weighs more than before: it was plated

	Falls   bool              // the last reading is under half of the first
	NoLoss  bool              // next to nothing was lost where the charge should have taken much
	Telling quantity.Optional // kg, a loss that the balance shows well

	ChargeSoFar quantity.Optional // C
	DepthSoFar  quantity.Optional // m, by the ammeter
	ReadyIn     quantity.Range    // s

	DepthNow      quantity.Optional // m, by weight
	EfficiencyNow quantity.Optional
	TimeLeft      quantity.Optional // s

	HalfAt, ReadyAt              quantity.Optional // s after the midnight before the start
	WeightAtHalf, WeightAtTarget quantity.Optional // kg
}

func workCourse(fields *field.Set, barred Barred, law Law, hidden Hidden, b Bite) Course {
	before, after := fields.Amount(field.Before), fields.Amount(field.After)
	step := fields.Amount(field.Resolution).Or(quantity.Known(usualResolution))
	c := Course{Heavier: before.Known() && after.Known() && after.SI > before.SI, Telling: quantity.If(tellingSteps*step.SI, step)}
	if barred.Any() {
		return c
	}
	c = c.withReadings(law, b)
	if !b.Agrees {
		return c
	}
	if law.Known && quantity.Worst(before, after) == quantity.Given && b.Shape != quantity.Bad && !c.Heavier {
		weighed := trial.Weighing{Before: before.SI, After: after.SI, Law: law.Law, Work: onScale(b, hidden), Hanger: hidden.OnHanger.SI}
		c.NoLoss = c.noLoss(weighed, b)
		c = c.withWeighing(weighed, b)
	}
	c = c.withClock(fields, b)
	if law.Known && before.Known() && b.Area.Known() && b.Shape != quantity.Bad {
		c = c.withTargets(trial.Weighing{Before: before.SI, Law: law.Law, Work: onScale(b, hidden), Hanger: hidden.OnHanger.SI}, b)
	}
	return c
}

// withReadings adds what the ammeter says.
func (c Course) withReadings(law Law, b Bite) Course {
	if b.Read == nil {
		return c
	}
	c.ChargeSoFar = quantity.Known(b.Read.Charge())
	c.Falls = b.Read[len(b.Read)-1].Current < b.Read[0].Current/2
	if !law.Known || !b.Agrees || !b.Area.Known() || b.Shape == quantity.Bad {
		return c
	}
	c.DepthSoFar = quantity.Known(trial.DepthSoFar(law.Law, b.Piece(), b.Read.Charge()).SI)
	if !b.Depth.Known() || c.Falls {
		return c
	}
	target := law.Charge(b.Piece(), b.Depth.SI).SI
	c.ReadyIn = quantity.Alone(b.Read.ReadyIn(target))
	if c.ReadyIn.Known() {
		c.ReadyIn.High = unlessSame(b.Read.ReadyByTrend(target), c.ReadyIn.Optional)
	}
	return c
}

// withWeighing adds what the scale says.
func (c Course) withWeighing(weighed trial.Weighing, b Bite) Course {
	if !b.Area.Known() {
		return c
	}
	c.DepthNow = weighed.DepthNow()
	charge := b.ChargeSoFar()
	if !charge.Known() {
		return c
	}
	c.EfficiencyNow = weighed.EfficiencyNow(charge.SI)
	if current := b.currentNow(); b.Depth.Known() && current.Known() && weighed.Loss().SI > 0 && !c.NoLoss {
		c.TimeLeft = weighed.TimeLeft(charge.SI, b.Depth.SI, current.SI)
	}
	return c
}

// ChargeSoFar is what has flowed until the weighing, C: by the ammeter's
// readings, else the current for the running time so far.
func (b Bite) ChargeSoFar() quantity.Optional {
	if b.Read != nil {
		return quantity.Known(b.Read.Charge())
	}
	time := b.Elapsed.Or(b.Asked.Time)
	return quantity.If(b.Current.SI*time.SI, b.Current, time)
}

// Common practice, no source: a balance that nothing is said of, and how many of
// its steps a loss must have been worth before its absence says anything.
const (
	usualResolution = 1e-5 // kg, 0.01 g
	tellingSteps    = 5
)

// noLoss says whether less was lost than the balance shows where the charge
// should have taken far more.
func (c Course) noLoss(weighed trial.Weighing, b Bite) bool {
	charge := b.ChargeSoFar()
	if !c.Telling.Known() || !charge.Known() || !b.Area.Known() {
		return false
	}
	expected := weighed.Law.Density * weighed.Work.Volume(trial.DepthSoFar(weighed.Law, b.Piece(), charge.SI).SI).SI
	const rounded = 1 - 1e-9 // 2.07 g less 2.06 g is no less than 0.01 g
	return weighed.Loss().SI < c.Telling.SI/tellingSteps*rounded && expected > c.Telling.SI
}

// currentNow is the last reading, else the current.
func (b Bite) currentNow() quantity.Optional {
	if b.Read != nil {
		return quantity.Known(b.Read[len(b.Read)-1].Current)
	}
	return b.Current
}

// withClock adds when half time and the end are.
func (c Course) withClock(fields *field.Set, b Bite) Course {
	start, paused := fields.Amount(field.Start), fields.Amount(field.Paused).Or(quantity.Known(0))
	if left := c.TimeLeft.Or(c.ReadyIn.Optional); quantity.Worst(start, paused, b.Elapsed, left) == quantity.Given {
		c.ReadyAt = quantity.Known(start.SI + paused.SI + b.Elapsed.SI + left.SI)
		return c
	}
	if quantity.Worst(start, paused, b.Time) == quantity.Given && !b.Watched {
		c.HalfAt = quantity.Known(start.SI + b.Time.SI/2 + paused.SI)
		c.ReadyAt = quantity.Known(start.SI + b.Time.SI + paused.SI)
	}
	return c
}

// withTargets adds what the piece will weigh at half time and at the end.
func (c Course) withTargets(scale trial.Weighing, b Bite) Course {
	if b.Depth.Known() {
		c.WeightAtTarget = scale.WeightAt(b.Depth.SI)
	}
	if b.Current.Known() && b.Time.Known() && !b.Watched && !b.Stepped {
		half := scale.Law.Depth(b.Piece(), b.Current.SI, b.Time.SI/2).SI
		c.WeightAtHalf = scale.WeightAt(half)
	}
	return c
}
