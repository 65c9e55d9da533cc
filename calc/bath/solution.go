package bath

import (
	"math"

	"saltbite/calc/quantity"
)

// Error says why there is no such salt or solution. It reads on from what was
// typed: "0 g/L" + " " + "holds no salt to speak of".
type Error string

func (e Error) Error() string { return string(e) }

const (
	UnknownSalt    Error = "is not a salt that this calculator knows: copper sulfate, silver nitrate and common salt are"
	UnlabelledSalt Error = "may hold other things than copper sulfate. Read its label: type copper sulfate only if it says 99 % copper sulfate pentahydrate"
	NoSalt         Error = "holds no salt to speak of"
	NoWater        Error = "leaves no water for a bath"
	NoStrength     Error = "is no way of saying a strength"
	NotWarmEnough  Error = "is below 0 C, where water freezes and the tables begin"
	TooWarm        Error = "is above 100 C, where water boils and the tables end"
	TwoSalts       Error = "is a bath of another salt"
	NotBetween     Error = "lies outside the two baths' strengths"
	TooLight       Error = "is lighter than water with no salt in it"
	TooHeavy       Error = "is heavier than a saturated bath, so it holds more than this salt"
)

// Where a strength is no longer that of a bath, kg of salt for each m3 of liquid:
// a microgram, and some hundred times what dissolves.
const (
	leastSalt = 1e-9
	mostSalt  = 1e5
)

// Solution is a bath by its strength: what one volume of liquid holds, and
// what of the salt lies undissolved in it.
type Solution struct {
	Salt        *Salt
	Temperature float64 // K
	Strength    float64 // kg/m3, all the salt in the form named, dissolved or not, per volume of liquid
	Anhydrous   float64 // mass fraction of anhydrous salt in the liquid
}

// Solution is the bath of that strength at that temperature. The strength may
// be a quantity.Density (of finished bath), PerWater (of water at 20 C), Share
// (by mass), Molarity or Saturation (a share of the saturated Density).
func (s *Salt) Solution(strength quantity.Quantity, kelvin float64) (Solution, error) {
	if err := s.refuse(strength.Value, kelvin); err != nil {
		return Solution{}, err
	}
	full := s.saturated(kelvin)
	switch v := strength.Value; strength.Kind {
	case quantity.Density:
		return full.ofStrength(v)
	case quantity.Molarity:
		return full.ofStrength(v * s.MolarMass)
	case quantity.Saturation:
		return full.ofStrength(v * full.Strength)
	case quantity.Share:
		return full.ofRatio(v / (1 - v))
	case quantity.PerWater:
		return full.ofRatio(v / waterDensity(room))
	}
	return Solution{}, NoStrength
}

// refuse says what of a strength or a temperature can't be.
func (s *Salt) refuse(strength, kelvin float64) error {
	switch {
	case !(kelvin >= s.solubility.first()):
		return NotWarmEnough
	case !s.solubility.holds(kelvin):
		return TooWarm
	case !(strength > 0):
		return NoSalt
	}
	return nil
}

// saturated is the solution that holds just as much salt as it can.
func (s *Salt) saturated(kelvin float64) Solution {
	full := Solution{Salt: s, Temperature: kelvin, Anhydrous: s.solubility.at(kelvin)}
	full.Strength = full.dissolved()
	return full
}

// ofStrength is the solution, at the temperature of a saturated one, with that
// much salt (kg/m3) per volume of liquid. Up to saturation it solves
//
//	strength = density(w) w / h
//
// for the mass fraction w of anhydrous salt, h being its share in the salt as
// named. The density only rises with w, so the ends of the search are known.
func (full Solution) ofStrength(strength float64) (Solution, error) {
	s := full
	s.Strength = strength
	if strength < full.Strength {
		anhydrous := strength * s.Salt.anhydrous
		mass := func(w float64) float64 { return w * s.Salt.density.at(w, s.Temperature) }
		least, most := anhydrous/full.Density(), anhydrous/s.Salt.density.at(0, s.Temperature)
		s.Anhydrous = solve(mass, least, math.Min(most, full.Anhydrous), anhydrous)
	}
	return s.checked()
}

// ofRatio is the solution, at the temperature of a saturated one, with that
// much salt, in the form named, to a mass of water.
func (full Solution) ofRatio(ratio float64) (Solution, error) {
	if !(ratio > 0) { // a share of all or more than all
		return Solution{}, NoWater
	}
	s := full
	if w := ratio / (1 + ratio) * s.Salt.anhydrous; w < full.Anhydrous {
		s.Anhydrous = w
		s.Strength = s.dissolved()
	} else {
		s.Strength = ratio * s.water()
	}
	return s.checked()
}

// checked is the solution if it is one.
func (s Solution) checked() (Solution, error) {
	switch {
	case s.Strength < leastSalt:
		return Solution{}, NoSalt
	case !(s.Strength < mostSalt):
		return Solution{}, NoWater
	}
	return s, nil
}

// In says the strength, undissolved salt included, in one of the five ways; 0
// for a kind that is not among them. It undoes Salt.Solution.
func (s Solution) In(kind quantity.Kind) float64 {
	ratio := s.Strength / s.water()
	switch kind {
	case quantity.Density:
		return s.Strength
	case quantity.Molarity:
		return s.Strength / s.Salt.MolarMass
	case quantity.Saturation:
		return s.Strength / s.Salt.saturated(s.Temperature).Strength
	case quantity.Share:
		return ratio / (1 + ratio)
	case quantity.PerWater:
		return ratio * waterDensity(room)
	}
	return 0
}

// Liquid is the solution without what lies undissolved in it.
func (s Solution) Liquid() Solution {
	s.Strength = math.Min(s.Strength, s.Salt.saturated(s.Temperature).Strength)
	return s
}

// Density is that of the liquid, kg/m3.
func (s Solution) Density() float64 { return s.Salt.density.at(s.Anhydrous, s.Temperature) }

// Conductivity is that of the liquid, S/m. There is no value well past the last row
// of its table.
func (s Solution) Conductivity() quantity.Optional {
	return s.Salt.conduction.at(s.Anhydrous, s.Temperature)
}

// fraction is the mass fraction of salt, in the form named, in the liquid.
func (s Solution) fraction() float64 { return s.Anhydrous / s.Salt.anhydrous }

// dissolved is the salt in the liquid, in the form named, kg/m3.
func (s Solution) dissolved() float64 { return s.Density() * s.fraction() }

// undissolved is the salt that lies in the liquid, in the form named, kg/m3.
func (s Solution) undissolved() float64 { return s.Strength - s.Liquid().Strength }

// water is the water in the liquid but for what the salt as named brings, kg/m3.
func (s Solution) water() float64 { return s.Density() * (1 - s.fraction()) }

// metal is the salt's metal in the liquid, kg/m3.
func (s Solution) metal() float64 { return s.Density() * s.Anhydrous * s.Salt.metal }

// past ends a clause about a figure that was read past the end of its table.
const past = " is carried straight on past the last row of its table"

// Outside lists, as clauses, the figures of this bath that were read past the
// end of a table or of what is known of them; empty for most baths.
func (s Solution) Outside() []string {
	var clauses []string
	if s.Salt.density.beyond(s.Anhydrous) {
		clauses = append(clauses, "the density"+past)
	}
	conducts := s.Conductivity().Known()
	if conducts && s.Salt.conduction.beyond(s.Anhydrous) {
		clauses = append(clauses, "the conductivity"+past)
	}
	if conducts && s.Salt.conduction.carried(s.Temperature) {
		clauses = append(clauses, "the conductivity's change by temperature is known from 10 to 30 C only")
	}
	return clauses
}

// SaturationOutside is such a clause for what is calculated from saturation: with a
// strength said as a share of it, the bath itself rests on the density of a
// saturated one. That of silver nitrate and of common salt lies past the last
// row. There is none where Outside says already that the bath's own does.
func (s Solution) SaturationOutside() (clause string, ok bool) {
	salt := s.Salt
	ok = salt.density.beyond(salt.solubility.at(s.Temperature)) && !salt.density.beyond(s.Anhydrous)
	if ok {
		clause = "the density of a saturated bath" + past
	}
	return clause, ok
}
