package bite

import (
	"math"

	"saltbite/calc/quantity"
)

// Work is what hangs in the bath: equal pieces, each with its bare metal. None
// of its fields but Islands is negative.
type Work struct {
	Area     float64 // m2, open area of one piece, all sides
	Edge     float64 // m, length of the resist edge round the open areas of one piece
	Extra    float64 // m2, other bare metal of one piece under the surface
	Undercut float64 // side bite / depth; 1 / etch factor
	Pieces   float64 // how many share the current
	Islands  float64 // separate open areas of one piece less the spots of resist enclosed in them
}

// Bare is the metal of all pieces that takes current at the start, m2:
//
//	pieces (A + B)
func (w Work) Bare() quantity.Optional { return quantity.Positive(w.Pieces * (w.Area + w.Extra)) }

// Volume is the metal, m3, that a bite of that depth (m) takes from one piece:
//
//	V = A d + (pi/4) u P d^2 + (2 pi/3) chi u^2 d^3 + B d
//
// with A the open area, P the resist edge, chi the open islands less the spots of
// resist in them, u the undercut and B the extra bare metal. Along each edge the
// bite runs under the resist as a quarter ellipse of half-axes d and u d; at each
// level the open area is that of the set parallel to the design, by Steiner's
// formula A + P r + pi chi r^2 (Steiner 1840 for convex sets, Federer 1959, Trans.
// Amer. Math. Soc. 93:418 for others, from memory), summed over the depth.
//
// Exact until a bite meets another, or a spot of resist is gone. Where chi is
// negative, no level takes more than the formula's most, P^2 / (4 pi |chi|): all
// that equal round spots had. It counts too much once lines are undercut from both
// sides and gone.
func (w Work) Volume(depth float64) quantity.Optional {
	return quantity.Positive(w.volume(held(depth)))
}

func (w Work) volume(d float64) float64 { return d * (w.Area + w.Extra + w.underResist(d)) }

// underResist is what the undercut of a bite of that depth takes, m3 a metre of depth.
func (w Work) underResist(d float64) float64 {
	reach := w.Undercut * d
	if !w.curved() {
		return math.Pi / 4 * w.Edge * reach
	}
	if gone := -w.Edge / (2 * math.Pi * w.Islands); w.Islands < 0 && reach > gone {
		// Down to where the reach is still that far, every level has taken the most.
		s := gone / reach
		c := math.Sqrt(1 - s*s)
		return w.Edge * gone / 2 * (math.Asin(s)/s - s*s*(2+c)/(3*(1+c)*(1+c)))
	}
	return math.Pi * reach * (w.Edge/4 + 2.0/3*w.Islands*reach)
}

// curved is whether the islands count: without an edge there is nothing under the resist.
func (w Work) curved() bool { return w.Islands != 0 && w.Edge > 0 && w.Undercut > 0 }

// Depth is the depth, m, at which that volume (m3) is gone from one piece. Where
// chi is 0 it is the root of Volume that is not negative, in the form that does not
// cancel:
//
//	d = 2 V / (A + B + sqrt((A + B)^2 + pi u P V))
//
// Else it is found from there by halving: Volume grows with the depth. True where
// Volume is. Hypot keeps the squares from running out of range.
func (w Work) Depth(volume float64) quantity.Optional {
	bare := w.Area + w.Extra
	edge := math.Sqrt(math.Pi*w.Undercut) * math.Sqrt(w.Edge) * math.Sqrt(volume)
	straight := quantity.Positive(2 * (volume / (bare + math.Hypot(bare, edge))))
	if !straight.Known() || !w.curved() {
		return straight
	}
	return quantity.Positive(w.halved(volume, straight.SI))
}

// halved is the depth at which that volume is gone, found near another depth.
func (w Work) halved(volume, near float64) float64 {
	less, more := near, near
	for w.volume(less) > volume {
		less, more = less/2, less
	}
	for w.volume(more) < volume && more < math.MaxFloat64/2 {
		less, more = more, more*2
	}
	const bits = 54 // of a float64
	for range bits {
		middle := less + (more-less)/2
		if w.volume(middle) < volume {
			less = middle
		} else {
			more = middle
		}
	}
	return more
}
