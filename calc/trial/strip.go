package trial

import (
	"math"

	"saltbite/calc/bite"
	"saltbite/calc/quantity"
)

// TestStrip is what a trial on scrap has to work with.
type TestStrip struct {
	Law          bite.Law // of the metal; its efficiency is not looked at
	Resolution   float64  // kg, of the balance
	Within       float64  // how closely the efficiency is to be known; 0.05 is 5 %
	Density      float64  // A/m2 over the bare metal
	Deepest      float64  // m, how deep the strip may be etched
	Longest      float64  // s, how long it may take; 0: no limit
	LeastCurrent float64  // A, the least that the supply holds or the ammeter shows well; 0: no limit
}

// TestRun is a trial on scrap.
type TestRun struct {
	Area    float64 // m2, bare metal under the surface, both sides
	Current float64 // A
	Time    float64 // s
	Depth   float64 // m, at 100 %
	Loss    float64 // kg, at 100 %
}

// Smallest is the smallest strip that tells the efficiency so closely, and its
// run. A weight lost is off by a balance's step r at most, so
//
//	loss = r / within
//	depth = the smaller of the deepest allowed and that of the longest time
//	area = loss / (density of the metal x depth)
//	time = loss / (current x E)
//
// A strip of bare metal, so that no edge is undercut. Where its current would
// be less than the least, the strip is larger and its run shorter. It speaks of
// the balance alone: the ammeter and what makes one run differ from the next
// come on top. Not ok where something is missing.
func (s TestStrip) Smallest() (run TestRun, ok bool) {
	perfect := s.Law
	perfect.Efficiency = 1
	depth := quantity.Positive(s.Deepest).SI
	if s.Longest > 0 {
		depth = math.Min(depth, perfect.DepthAt(s.Density, s.Longest).SI)
	}
	run.Loss = quantity.Positive(quantity.Positive(s.Resolution).SI / s.Within).SI
	area := quantity.Positive(run.Loss / s.Law.Density / depth).SI
	run.Current = quantity.Positive(math.Max(s.Density*area, s.LeastCurrent)).SI
	run.Area = quantity.Positive(run.Current / s.Density).SI
	run.Time = quantity.Positive(run.Loss / (run.Current * s.Law.Equivalent)).SI
	run.Depth = quantity.Positive(run.Loss / s.Law.Density / run.Area).SI
	if area == 0 || run.Area == 0 || run.Time == 0 || run.Depth == 0 {
		return TestRun{}, false
	}
	return run, true
}
