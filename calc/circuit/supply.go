package circuit

import "saltbite/calc/quantity"

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
func CellVolts(current, resistance, allowance float64) quantity.Optional {
	drop := quantity.Positive(quantity.Positive(current).SI * quantity.Positive(resistance).SI).SI
	if drop == 0 {
		return quantity.Optional{}
	}
	return quantity.Positive(drop + allowance)
}

// Supply is what feeds the cell.
type Supply struct {
	Volts float64 // V, held constant
	Amps  float64 // A, the most it gives; 0: not known
}

// Watts is what the supply delivers, W, at a current (A): volts x current,
// whatever part of it the cell takes.
func (s Supply) Watts(current float64) quantity.Optional {
	return quantity.Positive(quantity.Positive(s.Volts).SI * quantity.Positive(current).SI)
}

// Ballast is the resistor, ohm, in series that sets a current (A) where the
// cell takes so many volts and the wire so many:
//
//	(volts - cell - wire) / current
//
// There is no value where nothing is left over. The larger it is beside the bath,
// the steadier the current.
func (s Supply) Ballast(current, cell, wire float64) quantity.Optional {
	if quantity.Positive(current).SI == 0 || quantity.Positive(cell).SI == 0 {
		return quantity.Optional{}
	}
	return quantity.Positive((s.Volts - cell - quantity.Positive(wire).SI) / current)
}

// BallastWatts is the heat, W, that a ballast (ohm) must stand at a current (A):
// current^2 x ballast.
func BallastWatts(current, ballast float64) quantity.Optional {
	return quantity.Positive(quantity.Positive(current).SI * quantity.Positive(current).SI * quantity.Positive(ballast).SI)
}
