package bite

import (
	"math"
	"sort"

	"saltbite/calc/quantity"
)

// unevenness is how far the depth strays from its mean over the open area,
// either way: edges of open fields go deeper, close hatching less deep. Common
// practice (20 to 30 %), no source.
const unevenness = 0.25

// SidesEtched is how many sides of the sheet the etch goes into, where so many
// carry the design and such a share of the back is bare:
//
//	2 with any bare back, else the sides of the design
//
// A bare back is etched as deep as the front, so where both are bare the sheet
// thins from both sides; elsewhere more is left.
func SidesEtched(sides, back float64) float64 {
	if held(back) > 0 {
		return 2
	}
	return sides
}

// Sheet is the metal that is etched into.
type Sheet struct {
	Thickness float64 // m
	Sides     float64 // how many are etched, each to the same depth: 1 or 2
}

// Keep is the least that must be left of a sheet: a thickness, m, or, where that
// is 0, a share of the sheet.
type Keep struct{ Thickness, Share float64 }

// Left is what remains of the sheet, m, under a bite of that depth (m) on each
// side that is etched:
//
//	left = thickness - sides x depth
//
// Zero or less: eaten through. True where bites on both sides lie opposite each
// other; elsewhere more is left.
func (s Sheet) Left(depth float64) quantity.Optional {
	return difference(s.Thickness, s.Sides*depth)
}

// LeftShare is the share of the sheet that remains, 1 being all of it. True
// where Left is.
func (s Sheet) LeftShare(depth float64) quantity.Optional {
	left := s.Left(depth)
	return quantity.If(left.SI/s.Thickness, left)
}

// LeftRange is Left with what remains, m, where the bite is deepest (Low) and
// where it is shallowest (High), the mean depth being as given.
func (s Sheet) LeftRange(depth float64) quantity.Range {
	return quantity.Range{Optional: s.Left(depth), Low: s.Left(depth * (1 + unevenness)), High: s.Left(depth * (1 - unevenness))}
}

// Deepest is the mean depth, m, on each side that leaves what is to be kept:
//
//	d = (thickness - keep) / sides
//
// There is no value where the sheet is no thicker than that.
func (s Sheet) Deepest(k Keep) quantity.Optional {
	return quantity.Positive(difference(s.Thickness, k.of(s.Thickness)).SI / s.Sides)
}

// DeepestRange is Deepest with the mean depth, m, at which the deepest spot
// still leaves what is to be kept (Low), and that at which the shallowest does
// (High):
//
//	deepest / (1 + unevenness), deepest / (1 - unevenness)
func (s Sheet) DeepestRange(k Keep) quantity.Range {
	d := s.Deepest(k)
	return quantity.Range{Optional: d, Low: quantity.Positive(d.SI / (1 + unevenness)), High: quantity.Positive(d.SI / (1 - unevenness))}
}

// ThinnestSheet is the thickness, m, of the sheet that a bite of that depth (m)
// on so many sides leaves just enough of, the inverse of Deepest:
//
//	sides x depth + keep              keep a thickness
//	sides x depth / (1 - keep)        keep a share
//
// There is no value where all of it is to be kept.
func ThinnestSheet(depth, sides float64, k Keep) quantity.Optional {
	taken := held(depth) * sides
	if k.Thickness > 0 {
		return quantity.Positive(taken + k.Thickness)
	}
	return quantity.Positive(taken / difference(1, k.Share).SI)
}

// ThinnestGauge is the number in the American (Brown and Sharpe) gauge of the
// thinnest sheet that is at least so thick (m): the largest whole number whose
// exact thickness, before the rounding of its table, is not less. 0 is gauge 0,
// -1 is 00, -3 is 0000, the thickest. ok is false for a thicker sheet, and without
// a thickness. The trade rolls to about 36; the formula goes on.
func ThinnestGauge(thickness float64) (number int, ok bool) {
	const thickest, beyondAll = -3, 10000 // gauge 10000 is thinner than any float64
	least := held(thickness) * (1 - 1e-9) // a sheet made by the formula is as thick as its own gauge
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
// that may be zero or negative. It is not known where a is no argument, or b is
// neither that nor 0.
func difference(a, b float64) quantity.Optional {
	if held(a) == 0 || !(b >= 0 && b <= math.MaxFloat64) {
		return quantity.Optional{}
	}
	return quantity.Known(a - b)
}
