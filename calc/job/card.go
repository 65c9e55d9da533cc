package job

import (
	"strings"

	"saltbite/calc/drawing"
	"saltbite/calc/field"
)

// card is the bench card. There is one as soon as there is something to say.
func (b *bench) card() (drawing.Drawing, bool) {
	c := drawing.Card{US: b.us, Barred: b.blocked(), Title: b.cardTitle(), Sentence: b.reply.Sentence, Likely: b.likelyWords()}
	for _, caution := range b.reply.Cautions {
		c.Cautions = append(c.Cautions, drawing.Warning{Level: cardLevels[caution.Level], Text: caution.Card})
	}
	if c.Sentence == "" && !b.stopped() {
		return drawing.Drawing{}, false
	}
	c.Settings = b.settings()
	c.Steps = [3]drawing.Step{
		{Word: "switched on", Clock: b.startWords(), Weight: b.typed("before", "weightAtTarget").Text},
		{Word: "half time", Clock: b.size("halfAt").Text, Weight: b.size("weightAtHalf").Text},
		{Word: "ready", Clock: b.size("readyAt").Text, Weight: b.size("weightAtTarget").Text},
	}
	c.Checks = b.checks()
	c.Waste = b.wasteWords()
	return c.Draw(), true
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

// likelyWords is the range of what was found, as the page says it.
func (b *bench) likelyWords() string {
	name := b.firstFound()
	if name == "" {
		return ""
	}
	f, ok := b.figures[name]
	if !ok {
		return ""
	}
	if span := b.span(field.AnswerByName(name), f); span != "" {
		return "Likely " + span + ", by common practice."
	}
	return ""
}

// startWords is when it is switched on, if that was typed.
func (b *bench) startWords() string {
	if start := b.amount("start"); start.known() {
		return clock(start.v)
	}
	return ""
}

// settings are what is set up by, each where it is known; what everyone sets
// has a place to be written in.
func (b *bench) settings() (rows []drawing.Row) {
	row := func(word string, texts ...string) {
		if text := strings.Join(texts, ""); text != "" {
			rows = append(rows, drawing.Row{Word: word, Figure: text})
		}
	}
	rows = append(rows, drawing.Row{Word: "current", Figure: b.size("current").Text})
	row("of the bare metal", b.size("density").Text)
	rows = append(rows, drawing.Row{Word: "across the cell", Figure: b.size("cellVolts").Text})
	if b.firstFound() == "" {
		row("time", b.size("time").Text)
		row("depth", b.size("depth").Text)
	}
	row("sheet left", b.size("left").Text)
	row("bare metal in all", b.size("totalArea").Text)
	row("each piece loses", b.size("removedEach").Text)
	rows = append(rows, drawing.Row{Word: "gap", Figure: b.typed("gap", "depth").Text})
	row("cathode", b.typed("cathode", "cathodeNeeded").Text)
	if b.salt.salt != nil {
		row("bath", b.bathInWords())
	}
	row("its strength", b.size("perLitre").Text)
	row("its volume", b.size("volume").Text)
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
