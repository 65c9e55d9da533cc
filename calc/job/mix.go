package job

import (
	"math"

	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Mix is a bath as it is mixed.
type Mix struct {
	Solution bath.Solution
	Ready    bool              // the solution is known
	Volume   quantity.Optional // m3, of finished bath
	Weighed  bool              // Weights are known
	Weights  bath.Mix
	Water    quantity.Optional // m3, at the bath's temperature

	Suggested        quantity.Optional // kg/m3, a strength to start from
	SuggestedWeights bath.Mix          // of the volume at that strength; nothing where that is not known

	Conductivity  quantity.Optional // S/m
	SaturatesAt   quantity.Optional // K
	CrystalsEach  quantity.Optional // kg/m3, that drop at the coldest
	TooMuch       bool              // more salt than dissolves
	OutsideTables []string          // what was read past the end of a table
}

func workMix(fields *field.Set, salt Salt, barred Barred) (Mix, []field.Error) {
	var m Mix
	var errors []field.Error
	m.Volume, errors = bathVolume(fields)
	asked := mixing(fields, m.Volume)
	if salt.State == quantity.Blank && asked {
		errors = append(errors, Missing(fields, field.Salt)...)
	}
	if fields.Blank(field.Strength) && fields.Blank(field.SaltInHand) && salt.Known() && !barred.Any() {
		m.Suggested = quantity.Known(salt.Usual)
	}
	temperature := fields.Amount(field.Temperature)
	if !salt.Known() || !temperature.Known() {
		return m, errors
	}
	if disagree := handsDisagree(fields, m.Volume); disagree != nil {
		return m, append(errors, disagree...)
	}
	if asked && m.Suggested.Known() && m.Volume.Known() {
		m.SuggestedWeights = usualWeights(fields, salt, m.Volume.SI)
	}
	m, more := m.ofStrength(fields, salt, temperature.SI, asked)
	if m.Ready {
		m = m.withSolution(fields).withWeights(fields)
	}
	return m, append(errors, more...)
}

// usualWeights are those of a volume (m3) of the strength that is suggested.
func usualWeights(fields *field.Set, salt Salt, volume float64) bath.Mix {
	made, err := usualSolution(fields, salt)
	if err != nil {
		return bath.Mix{}
	}
	return made.Mix(volume, fields.Amount(field.Assay).SI)
}

// usualSolution is the bath of the strength that is suggested.
func usualSolution(fields *field.Set, salt Salt) (bath.Solution, error) {
	return salt.Solution(quantity.Quantity{Value: salt.Usual, Kind: quantity.Density}, fields.Amount(field.Temperature).SI)
}

// mixing says whether anything of a new bath was asked; the volume of a blend
// is not.
func mixing(fields *field.Set, volume quantity.Optional) bool {
	if !fields.Blank(field.StrengthA) {
		return false
	}
	return !fields.Blank(field.Strength) || !fields.Blank(field.SaltInHand) || !fields.Blank(field.WaterInHand) || volume.Typed()
}

// bathVolume is the finished bath: as typed, or as it stands in the vessel.
func bathVolume(fields *field.Set) (quantity.Optional, []field.Error) {
	typed := fields.Amount(field.Volume)
	held, errors := vessel(fields)
	switch {
	case typed.State == quantity.Blank:
		return held, errors
	case typed.Known() && held.Known() && !Agree(typed.SI, held.SI):
		return quantity.Optional{State: quantity.Bad}, contradiction(fields, "the tank holds "+fields.Printer().Say(field.AnswerVolume, held.SI)+" to that height",
			field.Volume, field.VesselLength, field.VesselWidth, field.VesselDiameter, field.Fill)
	}
	return typed, errors
}

// vessel is what a vessel holds up to where it is filled, m3.
func vessel(fields *field.Set) (quantity.Optional, []field.Error) {
	length, width := fields.Amount(field.VesselLength), fields.Amount(field.VesselWidth)
	diameter, fill := fields.Amount(field.VesselDiameter), fields.Amount(field.Fill)
	if diameter.State == quantity.Blank {
		return quantity.If(length.SI*width.SI*fill.SI, length, width, fill), nil
	}
	if length.Typed() || width.Typed() {
		return quantity.Optional{State: quantity.Bad}, contradiction(fields, "a tank is either round, with a diameter, or has a length and a width",
			field.VesselLength, field.VesselWidth, field.VesselDiameter)
	}
	return quantity.If(math.Pi/4*diameter.SI*diameter.SI*fill.SI, diameter, fill), nil
}

// handsDisagree refuses what is in hand beside a volume that it can't both make.
func handsDisagree(fields *field.Set, volume quantity.Optional) []field.Error {
	salt, water, strength := !fields.Blank(field.SaltInHand), !fields.Blank(field.WaterInHand), !fields.Blank(field.Strength)
	if !volume.Typed() || !(salt && water) && !((salt || water) && strength) {
		return nil
	}
	return contradiction(fields, "the salt and the water that you have make their own volume", field.SaltInHand, field.WaterInHand, field.Volume,
		field.VesselLength, field.VesselWidth, field.VesselDiameter, field.Fill)
}

// ofStrength makes the solution: of the strength typed, of all that is in hand,
// or of the salt in hand in the volume.
func (m Mix) ofStrength(fields *field.Set, salt Salt, kelvin float64, asked bool) (Mix, []field.Error) {
	inHand, water, assay := fields.Amount(field.SaltInHand), waterInHand(fields, kelvin), fields.Amount(field.Assay)
	strength := fields.Value(field.Strength)
	switch {
	case strength.State == quantity.Given:
		made, errors := solutionOf(fields, salt, field.Strength, strength.Q, kelvin)
		if errors != nil {
			return m, errors
		}
		m.Solution, m.Ready = made, true
		if !m.Volume.Typed() {
			m.Volume = volumeFromHand(made, inHand, water, assay)
		}
	case strength.State == quantity.Bad:
	case inHand.Known() && water.Known() && assay.Known():
		made, volume, err := salt.FromHand(inHand.SI, water.SI, assay.SI, kelvin)
		if err != nil {
			return m, refusal(fields, field.SaltInHand, err)
		}
		m.Solution, m.Volume, m.Ready = made, quantity.Known(volume), true
	case inHand.Known() && m.Volume.Known() && assay.Known():
		strength := quantity.Quantity{Value: inHand.SI * assay.SI / m.Volume.SI, Kind: quantity.Density}
		made, errors := solutionOf(fields, salt, field.SaltInHand, strength, kelvin)
		m.Solution, m.Ready = made, errors == nil
		return m, errors
	case asked && quantity.Worst(inHand, water) != quantity.Bad:
		return m, Missing(fields, field.Strength)
	}
	return m, nil
}

// waterInHand is the water there is, kg: weighed, or by its volume at the bath's
// temperature.
func waterInHand(fields *field.Set, kelvin float64) quantity.Optional {
	water := fields.Amount(field.WaterInHand)
	if fields.Value(field.WaterInHand).Q.Kind == quantity.Volume {
		return quantity.If(bath.WaterMass(water.SI, kelvin), water)
	}
	return water
}

// solutionOf makes the solution of a strength, or says at a field why it can't be made.
func solutionOf(fields *field.Set, salt Salt, name field.Name, strength quantity.Quantity, kelvin float64) (bath.Solution, []field.Error) {
	made, err := salt.Solution(strength, kelvin)
	if err != nil {
		return made, refusal(fields, name, err)
	}
	return made, nil
}

// volumeFromHand is what the scarcer of salt and water in hand makes, m3.
func volumeFromHand(made bath.Solution, salt, water, assay quantity.Optional) (least quantity.Optional) {
	if state := quantity.Worst(salt, water, assay); state == quantity.Bad {
		return least
	}
	if salt.Known() {
		least = quantity.Known(made.VolumeOfSalt(salt.SI, assay.SI))
	}
	if water.Known() {
		of := quantity.Known(made.VolumeOfWater(water.SI))
		if !least.Known() || of.SI < least.SI {
			least = of
		}
	}
	return least
}

// withSolution adds what the liquid is, whatever its volume.
func (m Mix) withSolution(fields *field.Set) Mix {
	m.TooMuch = m.Solution.In(quantity.Saturation) > 1
	m.OutsideTables = m.Solution.Outside()
	if strength := fields.Value(field.Strength); strength.State == quantity.Given && strength.Q.Kind == quantity.Saturation {
		if clause, ok := m.Solution.SaturationOutside(); ok {
			m.OutsideTables = append(m.OutsideTables, clause)
		}
	}
	m.Conductivity = m.Solution.Liquid().Conductivity()
	m.SaturatesAt = m.Solution.SaturatesAt()
	if coldest := fields.Amount(field.Coldest); coldest.Known() {
		m.CrystalsEach = m.Solution.Crystals(coldest.SI)
	}
	return m
}

// withWeights adds what to weigh for the volume.
func (m Mix) withWeights(fields *field.Set) Mix {
	assay := fields.Amount(field.Assay)
	if m.Volume.Known() && assay.Known() {
		m.Weights, m.Weighed = m.Solution.Mix(m.Volume.SI, assay.SI), true
		m.Water = quantity.Known(bath.WaterVolume(m.Weights.WaterMass, m.Solution.Temperature))
	}
	return m
}

// MetalMass is the metal in the bath, kg.
func (m Mix) MetalMass(salt Salt) quantity.Optional {
	if !m.Weighed || salt.Salt.Metal == "" {
		return quantity.Optional{}
	}
	return quantity.Known(m.Weights.MetalMass)
}
