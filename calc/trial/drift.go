package trial

import (
	"math"

	"saltbite/calc/quantity"
)

// Drift is by how much the efficiency changes from one run to the next, with
// the range that holds 95 %, from the runs of a log that are used, in their
// order. Below 0 all through, the bath ages. It is the slope of the line of
// least squares:
//
//	slope +- t s / sqrt(sum (x - mean x)^2)
//
// with s the standard deviation about the line and t Student's for two degrees
// of freedom fewer than there are runs (NIST/SEMATECH e-Handbook of Statistical
// Methods, 4.1.4.1 and 4.5.1.2, from memory). s is at least what the balance
// leaves open, as in Bench. Not known for fewer than four runs: three say next to
// nothing. The ends of the range may be on either side of 0.
func Drift(runs []Run) quantity.Range {
	var points Readings
	var used sample
	for i, run := range runs {
		if !run.Skip && run.usable() {
			points = append(points, Reading{float64(i), run.Efficiency})
			used = used.with(run.Efficiency, run.Resolution, run.Expected)
		}
	}
	if used.n < 4 {
		return quantity.Range{}
	}
	return points.slope(used.resolution / math.Sqrt(6) / used.expected)
}

// slope is that of the line of least squares, with its range, for a standard
// deviation about the line of least at least.
func (r Readings) slope(least float64) quantity.Range {
	atLast, slope, ok := r.trend()
	if !ok {
		return quantity.Range{}
	}
	var mean, apart, off float64
	for _, p := range r {
		mean += p.Time / float64(len(r))
	}
	for _, p := range r {
		apart += (p.Time - mean) * (p.Time - mean)
		residual := p.Current - atLast - slope*(p.Time-r.last().Time)
		off += residual * residual
	}
	degrees := len(r) - 2
	half := studentT(0.95, degrees) * math.Max(least, math.Sqrt(off/float64(degrees))) / math.Sqrt(apart)
	return quantity.Range{Optional: quantity.Known(slope), Low: quantity.Known(slope - half), High: quantity.Known(slope + half)}
}
