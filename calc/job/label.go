package job

import (
	"strings"

	"saltbite/calc/bath"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// label is what goes on the jar of bath. There is one as soon as a bath is
// spoken of: its salt named, its strength said, or something etched in it.
func (b *bench) label() *drawing.Drawing {
	salt := b.salt.salt
	if salt == nil || b.salt.state != field.Given && !b.mix.ready && b.amount("etched").state != field.Given {
		return nil
	}
	if salt == bath.CopperSulfateAnhydrous {
		salt = bath.CopperSulfate // dissolved, they are the same
	}
	signal, codes := salt.Hazards()
	l := drawing.Label{
		Title: field.Capital(b.bathInWords()) + " bath", Signal: signal,
		Holds: b.heldWords(), Mixed: b.mixedWords(), Etched: b.etchedWords(),
		Warnings: []string{"Not a food container.", "Supplier's sheet, local rules come first."},
	}
	if len(codes) > 0 {
		l.Hazards = append(l.Hazards, hazards("", codes))
	} else {
		l.Hazards = append(l.Hazards, "Gathers copper from the work: "+hazards("", []string{"H410"}))
	}
	if b.share("Ni") >= traces {
		l.Hazards = append(l.Hazards, hazards("Nickel in it: ", []string{"H317", "H350i"}))
	}
	if b.share("Pb") >= traces {
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
func (b *bench) heldWords() string {
	if !b.mix.ready {
		return ""
	}
	kind, unit := quantity.Density, "g/L"
	if v := b.fields.Value("strength"); v.State == field.Given {
		kind, unit = v.Q.Kind, v.Q.Unit
	}
	form := "salt"
	switch b.salt.salt {
	case bath.CopperSulfate:
		form = "crystals"
	case bath.CopperSulfateAnhydrous:
		form = "anhydrous salt"
	}
	said := quantity.Print(b.mix.solution.In(kind), kind, unit) + " of " + form
	if b.has("volume") {
		said = b.text("volume") + " at " + said
	}
	return said
}

// mixedWords is when the bath was mixed, as it was typed.
func (b *bench) mixedWords() string {
	if v := b.fields.Value("mixed"); v.State == field.Given {
		return v.Text
	}
	return ""
}

// etchedWords is what was etched in the bath before this run.
func (b *bench) etchedWords() string {
	if b.metal.state != field.Given || b.amount("etched").state != field.Given {
		return ""
	}
	return b.typed("etched", "removed").Text + " of " + b.metalInWords()
}
