package bath

import "saltbite/calc/quantity"

// Mix is what makes a volume of a solution, by weight.
type Mix struct {
	SaltMass        float64 // kg of salt to weigh, impurities included
	WaterMass       float64 // kg of water to weigh
	SolutionMass    float64 // kg of the liquid, impurities left out
	Undissolved     float64 // kg of pure salt, in the form named, that stays solid
	WaterToDissolve float64 // m3 of water, at 20 C, that just dissolves all the salt: all of it, not what is to be added
	MetalMass       float64 // kg of the salt's metal in the liquid
}

// Where a mix stops being one.
const (
	mostVolume = 1e6  // m3
	leastAssay = 1e-6 // share of pure salt
)

// Mix weighs out a volume (m3) of the solution with salt of an assay (the share
// of pure salt in what is weighed). Of a volume or an assay that can't be, it
// weighs out nothing.
//
//	salt weighed      = strength x volume / assay
//	solution          = density x volume
//	water             = solution - salt dissolved
//	undissolved       = (strength - saturated strength) x volume, or nothing
//	water to dissolve = m h/w - m, with m the pure salt, w the saturated mass
//	                    fraction of anhydrous salt and h its share in the salt
//
// Definitions and conservation of mass; true where Solution.Density is.
func (s Solution) Mix(volume, assay float64) Mix {
	if !weighable(volume, assay) {
		return Mix{}
	}
	salt := s.Strength * volume
	full := s.Salt.solubility.at(s.Temperature)
	return Mix{
		SaltMass:        salt / assay,
		WaterMass:       s.water() * volume,
		SolutionMass:    s.Density() * volume,
		Undissolved:     s.undissolved() * volume,
		WaterToDissolve: salt * (s.Salt.anhydrous/full - 1) / waterDensity(room),
		MetalMass:       s.metal() * volume,
	}
}

// weighable says whether there is such a volume and such an assay.
func weighable(volume, assay float64) bool {
	return volume > 0 && volume < mostVolume && assay > leastAssay && assay <= 1
}

// FromHand is the solution, and its volume (m3), that all the salt and all the
// water there is make (kg each), with salt of an assay.
func (s *Salt) FromHand(salt, water, assay, kelvin float64) (made Solution, volume float64, err error) {
	pure := salt * assay
	made, err = s.Solution(quantity.Quantity{Value: pure / water * waterDensity(room), Kind: quantity.PerWater}, kelvin)
	if err != nil {
		return Solution{}, 0, err
	}
	return made, made.VolumeOfWater(water), nil
}

// VolumeOfSalt is how much of the solution (m3) a mass of salt (kg) of an assay
// makes, with water enough.
func (s Solution) VolumeOfSalt(salt, assay float64) float64 { return salt * assay / s.Strength }

// VolumeOfWater is how much of the solution (m3) a mass of water (kg) makes,
// with salt enough. Of salt and water the one that makes less is the scarcer.
func (s Solution) VolumeOfWater(water float64) float64 { return water / s.water() }
