package job

import (
	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Supply is whether the supply can do the job. What is not given is assumed for
// it, and only for it.
type Supply struct {
	Given    bool // volts or amperes are, whether or not they can be read
	Verdict  circuit.Verdict
	Judged   bool              // the current that is wanted is known
	Unread   bool              // something that the verdict needs was typed and can't be used
	Current  quantity.Optional // A, wanted
	Volts    quantity.Optional // V, that the cell and the cable need
	Drives   quantity.Optional // A, that the volts drive if nothing holds them back
	Resistor circuit.Resistor  // that holds it back
	Resists  bool              // there is one
	Assumed  []field.Name      // what stands for a blank
}

// AssumedGap stands for a distance that is not given, m: the middle of 60 to 100
// mm. Common practice, no source.
const AssumedGap = 0.075

func judgeSupply(fields *field.Set, metal Metal, salt Salt, barred Barred, face Face, b Bite, mix Mix, standing Standing, suggestion Suggestion, c Circuit) Supply {
	volts, amps := fields.Amount(field.Volts), fields.Amount(field.Amps)
	s := Supply{Given: volts.Typed() || amps.Typed(), Current: b.Current}
	supply := circuit.Supply{Volts: volts.SI, Amps: amps.SI}
	switch {
	case !s.Given:
		return s
	case deadly(volts):
		s.Verdict, s.Judged = circuit.Forbidden, true
		return s
	case barred.Any():
		return s
	case volts.Bad() || amps.Bad():
		s.Unread = true
		return s
	}
	if s.Current.State == quantity.Blank && !b.Density.Bad() && suggestion.Current.Known() {
		s.Current = suggestion.Current
		s.Assumed = append(s.Assumed, field.Density)
	}
	if !s.Current.Known() {
		s.Unread = metal.State == quantity.Bad || b.Shape == quantity.Bad || b.Current.Bad() || b.Density.Bad() || b.Area.Bad()
		return s
	}
	if amps.Known() && amps.SI < s.Current.SI*(1-1e-9) {
		s.Verdict, s.Judged = circuit.TooWeak, true // whatever the bath resists
		return s
	}
	before := s.Assumed
	resistance := s.resistance(fields, salt, face, b, mix, standing, c)
	if !resistance.Known() {
		s.Assumed = before
	}
	if s.Unread = volts.Known() && !resistance.Known() && resistanceUnread(fields, salt, b, standing); s.Unread {
		return s
	}
	s.Judged = true
	if volts.Known() && resistance.Known() {
		s.Drives = supply.Unlimited(resistance.SI, c.Cable.Resistance().SI, c.Allowance.Usual)
		cell := circuit.CellVolts(s.Current.SI, resistance.SI, c.Allowance.Usual)
		s.Volts = quantity.If(cell.SI+c.Cable.Drop(s.Current.SI).SI, cell)
	}
	s.Verdict = supply.Judge(s.Current.SI, s.Drives)
	if s.Verdict == circuit.NeedsALimit {
		s.Resistor, s.Resists = supply.SeriesResistor(s.Current.SI, resistance.SI, c.Cable.Resistance().SI, c.Allowance.Usual)
		if resistance.High.SI > 2*resistance.SI {
			s.Resistor.Low = supply.Unlimited(resistance.High.SI, c.Cable.Resistance().SI+s.Resistor.Ohms, c.Allowance.Usual).SI
		}
	}
	return s
}

// resistanceUnread says whether something that the bath's resistance rests on was
// typed and can't be used.
func resistanceUnread(fields *field.Set, salt Salt, b Bite, standing Standing) bool {
	for _, name := range []field.Name{field.Resistance, field.Gap, field.Cathode, field.Strength, field.Temperature} {
		if fields.Amount(name).Bad() {
			return true
		}
	}
	return salt.State == quantity.Bad || b.Shape == quantity.Bad || b.Area.Bad() || standing.Conductivity.Bad()
}

// resistance is the bath's, with assumptions in the place of blanks.
func (s *Supply) resistance(fields *field.Set, salt Salt, face Face, b Bite, mix Mix, standing Standing, c Circuit) quantity.Range {
	if c.Resistance.Known() || c.Solved {
		return c.Resistance
	}
	if !fields.Amount(field.Volts).Known() || !b.bare().Known() || !salt.Known() {
		return quantity.Range{}
	}
	gap, cathode := fields.Amount(field.Gap), fields.Amount(field.Cathode)
	assume := func(x *quantity.Optional, name field.Name, stands float64) {
		if x.State == quantity.Blank {
			*x = quantity.Known(stands)
			s.Assumed = append(s.Assumed, name)
		}
	}
	assume(&gap, field.Gap, AssumedGap)
	assume(&cathode, field.Cathode, b.bare().SI)
	conductivity := standing.Conductivity
	if conductivity.State == quantity.Blank && !mix.Ready && !fields.Amount(field.Strength).Bad() {
		assume(&conductivity, field.Strength, UsualConductivity(fields, salt).SI)
	}
	if quantity.Worst(gap, cathode, conductivity, b.Area, b.Count) != quantity.Given {
		return quantity.Range{}
	}
	return resistanceOf(cellOf(fields, face, b, conductivity.SI, gap.SI, cathode.SI))
}

// UsualConductivity is that of the strength that is suggested, S/m.
func UsualConductivity(fields *field.Set, salt Salt) quantity.Optional {
	made, err := usualSolution(fields, salt)
	if err != nil {
		return quantity.Optional{}
	}
	return made.Liquid().Conductivity()
}
