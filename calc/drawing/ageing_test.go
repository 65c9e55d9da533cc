package drawing_test

import (
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/drawing"
)

func shareText(x float64) string { return strconv.FormatFloat(100*x, 'g', 3, 64) + " %" }

// Whatever the runs are, no text stands on another or outside.
func TestAgeing(t *testing.T) {
	r := rand.New(rand.NewPCG(61, 62))
	for range 2000 {
		spread := []float64{0, 1e-6, 0.01, 0.1, 2}[r.IntN(5)]
		a := drawing.Ageing{Of: "copper in copper sulfate", Trend: "It falls.", Share: shareText, Slope: spread * (r.Float64() - 0.5) / 10}
		for range 2 + r.IntN([]int{5, 50, 2000}[r.IntN(3)]) {
			a.Runs = append(a.Runs, drawing.AgeingRun{Efficiency: 0.95 + spread*(r.Float64()-0.5), Odd: r.IntN(9) == 0})
		}
		a.Mean, a.Low, a.High = drawing.Size{SI: 0.95, Text: shareText(0.95)}, 0.95-spread*r.Float64(), 0.95+spread*r.Float64()
		d := a.Draw()
		if d == nil {
			if spread == 0 {
				continue // nothing to tell apart
			}
			t.Fatalf("no drawing of %+v", a)
		}
		for _, wrong := range sound(t, d, 0, screenLeast) {
			t.Errorf("%d runs, spread %g: %s", len(a.Runs), spread, wrong)
		}
		drawn := 0
		for _, shape := range d.Shapes {
			if shape.Role == drawing.Reading {
				drawn++
			}
		}
		if drawn != min(len(a.Runs), 300) || strings.Contains(d.Words, "last 300") != (len(a.Runs) > 300) {
			t.Errorf("%d of %d runs are drawn: %s", drawn, len(a.Runs), d.Words)
		}
		if t.Failed() {
			return
		}
	}
	if d := (drawing.Ageing{Runs: make([]drawing.AgeingRun, 1)}).Draw(); d != nil {
		t.Errorf("one run is drawn: %+v", d)
	}
}
