package bath

import (
	"math"

	"saltbite/calc/quantity"
)

// Viscosity at 20 C: mass % of anhydrous salt against mPa s. Water, the row at
// 0, is 1.002.
var (
	copperSulfateViscosity = newViscosity([]point{
		{0.5, 1.017}, {1, 1.036}, {2, 1.084}, {3, 1.129}, {4, 1.173}, {5, 1.221}, {6, 1.276}, {7, 1.336}, {8, 1.400},
		{9, 1.469}, {10, 1.543}, {11, 1.620}, {12, 1.701}, {13, 1.790}, {14, 1.889}, {15, 2.004}, {16, 2.136},
		{17, 2.285}, {18, 2.449},
	})
	silverNitrateViscosity = newViscosity([]point{
		{0.5, 1.003}, {1, 1.005}, {2, 1.009}, {3, 1.013}, {4, 1.016}, {5, 1.020}, {6, 1.024}, {7, 1.027}, {8, 1.031},
		{9, 1.035}, {10, 1.039}, {12, 1.049}, {14, 1.060}, {16, 1.072}, {18, 1.086}, {20, 1.101}, {22, 1.117},
		{24, 1.135}, {26, 1.154}, {28, 1.176}, {30, 1.200}, {32, 1.227}, {34, 1.257}, {36, 1.290}, {38, 1.326},
		{40, 1.366},
	})
)

var viscositySource = Source{"viscosity", "CRC Handbook of Chemistry and Physics, 102nd ed. (2021), " +
	"Concentrative Properties of Aqueous Solutions, 20 C; by temperature as water's, " +
	"Kestin, Sokolov and Wakeham, J. Phys. Chem. Ref. Data 7 (1978) 941", "seen"}

// viscosity is a table of viscosities.
type viscosity struct{ curve }

// newViscosity makes one of rows in the units of the tables above.
func newViscosity(rows []point) viscosity {
	rows = append([]point{{0, 1.002}}, rows...)
	return viscosity{newCurve(rows, 0.01, 1e-3)}
}

// at is the viscosity of a solution with that share of anhydrous salt, Pa s.
// There is no value past the last row of its table, nor without a table. At temperatures other than
// 20 C it is taken to change as water's does, for which no source was found.
func (v viscosity) at(fraction, kelvin float64) quantity.Optional {
	if len(v.x) == 0 || fraction > v.last() {
		return quantity.Optional{}
	}
	return quantity.Known(v.curve.at(fraction) * waterThinning(kelvin))
}

// waterThinning is the viscosity of water as a multiple of that at 20 C, where
// t is in degrees Celsius:
//
//	log10 = (20 - t) (1.2378 - 1.303e-3 (20 - t) + 3.06e-6 (20 - t)^2 + 2.55e-8 (20 - t)^3) / (t + 96)
//
// Kestin, Sokolov and Wakeham, J. Phys. Chem. Ref. Data 7 (1978) 941 (seen in a
// program that uses it), from -8 to 150 C.
func waterThinning(kelvin float64) float64 {
	t := kelvin - celsius0
	below := 20 - t
	return math.Pow(10, below*(1.2378+below*(-1.303e-3+below*(3.06e-6+below*2.55e-8)))/(t+96))
}
