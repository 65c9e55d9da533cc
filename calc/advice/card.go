package advice

import (
	"cmp"
	"strings"

	"saltbite/calc/drawing"
	"saltbite/calc/field"
)

// card is the bench card. There is one as soon as there is something to say.
func (v *view) card() *drawing.Drawing {
	cautions, verdict := v.cautions(), v.verdict()
	c := drawing.Card{US: v.US, Barred: stopped(cautions), Title: v.cardTitle(), Sentence: v.sentence(cautions, verdict.words()), Likely: v.likelyWords(), Supply: v.cardSupply(verdict)}
	for _, caution := range cautions {
		c.Cautions = append(c.Cautions, drawing.Warning{Level: cardLevel(caution.Level), Text: caution.Card})
	}
	if c.Sentence == "" && !stopped(cautions) {
		return nil
	}
	c.Settings = v.settings()
	for _, row := range v.stepRows() {
		c.Stops = append(c.Stops, drawing.Stage{Depth: row.Depth.Text, Area: row.Area.Text, Time: row.Minutes.Text, Current: row.Amperes.Text})
	}
	c.Steps = [3]drawing.Step{
		{Word: "switched on", Clock: v.startWords(), Weight: v.typedSize(field.Before, field.AnswerWeightAtTarget).Text},
		{Word: "half-way", Clock: v.size(field.AnswerHalfAt).Text, Weight: v.size(field.AnswerWeightAtHalf).Text},
		{Word: "ready", Clock: v.size(field.AnswerReadyAt).Text, Weight: v.size(field.AnswerWeightAtTarget).Text},
	}
	c.Checks = v.checks()
	c.Waste = v.wasteWords()
	return c.Draw()
}

// cardLevel is how the card shows a level.
func cardLevel(l Level) drawing.Level {
	switch l {
	case Stop:
		return drawing.Stop
	case Warn:
		return drawing.Warn
	}
	return drawing.Note
}

// cardSupply is what the verdict on the supply begins with, for which there is
// room; nothing where the sentence says it already.
func (v *view) cardSupply(verdict *Verdict) string {
	if v.Fields.Pick(field.Ask) == "supply" {
		return ""
	}
	said, _, _ := strings.Cut(verdict.words(), "; ")
	said, _, _ = strings.Cut(said, ". ")
	return strings.TrimSuffix(said, ".")
}

func (v *view) cardTitle() string {
	if !v.Metal.Given() {
		return "Etching by current"
	}
	return field.Capital(v.metalInWords())
}

// likelyWords is the range of what was found and what it rests on, as the page
// says it: of a run under way, that of the time left.
func (v *view) likelyWords() string {
	var name field.AnswerName
	by := "common practice"
	switch {
	case v.Course.DepthNow.Known():
		name = field.AnswerTimeLeft
	case v.Course.DepthSoFar.Known():
		name, by = field.AnswerReadyIn, "by the trend"
	case len(v.Bite.Found) > 0:
		name = v.Bite.Found[0].Answer()
		by = cmp.Or(v.restsOn(name), by)
	default:
		return ""
	}
	if span := v.span(name); span != "" {
		return "Likely " + span + ", " + by + "."
	}
	return ""
}

// startWords is when it is switched on, if that was typed.
func (v *view) startWords() string {
	if start := v.Fields.Amount(field.Start); start.Known() {
		return v.Say(field.AnswerReadyAt, start.SI)
	}
	return ""
}

// settings are what is set up by: each where it is known, and a place to write
// in for what everyone sets. A figure is an answer's, or a field's as typed.
var settings = [...]struct {
	word           string
	answer         field.AnswerName
	typed          field.Name // instead of the answer, if typed is one of those that are
	isTyped        bool
	always, unsaid bool // shown when blank; only where no sentence says it
}{
	{word: "current", answer: field.AnswerCurrent, always: true},
	{word: "current density", answer: field.AnswerDensity},
	{word: "volts needed", answer: field.AnswerCellVolts, always: true},
	{word: "time", answer: field.AnswerTime, unsaid: true},
	{word: "depth", answer: field.AnswerDepth, unsaid: true},
	{word: "sheet left", answer: field.AnswerLeft},
	{word: "exposed in all", answer: field.AnswerTotalArea},
	{word: "each piece loses", answer: field.AnswerRemovedEach},
	{word: "distance", answer: field.AnswerDepth, typed: field.Gap, isTyped: true, always: true},
	{word: "cathode", answer: field.AnswerCathodeNeeded, typed: field.Cathode, isTyped: true},
	{word: "its strength", answer: field.AnswerPerLitre},
	{word: "its volume", answer: field.AnswerVolume},
}

func (v *view) settings() (rows []drawing.Row) {
	for _, s := range settings {
		size := v.size(s.answer)
		if s.isTyped {
			size = v.typedSize(s.typed, s.answer)
		}
		if s.word == "its strength" && v.Salt.Known() {
			rows = append(rows, drawing.Row{Word: "bath", Figure: v.bathInWords()})
		}
		if s.always || size.Known() && !(s.unsaid && v.firstFound() != "") {
			rows = append(rows, drawing.Row{Word: s.word, Figure: size.Text})
		}
	}
	return rows
}

// checks are what to look at before switching on, in the order in which it is
// done, each in as few words as fit a line. Common practice, no source.
func (v *view) checks() []string {
	hanger := "Hanging wire: never stainless"
	if v.Fields.Pick(field.HangerMetal) == "aluminium" && !v.Salt.Common() {
		hanger = "Hanging wire of aluminium"
	}
	return []string{
		"Resist whole, edges covered",
		"Weighed dry, written down",
		hanger,
		"Clips and joints above the bath",
		"Work on + (red)",
		"Cathode on – (black)",
		"Distance set, nothing touches",
		"Low volts, isolated, fused",
		"Current limit set before it is on",
		"Ventilate; no flame near",
		"Goggles, gloves, eye wash",
		"No food, child or pet near",
	}
}

// wasteWords is what is done with what is left over.
func (v *view) wasteWords() []string {
	words := []string{
		"Rinse in a tray that tops up the bath; nothing goes down the drain. Keep copper, silver, nickel and lead " +
			"wastes apart. The supplier's data sheet and the waste authority's written word come first.",
	}
	if v.Salt.Known() && v.Salt.Metal == "Ag" {
		words = append(words, "Never let silver residues meet ammonia.")
	}
	return words
}
