package bite

import "math"

// Work is what hangs in the bath: equal pieces, each with its bare metal. None
// of its fields is negative.
type Work struct {
	Area     float64 // m2, open area of one piece, all sides
	Edge     float64 // m, length of the resist edge round the open areas of one piece
	Extra    float64 // m2, other bare metal of one piece under the surface
	Undercut float64 // side bite / depth; 1 / etch factor
	Pieces   float64 // how many share the current
}

// Bare is the metal of all pieces that takes current at the start, m2:
//
//	pieces (A + B)
func (w Work) Bare() float64 { return Held(w.Pieces * (w.Area + w.Extra)) }

// Volume is the metal, m3, that a bite of that depth (m) takes from one piece:
//
//	V = A d + (pi/4) u P d^2 + B d
//
// with A the open area, P the resist edge, u the undercut and B the extra bare
// metal: along each edge the bite runs under the resist as a quarter ellipse of
// half-axes d and u d. Geometry, no source. Exact for straight edges. It counts
// too much round the outside of an island and too little round the inside of a
// hole, and too much once lines are undercut from both sides and gone.
func (w Work) Volume(depth float64) float64 {
	d := Held(depth)
	return Held(d * (w.Area + w.Extra + math.Pi/4*w.Undercut*w.Edge*d))
}

// Depth is the depth, m, at which that volume (m3) is gone from one piece, the
// root of Volume that is not negative, in the form that does not cancel:
//
//	d = 2 V / (A + B + sqrt((A + B)^2 + pi u P V))
//
// True where Volume is. Hypot keeps the squares from running out of range.
func (w Work) Depth(volume float64) float64 {
	bare := w.Area + w.Extra
	edge := math.Sqrt(math.Pi*w.Undercut) * math.Sqrt(w.Edge) * math.Sqrt(volume)
	return Held(2 * (volume / (bare + math.Hypot(bare, edge))))
}

// Held is x if it can be an argument or an answer of this package, a finite
// number above zero; else 0, from which no answer follows. Set into each caller
// it would only make the program larger.
//
//go:noinline
func Held(x float64) float64 {
	if x > 0 && x <= math.MaxFloat64 {
		return x
	}
	return 0
}
