package advice

import (
	"slices"

	"saltbite/calc/bite"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// Drawings are the pictures of a job. What can't be drawn is nil.
type Drawings struct{ Section, Curve, Card, Back, Label *drawing.Drawing }

// Draw draws what was worked out, from the same figures as Answer's.
func Draw(w job.Worked) Drawings {
	v := viewOf(&w)
	if v.withoutSection() {
		return Drawings{Card: v.card(), Back: v.back(), Label: v.label()}
	}
	return Drawings{
		Section: v.section(),
		Card:    v.card(),
		Back:    v.back(),
		Label:   v.label(),
		Curve:   v.curve(),
	}
}

// withoutSection says whether a cut or a curve would show what must not be.
func (v *view) withoutSection() bool {
	return v.Barred.Any() || v.Course.Heavier || v.Sheet.EatenThrough
}

// size is an answer as it is drawn; nothing where it is absent.
func (v *view) size(name field.AnswerName) drawing.Size {
	if !v.has(name) {
		return drawing.Size{}
	}
	return v.sized(name, v.figures[name].SI)
}

// Lengths shorter than these, m, are drawn in µm: in mm and in their zeros
// would take the room of what they measure.
const leastInMillimetres, leastInInches = 1e-6, 2.54e-6

// sized is a figure in SI, printed as the answer of that name would be.
func (v *view) sized(name field.AnswerName, si float64) drawing.Size {
	if name.Row().Kind == quantity.Length && si < leastInInches && (v.US || si < leastInMillimetres) {
		return drawing.Size{SI: si, Text: quantity.Print(si, quantity.Length, "um")}
	}
	return drawing.Size{SI: si, Text: v.Say(name, si)}
}

// typedSize is a field's amount, printed in the same way. A blank field gives an empty Size.
func (v *view) typedSize(name field.Name, answer field.AnswerName) drawing.Size {
	f := v.Fields.Amount(name)
	if !f.Known() {
		return drawing.Size{}
	}
	return v.sized(answer, f.SI)
}

// family is the metal's, for its tone.
func (v *view) family() string {
	if !v.Metal.Given() {
		return "other"
	}
	switch f := v.Metal.Reading.Metal.Family.String(); f {
	case "copper", "brass", "bronze", "nickel silver", "silver":
		return f
	}
	return "other"
}

// section is the cut through the sheet, at the depth of the job or, where none
// is known, at the deepest that the sheet allows.
func (v *view) section() *drawing.Drawing {
	undercut, sides := v.Fields.Amount(field.Undercut), v.Fields.Amount(field.Sides)
	depth, why := v.drawnDepth()
	if !depth.Known() || !undercut.Known() || !sides.Known() {
		return nil
	}
	s := drawing.Section{
		Metal: v.family(), US: v.US, Depth: depth, Why: why, Undercut: undercut.SI, Sides: int(sides.SI),
		Sheet: v.typedSize(field.Sheet, field.AnswerLeft), Line: v.typedSize(field.Line, field.AnswerLineLeft), Space: v.typedSize(field.Space, field.AnswerSpaceBecomes),
	}
	if side := undercut.SI * depth.SI; side > 0 {
		s.SideBite = v.sized(field.AnswerDepth, side)
	}
	if s.Line.Known() {
		s.LineLeft = v.sized(field.AnswerLineLeft, bite.LineLeft(s.Line.SI, undercut.SI, depth.SI).SI)
	}
	if s.Space.Known() {
		s.SpaceGets = v.sized(field.AnswerSpaceBecomes, bite.SpaceBecomes(s.Space.SI, undercut.SI, depth.SI).SI)
	}
	if s.Sheet.Known() {
		s.Left = v.sized(field.AnswerLeft, bite.Sheet{Thickness: s.Sheet.SI, Sides: sides.SI}.Left(depth.SI).SI)
		if v.Sheet.Least.Known() {
			s.Least = v.sized(field.AnswerLeft, v.Sheet.Least.SI)
		}
	}
	return s.Draw()
}

// ofMean says that the mean is drawn where the shallowest part is so deep.
func (v *view) ofMean(why string) string {
	if v.Bite.Until.Shallowest {
		return "on average, its shallowest part " + why
	}
	return why
}

// drawnDepth is the depth that is drawn, and whose it is.
func (v *view) drawnDepth() (depth drawing.Size, why string) {
	switch whole := v.Sheet.Depth; {
	case whole.Known() && slices.Contains(v.Bite.Found, field.Depth):
		return v.sized(field.AnswerDepth, whole.SI), v.ofMean("as found")
	case whole.Known() && v.Bite.Depth.State == quantity.Blank:
		return v.sized(field.AnswerDepth, whole.SI), "all steps together"
	case whole.Known():
		return v.sized(field.AnswerDepth, whole.SI), v.ofMean("as asked for")
	}
	return v.size(field.AnswerDeepest), "the deepest that this sheet allows, as no depth is known"
}
