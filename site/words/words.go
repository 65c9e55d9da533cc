// Package words holds what the page says about the vocabulary: the label and
// the help of each field, the label of each answer, the title of each part, and
// units and choices as they are shown. The names themselves, and all that a
// reader must know of them, stand in calc/field; a name in one and not in the
// other fails the build.
//
// How they are written: a label is at most three words, so that it stands in one
// or two lines beside its control on a phone; a help is one line, at most 70
// characters, without a full stop; both say what the trade says.
//
// Only the build reads this package. The program that answers carries none of it.
package words

// Field is what the page says about a field.
type Field struct {
	Label string
	Help  string
	// HelpUS stands in its place in US units; "" where it names no unit.
	HelpUS string
	// Rare fields fold away behind a line that still shows what was typed.
	Rare bool
	// Sought may be asked for: its row has a touch that seeks it.
	Sought bool
	// Fill is what one touch writes into the blank field, for those who have
	// nothing in mind; where the answer Suggested is there, that is written.
	Fill, Suggested string
	// Makes are the answers that stand at the row, quietly, in the place of its help:
	// what comes of what is typed there. Of several the first two that there are.
	Makes []string
	// Suggest is offered while the field is typed in.
	Suggest []string
	// Choices are the labels of the field's choices.
	Choices map[string]string
}

// Part is what the page says about a part of the job sheet.
type Part struct {
	Title string
	Hint  string // stands in the folded line while nothing is typed
	// More says what folds away in it, in the order of how often it is wanted.
	More string
	// Folded parts start as one line.
	Folded bool
	// OffPage parts have no rows on the first page.
	OffPage bool
	// Shows are the answers that the folded line still tells.
	Shows []string
	// Lacks are what the part says while it can't answer yet.
	Lacks []Lack
}

// Lack is what a part says when something of it is typed and none of the answers
// that it would be typed for can be given.
type Lack struct {
	Typed []string // fields
	For   []string // answers; "bites" stands for the rows of the bites
	Needs []string // what it takes: fields, one of several by a bar between them
}

// Parts of the job sheet.
var Parts = map[string]Part{
	"metal": {Title: "Metal", Hint: "what the sheet is", More: "its density"},
	"design": {Title: "Design", Hint: "how much metal is exposed", More: "both sides, hanging wire, edges, back", Shows: []string{"totalArea", "extraFound"}, Lacks: []Lack{
		{[]string{"hanger", "hangerLength"}, []string{"extraFound"}, []string{"hanger", "hangerLength"}},
		{[]string{"bareEdges"}, []string{"extraFound"}, []string{"sheet"}},
		{[]string{"back"}, []string{"extraFound"}, []string{"width|diameter"}},
	}},
	"bite": {Title: "Etch", Hint: "how deep, how long, how many amperes", More: "stopping out, efficiency, undercut", Shows: []string{"time", "current", "depth"}, Lacks: []Lack{
		{[]string{"bites"}, []string{"bites"}, []string{"metal", "density|current"}},
	}},
	"sheet": {Title: "Sheet and lines", Hint: "what is left, what survives", Folded: true, Shows: []string{"left", "lineLeft"}, Lacks: []Lack{
		{[]string{"sheet", "keep"}, []string{"left", "deepest"}, []string{"sheet", "depth"}},
		{[]string{"line", "space"}, []string{"lineLeft", "spaceBecomes"}, []string{"depth"}},
	}},
	"supply": {Title: "Power supply", Hint: "will it do, cable, distance, limits", More: "cable, stirring, how it hangs", Folded: true, Shows: []string{"cellVolts", "currentAtVolts", "filmDensity"}, Lacks: []Lack{
		{[]string{"volts", "gap", "cathode"}, []string{"bathResistance"}, []string{"gap", "cathode", "strength", "salt|metal", "area"}},
		{[]string{"amps"}, []string{"depthThatFits", "timeThatFits", "piecesThatFit"}, []string{"metal", "area", "depth", "time|current|density"}},
		{[]string{"wireLength"}, []string{"wireDrop"}, []string{"wire", "current"}},
	}},
	"bath": {Title: "Bath", Hint: "how much salt in how much water", More: "tank, purity, temperature, in hand", Folded: true, Shows: []string{"saltMass", "waterMass"}, Lacks: []Lack{
		{[]string{"strength", "volume", "saltInHand", "waterInHand"}, []string{"saltMass", "perLitre"}, []string{"salt|metal", "strength|saltInHand", "volume|waterInHand"}},
		{[]string{"coldest"}, []string{"crystals", "saturatesAt"}, []string{"salt|metal", "strength", "volume"}},
	}},
	"keep": {Title: "Used bath", Hint: "top up, strengthen, blend, how long it lasts", More: "strengthen, blend, hydrometer", Folded: true, Shows: []string{"saltToAdd", "bathDrop"}, Lacks: []Lack{
		{[]string{"etched"}, []string{"bathDropAll", "strengthNow", "zincInBath", "nickelInBath", "copperInBath", "leadInBath"}, []string{"metal", "strength", "volume"}},
		{[]string{"volumeNow"}, []string{"strengthNow", "waterToAdd"}, []string{"strength", "volume"}},
		{[]string{"haveStrength", "haveVolume"}, []string{"addSalt", "addWater"}, []string{"haveStrength", "haveVolume", "wantStrength"}},
		{[]string{"strengthA", "strengthB"}, []string{"partA", "partB"}, []string{"strengthA", "strengthB", "wantStrength", "volume"}},
		{[]string{"gravity"}, []string{"strengthByGravity"}, []string{"salt|metal"}},
	}},
	"course": {Title: "Check progress", Hint: "by weight, by the ammeter, by the clock", More: "time paused, balance", Folded: true, Shows: []string{"readyAt", "timeLeft", "readyIn", "depthNow"}, Lacks: []Lack{
		{[]string{"after"}, []string{"depthNow", "efficiencyNow"}, []string{"before", "after", "metal", "area"}},
		{[]string{"before"}, []string{"weightAtTarget", "depthNow"}, []string{"metal", "area", "depth"}},
		{[]string{"readings"}, []string{"depthSoFar"}, []string{"metal", "area"}},
		{[]string{"start", "paused"}, []string{"readyAt"}, []string{"start", "time"}},
	}},
	"trouble": {Title: "What went wrong", Hint: "too faint, too deep, lifted, rough, pink …", Folded: true},
	"artwork": {Title: "Artwork", Hint: "read the exposed area from a picture", OffPage: true},
	"log":     {Title: "Finished runs", Hint: "what this bench really does", OffPage: true},
	"class":   {Title: "Class", Hint: "many pieces, one supply, one clock", OffPage: true},
	"page":    {Title: "Units", Hint: "what the answers are printed in"},
}

// Units as they are shown; a unit that is not listed is shown as it is written.
var Units = map[string]string{
	"cm2":       "cm²",
	"mm2":       "mm²",
	"in2":       "in²",
	"g/cm3":     "g/cm³",
	"mA/cm2":    "mA/cm²",
	"A/dm2":     "A/dm²",
	"A/ft2":     "A/ft²",
	"C":         "°C",
	"F":         "°F",
	"g/L water": "g/L water",
	"% sat":     "% of sat.",
}

// Unit is a unit as it is shown.
func Unit(symbol string) string {
	if shown, ok := Units[symbol]; ok {
		return shown
	}
	return symbol
}

// Example is a job of our own, in the one text form of a set of fields: a brass
// nameplate for a garden shed, and the bath to bite it in.
const Example = "metal=brass&width=110&height=35&open=30&depth=0.25&density=30" +
	"&salt=copper+sulfate+crystals&strength=150&volume=1.5"
