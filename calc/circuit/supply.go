package circuit

import (
	"math"

	"saltbite/calc/bite"
)

// Allowance is what a cell takes beside its resistance, V: what the reactions
// at both faces cost.
type Allowance struct{ Usual, Low, High float64 }

var (
	// LikeElectrodes is that of a metal dissolved and deposited in its own salt,
	// where the cell gives no voltage of its own. Common practice, no source.
	LikeElectrodes = Allowance{0.2, 0.1, 0.3}
	// CommonSalt is that of a cell which makes hydrogen at its cathode. Common
	// practice, no source.
	CommonSalt = Allowance{1.75, 1.5, 2}
)

// CellVolts is the voltage, V, that drives a current (A) through a bath of that
// resistance (ohm):
//
//	current x resistance + allowance
//
// An order of magnitude near a limiting current, where the reactions cost more.
func CellVolts(current, resistance, allowance float64) float64 {
	drop := bite.Held(bite.Held(current) * bite.Held(resistance))
	if drop == 0 {
		return 0
	}
	return bite.Held(drop + allowance)
}

// Supply is what feeds the cell.
type Supply struct {
	Volts float64 // V, held constant
	Amps  float64 // A, the most it gives; 0: not known
}

// Current is what the supply gives, A, into a bath (ohm) through its wire (ohm):
//
//	(volts - allowance) / (bath + wire), at most amps
//
// There is none where the volts do not exceed the allowance. True at constant
// voltage with no ballast; a supply that droops gives less.
func (s Supply) Current(bath, wire, allowance float64) float64 {
	if bite.Held(bath) == 0 {
		return 0
	}
	current := bite.Held((s.Volts - allowance) / (bath + bite.Held(wire)))
	if s.Amps > 0 {
		return math.Min(current, s.Amps)
	}
	return current
}

// Watts is what the supply delivers, W, at a current (A): volts x current,
// whatever part of it the cell takes.
func (s Supply) Watts(current float64) float64 {
	return bite.Held(bite.Held(s.Volts) * bite.Held(current))
}

// Ballast is the resistor, ohm, in series that sets a current (A) where the
// cell takes so many volts and the wire so many:
//
//	(volts - cell - wire) / current
//
// There is none where nothing is left over. The larger it is beside the bath,
// the steadier the current.
func (s Supply) Ballast(current, cell, wire float64) float64 {
	if bite.Held(current) == 0 || bite.Held(cell) == 0 {
		return 0
	}
	return bite.Held((s.Volts - cell - bite.Held(wire)) / current)
}

// BallastWatts is the heat, W, that a ballast (ohm) must stand at a current (A):
// current^2 x ballast.
func BallastWatts(current, ballast float64) float64 {
	return bite.Held(bite.Held(current) * bite.Held(current) * bite.Held(ballast))
}
