package trial

import (
	"math"

	"saltbite/calc/bite"
	"saltbite/calc/quantity"
)

// Reading is the ammeter at a time.
type Reading struct {
	Time    float64 // s, from any zero
	Current float64 // A, of all pieces
}

// Readings are in the order they were taken; the first is switching on.
type Readings []Reading

const day = 24 * 3600 // s

// PastMidnight is the same readings with times that never run back: where a
// time is smaller than the one before it, midnight lay between, and it and all
// that follow are a day later. A gap of more than a day can't be seen.
func (r Readings) PastMidnight() Readings {
	later := make(Readings, len(r))
	var days float64
	for i, x := range r {
		if i > 0 && x.Time < r[i-1].Time {
			days += day
		}
		later[i] = Reading{x.Time + days, x.Current}
	}
	return later
}

// Charge is what has flowed, C, by straight lines between the readings (the
// trapezium rule):
//
//	sum of (t[i+1] - t[i]) (I[i] + I[i+1]) / 2
//
// Its error goes with the square of the time between readings.
func (r Readings) Charge() float64 {
	var sum float64
	for i := 1; i < len(r); i++ {
		sum += (r[i].Time - r[i-1].Time) * (r[i].Current/2 + r[i-1].Current/2)
	}
	return quantity.Positive(sum).SI
}

// DepthSoFar is the mean depth, m, that a charge (C, of all pieces) has etched.
func DepthSoFar(l bite.Law, w bite.Work, charge float64) quantity.Optional {
	return l.Depth(w, charge, 1)
}

// ReadyIn is how long after the last reading, s, the charge reaches a target
// (C) if the current stays as it was last read. Zero where it is reached, and not
// known where no current flows.
func (r Readings) ReadyIn(target float64) quantity.Optional {
	left := target - r.Charge()
	switch {
	case len(r) == 0:
		return quantity.Optional{}
	case left <= 0:
		return quantity.Known(0)
	}
	return quantity.Positive(left / r.last().Current)
}

// ReadyByTrend is how long after the last reading, s, the charge reaches a
// target (C) if the current goes on along the straight line that fits all
// readings best:
//
//	Q = I t + s t^2/2,  t = 2 Q / (I + sqrt(I^2 + 2 s Q))
//
// with Q the charge that is left, I the line at the last reading and s its
// slope. Not known without a line, or where the current, so falling, runs
// out first. A current that falls as it decays, not on a line, is ready sooner.
func (r Readings) ReadyByTrend(target float64) quantity.Optional {
	current, slope, ok := r.trend()
	left := target - r.Charge()
	if !ok || !(left <= math.MaxFloat64) {
		return quantity.Optional{}
	}
	if left <= 0 {
		return quantity.Known(0)
	}
	return quantity.Positive(2 * left / (current + math.Sqrt(current*current+2*slope*left)))
}

// trend is the line of least squares through the readings: its current at the
// last of them, A, and its slope, A/s. Two times at least make a line.
//
//	slope = sum (t - mean t)(I - mean I) / sum (t - mean t)^2
func (r Readings) trend() (atLast, slope float64, ok bool) {
	var t, i, ti, tt float64
	n := float64(len(r))
	for _, x := range r {
		t += x.Time / n
		i += x.Current / n
	}
	for _, x := range r {
		ti += (x.Time - t) * (x.Current - i)
		tt += (x.Time - t) * (x.Time - t)
	}
	slope = ti / tt
	if !(tt > 0) || !(math.Abs(slope) <= math.MaxFloat64) {
		return 0, 0, false
	}
	return i + slope*(r.last().Time-t), slope, true
}

// last is the newest reading, of at least one.
func (r Readings) last() Reading { return r[len(r)-1] }
