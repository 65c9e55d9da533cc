package bath

import (
	"math"

	"saltbite/calc/quantity"
)

// Now is a bath as it stands after metal was etched in it and water has gone.
//
// What the cathode took of the bath's metal, and the work did not give back, is
// gone; zinc and nickel have taken its place, mole for mole. So two strengths
// tell what the bath does: Mixed, with the sulfate that it was mixed with, all
// of it, is what the liquid is like (density, viscosity, conductivity, how near
// to saturation); Strength, the salt of the metal that is left, is what the
// cathode can still plate. Exact for a pure metal; for a brass it holds as far as
// zinc sulfate and nickel sulfate are like copper sulfate: their solutions are
// as heavy and conduct as well within some per cent (common practice, no source).
type Now struct {
	Mixed       Solution // all that was mixed, in the volume that is left
	Volume      float64  // m3, what the level shows
	Metal       float64  // kg of the salt's metal that is left, undissolved included
	Strength    float64  // kg/m3 of the salt in the form named, of the metal that is left, dissolved
	Undissolved float64  // kg of the salt in the form named, the same
}

// Now is the solution, of which a volume (m3) was mixed, when so much of its
// metal (kg) was taken out of it, and the volume is now another (m3):
//
//	metal    = as mixed - taken, not below nothing
//	strength = metal's salt / volume now, at most saturated
//
// Conservation of the metal. What is over saturation lies undissolved. The metal
// taken is Run.Lost of what was etched; a bath that gained metal has a negative
// one. In common salt, which has no metal, nothing is taken.
func (s Solution) Now(volume, now, taken float64) (Now, error) {
	mixed, err := s.concentrated(volume, now)
	if err != nil {
		return Now{}, err
	}
	salt := s.Strength * volume
	if each := s.Salt.metal * s.Salt.anhydrous; each > 0 {
		salt = left(salt, taken/each)
	}
	full := s.Salt.saturated(s.Temperature).Strength
	return Now{
		Mixed:       mixed,
		Volume:      now,
		Metal:       salt * s.Salt.metal * s.Salt.anhydrous,
		Strength:    math.Min(salt/now, full),
		Undissolved: math.Max(0, salt-full*now),
	}, nil
}

// Saturation is the salt of the metal that is left, undissolved included, as a
// share of what dissolves in the volume.
func (n Now) Saturation() float64 {
	full := n.Mixed.Salt.saturated(n.Mixed.Temperature).Strength
	return (n.Strength + n.Undissolved/n.Volume) / full
}

// left is what stays of a whole when so much is taken, not below nothing, and
// nothing where only rounding is left.
func left(whole, taken float64) float64 {
	if rest := whole - taken; rest > balanced*whole {
		return rest
	}
	return 0
}

// Spent says whether the bath has no metal left, or has none left once a run
// takes so much more (kg): hydrogen comes at the cathode then. Never true of
// common salt, which has no metal from the start.
func (n Now) Spent(taken float64) bool {
	return n.Mixed.Salt.Metal != "" && left(n.Metal, taken) == 0
}

// FilmDensity is Solution.FilmDensity of all the sulfate that the bath holds.
func (n Now) FilmDensity(f Face) quantity.Range { return n.Mixed.FilmDensity(f) }

// CathodeLimit is Solution.CathodeLimit of the metal that is left, in a liquid
// that is as heavy and as thick as all the sulfate makes it. The layer at the
// cathode is lighter by the metal that is missing there, and by that only: what
// has taken its place stays. It is nothing in a bath that is spent, or that a
// run will spend which takes so much (kg). There is no value in common salt.
func (n Now) CathodeLimit(f Face, taken float64) quantity.Range {
	if n.Spent(taken) {
		return limitAt(0)
	}
	bulk := n.Mixed.Liquid()
	bare, err := bulk.Salt.saturated(bulk.Temperature).ofStrength(bulk.Strength - n.Strength)
	if err != nil { // nothing but the metal's own salt
		bare = bulk.spent()
	}
	return f.limitOf(bulk, bare, n.Strength*bulk.Salt.metal*bulk.Salt.anhydrous)
}

// SaltToRestore is how much of the salt (kg), of an assay, makes good a loss of
// the bath's metal (kg), but no more than a volume (m3) of the solution was mixed
// with: where the loss is larger, the bath's metal is gone and the rest of the
// charge made hydrogen.
//
//	the smaller of loss / (share of the metal in the salt as named) and strength x volume, over assay
//
// There is no value where nothing is lost.
func (s Solution) SaltToRestore(volume, loss, assay float64) quantity.Optional {
	if !weighable(volume, assay) {
		return quantity.Optional{}
	}
	add := s.Salt.SaltToAdd(loss, assay)
	return quantity.If(math.Min(add.SI, s.Strength*volume/assay), add)
}

// WaterVolume is the volume (m3) of a mass of water (kg) at a temperature (K),
// and WaterMass the mass of a volume; nothing outside 0 to 100 C. Density by
// Kell, J. Chem. Eng. Data 20 (1975) 97.
func WaterVolume(mass, kelvin float64) float64 {
	if !liquidWater(kelvin) {
		return 0
	}
	return mass / waterDensity(kelvin)
}

// WaterMass undoes WaterVolume.
func WaterMass(volume, kelvin float64) float64 {
	if !liquidWater(kelvin) {
		return 0
	}
	return volume * waterDensity(kelvin)
}

func liquidWater(kelvin float64) bool { return kelvin >= celsius0 && kelvin <= celsius0+100 }
