package evenness

import (
	"math"
	"testing"
)

// Between the middles of open cells the depth is that of straight lines (a plane stays one);
// resist does not count, and nothing lies beyond the edge.
func TestNear(t *testing.T) {
	plane := Map{Columns: 8, Rows: 4}
	for i := range 32 {
		plane.Values = append(plane.Values, float32(1+0.5*(float64(i%8)+0.5)/8+0.25*(float64(i/8)+0.5)/4))
	}
	for _, at := range []Place{{0.5, 0.5}, {0.1, 0.3}, {0.93, 0.87}} {
		if got, want := plane.Near(at), 1+0.5*at.X+0.25*at.Y; math.Abs(got-want) > 1e-6 {
			t.Errorf("at %v it is %g, not %g", at, got, want)
		}
	}
	edge := Map{Columns: 2, Rows: 1, Values: []float32{0, 0.75}}
	for at, want := range map[Place]float64{{0.5, 0}: 0.75, {1, 1}: 0.75, {0, 0.5}: 0} {
		if got := edge.Near(at); got != want {
			t.Errorf("beside resist, at %v, it is %g, not %g", at, got, want)
		}
	}
}
