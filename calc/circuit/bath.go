package circuit

import (
	"math"

	"saltbite/calc/bite"
)

// Bath is the liquid between the work and the cathode that faces it.
type Bath struct {
	Conductivity float64 // S/m
	Gap          float64 // m, anode to cathode
	Face         Face    // of one piece
	Open         float64 // m2, open area of one piece, all sides
	Pieces       float64 // how many hang side by side
	Cathode      float64 // m2, facing area
}

// Resistance is that of the bath, ohm, taken as a truncated cone:
//
//	R = g / (kappa sqrt(A1 A2))
//
// with g the gap, kappa the conductivity, A1 the faces of all pieces and A2 the
// cathode, but at most the face of each piece grown by the gap on every side,
// since the current spreads at about 45 degrees; so equal pieces, each before
// its share of the cathode, resist as one of them in parallel. Textbook
// physics (a cone that tapers slowly); the angle is a choice. An estimate, not
// a bound: for a disc facing an endless plate it is 0.99 of the exact resistance
// up to a gap of half a radius, then 1.02, 1.07, 1.16 and 1.21 of it at 1, 2, 5
// and 10 radii (computed). Resist within the face, and walls close to it, are
// left out.
func (b Bath) Resistance() float64 {
	faces := b.Pieces * b.Face.Area()
	spread := math.Min(b.Cathode, b.Pieces*b.Face.grown(b.Gap))
	return b.column(math.Sqrt(bite.Held(faces)) * math.Sqrt(bite.Held(spread)))
}

// HighResistance is the bath's resistance, ohm, if the current had to squeeze
// into all open metal gathered in one disc:
//
//	R = 1 / (4 kappa a) + g / (kappa A),  a = sqrt(open metal / pi)
//
// with A the whole cathode, the open metal that of all pieces and no hidden
// metal: a disc in an insulating wall and all the bath before it, exact (J.
// Newman, J. Electrochem. Soc. 113 (1966) 501), and a column of bath as wide as
// the cathode. Where Resistance is larger still, as before
// a cathode smaller than the work, it is that.
func (b Bath) HighResistance() float64 {
	radius := math.Sqrt(bite.Held(b.Pieces*b.Open) / math.Pi)
	disc, column := bite.Held(1/(4*b.Conductivity*radius)), b.column(b.Cathode)
	if disc == 0 || column == 0 {
		return 0
	}
	return bite.Held(math.Max(disc+column, b.Resistance()))
}

// column is the resistance, ohm, of bath as long as the gap and of that cross
// section, m2, throughout.
func (b Bath) column(section float64) float64 {
	return bite.Held(bite.Held(b.Gap) / bite.Held(b.Conductivity) / bite.Held(section))
}

// CathodeDensity is the current density, A/m2, that a current (A) puts on a
// cathode (m2): a mean over its facing area.
func CathodeDensity(current, cathode float64) float64 { return bite.Held(bite.Held(current) / cathode) }

// Warming is how fast, K/s, a current (A) through so many cell volts warms a
// bath with so much water (kg) in it:
//
//	current x volts / (4182 J/(kg.K) x water)
//
// Heat capacity of water at 20 C (4181.9 J/(kg.K), the 20 C calorie, Debian
// package units 2.22-2, seen; rounded up). The salt's heat and the chemistry's
// are left out, and no loss is counted: a bath that stands open warms less, the
// less the longer it runs.
func Warming(current, volts, water float64) float64 {
	return bite.Held(bite.Held(current) * bite.Held(volts) / (heatOfWater * water))
}

const heatOfWater = 4182 // J/(kg.K)
