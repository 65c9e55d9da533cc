// Package bath is the salt bath: which salts, how strong a bath is however its
// strength is said, how it is mixed by weight and kept, and where it stops
// keeping up.
//
// FindSalt finds a salt by the name people give it. Salt.Solution makes of a
// strength and a temperature a Solution, a value that knows its density,
// conductivity and saturation and says its strength in all five ways.
// Solution.Mix weighs out a volume of it, and FromHand, VolumeOfSalt and
// VolumeOfWater go the other way, from what there is. Crystals and SaturatesAt
// tell what the cold does.
//
// A Run is a charge through a metal, and says what the bath loses to the
// cathode and gains from the work; After counts in what was etched before.
// SaltToAdd, Toward and Parts bring a bath back to what it was,
// ByDensity reads a hydrometer. FilmDensity and CathodeLimit are the current
// densities at which the liquid beside the work, and beside the cathode, stops
// keeping up, an order of magnitude with its range. Now is a bath that was used: what
// metal is left in it, and the same limits for it.
//
// # What is meant
//
// A strength is always of pure salt in the form named: crystals of copper
// sulfate count with the water they hold, and that water is not counted as
// water. Inside, a solution is its mass fraction of anhydrous salt, which is
// what the tables are in.
//
// A strength above saturation is a saturated liquid that fills the volume, with
// the rest of the salt undissolved in it, its own volume left out.
//
// # What is not known
//
// Tables go from 0 to 100 C. What is read past the last row of one is said by
// Solution.Outside and SaturationOutside; what can't be read is absent. Mixing takes its heat from
// nowhere, impurities change nothing, and a bath that has etched brass or
// sterling is no longer a solution of one salt: a Run says how far it is from
// that, and every other figure here stands for the bath as it was mixed.
package bath

import "slices"

// Source says where a figure was read and how sure that is: "seen" in the work
// named, "computed" from what was seen, or from "memory".
type Source struct{ Figure, Text, Confidence string }

// Salt is a salt that a bath is made of, in the form it is weighed in.
type Salt struct {
	Name      string
	Formula   string
	Metal     string  // symbol of the metal it plates and takes up; "" for a chloride, which has none
	MolarMass float64 // kg/mol, in this form
	Usual     float64 // kg/m3: a strength to start from; common practice, no source

	anhydrous  float64 // share of anhydrous salt in this form, by mass
	crystal    float64 // share of anhydrous salt in the crystals that drop
	metal      float64 // share of Metal in the anhydrous salt
	solubility *solubility
	density    *density
	conduction *conductivity
	transport  *transport // an empty one for common salt
}

// The salts.
var (
	// CopperSulfate is the blue crystals, what copper sulfate means unless it is
	// called anhydrous.
	CopperSulfate = &Salt{
		Name: "copper sulfate crystals", Formula: "CuSO4·5H2O", Metal: "Cu",
		MolarMass: molarPentahydrate, Usual: 150, anhydrous: molarCuSO4 / molarPentahydrate, crystal: molarCuSO4 / molarPentahydrate,
		metal:      weight("Cu") / molarCuSO4,
		solubility: &copperSulfateSolubility, density: &copperSulfateDensity, conduction: &copperSulfateConductivity,
		transport: &copperSulfateTransport,
	}
	CopperSulfateAnhydrous = &Salt{
		Name: "anhydrous copper sulfate", Formula: "CuSO4", Metal: "Cu",
		MolarMass: molarCuSO4, Usual: 100, anhydrous: 1, crystal: molarCuSO4 / molarPentahydrate,
		metal:      weight("Cu") / molarCuSO4,
		solubility: &copperSulfateSolubility, density: &copperSulfateDensity, conduction: &copperSulfateConductivity,
		transport: &copperSulfateTransport,
	}
	SilverNitrate = &Salt{
		Name: "silver nitrate", Formula: "AgNO3", Metal: "Ag",
		MolarMass: molarAgNO3, Usual: 40, anhydrous: 1, crystal: 1,
		metal:      weight("Ag") / molarAgNO3,
		solubility: &silverNitrateSolubility, density: &silverNitrateDensity, conduction: &silverNitrateConductivity,
		transport: &silverNitrateTransport,
	}
	CommonSalt = &Salt{
		Name: "common salt", Formula: "NaCl",
		MolarMass: molarNaCl, Usual: 100, anhydrous: 1, crystal: 1,
		solubility: &commonSaltSolubility, density: &commonSaltDensity, conduction: &commonSaltConductivity,
		transport: &transport{viscosity: &viscosity{}},
	}
)

// Sources are where the figures of the salt and of its bath come from.
func (s *Salt) Sources() []Source {
	common := []Source{molarMassSource, solubilitySource, densitySource, hydrometerSource}
	beside := []Source{viscositySource, layerSource}
	switch s {
	case CopperSulfate, CopperSulfateAnhydrous:
		return slices.Concat(common, copperSulfateConductivitySources, beside, copperSulfateTransportSources)
	case SilverNitrate:
		return slices.Concat(common, silverNitrateConductivitySources, beside, silverNitrateTransportSources)
	case CommonSalt:
		return slices.Concat(common, commonSaltConductivitySources, []Source{hydrogenSource})
	}
	return nil
}
