package circuit

import (
	"math"

	"saltbite/calc/quantity"
)

// Face is the outline of one piece as the cathode sees it: round where it has a
// diameter, else a rectangle.
type Face struct{ Width, Height, Diameter float64 } // m

// MeanFace is the face that equal pieces have which stand for unlike ones side by
// side, so many of each: as wide as those in the mean, and as high as keeps the
// area of all. A round one counts as the square of its area. Where one of the
// faces is not known, none is. A choice, as the row of Cell.Resistance is.
func MeanFace(faces []Face, counts []float64) Face {
	var pieces, width, area float64
	for i, f := range faces {
		if f.area() == 0 {
			return Face{}
		}
		w, h := f.upright()
		pieces, width, area = pieces+counts[i], width+counts[i]*w, area+counts[i]*w*h
	}
	return Face{Width: quantity.Positive(width / pieces).SI, Height: quantity.Positive(area / width).SI}
}

// upright is the face as a rectangle, m: a round one as the square of its area.
func (f Face) upright() (width, height float64) {
	if f.Diameter > 0 {
		side := math.Sqrt(f.area())
		return side, side
	}
	return quantity.Positive(f.Width).SI, quantity.Positive(f.Height).SI
}

// area is that of the face, m2.
func (f Face) area() float64 {
	if f.Diameter > 0 {
		return quantity.Positive(math.Pi / 4 * f.Diameter * f.Diameter).SI
	}
	return quantity.Positive(quantity.Positive(f.Width).SI * quantity.Positive(f.Height).SI).SI
}
