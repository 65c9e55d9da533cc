package circuit

import (
	"math"

	"saltbite/calc/bath"
	"saltbite/calc/quantity"
)

// Cell is the work, the cathode that faces it, and the bath between them.
type Cell struct {
	Conductivity float64 // S/m
	Gap          float64 // m, anode to cathode
	Face         Face    // of one piece; zero where it is not known
	Open         float64 // m2, open area of one piece, all sides
	Pieces       float64 // how many hang side by side
	Cathode      float64 // m2, facing area
	Section      float64 // m2, of the bath between the two; 0: not known, taken as endless
}

// Resistance is that of the bath, ohm: the current spreads from the face to the
// middle of the gap and closes in on the cathode from there. Two truncated
// cones, one behind the other:
//
//	R = g / (2 kappa) [1 / sqrt(A1 Am) + 1 / sqrt(Am A2)]
//
//	A1 = w h                  the faces of all pieces side by side
//	Am = (w + g) (h + g)      in the middle of the gap
//	A2 = the cathode, at most (w + 2 g) (h + 2 g)
//
// with g the gap and kappa the conductivity. A rectangle has w = pieces x width
// and h = height; a disc counts as the square of its area; without a face the
// open area of one piece counts as a square. No area is larger than the section
// of the bath. Textbook physics (a cone that tapers slowly); where the cones
// end is a choice. Resist within the face is left out.
//
// Exact where both plates fill the section. Where the cathode covers the work
// it is within 15 % of sixteen tanks solved in three dimensions. It fails, and
// is far too low, for a cathode much smaller than the face and close to it:
// SmallCathode says so.
func (c Cell) Resistance() quantity.Optional {
	width, height := c.row()
	return c.between(width, height, c.Cathode)
}

// between is Resistance for a face of that width and height (m) and an area (m2)
// that faces it.
func (c Cell) between(width, height, facing float64) quantity.Optional {
	grown := func(by float64) float64 { return quantity.Positive(c.within((width + by) * (height + by))).SI }
	face, middle := math.Sqrt(grown(0)), math.Sqrt(grown(c.Gap))
	end := math.Sqrt(math.Min(quantity.Positive(facing).SI, grown(2*c.Gap)))
	spreading, closing := c.column(2*face*middle), c.column(2*middle*end)
	if spreading == 0 || closing == 0 {
		return quantity.Optional{}
	}
	return quantity.Positive(spreading + closing)
}

// HighResistance is how large the bath's resistance may be, ohm: the larger of
// Resistance and the smaller of
//
//	1 / (4 kappa a) + 1 / (4 kappa b)      two discs far apart
//	1.6 g / (kappa A)                      a column between the two
//
// with a and b the radii of all open metal and of the cathode, each as one disc,
// and A the lesser of the two areas. Metal that is hidden is left out. A disc in
// an insulating wall before all the bath is exact (J. Newman, J. Electrochem.
// Soc. 113 (1966) 501); 1.6 is a choice.
func (c Cell) HighResistance() quantity.Optional {
	metal := quantity.Positive(c.Pieces * c.Open).SI
	discs := quantity.Positive(c.disc(metal) + c.disc(c.Cathode)).SI
	column := quantity.Positive(1.6 * c.column(math.Min(metal, c.Cathode))).SI
	if column == 0 {
		return quantity.Optional{}
	}
	return quantity.Positive(math.Max(c.Resistance().SI, math.Min(discs, column)))
}

// SquareFace says whether no face is known, so that the open area stands for it.
// That is too small where resist lies between the open areas, and the
// resistance is then too high.
func (c Cell) SquareFace() bool { return c.Face.area() == 0 }

// SmallCathode says whether the cathode is so much smaller than the face, and so
// close to it, that Resistance is too low by more than the 15 % it is good for.
// A bath resists as much from the cathode to the work as from the work to the
// cathode, so the cones are drawn from the cathode too, as a square, and the two
// results compared.
func (c Cell) SmallCathode() bool {
	const goodFor = 0.15
	width, height := c.row()
	face, side := c.within(width*height), math.Sqrt(quantity.Positive(c.Cathode).SI)
	return c.Cathode < face && c.between(side, side, face).SI > (1+goodFor)*c.Resistance().SI
}

// row is the width and the height, m, of all pieces side by side.
func (c Cell) row() (width, height float64) {
	width, height = c.Face.upright()
	if c.SquareFace() {
		width = math.Sqrt(quantity.Positive(c.Open).SI)
		height = width
	}
	return quantity.Positive(quantity.Positive(c.Pieces).SI * width).SI, height
}

// within is an area, m2, but at most the bath's section where that is known.
func (c Cell) within(area float64) float64 {
	if section := quantity.Positive(c.Section).SI; section > 0 {
		return math.Min(area, section)
	}
	return area
}

// column is the resistance, ohm, of bath as long as the gap and of that cross
// section, m2, throughout.
func (c Cell) column(section float64) float64 {
	return quantity.Positive(quantity.Positive(c.Gap).SI / quantity.Positive(c.Conductivity).SI / quantity.Positive(section).SI).SI
}

// disc is the resistance, ohm, before an area, m2, as a disc in an insulating
// wall: 1 / (4 kappa radius).
func (c Cell) disc(area float64) float64 {
	radius := math.Sqrt(quantity.Positive(area).SI / math.Pi)
	return quantity.Positive(1 / (4 * quantity.Positive(c.Conductivity).SI * radius)).SI
}

// Tank is what holds the bath, inside, and how high the liquid stands in it.
// What is not known is 0.
type Tank struct{ Length, Width, Diameter, Fill float64 } // m

// Section is the bath's cross section, m2, that the current between work and
// cathode has at most:
//
//	hanging:            width x fill, or diameter x fill
//	face down or up:    the floor: length x width, or pi/4 diameter^2
//
// Geometry. Zero where the tank is not known. A hanging pair is taken to stand
// across the tank's length; in a round tank the section is that through its
// middle, the widest.
func (t Tank) Section(p bath.Position) float64 {
	length, width, diameter, fill := quantity.Positive(t.Length).SI, quantity.Positive(t.Width).SI, quantity.Positive(t.Diameter).SI, quantity.Positive(t.Fill).SI
	round := diameter > 0
	switch {
	case p == bath.Hanging && round:
		return quantity.Positive(diameter * fill).SI
	case p == bath.Hanging:
		return quantity.Positive(width * fill).SI
	case round:
		return quantity.Positive(math.Pi / 4 * diameter * diameter).SI
	}
	return quantity.Positive(length * width).SI
}
