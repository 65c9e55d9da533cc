package job

import (
	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Circuit is the bath between work and cathode, the supply and its cable.
type Circuit struct {
	Cell      circuit.Cell // what an estimated Resistance rests on
	Solved    bool         // Resistance is that of a picture, not estimated
	Allowance circuit.Allowance
	Cable     circuit.Wire

	CathodeDensity quantity.Optional // A/m2
	WireLimit      quantity.Optional // A
	WireDrop       quantity.Optional // V
	Resistance     quantity.Range    // ohm, of the bath
	CurrentAtVolts quantity.Optional // A, if the supply held nothing back
	CellVolts      quantity.Range    // V
	Warming        quantity.Optional // K/s
	Ballast        quantity.Optional // ohm
	BallastWatts   quantity.Optional // W
	SupplyWatts    quantity.Optional // W
	DepthThatFits  quantity.Optional // m
	TimeThatFits   quantity.Optional // s
	PiecesThatFit  quantity.Optional
}

func workCircuit(fields *field.Set, salt Salt, barred Barred, law Law, face Face, b Bite, mix Mix, standing Standing) Circuit {
	c := Circuit{Cable: cable(fields), Allowance: allowance(salt)}
	volts := fields.Amount(field.Volts)
	if deadly(volts) {
		return c
	}
	if fields.Amount(field.Wire).Known() {
		c.WireLimit = c.Cable.Limit()
	}
	if barred.Any() {
		return c
	}
	if cathode := fields.Amount(field.Cathode); b.Current.Known() && cathode.Known() {
		c.CathodeDensity = circuit.CathodeDensity(b.Current.SI, cathode.SI)
	}
	if c.WireLimit.Known() && b.Current.Known() && c.Cable.Length > 0 {
		c.WireDrop = c.Cable.Drop(b.Current.SI)
	}
	if volts.Known() && b.Current.Known() {
		c.SupplyWatts = circuit.Supply{Volts: volts.SI}.Watts(b.Current.SI)
	}
	c = c.withResistance(fields, face, b, standing)
	if c.Resistance.Known() {
		c = c.withBath(fields, b, mix, standing)
	}
	return c.withWhatFits(fields, law, b)
}

// withResistance adds that of the bath: what a picture gave, else an estimate from
// the distance and the areas.
func (c Circuit) withResistance(fields *field.Set, face Face, b Bite, standing Standing) Circuit {
	solved := fields.Amount(field.Resistance)
	if c.Solved = solved.Typed(); c.Solved {
		c.Resistance = quantity.Alone(solved)
		return c
	}
	gap, cathode := fields.Amount(field.Gap), fields.Amount(field.Cathode)
	if quantity.Worst(standing.Conductivity, gap, cathode, b.Area, b.Count) == quantity.Given {
		c.Cell = cellOf(fields, face, b, standing.Conductivity.SI, gap.SI, cathode.SI)
		c.Resistance = resistanceOf(c.Cell)
	}
	return c
}

// deadly says whether a supply's volts block all of the circuit.
func deadly(volts quantity.Optional) bool { return volts.SI > circuit.TouchedDry }

// cable is the supply's; one without a length has no resistance.
func cable(fields *field.Set) circuit.Wire {
	w := circuit.Wire{Diameter: fields.Amount(field.Wire).SI, Length: fields.Amount(field.WireLength).SI, Resistivity: circuit.Copper}
	if fields.Pick(field.WireMetal) == "aluminium" {
		w.Resistivity = circuit.Aluminium
	}
	return w
}

// allowance is what the reactions at both faces take, V.
func allowance(salt Salt) circuit.Allowance {
	if salt.Common() {
		return circuit.CommonSalt
	}
	return circuit.LikeElectrodes
}

// cellOf is the bath between work and cathode.
func cellOf(fields *field.Set, face Face, b Bite, conductivity, gap, cathode float64) circuit.Cell {
	return circuit.Cell{Conductivity: conductivity, Gap: gap, Cathode: cathode, Open: b.Area.SI, Pieces: b.Count.SI, Section: tank(fields).Section(position(fields)),
		Face: circuit.Face{Width: face.Width.SI, Height: face.Height.SI, Diameter: face.Diameter.SI}}
}

// tank is what holds the bath; what is not given of it is 0.
func tank(fields *field.Set) circuit.Tank {
	return circuit.Tank{Length: fields.Amount(field.VesselLength).SI, Width: fields.Amount(field.VesselWidth).SI,
		Diameter: fields.Amount(field.VesselDiameter).SI, Fill: fields.Amount(field.Fill).SI}
}

// withBath adds what rests on the resistance of the bath.
func (c Circuit) withBath(fields *field.Set, b Bite, mix Mix, standing Standing) Circuit {
	resistance := c.Resistance
	if volts, amps := fields.Amount(field.Volts), fields.Amount(field.Amps); volts.Known() && amps.State != quantity.Bad {
		c.CurrentAtVolts = quantity.Positive(circuit.Supply{Volts: volts.SI}.Unlimited(resistance.SI, c.Cable.Resistance().SI, c.Allowance.Usual).SI)
	}
	if !b.Current.Known() {
		return c
	}
	c.CellVolts = circuit.VoltsNeeded(b.Current.SI, resistance.SI, resistance.High.SI, c.Allowance)
	if water := standing.water(mix); water.Known() {
		c.Warming = circuit.Warming(b.Current.SI, c.CellVolts.SI, water.SI)
	}
	return c.withBallast(fields, b)
}

// resistanceOf is the resistance of the bath in a cell, ohm.
func resistanceOf(cell circuit.Cell) quantity.Range {
	usual := cell.Resistance()
	return quantity.Range{Optional: usual, High: unlessSame(cell.HighResistance(), usual)}
}

// withBallast adds what must take the rest of the supply's volts. Above the
// volts that may be touched wet none is offered.
func (c Circuit) withBallast(fields *field.Set, b Bite) Circuit {
	volts := fields.Amount(field.Volts)
	if !volts.Known() || volts.SI > circuit.TouchedWet {
		return c
	}
	c.Ballast = circuit.Supply{Volts: volts.SI}.Ballast(b.Current.SI, c.CellVolts.SI, c.Cable.Drop(b.Current.SI).SI)
	c.BallastWatts = circuit.BallastWatts(b.Current.SI, c.Ballast.SI)
	return c
}

// withWhatFits adds what the supply's amperes and volts allow, whether or not
// more is wanted of it.
func (c Circuit) withWhatFits(fields *field.Set, law Law, b Bite) Circuit {
	amps := fields.Amount(field.Amps)
	if !law.Known || !amps.Known() || !b.Whole() || b.Shape == quantity.Bad || !b.Depth.Known() || !b.Time.Known() || b.Watched {
		return c
	}
	if fields.Amount(field.Volts).Known() && c.Resistance.Known() && !c.CurrentAtVolts.Known() {
		c.PiecesThatFit = quantity.Known(0) // the volts drive nothing
		return c
	}
	most := circuit.Supply{Amps: amps.SI}.Most(c.CurrentAtVolts).SI
	c.DepthThatFits = circuit.DepthThatFits(law.Law, b.Piece(), most, b.Time.SI)
	c.TimeThatFits = circuit.TimeThatFits(law.Law, b.Piece(), most, b.Depth.SI)
	var drives func(pieces float64) float64
	if c.CurrentAtVolts.Known() {
		drives = func(pieces float64) float64 { return c.unlimited(fields, b.Count.SI, pieces) }
	}
	c.PiecesThatFit = quantity.Known(circuit.PiecesWithin(most, b.Current.SI, b.Count.SI, drives))
	return c
}

// unlimited is the current, A, that the volts drive into a bath with so many
// pieces in it instead of those that there are. With a resistance from a picture each
// is taken to have its own part of the bath.
func (c Circuit) unlimited(fields *field.Set, count, pieces float64) float64 {
	resistance := c.Resistance.SI * count / pieces
	if !c.Solved {
		c.Cell.Pieces = pieces
		resistance = c.Cell.Resistance().SI
	}
	return circuit.Supply{Volts: fields.Amount(field.Volts).SI}.Unlimited(resistance, c.Cable.Resistance().SI, c.Allowance.Usual).SI
}
