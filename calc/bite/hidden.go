package bite

import (
	"math"

	"saltbite/calc/quantity"
)

// Hidden is bare metal of one piece that is not in the design and takes current
// with it. What is not there is 0; so is a hanger that takes no current, such
// as aluminium in a sulfate bath (common practice, no source).
type Hidden struct {
	Hanger float64 // m, diameter of the wire
	Wetted float64 // m, length of it under the surface
	Edges  float64 // m, length of bare sheet edge
	Sheet  float64 // m, thickness of the sheet
	Back   float64 // share of the back left bare
	Face   float64 // m2, one side of the piece
}

// OnHanger is the side of the wetted wire, m2:
//
//	pi x diameter x length
//
// Geometry. The wire's ends are left out: one is above the surface, the other
// lies on the piece or adds a quarter of a diameter.
func (h Hidden) OnHanger() quantity.Optional {
	return quantity.Positive(math.Pi * held(h.Hanger) * held(h.Wetted))
}

// OnPiece is the hidden metal that stays with the piece when it is weighed, m2:
//
//	edges x sheet + back x face
func (h Hidden) OnPiece() quantity.Optional {
	return quantity.Positive(held(h.Edges)*held(h.Sheet) + held(h.Back)*held(h.Face))
}

// DepthIfForgotten is the depth, m, that is reached where the time or the current
// for a depth (m) was calculated without the extra bare metal, and then run with
// it: at that depth all bare metal gives the volume that the design alone was to
// give.
//
//	V(d', B) = V(d, 0)
//
// True where Volume is. Whether time or current was calculated
// does not matter: the charge is the same.
func (w Work) DepthIfForgotten(depth float64) quantity.Optional {
	design := w
	design.Extra = 0
	return w.Depth(design.Volume(depth).SI)
}

// HangerLeft is how thick a wire of that diameter (m) still is, m, under the
// surface when the work is etched to a depth (m):
//
//	diameter - 2 depth
//
// Zero or less: it has dropped the piece. A mean: a hanger is mostly thinned
// at the surface and parts there sooner.
func HangerLeft(diameter, depth float64) quantity.Optional { return difference(diameter, 2*depth) }
