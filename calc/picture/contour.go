package picture

import (
	"math"
	"strconv"

	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Contour is where the local depth is the same. Path is SVG path data in per cent of the
// map's width and height, and the label stands at Across and Down, shares of them.
type Contour struct {
	Text, Path   string
	Across, Down float64
}

const (
	mostContours = 6
	straight     = 0.1 // per cent of the map: what a line may be off
	leastChain   = 3   // per cent: what is shorter says nothing
)

// contours are those at round depths, or at round shares of the mean where no depth is
// known.
func (p evenPrinter) contours(m evenness.Map, low, high float64) (list []Contour) {
	unit := 0.01 // of the mean: a per cent
	if p.mean.Known() {
		unit = quantity.Of(1, field.Depth.Row().Bare) / p.mean.SI
		if p.us {
			unit = quantity.Of(1, field.Depth.Row().USUnit) / p.mean.SI
		}
	}
	step := roundAbove((high-low)/unit/mostContours) * unit
	for n := math.Floor(low/step) + 1; n*step < high; n++ {
		if c := contourOf(m, n*step); c.Path != "" {
			c.Text = p.depth(n * step)
			list = append(list, c)
		}
	}
	return list
}

// roundAbove is the least of 1, 2 and 5 times a power of ten that is not under x.
func roundAbove(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, times := range []float64{1, 2, 5} {
		if times*power >= x {
			return times * power
		}
	}
	return 10 * power
}

// contourOf has all the chains of a level, its label in the middle of the longest.
func contourOf(m evenness.Map, level float64) (c Contour) {
	var path []byte
	longest := 0.0
	for _, chain := range m.Contours(level) {
		long := lengthOf(chain)
		if long < leastChain {
			continue
		}
		if long > longest {
			middle := chain[len(chain)/2]
			longest, c.Across, c.Down = long, middle.X, middle.Y
		}
		for i, place := range simplified(chain) {
			letter := byte('L')
			if i == 0 {
				letter = 'M'
			}
			path = strconv.AppendFloat(append(path, letter), hundredths(place.X), 'f', -1, 64)
			path = strconv.AppendFloat(append(path, ' '), hundredths(place.Y), 'f', -1, 64)
		}
	}
	c.Path = string(path)
	return c
}

// hundredths is a share in per cent, to a hundredth of one.
func hundredths(share float64) float64 { return math.Round(1e4*share) / 100 }

// lengthOf is that of a chain, in per cent.
func lengthOf(chain []evenness.Place) (sum float64) {
	for i := range len(chain) - 1 {
		sum += 100 * math.Hypot(chain[i+1].X-chain[i].X, chain[i+1].Y-chain[i].Y)
	}
	return sum
}

// simplified leaves out places that a straight line passes close enough: the farthest of
// the line between the ends stays, and both parts are simplified in the same way (Ramer, Douglas and
// Peucker; textbook).
func simplified(chain []evenness.Place) []evenness.Place {
	last := len(chain) - 1
	at, far := 0, straight/100
	for i := 1; i < last; i++ {
		if away := awayFrom(chain[0], chain[last], chain[i]); away > far {
			at, far = i, away
		}
	}
	if at == 0 {
		return []evenness.Place{chain[0], chain[last]}
	}
	return append(simplified(chain[:at+1]), simplified(chain[at:])[1:]...)
}

// awayFrom is how far a place is from the line through two others; from the first where
// they are one.
func awayFrom(a, b, p evenness.Place) float64 {
	dx, dy := b.X-a.X, b.Y-a.Y
	long := math.Hypot(dx, dy)
	if long < 1e-9 {
		return math.Hypot(p.X-a.X, p.Y-a.Y)
	}
	return math.Abs(dx*(p.Y-a.Y)-dy*(p.X-a.X)) / long
}
