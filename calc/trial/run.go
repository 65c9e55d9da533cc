package trial

import (
	"saltbite/calc/bite"
	"saltbite/calc/quantity"
)

// Run is what a finished run teaches: how much of its charge dissolved metal,
// and how finely that could be seen.
type Run struct {
	Efficiency float64   // share of the charge that dissolved metal; negative: it got heavier
	Expected   float64   // kg, what one piece loses on the scale at 100 %
	Resolution float64   // kg, the smallest loss that can be told from none
	Undercuts  []float64 // side bite / depth, as lines and spaces of it showed
	Skip       bool      // it is judged, and not used
	Predicted  float64   // m, the depth of its charge at 100 %
	Found      float64   // m, the depth that it has; 0 where it lost nothing
}

// gaugeResolution is what a measured depth counts as read to, m. Common
// practice, no source.
const gaugeResolution = 0.01e-3

// Run is what a weighing after a charge (C, of all pieces) teaches, on a
// balance that shows steps of that resolution (kg):
//
//	expected loss = density x V(depth of that charge at 100 %), over what is on the scale
//
// The efficiency is EfficiencyNow, which is the loss over the expected loss;
// where the bite runs under long edges, and a hanger takes charge too, the two
// differ a little, since the volumes then don't grow alike.
func (w Weighing) Run(charge, resolution float64) Run {
	run := Run{Expected: expectedLoss(w.Law, w.Work, w.hung(), charge), Resolution: quantity.Positive(resolution).SI}
	run.Predicted, run.Found = depthAtBest(w.Law, w.hung(), charge), quantity.Positive(w.DepthNow().SI).SI
	run.Efficiency = w.EfficiencyNow(charge).SI
	if loss := w.Loss(); loss.SI < 0 && run.Expected > 0 {
		run.Efficiency = loss.SI / run.Expected
	}
	return run
}

// Gauging is the depth of a finished run as measured.
type Gauging struct {
	Depth  float64   // m, a mean over the open area
	Law    bite.Law  // of the metal; its efficiency is not looked at
	Work   bite.Work // what hung; Extra is the bare metal of the piece
	Hanger float64   // m2 of each piece's hanger
}

// Run is what a measured depth after a charge (C, of all pieces) teaches. The
// depth counts as read to gaugeResolution, which is turned into mass.
//
//	efficiency = pieces x density x (V(d) + H d) / (charge x E)
func (g Gauging) Run(charge float64) Run {
	perfect := g.Law
	perfect.Efficiency = 1
	all := withHanger(g.Work, g.Hanger)
	step := g.Work.Volume(g.Depth+gaugeResolution).SI - g.Work.Volume(g.Depth).SI
	return Run{
		Efficiency: quantity.Positive(perfect.Charge(all, g.Depth).SI / charge).SI,
		Expected:   expectedLoss(g.Law, g.Work, all, charge),
		Resolution: quantity.Positive(g.Law.Density * step).SI,
		Predicted:  depthAtBest(g.Law, all, charge),
		Found:      quantity.Positive(g.Depth).SI,
	}
}

// depthAtBest is the depth, m, of a charge (C) if all of it dissolves metal.
func depthAtBest(law bite.Law, all bite.Work, charge float64) float64 {
	law.Efficiency = 1
	return DepthSoFar(law, all, charge).SI
}

// expectedLoss is what one piece loses on the scale, kg, if all of a charge (C)
// dissolves metal of all that hangs.
func expectedLoss(law bite.Law, scale, all bite.Work, charge float64) float64 {
	return quantity.Positive(law.Density * scale.Volume(depthAtBest(law, all, charge)).SI).SI
}

// UndercutOfLine is the undercut that a raised line shows, drawn and found that
// wide (m), at a depth (m):
//
//	u = (drawn - found) / (2 depth)
//
// It may be negative, by the error of measuring. Not known where the line is gone,
// which only says that u is larger.
func UndercutOfLine(drawn, found, depth float64) quantity.Optional {
	return sideBite(drawn-found, depth, quantity.Positive(drawn).SI > 0 && quantity.Positive(found).SI > 0)
}

// UndercutOfSpace is the undercut that an open width shows, drawn and found
// that wide (m), at a depth (m):
//
//	u = (found - drawn) / (2 depth)
func UndercutOfSpace(drawn, found, depth float64) quantity.Optional {
	return sideBite(found-drawn, depth, quantity.Positive(drawn).SI > 0 && quantity.Positive(found).SI > 0)
}

func sideBite(both, depth float64, measured bool) quantity.Optional {
	if !measured {
		return quantity.Optional{}
	}
	return quantity.If(both/2/depth, quantity.Positive(depth))
}
