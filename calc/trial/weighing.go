package trial

import (
	"math"

	"saltbite/calc/bite"
	"saltbite/calc/quantity"
)

// Weighing is one of the pieces weighed before and during a run, resist on and
// hanger off both times.
type Weighing struct {
	Before float64   // kg
	After  float64   // kg
	Law    bite.Law  // of the metal; its efficiency is not looked at
	Work   bite.Work // what hangs; Extra is the bare metal that is on the scale
	Hanger float64   // m2 of each piece's hanger: it takes charge and is not on the scale
}

// Loss is what the piece lost, kg. Negative: it got heavier, so it was the
// cathode.
func (w Weighing) Loss() quantity.Optional {
	return quantity.If(w.Before-w.After, quantity.Positive(w.Before), quantity.Positive(w.After))
}

// DepthNow is the mean depth, m, at which the bite took what was lost:
//
//	V(d) = loss / density
//
// over the bare metal that is on the scale. No current, time or efficiency is
// needed. True where bite.Work's Volume is, and where nothing else changed the
// weight: resist that came off, a piece not dry. Zero where nothing was lost, or
// where the piece got heavier.
func (w Weighing) DepthNow() quantity.Optional {
	loss := w.Loss()
	return quantity.If(w.Work.Depth(loss.SI/w.Law.Density).SI, loss)
}

// EfficiencyNow is the share of a charge (C, of all pieces) that dissolved
// metal, 1 being all of it:
//
//	efficiency = pieces x density x (V(d) + H d) / (charge x E)
//
// with d the depth now and H the hanger, which was etched as deep as the rest.
// Without a hanger this is loss / (each piece's charge x E). It takes the
// pieces to be equal.
func (w Weighing) EfficiencyNow(charge float64) quantity.Optional {
	perfect := w.Law
	perfect.Efficiency = 1
	return quantity.Positive(perfect.Charge(w.hung(), w.DepthNow().SI).SI / charge)
}

// chargeLeft is what is still to flow, C, through all pieces to a depth (m), at
// the efficiency that was measured when so much charge (C) had flowed:
//
//	charge x (V(target) / V(now) - 1)
//
// over all bare metal. Zero where the depth is reached, and not known where
// nothing was lost yet.
func (w Weighing) chargeLeft(charge, depth float64) quantity.Optional {
	all := w.hung()
	now := all.Volume(w.DepthNow().SI)
	if !now.Known() {
		return now
	}
	return quantity.Known(math.Max(0, quantity.Positive(charge).SI*((all.Volume(depth).SI-now.SI)/now.SI)))
}

// TimeLeft is how long, s, a current (A, of all pieces) still takes to a depth
// (m), at the efficiency measured when so much charge (C) had flowed. Zero where
// the depth is reached, and not known where no current flows.
func (w Weighing) TimeLeft(charge, depth, current float64) quantity.Optional {
	left := w.chargeLeft(charge, depth)
	return quantity.If(left.SI/current, left, quantity.Positive(current))
}

// WeightAt is what the piece weighs, kg, when it is etched to a depth (m):
//
//	before - density x V(d)
//
// over the bare metal that is on the scale. None where it never weighed that much.
func (w Weighing) WeightAt(depth float64) quantity.Optional {
	gone := quantity.Positive(w.Law.Density * w.Work.Volume(depth).SI)
	if !gone.Known() {
		return gone
	}
	return quantity.Positive(w.Before - gone.SI)
}

// hung is what hangs in the bath, hangers and all.
func (w Weighing) hung() bite.Work { return withHanger(w.Work, w.Hanger) }

// withHanger is the work with each piece's hanger (m2) among its bare metal.
func withHanger(work bite.Work, hanger float64) bite.Work {
	work.Extra += quantity.Positive(hanger).SI
	return work
}
