package picture

import (
	"math"
	"strings"
	"testing"

	"saltbite/calc/evenness"
	"saltbite/calc/quantity"
)

// On a slope from 0.5 to 1.5 of a mean of 0.2 mm, from left to right, the contours are
// upright lines at round depths: 0.15 mm, 0.75 of the mean, lies a quarter of the way across,
// and 60 % of it a tenth. Straight ones have two places each.
func TestContours(t *testing.T) {
	m := evenness.Map{Columns: 200, Rows: 100}
	for i := range 200 * 100 {
		m.Values = append(m.Values, float32(0.5+(float64(i%200)+0.5)/200))
	}
	p := evenPrinter{mean: quantity.Known(0.2e-3)}
	list := p.contours(m, 0.5, 1.5)
	for i, want := range []string{"0.15 mm", "0.20 mm", "0.25 mm"} {
		across := []float64{0.25, 0.5, 0.75}[i]
		if len(list) != 3 || list[i].Text != want || math.Abs(list[i].Across-across) > 1e-3 || strings.Count(list[i].Path, "L") != 1 || strings.Count(list[i].Path, "M") != 1 {
			t.Fatalf("%+v", list)
		}
	}
	if shares := (evenPrinter{}).contours(m, 0.5, 1.5); len(shares) != 5 || shares[0].Text != "60 %" || math.Abs(shares[0].Across-0.1) > 1e-3 {
		t.Errorf("without a depth they are %+v", shares)
	}
}

// A circle is told by few places, each on it.
func TestContourOfACircle(t *testing.T) {
	const side, radius = 200, 0.3
	m := evenness.Map{Columns: side, Rows: side}
	for i := range side * side {
		x, y := (float64(i%side)+0.5)/side-0.5, (float64(i/side)+0.5)/side-0.5
		m.Values = append(m.Values, float32(1+radius-math.Hypot(x, y)))
	}
	chains := m.Contours(1)
	if len(chains) != 1 {
		t.Fatalf("%d chains", len(chains))
	}
	few := simplified(chains[0])
	if len(few) > len(chains[0])/5 || len(few) < 20 {
		t.Errorf("%d places of %d", len(few), len(chains[0]))
	}
	for _, place := range few {
		if got := math.Hypot(place.X-0.5, place.Y-0.5); math.Abs(got-radius) > 1e-3 {
			t.Errorf("%v lies %g from the middle", place, got)
		}
	}
}

// In per cent of the picture: 30 across and 40 down make 50 (3, 4, 5), and 10 down.
func TestLengthOfAChain(t *testing.T) {
	if got := lengthOf([]evenness.Place{{X: 0.1, Y: 0.1}, {X: 0.4, Y: 0.5}, {X: 0.4, Y: 0.6}}); math.Abs(got-60) > 1e-9 {
		t.Errorf("it is %g long", got)
	}
}
