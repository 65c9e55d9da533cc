package circuit

import (
	"math"

	"saltbite/calc/quantity"
)

// Resistivity of wire at 20 C, ohm m. Copper: 58 MS/m, the International
// Annealed Copper Standard, exact (Debian package units 2.22-2, seen).
// Aluminium: 61 % of that, grade 1350 (ASTM B609, from memory).
const (
	Copper    = 1 / 58e6
	Aluminium = Copper / 0.61
)

// cautious is the current density that a lead may carry for hours, A/m2: 5 A
// per mm2. Common practice, no source; not a limit of any code.
const cautious = 5e6

// Wire is what joins supply and bath.
type Wire struct {
	Diameter    float64 // m, of the bare metal
	Length      float64 // m, there and back
	Resistivity float64 // ohm m
}

// Resistance is that of the wire, ohm, at 20 C:
//
//	R = rho L / (pi/4 d^2)
//
// It grows by 0.4 % a kelvin. Solid wire; a stranded one of the same gauge has
// the same metal. Clips and their contacts are left out.
func (w Wire) Resistance() quantity.Optional {
	return quantity.Positive(quantity.Positive(w.Resistivity).SI * quantity.Positive(w.Length).SI / w.section())
}

// Drop is the voltage, V, that a current (A) loses in the wire at 20 C.
func (w Wire) Drop(current float64) quantity.Optional {
	return quantity.Positive(quantity.Positive(current).SI * w.Resistance().SI)
}

// Limit is the current, A, that the wire carries at 5 A/mm2 of its section,
// whatever its metal.
func (w Wire) Limit() quantity.Optional { return quantity.Positive(cautious * w.section()) }

// WireFor is the thinnest wire, m across, whose Limit is a current (A).
func WireFor(current float64) quantity.Optional {
	return quantity.Positive(math.Sqrt(4 / math.Pi * quantity.Positive(current).SI / cautious))
}

// section is the wire's cross section, m2.
func (w Wire) section() float64 {
	return math.Pi / 4 * quantity.Positive(w.Diameter).SI * quantity.Positive(w.Diameter).SI
}
