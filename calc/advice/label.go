package advice

import (
	"strings"

	"saltbite/calc/bath"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// label is what goes on the jar of bath. There is one as soon as a bath is
// spoken of: its salt named, its strength said, or something etched in it.
func (v *view) label() *drawing.Drawing {
	salt := v.Salt.Salt
	if salt == nil || v.Salt.State != quantity.Given && !v.Mix.Ready && v.Fields.Amount(field.Etched).State != quantity.Given {
		return nil
	}
	if salt == bath.CopperSulfateAnhydrous {
		salt = bath.CopperSulfate // dissolved, they are the same
	}
	signal, codes := salt.Hazards()
	l := drawing.Label{
		Title: field.Capital(v.bathInWords()) + " bath", Signal: signal,
		Holds: v.heldWords(), Mixed: v.mixedWords(), Etched: v.etchedWords(),
		Warnings: []string{"Not a food container.", "Supplier's sheet, local rules come first."},
	}
	if len(codes) > 0 {
		l.Hazards = append(l.Hazards, hazards("", codes))
	} else {
		l.Hazards = append(l.Hazards, "Gathers copper from the work: "+hazards("", []string{"H410"}))
	}
	if v.Metal.Share("Ni") >= traces {
		l.Hazards = append(l.Hazards, hazards("Nickel in it: ", []string{"H317", "H350i"}))
	}
	if v.Metal.Share("Pb") >= traces {
		l.Hazards = append(l.Hazards, hazards("Lead in it: ", []string{"H360Df"}))
	}
	return l.Draw()
}

// hazards says codes with their words.
func hazards(of string, codes []string) string {
	var said []string
	for _, code := range codes {
		said = append(said, code+" "+bath.Statement(code))
	}
	return of + strings.Join(said, "; ") + "."
}

// heldWords is the strength in the form in which it was said, and the volume.
func (v *view) heldWords() string {
	if !v.Mix.Ready {
		return ""
	}
	kind, unit := quantity.Density, "g/L"
	if v := v.Fields.Value(field.Strength); v.State == quantity.Given {
		kind, unit = v.Q.Kind, v.Q.Unit
	}
	form := "salt"
	switch v.Salt.Salt {
	case bath.CopperSulfate:
		form = "crystals"
	case bath.CopperSulfateAnhydrous:
		form = "anhydrous salt"
	}
	said := quantity.Print(v.Mix.Solution.In(kind), kind, unit) + " of " + form
	if v.has(field.AnswerVolume) {
		said = v.text(field.AnswerVolume) + " at " + said
	}
	return said
}

// mixedWords is when the bath was mixed, as it was typed.
func (v *view) mixedWords() string {
	if v := v.Fields.Value(field.Mixed); v.State == quantity.Given {
		return v.Text
	}
	return ""
}

// etchedWords is what was etched in the bath before this run.
func (v *view) etchedWords() string {
	if !v.Metal.Given() || v.Fields.Amount(field.Etched).State != quantity.Given {
		return ""
	}
	return v.typedSize(field.Etched, field.AnswerRemoved).Text + " of " + v.metalInWords()
}
