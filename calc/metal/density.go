package metal

import (
	"math"
	"sync"
)

// DensitySpread is how far a density by mixing may be off, either way: every row
// of the catalogue is within it but beryllium copper, bronzes with a tenth of
// aluminium and more, which are 4 % off, and fired clay.
const DensitySpread = 0.03

// mixedDensity is the density of a typed composition, in kg/m3: by ideal mixing,
// times the mean ratio of catalogue to ideal density over its family, since
// brass and aluminium bronze are denser than the rule of mixtures says. It is
// good to DensitySpread for compositions like the family's; not for porous
// metal.
func mixedDensity(c []Part, f Family) float64 { return idealDensity(c) * ratios()[f] }

// idealDensity is the density, in kg/m3, of elements that keep their volumes:
//
//	1 / rho = sum(w / rho_i)
//
// over those that have a density of their own.
func idealDensity(c []Part) float64 {
	var volume, mass float64
	for _, p := range c {
		if e := element(p.Symbol); e.Density > 0 {
			volume += p.Share / e.Density
			mass += p.Share
		}
	}
	return mass / volume
}

// ratios are each family's mean of catalogue density over ideal density.
var ratios = sync.OnceValue(func() (mean [Clay]float64) {
	var n [Clay]float64
	for m := range All() {
		if m.Family != Clay {
			mean[m.Family] += m.Density / idealDensity(m.Composition)
			n[m.Family]++
		}
	}
	for f := range mean {
		mean[f] /= n[f]
	}
	return mean
})

// familyOf sorts a typed composition: by its silver from a fifth up (shibuichi
// is sold with silver), else by what there is most of beside copper; nickel
// from 5 % up makes a nickel silver, as the catalogue has it.
func familyOf(c []Part) Family {
	m := Metal{Composition: c}
	bronze := 0.0
	for _, s := range []string{"Sn", "Al", "Si", "Mn", "Be", "Co", "P"} {
		bronze = math.Max(bronze, m.Share(s))
	}
	switch {
	case m.Share("Ag") >= 0.2:
		return Silver
	case m.Share("Ni") >= 0.05 && m.Share("Ni") > m.Share("Al"):
		return NickelSilver
	case m.Share("Cu") >= 0.99 || m.Share("Zn")+bronze == 0:
		return Copper
	case m.Share("Zn") > bronze:
		return Brass
	}
	return Bronze
}
