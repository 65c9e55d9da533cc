package bath

import (
	"math"
	"slices"
)

// point is a row of a table, in the units that the table's comment names.
type point struct{ x, y float64 }

// curve is a table read between its rows: through every row, and between two
// rows never higher or lower than they are, so that it rises where the table
// rises and can be read backwards. Cubic Hermite pieces with the slopes of
// Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300, from memory.
type curve struct{ x, y, slope []float64 }

// newCurve makes a curve of rows in rising order, each turned into SI by the
// two factors. There are at least three.
func newCurve(rows []point, perX, perY float64) curve {
	c := curve{make([]float64, len(rows)), make([]float64, len(rows)), make([]float64, len(rows))}
	for i, p := range rows {
		c.x[i], c.y[i] = p.x*perX, p.y*perY
	}
	last := len(rows) - 1
	for i := 1; i < last; i++ {
		c.slope[i] = middleSlope(c.x[i]-c.x[i-1], c.x[i+1]-c.x[i], c.chord(i-1), c.chord(i))
	}
	c.slope[0] = endSlope(c.x[1]-c.x[0], c.x[2]-c.x[1], c.chord(0), c.chord(1))
	c.slope[last] = endSlope(c.x[last]-c.x[last-1], c.x[last-1]-c.x[last-2], c.chord(last-1), c.chord(last-2))
	return c
}

// chord is the slope of the straight line from row i to the next.
func (c curve) chord(i int) float64 { return (c.y[i+1] - c.y[i]) / (c.x[i+1] - c.x[i]) }

// middleSlope is the weighted harmonic mean of the chords on both sides (a, b
// wide), or level where they disagree in sign.
func middleSlope(a, b, left, right float64) float64 {
	if left*right <= 0 {
		return 0
	}
	return 3 * (a + b) / ((a+2*b)/left + (2*a+b)/right)
}

// endSlope is that of the parabola through the three rows at an end, as far as
// it keeps the sign of the first chord and at most three times its slope.
func endSlope(a, b, first, second float64) float64 {
	s := ((2*a+b)*first - a*second) / (a + b)
	switch {
	case s*first <= 0:
		return 0
	case math.Abs(s) > 3*math.Abs(first):
		return 3 * first
	}
	return s
}

func (c curve) first() float64 { return c.x[0] }
func (c curve) last() float64  { return c.x[len(c.x)-1] }

// at reads the curve between its first and its last row; outside them it is
// level.
func (c curve) at(x float64) float64 {
	i, row := slices.BinarySearch(c.x, x)
	switch {
	case row:
		return c.y[i]
	case i == 0:
		return c.y[0]
	case i == len(c.x):
		return c.y[i-1]
	}
	i--
	h := c.x[i+1] - c.x[i]
	t := (x - c.x[i]) / h
	u := 1 - t
	return u*u*((1+2*t)*c.y[i]+t*h*c.slope[i]) + t*t*((1+2*u)*c.y[i+1]-u*h*c.slope[i+1])
}

// onward reads the straight line through the last two rows.
func (c curve) onward(x float64) float64 {
	last := len(c.x) - 1
	return c.y[last] + c.chord(last-1)*(x-c.x[last])
}

// solve finds where a function that rises from low to high reaches a value, to
// the last bit or two. The value lies between f(low) and f(high).
func solve(f func(float64) float64, low, high, value float64) float64 {
	for {
		middle := low + (high-low)/2
		if !(low < middle && middle < high) {
			return middle
		}
		if f(middle) < value {
			low = middle
		} else {
			high = middle
		}
	}
}
