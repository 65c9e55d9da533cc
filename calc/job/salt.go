package job

import (
	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Salt is the salt of the bath: the one typed, else the metal's own. It is nil
// while it is not known.
type Salt struct {
	*bath.Salt
	State quantity.State
}

// readSalt reads the salt's name. Left blank it is the metal's own: silver
// nitrate for what holds more silver than copper, else copper sulfate.
func readSalt(fields *field.Set, metal Metal) (Salt, []field.Error) {
	v := fields.Value(field.Salt)
	switch {
	case v.State == quantity.Given:
		salt, err := bath.FindSalt(v.Text)
		if err != nil {
			return Salt{State: quantity.Bad}, []field.Error{{Field: field.Salt.String(), Code: field.Unknown,
				Text: quantity.Quote(v.Text) + " " + err.Error() + ". " + field.Salt.Row().Wanted()}}
		}
		return Salt{salt, quantity.Given}, nil
	case !metal.Given():
		return Salt{State: v.State}, nil
	case metal.Share("Ag") > metal.Share("Cu"):
		return Salt{bath.SilverNitrate, quantity.Assumed}, nil
	}
	return Salt{bath.CopperSulfate, quantity.Assumed}, nil
}

// Known says whether the salt is known.
func (s Salt) Known() bool { return s.Salt != nil }

// Common says whether the bath is one of common salt, or of another chloride.
func (s Salt) Common() bool { return s.Known() && s.Salt.Metal == "" }

// Holds says whether the bath holds ions of that metal.
func (s Salt) Holds(symbol string) bool { return s.Known() && s.Salt.Metal == symbol }

// Barred says what stands against etching this metal in this bath.
type Barred struct {
	Beryllium bool // whatever the bath
	WrongBath bool // the metal must not be etched in this salt
}

// findBarred takes a bath for the wrong one where, of silver and copper, the one
// with the larger share is not the salt's metal, or where any silver is put in
// common salt.
func findBarred(metal Metal, salt Salt) Barred {
	barred := Barred{Beryllium: metal.Share("Be") > 0}
	if !metal.Given() || !salt.Known() {
		return barred
	}
	silver, copper := metal.Share("Ag"), metal.Share("Cu")
	switch salt.Salt.Metal {
	case "Cu":
		barred.WrongBath = silver > copper
	case "Ag":
		barred.WrongBath = copper >= silver
	default:
		barred.WrongBath = silver > 0
	}
	return barred
}

// Any says whether anything stands against it.
func (b Barred) Any() bool { return b.Beryllium || b.WrongBath }

// mistakes say what keeps a row of many, planned or finished, from being used.
func (b Barred) mistakes(fields *field.Set, salt Salt) []field.Error {
	metal := quantity.Quote(fields.Text(field.Metal))
	switch {
	case b.Beryllium:
		return []field.Error{{Field: field.Metal.String(), Code: field.Contradiction,
			Text: metal + " holds beryllium, and must not be etched in any bath. Use another metal."}}
	case b.WrongBath:
		return []field.Error{{Field: field.Salt.String(), Code: field.Contradiction,
			Text: metal + " must not be etched in " + salt.Name + ". Correct the metal or the salt."}}
	}
	return nil
}
