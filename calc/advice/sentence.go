package advice

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"saltbite/calc/bath"
	"saltbite/calc/bite"
	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// sentence is the answer in one line. A stop's own words stand in its place, and
// so does a contradiction; else it begins with what was asked. It is empty until
// something is answered.
func (v *view) sentence(cautions []Caution, verdict string) string {
	if stop := gravest(cautions); stop != nil && stop.Level == Stop {
		return stop.Text
	}
	for _, e := range v.Errors {
		if e.Code == field.Contradiction {
			return e.Why
		}
	}
	first, rest := v.workSentence(), v.bathSentence()
	switch v.Fields.Pick(field.Ask) {
	case "":
		return join(first, rest)
	case "supply":
		first, rest = "", join(first, rest)
		if v.Supply.Judged {
			first = verdict
		}
	case "bath":
		first, rest = rest, first
	case "check":
		first = cmp.Or(v.notCovered(), v.courseSentence())
	}
	if first == "" {
		return cmp.Or(v.notCovered(), v.nextBlank())
	}
	return join(first, rest)
}

// notCovered says that the metal is one that is not etched here.
func (v *view) notCovered() string {
	for _, e := range v.Errors {
		if e.Code == field.Unknown && e.Why != "" {
			return e.Why
		}
	}
	return ""
}

// join puts sentences after one another, of which any may be "".
func join(sentences ...string) (said string) {
	for _, s := range sentences {
		if said != "" && s != "" {
			said += " "
		}
		said += s
	}
	return said
}

// workSentence says that the metal is not covered, how a run under way stands, what
// to do with the piece, or what a depth alone leaves of the sheet.
func (v *view) workSentence() string {
	return cmp.Or(v.notCovered(), v.courseSentence(), v.stepsSentence(), v.biteSentence(), v.suggestedSentence(), v.sheetSentence())
}

// courseSentence says how far a watched run has come, by weight before the ammeter.
func (v *view) courseSentence() string {
	now, left, by := v.Course.DepthNow, field.AnswerTimeLeft, "by its weight"
	if !now.Known() {
		now, left, by = v.Course.DepthSoFar, field.AnswerReadyIn, "by the ammeter"
	}
	if !now.Known() {
		return ""
	}
	said := "About " + v.Say(field.AnswerDepthNow, now.SI) + v.onAverage() + " etched so far, " + by + "."
	switch target := v.Bite.Depth; {
	case target.Known() && now.SI >= target.SI:
		return said + " It is deep enough" + v.where() + "."
	case v.figures[left].SI > 0:
		return said + " Leave it " + v.text(left) + " more."
	}
	return said
}

// stepsSentence sums up steps with areas stopped out between them. It says how deep
// they come to: a depth meant from the face would else be etched on top of the last.
func (v *view) stepsSentence() string {
	if len(v.Steps) == 0 || !v.Salt.Known() {
		return v.stepsToStart()
	}
	var currents []string
	for _, s := range v.Steps {
		currents = append(currents, v.Say(field.AnswerCurrent, s.Current.SI))
	}
	if len(currents) == 1 {
		return "One step takes " + v.text(field.AnswerTime) + " at " + currents[0] + "." + v.checkEarly()
	}
	return countInWords(len(currents)) + " steps take " + v.text(field.AnswerTime) + " in all and add up to " +
		withoutZeros(v.Say(field.AnswerDepth, bite.InAll(v.Steps).Depth)) + ": " + strings.Join(currents, ", then ") + "." + v.checkEarly()
}

// stepsToStart says what steps lack that have neither a current nor a density.
func (v *view) stepsToStart() string {
	if !v.Fields.Given(field.Bites) || !v.has(field.AnswerSuggestedDensity) || v.Bite.Asked.Current.Typed() || v.Bite.Asked.Density.Typed() {
		return ""
	}
	return "Type a current density for the steps, such as " + v.text(field.AnswerSuggestedDensity) + "."
}

// countInWords is a number that begins a sentence.
func countInWords(n int) string {
	words := []string{"No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine"}
	if n < len(words) {
		return words[n]
	}
	return strconv.Itoa(n)
}

// biteSentence says what to do with the piece.
func (v *view) biteSentence() string {
	b, flow := v.Bite, v.flow()
	if !b.Depth.Known() || !b.Time.Known() || !v.Metal.Given() || !v.Salt.Known() || !b.Agrees || flow == "" {
		return ""
	}
	time, depth := v.said(field.Time), v.said(field.Depth)
	at, into := " at "+flow+" in "+v.bathInWords(), " into "+v.metalInWords()+v.where()
	if v.Salt.Common() && !v.Law.Efficiency.OwnRuns {
		if said := v.saltWaterSentence(at, into); said != "" {
			return said + v.elsewhere() + v.tooWeak()
		}
	}
	return v.foundSentence(time, depth, flow, at, into) + v.elsewhere() + v.checkEarly() + v.tooWeak()
}

// where says whose depth it is, where it is said how even the etch will be.
func (v *view) where() string {
	switch until := v.Bite.Until; {
	case until.Shallowest:
		return " where it is shallowest"
	case until.Least.Known() || v.Fields.Given(field.Until):
		return " on average"
	}
	return ""
}

// about is a depth that rests on the solution for a picture: of two figures.
func (v *view) about(depth float64) string {
	unit := field.Depth.Row().Bare
	if v.US {
		unit = field.Depth.Row().USUnit
	}
	return quantity.PrintEstimate(depth, quantity.Length, unit)
}

// onAverage tells a mean from the depth that was asked for, where they differ.
func (v *view) onAverage() string {
	if v.Bite.Until.Shallowest {
		return " on average"
	}
	return ""
}

// elsewhere says how deep it is on average, or where it is shallowest, if the other
// is the depth of the sentence.
func (v *view) elsewhere() string {
	until, mean := v.Bite.Until, v.Bite.Depth
	switch {
	case !until.Least.Known():
		return ""
	case until.Shallowest:
		return " It gets " + v.about(mean.SI) + " deep on average."
	}
	return " Its shallowest part gets " + v.about(mean.SI*until.Least.SI) + "."
}

// checkEarly warns where copper may leave with one charge or two, and the
// sentence gives no range.
func (v *view) checkEarly() string {
	if !v.Salt.Common() || v.Law.Efficiency.OwnRuns {
		return ""
	}
	return " Check early: it may be only half as deep."
}

// foundSentence is biteSentence by what was found.
func (v *view) foundSentence(time, depth, flow, at, into string) string {
	switch v.firstFound() {
	case "depth":
		return field.Capital(time) + at + " etches " + depth + into + "."
	case "current", "density":
		return "Set " + flow + " in " + v.bathInWords() + " to etch " + depth + into + " in " + time + "."
	case "area":
		return field.Capital(time) + at + " etches " + depth + " into " + v.text(field.AnswerArea) + " of " + v.metalInWords() + v.onEach() + v.where() + "."
	}
	return "Leave it " + time + at + " to etch " + depth + into + "."
}

// saltWaterSentence gives the range where copper may leave with one charge or two.
func (v *view) saltWaterSentence(at, into string) string {
	const early = "and check early: copper can dissolve twice as fast there."
	switch v.firstFound() {
	case "time":
		return "Leave it " + v.span(field.AnswerTime) + at + ", " + early
	case "depth":
		return field.Capital(v.said(field.Time)) + at + " etches " + v.span(field.AnswerDepth) + into + ": check early."
	}
	return ""
}

// tooWeak says, where the supply gives less than the current, what it can do,
// unless the sentence begins with that already.
func (v *view) tooWeak() string {
	if !v.Supply.Judged || v.Supply.Verdict != circuit.TooWeak || v.Fields.Pick(field.Ask) == "supply" {
		return ""
	}
	gives := v.supplyVolts()
	if amps := v.Fields.Amount(field.Amps); amps.Known() && amps.SI < v.Supply.Current.SI {
		gives = v.supplyAmps()
	}
	if instead := v.instead(); instead != "" {
		return " Your supply gives " + gives + ": " + instead + "."
	}
	return " Your supply gives too little."
}

// suggestedSentence says what a current density to start from comes to, where
// nothing but the current is missing.
func (v *view) suggestedSentence() string {
	s := v.Suggest
	if !s.Time.Known() || v.Bite.Watched || v.Bite.Asked.Time.Typed() || v.Bite.Asked.Current.Typed() || v.Bite.Asked.Density.Typed() {
		return ""
	}
	said := "At " + withoutPoint(v.text(field.AnswerSuggestedDensity)) + " it takes " + v.text(field.AnswerSuggestedTime)
	if s.Current.Known() {
		said += " at " + v.text(field.AnswerSuggestedCurrent) + v.forAll()
	}
	said += " in " + v.bathInWords()
	if v.Bite.Until.Shallowest {
		said += ", until its shallowest part is deep enough"
	}
	return said + "." + v.checkEarly()
}

// withoutPoint drops ".0" from a round figure: "12.0 V" becomes "12 V".
func withoutPoint(figure string) string { return strings.ReplaceAll(figure, ".0 ", " ") }

// sheetSentence says what a depth alone leaves of the sheet and its finest line.
func (v *view) sheetSentence() string {
	var said []string
	if v.Sheet.Left.Known() {
		said = append(said, "An etch of "+v.Say(field.AnswerDepth, v.Sheet.Depth.SI)+v.onAverage()+" leaves "+v.text(field.AnswerLeft)+" of the sheet.")
	}
	if left := v.Lines.Left; left.Known() && left.SI > 0 {
		said = append(said, "The finest line keeps "+v.text(field.AnswerLineLeft)+".")
	} else if left.Known() {
		said = append(said, "The finest line does not survive it.")
	}
	return strings.Join(said, " ")
}

func (v *view) firstFound() string {
	if len(v.Bite.Found) == 0 {
		return ""
	}
	return v.Bite.Found[0].String()
}

// flow is the current to set, or the density where no area tells the current.
func (v *view) flow() string {
	if v.Bite.Current.Known() {
		return v.said(field.Current) + v.forAll()
	}
	if v.Bite.Density.Known() {
		return v.said(field.Density)
	}
	return ""
}

// said is a figure as it stands in a sentence: with the digits that were typed,
// or as it is printed where it was found.
func (v *view) said(name field.Name) string {
	text, printed := v.Fields.Text(name), v.text(name.Answer())
	if text == "" || name == field.Time && bareNumber(text) {
		return printed
	}
	return v.typed(name)
}

// typed is what was typed into a field, with its unit.
func (v *view) typed(name field.Name) string {
	text := v.Fields.Text(name)
	if bareNumber(text) {
		text += " " + name.Row().Bare
	}
	for _, length := range [...]string{"cm", "in", "dm", "ft"} {
		text = strings.ReplaceAll(text, length+"2", length+"²")
	}
	return text
}

// bareNumber says whether a text ends in a figure that is no part of a unit or
// of a time, as "0.2" and not "12 cm2", "1:40" or "2 h 30".
func bareNumber(text string) bool {
	if text == "" {
		return false
	}
	last := text[len(text)-1]
	return last >= '0' && last <= '9' && !endsInUnit(text) && !strings.ContainsAny(text, ":h")
}

// endsInUnit says whether a text that ends in a figure ends in a unit, as cm2.
func endsInUnit(text string) bool {
	return len(text) > 1 && text[len(text)-1] == '2' && (text[len(text)-2] >= 'a' && text[len(text)-2] <= 'z')
}

func (v *view) forAll() string {
	if n := v.Bite.Count; n.Known() && n.SI > 1 {
		return " for all " + strconv.Itoa(int(n.SI)) + " pieces"
	}
	return ""
}

func (v *view) onEach() string {
	if n := v.Bite.Count; n.Known() && n.SI > 1 {
		return " on each piece"
	}
	return ""
}

// metalInWords is the metal as it stands in the middle of a sentence: by the
// name that was typed, if it is one, else by the catalogue's.
func (v *view) metalInWords() string {
	if r := v.Metal.Reading; r.Why != "name" {
		return lower(r.Metal.Name)
	}
	return v.Fields.Text(field.Metal)
}

// bathInWords is the bath by its salt, in whatever form that is weighed.
func (v *view) bathInWords() string {
	switch v.Salt.Salt.Metal {
	case "Cu":
		return "copper sulfate"
	case "Ag":
		return "silver nitrate"
	}
	return "salt water"
}

// bathSentence says what to mix, or what to do with a bath that is there.
func (v *view) bathSentence() string {
	if !v.Salt.Known() {
		return ""
	}
	mix := cmp.Or(v.mixSentence(), v.suggestedMixSentence())
	if v.Standing.Changed {
		mix = v.topUpSentence()
	}
	return join(mix, v.strengthenSentence(), v.blendSentence(), v.gravitySentence())
}

// mixSentence says what makes a new bath. Of a strength that does not dissolve
// it takes what does.
func (v *view) mixSentence() string {
	if !v.Mix.Weighed {
		return ""
	}
	salt, w := v.text(field.AnswerSaltMass), v.Mix.Weights
	if v.Mix.TooMuch {
		salt = v.Say(field.AnswerSaltMass, w.SaltMass-w.Undissolved/v.Fields.Amount(field.Assay).SI)
	}
	said := "Dissolve " + salt + " of " + v.Salt.Name + " in " + v.text(field.AnswerWaterVolume) + " (" + v.text(field.AnswerWaterMass) +
		") of water: it makes " + v.volumeInWords() + "."
	if v.Mix.TooMuch {
		said += " No more dissolves at " + v.Say(field.AnswerSaturatesAt, v.Mix.Solution.Temperature) + "."
	}
	return said
}

// suggestedMixSentence says what a bath of a strength to start from takes, where
// nothing but the strength is missing.
func (v *view) suggestedMixSentence() string {
	w := v.Mix.SuggestedWeights
	if w.SaltMass == 0 {
		return ""
	}
	water := bath.WaterVolume(w.WaterMass, v.Fields.Amount(field.Temperature).SI)
	return "At " + withoutPoint(v.text(field.AnswerSuggestedStrength)) + " the bath takes " + v.Say(field.AnswerSaltMass, w.SaltMass) + " of " + v.Salt.Name +
		" in " + v.Say(field.AnswerWaterVolume, water) + " (" + v.Say(field.AnswerWaterMass, w.WaterMass) + ") of water."
}

// volumeInWords is the bath's volume as it was typed, else as it is printed.
func (v *view) volumeInWords() string {
	if v.Fields.Given(field.Volume) {
		return v.said(field.Volume)
	}
	return v.text(field.AnswerVolume)
}

// topUpSentence says what to add to a bath that was used or has lost water.
func (v *view) topUpSentence() string {
	salt, water := v.Standing.SaltForEtched, v.Standing.WaterToAdd
	switch {
	case salt.SI > 0 && water.SI > 0:
		return "Add " + v.Say(field.AnswerSaltToAdd, salt.SI) + " of " + v.Salt.Name + ", then distilled water to the " + v.volumeInWords() +
			" mark, about " + v.text(field.AnswerWaterToAdd) + "."
	case salt.SI > 0:
		return "Add " + v.Say(field.AnswerSaltToAdd, salt.SI) + " of " + v.Salt.Name + " to the bath."
	case water.SI > 0:
		said := "Add distilled water to the " + v.volumeInWords() + " mark, about " + v.text(field.AnswerWaterToAdd)
		if v.keptItsMetal() {
			said += ", and no salt"
		}
		return said + "."
	case v.Standing.Known:
		return "The bath needs nothing added yet."
	}
	return ""
}

// keptItsMetal says that what was etched took nothing from the bath, where that was
// asked: as copper does in copper sulfate, which all comes back at the cathode.
func (v *view) keptItsMetal() bool {
	before := v.Standing.Etched
	if !v.Fields.Given(field.Etched) || before.Salt == nil || v.Salt.Common() {
		return false
	}
	lost := before.Lost()
	return lost.Known() && lost.SI <= 0
}

func (v *view) strengthenSentence() string {
	to := "it becomes " + v.typed(field.WantStrength) + "."
	switch {
	case v.Used.AddSalt.SI > 0:
		return "Dissolve " + v.text(field.AnswerAddSalt) + " of " + v.Salt.Name + " in the bath: " + to
	case v.Used.AddWater.SI > 0:
		return "Add " + v.text(field.AnswerAddWater) + " of distilled water to the bath: " + to
	}
	return ""
}

func (v *view) blendSentence() string {
	if !v.Used.PartA.Known() {
		return ""
	}
	return "Mix " + v.Say(field.AnswerVolume, v.Used.VolumeA.SI) + " of bath A with " + v.Say(field.AnswerVolume, v.Used.VolumeB.SI) +
		" of bath B: it makes " + v.volumeInWords() + " of " + v.typed(field.WantStrength) + "."
}

func (v *view) gravitySentence() string {
	if !v.Used.ByGravity.Known() {
		return ""
	}
	return "By the hydrometer the bath holds " + v.text(field.AnswerStrengthByGravity) + " of " + v.Salt.Name + "."
}

// nextBlank says what to type first where a question can't be answered yet.
func (v *view) nextBlank() string {
	for _, b := range blanks {
		if b.ask == v.Fields.Pick(field.Ask) && !slices.ContainsFunc(b.all, func(n field.Name) bool { return !v.Fields.Blank(n) }) {
			return b.say
		}
	}
	return ""
}

// blanks are what each question needs, in the order in which it is typed: all of
// a row's fields are blank where it is asked for.
var blanks = [...]struct {
	ask string
	all []field.Name
	say string
}{
	{"time", []field.Name{field.Metal}, "Type the metal."},
	{"time", []field.Name{field.Area, field.Width, field.Diameter, field.Bites}, typeSize},
	{"time", []field.Name{field.Area, field.Open, field.Bites}, typeShare},
	{"time", []field.Name{field.Depth, field.Bites}, "Type the depth."},

	{"supply", []field.Name{field.Volts, field.Amps}, "Type the supply voltage."},
	{"supply", []field.Name{field.Metal}, "Type the metal."},
	{"supply", []field.Name{field.Area, field.Width, field.Diameter}, typeSize},
	{"supply", []field.Name{field.Area, field.Open}, typeShare},

	{"bath", []field.Name{field.Metal, field.Salt}, "Type the salt, or the metal."},
	{"bath", []field.Name{field.Strength, field.SaltInHand, field.HaveStrength, field.StrengthA, field.Gravity}, "Type the strength of the bath."},
	{"bath", []field.Name{field.Volume, field.Fill, field.WaterInHand, field.HaveVolume}, "Type the volume of the bath."},

	{"check", []field.Name{field.Before, field.After, field.Readings}, "Type the weights before and now, or the ammeter readings."},
	{"check", []field.Name{field.Before, field.Readings}, "Type the weight before."},
	{"check", []field.Name{field.After, field.Readings}, "Type the weight now, or the ammeter readings."},
	{"check", []field.Name{field.Metal}, "Type the metal."},
	{"check", []field.Name{field.Area, field.Width, field.Diameter}, typeSize},
	{"check", []field.Name{field.Area, field.Open}, typeShare},
}

const (
	typeSize  = "Type the size of the piece, or its exposed area."
	typeShare = "Type the exposed share."
)

// lower makes the first letter small, unless a second capital or a figure says
// that it is a sign: "Cartridge brass", but "C26000" and "Ag 20 Cu 80".
func lower(name string) string {
	if len(name) > 1 && (name[1] < 'a' || name[1] > 'z') {
		return name
	}
	if _, rest, _ := strings.Cut(name, " "); rest != "" && rest[0] >= '0' && rest[0] <= '9' {
		return name
	}
	return strings.ToLower(name[:1]) + name[1:]
}
