package bath

import "saltbite/calc/quantity"

// Crystals is how much of what is dissolved drops out when the bath cools to a
// temperature, in kg of crystals per m3 of bath; 0 if none. With s the anhydrous
// salt and S the liquid, w the saturated mass fraction in the cold and h the
// share of anhydrous salt in the crystals (copper sulfate's are always the
// pentahydrate, and take water with them):
//
//	s - h x = w (S - x),  so  x = (s - w S) / (h - w)
//
// Conservation of salt and of water. True of a bath that has settled; a still
// one may hold more for days. There is no value outside the table of solubility.
func (s Solution) Crystals(kelvin float64) quantity.Optional {
	salt := s.Salt
	if !salt.solubility.holds(kelvin) {
		return quantity.Optional{}
	}
	cold := salt.solubility.at(kelvin)
	return quantity.Known(max(0, s.Density()*(s.Anhydrous-cold)/(salt.crystal-cold)))
}

// SaturatesAt is the temperature, K, at which all the salt and water of the
// bath are just saturated: below it crystals drop. There is no value outside the
// table of solubility, as for a bath that holds less than saturates at 0 C.
func (s Solution) SaturatesAt() quantity.Optional {
	return s.Salt.solubility.temperature(s.all())
}

// all is the mass fraction of anhydrous salt in the whole bath, what lies
// undissolved included.
func (s Solution) all() float64 {
	return s.Strength * s.Salt.anhydrous / (s.Strength + s.water())
}
