package circuit

import "saltbite/calc/quantity"

// CathodeDensity is the current density, A/m2, that a current (A) puts on a
// cathode (m2): a mean over its facing area.
func CathodeDensity(current, cathode float64) quantity.Optional {
	return quantity.Positive(quantity.Positive(current).SI / cathode)
}

// Warming is how fast, K/s, a current (A) through so many cell volts warms a
// bath with so much water (kg) in it:
//
//	current x volts / (4182 J/(kg.K) x water)
//
// Heat capacity of water at 20 C (4181.9 J/(kg.K), the 20 C calorie, Debian
// package units 2.22-2, seen; rounded up). The salt's heat and the chemistry's
// are left out, and no loss is counted: a bath that stands open warms less, the
// less the longer it runs.
func Warming(current, volts, water float64) quantity.Optional {
	return quantity.Positive(quantity.Positive(current).SI * quantity.Positive(volts).SI / (heatOfWater * water))
}

const heatOfWater = 4182 // J/(kg.K)
