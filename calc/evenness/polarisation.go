package evenness

import (
	"math"

	"saltbite/calc/bath"
	"saltbite/calc/metal"
)

// Kinetics are how a metal dissolves into its own salt:
//
//	i = i0 [exp(alpha_a F eta / RT) - exp(-alpha_c F eta / RT)]
//
// with eta the overpotential (Butler and Volmer; textbook). Metal ions that pile
// up at the face cost potential too; that is left out, and makes it more even
// than worked out here, until the salt film forms.
type Kinetics struct {
	Exchange         float64 // A/m2, i0
	Anodic, Cathodic float64 // transfer coefficients alpha
	Tafel            float64 // V a decade that another source gives; 0: none
	Source           bath.Source
}

// Copper is copper in copper sulfate. Two slopes are published; 39 mV a decade is
// taken, since it was read in a bath with copper in it. It is also the one that
// gives the less even bite. Brasses, bronzes and nickel silver are taken as
// copper: no figures for them were found.
var Copper = Kinetics{Exchange: 10, Anodic: 1.5, Cathodic: 0.5, Tafel: 0.055,
	Source: bath.Source{Figure: "polarisation of copper",
		Text: "1 mA/cm2, 39 mV a decade: E. Mattsson and J. O'M. Bockris, Trans. Faraday Soc. 55 (1959) 1586, from memory. The other end: 54.8 to 55.6 mV in 1 mol/L sodium sulfate " +
			"at pH 1 to 5, D. K. Y. Wong, B. A. W. Coller and D. R. MacFarlane, Electrochim. Acta 38 (1993) 2121, abstract seen",
		Confidence: "memory"}}

// Silver is silver in silver nitrate. It polarises less than copper, so the same
// picture is etched less evenly. The exchange current is an order of magnitude:
// 4.5 A/cm2, thirty times as much, was read on fresh faces by short pulses (H.
// Gerischer and R. P. Tischer, Z. Elektrochem. 61 (1957) 1159, from memory), and
// would leave hardly any polarisation.
var Silver = Kinetics{Exchange: 1500, Anodic: 0.5, Cathodic: 0.5,
	Source: bath.Source{Figure: "polarisation of silver",
		Text:       "0.15 A/cm2: A. R. Despic and J. O'M. Bockris, J. Chem. Phys. 32 (1960) 389, from memory; an order of magnitude",
		Confidence: "memory"}}

const gasConstant = 8.31446261815324 // J/(mol.K), exact by definition (SI 2019)

// Polarisation is d eta / d i, ohm m2, at a density (A/m2) and a temperature (K):
// what Problem takes.
func (k Kinetics) Polarisation(density, temperature float64) float64 {
	volt := gasConstant * temperature / metal.Faraday
	eta := k.overpotential(density/k.Exchange) * volt
	return volt / (k.Exchange * (k.Anodic*math.Exp(k.Anodic*eta/volt) + k.Cathodic*math.Exp(-k.Cathodic*eta/volt)))
}

// HighPolarisation is the same with the other published slope, and is 0 if only
// one is published:
//
//	d eta / d i = b / (ln 10 i)
func (k Kinetics) HighPolarisation(density float64) float64 { return k.Tafel / math.Ln10 / density }

// overpotential is in units of RT/F, for a density in units of i0. The density
// grows with it and is between these ends, which are halved until they meet.
func (k Kinetics) overpotential(density float64) float64 {
	low, high := 0.0, math.Log(density+1)/k.Anodic
	for range 60 {
		middle := (low + high) / 2
		if math.Exp(k.Anodic*middle)-math.Exp(-k.Cathodic*middle) < density {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}
