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
	// Rare fields fold away behind a line that still shows what was typed.
	Rare bool
	// Sought may be asked for: its row has a touch that seeks it.
	Sought bool
	// Fill is what one touch writes into the blank field, for those who have
	// nothing in mind.
	Fill string
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
}

// Parts of the job sheet.
var Parts = map[string]Part{
	"metal":  {Title: "Metal", Hint: "what the sheet is"},
	"design": {Title: "Design", Hint: "how much metal lies bare", Shows: []string{"totalArea"}},
	"bite":   {Title: "Bite", Hint: "how deep, how long, how many amperes", Shows: []string{"time", "current", "depth"}},
	"sheet":  {Title: "Sheet and lines", Hint: "what is left, what survives", Folded: true, Shows: []string{"left", "lineLeft"}},
	"supply": {Title: "Supply", Hint: "volts, amperes, leads, limits", Folded: true, Shows: []string{"cellVolts", "currentAtVolts", "filmDensity"}},
	"bath":   {Title: "Bath", Hint: "how much salt in how much water", Folded: true, Shows: []string{"saltMass", "waterMass"}},
	"keep":   {Title: "Bath afterwards", Hint: "what it takes and leaves, topping up", Folded: true, Shows: []string{"saltToAdd", "bathDrop"}},
	"course": {Title: "On course", Hint: "by weight, by the ammeter, by the clock", Folded: true, Shows: []string{"readyAt", "timeLeft", "readyIn", "depthNow"}},
	"page":   {Title: "Units", Hint: "what the answers are printed in"},
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
