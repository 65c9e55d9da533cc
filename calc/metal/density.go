package metal

import (
	"math"
)

// densitySpread is how far a density that is calculated by mixing may be off, as a
// share of it, up or down. The catalogue's own densities are within it, except
// those of beryllium copper and of bronzes with 10 % aluminium or more, which are
// 4 % off, and of fired clay, which is porous.
const densitySpread = 0.03

// mixedDensity is the density of a typed composition, in kg/m3: by ideal mixing,
// times the mean ratio of catalogue to ideal density over its family, since
// brass and aluminium bronze are denser than the rule of mixtures says. It is
// within densitySpread for compositions like the family's, and not true of porous
// metal.
func mixedDensity(c []Part, f Family) float64 { return idealDensity(c) * ratios[f] }

// idealDensity is the density, in kg/m3, of elements that keep their volumes:
//
//	1 / rho = sum(w / rho_i)
//
// summed over the elements that have a density in Elements.
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
var ratios = func() (mean [Clay]float64) {
	var n [Clay]float64
	for i := range catalogue {
		m := &catalogue[i]
		if m.Family != Clay {
			mean[m.Family] += m.Density / idealDensity(m.Composition)
			n[m.Family]++
		}
	}
	for f := range mean {
		mean[f] /= n[f]
	}
	return mean
}()

// familyOf is the family of a typed composition: silver from 20 % silver on, since
// shibuichi is sold with silver; else by the main element beside copper. From 5 %
// nickel on it is a nickel silver.
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
