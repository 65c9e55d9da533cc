package bath

import "saltbite/calc/metal"

// others are the atomic weights, kg/mol, of the elements that salts hold and
// metals do not; the rest are metal.Elements.
var others = map[string]float64{"H": 1.008e-3, "N": 14.007e-3, "Na": 22.990e-3, "S": 32.06e-3, "Cl": 35.45e-3}

var molarMassSource = Source{"molar mass", "abridged standard atomic weights of IUPAC/CIAAW 2021 (from memory); " +
	"the Debian package bodr agrees to the digits given", "memory"}

// Molar masses, kg/mol.
var (
	molarWater        = 2*weight("H") + weight("O")
	molarCuSO4        = weight("Cu") + weight("S") + 4*weight("O")
	molarPentahydrate = molarCuSO4 + 5*molarWater
	molarAgNO3        = weight("Ag") + weight("N") + 3*weight("O")
	molarNaCl         = weight("Na") + weight("Cl")
)

// weight is the atomic weight of an element, kg/mol.
func weight(symbol string) float64 {
	for i := range metal.Elements {
		if metal.Elements[i].Symbol == symbol {
			return metal.Elements[i].MolarMass
		}
	}
	return others[symbol]
}
