package trial

import "saltbite/calc/bite"

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
func (w Weighing) Loss() float64 {
	if bite.Held(w.Before) == 0 || bite.Held(w.After) == 0 {
		return 0
	}
	return w.Before - w.After
}

// DepthNow is the mean depth, m, at which the bite took what was lost:
//
//	V(d) = loss / density
//
// over the bare metal that is on the scale. No current, time or efficiency is
// needed. True where bite.Work's Volume is, and where nothing else changed the
// weight: resist that came off, a piece not dry.
func (w Weighing) DepthNow() float64 { return w.Work.Depth(w.Loss() / w.Law.Density) }

// EfficiencyNow is the share of a charge (C, of all pieces) that dissolved
// metal, 1 being all of it:
//
//	efficiency = pieces x density x (V(d) + H d) / (charge x E)
//
// with d the depth now and H the hanger, which was bitten as deep as the rest.
// Without a hanger this is loss / (each piece's charge x E). It takes the
// pieces to be equal.
func (w Weighing) EfficiencyNow(charge float64) float64 {
	perfect := w.Law
	perfect.Efficiency = 1
	return bite.Held(perfect.Charge(w.hung(), w.DepthNow()) / charge)
}

// ChargeLeft is what is still to flow, C, through all pieces to a depth (m), at
// the efficiency that was measured when so much charge (C) had flowed:
//
//	charge x (V(target) / V(now) - 1)
//
// over all bare metal. Zero, too, where the depth is reached.
func (w Weighing) ChargeLeft(charge, depth float64) float64 {
	all := w.hung()
	now := all.Volume(w.DepthNow())
	return bite.Held(bite.Held(charge) * ((all.Volume(depth) - now) / now))
}

// TimeLeft is how long, s, a current (A, of all pieces) still takes to a depth
// (m), at the efficiency measured when so much charge (C) had flowed. Zero,
// too, where the depth is reached.
func (w Weighing) TimeLeft(charge, depth, current float64) float64 {
	return bite.Held(w.ChargeLeft(charge, depth) / current)
}

// WeightAt is what the piece weighs, kg, when it is bitten to a depth (m):
//
//	before - density x V(d)
//
// over the bare metal that is on the scale. None where it never weighed that much.
func (w Weighing) WeightAt(depth float64) float64 {
	gone := bite.Held(w.Law.Density * w.Work.Volume(depth))
	if gone == 0 {
		return 0
	}
	return bite.Held(w.Before - gone)
}

// hung is what hangs in the bath, hangers and all.
func (w Weighing) hung() bite.Work {
	all := w.Work
	all.Extra += bite.Held(w.Hanger)
	return all
}
