package trial

import (
	"math"

	"saltbite/calc/quantity"
)

// sample is what is kept of a set of values to take their mean and standard
// deviation, and to put one in or take one out again.
type sample struct {
	n                    int
	mean                 float64
	squares              float64 // sum of squared differences from the mean
	resolution, expected float64 // sums over the runs
}

// with is the sample with one more value (B. P. Welford, Technometrics 4 (1962)
// 419, from memory: no difference of large sums).
func (s sample) with(value, resolution, expected float64) sample {
	off := value - s.mean
	s.n++
	s.mean += off / float64(s.n)
	s.squares += off * (value - s.mean)
	s.resolution += resolution
	s.expected += expected
	return s
}

// withMean is the sample with the mean of some values as one more, if there are any.
func (s sample) withMean(values []float64) sample {
	if len(values) == 0 {
		return s
	}
	var mean float64
	for _, v := range values {
		mean += v / float64(len(values))
	}
	return s.with(mean, 0, 0)
}

// without is the sample before a run was put in.
func (s sample) without(r Run) sample {
	if s.n == 1 {
		return sample{}
	}
	off := r.Efficiency - s.mean
	s.n--
	s.mean -= off / float64(s.n)
	s.squares = math.Max(0, s.squares-off*(r.Efficiency-s.mean))
	s.resolution -= r.Resolution
	s.expected -= r.Expected
	return s
}

// scatter is the standard deviation of one value, at least what the balance leaves open.
func (s sample) scatter() float64 {
	seen := usualScatter * math.Abs(s.mean)
	if s.n >= runsForScatter {
		seen = math.Sqrt(s.squares / float64(s.n-1))
	}
	if s.expected > 0 {
		seen = math.Max(seen, s.resolution/math.Sqrt(6)/s.expected)
	}
	return seen
}

// estimate is the mean with its range, for a variance that is so many times
// that of one value.
func (s sample) estimate(variances float64) quantity.Range {
	t := normal95
	if s.n >= runsForScatter {
		t = studentT(0.95, s.n-1)
	}
	return estimate(s.mean, t*s.scatter()*math.Sqrt(variances))
}

// estimate is a value with its range, which is as wide on both sides and not
// below 0.
func estimate(value, half float64) quantity.Range {
	return quantity.Range{Optional: quantity.Known(value), Low: quantity.Known(math.Max(0, value-half)), High: quantity.Known(math.Max(0, value+half))}
}
