package trial

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/bite"
)

// Every half hour: 0.30, 0.28, 0.27 A.
func TestReadings(t *testing.T) {
	read := Readings{{0, 0.30}, {0.5 * hour, 0.28}, {1 * hour, 0.27}}
	trend, ok := known(read.ReadyByTrend(0.50 * hour))
	if !ok {
		t.Fatal("no trend")
	}
	for _, x := range []struct {
		name                 string
		got, want, tolerance float64
	}{
		{"charge", read.Charge(), 0.2825 * hour, 1e-12},       // by hand: 0.5 h x (0.30/2 + 0.28 + 0.27/2) A
		{"elapsed", elapsed(read), 1 * hour, 1e-12},           // by hand: 1 h - 0
		{"ready", read.ReadyIn(0.50 * hour).SI, 2900, 1e-9},   // by hand: 0.2175 A.h / 0.27 A
		{"ready already", read.ReadyIn(0.28 * hour).SI, 0, 0}, // 0.2825 A.h have flowed
		{"ready by trend", trend, 3063.77, 1e-5},              // by hand: line 0.283333 - 0.03 (t - 0.5 h): at 1 h 0.268333 A; (0.268333 - sqrt(0.268333^2 - 4 x 0.015 x 0.2175)) / 0.03 h, the root of 0.268333 t - 0.015 t^2 = 0.2175 h
		{"depth", DepthSoFar(bite.Law{Equivalent: equivalentOfCopper, Density: densityOfCopper, Efficiency: 1}, bite.Work{Area: 10 * cm2, Pieces: 1}, read.Charge()).SI, 0.037378 * mm, 1e-4}, // by hand: 1017 C / 10 cm2 x 0.36753 um/(C/cm2)
	} {
		if !near(x.got, x.want, x.tolerance) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

func TestPastMidnight(t *testing.T) {
	clock := func(h, m float64) float64 { return h*hour + m*minute }
	read := Readings{{clock(22, 30), 1}, {clock(23, 30), 1}, {clock(0, 30), 1}, {clock(7, 0), 1}, {clock(6, 0), 1}}
	later := read.PastMidnight()
	if got, want := elapsed(later), 31.5*hour; !near(got, want, 1e-12) { // by hand: half past ten at night to six, two mornings on
		t.Errorf("%g h, want %g", got/hour, want/hour)
	}
	if got, want := later.Charge(), 31.5*hour; !near(got, want, 1e-12) { // 1 A all that time
		t.Errorf("%g A.h, want %g", got/hour, want/hour)
	}
	if read[2].Time != clock(0, 30) {
		t.Error("the readings themselves were changed")
	}
	same := Readings{{0, 1}, {minute, 2}, {minute, 3}}.PastMidnight()
	if got := elapsed(same); got != minute {
		t.Errorf("an equal time adds %g s", got-minute)
	}
}

// A current that falls on a straight line is told exactly by the trend, and its
// charge exactly by straight lines.
func TestTrendOfALine(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 5000 {
		first, end := decades(r, 0.3, 6), decades(r, 4*hour, 4)
		slope := first / end * (r.Float64() - 0.5) // anything but run out by twice the end
		at := func(t float64) float64 { return first + slope*t }
		flowed := func(t float64) float64 { return (first + slope*t/2) * t }
		var read Readings
		for i := range 2 + r.IntN(6) {
			read = append(read, Reading{float64(i) * end / 8, at(float64(i) * end / 8)})
		}
		gone := elapsed(read)
		if got := read.Charge(); !near(got, flowed(gone), 1e-9) {
			t.Fatalf("charge %g, want %g", got, flowed(gone))
		}
		if got, ok := known(read.ReadyByTrend(flowed(end))); !ok || !near(got, end-gone, 1e-7) {
			t.Fatalf("ready in %g %v, want %g: %v", got, ok, end-gone, read)
		}
		// Charge at the last current takes less time while the current falls.
		byLast := read.ReadyIn(flowed(end)).SI
		if slope < 0 && byLast > (end-gone)*(1+1e-9) || slope > 0 && byLast < (end-gone)*(1-1e-9) {
			t.Fatalf("at the last current %g, by the trend %g, slope %g", byLast, end-gone, slope)
		}
	}
}

// The straight lines of the trapezium rule against a current that decays, whose
// integral is known: I0 tau (1 - exp(-t/tau)).
func TestChargeOfADecay(t *testing.T) {
	var read Readings
	for i := range 61 {
		x := float64(i) / 60
		read = append(read, Reading{x * hour, math.Exp(-x)})
	}
	if got, want := read.Charge(), hour*(1-math.Exp(-1)); !near(got, want, 1.0/60/60/12*1.01) { // error of the rule: step^2/12 of it
		t.Errorf("charge %g, want %g", got, want)
	}
}

func TestNoTrend(t *testing.T) {
	for what, read := range map[string]Readings{
		"none":             {},
		"one":              {{0, 1}},
		"all at once":      {{60, 1}, {60, 0.9}},
		"runs out":         {{0, 1}, {hour, 0.1}},
		"not a number":     {{0, 1}, {math.NaN(), 0.9}},
		"beyond all bound": {{0, math.MaxFloat64}, {1, -math.MaxFloat64}},
	} {
		if got, ok := known(read.ReadyByTrend(10 * hour)); ok || got != 0 {
			t.Errorf("%s: ready in %g", what, got)
		}
	}
	if got, ok := known((Readings{{0, 1}, {hour, 0.1}}).ReadyByTrend(0.1 * hour)); !ok || got != 0 { // 0.55 A.h have flowed
		t.Errorf("ready already, yet in %g %v", got, ok)
	}
}

// elapsed is the time from the first reading to the last, s.
func elapsed(r Readings) float64 { return r.last().Time - r[0].Time }
