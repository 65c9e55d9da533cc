package job

import (
	"math"

	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Face is one side of one piece.
type Face struct {
	Width, Height, Diameter quantity.Optional // m
	Area                    quantity.Optional // m2
}

func readFace(fields *field.Set) (Face, []field.Error) {
	f := Face{Width: fields.Amount(field.Width), Height: fields.Amount(field.Height), Diameter: fields.Amount(field.Diameter)}
	if f.Diameter.State == quantity.Blank {
		f.Area = quantity.If(f.Width.SI*f.Height.SI, f.Width, f.Height)
		return f, nil
	}
	if f.Width.State != quantity.Blank || f.Height.State != quantity.Blank {
		bad := quantity.Optional{State: quantity.Bad}
		return Face{bad, bad, bad, bad}, contradiction(fields, "a face is either round, with a diameter, or has a width and a height",
			field.Width, field.Height, field.Diameter)
	}
	f.Area = quantity.If(math.Pi/4*f.Diameter.SI*f.Diameter.SI, f.Diameter)
	return f, nil
}

// Length returns the height of the face or its diameter.
func (f Face) Length() quantity.Optional {
	if f.Height.Known() {
		return f.Height
	}
	return f.Diameter
}

// Hidden is the bare metal of one piece that is easily forgotten.
type Hidden struct {
	OnPiece  quantity.Optional // m2, edges and back
	OnHanger quantity.Optional // m2, of the hanger
	Found    quantity.Optional // m2, both
	Wire     string            // the hanging wire's metal
	Eaten    bool              // the wire dissolves with the work; aluminium does so in common salt only
}

func findHidden(fields *field.Set, face Face, metal Metal, salt Salt) (h Hidden, errors []field.Error) {
	wire, wetted := fields.Amount(field.Hanger), fields.Amount(field.HangerLength)
	edges, sheet := fields.Amount(field.BareEdges), fields.Amount(field.Sheet)
	h.Wire = wireMetal(fields, metal)
	h.Eaten = h.Wire != "aluminium" || salt.Common()
	h.OnPiece = quantity.Sum(quantity.If(bite.Hidden{Edges: edges.SI, Sheet: sheet.SI}.OnPiece().SI, edges, sheet), onBack(fields, face))
	h.OnHanger = quantity.If(bite.Hidden{Hanger: wire.SI, Wetted: wetted.SI}.OnHanger().SI, wire, wetted)
	if !h.Eaten {
		h.OnHanger.SI = 0
	}
	h.Found = quantity.Sum(h.OnPiece, h.OnHanger)
	if wire.State == quantity.Given && wetted.State == quantity.Blank {
		errors = Missing(fields, field.HangerLength)
	}
	if wetted.State == quantity.Given && wire.State == quantity.Blank {
		errors = Missing(fields, field.Hanger)
	}
	if edges.State == quantity.Given && sheet.State == quantity.Blank {
		errors = append(errors, Missing(fields, field.Sheet)...)
	}
	return h, errors
}

// onBack is the share of one face that is bare on the back, m2.
func onBack(fields *field.Set, face Face) quantity.Optional {
	share := fields.Amount(field.Back)
	if share.State == quantity.Blank {
		return share
	}
	return quantity.If(bite.Hidden{Back: share.SI, Face: face.Area.SI}.OnPiece().SI, share, face.Area)
}

// wireMetal is the hanging wire's metal: where it is not typed, silver for a
// silver alloy, else copper.
func wireMetal(fields *field.Set, metal Metal) string {
	switch {
	case fields.Given(field.HangerMetal):
		return fields.Pick(field.HangerMetal)
	case metal.Share("Ag") > metal.Share("Cu"):
		return "silver"
	}
	return "copper"
}

// forbidden hangers must never hang on the positive side.
func forbidden(hanger string) bool {
	return hanger == "stainless" || hanger == "plated" || hanger == "galvanised"
}

// Pieces are the equal pieces that hang in the bath.
type Pieces struct {
	Area  quantity.Optional // m2, open area of one piece, all sides
	Count quantity.Optional
	Shape quantity.State // Bad if a part of Work but its area can't be used
	Work  bite.Work      // without the area
}

func readWork(fields *field.Set, face Face, hidden Hidden) (Pieces, []field.Error) {
	area, errors := openArea(fields, face)
	edge := fields.Amount(field.Edge).Or(quantity.Known(0))
	undercut := fields.Amount(field.Undercut)
	if edge.Known() && edge.SI == 0 {
		undercut = quantity.Known(0) // no edge, no undercut to know
	}
	extra := quantity.Sum(quantity.Known(0), fields.Amount(field.Extra), hidden.OnPiece, hidden.OnHanger)
	count := fields.Amount(field.Pieces)
	islands := readIslands(fields)
	return Pieces{Area: area, Count: count, Shape: quantity.Worst(edge, extra, undercut, count, islands),
		Work: bite.Work{Edge: edge.SI, Islands: islands.SI, Extra: extra.SI, Undercut: undercut.SI, Pieces: count.SI}}, errors
}

// readIslands is how many open islands there are, less the spots of resist in them.
// Without the islands the spots say nothing: each lies in an island.
func readIslands(fields *field.Set) quantity.Optional {
	islands, holes := fields.Amount(field.Islands), fields.Amount(field.Holes).Or(quantity.Known(0))
	if islands.State == quantity.Blank {
		return quantity.Known(0)
	}
	return quantity.If(islands.SI-holes.SI, islands, holes)
}

// openArea is the open area of one piece: as typed, or the share of its face
// that is bare, on each side.
func openArea(fields *field.Set, face Face) (quantity.Optional, []field.Error) {
	area, share, sides := fields.Amount(field.Area), fields.Amount(field.Open), fields.Amount(field.Sides)
	made := quantity.If(face.Area.SI*share.SI*sides.SI, face.Area, share, sides)
	switch {
	case area.State == quantity.Blank:
		return made, nil
	case area.Known() && made.Known() && !Agree(area.SI, made.SI):
		return quantity.Optional{State: quantity.Bad}, contradiction(fields, "the share of the face makes "+fields.Printer().Say(field.AnswerArea, made.SI), append([]field.Name{field.Area}, faceFields...)...)
	}
	return area, nil
}

// HiddenEffects are what the hidden metal does to the bite, and the bite to the
// hanger.
type HiddenEffects struct {
	DepthIfForgotten quantity.Optional // m
	HangerLeft       quantity.Optional // m
}

func findEffects(fields *field.Set, barred Barred, hidden Hidden, bitten Bite) (e HiddenEffects) {
	if barred.Any() || !bitten.Depth.Known() {
		return e
	}
	if bitten.Area.Known() && bitten.Shape != quantity.Bad && bitten.Work.Extra > 0 {
		e.DepthIfForgotten = bitten.Piece().DepthIfForgotten(bitten.Depth.SI)
	}
	if wire := fields.Amount(field.Hanger); wire.Known() && hidden.Eaten && !forbidden(hidden.Wire) {
		e.HangerLeft = bite.HangerLeft(wire.SI, bitten.Depth.SI)
	}
	return e
}
