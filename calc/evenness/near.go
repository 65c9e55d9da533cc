package evenness

import "math"

// Corners visits the four cells of a map whose middles lie round a place, each with its
// weight in what lies between them; at the map's edge some come twice.
func Corners(columns, rows int, at Place, visit func(cell int, weight float64)) {
	x, left, right := between(at.X, columns)
	y, upper, lower := between(at.Y, rows)
	visit(upper*columns+left, (1-x)*(1-y))
	visit(upper*columns+right, x*(1-y))
	visit(lower*columns+left, (1-x)*y)
	visit(lower*columns+right, x*y)
}

// between are the cells before and after a place, and how far it is on the way between
// their middles.
func between(share float64, cells int) (way float64, before, after int) {
	at := share*float64(cells) - 0.5
	floor := math.Floor(at)
	within := func(cell float64) int { return int(math.Max(0, math.Min(cell, float64(cells-1)))) }
	return at - floor, within(floor), within(floor + 1)
}

// Near is the local depth at a place: of the four cells round it those that are open
// count; 0 where none is.
func (m Map) Near(at Place) float64 {
	var sum, weights float64
	Corners(m.Columns, m.Rows, at, func(cell int, weight float64) {
		if depth := float64(m.Values[cell]); depth > 0 {
			sum += weight * depth
			weights += weight
		}
	})
	if weights == 0 {
		return 0
	}
	return sum / weights
}
