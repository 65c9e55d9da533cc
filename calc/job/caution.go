package job

import (
	"strings"

	"saltbite/calc/field"
	"saltbite/calc/metal"
	"saltbite/calc/quantity"
)

// A caution's words: what is the matter, with the published hazard statements
// (GHS, as harmonised in CLP Annex VI or printed in the ILO's safety cards),
// then what to do. The card's form is at most 60 characters.

// local ends every caution about a salt or a waste.
const local = " Follow the supplier's data sheet. Keep silver, copper, nickel and lead wastes apart, never pour them away, " +
	"and get the local authority's word on them in writing."

// raise adds a caution. Set into each caller it would be 5 kB of the program.
//
//go:noinline
func (b *bench) raise(code string, level Level, at, text, card string) {
	b.reply.Cautions = append(b.reply.Cautions, Caution{Code: code, Level: level, Field: at, Text: text, Card: card})
}

// warn raises what the job calls for, the gravest first.
func (b *bench) warn() {
	b.warnOfBeryllium()
	b.warnOfWrongBath()
	b.warnOfMetal()
	b.warnOfHanger()
	b.warnOfCourse()
	b.warnOfSheet()
	b.warnOfDensity()
	b.warnOfLimits()
	b.warnOfSupply()
	b.warnOfMix()
	b.warnOfDrift()
	b.warnOfGas()
	b.warnOfSalt()
}

func (b *bench) warnOfBeryllium() {
	if b.hasBeryllium() {
		b.raise("beryllium", Stop, "metal",
			"Beryllium copper: do not etch, sand or file it. Beryllium's salts, dust and mist harm the lungs and may cause cancer. "+
				"No bite is worked out. Take another metal.",
			"Beryllium: do not etch, sand or file")
	}
}

func (b *bench) warnOfWrongBath() {
	if !b.wrongBath() {
		return
	}
	name, salt := b.metal.reading.Metal.Name, b.salt.salt.Name
	why, instead := "silver would plate out on it with no current, loose and black", "copper sulfate"
	switch {
	case b.inCommonSalt():
		why, instead = "silver chloride covers it and stops the bite", "silver nitrate"
	case b.salt.salt.Metal == "Cu":
		why, instead = "the silver fouls the bath and the copper plates out on it", "silver nitrate"
	}
	b.raise("wrong-bath", Stop, "salt",
		name+" does not belong in "+salt+": "+why+". No time, current or depth is worked out. Use "+instead+" for this metal.",
		"Wrong bath for this metal: use "+instead)
}

// Where a metal's nickel or lead begins to count, as a share of its mass.
const traces = 0.001

func (b *bench) warnOfMetal() {
	if b.metal.state != field.Given {
		return
	}
	if rivals := b.metal.reading.Rivals; len(rivals) > 0 {
		var names []string
		for _, r := range rivals {
			names = append(names, r.Metal.Name)
		}
		b.raise("metal-guess", Note, "metal",
			field.Quote(b.fields.Value("metal").Text)+" has more than one reading. "+b.metal.reading.Metal.Name+
				" is taken; it may also be "+strings.Join(names, ", or ")+". Type the grade, or choose from the list.",
			"Is it the metal that was meant? Check the grade")
	}
	if nickel := b.share("Ni"); nickel >= traces {
		b.raise("nickel", Warn, "metal",
			"It holds nickel ("+quantity.Print(nickel, quantity.Share, "%")+"), which goes into the bath. Nickel salts may cause an allergic skin reaction, "+
				"may cause cancer by inhalation and may damage the unborn child: gloves, no spray or dust, "+
				"not for under-18s or in pregnancy where local law says so. Keep its waste apart."+local,
			"Nickel in the bath: gloves, keep its waste apart")
	}
	if lead := b.share("Pb"); lead >= traces {
		b.raise("lead", Warn, "metal",
			"It holds lead ("+quantity.Print(lead, quantity.Share, "%")+"), which falls as sludge in copper sulfate and stays dissolved in a nitrate bath. "+
				"Lead compounds may damage the unborn child and may cause damage to organs through prolonged or repeated exposure: "+
				"gloves, no dust, not for under-18s or in pregnancy where local law says so. Keep its waste apart."+local,
			"Lead sludge: gloves, no dust, keep its waste apart")
	}
	if b.metal.reading.Metal.Family == metal.Clay && b.fields.Value("metalDensity").State == field.Blank {
		b.raise("porous", Note, "metalDensity",
			"Fired clay is porous and holds bath in its pores. A density of "+quantity.Print(b.metal.density.v, quantity.Density, "g/cm3")+
				" is assumed: weigh and measure the piece, and type its own density. Rinse it long.",
			"Porous: density assumed; rinse long")
	}
}

// Where a current density asks for care, A/m2; common practice, no source.
const (
	denseNote = 500  // 50 mA/cm2
	denseWarn = 1000 // 100 mA/cm2
)

func (b *bench) warnOfDensity() {
	density, ok := b.figures["density"]
	if !ok || density.si <= denseNote {
		return
	}
	level, at := Note, b.densityField()
	words := "is more than 50 mA/cm², where a still bath and a thin resist ask for care. Watch the first minutes, or take less current for longer."
	if density.si > denseWarn {
		level = Warn
		words = "is more than 100 mA/cm²: gas lifts the resist, and crystals can cover the metal. Take less current for longer, or etch fewer pieces' worth of it at once."
	}
	b.raise("dense", level, at, b.text("density")+" "+words, "Dense current: watch resist and gas")
}

func (b *bench) warnOfMix() {
	m := &b.mix
	if m.over {
		b.raise("salt-undissolved", Warn, "strength",
			"That is more "+b.salt.salt.Name+" than dissolves at this temperature: the rest lies on the bottom"+b.left()+
				". Take less salt, or more water.",
			"Not all the salt dissolves: less salt or more water")
	}
	if m.cold {
		b.raise("cold-crystals", Warn, "coldest",
			"Kept that cold, the bath drops crystals"+b.dropped()+". They dissolve again, slowly, when it is warm and stirred. Keep it warmer or weaker.",
			"Crystals drop when cold: keep it warmer or weaker")
	}
	if len(m.outside) > 0 {
		b.raise("outside-table", Note, "strength",
			"Beyond the tables: "+strings.Join(m.outside, "; ")+". Take it as a guide.",
			"Some figures lie beyond the tables")
	}
}

// warnOfSalt stands where the salt was named, in the words of its hazard statements.
func (b *bench) warnOfSalt() {
	if b.salt.state != field.Given {
		return
	}
	switch b.salt.salt.Metal {
	case "Cu":
		b.raise("copper-sulfate", Note, "salt",
			"Copper sulfate. Danger: harmful if swallowed; causes serious eye damage; very toxic to aquatic life with long lasting effects. "+
				"Goggles and gloves; away from food, children, pets and drains."+local,
			"Copper sulfate: goggles, gloves, never the drain")
	case "Ag":
		b.raise("silver-nitrate", Note, "salt",
			"Silver nitrate. Danger: may intensify fire, oxidiser; causes severe skin burns and eye damage; very toxic to aquatic life "+
				"with long lasting effects. It stains. Goggles and gloves; distilled water only. Never let it or its residues meet ammonia: "+
				"they can explode on standing. Rinse well before acetone or alcohol."+local,
			"Silver nitrate: goggles, gloves, never near ammonia")
	default:
		b.raise("common-salt", Note, "salt",
			"In common salt copper leaves as copper(I): the figures say so, and the lower depth is that of copper(II). "+
				"The sludge holds copper and is very toxic to aquatic life: never the drain."+local,
			"Common salt: goggles, keep the sludge from the drain")
	}
}

func (b *bench) left() string {
	if !b.has("undissolved") {
		return ""
	}
	return ", " + b.text("undissolved") + " of it; all of it would take " + b.text("waterToDissolve") + " of water"
}

func (b *bench) dropped() string {
	if !b.has("crystals") {
		return ""
	}
	return ", " + b.text("crystals") + " of them"
}
