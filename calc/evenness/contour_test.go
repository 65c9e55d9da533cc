package evenness

import (
	"math"
	"testing"
)

// hill is a cone whose height is 2 less the distance from the middle over half
// the side.
func hill(side int) Map {
	m := Map{side, side, make([]float32, side*side)}
	for i := range m.Values {
		x, y := (float64(i%side)+0.5)/float64(side)-0.5, (float64(i/side)+0.5)/float64(side)-0.5
		m.Values[i] = float32(2 - 2*math.Hypot(x, y))
	}
	return m
}

func length(chain []Place) (sum float64) {
	for i := range chain[1:] {
		sum += math.Hypot(chain[i+1].X-chain[i].X, chain[i+1].Y-chain[i].Y)
	}
	return sum
}

// The contour of a cone is a circle, in one piece that ends where it begins.
func TestContourOfACone(t *testing.T) {
	chains := hill(64).Contours(1.4)
	if len(chains) != 1 || chains[0][0] != chains[0][len(chains[0])-1] {
		t.Fatalf("%d chains", len(chains))
	}
	for _, p := range chains[0] {
		if r := math.Hypot(p.X-0.5, p.Y-0.5); !near(r, 0.3, 0.005) { // 2 - 2 r = 1.4
			t.Fatalf("%+v is %g from the middle", p, r)
		}
	}
	if got := length(chains[0]); !near(got, 2*math.Pi*0.3, 0.01) {
		t.Errorf("%g round", got)
	}
	if chains := hill(64).Contours(5); chains != nil {
		t.Errorf("%d chains above the top", len(chains))
	}
}

// Beside resist a line ends; it does not run along it.
func TestContourEndsAtResist(t *testing.T) {
	m := hill(64)
	for i := range m.Values {
		if i%64 < 32 {
			m.Values[i] = 0
		}
	}
	chains := m.Contours(1.4)
	if len(chains) != 1 {
		t.Fatalf("%d chains", len(chains))
	}
	chain := chains[0]
	for _, end := range []Place{chain[0], chain[len(chain)-1]} {
		if math.Abs(end.X-32.5/64) > 1e-9 {
			t.Errorf("ends at %+v", end)
		}
	}
	if got := length(chain); !near(got, math.Pi*0.3, 0.03) {
		t.Errorf("%g long", got)
	}
}

// At a saddle the middle decides, and no line crosses another.
func TestContourAtASaddle(t *testing.T) {
	for _, c := range []struct {
		values []float32
		cut    Place // a place on the line that cuts this corner off
	}{
		{[]float32{4, 1, 1, 4}, Place{0.75, 0.25}}, // the middle, 2.5, is above 2: the low corners are cut off
		{[]float32{3, 0.5, 0.5, 3}, Place{0.25, 0.25}},
	} {
		chains := Map{2, 2, c.values}.Contours(2)
		if len(chains) != 2 {
			t.Fatalf("%v: %d chains", c.values, len(chains))
		}
		nearest := math.Inf(1)
		for _, chain := range chains {
			middle := Place{(chain[0].X + chain[1].X) / 2, (chain[0].Y + chain[1].Y) / 2}
			nearest = min(nearest, math.Hypot(middle.X-c.cut.X, middle.Y-c.cut.Y))
		}
		if nearest > 0.15 {
			t.Errorf("%v: %v", c.values, chains)
		}
	}
}
