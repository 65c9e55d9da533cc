package bite

import "saltbite/calc/quantity"

// MostUndercut is the worst case of the undercut, side bite over depth, where no
// trial tells it: a bite that goes as far sideways as down; 0.5 is a start. Common
// practice, no source. Photochemical milling prints etch factors, its inverse, of 1.5
// to 3.5 (kohkenc.co.jp glossary 368, seen), which are undercuts of 0.67 to 0.29.
const MostUndercut = 1.0

// LineLeft is the width, m, that a raised line keeps at its top:
//
//	b - 2 u d
//
// with b the width of the resist over it, u the undercut and d the depth (m).
// Geometry: a side bite of u d from each side. Zero or less: the line is gone
// and the bites beside it have merged; how far the ridge between them then
// sinks is not known here.
func LineLeft(line, undercut, depth float64) quantity.Optional {
	return difference(line, bothSides(undercut, depth))
}

// NarrowestLine is the width of resist, m, whose line is just gone at that
// depth (m): 2 u d.
func NarrowestLine(undercut, depth float64) quantity.Optional {
	return quantity.Positive(bothSides(undercut, depth))
}

// DeepestForLine is the depth, m, at which a line under resist of that width
// (m) is just gone: b / (2 u). There is no value without undercut.
func DeepestForLine(line, undercut float64) quantity.Optional {
	return quantity.Positive(held(line) / 2 / undercut)
}

// SpaceBecomes is the width, m, at the surface of what was an open width (m)
// in the resist: s + 2 u d. True until its neighbour's bite is met.
func SpaceBecomes(space, undercut, depth float64) quantity.Optional {
	if held(space) == 0 {
		return quantity.Optional{}
	}
	return quantity.Positive(space + bothSides(undercut, depth))
}

// bothSides is the side bite from two sides, m.
func bothSides(undercut, depth float64) float64 { return 2 * undercut * depth }
