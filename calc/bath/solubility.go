package bath

import "saltbite/calc/quantity"

// Solubility by temperature: C against mass % of the anhydrous salt in the
// saturated solution. Copper sulfate's solid is the pentahydrate up to 96 C,
// the trihydrate above (from memory); common salt's is anhydrous from 0.1 C up.
var (
	copperSulfateSolubility = newSolubility([]point{
		{0, 12.4}, {10, 14.4}, {20, 16.7}, {25, 18.0}, {30, 19.3}, {40, 22.2},
		{50, 25.4}, {60, 28.8}, {70, 32.4}, {80, 36.3}, {90, 40.3}, {100, 43.5},
	})
	silverNitrateSolubility = newSolubility([]point{
		{0, 55.9}, {10, 62.3}, {20, 67.8}, {25, 70.1}, {30, 72.3}, {40, 76.1},
		{50, 79.2}, {60, 81.7}, {70, 83.8}, {80, 85.4}, {90, 86.7}, {100, 87.8},
	})
	commonSaltSolubility = newSolubility([]point{
		{0, 26.28}, {10, 26.32}, {20, 26.41}, {25, 26.45}, {30, 26.52}, {40, 26.67},
		{50, 26.84}, {60, 27.03}, {70, 27.25}, {80, 27.50}, {90, 27.78}, {100, 28.05},
	})
)

var solubilitySource = Source{"solubility", "CRC Handbook of Chemistry and Physics, 98th ed. (2017), " +
	"Aqueous Solubility of Inorganic Compounds at Various Temperatures", "seen"}

// solubility is a table of solubilities.
type solubility struct{ curve }

// newSolubility makes one of rows in the units of the tables above.
func newSolubility(rows []point) solubility {
	for i := range rows {
		rows[i].x += celsius0
	}
	return solubility{newCurve(rows, 1, 0.01)}
}

// holds says whether the table knows that temperature.
func (s solubility) holds(kelvin float64) bool { return kelvin >= s.first() && kelvin <= s.last() }

// temperature is where a solution of that share of anhydrous salt is just
// saturated. There is no value outside the table; what only rounding puts outside
// is its end.
func (s solubility) temperature(fraction float64) quantity.Optional {
	const rounding = 1e-12
	if !(fraction >= s.at(s.first())-rounding && fraction <= s.at(s.last())+rounding) {
		return quantity.Optional{}
	}
	return quantity.Known(solve(s.at, s.first(), s.last(), fraction))
}
