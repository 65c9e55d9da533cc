package circuit

import (
	"math"

	"saltbite/calc/bite"
	"saltbite/calc/quantity"
)

// DepthThatFits is the depth, m, that so many amperes reach in the same time
// (s) on all pieces.
func DepthThatFits(l bite.Law, w bite.Work, amps, time float64) quantity.Optional {
	return l.Depth(w, amps, time)
}

// TimeThatFits is the time, s, that so many amperes take to the same depth (m)
// on all pieces.
func TimeThatFits(l bite.Law, w bite.Work, amps, depth float64) quantity.Optional {
	return l.Time(w, depth, amps)
}

// piecesThatFit is how many of the pieces, whole, so many amperes serve at the
// same depth and time, where all of them take that current (A):
//
//	floor(amps x pieces / current)
//
// Zero is an answer here: not one of them. The current of equal pieces is in
// proportion to their number, so the law is not asked.
func piecesThatFit(amps, current, pieces float64) float64 {
	const slack = 1e-9 // three pieces of 1/3 A fit within 1 A
	return quantity.Positive(math.Floor(quantity.Positive(amps).SI * quantity.Positive(pieces).SI / quantity.Positive(current).SI * (1 + slack))).SI
}
