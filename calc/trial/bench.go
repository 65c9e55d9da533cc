package trial

import (
	"math"

	"saltbite/calc/quantity"
)

// Fit is what a log of finished runs says of a bench. The efficiencies are
// shares, 1 being all of the charge; a range holds 95 %.
type Fit struct {
	Used       int            // runs that it rests on
	Efficiency quantity.Range // mean of the runs
	Next       quantity.Range // the next run: the same mean, and the range it falls into
	Scatter    float64        // standard deviation of one run, as taken
	Assumed    bool           // Scatter is common practice's, there being too few runs
	Undercut   quantity.Range // side bite / depth
	Measured   int            // runs that Undercut rests on
	Runs       []Judged       // all runs, in their order
}

// Judged is one run by itself: its efficiency, and the range that the
// resolution leaves open.
type Judged struct {
	quantity.Range
	Odd Oddity
}

// Oddity says why a run stands out. Such a run is used all the same: the log's
// keeper decides.
type Oddity string

const (
	Usual  Oddity = ""
	Little Oddity = "little" // under 70 %: hidden metal, film, lost contact, spent bath
	Much   Oddity = "much"   // over 115 %: area, charge or weight typed wrong, another law (common salt)
	Below  Oddity = "below"  // far below the others
	Above  Oddity = "above"  // far above the others
)

const (
	least, most    = 0.70, 1.15 // efficiencies outside are odd (common practice, no source)
	usualScatter   = 0.04       // standard deviation of a run, as a share of its value (common practice, no source)
	oddDeviations  = 3          // from the mean of the others
	runsForScatter = 3          // before that, the scatter of the runs says too little
	normal95       = 1.96       // standard deviations that hold 95 % of a normal distribution
)

// Bench fits a log: the model is a bench with one true efficiency, from which
// each run differs by a normally distributed error of one size for all.
//
//	efficiency  mean +- t s / sqrt(n)
//	next run    mean +- t s sqrt(1 + 1/n)
//
// with s the runs' standard deviation and t Student's for n - 1 degrees of
// freedom and 95 % (D. C. Montgomery and G. C. Runger, Applied Statistics and
// Probability for Engineers, 3rd ed. 2003, equations 8-18, from memory, and
// 8-29, seen). One run or two take 4 % of the mean for s and 1.96 for t (common
// practice, no source). s is at least what the balance leaves open, a weight
// being a difference of two readings that are each uniform within a step r:
//
//	r / sqrt(6) / expected loss, of the mean r and the mean expected loss
//
// It stops being true where the efficiency drifts, as in a bath that ages, or
// where a few runs are far smaller than the rest: their own errors are larger.
// Low ends are not below 0. Runs with no expected loss are left out.
//
// The undercut is fitted in the same way to the mean of each run's widths; it
// has a range from three runs on.
func Bench(runs []Run) Fit {
	var used, undercuts sample
	for _, run := range runs {
		if !run.Skip && run.usable() {
			used = used.with(run.Efficiency, run.Resolution, run.Expected)
			undercuts = undercuts.withMean(run.Undercuts)
		}
	}
	fit := Fit{Used: used.n, Runs: make([]Judged, len(runs)), Measured: undercuts.n}
	for i, run := range runs {
		fit.Runs[i] = run.judged(used)
	}
	if used.n > 0 {
		fit.Scatter, fit.Assumed = used.scatter(), used.n < runsForScatter
		n := float64(used.n)
		fit.Efficiency = used.estimate(1 / n)
		fit.Next = used.estimate(1 + 1/n)
	}
	switch {
	case undercuts.n >= runsForScatter:
		fit.Undercut = undercuts.estimate(1 / float64(undercuts.n))
	case undercuts.n > 0:
		fit.Undercut = quantity.Alone(quantity.Known(undercuts.mean))
	}
	return fit
}

// usable runs have an expected loss, and numbers that a bench can give: their
// squares are in range.
func (r Run) usable() bool {
	const large = 1e100
	return math.Abs(r.Efficiency) < large && r.Expected > 1/large && r.Expected < large && r.Resolution >= 0 && r.Resolution < large
}

// judged is the run beside all runs that are used.
func (r Run) judged(used sample) Judged {
	if !r.usable() {
		return Judged{}
	}
	others := used
	if !r.Skip {
		others = used.without(r)
	}
	step := r.Resolution / r.Expected
	return Judged{estimate(r.Efficiency, step), r.oddity(others)}
}

// oddity compares with fixed bounds, and from four runs on with the others: a
// run is odd that lies farther from their mean than three times the larger of
// their standard deviation and 4 % of their mean. The run itself is left out of
// both, since one of n runs never lies more than (n - 1)/sqrt(n) of the common
// standard deviation off.
func (r Run) oddity(others sample) Oddity {
	beyond := oddDeviations * math.Max(others.scatter(), usualScatter*math.Abs(others.mean))
	compared := others.n >= runsForScatter
	switch {
	case r.Efficiency < least:
		return Little
	case r.Efficiency > most:
		return Much
	case compared && r.Efficiency < others.mean-beyond:
		return Below
	case compared && r.Efficiency > others.mean+beyond:
		return Above
	}
	return Usual
}
