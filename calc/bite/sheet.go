package bite

import (
	"math"
	"sort"

	"saltbite/calc/quantity"
)

// Unevenness is how far the depth strays from its mean over the open area,
// either way: edges of open fields go deeper, close hatching less deep. Common
// practice (20 to 30 %), no source.
const Unevenness = 0.25

// Sheet is the metal that is bitten into.
type Sheet struct {
	Thickness float64 // m
	Sides     float64 // how many are bitten, each to the same depth: 1 or 2
}

// Keep is the least that must be left of a sheet: a thickness, m, or, where that
// is 0, a share of the sheet.
type Keep struct{ Thickness, Share float64 }

// Left is what remains of the sheet, m, under a bite of that depth (m) on each
// side that is bitten:
//
//	left = thickness - sides x depth
//
// Zero or less: eaten through. True where bites on both sides lie opposite each
// other; elsewhere more is left.
func (s Sheet) Left(depth float64) float64 {
	return difference(s.Thickness, s.Sides*depth)
}

// LeftShare is the share of the sheet that remains, 1 being all of it. True
// where Left is.
func (s Sheet) LeftShare(depth float64) float64 {
	return either(s.Left(depth) / s.Thickness)
}

// LeftRange is what remains, m, where the bite is deepest and where it is
// shallowest, the mean depth being as given.
func (s Sheet) LeftRange(depth float64) (least, most float64) {
	return s.Left(depth * (1 + Unevenness)), s.Left(depth * (1 - Unevenness))
}

// Deepest is the mean depth, m, on each side that leaves what is to be kept:
//
//	d = (thickness - keep) / sides
//
// There is none where the sheet is no thicker than that.
func (s Sheet) Deepest(k Keep) float64 {
	return Held(difference(s.Thickness, k.of(s.Thickness)) / s.Sides)
}

// DeepestRange is the mean depth, m, at which the deepest spot still leaves
// what is to be kept, and that at which the shallowest does:
//
//	deepest / (1 + unevenness), deepest / (1 - unevenness)
func (s Sheet) DeepestRange(k Keep) (least, most float64) {
	d := s.Deepest(k)
	return Held(d / (1 + Unevenness)), Held(d / (1 - Unevenness))
}

// ThinnestSheet is the thickness, m, of the sheet that a bite of that depth (m)
// on so many sides leaves just enough of, the inverse of Deepest:
//
//	sides x depth + keep              keep a thickness
//	sides x depth / (1 - keep)        keep a share
//
// There is none where all of it is to be kept.
func ThinnestSheet(depth, sides float64, k Keep) float64 {
	taken := Held(depth) * sides
	if k.Thickness > 0 {
		return Held(taken + k.Thickness)
	}
	return Held(taken / difference(1, k.Share))
}

// ThinnestGauge is the number in the American (Brown and Sharpe) gauge of the
// thinnest sheet that is at least so thick (m): the largest whole number whose
// exact thickness, before the rounding of its table, is not less. 0 is gauge 0,
// -1 is 00, -3 is 0000, the thickest there is: above it, and for no thickness,
// there is none. The trade rolls to about 36; the formula goes on.
func ThinnestGauge(thickness float64) (number int, ok bool) {
	const thickest, beyondAll = -3, 10000 // gauge 10000 is thinner than any float64
	least := Held(thickness) * (1 - 1e-9) // a sheet made by the formula is as thick as its own gauge
	if least == 0 || quantity.BrownSharpe(thickest) < least {
		return 0, false
	}
	thinner := sort.Search(beyondAll-thickest, func(i int) bool { return quantity.BrownSharpe(thickest+i) < least })
	return thickest + thinner - 1, true
}

// of is what is kept, m, of a sheet of that thickness.
func (k Keep) of(thickness float64) float64 {
	if k.Thickness > 0 {
		return k.Thickness
	}
	return k.Share * thickness
}

// difference is what taking b from a leaves. It is the one kind of answer here
// that may be negative. It is 0 where a is no argument, or b is neither that
// nor 0.
func difference(a, b float64) float64 {
	if Held(a) == 0 || !(b >= 0 && b <= math.MaxFloat64) {
		return 0
	}
	return a - b
}

// either is x, on either side of zero, if a float64 holds it; else 0.
func either(x float64) float64 { return math.Copysign(Held(math.Abs(x)), x) }
