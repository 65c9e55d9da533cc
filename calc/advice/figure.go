package advice

import (
	"math"

	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// figures are all answers, each in SI and in its place.
type figures [field.AnswerCount]quantity.Range

// figuresOf is the one place where what was worked out becomes answers.
func figuresOf(w *job.Worked) (f figures) {
	f[field.AnswerDepth] = w.Bite.Until.ReachedRange(w.Loss.Depth)
	f[field.AnswerTime] = w.Loss.Time
	if w.Fields.Given(field.Current) || !w.Barred.WrongBath { // what was found would be taken for what to set
		f[field.AnswerCurrent].Optional = w.Bite.Current
	}
	f[field.AnswerArea].Optional = w.Bite.Area
	f[field.AnswerTotalArea].Optional = w.Loss.Bare
	f[field.AnswerDensity].Optional = w.Bite.Density
	f[field.AnswerCharge].Optional = w.Loss.Charge
	f[field.AnswerRemoved].Optional = w.Loss.Removed
	f[field.AnswerRemovedEach].Optional = w.Loss.RemovedEach
	f[field.AnswerEquivalent] = w.Loss.Equivalent
	f[field.AnswerRate].Optional = w.Loss.Rate
	f[field.AnswerSuggestedDensity].Optional = w.Suggest.Density
	f[field.AnswerSuggestedCurrent].Optional = w.Suggest.Current
	f[field.AnswerSuggestedTime].Optional = w.Suggest.Time
	f[field.AnswerExtraFound].Optional = w.Hidden.Found
	f[field.AnswerDepthIfForgotten].Optional = w.Bite.Until.Reached(w.Effects.DepthIfForgotten)
	f[field.AnswerHangerLeft].Optional = w.Effects.HangerLeft
	f[field.AnswerLeft] = w.Sheet.Left
	f[field.AnswerLeftShare].Optional = w.Sheet.LeftShare
	f[field.AnswerDeepest] = w.Sheet.Deepest
	f[field.AnswerThinnestSheet].Optional = w.Sheet.Thinnest
	f[field.AnswerThinnestGauge].Optional = w.Sheet.Gauge
	f[field.AnswerLineLeft] = w.Lines.Left
	f[field.AnswerNarrowestLine] = w.Lines.Narrowest
	f[field.AnswerDeepestForLine] = w.Lines.Deepest
	f[field.AnswerSpaceBecomes] = w.Lines.Space
	f[field.AnswerFilmDensity] = w.Limits.Film
	f[field.AnswerCathodeLimit] = w.Limits.Cathode
	f[field.AnswerCathodeNeeded].Optional = w.Limits.CathodeNeeded
	f[field.AnswerBathResistance] = w.Circuit.Resistance
	f[field.AnswerCellVolts] = w.Circuit.CellVolts
	f[field.AnswerCurrentAtVolts].Optional = w.Circuit.CurrentAtVolts
	f[field.AnswerSupplyWatts].Optional = w.Circuit.SupplyWatts
	f[field.AnswerBallast].Optional = w.Circuit.Ballast
	f[field.AnswerBallastWatts].Optional = w.Circuit.BallastWatts
	f[field.AnswerWireDrop].Optional = w.Circuit.WireDrop
	f[field.AnswerWireLimit].Optional = w.Circuit.WireLimit
	f[field.AnswerWarming].Optional = w.Circuit.Warming
	f[field.AnswerCathodeDensity].Optional = w.Circuit.CathodeDensity
	f[field.AnswerDepthThatFits].Optional = w.Bite.Until.Reached(w.Circuit.DepthThatFits)
	f[field.AnswerTimeThatFits].Optional = w.Circuit.TimeThatFits
	f[field.AnswerPiecesThatFit].Optional = w.Circuit.PiecesThatFit
	f[field.AnswerVolume].Optional = w.Mix.Volume
	f[field.AnswerSuggestedStrength].Optional = w.Mix.Suggested
	f[field.AnswerConductivity].Optional = w.Standing.Conductivity
	f[field.AnswerSaturatesAt].Optional = w.Mix.SaturatesAt
	f[field.AnswerCathodeDeposit].Optional = w.Used.Deposit
	f[field.AnswerBathMetalLost].Optional = w.Used.MetalLost
	f[field.AnswerBathDrop].Optional = w.Used.Drop
	f[field.AnswerBathDropAll].Optional = w.Used.DropAll
	f[field.AnswerSaltToAdd].Optional = w.Used.SaltToAdd
	f[field.AnswerSludge].Optional = w.Used.Sludge
	f[field.AnswerHydrogen].Optional = w.Used.Hydrogen
	f[field.AnswerPiecesToTenth].Optional = w.Used.PiecesToTenth
	f[field.AnswerSaltToAddAll].Optional = w.Used.SaltToAddAll
	f[field.AnswerWaterToAdd].Optional = w.Standing.WaterToAdd
	f[field.AnswerAddSalt].Optional = w.Used.AddSalt
	f[field.AnswerAddWater].Optional = w.Used.AddWater
	f[field.AnswerPartA].Optional = w.Used.PartA
	f[field.AnswerPartB].Optional = w.Used.PartB
	f[field.AnswerStrengthByGravity].Optional = w.Used.ByGravity
	f[field.AnswerDepthNow].Optional = w.Course.DepthNow
	f[field.AnswerEfficiencyNow].Optional = w.Course.EfficiencyNow
	f[field.AnswerTimeLeft].Optional = w.Course.TimeLeft
	f[field.AnswerWeightAtTarget].Optional = w.Course.WeightAtTarget
	f[field.AnswerChargeSoFar].Optional = w.Course.ChargeSoFar
	f[field.AnswerDepthSoFar].Optional = w.Course.DepthSoFar
	f[field.AnswerReadyIn] = w.Course.ReadyIn
	f[field.AnswerHalfAt].Optional = w.Course.HalfAt
	f[field.AnswerReadyAt].Optional = w.Course.ReadyAt
	f[field.AnswerWeightAtHalf].Optional = w.Course.WeightAtHalf
	f.ofMix(w)
	f.ofElements(w)
	return f
}

// ofMix adds what a bath is and what to weigh for it.
func (f *figures) ofMix(w *job.Worked) {
	if !w.Mix.Ready {
		return
	}
	liquid := w.Mix.Solution.Liquid()
	put := func(name field.AnswerName, si float64) { f[name].Optional = quantity.Known(si) }
	put(field.AnswerSaltFraction, liquid.In(quantity.Share))
	put(field.AnswerAnhydrousFraction, liquid.Anhydrous)
	put(field.AnswerMolarity, liquid.In(quantity.Molarity))
	put(field.AnswerPerLitre, liquid.In(quantity.Density))
	put(field.AnswerPerLitreWater, liquid.In(quantity.PerWater))
	if !w.Standing.Unclear {
		put(field.AnswerSolutionDensity, liquid.Density())
	}
	if w.Standing.Known && w.Standing.Changed {
		put(field.AnswerSolutionDensity, w.Standing.Now.Mixed.Liquid().Density())
		put(field.AnswerStrengthNow, w.Standing.Now.Strength)
	}
	f[field.AnswerSaturation].Optional = w.Standing.Saturation(w.Mix)
	f[field.AnswerCrystals].Optional = w.Standing.Crystals
	if !w.Mix.Weighed {
		return
	}
	put(field.AnswerSaltMass, w.Mix.Weights.SaltMass)
	put(field.AnswerWaterMass, w.Mix.Weights.WaterMass)
	f[field.AnswerWaterVolume].Optional = w.Mix.Water
	put(field.AnswerSolutionMass, w.Mix.Weights.SolutionMass)
	put(field.AnswerUndissolved, w.Mix.Weights.Undissolved)
	if w.Standing.Known && w.Standing.Changed {
		put(field.AnswerUndissolved, w.Standing.Now.Undissolved)
	}
	put(field.AnswerWaterToDissolve, w.Mix.Weights.WaterToDissolve)
	f[field.AnswerMetalInBath].Optional = w.Mix.MetalMass(w.Salt)
}

// ofElements adds what the bath gains of the metals that stay in it.
func (f *figures) ofElements(w *job.Worked) {
	for _, row := range []struct {
		symbol         string
		gained, inBath field.AnswerName
	}{
		{"Zn", field.AnswerZincGained, field.AnswerZincInBath},
		{"Ni", field.AnswerNickelGained, field.AnswerNickelInBath},
		{"Cu", field.AnswerCopperGained, field.AnswerCopperInBath},
	} {
		f[row.gained].Optional = quantity.Positive(w.Used.Gained[row.symbol])
		f[row.inBath].Optional = quantity.Positive(w.Used.InBath[row.symbol])
	}
	f[field.AnswerLeadInBath].Optional = quantity.Positive(w.Used.InBath["Pb"])
}

// Figure is one answer.
type Figure struct {
	Name  string
	Value float64 // in Unit, not rounded
	Unit  string
	Text  string // as the page prints it
	Low   *float64
	High  *float64
	Range string // as the page prints Low and High; "" where none is known
	By    string // what the range rests on, where that depends on the bath
}

// answers lists the figures in the order of their table, in their fixed units
// and as the page prints them.
func (v *view) answers() []Figure {
	list := make([]Figure, 0, field.AnswerCount)
	for i := range v.figures {
		name, fig := field.AnswerName(i), &v.figures[i]
		row := name.Row()
		value := row.In(fig.SI)
		if !fig.Known() || !finite(value) {
			continue
		}
		a := Figure{Name: row.Name, Value: value, Unit: row.Unit, Text: v.Say(name, fig.SI), Low: end(fig.Low, row), High: end(fig.High, row)}
		if a.Range = v.span(name); a.Range != "" {
			a.By = v.restsOn(name)
		}
		list = append(list, a)
	}
	return list
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

func end(x quantity.Optional, row *field.Answer) *float64 {
	v := row.In(x.SI)
	if !x.Known() || !finite(v) {
		return nil
	}
	return &v
}

// span prints the range of an answer; "" where none is known.
func (v *view) span(name field.AnswerName) string {
	fig := v.figures[name]
	if !fig.Spread() {
		return ""
	}
	low, high := fig.Ends()
	return v.Say(name, low) + " to " + v.Say(name, high)
}

// restsOn says what a range rests on, where it is another thing than the answer's
// own words say, and what it leaves out.
func (v *view) restsOn(name field.AnswerName) string {
	switch {
	case name != field.AnswerDepth && name != field.AnswerTime:
		return ""
	case v.Law.Efficiency.OwnRuns:
		return "from runs on this bench"
	case v.Salt.Common():
		return "as copper leaves with one charge or two"
	case v.Bite.Area.Known() && v.Fields.Blank(field.Edge) && v.Steps == nil:
		return "common practice; a fine pattern may take up to a sixth more"
	}
	return ""
}

// Read is what was read of a field that was typed.
type Read struct {
	Name   string
	Number bool    // there is a Value
	Value  float64 // in Unit
	Unit   string
	Text   string
}

// read lists what was read of the fields that were typed: an amount in its bare
// unit, or, where it has none, in the unit that was typed; a clock time in
// minutes after midnight; a name or a choice as text. A list is left out.
func read(fields *field.Set) (list []Read) {
	for i := range field.Fields {
		name := field.Name(i)
		if f := name.Row(); fields.Given(name) && f.Form != field.Series {
			list = append(list, readOne(fields, name))
		}
	}
	return list
}

func readOne(fields *field.Set, name field.Name) Read {
	v, f := fields.Value(name), name.Row()
	r := Read{Name: f.Name, Number: true, Value: v.Q.Value, Unit: v.Q.Unit, Text: v.Text}
	switch f.Form {
	case field.Choice:
		return Read{Name: f.Name, Text: v.Pick}
	case field.Words:
		return Read{Name: f.Name, Text: v.Text}
	case field.Clock:
		r.Unit = "min"
		r.Value, r.Text = quantity.In(v.Q.Value, r.Unit), fields.Printer().Say(field.AnswerReadyAt, v.Q.Value)
		return r
	}
	if v.Q.Kind == quantity.Number {
		r.Text = quantity.PrintCount(v.Q.Value)
		return r
	}
	if f.Bare != "" && len(f.Kinds) == 1 {
		r.Unit = f.Bare
	}
	r.Value, r.Text = quantity.In(v.Q.Value, r.Unit), quantity.Print(v.Q.Value, v.Q.Kind, r.Unit)
	return r
}
