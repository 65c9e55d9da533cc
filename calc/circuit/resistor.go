package circuit

import (
	"math"

	"saltbite/calc/quantity"
)

// e12 are the preferred values of resistors in a decade, twelve to each (IEC
// 60063, series E12), in tenths.
var e12 = [...]float64{10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82}

// nextE12 is the least resistor of the series E12 that has so many ohms or more;
// 0 for none, and outside a microohm to a teraohm, which is not sold.
func nextE12(ohms float64) float64 {
	const least, most = 1e-6, 1e12
	if !(ohms >= least && ohms <= most) {
		return 0
	}
	for decade := -7; ; decade++ {
		for _, tenths := range e12 {
			value := tenths * math.Pow10(decade)
			if decade < 0 {
				value = tenths / math.Pow10(-decade) // exact where the other is not
			}
			if value >= ohms*(1-rounding) {
				return value
			}
		}
	}
}

// Resistor is one that can be bought and soldered in series, with what it does.
type Resistor struct {
	Ohms      float64 // of the series E12
	Current   float64 // A, that the supply then really gives
	Low, High float64 // A, the same with twice and with half the bath's resistance
	Watts     float64 // W, that it should stand
}

// SeriesResistor is the resistor that holds a supply without a limit to about a
// current (A), where the bath resists so much and the wire so much (ohm):
//
//	ohms    = the next value of E12 from (volts - allowance) / current - bath - wire
//	current = (volts - allowance) / (bath + wire + ohms)
//	watts   = 2 current^2 ohms, at least volts^2 / ohms
//
// Twice the watts, because a resistor at its own limit is too hot to touch
// (common practice, no source); volts^2 / ohms is what it takes if work and
// cathode touch. Ohm's law; the supply's voltage is taken as constant.
//
// There is none where nothing is left over, and none over 30 V: such a supply
// is not to be made to fit.
func (s Supply) SeriesResistor(current, bath, wire, allowance float64) (Resistor, bool) {
	over := quantity.Positive((s.Volts - allowance) / quantity.Positive(current).SI).SI
	ohms := nextE12(over - bath - quantity.Positive(wire).SI)
	if ohms == 0 || quantity.Positive(bath).SI == 0 || s.Volts > TouchedWet {
		return Resistor{}, false
	}
	given := func(bath float64) float64 { return s.Unlimited(bath, quantity.Positive(wire).SI+ohms, allowance).SI }
	r := Resistor{Ohms: ohms, Current: given(bath), Low: given(2 * bath), High: given(bath / 2)}
	r.Watts = quantity.Positive(math.Max(2*BallastWatts(r.Current, ohms).SI, s.Volts*s.Volts/ohms)).SI
	return r, true
}
