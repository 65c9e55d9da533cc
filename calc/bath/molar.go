package bath

import (
	"slices"

	"saltbite/calc/metal"
)

// others are the atomic weights, kg/mol, of the elements that salts hold and
// metals do not; the rest are metal.Elements.
var others = map[string]float64{"H": 1.008e-3, "N": 14.007e-3, "Na": 22.990e-3, "S": 32.06e-3, "Cl": 35.45e-3}

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

// weight is the atomic weight of an element, kg/mol.
// Kept out of its callers for the size of the program.
//
//go:noinline
func weight(symbol string) float64 {
	if i := row(symbol); i >= 0 {
		return metal.Elements[i].MolarMass
	}
	return others[symbol]
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
