package bath

import (
	"math"

	"saltbite/calc/quantity"
)

// Common practice, no source, A/m2: the current density to start from, 30
// mA/cm2, and 10 mA/cm2, below which the film alone takes none.
const (
	startDensity = 300
	leastByFilm  = 100
)

// Suggest holds what bounds a current density for a job that has none.
type Suggest struct {
	Film, Cathode quantity.Optional // A/m2, the limits
	CathodeArea   quantity.Optional // m2, facing
	TotalArea     quantity.Optional // m2, all exposed metal
	Amps          quantity.Optional // A, the most the supply gives
}

// Density is the current density to suggest, A/m2, the least of
//
//	30 mA/cm2
//	half of the film's density, but not below 10 mA/cm2
//	half of the cathode's limit x cathode / exposed metal, or where one of the
//	two areas is not known half of the cathode's limit
//	amps / exposed metal
//
// each where it is known. The current is this times the exposed metal. Common
// practice and a choice of half, no source. There is no value where the bath is
// spent, so that the cathode allows nothing.
func (s Suggest) Density() quantity.Optional {
	density := float64(startDensity)
	if s.Film.Known() {
		density = math.Min(density, math.Max(s.Film.SI/2, leastByFilm))
	}
	if s.Cathode.Known() {
		allowed := s.Cathode.SI / 2
		if s.CathodeArea.SI > 0 && s.TotalArea.SI > 0 {
			allowed *= s.CathodeArea.SI / s.TotalArea.SI
		}
		density = math.Min(density, allowed)
	}
	if s.Amps.SI > 0 && s.TotalArea.SI > 0 {
		density = math.Min(density, s.Amps.SI/s.TotalArea.SI)
	}
	return quantity.Positive(density)
}
