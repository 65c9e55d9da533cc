package job

import (
	"saltbite/calc/bath"
	"saltbite/calc/field"
)

// saltUsed is the salt of the bath: the one typed, else the metal's own.
type saltUsed struct {
	state field.State
	salt  *bath.Salt
}

// understandSalt reads the salt's name. Left blank it is the metal's own:
// silver nitrate for what holds more silver than copper, else copper sulfate.
func (b *bench) understandSalt() {
	v := b.fields.Value("salt")
	b.salt.state = v.State
	switch {
	case v.State == field.Given:
		salt, err := bath.FindSalt(v.Text)
		if err != nil {
			b.salt.state = field.Bad
			f, _ := field.ByName("salt")
			b.fields.Fail(field.Error{Field: "salt", Code: field.Unknown,
				Text: field.Quote(v.Text) + " " + err.Error() + ". " + f.Wanted()})
			return
		}
		b.salt.salt = salt
	case b.metal.state == field.Given:
		b.salt.state = field.Assumed
		b.salt.salt = bath.CopperSulfate
		if b.share("Ag") > b.share("Cu") {
			b.salt.salt = bath.SilverNitrate
		}
	}
}

func (b *bench) inCommonSalt() bool { return b.salt.salt == bath.CommonSalt }

// wrongBath says whether this metal must not be etched in this salt: of silver
// and copper, the one with the larger share is not the salt's metal, or any
// silver is put in common salt.
func (b *bench) wrongBath() bool {
	if b.metal.state != field.Given || b.salt.salt == nil {
		return false
	}
	silver, copper := b.share("Ag"), b.share("Cu")
	switch b.salt.salt.Metal {
	case "Cu":
		return silver > copper
	case "Ag":
		return copper >= silver
	}
	return silver > 0
}

func (b *bench) hasBeryllium() bool { return b.share("Be") > 0 }

// blocked says whether a caution of the level stop stands against any bite.
func (b *bench) blocked() bool { return b.hasBeryllium() || b.wrongBath() }
