package job

import (
	"math"

	"saltbite/calc/circuit"
	"saltbite/calc/field"
)

// supplyWorked is what the circuit was found to need.
type supplyWorked struct {
	estimate bool    // the face is the square of the open area
	needed   float64 // V with the high resistance; 0 where it is not known
}

// workSupply answers the circuit: bath, cell, wire, ballast, what fits.
func (b *bench) workSupply() {
	b.answerCathode()
	b.answerWire()
	b.answerCell()
	b.answerFits()
}

func (b *bench) answerCathode() {
	current, cathode := b.bite.current, b.amount("cathode")
	if current.known() && cathode.known() && !b.blocked() {
		b.put("cathodeDensity", circuit.CathodeDensity(current.v, cathode.v))
	}
}

func (b *bench) answerWire() {
	diameter, current := b.amount("wire"), b.bite.current
	if !diameter.known() {
		return
	}
	wire := b.wire()
	b.put("wireLimit", wire.Limit())
	if current.known() && !b.blocked() && wire.Length > 0 {
		b.put("wireDrop", wire.Drop(current.v))
	}
}

// wire is the supply's; one without a length has no resistance.
func (b *bench) wire() circuit.Wire {
	w := circuit.Wire{Diameter: b.amount("wire").v, Resistivity: circuit.Copper}
	if length := b.amount("wireLength"); length.known() {
		w.Length = length.v
	}
	if b.fields.Value("wireMetal").Pick == "aluminium" {
		w.Resistivity = circuit.Aluminium
	}
	return w
}

// allowance is what the reactions take.
func (b *bench) allowance() circuit.Allowance {
	if b.inCommonSalt() {
		return circuit.CommonSalt
	}
	return circuit.LikeElectrodes
}

func (b *bench) answerCell() {
	between, ok := b.between()
	if !ok {
		return
	}
	bath, high := between.Resistance(), between.HighResistance()
	b.putRange("bathResistance", answered{bath, none, unlessSame(high, bath)})
	current, allow := b.bite.current, b.allowance()
	b.answerSupply(bath, allow)
	if !current.known() {
		return
	}
	volts := circuit.CellVolts(current.v, bath, allow.Usual)
	b.putRange("cellVolts", answered{volts, circuit.CellVolts(current.v, bath, allow.Low), circuit.CellVolts(current.v, bath, allow.High)})
	b.supply.needed = circuit.CellVolts(current.v, high, allow.Usual) + b.wire().Drop(current.v)
	if water, ok := b.figures["waterMass"]; ok {
		b.put("warming", circuit.Warming(current.v, volts, water.si))
	}
	b.answerBallast(volts)
}

// between is the bath between work and cathode, if all of it is known.
func (b *bench) between() (circuit.Bath, bool) {
	gap, cathode, open, pieces := b.amount("gap"), b.amount("cathode"), b.bite.area, b.bite.pieces
	siemens, ok := b.figures["conductivity"]
	if !ok || b.blocked() || worst(gap, cathode, open, pieces) != field.Given {
		return circuit.Bath{}, false
	}
	face := circuit.Face{Width: b.amount("width").v, Height: b.amount("height").v, Diameter: b.amount("diameter").v}
	if face.Area() == 0 {
		face = circuit.SquareFace(open.v)
		b.supply.estimate = true
	}
	return circuit.Bath{Conductivity: siemens.si, Gap: gap.v, Face: face, Open: open.v, Pieces: pieces.v, Cathode: cathode.v}, true
}

func (b *bench) answerSupply(bath float64, allow circuit.Allowance) {
	volts, amps := b.amount("volts"), b.amount("amps")
	if !volts.known() || amps.state == field.Bad {
		return
	}
	supply := circuit.Supply{Volts: volts.v, Amps: amps.v}
	if current := supply.Current(bath, b.wire().Resistance(), allow.Usual); current > 0 {
		b.put("currentAtVolts", current)
	}
}

// answerBallast answers what the supply delivers and what must take the rest of
// its volts.
func (b *bench) answerBallast(cell float64) {
	volts, current := b.amount("volts"), b.bite.current
	if !volts.known() {
		return
	}
	supply := circuit.Supply{Volts: volts.v}
	if ballast := supply.Ballast(current.v, cell, b.wire().Drop(current.v)); ballast > 0 {
		b.put("ballast", ballast)
		b.put("ballastWatts", circuit.BallastWatts(current.v, ballast))
	}
}

// answerFits answers what the supply's amperes allow, whether or not more is
// wanted of it, and what it delivers.
func (b *bench) answerFits() {
	amps, volts, w := b.amount("amps"), b.amount("volts"), &b.bite
	if volts.known() && w.current.known() && !b.blocked() {
		b.put("supplyWatts", circuit.Supply{Volts: volts.v}.Watts(w.current.v))
	}
	law, ok := b.law()
	if !ok || !amps.known() || !w.whole() || w.shape == field.Bad || !w.depth.known() || !w.time.known() || b.monitored() {
		return
	}
	b.put("depthThatFits", circuit.DepthThatFits(law, b.piece(), amps.v, w.time.v))
	b.put("timeThatFits", circuit.TimeThatFits(law, b.piece(), amps.v, w.depth.v))
	b.put("piecesThatFit", circuit.PiecesThatFit(amps.v, w.current.v, w.pieces.v))
}

func (b *bench) warnOfSupply() {
	amps, volts, current := b.amount("amps"), b.amount("volts"), b.figures["current"]
	if !b.has("current") || b.blocked() {
		return
	}
	if amps.known() && current.si > amps.v*(1+1e-9) {
		b.raise("supply-weak", Warn, "amps",
			b.text("current")+" is more than the supply's "+b.say("current", amps.v)+"."+b.instead(),
			"The supply is too weak: see what fits")
	}
	if volts.known() && b.supply.needed > volts.v {
		b.raise("supply-volts", Warn, "volts",
			"The cell and its wire may need "+b.say("cellVolts", b.supply.needed)+", more than the supply's "+b.say("cellVolts", volts.v)+
				". Bring the cathode nearer, take a larger one, or less current.",
			"The supply may lack volts: cathode nearer")
	}
	if limit, ok := b.figures["wireLimit"]; ok && current.si > limit.si {
		b.raise("wire-thin", Warn, "wire",
			"The wire is for "+b.text("wireLimit")+" at 5 A/mm², and "+b.text("current")+" would warm it. Take a thicker one. "+
				"Isolated low-voltage supply only, fused; mains wiring is for licensed hands.",
			"Lead too thin for this current")
	}
	if b.supply.estimate {
		b.raise("face-estimate", Note, "width",
			"The piece's outline is not given, so the bath's resistance takes it as a square of its open area. Type its width and height for a better estimate.",
			"Resistance by the open area only")
	}
}

// instead says what the supply can do.
func (b *bench) instead() string {
	if !b.has("timeThatFits") {
		return ""
	}
	said := " Instead: " + b.text("timeThatFits") + " at " + b.say("current", b.amount("amps").v) + ", or " +
		b.text("depthThatFits") + " in the same time"
	if b.figures["piecesThatFit"].si > 0 {
		said += ", or " + b.text("piecesThatFit") + " at once"
	}
	return said + "."
}

// Common practice, no source: what a current density starts from where none is
// in mind, and does not go below, A/m2.
const (
	usualDensity = 300 // 30 mA/cm2
	leastDensity = 100 // 10 mA/cm2
)

// suggest answers a current density for someone who has none in mind, and what
// follows from it.
func (b *bench) suggest() {
	w := &b.bite
	if b.metal.state != field.Given || b.blocked() {
		return
	}
	density := float64(usualDensity)
	for _, limit := range []string{"filmDensity", "cathodeLimit"} {
		if f, ok := b.figures[limit]; ok {
			density = math.Min(density, f.si/2)
		}
	}
	bare := number{b.piece().Bare(), worst(w.area)}
	if amps := b.amount("amps"); amps.known() && bare.known() && w.shape != field.Bad {
		density = math.Min(density, amps.v/bare.v)
	}
	density = math.Max(density, leastDensity)
	b.put("suggestedDensity", density)
	law, ok := b.law()
	switch {
	case bare.known() && w.shape != field.Bad:
		b.put("suggestedCurrent", density*bare.v)
		if ok && w.depth.known() {
			b.put("suggestedTime", law.Time(b.piece(), w.depth.v, density*bare.v))
		}
	case ok && w.depth.known() && w.work.Edge == 0:
		b.put("suggestedTime", law.TimeAt(density, w.depth.v))
	}
}
