package job

import (
	"math"
	"slices"

	"saltbite/calc/bite"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Drawings are the pictures of a job. What can't be drawn is nil.
type Drawings struct{ Section, Curve, Card, Label *drawing.Drawing }

// Draw draws what the fields suffice for, from the same figures as Answer's.
func Draw(s *field.Set) Drawings {
	b := work(s)
	return Drawings{
		Section: b.section(),
		Card:    b.card(),
		Label:   b.label(),
		Curve:   b.curve(), // last: it takes a current where there is none
	}
}

// size is an answer as it is drawn; nothing where it is absent.
//
//go:noinline
func (b *bench) size(name string) drawing.Size {
	f, ok := b.figures[name]
	if !ok {
		return drawing.Size{}
	}
	return b.sized(name, f.si)
}

// Lengths shorter than these, m, are drawn in µm: in mm and in their noughts
// would take the room of what they measure.
const leastInMillimetres, leastInInches = 1e-6, 2.54e-6

// sized is a figure in SI, printed as the answer of that name would be.
//
//go:noinline
func (b *bench) sized(name string, si float64) drawing.Size {
	row := field.AnswerByName(name)
	if row.Kind == quantity.Length && si < leastInInches && (b.us || si < leastInMillimetres) {
		return drawing.Size{SI: si, Text: quantity.Print(si, quantity.Length, "um")}
	}
	return drawing.Size{SI: si, Text: b.print(row, si)}
}

// typed is a field's amount, printed likewise; nothing where it is not given.
//
//go:noinline
func (b *bench) typed(field, answer string) drawing.Size {
	f := b.amount(field)
	if !f.known() {
		return drawing.Size{}
	}
	return b.sized(answer, f.v)
}

// family is the metal's, for its tone.
func (b *bench) family() string {
	if b.metal.state != field.Given {
		return "other"
	}
	switch f := b.metal.reading.Metal.Family.String(); f {
	case "copper", "brass", "bronze", "nickel silver", "silver":
		return f
	}
	return "other"
}

// section is the cut through the sheet, at the depth of the job or, where none
// is known, at the deepest that the sheet allows.
func (b *bench) section() *drawing.Drawing {
	undercut, sides := b.amount("undercut"), b.amount("sides")
	depth, why := b.drawnDepth()
	if !depth.Known() || !undercut.known() || !sides.known() {
		return nil
	}
	s := drawing.Section{
		Metal: b.family(), US: b.us, Depth: depth, Why: why, Undercut: undercut.v, Sides: int(sides.v),
		Sheet: b.typed("sheet", "left"), Line: b.typed("line", "lineLeft"), Space: b.typed("space", "spaceBecomes"),
	}
	if side := undercut.v * depth.SI; side > 0 {
		s.SideBite = b.sized("depth", side)
	}
	if s.Line.Known() {
		s.LineLeft = b.sized("lineLeft", bite.LineLeft(s.Line.SI, undercut.v, depth.SI))
	}
	if s.Space.Known() {
		s.SpaceGets = b.sized("spaceBecomes", bite.SpaceBecomes(s.Space.SI, undercut.v, depth.SI))
	}
	if s.Sheet.Known() {
		s.Left = b.sized("left", bite.Sheet{Thickness: s.Sheet.SI, Sides: sides.v}.Left(depth.SI))
		if keep, state := b.keep(); state != field.Bad {
			s.Least = b.sized("left", math.Max(keep.Thickness, keep.Share*s.Sheet.SI))
		}
	}
	return s.Draw()
}

// drawnDepth is the depth that is drawn, and whose it is.
func (b *bench) drawnDepth() (depth drawing.Size, why string) {
	switch whole := b.wholeDepth(); {
	case whole.known() && slices.Contains(b.reply.Found, "depth"):
		return b.sized("depth", whole.v), "as found"
	case whole.known() && b.bite.depth.state == field.Blank:
		return b.sized("depth", whole.v), "all bites together"
	case whole.known():
		return b.sized("depth", whole.v), "as asked for"
	}
	return b.size("deepest"), "the deepest that this sheet allows, as no depth is known"
}
