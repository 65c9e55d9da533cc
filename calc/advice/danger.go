package advice

import (
	"strings"

	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/metal"
	"saltbite/calc/quantity"
)

// What can hurt a person. The hazards are in the words of published statements
// (GHS, as harmonised in CLP Annex VI or printed in the ILO's safety cards).

// waste ends the caution about the salt, the one that always stands.
const waste = " Follow the supplier's data sheet. Keep silver, copper, nickel and lead wastes apart and out of the drain. " +
	"Ask your local waste authority, in writing."

// firstAid is for copper sulfate and silver nitrate (ILO ICSC 1416 and 1116).
const firstAid = " In the eyes: rinse at once with plenty of water for several minutes, then get medical help."

func (v *view) warnOfBeryllium(to *raised) {
	if v.Barred.Beryllium {
		to.raise("beryllium", Stop, field.Metal,
			"Beryllium copper: do not etch, sand or file it. Beryllium's salts, dust and mist harm the lungs and may cause cancer. "+
				"Use another metal.",
			"Beryllium: do not etch, sand or file")
	}
}

// warnOfVolts takes the limits of what may be touched wet and dry (IEC
// 60364-4-41, from memory).
func (v *view) warnOfVolts(to *raised) {
	volts := v.Fields.Amount(field.Volts)
	switch {
	case volts.SI > circuit.TouchedDry:
		to.raise("volts-high", Stop, field.Volts,
			v.supplyVolts()+" can kill: never connect it to a bath. Use an isolated low-voltage supply of 30 V at most.",
			v.supplyVolts()+" can kill: use an isolated supply to 30 V")
	case volts.SI > circuit.TouchedWet:
		to.raise("volts-high", Warn, field.Volts,
			"Turn the supply down to 30 V or less, or use another: more is dangerous with wet hands.",
			"Over 30 V: dangerous with wet hands")
	}
}

func (v *view) warnOfWrongBath(to *raised) {
	if !v.Barred.WrongBath {
		return
	}
	name, salt := v.Metal.Reading.Metal.Name, v.Salt.Name
	why, instead := "silver plates onto it with no current, loose and black", "copper sulfate"
	switch {
	case v.Salt.Common():
		why, instead = "silver chloride covers it and stops the etch", "silver nitrate"
	case v.Salt.Holds("Cu"):
		why, instead = "the silver fouls the bath, and copper plates onto the piece", "silver nitrate"
	}
	to.raise("wrong-bath", Stop, field.Salt,
		"Don't etch "+lower(name)+" in "+salt+": "+why+". Use "+instead+" for this metal.",
		"Wrong bath for this metal: use "+instead)
}

// forbidden says why a wire must never hang on the positive side; "" of one that may.
func forbidden(wire string) string {
	switch wire {
	case "stainless":
		return "stainless steel dissolves on the positive side, and leaves chromium(VI) and nickel in the bath"
	case "plated":
		return "plating dissolves on the positive side, and then what is under it"
	case "galvanised":
		return "zinc and steel dissolve on the positive side and foul the bath"
	}
	return ""
}

func (v *view) warnOfHanger(to *raised) {
	typed := v.Fields.Given(field.HangerMetal)
	hung, wire := v.Fields.Given(field.Hanger) || typed, v.Hidden.Wire
	why := forbidden(wire)
	if wire == "aluminium" && v.Salt.Common() {
		why = "aluminium dissolves in salt water, with gas"
	}
	switch {
	case hung && why != "":
		to.raise("stainless", Stop, field.HangerMetal,
			"Hang the work by a wire of its own metal, coated down to the piece, and keep clips above the surface: "+why+".",
			"Hang it by its own metal; clips above the surface")
	case hung && v.Salt.Holds("Ag") && wire != "silver":
		to.raise("hanger-plates", Warn, field.HangerMetal,
			"Hang the work by silver wire: silver plates out on "+wire+" in this bath, even with no current.",
			"Hang it by silver: other wire gets plated")
	}
	left, diameter := v.Effects.HangerLeft, v.Fields.Amount(field.Hanger)
	if !left.Known() || left.SI >= diameter.SI/2 {
		return
	}
	what := "the wire keeps only " + v.text(field.AnswerHangerLeft) + " of its " + v.Say(field.AnswerHangerLeft, diameter.SI)
	if left.SI <= 0 {
		what = "the wire is eaten through before the end"
	}
	to.raise("hanger", Warn, field.Hanger, "Use a thicker hanging wire, or coat it down to the piece: "+what+", and the piece drops.",
		"Wire nearly eaten: thicker wire, or coat it")
}

// Where a metal's nickel or lead begins to count, as a share of its mass.
const traces = 0.001

func (v *view) warnOfMetals(to *raised) {
	percent := func(share float64) string { return quantity.Print(share, quantity.Share, "%") }
	if nickel := v.Metal.Share("Ni"); nickel >= traces {
		to.raise("nickel", Warn, field.Metal,
			"Wear gloves, make no spray or dust: the "+percent(nickel)+" nickel in it goes into the bath. Nickel salts may cause an allergic skin reaction, "+
				"may cause cancer by inhalation and may damage the unborn child: not for under-18s or in pregnancy where local law says so.",
			"Nickel in the bath: gloves, no spray or dust")
	}
	if lead := v.Metal.Share("Pb"); lead >= traces {
		to.raise("lead", Warn, field.Metal,
			"Wear gloves, make no dust: the "+percent(lead)+" lead in it falls as sludge in copper sulfate and stays dissolved in a nitrate bath. "+
				"Lead compounds may damage the unborn child and may cause damage to organs through prolonged or repeated exposure: "+
				"not for under-18s or in pregnancy where local law says so.",
			"Lead sludge: gloves, no dust")
	}
}

// saltMatters says whether the salt is named, or an etch or a bath is asked about.
func (v *view) saltMatters() bool {
	if v.Salt.State == quantity.Given {
		return true
	}
	for _, name := range []field.Name{field.Depth, field.Time, field.Current, field.Density, field.Bites, field.Strength, field.Volume, field.Fill,
		field.SaltInHand, field.WaterInHand, field.Etched, field.VolumeNow, field.HaveStrength, field.StrengthA, field.Gravity, field.After, field.Readings} {
		if v.Fields.Given(name) {
			return v.Salt.Known()
		}
	}
	return false
}

func (v *view) warnOfSilverNitrate(to *raised) {
	if v.saltMatters() && v.Salt.Holds("Ag") {
		to.raise("silver-nitrate", Warn, field.Salt,
			"Silver nitrate: wear goggles and gloves. Danger: may intensify fire, oxidiser; causes severe skin burns and eye damage; very toxic to aquatic life "+
				"with long lasting effects. Never let it or its residues meet ammonia: they can explode on standing. Paper that held it is a fire risk: rinse it clear. "+
				"Rinse well before acetone or alcohol. It stains. Use distilled water only. Silver grows as crystals on the cathode and can bridge the gap: look now and then. "+
				"Residues go to a refiner."+firstAid+waste,
			"Silver nitrate: goggles, gloves, never near ammonia")
	}
}

func (v *view) warnOfSalt(to *raised) {
	switch {
	case !v.saltMatters() || v.Salt.Holds("Ag"):
	case v.Salt.Holds("Cu"):
		to.raise("copper-sulfate", Note, field.Salt,
			"Copper sulfate: wear goggles and gloves, and make no dust when you weigh it. Danger: harmful if swallowed; causes serious eye damage; "+
				"very toxic to aquatic life with long lasting effects. Keep it from food, children, pets and drains."+firstAid+waste,
			"Copper sulfate: goggles, gloves, never the drain")
	default:
		to.raise("common-salt", Note, field.Salt,
			"Salt water: wear goggles, keep below about 3 V (from memory, no source) and check early: copper may leave as copper(I) or copper(II), with half the depth. "+
				"The sludge holds copper and is very toxic to aquatic life."+waste,
			"Salt water: goggles, keep the sludge from the drain")
	}
}

func (v *view) warnOfGas(to *raised) {
	if !v.saltMatters() || !v.Salt.Common() {
		return
	}
	what := "hydrogen bubbles"
	if v.has(field.AnswerHydrogen) {
		what = v.text(field.AnswerHydrogen) + " of hydrogen bubbles"
	}
	to.raise("gas", Note, field.Salt,
		"Ventilate, no flame or spark near, no lid on the bath: "+what+" from the cathode, and chlorine comes at higher voltage.",
		"Hydrogen, and chlorine: ventilate, no flame")
}

// warnOfMetal says what to know of the metal itself.
func (v *view) warnOfMetal(to *raised) {
	if !v.Metal.Given() {
		return
	}
	if rivals := v.Metal.Reading.Rivals; len(rivals) > 0 {
		var names []string
		for _, r := range rivals {
			names = append(names, r.Metal.Name)
		}
		to.raise("metal-guess", Note, field.Metal,
			quantity.Quote(v.Fields.Text(field.Metal))+" can mean several alloys; "+v.Metal.Reading.Metal.Name+" is assumed. Choose another: "+
				strings.Join(names, ", or ")+".",
			"Is it the metal you have? Check the grade")
	}
	if v.Metal.Reading.Metal.Slimes() && v.Salt.Holds("Cu") {
		to.raise("slime", Warn, field.Metal,
			"Brush the piece under water now and then: the silver in it does not dissolve here and stays on it as black slime.",
			"Silver stays as black slime: brush it off")
	}
	v.warnOfPhases(to)
	if v.Metal.Reading.Metal.Family == metal.Clay && v.Fields.Blank(field.MetalDensity) {
		to.raise("porous", Note, field.MetalDensity,
			"Weigh and measure the piece, and type its own density: fired clay is porous and holds bath in its pores. "+
				quantity.Print(v.Metal.Density.SI, quantity.Density, "g/cm3")+" is assumed. Rinse it long.",
			"Porous: density assumed; rinse long")
	}
	if v.Metal.Share("Zn") > turnsPink && (v.Fields.Given(field.Paused) || v.Bite.Elapsed.Typed() || v.Bite.Watched) {
		to.raise("lift-out", Note, field.Paused,
			"Lift the piece out while the current is off: copper plates on brass left in the bath and turns it pink.",
			"Current off: lift it out, or it turns pink")
	}
}

// Shares of an alloy from which its phases dissolve unevenly, or a film stays on
// it, and from which copper plates on it. Common practice, no source.
const (
	muchZinc, muchTin, muchAluminium = 0.37, 0.09, 0.04
	turnsPink                        = 0.15
)

func (v *view) warnOfPhases(to *raised) {
	why := ""
	switch share := v.Metal.Share; {
	case share("Zn") > muchZinc:
		why = "its two phases dissolve unevenly"
	case share("Sn") > muchTin:
		why = "the tin-rich phase stays behind"
	case share("Al") > muchAluminium:
		why = "aluminium oxide films it over"
	case share("Ge") > 0:
		why = "germanium oxide films it over"
	default:
		return
	}
	to.raise("two-phase", Note, field.Metal, "Try a scrap first: "+why+", and the floor of the etch gets rough.", "May etch rough: try a scrap")
}

func (v *view) warnOfCathodeMetal(to *raised) {
	wired := v.Supply.Given || v.Fields.Given(field.Cathode) || v.Fields.Given(field.Gap)
	if !wired || !v.Salt.Known() || v.Salt.Common() || v.Barred.Any() {
		return
	}
	use := "copper or stainless steel"
	if v.Salt.Holds("Ag") {
		use = "stainless steel or silver"
	}
	to.raise("cathode-metal", Note, field.Cathode, "Use "+use+" for the cathode, never aluminium, iron or galvanised: those dissolve or get plated with no current.",
		"Cathode: "+use)
}
