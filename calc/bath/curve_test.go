package bath

import (
	"math"
	"testing"
)

// The slopes of a curve through rows at unequal distances, after Fritsch and Butland
// (1984) in the form of Moler's "Numerical Computing with MATLAB", chapter 3, from memory.
func TestSlopesOfACurve(t *testing.T) {
	c := newCurve([]point{{0, 0}, {1, 2}, {3, 3}, {4, 7}}, 1, 1)
	for i, want := range []float64{
		2.5,               // ((2+2) 2 - 1 x 0.5) / 3
		9.0 / (2.5 + 8),   // weights 5 and 4 over the chords 2 and 0.5
		9.0 / (8 + 5./4),  // weights 4 and 5 over the chords 0.5 and 4
		(4*4 - 0.5) / 3.0, // ((2+2) 4 - 1 x 0.5) / 3
	} {
		if math.Abs(c.slope[i]-want) > 1e-12 {
			t.Errorf("the slope at row %d is %v, not %v", i, c.slope[i], want)
		}
	}
}

// Of a parabola the slopes at the ends are its own; a straight line stays one.
func TestCurvesOfKnownShape(t *testing.T) {
	parabola := newCurve([]point{{1, 2}, {2, 6}, {4, 20}, {5, 30}}, 1, 1) // x^2 + x
	if first, last := parabola.slope[0], parabola.slope[3]; math.Abs(first-3) > 1e-12 || math.Abs(last-11) > 1e-12 {
		t.Errorf("x^2 + x rises by %v at 1 and by %v at 5", first, last)
	}
	line := newCurve([]point{{1, 10}, {2, 13}, {6, 25}, {7, 28}}, 1, 2)
	for x := 1.0; x <= 7; x += 0.25 {
		if got := line.at(x); math.Abs(got-(14+6*x)) > 1e-12 {
			t.Errorf("14 + 6 x is %v at %v", got, x)
		}
	}
	if got := line.onward(9); math.Abs(got-68) > 1e-12 {
		t.Errorf("14 + 6 x goes on to %v at 9", got)
	}
}

// Between two rows a curve never leaves them, and where rows turn it is level.
func TestCurvesDoNotOvershoot(t *testing.T) {
	rows := []point{{0, 0}, {1, 0.1}, {1.5, 8}, {4, 8.1}, {5, 3}, {9, 2.9}, {10, 9}}
	c := newCurve(rows, 1, 1)
	for i := range rows[1:] {
		a, b := rows[i], rows[i+1]
		for s := 0.0; s <= 1; s += 0.01 {
			y := c.at(a.x + s*(b.x-a.x))
			if y < math.Min(a.y, b.y)-1e-12 || y > math.Max(a.y, b.y)+1e-12 {
				t.Errorf("between %v and %v it is %v", a, b, y)
			}
		}
	}
	if c.slope[3] != 0 || c.slope[5] != 0 {
		t.Errorf("it turns with the slopes %v and %v", c.slope[3], c.slope[5])
	}
	if c.at(-1) != 0 || c.at(11) != 9 {
		t.Errorf("outside its rows it is %v and %v", c.at(-1), c.at(11))
	}
}
