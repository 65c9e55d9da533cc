// Package quantity reads numbers and units as people type them and prints them
// as the page shows them. Inside the program every quantity is in SI (m, s, A,
// kg, K, V, ohm); units exist only here, at the edge.
package quantity

// Kind is what a quantity measures.
type Kind uint8

const (
	Number         Kind = iota // a pure number: undercut, pieces
	Share                      // a fraction; read and printed in per cent
	Length                     // m
	Area                       // m2
	Volume                     // m3
	Mass                       // kg
	Time                       // s
	Temperature                // K
	Current                    // A
	CurrentDensity             // A/m2
	Voltage                    // V
	Power                      // W
	Resistance                 // ohm
	Charge                     // C
	Density                    // kg/m3: of a solid, of a liquid, and of salt per litre of finished bath
	PerWater                   // kg/m3: of salt per volume of water, "g/L water"
	Molarity                   // mol/m3
	Saturation                 // a fraction of the saturated strength, "% sat"
	Equivalent                 // kg/C
	Rate                       // m/s
	Conductivity               // S/m
	HeatingRate                // K/s
)

// Code is the kind of mistake in what was typed, as the reply names it.
type Code string

const (
	BadNumber Code = "number"    // can't be read as a number
	BadUnit   Code = "unit"      // the wrong kind of unit, or a word that is none
	Ambiguous Code = "ambiguous" // two readings, asked about
	OutOfSize Code = "range"     // absurdly large or small
)

// Error says why a text is no quantity.
type Error struct {
	Code   Code
	Reason string // lower case, a clause: "two decimal marks"
}

func (e *Error) Error() string { return e.Reason }

// Quantity is what a text says.
type Quantity struct {
	Value float64 // in SI
	Kind  Kind
	Unit  string // symbol of the unit as understood: the one typed, else the bare one
}
