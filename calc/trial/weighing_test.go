package trial

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/bite"
	"saltbite/calc/quantity"
)

const (
	mm, cm2, gram, minute, hour = 1e-3, 1e-4, 1e-3, 60.0, 3600.0
	faraday                     = 6.02214076e23 * 1.602176634e-19 // C/mol, N_A e, both exact in the SI of 2019
	equivalentOfCopper          = 63.546e-3 / 2 / faraday         // kg/C, abridged atomic weights, from memory
	densityOfCopper             = 8960                            // kg/m3, CRC Handbook, from memory
)

var copper = bite.Law{Equivalent: equivalentOfCopper, Density: densityOfCopper}

// near says whether got is want to a relative tolerance.
func near(got, want, tolerance float64) bool {
	return math.Abs(got-want) <= tolerance*math.Abs(want)
}

// known takes a number apart as the tests compare it.
func known(o quantity.Optional) (x float64, ok bool) { return o.SI, o.Known() }

// decades draws a number spread evenly over that many decades about a middle.
func decades(r *rand.Rand, middle, span float64) float64 {
	return middle * math.Pow(10, (r.Float64()-0.5)*span)
}

// Coulometers of the schoolbook: a plate weighed before and after.
func TestEfficiencyOfPublishedWeighings(t *testing.T) {
	for _, x := range []struct {
		name               string
		equivalent         float64
		before, after      float64
		charge             float64
		efficiency, within float64
	}{
		{"copper plate, 0.123 A for an hour", 63.5e-3 / 2 / 96485, 10 * gram, (10 - 0.1457) * gram, 0.123 * hour, 1, 8e-4},   // Instant Notes Analytical Chemistry, C2, p. 65 (seen): 0.1457 g; the 10 g are invented
		{"copper, 3.00 A for 11 min", 63.55e-3 / 2 / 96485, 10 * gram, (10 - 0.652) * gram, 3 * 11 * minute, 1, 8e-4},        // clutchprep.com problem 41005 (seen): 0.652 g; the 10 g are invented
		{"nickel at 60 %, 15 A for an hour", 58.7e-3 / 2 / 96500, 50 * gram, (50 - 10) * gram, 15 * hour, 0.60, 0.05},        // byjus.com, cathode of 4 cm2 (seen): 10 g, rounded; the 50 g are invented
		{"silver at 82 %, 2.00 A for 145 min", 108e-3 / 96500, 50 * gram, (50 - 15.94) * gram, 2 * 145 * minute, 0.82, 2e-3}, // Masterton and Hurley, Chemistry 8th ed., ch. 17 problem 81 (seen): 15.94 g; the 50 g are invented
	} {
		w := Weighing{
			Before: x.before, After: x.after,
			Law:  bite.Law{Equivalent: x.equivalent, Density: 9000},
			Work: bite.Work{Area: 10 * cm2, Pieces: 1},
		}
		if got := w.EfficiencyNow(x.charge).SI; !near(got, x.efficiency, x.within) {
			t.Errorf("%s: efficiency %.5g, want %.5g", x.name, got, x.efficiency)
		}
	}
}

// Two pieces of 10 cm2 copper on hangers of 2 cm2, run at 1.65 A for two hours.
func TestWeighing(t *testing.T) {
	w := Weighing{
		Before: 24.50 * gram, After: 22.92 * gram, Law: copper,
		Work: bite.Work{Area: 9 * cm2, Extra: 1 * cm2, Pieces: 2}, Hanger: 2 * cm2,
	}
	charge := 1.65 * 2 * hour
	for _, x := range []struct {
		name                 string
		got, want, tolerance float64
	}{
		{"loss", w.Loss().SI, 1.58 * gram, 1e-12},                                    // by hand: 24.50 - 22.92
		{"depth", w.DepthNow().SI, 0.176339 * mm, 1e-5},                              // by hand: 1.58 g / 8.96 g/cm3 / 10 cm2
		{"efficiency", w.EfficiencyNow(charge).SI, 0.969293, 1e-6},                   // by hand: 1.58 g x 12/10 / (11880 C / 2 x 0.329304 mg/C)
		{"weight at 0.25 mm", w.WeightAt(0.25 * mm).SI, 22.26 * gram, 1e-9},          // by hand: 24.50 - 8.96 x 10 x 0.025
		{"time left to 0.25 mm", w.TimeLeft(charge, 0.25*mm, 1.65).SI, 3007.6, 1e-4}, // by hand: 7200 s x (0.25 / 0.176339 - 1)
		{"time left when there", w.TimeLeft(charge, 0.15*mm, 1.65).SI, 0, 0},         // deeper than wanted already
		{"weight of a piece too light", w.WeightAt(3 * mm).SI, 0, 0},                 // by hand: 26.9 g of 24.5 g
	} {
		if !near(x.got, x.want, x.tolerance) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

// Bitten by the law and put on the scale, a piece tells depth, efficiency, time
// left and weight just as they were.
func TestWeighingInvertsTheLaw(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 20000 {
		law := bite.Law{Equivalent: decades(r, 3e-7, 4), Density: decades(r, 9e3, 4), Efficiency: 0.5 + r.Float64()}
		on := bite.Work{Area: decades(r, 1e-3, 6), Edge: decades(r, 0.3, 6), Extra: decades(r, 1e-4, 6), Undercut: decades(r, 0.5, 4), Pieces: float64(1 + r.IntN(30))}
		hanger := decades(r, 1e-4, 6) * float64(r.IntN(2))
		all := on
		all.Extra += hanger
		target, time := decades(r, 2e-4, 6), decades(r, hour, 6)
		current := law.Current(all, target, time).SI
		part := time * (0.1 + 0.8*r.Float64())
		depth := law.Depth(all, current, part).SI
		loss := law.Density * on.Volume(depth).SI
		w := Weighing{Before: 3 * loss, After: 3*loss - loss, Law: law, Work: on, Hanger: hanger}
		w.Law.Efficiency = math.NaN() // not looked at
		if got := w.DepthNow().SI; !near(got, depth, 1e-9) {
			t.Fatalf("depth %g is weighed as %g: %+v", depth, got, w)
		}
		if got := w.EfficiencyNow(current * part).SI; !near(got, law.Efficiency, 1e-9) {
			t.Fatalf("efficiency %g is weighed as %g: %+v", law.Efficiency, got, w)
		}
		if got := w.TimeLeft(current*part, target, current).SI; !near(got, time-part, 1e-8) {
			t.Fatalf("%g s are left, by weight %g: %+v", time-part, got, w)
		}
		if got := w.Before - w.WeightAt(depth).SI; !near(got, loss, 1e-9) {
			t.Fatalf("a loss of %g is weighed as %g: %+v", loss, got, w)
		}
	}
}

// With no hanger the whole charge of a piece is on its scale: the efficiency is
// the loss over it, and all removed is the loss of all pieces.
func TestRemovedIsLost(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 5000 {
		law := copper
		law.Efficiency = 0.85 + 0.25*r.Float64()
		on := bite.Work{Area: decades(r, 1e-3, 4), Pieces: float64(1 + r.IntN(9))}
		charge := decades(r, 1e4, 4)
		each := law.Removed(charge).SI / on.Pieces
		w := Weighing{Before: 2 * each, After: each, Law: copper, Work: on}
		if got, want := w.EfficiencyNow(charge).SI, w.Loss().SI/(charge/on.Pieces*copper.Equivalent); !near(got, want, 1e-9) || !near(got, law.Efficiency, 1e-9) {
			t.Fatalf("efficiency %g, want %g", got, law.Efficiency)
		}
	}
}

// A piece that got heavier was the cathode: the loss says so, and nothing else
// is answered from it.
func TestHeavier(t *testing.T) {
	w := Weighing{Before: 20 * gram, After: 21 * gram, Law: copper, Work: bite.Work{Area: 10 * cm2, Pieces: 1}}
	if got := w.Loss().SI; !near(got, -1*gram, 1e-12) { // by hand: 20 - 21
		t.Errorf("loss %g", got)
	}
	if w.DepthNow().SI != 0 || w.EfficiencyNow(1000).SI != 0 || w.TimeLeft(1000, 1*mm, 1).SI != 0 {
		t.Errorf("depth %g, efficiency %g, time left %g", w.DepthNow().SI, w.EfficiencyNow(1000).SI, w.TimeLeft(1000, 1*mm, 1).SI)
	}
}

// Whatever is put in, what comes out is finite; only a loss is negative.
func TestWhereFloatsEnd(t *testing.T) {
	odd := []float64{0, -1, 1, 5e-324, 1e-300, 1e300, math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN()}
	r := rand.New(rand.NewPCG(5, 6))
	draw := func() float64 { return odd[r.IntN(len(odd))] }
	for range 50000 {
		w := Weighing{draw(), draw(), bite.Law{Equivalent: draw(), Density: draw(), Efficiency: draw()},
			bite.Work{Area: draw(), Edge: draw(), Extra: draw(), Undercut: draw(), Pieces: draw()}, draw()}
		read := make(Readings, r.IntN(5))
		for i := range read {
			read[i] = Reading{draw(), draw()}
		}
		a, b, c := draw(), draw(), draw()
		if got := w.Loss().SI; !(math.Abs(got) <= math.MaxFloat64) {
			t.Fatalf("loss %g: %+v", got, w)
		}
		byTrend, ok := known(read.ReadyByTrend(a))
		if !ok && byTrend != 0 {
			t.Fatalf("no trend, yet %g: %v", byTrend, read)
		}
		for i, got := range []float64{
			w.DepthNow().SI, w.EfficiencyNow(a).SI, w.chargeLeft(a, b).SI, w.TimeLeft(a, b, c).SI, w.WeightAt(a).SI,
			read.Charge(), read.PastMidnight().Charge(), read.ReadyIn(a).SI, byTrend, DepthSoFar(w.Law, w.Work, a).SI,
		} {
			if !(got >= 0 && got <= math.MaxFloat64) {
				t.Fatalf("answer %d is %g: %+v %v %g %g %g", i, got, w, read, a, b, c)
			}
		}
	}
}
