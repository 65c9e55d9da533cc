package trial

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"saltbite/calc/bite"
	"saltbite/calc/quantity"
)

// plain is runs of that efficiency, so large that the balance leaves nothing open.
func plain(efficiencies ...float64) []Run {
	runs := make([]Run, len(efficiencies))
	for i, e := range efficiencies {
		runs[i] = Run{Efficiency: e, Expected: 1}
	}
	return runs
}

// Tensile adhesion of 22 specimens, MPa: Montgomery and Runger, Applied
// Statistics and Probability for Engineers, 3rd ed., examples 8-4 and 8-8
// (seen): mean 13.71, s 3.55, mean within 12.14 to 15.28, the next within 6.16
// to 21.26. The strengths stand in for efficiencies.
func TestPublishedExample(t *testing.T) {
	fit := Bench(plain(19.8, 10.1, 14.9, 7.5, 15.4, 15.4, 15.4, 18.5, 7.9, 12.7, 11.9,
		11.4, 11.4, 14.1, 17.6, 16.7, 15.8, 19.5, 8.8, 13.6, 11.9, 11.4))
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"mean", fit.Efficiency.SI, 13.71},
		{"standard deviation", fit.Scatter, 3.55},
		{"low", fit.Efficiency.Low.SI, 12.14},
		{"high", fit.Efficiency.High.SI, 15.28},
		{"next low", fit.Next.Low.SI, 6.16},
		{"next high", fit.Next.High.SI, 21.26},
	} {
		if math.Abs(x.got-x.want) > 0.0151 { // they go on with rounded figures: up to 2.080 x 1.02 x 0.005 and half a digit
			t.Errorf("%s: %.4f, want %.2f", x.name, x.got, x.want)
		}
	}
	if fit.Used != 22 || fit.Assumed {
		t.Errorf("%d runs, assumed %v", fit.Used, fit.Assumed)
	}
}

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, heat flow meter
// (seen): 195 values of mean 9.261460 and standard deviation 0.022789 give
// 9.258242 to 9.264679 with t = 1.9723. Two values, so often repeated that they
// have that mean and deviation, stand for them.
func TestPublishedLimitsOfAMean(t *testing.T) {
	const n, mean, deviation = 195, 9.261460, 0.022789
	half := deviation * math.Sqrt((n-1)/float64(n-1)) // 97 above, 97 below, one at the mean: by hand
	values := []float64{mean}
	for range (n - 1) / 2 {
		values = append(values, mean-half, mean+half)
	}
	fit := Bench(plain(values...))
	if math.Abs(fit.Scatter-deviation) > 1e-9 || math.Abs(fit.Efficiency.Low.SI-9.258242) > 1.1e-6 || math.Abs(fit.Efficiency.High.SI-9.264679) > 1.1e-6 {
		t.Errorf("%+v, s %g", fit.Efficiency, fit.Scatter)
	}
}

// NumAcc3 of NIST's Statistical Reference Datasets (from memory), whose values
// differ in the last digit only: 1000000.2, then 1000000.1 and 1000000.3 500
// times each. Mean 1000000.2, standard deviation 0.1, both exact.
func TestCancellation(t *testing.T) {
	values := []float64{1000000.2}
	for range 500 {
		values = append(values, 1000000.1, 1000000.3)
	}
	fit := Bench(plain(values...))
	if !near(fit.Efficiency.SI, 1000000.2, 1e-15) || !near(fit.Scatter, 0.1, 1e-8) {
		t.Errorf("mean %.10f, s %.12f", fit.Efficiency.SI, fit.Scatter)
	}
}

func TestFewRuns(t *testing.T) {
	for _, x := range []struct {
		name              string
		runs              []Run
		low, high         float64
		nextLow, nextHigh float64
		scatter           float64
		assumed           bool
	}{
		// By hand: 1.96 x 4 % of 95 % is 7.448 %; x sqrt 2 is 10.533 %.
		{"one", plain(0.95), 0.87552, 1.02448, 0.84467, 1.05533, 0.038, true},
		// By hand: mean 95 %; 7.448 % / sqrt 2 is 5.2665 %; x sqrt 1.5 is 9.1219 %.
		{"two", plain(0.93, 0.97), 0.897335, 1.002665, 0.858781, 1.041219, 0.038, true},
		// By hand: s 2 %, t 4.302653: x 2 % / sqrt 3 is 4.96828 %; x 2 % x sqrt(4/3) is 9.93655 %.
		{"three", plain(0.93, 0.95, 0.97), 0.900317, 0.999683, 0.850634, 1.049366, 0.02, false},
		// By hand: 0.01 g / sqrt 6 / 0.1 g is 4.08248 %, more than nothing; x 4.302653 / sqrt 3, x sqrt(4/3).
		{"three alike, coarse balance", []Run{{Efficiency: 0.9, Expected: 0.1 * gram, Resolution: 0.01 * gram}, {Efficiency: 0.9, Expected: 0.05 * gram, Resolution: 0.01 * gram}, {Efficiency: 0.9, Expected: 0.15 * gram, Resolution: 0.01 * gram}},
			0.798586, 1.001414, 0.697172, 1.102828, 0.0408248, false},
	} {
		fit := Bench(x.runs)
		for what, pair := range map[string][2]float64{
			"low": {fit.Efficiency.Low.SI, x.low}, "high": {fit.Efficiency.High.SI, x.high},
			"next low": {fit.Next.Low.SI, x.nextLow}, "next high": {fit.Next.High.SI, x.nextHigh}, "scatter": {fit.Scatter, x.scatter},
		} {
			if math.Abs(pair[0]-pair[1]) > 2e-6 {
				t.Errorf("%s: %s %.6f, want %.6f", x.name, what, pair[0], pair[1])
			}
		}
		if fit.Assumed != x.assumed || fit.Used != len(x.runs) {
			t.Errorf("%s: assumed %v, used %d", x.name, fit.Assumed, fit.Used)
		}
	}
	if fit := Bench(nil); fit.Used != 0 || fit.Efficiency != (quantity.Range{}) || fit.Next != (quantity.Range{}) || len(fit.Runs) != 0 {
		t.Errorf("of no runs: %+v", fit)
	}
}

func TestOddRuns(t *testing.T) {
	for _, x := range []struct {
		name string
		runs []Run
		want []Oddity
	}{
		{"bounds", plain(0.70, 0.699, 1.15, 1.151, -0.1), []Oddity{Usual, Little, Usual, Much, Little}},
		{"three are too few", plain(0.95, 0.96, 0.80), []Oddity{Usual, Usual, Usual}},
		// By hand: the others' mean is 95 %, s 1 %, so 3 x 3.8 % = 11.4 % may be between.
		{"below", plain(0.94, 0.95, 0.96, 0.835), []Oddity{Usual, Usual, Usual, Below}},
		{"not so far below", plain(0.94, 0.95, 0.96, 0.837), []Oddity{Usual, Usual, Usual, Usual}},
		{"above", plain(0.94, 0.95, 0.96, 1.065), []Oddity{Usual, Usual, Usual, Above}},
		// By hand: the others' mean is 90 %, s 10 %, so 30 % may be between.
		{"a wide scatter", plain(0.80, 0.90, 1.00, 1.14), []Oddity{Usual, Usual, Usual, Usual}},
	} {
		fit := Bench(x.runs)
		var got []Oddity
		for _, run := range fit.Runs {
			got = append(got, run.Odd)
		}
		if !slices.Equal(got, x.want) {
			t.Errorf("%s: %q, want %q", x.name, got, x.want)
		}
		if fit.Used != len(x.runs) {
			t.Errorf("%s: %d runs used: odd ones are not to be dropped", x.name, fit.Used)
		}
	}
	skipped := plain(0.94, 0.95, 0.96, 0.60)
	skipped[3].Skip = true
	if fit := Bench(skipped); fit.Used != 3 || !near(fit.Efficiency.SI, 0.95, 1e-12) || fit.Runs[3].Odd != Little {
		t.Errorf("a run set aside: %+v", fit)
	}
}

// Runs alone: +- the resolution over the expected loss.
func TestRunAlone(t *testing.T) {
	w := Weighing{Before: 24.50 * gram, After: 22.92 * gram, Law: copper,
		Work: bite.Work{Area: 9 * cm2, Extra: 1 * cm2, Pieces: 2}, Hanger: 2 * cm2}
	run := w.Run(1.65*2*hour, 0.01*gram)
	// By hand: 11880 C / 2 x 0.329304 mg/C x 10/12 = 1.630055 g on the scale; 1.58 of it is 96.9293 %.
	if !near(run.Expected, 1.630055*gram, 1e-6) || !near(run.Efficiency, 0.969293, 1e-6) {
		t.Errorf("%+v", run)
	}
	alone := Bench([]Run{run}).Runs[0]
	if !near(alone.Low.SI, 0.969293-0.00613476, 1e-6) || !near(alone.High.SI, 0.969293+0.00613476, 1e-6) { // by hand: 0.01 / 1.630055
		t.Errorf("%+v", alone)
	}
	w.After = 24.60 * gram
	if got := w.Run(11880, 0.01*gram); !near(got.Efficiency, -0.1/1.630055, 1e-6) { // heavier by 0.10 g
		t.Errorf("heavier: %+v", got)
	}
}

// By hand: 10 cm2 of copper, 0.1 mm deep, is 0.896 g; 3000 C take 0.987911 g at
// 100 %; 0.01 mm is 0.0896 g.
func TestGauging(t *testing.T) {
	run := Gauging{Depth: 0.1 * mm, Law: copper, Work: bite.Work{Area: 10 * cm2, Pieces: 1}}.Run(3000)
	if !near(run.Expected, 0.987911*gram, 2e-6) || !near(run.Efficiency, 0.896/0.987911, 2e-6) || !near(run.Resolution, 0.0896*gram, 1e-9) {
		t.Errorf("%+v", run)
	}
}

// A depth measured and the loss weighed teach the same, whatever hangs there.
func TestGaugingIsWeighing(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 32))
	for range 5000 {
		work := bite.Work{Area: decades(r, 1e-3, 3), Edge: decades(r, 0.3, 3), Extra: decades(r, 1e-4, 3), Undercut: decades(r, 0.5, 1), Pieces: float64(1 + r.IntN(9))}
		hanger, depth, charge := decades(r, 1e-4, 3)*float64(r.IntN(2)), decades(r, 0.2*mm, 2), decades(r, 3000, 3)
		loss := copper.Density * work.Volume(depth).SI
		weighed := Weighing{Before: 2 * loss, After: loss, Law: copper, Work: work, Hanger: hanger}.Run(charge, 0)
		gauged := Gauging{Depth: depth, Law: copper, Work: work, Hanger: hanger}.Run(charge)
		if !near(gauged.Efficiency, weighed.Efficiency, 1e-9) || gauged.Expected != weighed.Expected {
			t.Fatalf("gauged %+v, weighed %+v", gauged, weighed)
		}
		if hanger == 0 && work.Edge == 0 && !near(weighed.Efficiency, loss/weighed.Expected, 1e-9) {
			t.Fatalf("loss over expected loss is %g: %+v", loss/weighed.Expected, weighed)
		}
	}
}

func TestUndercut(t *testing.T) {
	line, ok := known(UndercutOfLine(0.5*mm, 0.3*mm, 0.2*mm))
	if !ok || !near(line, 0.5, 1e-12) { // by hand: 0.2 / 0.4
		t.Errorf("of a line %g %v", line, ok)
	}
	space, ok := known(UndercutOfSpace(0.5*mm, 0.8*mm, 0.2*mm))
	if !ok || !near(space, 0.75, 1e-12) { // by hand: 0.3 / 0.4
		t.Errorf("of a space %g %v", space, ok)
	}
	if UndercutOfLine(0.5*mm, 0, 0.2*mm).Known() {
		t.Error("a line that is gone tells how far it was undercut")
	}
	if UndercutOfSpace(0.5*mm, 0.8*mm, 0).Known() {
		t.Error("an undercut without a depth")
	}
	runs := plain(1, 1, 1, 1)
	runs[0].Undercuts = []float64{0.5, 0.7}
	runs[2].Undercuts = []float64{0.5}
	if fit := Bench(runs); fit.Measured != 2 || !near(fit.Undercut.SI, 0.55, 1e-12) || fit.Undercut.High.SI != 0 { // by hand: (0.6 + 0.5)/2
		t.Errorf("of two runs %+v", fit.Undercut)
	}
	runs[3].Undercuts = []float64{0.4}
	if fit := Bench(runs); !near(fit.Undercut.SI, 0.5, 1e-12) || !near(fit.Undercut.Low.SI, 0.251586, 1e-5) || !near(fit.Undercut.High.SI, 0.748414, 1e-5) { // by hand: s 0.1, x 4.302653 / sqrt 3
		t.Errorf("of three runs %+v", fit.Undercut)
	}
}

// bench is a bench whose truth is known: it weighs what it was told to lose,
// with a scatter, on a balance that rounds.
type bench struct {
	*rand.Rand
	truth, scatter, resolution, loss float64
}

// run draws a finished run of half to one and a half times the usual loss.
func (b bench) run() Run {
	expected := b.loss * (0.5 + b.Float64())
	before := (20 + b.Float64()) * b.loss
	after := before - expected*b.truth*(1+b.scatter*b.NormFloat64())
	w := Weighing{Before: rounded(before, b.resolution), After: rounded(after, b.resolution), Law: copper, Work: bite.Work{Area: 10 * cm2, Pieces: 1}}
	return w.Run(expected/copper.Equivalent, b.resolution)
}

// Ten thousand logs of 3 to 12 runs, on benches whose scatter is so many times
// what the balance adds (r/sqrt(6) over the loss).
func TestCoverage(t *testing.T) {
	const logs = 10000
	for _, x := range []struct {
		name        string
		from, to    float64 // scatter over the balance's
		least, most float64 // share of the logs whose range holds the truth
	}{
		{"scatter three times the balance's or more", 3, 30, 0.93, 0.97},
		{"scatter just three times the balance's", 3, 3, 0.93, 0.97},
		{"scatter below", 0, 3, 0.93, 1},
		{"the balance alone", 0, 0, 0.93, 1},
	} {
		r := rand.New(rand.NewPCG(2024, 7))
		var mean, next float64
		var byRuns, heldByRuns [13]float64
		for range logs {
			b := bench{r, 0.85 + 0.2*r.Float64(), 0, 0.01 * gram, 0}
			b.loss = decades(r, 1*gram, 1)
			b.scatter = (x.from + (x.to-x.from)*r.Float64()) * b.resolution / math.Sqrt(6) / b.loss / b.truth
			n := 3 + r.IntN(10)
			var runs []Run
			for range n {
				runs = append(runs, b.run())
			}
			fit := Bench(runs)
			byRuns[n]++
			if fit.Efficiency.Low.SI <= b.truth && b.truth <= fit.Efficiency.High.SI {
				mean++
				heldByRuns[n]++
			}
			if e := b.run().Efficiency; fit.Next.Low.SI <= e && e <= fit.Next.High.SI {
				next++
			}
		}
		t.Logf("%s: the mean's range holds the truth in %.2f %%, the next run's the next run in %.2f %%", x.name, mean/logs*100, next/logs*100)
		for n := 3; n <= 12; n++ {
			t.Logf("  %2d runs: %.1f %%", n, heldByRuns[n]/byRuns[n]*100)
		}
		for what, share := range map[string]float64{"mean": mean / logs, "next": next / logs} {
			if share < x.least || share > x.most {
				t.Errorf("%s: %s holds in %.2f %%", x.name, what, share*100)
			}
		}
	}
}

// Whatever is put in, what comes out is finite, and a range holds its value.
func TestBenchWhereFloatsEnd(t *testing.T) {
	odd := []float64{0, -1, 1, 0.9, 5e-324, 1e-300, 1e99, 1e300, math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN()}
	r := rand.New(rand.NewPCG(41, 42))
	draw := func() float64 { return odd[r.IntN(len(odd))] }
	for range 50000 {
		runs := make([]Run, r.IntN(7))
		for i := range runs {
			runs[i] = Run{Efficiency: draw(), Expected: draw(), Resolution: draw(), Skip: r.IntN(4) == 0}
			if u, ok := known(UndercutOfLine(draw(), draw(), draw())); ok && math.Abs(u) < 1e100 {
				runs[i].Undercuts = []float64{u}
			}
			if r.IntN(2) == 0 {
				runs[i] = Weighing{draw(), draw(), bite.Law{Equivalent: draw(), Density: draw()}, bite.Work{Area: draw(), Edge: draw(), Extra: draw(), Undercut: draw(), Pieces: draw()}, draw()}.Run(draw(), draw())
			}
		}
		fit := Bench(runs)
		all := []quantity.Range{fit.Efficiency, fit.Next, fit.Undercut}
		for _, run := range fit.Runs {
			all = append(all, run.Range)
		}
		for _, e := range all {
			if e.Low.SI < 0 || e.Low.SI > math.Max(0, e.SI) || e.High.SI != 0 && e.High.SI < e.SI {
				t.Fatalf("%+v of %+v", fit, runs)
			}
		}
	}
}

// Five thousand runs, each judged beside all others.
func BenchmarkBench(b *testing.B) {
	r := rand.New(rand.NewPCG(51, 52))
	runs := make([]Run, 5000)
	for i := range runs {
		runs[i] = Run{Efficiency: 0.95 + 0.04*r.NormFloat64(), Expected: 1, Resolution: 0.01}
	}
	for b.Loop() {
		Bench(runs)
	}
}
