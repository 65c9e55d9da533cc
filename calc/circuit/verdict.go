package circuit

import (
	"math"
	"sort"

	"saltbite/calc/quantity"
)

// Voltages that may be touched, V, of smooth direct current: wet and dry (IEC
// 60364-4-41, from memory). A warning stands above the one, a stop above the
// other.
const (
	TouchedWet = 30
	TouchedDry = 60
)

// From so many times the current wanted on, what a supply would drive by its
// volts needs a limit, and from so many times on it ruins the piece at once.
// Choices.
const (
	Strong       = 1.3
	FarTooStrong = 3
)

// VoltsNeeded is the voltage that drives a current (A) through a bath of that
// resistance (ohm), of which high is the largest that it may be:
//
//	usual = current x resistance + allowance
//	low   = current x 0.85 resistance + the least allowance
//	high  = current x high + the most allowance
//
// 0.85 because Cell.Resistance is good for 15 %. Beyond a limiting current the
// reactions take more than any allowance.
func VoltsNeeded(current, resistance, high float64, a Allowance) quantity.Range {
	const least = 0.85
	return quantity.Range{
		Optional: CellVolts(current, resistance, a.Usual),
		Low:      CellVolts(current, least*resistance, a.Low),
		High:     CellVolts(current, math.Max(resistance, high), a.High),
	}
}

// Unlimited is the current, A, that the volts would drive into a bath (ohm)
// through the wire (ohm) if the supply held nothing back:
//
//	(volts - allowance) / (bath + wire)
//
// Zero where the volts do not exceed the allowance, and none before a bath that
// is not known. True at constant voltage; a supply that droops gives less.
func (s Supply) Unlimited(bath, wire, allowance float64) quantity.Optional {
	if quantity.Positive(bath).SI == 0 {
		return quantity.Optional{}
	}
	return quantity.Known(quantity.Positive((s.Volts - allowance) / (bath + quantity.Positive(wire).SI)).SI)
}

// Verdict says whether a supply can do a job.
type Verdict uint8

const (
	Fits        Verdict = iota
	NeedsALimit         // it would drive far more than is wanted
	TooWeak             // too few volts or amperes
	Forbidden           // more volts than may be touched
)

// Judge says whether the supply can give a current (A):
//
//	Forbidden     over 60 V
//	TooWeak       amps or unlimited under the current
//	NeedsALimit   unlimited from 1.3 times the current on
//	Fits          else
//
// unlimited is Supply.Unlimited; where that is not known it is left out.
func (s Supply) Judge(current float64, unlimited quantity.Optional) Verdict {
	under := func(x float64) bool { return quantity.Positive(x).SI < current*(1-rounding) }
	switch {
	case s.Volts > TouchedDry:
		return Forbidden
	case quantity.Positive(s.Amps).SI > 0 && under(s.Amps), unlimited.Known() && under(unlimited.SI):
		return TooWeak
	case unlimited.Known() && unlimited.SI >= Strong*current*(1-rounding):
		return NeedsALimit
	}
	return Fits
}

// rounding is what a comparison forgives: a current that was typed and one that
// was calculated from the same figures are equal.
const rounding = 1e-9

// Most is the current, A, that the supply gives at most: its amperes, and what
// its volts drive where that is known. It is what DepthThatFits, TimeThatFits and
// PiecesWithin allow. It is empty if the supply's amperes are unknown.
func (s Supply) Most(unlimited quantity.Optional) quantity.Optional {
	if unlimited.Known() {
		return quantity.Positive(math.Min(s.Amps, unlimited.SI))
	}
	return quantity.Positive(s.Amps)
}

// PiecesWithin is how many of the pieces, whole, a supply that gives so many
// amperes at most (Most) serves at the same depth and time, where all of them
// take that current (A):
//
//	the largest n that is at most floor(most x pieces / current)
//	and whose own n x current / pieces is within unlimited(n)
//
// unlimited gives what the volts drive into a bath with so many pieces in it;
// nil where that is not known. Fewer pieces take less current, and the bath
// before them resists more, but never so much more that fewer would not fit
// where more do. Zero is an answer here: not one of them.
func PiecesWithin(most, current, pieces float64, unlimited func(pieces float64) float64) float64 {
	fit := piecesThatFit(most, current, pieces)
	if unlimited == nil || fit == 0 {
		return fit
	}
	each := current / pieces
	tooMany := func(i int) bool {
		n := float64(i + 1)
		return quantity.Positive(unlimited(n)).SI < n*each*(1-rounding)
	}
	const mostTried = 1 << 20
	return float64(sort.Search(int(math.Min(fit, mostTried)), tooMany))
}
