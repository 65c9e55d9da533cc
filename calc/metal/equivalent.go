package metal

import "saltbite/calc/quantity"

// Equivalent is how much of the metal a coulomb dissolves at 100 % current
// efficiency, in kg/C.
//
//	E = 1 / (F sum(w z / M))
//
// with w an element's share of the mass, z the charge of its ion, M its molar
// mass in kg/mol; an element with z = 0 comes away as dust with the rest. This is
// Faraday's law for an alloy whose elements leave in the proportion in which it
// holds them, as in electrochemical machining. It stops being true where
// one phase or element dissolves before another (two-phase brasses, at the
// start of any alloy), where the metal passivates, and in a chloride bath.
func (m *Metal) Equivalent() float64 { return m.equivalent("", 0) }

// EquivalentLow is Equivalent with the tin leaving as Sn(IV), which is what
// ends up as sludge: more charge for the same metal. ok is false for a metal
// without tin.
func (m *Metal) EquivalentLow() quantity.Optional {
	if m.Share("Sn") == 0 {
		return quantity.Optional{}
	}
	return quantity.Known(m.equivalent("Sn", 4))
}

// EquivalentChloride is Equivalent in a bath of common salt, where copper
// leaves as Cu(I), held in solution by the chloride: one charge instead of two.
// It holds below the copper's own limit; above it, and as the bath fills with
// copper, some leaves as Cu(II), which Equivalent counts: that is the low end.
func (m *Metal) EquivalentChloride() float64 { return m.equivalent("Cu", 1) }

// equivalent is Equivalent with another charge for the ion of one element.
func (m *Metal) equivalent(other string, charge int) float64 {
	var moles float64 // of charge in a kilogram
	for _, p := range m.Composition {
		e := element(p.Symbol)
		z := e.Charge
		if p.Symbol == other {
			z = charge
		}
		moles += ion{p.Share, z, e.MolarMass}.moles()
	}
	return 1 / (Faraday * moles)
}

// ion is the form in which a share of a metal's mass dissolves.
type ion struct {
	share  float64
	charge int
	mass   float64 // kg/mol
}

// moles is the charge that it takes, in moles of electrons for a kilogram of metal.
func (i ion) moles() float64 { return i.share * float64(i.charge) / i.mass }
