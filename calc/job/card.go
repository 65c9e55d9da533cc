package job

import (
	"saltbite/calc/drawing"
	"saltbite/calc/field"
)

// card is the bench card. There is one as soon as there is something to say.
func (b *bench) card() *drawing.Drawing {
	c := drawing.Card{US: b.us, Barred: b.blocked(), Title: b.cardTitle(), Sentence: b.reply.Sentence, Likely: b.likelyWords()}
	for _, caution := range b.reply.Cautions {
		c.Cautions = append(c.Cautions, drawing.Warning{Level: cardLevels[caution.Level], Text: caution.Card})
	}
	if c.Sentence == "" && !b.stopped() {
		return nil
	}
	c.Settings = b.settings()
	c.Steps = [3]drawing.Step{
		{Word: "switched on", Clock: b.startWords(), Weight: b.typed("before", "weightAtTarget").Text},
		{Word: "half time", Clock: b.size("halfAt").Text, Weight: b.size("weightAtHalf").Text},
		{Word: "ready", Clock: b.size("readyAt").Text, Weight: b.size("weightAtTarget").Text},
	}
	c.Checks = b.checks()
	c.Waste = b.wasteWords()
	return c.Draw()
}

var cardLevels = map[Level]drawing.Level{Note: drawing.Note, Warn: drawing.Warn, Stop: drawing.Stop}

// stopped says whether a caution of the gravest kind stands.
func (b *bench) stopped() bool {
	for _, c := range b.reply.Cautions {
		if c.Level == Stop {
			return true
		}
	}
	return false
}

func (b *bench) cardTitle() string {
	if b.metal.state != field.Given {
		return "Etching by current"
	}
	return field.Capital(b.metalInWords())
}

// likelyWords is the range of what was found and what it rests on, as the page
// says it.
func (b *bench) likelyWords() string {
	name := b.firstFound()
	f, ok := b.figures[name]
	if !ok {
		return ""
	}
	span := b.span(field.AnswerByName(name), f)
	if span == "" {
		return ""
	}
	by := b.restsOn(name)
	if by == "" {
		by = "common practice"
	}
	return "Likely " + span + ", " + by + "."
}

// startWords is when it is switched on, if that was typed.
func (b *bench) startWords() string {
	if start := b.amount("start"); start.known() {
		return clock(start.v)
	}
	return ""
}

// settings are what is set up by: each where it is known, and a place to write
// in for what everyone sets. A figure is an answer's, or a field's as typed.
var settings = [...]struct {
	word, answer, typed string
	always, unsaid      bool // shown when blank; only where no sentence says it
}{
	{"current", "current", "", true, false},
	{"of the bare metal", "density", "", false, false},
	{"across the cell", "cellVolts", "", true, false},
	{"time", "time", "", false, true},
	{"depth", "depth", "", false, true},
	{"sheet left", "left", "", false, false},
	{"bare metal in all", "totalArea", "", false, false},
	{"each piece loses", "removedEach", "", false, false},
	{"gap", "depth", "gap", true, false},
	{"cathode", "cathodeNeeded", "cathode", false, false},
	{"its strength", "perLitre", "", false, false},
	{"its volume", "volume", "", false, false},
}

func (b *bench) settings() (rows []drawing.Row) {
	for _, s := range settings {
		size := b.size(s.answer)
		if s.typed != "" {
			size = b.typed(s.typed, s.answer)
		}
		if s.word == "its strength" && b.salt.salt != nil {
			rows = append(rows, drawing.Row{Word: "bath", Figure: b.bathInWords()})
		}
		if s.always || size.Known() && !(s.unsaid && b.firstFound() != "") {
			rows = append(rows, drawing.Row{Word: s.word, Figure: size.Text})
		}
	}
	return rows
}

// checks are what to look at before switching on, in the order in which it is
// done, each in as few words as fit a line. Common practice, no source.
func (b *bench) checks() []string {
	hanger := "Hanger: its metal, not stainless"
	if b.fields.Value("hangerMetal").Pick == "aluminium" && !b.inCommonSalt() {
		hanger = "Hanger of aluminium"
	}
	return []string{
		"Resist whole, edges covered",
		"Weighed dry, written down",
		hanger,
		"Clips and joints above the bath",
		"Work on + (red)",
		"Cathode on – (black)",
		"Gap set, nothing touches",
		"Low volts, isolated, fused",
		"Current limit set before it is on",
		"Room aired, no flame near",
		"Goggles, gloves, eye wash",
		"No food, child or pet near",
	}
}

// wasteWords is what is done with what is left over.
func (b *bench) wasteWords() []string {
	words := []string{
		"Rinse in a tray that tops up the bath; nothing goes down the drain. Keep copper, silver, nickel and lead " +
			"wastes apart. The supplier's data sheet and the local authority's written word come first.",
	}
	if b.salt.salt != nil && b.salt.salt.Metal == "Ag" {
		words = append(words, "Never let silver residues meet ammonia.")
	}
	return words
}
