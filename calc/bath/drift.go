package bath

import (
	"math"

	"saltbite/calc/metal"
	"saltbite/calc/quantity"
)

// Run is a charge that has etched a metal in a bath of a salt, and so what
// happened to that metal and to the bath's own.
//
// Every element of the metal leaves in the proportion it stands in and, from
// there, has one end: the bath's own metal is given back to the bath; tin falls
// as SnO2, and lead as PbSO4 where the bath is a sulfate; what takes no charge
// comes away as dust, as does silver that is slime (metal.Metal's Slimes); all
// else stays dissolved. Common practice and chemistry
// of the textbook, no source. It stops being true where the cathode takes more
// than the bath's metal (copper out of a silver bath above the limiting
// current, silver out of any copper bath), and where what dissolved falls
// again: a bath of common salt holds little lead chloride, and as the cathode
// makes it alkaline, copper, zinc and nickel fall in it as oxides and
// hydroxides.
//
// A charge or an efficiency that can't be dissolves nothing.
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

// end is where an element goes that leaves the metal.
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

// removed is the metal dissolved, kg: efficiency Q E. In common salt copper
// leaves as Cu(I).
func (r Run) removed() float64 { return r.removedBy(r.charge()) }

// Deposit is the bath's metal that the cathode takes, kg, all the charge being
// spent on it:
//
//	Q M / (z F)
//
// There is no value in common salt, whose bath has no metal: hydrogen comes there.
func (r Run) Deposit() quantity.Optional {
	if r.Salt.Metal == "" {
		return quantity.Optional{}
	}
	return quantity.Known(r.charge() * r.Salt.equivalent())
}

// Lost is the bath's metal that the cathode takes more than the work gives
// back, kg, w being its share of the work's metal; negative where the bath gains:
//
//	Q M / (z F) - efficiency Q E w
//
// There is no value in common salt.
func (r Run) Lost() quantity.Optional {
	deposit := r.Deposit()
	lost := deposit.SI - r.removed()*r.Metal.Share(r.Salt.Metal)
	if math.Abs(lost) <= balanced*deposit.SI {
		lost = 0
	}
	return quantity.If(lost, deposit)
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
	return r.removed() * r.Metal.Share(symbol)
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
	return r.removed() * perKilogram
}

// Dissolves is how much of a metal a coulomb dissolves at 100 % in a bath of the
// salt, kg/C: its ions are those of metal.Metal's Equivalent, but for silver in a
// copper alloy in copper sulfate, which takes no charge, and copper in common
// salt, which leaves as Cu(I). Low is the least that it may be, where that is
// less: with tin leaving as Sn(IV), and in common salt with copper as Cu(II).
func (s *Salt) Dissolves(m *metal.Metal) quantity.Range {
	switch s.Metal {
	case "":
		usual, low := quantity.Known(m.EquivalentChloride()), quantity.Known(m.Equivalent())
		if low == usual {
			return quantity.Alone(usual)
		}
		return quantity.Range{Optional: usual, Low: low}
	case "Cu":
		return quantity.Range{Optional: quantity.Known(m.EquivalentSulfate()), Low: m.EquivalentSulfateLow()}
	}
	return quantity.Range{Optional: quantity.Known(m.Equivalent()), Low: m.EquivalentLow()}
}

// Hydrogen is the gas that the cathode gives off in common salt, m3, dry, at
// 20 C and 101.325 kPa, as an ideal gas, all the charge being spent on it:
//
//	V = Q R T / (2 F p), which is 0.449 L per A.h
//
// At most: what has dissolved plates there too. There is no value in a bath that
// holds a metal.
func (r Run) Hydrogen() quantity.Optional {
	if r.Salt.Metal != "" {
		return quantity.Optional{}
	}
	return quantity.Known(r.charge() * gasConstant * room / (2 * metal.Faraday * atmosphere))
}

// SaltToAdd is how much of the salt (kg), of an assay, brings back a loss of the
// bath's metal (kg). There is no value where nothing is lost.
//
//	loss / (share of the metal in the salt as named x assay)
func (s *Salt) SaltToAdd(loss, assay float64) quantity.Optional {
	if !(loss > 0 && loss < mostMass && assay > leastAssay && assay <= 1) {
		return quantity.Optional{}
	}
	return quantity.Known(loss / (s.metal * s.anhydrous) / assay)
}

var hydrogenSource = Source{"hydrogen", "an ideal gas, dry, at 20 C and 101.325 kPa, with the exact constants of the SI of 2019", "computed"}

// PiecesToTenth is how many pieces, run by run, bring a fresh bath to where a
// tenth of its metal is gone, one run of so many pieces having taken a share of
// it. There is no value where nothing is lost.
//
//	floor(0.1 pieces / share)
func PiecesToTenth(pieces, share float64) quantity.Optional {
	whole := math.Floor(0.1 * pieces / share)
	if !(share > 0 && whole >= 0) {
		return quantity.Optional{}
	}
	return quantity.Known(whole)
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
	removed := r.Efficiency * charge * r.Salt.Dissolves(r.Metal).SI
	if !(removed <= mostMass) { // as of a metal that takes no charge
		return 0
	}
	return removed
}

func (r Run) end(symbol string) end {
	switch {
	case symbol == r.Salt.Metal:
		return givenBack
	case symbol == "Ag" && r.Salt.Metal == "Cu" && r.Metal.Slimes():
		return dust
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
