package advice

import (
	"math"
	"strconv"

	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// StripReply is a trial on scrap in words, and the job that it is; none where it
// can't be run.
type StripReply struct {
	Text   string
	Fields []Filled
}

// keptForStrip are the fields that say the same of the trial as of the job: its
// metal, its bath and its supply.
var keptForStrip = []field.Name{field.Metal, field.MetalDensity, field.Salt, field.Assay, field.Strength, field.Volume,
	field.VesselLength, field.VesselWidth, field.VesselDiameter, field.Fill, field.Temperature, field.Gap, field.Cathode, field.Position, field.Stir,
	field.Volts, field.Amps, field.Wire, field.WireLength, field.WireMetal, field.Resolution, field.Units}

// Strip says how a trial on scrap is run.
func Strip(s job.Strip) StripReply {
	p := s.Fields.Printer()
	if !s.Known {
		return StripReply{Text: noStripWords(s)}
	}
	area, current, time := p.Say(field.AnswerArea, s.Area), p.Say(field.AnswerCurrent, s.Current), p.Say(field.AnswerTime, s.Time)
	said := "Take scrap " + lower(s.Metal.Name) + " with " + area + " exposed in the bath, such as " +
		p.Say(field.AnswerDepth, math.Sqrt(s.Area/2)) + " square with both sides exposed. Run it at " + current + " for " + time +
		", and weigh it before and after. It loses about " + quantity.Print(s.Loss, quantity.Mass, "g") + ", which a balance that reads to " +
		strconv.FormatFloat(quantity.In(s.Resolution, "g"), 'g', 6, 64) + " g tells within " + strconv.Itoa(int(math.Round(100*job.StripWithin))) + " %."
	if s.Beyond {
		return StripReply{Text: said + " That is more current than this supply gives: with a finer balance the strip is smaller."}
	}
	r := StripReply{Text: said + " It is the smallest strip that does; an ammeter that is off comes on top."}
	for _, name := range keptForStrip {
		if text := s.Fields.Text(name); text != "" {
			r.Fields = append(r.Fields, Filled{name.String(), text})
		}
	}
	r.Fields = append(r.Fields, Filled{field.Area.String(), area}, Filled{field.Current.String(), current}, Filled{field.Time.String(), time})
	return r
}

// noStripWords say why there is no trial.
func noStripWords(s job.Strip) string {
	for _, e := range s.Errors {
		return e.Text
	}
	if s.Metal == nil {
		return "Type the metal on the page first: the smallest strip depends on it."
	}
	return "In this bath " + lower(s.Metal.Name) + " is not etched: choose another salt on the page."
}
