package picture

import (
	"math"
	"strings"
	"testing"

	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// At the ends of the lone line the current density has no bound as cells get smaller (a
// corner of a conductor in an insulator: textbook), so what is told there is a depth that is
// passed: that of the 95th percentile. Where the metal polarises a hundred times as much, so that what is rounded off is wider than a
// cell, it settles.
func TestPeakIsOverWhatIsTold(t *testing.T) {
	p, fields, _ := Classic("line", field.Read("gap=20&depth=0.2"))
	e := even(p, fields, 256, func(float64) {})
	r := EvenSaid(e)
	for i, s := range r.Spots[:2] {
		if at := e.Result.HotSpots[i].Depth * 0.2; !s.Over || !strings.HasPrefix(s.Depth.Text, "over ") || s.Depth.Value >= at || math.Abs(s.Depth.Value-r.answer("most")/100*0.2) > 1e-9 {
			t.Errorf("it says %q, %g of %g mm", s.Depth.Text, s.Depth.Value, at)
		}
	}
	e.Problem.Polarisation *= 100
	settled, err := evenness.Solve(e.Problem, nil)
	if err != nil || len(settled.HotSpots) == 0 || settled.HotSpots[0].Over {
		t.Errorf("%v, %+v", err, settled.HotSpots)
	}
	said := evenPrinter{mean: quantity.Known(2e-4)}.spot(settled.HotSpots[0], settled.Most)
	if strings.Contains(said.Text, "over") || said.Value < 0.2*settled.Most {
		t.Errorf("it says %q", said.Text)
	}
}

// What is deeper than a level can say is no deeper in words.
func TestDeepestLevel(t *testing.T) {
	p, fields, _ := Classic("line", field.Read("gap=20&depth=0.2"))
	r := EvenSaid(even(p, fields, 256, func(float64) {}))
	if last := r.Shades[len(r.Shades)-1].Text; last != "0.51 mm, 255 % of the mean, or more" { // 2.55 x 0.2 mm
		t.Errorf("the deepest is %q", last)
	}
}
