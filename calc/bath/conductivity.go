package bath

import "saltbite/calc/quantity"

// Conductivity at 20 C: mass % of anhydrous salt against mS/cm. Water, the row
// at 0, is taken to conduct nothing, which is true to a thousandth of the next
// row.
var (
	copperSulfateConductivity = newConductivity(0.022, []point{
		{0.5, 2.9}, {1, 5.4}, {2, 9.3}, {5, 19.0}, {10, 32.2}, {15, 42.3},
	})
	silverNitrateConductivity = newConductivity(0.021, []point{
		{0.5, 3.1}, {1, 6.1}, {2, 12.0}, {5, 26.7}, {10, 49.8}, {15, 72.0}, {20, 92.8}, {25, 112}, {30, 129}, {40, 162},
	})
	commonSaltConductivity = newConductivity(0.0214, []point{
		{0.5, 8.2}, {1, 16.0}, {2, 30.2}, {5, 70.1}, {10, 126}, {15, 171}, {20, 204}, {25, 222},
	})
)

const conductivityTable = "CRC Handbook of Chemistry and Physics, Electrical Conductivity of Aqueous Solutions, 20 C"

// Copper sulfate's row is uncertain by about 5 %: it lies within 1 % of
// Kohlrausch's figures for 18 C (from memory), where 2 K should make 4 %.
var (
	copperSulfateConductivitySources = []Source{
		{"conductivity", conductivityTable + "; uncertain by about 5 %", "seen"},
		{"conductivity by temperature", "2.2 %/K, between Kohlrausch at 18 C (from memory) and the CRC Handbook at 25 C (seen)", "computed"},
	}
	silverNitrateConductivitySources = []Source{
		{"conductivity", conductivityTable, "seen"},
		{"conductivity by temperature", "2.1 %/K, Kohlrausch and Holborn, Leitvermögen der Elektrolyte", "memory"},
	}
	commonSaltConductivitySources = []Source{
		{"conductivity", conductivityTable + ", by way of a file that holds it times the per cent", "computed"},
		{"conductivity by temperature", "2.14 %/K, a list in the manual of a laboratory conductivity meter", "seen"},
	}
)

const (
	// pastConductivity is how far past its last concentration a table goes on.
	pastConductivity = 1.1

	// Where the change by temperature may pass for a straight line, K.
	conductivityFrom = celsius0 + 10
	conductivityTo   = celsius0 + 30
)

// conductivity is a table of conductivities and how much of it a kelvin adds.
type conductivity struct {
	curve
	perKelvin float64
}

// newConductivity makes one of rows in the units of the tables above.
func newConductivity(perKelvin float64, rows []point) conductivity {
	rows = append([]point{{0, 0}}, rows...)
	return conductivity{newCurve(rows, 0.01, 0.1), perKelvin} // 1 mS/cm = 0.1 S/m
}

// at is the conductivity of a solution with that share of anhydrous salt, S/m:
//
//	kappa = kappa(20 C) (1 + a (T - 20 C))
//
// The line holds from 10 to 30 C; further off it is carried on, and carried says so.
// Past the last row the conductivity goes straight on, and beyond says so; there
// is no value from 1.1 times the last concentration on.
func (c conductivity) at(fraction, kelvin float64) quantity.Optional {
	at20 := c.curve.at(fraction)
	switch {
	case fraction > pastConductivity*c.last():
		return quantity.Optional{}
	case c.beyond(fraction):
		at20 = c.onward(fraction)
	}
	return quantity.Known(at20 * (1 + c.perKelvin*(kelvin-room)))
}

// beyond says whether that share of salt lies past the last row.
func (c conductivity) beyond(fraction float64) bool { return fraction > c.last() }

// carried says whether that temperature is outside the line's.
func (c conductivity) carried(kelvin float64) bool {
	return kelvin < conductivityFrom || kelvin > conductivityTo
}
