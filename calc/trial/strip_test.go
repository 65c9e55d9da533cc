package trial

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/bite"
)

func TestSmallestStrip(t *testing.T) {
	strip := TestStrip{Law: copper, Resolution: 0.01 * gram, Within: 0.05, Density: 300, Deepest: 0.1 * mm} // 30 mA/cm2
	for _, x := range []struct {
		name                      string
		longest, least            float64
		area, current, time, deep float64
	}{
		// By hand: 0.2 g; / 8.96 g/cm3 / 0.1 mm is 2.2321 cm2; x 30 mA/cm2; 0.2 g / 0.0669643 A / 0.329304 mg/C.
		{"deep", 0, 0, 2.23214 * cm2, 0.0669643, 9069.6, 0.1 * mm},
		// By hand: an hour at 30 mA/cm2 bites 108 C/cm2 x 0.36753 um/(C/cm2) = 39.693 um.
		{"an hour", hour, 0, 5.62347 * cm2, 0.168704, hour, 0.0396932 * mm},
		// By hand: 0.1 A / 30 mA/cm2; 0.2 g / 0.1 A / 0.329304 mg/C; 0.2 g / 8.96 g/cm3 / 3.3333 cm2.
		{"a coarse supply", 0, 0.1, 3.33333 * cm2, 0.1, 6073.4, 0.0669643 * mm},
	} {
		s := strip
		s.Longest, s.LeastCurrent = x.longest, x.least
		run, ok := s.Smallest()
		if !ok || !near(run.Area, x.area, 2e-5) || !near(run.Current, x.current, 2e-5) || !near(run.Time, x.time, 2e-5) || !near(run.Depth, x.deep, 2e-5) || !near(run.Loss, 0.2*gram, 1e-12) {
			t.Errorf("%s: %+v %v", x.name, run, ok)
		}
	}
}

// Run and weighed, the strip tells the efficiency as closely as was asked, and
// of half the loss it would not.
func TestStripTellsTheEfficiency(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 22))
	var widest float64
	for range 20000 {
		s := TestStrip{Law: copper, Resolution: []float64{1e-3, 0.01, 0.1, 1}[r.IntN(4)] * gram, Within: 0.02 + 0.08*r.Float64(),
			Density: decades(r, 300, 1), Deepest: decades(r, 0.2*mm, 1), Longest: decades(r, 4*hour, 1) * float64(r.IntN(2)), LeastCurrent: decades(r, 0.1, 2) * float64(r.IntN(2))}
		run, ok := s.Smallest()
		if !ok {
			t.Fatalf("no strip: %+v", s)
		}
		if run.Depth > s.Deepest*(1+1e-12) || s.Longest > 0 && run.Time > s.Longest*(1+1e-12) || run.Current < s.LeastCurrent || !near(run.Current/run.Area, s.Density, 1e-12) {
			t.Fatalf("past a limit: %+v %+v", s, run)
		}
		truth := 0.85 + 0.2*r.Float64()
		before := (20 + r.Float64()) * 100 * run.Loss
		w := Weighing{Before: rounded(before, s.Resolution), After: rounded(before-truth*run.Loss, s.Resolution), Law: copper, Work: bite.Work{Area: run.Area, Pieces: 1}}
		off := math.Abs(w.Run(run.Current*run.Time, s.Resolution).Efficiency-truth) / s.Within
		if off > 1+1e-9 {
			t.Fatalf("efficiency off by %g of what was asked: %+v", off, s)
		}
		widest = math.Max(widest, off)
	}
	if widest < 0.9 {
		t.Errorf("never more than %g of the allowed error: the strip is larger than it need be", widest)
	}
}

func TestNoStrip(t *testing.T) {
	good := TestStrip{Law: copper, Resolution: 0.01 * gram, Within: 0.05, Density: 300, Deepest: 0.1 * mm}
	for name, spoil := range map[string]func(*TestStrip){
		"metal":      func(s *TestStrip) { s.Law = bite.Law{} },
		"resolution": func(s *TestStrip) { s.Resolution = 0 },
		"within":     func(s *TestStrip) { s.Within = math.NaN() },
		"density":    func(s *TestStrip) { s.Density = -1 },
		"deepest":    func(s *TestStrip) { s.Deepest = 0 },
	} {
		s := good
		spoil(&s)
		if run, ok := s.Smallest(); ok || run != (TestRun{}) {
			t.Errorf("without a %s: %+v", name, run)
		}
	}
}

// rounded is a weight as a balance with steps of that resolution shows it.
func rounded(weight, resolution float64) float64 { return math.Round(weight/resolution) * resolution }
