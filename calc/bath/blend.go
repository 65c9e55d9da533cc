package bath

import "saltbite/calc/quantity"

// Blend is what two baths of the same salt make, a's share being by mass:
//
//	w = share w_a + (1 - share) w_b
//
// with w the mass fractions of all the anhydrous salt, undissolved included,
// and the temperature likewise, as if a kilogram of either took the same heat.
// Conservation of mass. The salt's form is a's.
func Blend(a, b Solution, share float64) (Solution, error) {
	if a.Salt.Metal != b.Salt.Metal {
		return Solution{}, TwoSalts
	}
	mean := func(a, b float64) float64 { return share*a + (1-share)*b }
	fraction := mean(a.all(), b.all()) / a.Salt.anhydrous
	if fraction >= 1 {
		return Solution{}, NoWater
	}
	return a.Salt.Solution(quantity.Quantity{Value: fraction, Kind: quantity.Share}, mean(a.Temperature, b.Temperature))
}
