package bath

import (
	"math"

	"saltbite/calc/metal"
)

// Run is a charge that has etched a metal in a bath of a salt, and so what
// became of that metal and of the bath's own.
//
// Every element of the metal leaves in the proportion it stands in and, from
// there, has one end: the bath's own metal is given back to the bath; tin falls
// as SnO2, and lead as PbSO4 where the bath is a sulfate; what takes no charge
// comes away as dust; all else stays dissolved. Common practice and chemistry
// of the textbook, no source. It stops being true where the cathode takes more
// than the bath's metal (copper out of a silver bath above the limiting
// current, silver out of any copper bath), and where what dissolved falls
// again: a bath of common salt holds little lead chloride, and as the cathode
// makes it alkaline, copper, zinc and nickel fall in it as oxides and
// hydroxides.
//
// Of a charge or an efficiency that can't be, nothing comes.
type Run struct {
	Salt       *Salt
	Metal      *metal.Metal
	Charge     float64 // C, over all pieces
	Efficiency float64 // share of the charge that dissolves metal
}

// Where a run stops being one.
const (
	mostCharge      = 1e15 // C
	mostMass        = 1e12 // kg
	leastEfficiency = 1e-3
	mostEfficiency  = 1e3
)

// end is what becomes of an element that leaves the metal.
type end uint8

const (
	givenBack end = iota // it is the bath's own metal
	dissolved
	oxide   // SnO2, sludge
	sulfate // PbSO4, sludge
	dust
)

// After is the run with all that was etched before of the same metal (kg), at
// the same efficiency, counted in: its charge is etched / (efficiency E).
func (r Run) After(etched float64) Run {
	if etched > 0 {
		r.Charge = r.charge() + etched/r.removedBy(1)
	}
	return r
}

// Removed is the metal dissolved, kg: efficiency Q E. In common salt copper
// leaves as Cu(I).
func (r Run) Removed() float64 { return r.removedBy(r.charge()) }

// Deposit is the bath's metal that the cathode takes, kg, all the charge being
// spent on it:
//
//	Q M / (z F)
//
// There is none in common salt, whose bath has no metal: hydrogen comes there.
func (r Run) Deposit() (kilograms float64, ok bool) {
	if r.Salt.Metal == "" {
		return 0, false
	}
	return r.charge() * r.Salt.equivalent(), true
}

// Lost is the bath's metal that the cathode takes more than the work gives
// back, kg, w being its share of the work's metal; negative where the bath gains:
//
//	Q M / (z F) - efficiency Q E w
//
// There is none in common salt.
func (r Run) Lost() (kilograms float64, ok bool) {
	deposit, ok := r.Deposit()
	lost := deposit - r.Removed()*r.Metal.Share(r.Salt.Metal)
	if math.Abs(lost) <= balanced*deposit {
		lost = 0
	}
	return lost, ok
}

// balanced is the share of a whole below which a difference is a rounding, as
// the loss is with a pure metal in its own salt.
const balanced = 1e-12

// Gained is what the bath gains of an element that stays dissolved, kg; nothing
// of the bath's own metal, which Lost counts.
func (r Run) Gained(symbol string) float64 {
	if r.end(symbol) != dissolved {
		return 0
	}
	return r.Removed() * r.Metal.Share(symbol)
}

// Sludge is what falls in the bath, dry, kg: the tin as SnO2, and in sulfate the
// lead as PbSO4. The dust of what does not dissolve is left out.
func (r Run) Sludge() float64 {
	var perKilogram float64
	for _, p := range r.Metal.Composition {
		switch r.end(p.Symbol) {
		case oxide:
			perKilogram += p.Share * molarSnO2 / weight("Sn")
		case sulfate:
			perKilogram += p.Share * molarPbSO4 / weight("Pb")
		}
	}
	return r.Removed() * perKilogram
}

// Hydrogen is the gas that the cathode gives off in common salt, m3, dry, at
// 20 C and 101.325 kPa, as an ideal gas, all the charge being spent on it:
//
//	V = Q R T / (2 F p), which is 0.449 L per A.h
//
// At most: what has dissolved plates there too. There is none in a bath that
// holds a metal.
func (r Run) Hydrogen() (volume float64, ok bool) {
	if r.Salt.Metal != "" {
		return 0, false
	}
	return r.charge() * gasConstant * room / (2 * metal.Faraday * atmosphere), true
}

// SaltToAdd is how much of the salt (kg), of an assay, brings back a loss of the
// bath's metal (kg). There is none where nothing is lost.
//
//	loss / (share of the metal in the salt as named x assay)
func (s *Salt) SaltToAdd(loss, assay float64) (kilograms float64, ok bool) {
	if !(loss > 0 && loss < mostMass && assay > leastAssay && assay <= 1) {
		return 0, false
	}
	return loss / (s.metal * s.anhydrous) / assay, true
}

var hydrogenSource = Source{"hydrogen", "an ideal gas, dry, at 20 C and 101.325 kPa, with the exact constants of the SI of 2019", "computed"}

// PiecesToTenth is how many pieces, run by run, bring a fresh bath to where a
// tenth of its metal is gone, one run of so many pieces having taken a share of
// it. There is none where nothing is lost.
//
//	floor(0.1 pieces / share)
func PiecesToTenth(pieces, share float64) (whole float64, ok bool) {
	whole = math.Floor(0.1 * pieces / share)
	return whole, share > 0 && whole >= 0 && whole <= math.MaxFloat64
}

// charge is the run's, C, or nothing where it can't be.
func (r Run) charge() float64 {
	if r.Charge > 0 && r.Charge < mostCharge {
		return r.Charge
	}
	return 0
}

// removedBy is what a charge (C) dissolves, kg.
func (r Run) removedBy(charge float64) float64 {
	if !(r.Efficiency > leastEfficiency && r.Efficiency < mostEfficiency) {
		return 0
	}
	equivalent := r.Metal.Equivalent()
	if r.Salt.Metal == "" {
		equivalent = r.Metal.EquivalentChloride()
	}
	removed := r.Efficiency * charge * equivalent
	if !(removed <= mostMass) { // as of a metal that takes no charge
		return 0
	}
	return removed
}

func (r Run) end(symbol string) end {
	switch {
	case symbol == r.Salt.Metal:
		return givenBack
	case symbol == "Sn":
		return oxide
	case symbol == "Pb" && r.Salt.Metal == "Cu":
		return sulfate
	case charges(symbol) == 0:
		return dust
	}
	return dissolved
}

// equivalent is how much of the salt's metal, where it has one, a coulomb
// plates, kg/C: M / (z F).
func (s *Salt) equivalent() float64 {
	return weight(s.Metal) / (float64(charges(s.Metal)) * metal.Faraday)
}
