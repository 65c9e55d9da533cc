package circuit

import (
	"math"

	"saltbite/calc/bite"
)

// Face is the outline of one piece as the cathode sees it: round where it has a
// diameter, else a rectangle.
type Face struct{ Width, Height, Diameter float64 } // m

// SquareFace stands for a face of which only the open area (m2) is known: the
// square of that area. It is too small where resist lies between open areas,
// so the resistance by it is too high.
func SquareFace(open float64) Face {
	side := math.Sqrt(bite.Held(open))
	return Face{Width: side, Height: side}
}

// Area is that of the face, m2.
func (f Face) Area() float64 { return f.grown(0) }

// grown is the area, m2, of the face with so much (m) added on every side.
func (f Face) grown(margin float64) float64 {
	if f.Diameter > 0 {
		d := f.Diameter + 2*margin
		return bite.Held(math.Pi / 4 * d * d)
	}
	if bite.Held(f.Width) == 0 || bite.Held(f.Height) == 0 {
		return 0
	}
	return bite.Held((f.Width + 2*margin) * (f.Height + 2*margin))
}
