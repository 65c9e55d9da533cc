// Package bite is the law that ties four things together: how deep, how long,
// how many amperes, on how much bare metal. Any three give the fourth.
//
// A current dissolves metal in proportion to its charge (Faraday's law):
//
//	mass = efficiency x current x time x equivalent
//	mass = pieces x volume x density
//
// and the volume follows from the depth and the shape of the open areas (see
// Work.Volume). All is in SI. Depths are means over the open area; where the
// bite is deeper or shallower than that is not known here.
//
// # Limits
//
// An answer is a finite number above zero, or it is not known: something it is
// made of was zero, negative or not a number, or lies beyond what a float64
// holds. So nothing here ever gives NaN or an infinity. What is left of a sheet,
// a line or a hanger may be zero or negative, too.
//
// The functions invert each other to 1e-9 over at least twelve decades of each
// argument, with one exception: Area is a difference, and its relative error
// grows as the open area becomes small beside the extra metal and the undercut.
package bite

import (
	"saltbite/calc/quantity"
)

// Law is how readily a metal dissolves.
type Law struct {
	Equivalent float64 // kg/C, at 100 % efficiency
	Density    float64 // kg/m3
	Efficiency float64 // share of the current that dissolves metal; 1 is all of it
}

// Charge is what a bite of that depth (m) takes, C, over all pieces:
//
//	Q = pieces V(d) density / (efficiency E)
//
// Faraday's law. True while efficiency is the mean over the run.
func (l Law) Charge(w Work, depth float64) quantity.Optional {
	return quantity.Positive(w.Pieces * w.Volume(depth).SI / l.volumePerCharge())
}

// Removed is the metal that a charge (C) dissolves, kg, over all pieces:
//
//	m = efficiency Q E
func (l Law) Removed(charge float64) quantity.Optional {
	return quantity.Positive(l.Efficiency * l.Equivalent * held(charge))
}

// Time is how long, s, a current (A, of all pieces) must run for a depth (m):
//
//	t = Q(d) / I
func (l Law) Time(w Work, depth, current float64) quantity.Optional {
	return quantity.Positive(l.Charge(w, depth).SI / current)
}

// Current is what all pieces together need, A, for a depth (m) in a time (s):
//
//	I = Q(d) / t
func (l Law) Current(w Work, depth, time float64) quantity.Optional {
	return quantity.Positive(l.Charge(w, depth).SI / time)
}

// Depth is how deep, m, a current (A, of all pieces) bites in a time (s): the
// depth at which the volume that the charge dissolves is gone.
//
//	V = efficiency I t E / (density pieces)
func (l Law) Depth(w Work, current, time float64) quantity.Optional {
	return w.Depth(l.volume(w, current, time))
}

// Area is the open area of one piece, m2, that a current (A, of all pieces)
// bites to a depth (m) in a time (s); w.Area is not looked at:
//
//	A = V / d - B - (pi/4) u P d - (2 pi/3) chi u^2 d^2
//
// There is no value where the extra metal and the undercut alone take more than
// the current gives.
func (l Law) Area(w Work, depth, current, time float64) quantity.Optional {
	if !(depth > 0) {
		return quantity.Optional{}
	}
	return quantity.Positive(l.volume(w, current, time)/depth - w.Extra - w.underResist(depth))
}

// DepthAt is how deep, m, a current density (A/m2 over all bare metal at the
// start) bites in a time (s):
//
//	d = j t efficiency E / density
//
// The area falls out of the law only while no edge is undercut: with an edge
// the current spreads over growing walls and this is an upper bound.
func (l Law) DepthAt(density, time float64) quantity.Optional {
	return quantity.Positive(held(density) * held(time) * l.volumePerCharge())
}

// TimeAt is how long, s, a current density (A/m2) takes to a depth (m): the
// inverse of DepthAt, true where it is.
func (l Law) TimeAt(density, depth float64) quantity.Optional {
	return quantity.Positive(held(depth) / l.volumePerCharge() / density)
}

// DensityFor is the current density, A/m2, that reaches a depth (m) in a time
// (s): the inverse of DepthAt, true where it is.
func (l Law) DensityFor(depth, time float64) quantity.Optional {
	return quantity.Positive(held(depth) / l.volumePerCharge() / time)
}

// volume is the metal, m3, that a current dissolves from each piece.
func (l Law) volume(w Work, current, time float64) float64 {
	return held(held(current) * held(time) * l.volumePerCharge() / w.Pieces)
}

// volumePerCharge is the metal that a coulomb dissolves, m3/C:
//
//	efficiency E / density
func (l Law) volumePerCharge() float64 {
	return held(held(l.Efficiency) * held(l.Equivalent) / l.Density)
}

// held is x if it can be an argument of this package, a finite number above
// zero; else 0, from which no answer follows.
func held(x float64) float64 { return quantity.Positive(x).SI }
