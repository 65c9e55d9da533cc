package bath

import (
	"math"

	"saltbite/calc/quantity"
)

// Room is the temperature that hydrometers and most tables are for, K.
const Room = room

// baumeModulus is that of Baumé's scale for liquids heavier than water.
const baumeModulus = 145

// concentrated is a volume of the solution when water has gone, or come, until
// another volume is left (m3): all the salt is then in that.
//
//	strength = strength volume / left
//
// Conservation of the salt; what is lost with drips and on the work is left out.
// The water that brings the volume back is taken to be as much as the level has
// sunk, filled up to a mark: by weight it is that within 1.5 % at 20 C, down to
// saturation.
func (s Solution) concentrated(volume, left float64) (Solution, error) {
	return s.Salt.Solution(quantity.Quantity{Value: s.Strength * volume / left, Kind: quantity.Density}, s.Temperature)
}

// Toward is what makes a volume (m3) of the solution as strong as another of
// the same salt: salt of an assay (kg) where that is stronger, or water at 20 C
// (m3) where it is weaker. With S the salt and W the water that the volume
// holds, the salt in the form named, and r the ratio of the two in the other:
//
//	salt = (r W - S) / assay,  water = (S - r W) / r
//
// Conservation of salt and of water. The volume grows. For a volume or an assay
// that can't be, it is nothing.
func (s Solution) Toward(want Solution, volume, assay float64) (salt, water float64, err error) {
	switch {
	case s.Salt != want.Salt:
		return 0, 0, TwoSalts
	case !weighable(volume, assay):
		return 0, 0, nil
	}
	ratio := want.Strength / want.water()
	short := ratio*s.water() - s.Strength
	switch {
	case short > balanced*s.Strength:
		return short * volume / assay, 0, nil
	case short < -balanced*s.Strength:
		return 0, -short / ratio * volume / waterDensity(room), nil
	}
	return 0, 0, nil
}

// Parts are how much of two baths (kg) make a volume (m3) of a third between
// them, all of the same salt, with w the mass fractions of all the salt,
// undissolved included:
//
//	a = mass (w - w_b) / (w_a - w_b),  b = mass - a
//
// Conservation of salt and of water. Of two alike all is a. For a volume that
// can't be, it is nothing.
func (s Solution) Parts(a, b Solution, volume float64) (ofA, ofB float64, err error) {
	if s.Salt.Metal != a.Salt.Metal || s.Salt.Metal != b.Salt.Metal {
		return 0, 0, TwoSalts
	}
	w, wa, wb := s.all(), a.all(), b.all()
	mass := (s.Strength + s.water()) * volume
	switch {
	case w < math.Min(wa, wb) || w > math.Max(wa, wb):
		return 0, 0, NotBetween
	case !weighable(volume, 1):
		return 0, 0, nil
	case wa == wb:
		return mass, 0, nil
	}
	return mass * (w - wb) / (wa - wb), mass * (wa - w) / (wa - wb), nil
}

// ByDensity is the solution that has that density (kg/m3) at that temperature,
// and nothing but this salt in it: a bath that has etched brass or nickel silver
// is misread, as zinc and nickel sulfate are nearly as heavy. What was read past
// the densities' last row, Outside says.
func (s *Salt) ByDensity(density, kelvin float64) (Solution, error) {
	if err := s.refuse(density, kelvin); err != nil {
		return Solution{}, err
	}
	full := s.saturated(kelvin)
	switch water := waterDensity(kelvin); {
	case density < water:
		return Solution{}, TooLight
	case density > full.Density():
		return Solution{}, TooHeavy
	}
	made := full
	made.Anhydrous = solve(func(w float64) float64 { return s.density.at(w, kelvin) }, 0, full.Anhydrous, density)
	made.Strength = made.dissolved()
	return made.checked()
}

var hydrometerSource = Source{"hydrometer", "gravity 20/20 C on the table of densities; degrees Baumé by the modulus 145 (F. J. Bates, 1942, as quoted by others)", "seen"}

// DensityOfGravity is the density (kg/m3) at 20 C of a liquid so many times as
// heavy as water, both at 20 C, as a hydrometer says it.
func DensityOfGravity(gravity float64) float64 { return gravity * waterDensity(room) }

// GravityOfBaume is the gravity of so many degrees Baumé:
//
//	145 / (145 - degrees)
//
// The scale for liquids heavier than water (F. J. Bates, 1942, seen as others
// quote it). It is made for 60 F and taken here for 20 C, between which water
// and a bath swell nearly alike. There is no value from 145 degrees on: it is 0.
func GravityOfBaume(degrees float64) float64 {
	if !(degrees < baumeModulus) {
		return 0
	}
	return baumeModulus / (baumeModulus - degrees)
}
