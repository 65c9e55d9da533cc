package job

import (
	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/metal"
	"saltbite/calc/quantity"
)

// Metal is what was understood by the field metal.
type Metal struct {
	State   quantity.State
	Reading metal.Reading
	Density quantity.Optional // the one typed, else that of the reading
}

func readMetal(fields *field.Set) (Metal, []field.Error) {
	v := fields.Value(field.Metal)
	if v.State != quantity.Given {
		return Metal{State: v.State}, nil
	}
	reading, err := metal.Understand(v.Text)
	if err != nil {
		return Metal{State: quantity.Bad}, []field.Error{{Field: field.Metal.String(), Code: field.Unknown, Why: notCovered(err), Text: err.Error() +
			". Type a copper, brass, bronze, nickel silver or silver, such as cartridge brass."}}
	}
	return Metal{State: quantity.Given, Reading: reading,
		Density: fields.Amount(field.MetalDensity).Or(quantity.Known(reading.Metal.Density))}, nil
}

// notCovered is a sentence for a material that is known and not covered.
func notCovered(err error) string {
	if unknown, ok := err.(*metal.Unknown); ok {
		return unknown.Sentence()
	}
	return ""
}

// Given says whether the metal was named and is known.
func (m Metal) Given() bool { return m.State == quantity.Given }

// Share returns the share of an element in the metal; 0 without a metal.
func (m Metal) Share(symbol string) float64 {
	if !m.Given() {
		return 0
	}
	return m.Reading.Metal.Share(symbol)
}

// Law is what ties depth to charge for this metal in this bath.
type Law struct {
	bite.Law
	Known bool           // there is a metal that can be etched in this bath
	Each  quantity.Range // the equivalent, kg/C; Low where an element may leave with more charge

	Efficiency Efficiency
	Slow, Fast bite.Law // the ends of the range that is likely
}

// Efficiency is the current efficiency with the range in which it is likely.
type Efficiency struct {
	quantity.Range
	OwnRuns bool // the range is that of this bench's own runs
}

// readEfficiency takes the range of this bench's own runs where it is given, else
// that of common practice, unless an efficiency was typed.
func readEfficiency(fields *field.Set) (Efficiency, []field.Error) {
	e := Efficiency{Range: quantity.Alone(fields.Amount(field.Efficiency))}
	low, high := fields.Amount(field.EfficiencyLow), fields.Amount(field.EfficiencyHigh)
	switch {
	case low.State == quantity.Bad || high.State == quantity.Bad:
		e.Low, e.High = e.Optional, e.Optional
	case low.Known() && high.Known():
		return e.ofRuns(fields, low, high)
	case e.State == quantity.Assumed:
		e.Low, e.High = quantity.Known(bite.LeastEfficiency), quantity.Known(bite.MostEfficiency)
	default:
		e.Low, e.High = e.Optional, e.Optional
	}
	if low.Known() != high.Known() {
		return e, Missing(fields, field.EfficiencyLow, field.EfficiencyHigh)
	}
	return e, nil
}

// ofRuns takes the range of this bench's runs, and their mean where no efficiency
// was typed.
func (e Efficiency) ofRuns(fields *field.Set, low, high quantity.Optional) (Efficiency, []field.Error) {
	if e.State == quantity.Assumed {
		e.Optional = quantity.Known((low.SI + high.SI) / 2)
	}
	if low.SI > high.SI || e.Known() && (e.SI < low.SI || e.SI > high.SI) {
		e.Optional = quantity.Optional{State: quantity.Bad}
		return e, contradiction(fields, "the efficiency lies between the least and the most of this bench's runs",
			field.EfficiencyLow, field.EfficiencyHigh, field.Efficiency)
	}
	e.Low, e.High, e.OwnRuns = low, high, true
	return e, nil
}

func findLaw(fields *field.Set, metal Metal, salt Salt, barred Barred) (Law, []field.Error) {
	efficiency, errors := readEfficiency(fields)
	law := Law{Efficiency: efficiency}
	if !metal.Given() {
		return law, errors
	}
	law.Each = equivalent(metal.Reading.Metal, salt)
	if salt.State == quantity.Bad || barred.Any() || !metal.Density.Known() || !efficiency.Known() {
		return law, errors
	}
	law.Known = true
	law.Law = bite.Law{Equivalent: law.Each.SI, Density: metal.Density.SI, Efficiency: efficiency.SI}
	low, least, most := law.Each.Low.SI, efficiency.Low.SI, efficiency.High.SI
	switch {
	case efficiency.OwnRuns:
		low = 0 // their runs include what the tin or the copper did
	case salt.Common():
		least, most = efficiency.SI, efficiency.SI
	}
	law.Slow, law.Fast = law.Likely(low, least, most)
	return law, errors
}

// equivalent is the metal's electrochemical equivalent in this bath, kg/C, with
// the lower one where an element may leave with more charge. Without a bath it is
// that of the metal alone.
func equivalent(m *metal.Metal, salt Salt) quantity.Range {
	if !salt.Known() {
		return quantity.Alone(quantity.Known(m.Equivalent()))
	}
	return salt.Dissolves(m)
}
