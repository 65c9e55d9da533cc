package bath

import (
	"math"

	"saltbite/calc/quantity"
)

// Face is an electrode's face as the liquid beside it sees it.
type Face struct {
	Length   float64  // m, its height where it hangs, else its width
	Position Position // of the work, which the cathode faces
	Stirred  bool
}

// Position is how the work lies in the bath; the cathode faces it.
type Position uint8

const (
	Hanging  Position = iota
	FaceDown          // over a cathode that lies face up
	FaceUp            // under a cathode that lies face down
)

const (
	standardGravity = 9.80665 // m/s2, by definition

	// stirredLayer is as thick as the layer beside an electrode gets in a stirred
	// bath, m. Common practice, no source.
	stirredLayer = 1e-4

	// The ends of a limit, as multiples of it. Common practice, no source.
	limitLow, limitHigh = 0.5, 2

	// Where an electrode stops being one, m.
	leastLength, mostLength = 1e-6, 1e3
)

var layerSource = Source{"diffusion layer", "still bath: Wilke, Eisenberg and Tobias, J. Electrochem. Soc. 100 (1953) 513, upright " +
	"(its constant supported by a quotation that was seen); Wragg, Electrochim. Acta 13 (1968) 2159, level. Stirred: 0.1 mm, common practice, no source", "memory"}

// FilmDensity is where the liquid at the work's face reaches saturation, so
// that the salt crystallises on the metal and stops the bite: Face.limit with
//
//	dc = saturated - bulk
//
// It is 0 in a saturated bath, and there is no value in common salt, nor over 300
// mA/cm2, which says nothing of a bench. A bath holds more than saturates it for
// a while, which buys some more (D. Landolt, Electrochim. Acta 32 (1987) 1, from
// memory); an alloy's other salts are left out. It rests on the saturated bath's
// density: see SaturationOutside.
func (s Solution) FilmDensity(f Face) quantity.Range {
	const most = 3000 // A/m2
	film := f.limit(s.Liquid(), s.Salt.saturated(s.Temperature))
	if film.SI > most {
		return quantity.Range{}
	}
	return film
}

// CathodeLimit is where the liquid at the cathode runs out of metal, which then
// grows as powder, with gas: Face.limit with
//
//	dc = bulk
//
// There is no value in common salt.
func (s Solution) CathodeLimit(f Face) quantity.Range {
	bulk := s.Liquid()
	return f.limit(bulk, bulk.spent())
}

// CathodeNeeded is the cathode (m2) on which a current (A) is half of the
// limit (A/m2). A choice: half is where powder is not yet to be feared.
func CathodeNeeded(current, limit float64) quantity.Optional {
	return quantity.Positive(2 * current / limit)
}

// Settles says whether the face's own liquid rests on it: the heavier one on
// work that lies face up, the lighter one under the cathode above it. Unstirred,
// the layer then grows as long as the current is on, and there is no limit that
// lasts.
func (f Face) Settles() bool { return f.Position == FaceUp && !f.Stirred }

// spent is the liquid when its salt is gone.
func (s Solution) spent() Solution {
	s.Strength, s.Anhydrous = 0, 0
	return s
}

// limit is the current density, A/m2, at which the liquid at the face differs from
// the bulk as another does, at the same temperature:
//
//	i = z F D dc / (delta (1 - t+))
//
// with z the charge of the ion, D the salt's diffusion, dc the difference in
// mol/m3, t+ the share of the current that the ion carries, and delta the layer
// in which the difference lies. C. W. Tobias, M. Eisenberg, C. R. Wilke,
// J. Electrochem. Soc. 99 (1952) 359C (from memory), for a salt by itself: with
// acid in the bath t+ falls to nothing, and the limit is lower. There is no value
// past the last row of the viscosities.
//
// D and t+ are taken as one at all strengths, though both change as a bath gets
// stronger. Half to twice the figure is what it is worth.
func (f Face) limit(bulk, at Solution) quantity.Range {
	return f.limitOf(bulk, at, math.Abs(at.metal()-bulk.metal()))
}

// limitOf is limit where of the salt's metal so much, kg/m3, is what differs.
func (f Face) limitOf(bulk, at Solution, metal float64) quantity.Range {
	salt, by := bulk.Salt, bulk.Salt.transport
	viscosity := by.viscosity.at(bulk.Anhydrous, bulk.Temperature)
	if !viscosity.Known() {
		return quantity.Range{}
	}
	diffusion := by.diffusionAt(bulk.Temperature)
	layer, ok := f.layer(math.Abs(at.Density()-bulk.Density()) / viscosity.SI / diffusion)
	if !ok {
		return quantity.Range{}
	}
	charge := metal / salt.equivalent() // z F dc, C/m3
	return limitAt(charge * diffusion / layer / (1 - by.transference))
}

// limitAt is a limit with its ends: it is an order of magnitude.
func limitAt(density float64) quantity.Range {
	return quantity.Range{Optional: quantity.Known(density), Low: quantity.Known(limitLow * density), High: quantity.Known(limitHigh * density)}
}

// layer is how thick, m, the layer beside the face is, by the mean over the
// face, of a difference in density over viscosity and diffusion (kg/m3 over Pa s m2/s):
//
//	Sc Gr = g L^3 difference
//	upright: delta = L / (0.67 (Sc Gr)^(1/4))
//	level:   delta = L / (0.64 (Sc Gr)^(1/4)) or L / (0.16 (Sc Gr)^(1/3)), the thinner
//	stirred: 0.1 mm at most
//
// Upright: Wilke, Eisenberg and Tobias, J. Electrochem. Soc. 100 (1953) 513,
// laminar, to about Sc Gr = 1e13, a face 20 cm high; turbulent above, where the
// layer is thinner (by a sixth at 4e13). Level: Wragg, Electrochim. Acta 13
// (1968) 2159, from Sc Gr = 3e4 up. Both from memory; a quotation of the first,
// seen, supports its constant. Without a difference the layer has no end.
func (f Face) layer(difference float64) (metres float64, ok bool) {
	if f.Settles() || !(f.Length >= leastLength && f.Length <= mostLength) {
		return 0, false
	}
	convection := standardGravity * f.Length * f.Length * f.Length * difference // Sc Gr
	quarter := math.Sqrt(math.Sqrt(convection))
	switch f.Position {
	case Hanging:
		metres = f.Length / (0.67 * quarter)
	case FaceDown:
		metres = f.Length / math.Max(0.64*quarter, 0.16*math.Cbrt(convection))
	case FaceUp:
		metres = stirredLayer
	}
	if f.Stirred {
		metres = math.Min(metres, stirredLayer)
	}
	return metres, true
}
