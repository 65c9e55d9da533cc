package job

import (
	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Standing is the bath as it stands, after what was etched in it and after
// evaporation.
type Standing struct {
	Changed bool     // something was etched in it, or water has gone
	Unclear bool     // what was etched, or the volume now, can't be used
	Known   bool     // its strength and its volume are known
	Now     bath.Now // before this run

	Etched        bath.Run          // what was etched before; its Salt is nil if that is not known
	SaltForEtched quantity.Optional // kg, makes good what was etched before
	WaterToAdd    quantity.Optional // m3, brings it back to its volume
	Conductivity  quantity.Optional // S/m
	Crystals      quantity.Optional // kg, that drop at the coldest
	OutsideTables []string          // what was read past the end of a table
}

func findStanding(fields *field.Set, metal Metal, salt Salt, barred Barred, law Law, mix Mix) (Standing, []field.Error) {
	s := Standing{Conductivity: mix.Conductivity, Crystals: quantity.If(mix.CrystalsEach.SI*mix.Volume.SI, mix.CrystalsEach, mix.Volume), OutsideTables: mix.OutsideTables}
	etched, volume := fields.Amount(field.Etched), fields.Amount(field.VolumeNow)
	s.Changed = etched.Typed() || volume.Typed()
	etchable := metal.Given() && salt.Known() && !barred.Any() && law.Known
	if etched.State == quantity.Bad || volume.State == quantity.Bad || etched.SI > 0 && !etchable {
		s.Unclear, s.Conductivity = true, quantity.Optional{State: quantity.Bad}
	}
	if etched.SI > 0 && metal.State == quantity.Blank {
		return s, Missing(fields, field.Metal)
	}
	if volume.Known() && mix.Volume.Known() {
		if volume.SI > mix.Volume.SI*(1+1e-9) {
			s.Unclear, s.Conductivity = true, quantity.Optional{State: quantity.Bad}
			return s, contradiction(fields, "the bath was mixed to "+fields.Printer().Say(field.AnswerVolume, mix.Volume.SI)+", and water only goes",
				field.VolumeNow, field.Volume)
		}
		s.WaterToAdd = quantity.Known(mix.Volume.SI - volume.SI)
	}
	if etchable {
		s.Etched = bath.Run{Salt: salt.Salt, Metal: metal.Reading.Metal, Efficiency: law.Law.Efficiency}.After(etched.SI)
	}
	if !mix.Ready || !mix.Volume.Known() || s.Unclear {
		return s, nil
	}
	return s.withBath(fields, mix, volume.Or(mix.Volume).SI), nil
}

// withBath adds the strength and what rests on it.
func (s Standing) withBath(fields *field.Set, mix Mix, volume float64) Standing {
	taken := 0.0
	if s.Etched.Salt != nil {
		taken = s.Etched.Lost().SI
	}
	now, err := mix.Solution.Now(mix.Volume.SI, volume, taken)
	if err != nil {
		return s
	}
	s.Now, s.Known = now, true
	s.SaltForEtched = mix.Solution.SaltToRestore(mix.Volume.SI, taken, fields.Amount(field.Assay).SI)
	if s.Changed {
		as := Mix{Solution: now.Mixed}.withSolution(fields)
		s.Conductivity, s.OutsideTables = as.Conductivity, as.OutsideTables
		s.Crystals = quantity.If(as.CrystalsEach.SI*volume, as.CrystalsEach)
	}
	return s
}

// water is the water in the bath as it is now, kg.
func (s Standing) water(mix Mix) quantity.Optional {
	switch {
	case s.Unclear || !mix.Weighed:
		return quantity.Optional{}
	case s.Known && s.Changed:
		return quantity.Known(s.Now.Mixed.Mix(s.Now.Volume, 1).WaterMass)
	}
	return quantity.Known(mix.Weights.WaterMass)
}

// Saturation is the share of what dissolves of the bath's salt that is in it now,
// what lies on the bottom included.
func (s Standing) Saturation(mix Mix) quantity.Optional {
	switch {
	case s.Unclear || !mix.Ready:
		return quantity.Optional{}
	case s.Known && s.Changed:
		return quantity.Known(s.Now.Saturation())
	}
	return quantity.Known(mix.Solution.In(quantity.Saturation))
}
