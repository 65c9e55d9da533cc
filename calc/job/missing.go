package job

import (
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// findMissing reports what is blank where too little is given for an answer.
func findMissing(fields *field.Set, metal Metal, barred Barred, b Bite, loss Loss) []field.Error {
	if !b.Agrees || stepsAnswer(fields, b) || depthAlone(fields, b) || bathAlone(fields, b) {
		return nil
	}
	enough := enoughGiven(b)
	switch {
	case metal.State == quantity.Blank:
		if enough && !loss.Charge.Known() && !loss.Rate.Known() {
			return Missing(fields, field.Metal)
		}
		return nil
	case enough && (b.Work.Edge == 0 || b.Area.Typed()) || metal.State == quantity.Bad || barred.Any():
		return nil
	}
	return append(missingOfFour(fields, b), missingOfFace(fields, b)...)
}

// enoughGiven says whether what is given leads to an answer.
func enoughGiven(b Bite) bool {
	read := b.Read != nil
	speed := b.Density.Typed() || (b.Current.Typed() || read) && b.Area.Typed()
	return read && b.Depth.Typed() && b.Area.Typed() || b.Depth.Typed() && b.Time.Typed() || speed && (b.Depth.Typed() || b.Time.Typed())
}

// stepsAnswer says whether several bites are given with what they need.
func stepsAnswer(fields *field.Set, b Bite) bool {
	return !fields.Blank(field.Bites) && (b.Density.Typed() || b.Current.Typed())
}

// depthAlone says whether a depth is asked about for its sheet and lines only.
func depthAlone(fields *field.Set, b Bite) bool {
	a := b.Asked
	if a.Time.Typed() || a.Current.Typed() || a.Area.Typed() || a.Density.Typed() {
		return false
	}
	for _, name := range []field.Name{field.Sheet, field.Line, field.Space, field.Bites} {
		if !fields.Blank(name) {
			return a.Depth.Typed()
		}
	}
	return false
}

// bathAlone says whether only the bath is asked about: none of the four is given,
// and something of a bath is.
func bathAlone(fields *field.Set, b Bite) bool {
	a := b.Asked
	if a.Depth.Typed() || a.Time.Typed() || a.Current.Typed() || a.Area.Typed() || a.Density.Typed() {
		return false
	}
	return !fields.Blank(field.Etched) || !fields.Blank(field.VolumeNow) || !fields.Blank(field.Strength) &&
		(!fields.Blank(field.Volume) || !fields.Blank(field.Fill))
}

// missingOfFour reports each blank of the four that is not the one to find and that
// nothing else stands for: readings, a density, an area. Steps that are stopped out have
// depths and areas of their own, and their time is found.
func missingOfFour(fields *field.Set, b Bite) (errors []field.Error) {
	for _, name := range []field.Name{field.Depth, field.Time, field.Current, field.Area} {
		wanted := fields.Pick(field.Find) == name.String()
		stands := b.Read != nil && (name == field.Current || name == field.Time) ||
			name == field.Current && b.Density.Typed() || name == field.Area && b.Area.Typed() ||
			name != field.Current && !fields.Blank(field.Bites)
		ask := fields.Pick(field.Ask)
		if !wanted && !stands && (name == field.Area || ask != "supply" && ask != "bath") {
			errors = append(errors, Missing(fields, name)...)
		}
	}
	return errors
}

// missingOfFace reports what a half-typed face lacks.
func missingOfFace(fields *field.Set, b Bite) []field.Error {
	switch {
	case b.Area.Typed():
		return nil
	case !fields.Blank(field.Width) || !fields.Blank(field.Height):
		return Missing(fields, field.Width, field.Height, field.Open)
	case !fields.Blank(field.Diameter):
		return Missing(fields, field.Open)
	case !fields.Blank(field.Open):
		return Missing(fields, field.Width, field.Height)
	}
	return nil
}
