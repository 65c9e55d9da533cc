package drawing_test

import (
	"math"
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

// The grid is the roundest that gives three steps or more: of 14.99 % with a margin of a
// twentieth at either end (16.49 %) a third is 5.5, of 13.5 % (14.85 %) 4.95, under 5. And
// the runs take most of the height.
func TestAgeingFillsItsFrame(t *testing.T) {
	for _, c := range []struct {
		spread float64
		step   string
	}{{14.99, "5"}, {13.5, "2"}, {13.7, "5"}} {
		low := 0.8
		high := low + c.spread/100
		a := drawing.Ageing{Of: "copper", Share: shareText, Low: low, High: high, Mean: drawing.Size{SI: (low + high) / 2, Text: "x"},
			Runs: []drawing.AgeingRun{{Efficiency: low}, {Efficiency: high}}}
		var marks []float64
		top, bottom := math.Inf(1), math.Inf(-1)
		for _, s := range a.Draw().Shapes {
			if mark, err := strconv.ParseFloat(s.Text, 64); err == nil && s.Anchor == drawing.End {
				marks = append(marks, mark)
			}
			if s.Role == drawing.Reading {
				for _, p := range points(t, s.Path) {
					top, bottom = math.Min(top, p.y), math.Max(bottom, p.y)
				}
			}
		}
		if len(marks) < 3 || strconv.FormatFloat(marks[1]-marks[0], 'g', 3, 64) != c.step {
			t.Errorf("%g %% are told at %v, not in steps of %s", c.spread, marks, c.step)
		}
		if high := bottom - top; high < 30 || high > 33 { // of 33 mm
			t.Errorf("%g %% take %g mm of the height", c.spread, high)
		}
	}
}
