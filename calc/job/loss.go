package job

import (
	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Loss is what the bite takes: current over time, and metal. Depth and Time are
// those of the bite, with their ranges.
type Loss struct {
	Depth, Time quantity.Range
	Bare        quantity.Optional // m2, all that takes current at the start
	Equivalent  quantity.Range    // kg/C
	Charge      quantity.Optional // C
	Removed     quantity.Optional // kg, all pieces
	RemovedEach quantity.Optional // kg, one piece without its hanger
	Rate        quantity.Optional // m/s
}

func findLoss(metal Metal, barred Barred, law Law, hidden Hidden, b Bite, steps []Step) Loss {
	l := Loss{Depth: quantity.Alone(b.Depth), Time: quantity.Alone(b.Time)}
	if !b.Agrees {
		return l
	}
	l.Bare = b.bare()
	if metal.Given() && !barred.Beryllium {
		l.Equivalent = law.Each
	}
	if !barred.Any() {
		if steps == nil {
			l.Depth, l.Time = ranges(law, b)
		}
		l.Charge = charge(law, b)
		l = l.withMetal(law, hidden, b)
		l.Rate = rate(law, b, steps)
	}
	if steps != nil {
		all := bite.InAll(steps)
		l.Charge, l.Removed = all.Charge, all.Removed
		l.RemovedEach = law.RemovedEach(b.Work, bitesOf(steps), hidden.OnHanger.SI)
	}
	return l
}

// bitesOf is what was asked of each step.
func bitesOf(steps []Step) (bites []bite.Bite) {
	for _, s := range steps {
		bites = append(bites, s.Bite)
	}
	return bites
}

// ranges gives what was found its likely range.
func ranges(law Law, b Bite) (depth, time quantity.Range) {
	depth, time = quantity.Alone(b.Depth), quantity.Alone(b.Time)
	if !law.Known || len(b.Found) == 0 {
		return depth, time
	}
	switch b.Found[0] {
	case field.Depth:
		depth.Low = unlessSame(b.DepthAfter(law.Slow, b.Time.SI), b.Depth)
		depth.High = unlessSame(b.DepthAfter(law.Fast, b.Time.SI), b.Depth)
	case field.Time:
		time.Low = unlessSame(b.TimeBy(law.Fast), b.Time)
		time.High = unlessSame(b.TimeBy(law.Slow), b.Time)
	}
	return depth, time
}

// unlessSame is an end of a range, unless it is the value itself.
func unlessSame(end, value quantity.Optional) quantity.Optional {
	if end.SI == value.SI {
		return quantity.Optional{}
	}
	return end
}

// charge is that of the whole bite, C.
func charge(law Law, b Bite) quantity.Optional {
	charge := quantity.If(b.Current.SI*b.Time.SI, b.Current, b.Time)
	if !charge.Known() && law.Known && b.Area.Known() && b.Depth.Known() && b.Shape != quantity.Bad {
		return law.Charge(b.Piece(), b.Depth.SI)
	}
	return charge
}

// withMetal adds the metal that the charge takes.
func (l Loss) withMetal(law Law, hidden Hidden, b Bite) Loss {
	if !l.Charge.Known() || !law.Known {
		return l
	}
	l.Removed = law.Removed(l.Charge.SI)
	switch {
	case hidden.OnHanger.SI == 0 && b.Count.Known():
		l.RemovedEach = quantity.Known(l.Removed.SI / b.Count.SI)
	case b.Area.Known() && b.Depth.Known() && b.Shape != quantity.Bad && !b.Watched:
		l.RemovedEach = quantity.Known(law.Density * onScale(b, hidden).Volume(b.Depth.SI).SI)
	}
	return l
}

// rate is how fast the bite goes: over the whole bite where its depth and time
// are known, else at the start.
func rate(law Law, b Bite, steps []Step) quantity.Optional {
	switch {
	case b.Depth.Known() && b.Time.Known() && !b.Watched && steps == nil:
		return quantity.Known(b.Depth.SI / b.Time.SI)
	case law.Known && b.Density.Known():
		return law.DepthAt(b.Density.SI, 1)
	}
	return quantity.Optional{}
}

// onScale is the piece without its hanger.
func onScale(b Bite, hidden Hidden) bite.Work {
	piece := b.Piece()
	piece.Extra -= hidden.OnHanger.SI
	return piece
}
