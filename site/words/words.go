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
	// Suggest is offered while the field is typed in.
	Suggest []string
	// Choices are the labels of the field's choices.
	Choices map[string]string
}

// Part is what the page says about a part of the job sheet.
type Part struct {
	Title string
	Hint  string // stands in the folded line while nothing is typed
	// Folded parts start as one line.
	Folded bool
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
	Text  string   // at most 70 characters, without a full stop
}

// Parts of the job sheet.
var Parts = map[string]Part{
	"metal": {Title: "Metal", Hint: "what the sheet is"},
	"design": {Title: "Design", Hint: "how much metal lies bare", Shows: []string{"totalArea", "extraFound"}, Lacks: []Lack{
		{[]string{"hanger", "hangerLength"}, []string{"extraFound"}, "the hanger needs its diameter and its wet length"},
		{[]string{"bareEdges"}, []string{"extraFound"}, "bare edges need the sheet's thickness"},
		{[]string{"back"}, []string{"extraFound"}, "the bare back needs the face's size"},
	}},
	"bite": {Title: "Bite", Hint: "how deep, how long, how many amperes", Shows: []string{"time", "current", "depth"}, Lacks: []Lack{
		{[]string{"bites"}, []string{"bites"}, "bites need the metal and a current density, or a current"},
	}},
	"sheet": {Title: "Sheet and lines", Hint: "what is left, what survives", Folded: true, Shows: []string{"left", "lineLeft"}, Lacks: []Lack{
		{[]string{"sheet", "keep"}, []string{"left", "deepest"}, "needs the sheet's thickness, and a depth for what is left"},
		{[]string{"line", "space"}, []string{"lineLeft", "spaceBecomes"}, "needs a depth, typed or found"},
	}},
	"supply": {Title: "Supply", Hint: "volts, amperes, leads, limits", Folded: true, Shows: []string{"cellVolts", "currentAtVolts", "filmDensity"}, Lacks: []Lack{
		{[]string{"volts", "gap", "cathode"}, []string{"bathResistance"}, "needs the gap, the cathode's area and the bath's strength"},
		{[]string{"amps"}, []string{"depthThatFits", "timeThatFits", "piecesThatFit"}, "needs metal, size, a depth and a time or a current"},
		{[]string{"wireLength"}, []string{"wireDrop"}, "the lead needs its wire and a current"},
	}},
	"bath": {Title: "Bath", Hint: "how much salt in how much water", Folded: true, Shows: []string{"saltMass", "waterMass"}, Lacks: []Lack{
		{[]string{"strength", "volume", "saltInHand", "waterInHand"}, []string{"saltMass", "perLitre"}, "needs a strength and a volume, or salt and water in hand"},
		{[]string{"coldest"}, []string{"crystals", "saturatesAt"}, "the cold bath needs a strength and a volume"},
	}},
	"keep": {Title: "Bath afterwards", Hint: "what it takes and leaves, topping up", Folded: true, Shows: []string{"saltToAdd", "bathDrop"}, Lacks: []Lack{
		{[]string{"etched"}, []string{"bathDropAll", "zincInBath", "nickelInBath", "copperInBath", "leadInBath"}, "needs the metal, and the bath's strength and volume"},
		{[]string{"volumeNow"}, []string{"strengthNow", "waterToAdd"}, "needs the bath's strength and volume"},
		{[]string{"haveStrength", "haveVolume"}, []string{"addSalt", "addWater"}, "needs the strength and volume there are, and the strength wanted"},
		{[]string{"strengthA", "strengthB"}, []string{"partA", "partB"}, "a blend needs both baths, the strength wanted and the volume"},
		{[]string{"gravity"}, []string{"strengthByGravity"}, "the hydrometer needs a salt or a metal"},
	}},
	"course": {Title: "On course", Hint: "by weight, by the ammeter, by the clock", Folded: true, Shows: []string{"readyAt", "timeLeft", "readyIn", "depthNow"}, Lacks: []Lack{
		{[]string{"after"}, []string{"depthNow", "efficiencyNow"}, "needs both weights, the metal and the open area"},
		{[]string{"before"}, []string{"weightAtTarget", "depthNow"}, "needs the metal, the open area and a depth"},
		{[]string{"readings"}, []string{"depthSoFar"}, "the ammeter needs the metal and the open area"},
		{[]string{"start", "paused"}, []string{"readyAt"}, "the clock needs the time of switching on and a running time"},
	}},
	"page": {Title: "Units", Hint: "what the answers are printed in"},
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
