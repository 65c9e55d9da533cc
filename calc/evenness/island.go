package evenness

import (
	"cmp"
	"math"
	"slices"
)

// Spot is a place on the picture and the local depth there, over the mean. The current
// has no bound at a corner of bare metal unless polarisation, or the disc that depths are
// averaged over, is larger than a cell: Over says that it still grew with the grid, so
// that Depth is only what is passed there.
type Spot struct {
	X, Y  float64 // m, from the picture's top left
	Depth float64
	Over  bool
}

// Island is a separate open area: cells that are half open or more and touch at
// their sides. One that is narrower than a cell may be missing or in parts.
type Island struct {
	Area    float64 // m2, of the metal in its cells
	Mean    float64 // depth over the picture's mean
	Deepest Spot
}

const (
	mostSpots   = 8
	mostIslands = 20
	spotsApart  = 0.05 // of the picture's longer side
	noticeable  = 1.01 // of the mean: what is less is no hot spot
)

// spot is a cell as a place.
func (d *depths) spot(i int) Spot {
	return Spot{X: (float64(i%d.columns) + 0.5) * d.dx, Y: (float64(i/d.columns) + 0.5) * d.dy, Depth: d.local[i]}
}

// grew is how much deeper a spot may be than on the coarser grid and count as settled, of
// its depth.
const grew = 0.05

// settle says which of the hot spots grew from a coarser grid's map to this one. A spot
// there is the deepest of the cells round its place.
func (r *Result) settle(coarser Map, p Problem) {
	for i := range r.HotSpots {
		s := &r.HotSpots[i]
		s.Over = coarser.deepestRound(Place{s.X / p.Width, s.Y / p.Height}) < (1-grew)*s.Depth
	}
}

// deepestRound is the deepest of the cell at a place and those round it.
func (m Map) deepestRound(at Place) (deepest float64) {
	column, row := int(at.X*float64(m.Columns)), int(at.Y*float64(m.Rows))
	for y := max(row-1, 0); y <= min(row+1, m.Rows-1); y++ {
		for x := max(column-1, 0); x <= min(column+1, m.Columns-1); x++ {
			deepest = math.Max(deepest, float64(m.Values[y*m.Columns+x]))
		}
	}
	return deepest
}

// hotSpots are the deepest places that are at least so deep and not close to a
// deeper one.
func (d *depths) hotSpots(least float64) []Spot {
	var found []Spot
	for i, open := range d.open {
		if open >= 0.5 && d.local[i] >= max(least, noticeable) && d.isPeak(i) {
			found = append(found, d.spot(i))
		}
	}
	slices.SortStableFunc(found, func(a, b Spot) int { return cmp.Compare(b.Depth, a.Depth) })
	apart := spotsApart * max(float64(d.columns)*d.dx, float64(d.rows)*d.dy)
	var kept []Spot
	for _, s := range found {
		if len(kept) < mostSpots && !slices.ContainsFunc(kept, func(k Spot) bool { return s.near(k, apart) }) {
			kept = append(kept, s)
		}
	}
	return kept
}

func (s Spot) near(other Spot, apart float64) bool {
	dx, dy := s.X-other.X, s.Y-other.Y
	return dx*dx+dy*dy < apart*apart
}

// isPeak says whether none of the cells at a cell's sides is deeper.
func (d *depths) isPeak(i int) bool {
	peak := true
	d.eachBeside(i, func(j int) { peak = peak && !(d.open[j] >= 0.5 && d.local[j] > d.local[i]) })
	return peak
}

// eachBeside visits the cells that share a side with a cell.
func (d *depths) eachBeside(i int, visit func(j int)) {
	column, row := i%d.columns, i/d.columns
	if column > 0 {
		visit(i - 1)
	}
	if column < d.columns-1 {
		visit(i + 1)
	}
	if row > 0 {
		visit(i - d.columns)
	}
	if row < d.rows-1 {
		visit(i + d.columns)
	}
}

// islands are the separate open areas, the one that goes deepest first.
func (d *depths) islands() []Island {
	seen := make([]bool, len(d.open))
	var all []Island
	for i := range d.open {
		if d.open[i] >= 0.5 && !seen[i] {
			all = append(all, d.island(i, seen))
		}
	}
	slices.SortStableFunc(all, func(a, b Island) int { return cmp.Compare(b.Deepest.Depth, a.Deepest.Depth) })
	return all[:min(len(all), mostIslands):min(len(all), mostIslands)]
}

// island is the one that a cell belongs to.
func (d *depths) island(i int, seen []bool) Island {
	seen[i] = true
	deepest := i
	var metal, removed float64
	for queue := []int{i}; len(queue) > 0; {
		i := queue[len(queue)-1]
		queue = queue[:len(queue)-1]
		metal += d.open[i]
		removed += d.open[i] * d.local[i]
		if d.local[i] > d.local[deepest] {
			deepest = i
		}
		d.eachBeside(i, func(j int) {
			if d.open[j] >= 0.5 && !seen[j] {
				seen[j] = true
				queue = append(queue, j)
			}
		})
	}
	return Island{metal * d.dx * d.dy, removed / metal, d.spot(deepest)}
}
