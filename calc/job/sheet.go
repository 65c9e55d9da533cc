package job

import (
	"math"

	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Sheet is what the bite leaves of the sheet. A depth alone is enough; no metal
// is needed.
type Sheet struct {
	Depth        quantity.Optional // m, of the deepest areas
	Thickness    quantity.Optional // m
	Least        quantity.Optional // m, that is to be left
	Left         quantity.Range    // m; not known where the sheet is eaten through
	EatenThrough bool
	LeftShare    quantity.Optional
	Deepest      quantity.Range    // m, the depth that leaves what is to be kept
	Thinnest     quantity.Optional // m, the sheet for this depth
	Gauge        quantity.Optional // its next Brown & Sharpe number
}

func workSheet(fields *field.Set, depth quantity.Optional) Sheet {
	sides, thickness := sidesEtched(fields), fields.Amount(field.Sheet)
	keep, kept := leastKept(fields)
	sheet := bite.Sheet{Thickness: thickness.SI, Sides: sides.SI}
	s := Sheet{Depth: depth, Thickness: thickness,
		Least: quantity.If(math.Max(keep.Thickness, keep.Share*thickness.SI), thickness, kept)}
	if quantity.Worst(thickness, sides, depth) == quantity.Given {
		left := sheet.LeftRange(depth.SI)
		if s.EatenThrough = left.SI <= 0; !s.EatenThrough {
			s.Left = left
			s.LeftShare = sheet.LeftShare(depth.SI)
		}
	}
	if quantity.Worst(thickness, sides, kept) == quantity.Given {
		s.Deepest = sheet.DeepestRange(keep)
	}
	if quantity.Worst(depth, sides, kept) == quantity.Given {
		s.Thinnest = bite.ThinnestSheet(depth.SI, sides.SI, keep)
		if gauge, ok := bite.ThinnestGauge(s.Thinnest.SI); ok {
			s.Gauge = quantity.Known(float64(gauge))
		}
	}
	return s
}

// sidesEtched is how many sides the etch goes into: a bare back is one of them.
func sidesEtched(fields *field.Set) quantity.Optional {
	sides, back := fields.Amount(field.Sides), fields.Amount(field.Back).Or(quantity.Known(0))
	return quantity.If(bite.SidesEtched(sides.SI, back.SI), sides, back)
}

// leastKept is the least of the sheet that is to be left, and whether it is known.
func leastKept(fields *field.Set) (bite.Keep, quantity.Optional) {
	v := fields.Value(field.Keep)
	known := quantity.Optional{State: v.State}
	if v.Q.Kind == quantity.Share {
		return bite.Keep{Share: v.Q.Value}, known
	}
	return bite.Keep{Thickness: v.Q.Value}, known
}

// Lines is what raised lines keep and open spaces become. With an undercut that
// is assumed, the ranges go to the worst case.
type Lines struct {
	Narrowest quantity.Range // m, the line that is just gone at this depth
	Left      quantity.Range // m, what the narrowest line keeps; negative: it is gone
	Deepest   quantity.Range // m, the depth at which that line is gone
	Space     quantity.Range // m, what the narrowest space becomes
}

func workLines(fields *field.Set, depth quantity.Optional) (l Lines) {
	undercut, line, space := fields.Amount(field.Undercut), fields.Amount(field.Line), fields.Amount(field.Space)
	if !undercut.Known() {
		return l
	}
	usual, worst := undercut.SI, undercut.SI
	if undercut.State == quantity.Assumed {
		worst = bite.MostUndercut
	}
	down := func(of func(undercut float64) float64) quantity.Range {
		x := quantity.Known(of(usual))
		return quantity.Range{Optional: x, Low: unlessSame(quantity.Known(of(worst)), x)}
	}
	up := func(of func(undercut float64) float64) quantity.Range {
		x := quantity.Known(of(usual))
		return quantity.Range{Optional: x, High: unlessSame(quantity.Known(of(worst)), x)}
	}
	if depth.Known() {
		l.Narrowest = up(func(u float64) float64 { return bite.NarrowestLine(u, depth.SI).SI })
	}
	if line.Known() && depth.Known() {
		l.Left = down(func(u float64) float64 { return bite.LineLeft(line.SI, u, depth.SI).SI })
	}
	if line.Known() && usual > 0 {
		l.Deepest = down(func(u float64) float64 { return bite.DeepestForLine(line.SI, u).SI })
	}
	if space.Known() && depth.Known() {
		l.Space = up(func(u float64) float64 { return bite.SpaceBecomes(space.SI, u, depth.SI).SI })
	}
	return l
}
