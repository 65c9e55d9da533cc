package circuit

import (
	"math"

	"saltbite/calc/quantity"
)

// Face is the outline of one piece as the cathode sees it: round where it has a
// diameter, else a rectangle.
type Face struct{ Width, Height, Diameter float64 } // m

// area is that of the face, m2.
func (f Face) area() float64 {
	if f.Diameter > 0 {
		return quantity.Positive(math.Pi / 4 * f.Diameter * f.Diameter).SI
	}
	return quantity.Positive(quantity.Positive(f.Width).SI * quantity.Positive(f.Height).SI).SI
}
