package advice

import (
	"math"

	"saltbite/calc/bite"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// Laid is a line across a picture of the resist, from A to B: how long it is (m) and
// the exposed stretches that it crosses, their depths as multiples of the mean.
// Computed: they come from the current in the bath, and two figures of them are known.
type Laid struct {
	Length   float64
	Open     []drawing.Stretch
	Computed bool
}

// Along draws the sheet cut through along a line; nil where Draw draws no section.
func Along(w job.Worked, l Laid) *drawing.Drawing {
	v := viewOf(&w)
	undercut, sides := v.Fields.Amount(field.Undercut), v.Fields.Amount(field.Sides)
	depth, why := v.drawnDepth()
	if v.withoutSection() || !depth.Known() || !undercut.Known() || !sides.Known() {
		return nil
	}
	a := drawing.Along{
		Metal: v.family(), US: v.US, Length: v.sized(field.AnswerLineLeft, l.Length), Depth: depth, Why: why,
		Computed: l.Computed, Undercut: undercut.SI, Sides: int(sides.SI), Sheet: v.typedSize(field.Sheet, field.AnswerLeft),
	}
	least, most, where := math.Inf(1), 0.0, 0.0
	for _, s := range l.Open {
		deep := drawing.Stretch{Left: s.Left, Right: s.Right}
		for i, times := range s.Depths {
			local := times * depth.SI
			deep.Depths = append(deep.Depths, local)
			least = math.Min(least, local)
			if local > most {
				most, where = local, s.Left+(s.Right-s.Left)*float64(i)/float64(len(s.Depths)-1)
			}
		}
		a.Open = append(a.Open, deep)
	}
	if most > 0 {
		a.Shallowest, a.Deepest, a.Where = v.local(least, l.Computed), v.local(most, l.Computed), v.sized(field.AnswerLineLeft, where)
	}
	if a.Sheet.Known() {
		a.Left = v.local(bite.Sheet{Thickness: a.Sheet.SI, Sides: sides.SI}.Left(most).SI, l.Computed)
		if v.Sheet.Least.Known() {
			a.Least = v.sized(field.AnswerLeft, v.Sheet.Least.SI)
		}
	}
	return a.Draw()
}

// local is a depth at one place, of which two figures are known where it was computed.
func (v *view) local(si float64, computed bool) drawing.Size {
	if !computed {
		return v.sized(field.AnswerDepth, si)
	}
	unit := "mm"
	if v.US {
		unit = "in"
	}
	return drawing.Size{SI: si, Text: quantity.PrintEstimate(si, quantity.Length, unit)}
}
