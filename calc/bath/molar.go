package bath

import (
	"slices"

	"saltbite/calc/metal"
)

var molarMassSource = Source{"molar mass", "abridged standard atomic weights of IUPAC/CIAAW 2021 (from memory); " +
	"the Debian package bodr agrees to the digits given", "memory"}

// Constants of a gas.
const (
	gasConstant = metal.Avogadro * 1.380649e-23 // J/(mol K); SI brochure, 9th ed. 2019
	atmosphere  = 101325                        // Pa, by definition
)

// Molar masses, kg/mol.
var (
	molarWater        = 2*weight("H") + weight("O")
	molarCuSO4        = weight("Cu") + weight("S") + 4*weight("O")
	molarPentahydrate = molarCuSO4 + 5*molarWater
	molarAgNO3        = weight("Ag") + weight("N") + 3*weight("O")
	molarNaCl         = weight("Na") + weight("Cl")
	molarSnO2         = weight("Sn") + 2*weight("O")
	molarPbSO4        = weight("Pb") + weight("S") + 4*weight("O")
)

// weight is the atomic weight of an element, kg/mol: of those that metals hold
// metal.Elements has it.
func weight(symbol string) float64 {
	switch symbol {
	case "H":
		return 1.008e-3
	case "N":
		return 14.007e-3
	case "Na":
		return 22.990e-3
	case "S":
		return 32.06e-3
	case "Cl":
		return 35.45e-3
	}
	return metal.Elements[row(symbol)].MolarMass
}

// charges is how many elementary charges an atom of a metal's element takes
// with it as it leaves.
func charges(symbol string) int {
	if i := row(symbol); i >= 0 {
		return metal.Elements[i].Charge
	}
	return 0
}

// row is where an element stands among the metals'; -1 if it does not.
func row(symbol string) int {
	return slices.IndexFunc(metal.Elements[:], func(e metal.Element) bool { return e.Symbol == symbol })
}
