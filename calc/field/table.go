package field

import "saltbite/calc/quantity"

// Form is how a field's text is to be read.
type Form uint8

const (
	Amount  Form = iota // a number with a unit of one of Kinds
	Whole               // a whole number
	Choice              // one of Choices
	Words               // a name, read by the room that knows such names
	Clock               // a time of day
	Series              // pairs of amounts: of Kinds[0] with the unit Bare, of Kinds[1] with Second
	Gravity             // a hydrometer's reading: a bare number, a density, or degrees Baume
)

// Field is a row of the vocabulary: all that a reader, a form and a list of
// attributes must know of it but its label and help, which are the page's words.
type Field struct {
	Name    string
	Part    Part
	Form    Form
	Kinds   []quantity.Kind
	Bare    string   // unit symbol of a bare number; "" where one must be typed or there is none
	Units   []string // the page's unit control, the bare unit first; none: no control
	USUnit  string   // which of Units the page starts with in US units; "": the bare one
	Default string   // what a blank means, in the bare unit; "": not given
	Min     float64  // least and most allowed, in the unit of Limit; of Words, the most characters
	Max     float64
	Limit   string // unit of Min and Max
	Second  string // unit symbol of a bare second number of a Series
	Choices []string
	Also    map[string]string // other words for a choice
	Noun    string            // with its article, as errors quote it
	Example string            // a text that can be read, as errors quote it
}

var (
	lengths       = []string{"mm", "cm", "in"}
	areas         = []string{"cm2", "mm2", "in2"}
	volumes       = []string{"L", "mL", "qt", "gal"}
	masses        = []string{"g", "kg", "oz", "lb"}
	percent       = []string{"%"}
	strengthKinds = kinds(quantity.Density, quantity.PerWater, quantity.Share, quantity.Molarity, quantity.Saturation)
	strengths     = []string{"g/L", "g/L water", "%", "mol/L", "% sat"}
)

func kinds(k ...quantity.Kind) []quantity.Kind { return k }

// length is the row of a size in the plane, from a micrometre to ten metres.
func length(name string, part Part, noun, example string) Field {
	return Field{Name: name, Part: part, Kinds: kinds(quantity.Length), Bare: "mm", Units: lengths, USUnit: "in",
		Min: 1e-3, Max: 1e4, Limit: "mm", Noun: noun, Example: example}
}

// mass is the row of something weighed, from a milligram to a tonne.
func mass(name string, part Part, noun, example string) Field {
	return Field{Name: name, Part: part, Kinds: kinds(quantity.Mass), Bare: "g", Units: masses, USUnit: "oz",
		Min: 1e-3, Max: 1e6, Limit: "g", Noun: noun, Example: example}
}

// bathVolume and bathStrength are the rows of a bath that is there already.
func bathVolume(name, noun, example string) Field {
	return Field{Name: name, Part: Keep, Kinds: kinds(quantity.Volume), Bare: "L", Units: volumes, USUnit: "qt",
		Min: 1e-4, Max: 1e5, Limit: "L", Noun: noun, Example: example}
}

func bathStrength(name, noun string) Field {
	return Field{Name: name, Part: Keep, Kinds: strengthKinds, Bare: "g/L", Units: strengths, Noun: noun, Example: "200 g/L"}
}

// temperature is the row of a bath's warmth, while it is liquid water.
func temperature(name string, fallback, noun, example string) Field {
	return Field{Name: name, Part: Bath, Kinds: kinds(quantity.Temperature), Bare: "C", Units: []string{"C", "F"}, USUnit: "F",
		Default: fallback, Min: 0, Max: 100, Limit: "C", Noun: noun, Example: example}
}

// Fields is the vocabulary, in the order of the job.
var Fields = []Field{
	{Name: "metal", Part: Metal, Form: Words, Noun: "a metal", Example: "cartridge brass"},
	{Name: "metalDensity", Part: Metal, Kinds: kinds(quantity.Density), Bare: "g/cm3", Units: []string{"g/cm3"},
		Min: 1, Max: 25, Limit: "g/cm3", Noun: "a metal's density", Example: "8.1 g/cm3"},

	length("width", Design, "a width", "60 mm"),
	length("height", Design, "a height", "40 mm"),
	length("diameter", Design, "a diameter", "30 mm"),
	{Name: "open", Part: Design, Kinds: kinds(quantity.Share), Bare: "%", Units: percent,
		Min: 1e-3, Max: 100, Limit: "%", Noun: "a bare share of the face", Example: "40 %"},
	{Name: "area", Part: Design, Kinds: kinds(quantity.Area), Bare: "cm2", Units: areas, USUnit: "in2",
		Min: 1e-6, Max: 1e6, Limit: "cm2", Noun: "an open area", Example: "12 cm2"},
	{Name: "sides", Part: Design, Form: Whole, Kinds: kinds(quantity.Number), Default: "1", Min: 1, Max: 2,
		Noun: "a number of sides, 1 or 2,", Example: "2"},
	{Name: "pieces", Part: Design, Form: Whole, Kinds: kinds(quantity.Number), Default: "1", Min: 1, Max: 10000,
		Noun: "a whole number of pieces", Example: "4"},
	{Name: "edge", Part: Design, Kinds: kinds(quantity.Length), Bare: "mm", Units: lengths, USUnit: "in",
		Min: 0, Max: 1e7, Limit: "mm", Noun: "a length of resist edge", Example: "800 mm"},
	{Name: "extra", Part: Design, Kinds: kinds(quantity.Area), Bare: "cm2", Units: areas, USUnit: "in2",
		Min: 0, Max: 1e6, Limit: "cm2", Noun: "an extra bare area", Example: "1.5 cm2"},

	length("hanger", Design, "a hanger wire's gauge or diameter", "18 ga"),
	length("hangerLength", Design, "a length of wire under the surface", "25 mm"),
	{Name: "hangerMetal", Part: Design, Form: Choice, Default: "copper",
		Choices: []string{"copper", "brass", "bronze", "silver", "aluminium", "stainless", "plated", "galvanised"},
		Also: map[string]string{"aluminum": "aluminium", "stainless steel": "stainless", "steel": "stainless", "nickel plated": "plated",
			"chrome plated": "plated", "galvanized": "galvanised", "galvanised steel": "galvanised", "galvanized steel": "galvanised",
			"sterling": "silver", "copper wire": "copper", "brass wire": "brass"},
		Noun: "the hanger's metal", Example: "copper"},
	length("bareEdges", Design, "a length of bare sheet edge", "120 mm"),
	{Name: "back", Part: Design, Kinds: kinds(quantity.Share), Bare: "%", Units: percent,
		Min: 0, Max: 100, Limit: "%", Noun: "a bare share of the back", Example: "10 %"},

	{Name: "depth", Part: Bite, Kinds: kinds(quantity.Length), Bare: "mm", Units: []string{"mm", "in"}, USUnit: "in",
		Min: 1e-6, Max: 100, Limit: "mm", Noun: "a depth", Example: "0.2 mm"},
	{Name: "density", Part: Bite, Kinds: kinds(quantity.CurrentDensity), Bare: "mA/cm2", Units: []string{"mA/cm2", "A/dm2", "A/ft2"},
		Min: 1e-4, Max: 1e5, Limit: "mA/cm2", Noun: "a current density", Example: "30 mA/cm2"},
	{Name: "current", Part: Bite, Kinds: kinds(quantity.Current), Bare: "A", Units: []string{"A", "mA"},
		Min: 1e-6, Max: 1e5, Limit: "A", Noun: "a current", Example: "0.25 A"},
	{Name: "time", Part: Bite, Kinds: kinds(quantity.Time), Bare: "min", Units: []string{"min", "h"},
		Min: 1e-3, Max: 1e6, Limit: "min", Noun: "a running time", Example: "2 h 30"},
	{Name: "find", Part: Bite, Form: Choice, Choices: []string{"depth", "time", "current", "area"},
		Noun: "what to find", Example: "time"},
	{Name: "efficiency", Part: Bite, Kinds: kinds(quantity.Share), Bare: "%", Units: percent, Default: "100",
		Min: 1, Max: 200, Limit: "%", Noun: "a current efficiency", Example: "95 %"},
	{Name: "undercut", Part: Bite, Kinds: kinds(quantity.Number), Default: "0.5", Min: 0, Max: 10,
		Noun: "an undercut, side bite over depth,", Example: "0.5"},

	{Name: "bites", Part: Bite, Form: Series, Kinds: kinds(quantity.Length, quantity.Area), Bare: "mm", Second: "cm2",
		Noun: "a list of bites, each a depth and its open area,", Example: "0.05 12; 0.10 9"},

	{Name: "sheet", Part: Sheet, Kinds: kinds(quantity.Length), Bare: "mm", Units: lengths, USUnit: "in",
		Min: 1e-3, Max: 1e3, Limit: "mm", Noun: "a sheet's thickness", Example: "18 ga"},
	{Name: "keep", Part: Sheet, Kinds: kinds(quantity.Share, quantity.Length), Units: []string{"%", "mm", "in"}, Default: "50 %",
		Noun: "the least to leave, a share or a thickness,", Example: "0.5 mm"},
	length("line", Sheet, "the narrowest line of resist", "0.4 mm"),
	length("space", Sheet, "the narrowest open space", "0.3 mm"),

	{Name: "volts", Part: Supply, Kinds: kinds(quantity.Voltage), Bare: "V", Units: []string{"V"},
		Min: 1e-3, Max: 1000, Limit: "V", Noun: "what the supply gives in volts", Example: "3 V"},
	{Name: "amps", Part: Supply, Kinds: kinds(quantity.Current), Bare: "A", Units: []string{"A", "mA"},
		Min: 1e-4, Max: 1e5, Limit: "A", Noun: "what the supply gives in amperes", Example: "2 A"},
	length("gap", Supply, "the gap from work to cathode", "60 mm"),
	{Name: "cathode", Part: Supply, Kinds: kinds(quantity.Area), Bare: "cm2", Units: areas, USUnit: "in2",
		Min: 1e-4, Max: 1e6, Limit: "cm2", Noun: "the cathode's facing area", Example: "60 cm2"},
	{Name: "position", Part: Supply, Form: Choice, Default: "hanging", Choices: []string{"hanging", "face-down", "face-up"},
		Also: map[string]string{"face down": "face-down", "face up": "face-up", "vertical": "hanging"},
		Noun: "how the work is placed", Example: "face-down"},
	{Name: "stir", Part: Supply, Form: Choice, Default: "still", Choices: []string{"still", "stirred"},
		Noun: "whether the bath is stirred", Example: "stirred"},
	length("wire", Supply, "the supply wire's gauge or diameter", "18 ga"),
	{Name: "wireLength", Part: Supply, Kinds: kinds(quantity.Length), Bare: "m", Units: []string{"m", "ft"}, USUnit: "ft",
		Min: 1e-3, Max: 1e4, Limit: "m", Noun: "the wire's length there and back", Example: "2 m"},
	{Name: "wireMetal", Part: Supply, Form: Choice, Default: "copper", Choices: []string{"copper", "aluminium"},
		Also: map[string]string{"aluminum": "aluminium"}, Noun: "the wire's metal", Example: "copper"},

	{Name: "salt", Part: Bath, Form: Words, Noun: "a salt", Example: "copper sulfate crystals"},
	{Name: "strength", Part: Bath, Kinds: strengthKinds,
		Bare: "g/L", Units: strengths, Min: 0, Max: 1e5, Limit: "", Noun: "a strength", Example: "200 g/L"},
	{Name: "volume", Part: Bath, Kinds: kinds(quantity.Volume), Bare: "L", Units: volumes, USUnit: "qt",
		Min: 1e-4, Max: 1e5, Limit: "L", Noun: "a volume of bath", Example: "2 L"},
	length("vesselLength", Bath, "the vessel's length", "250 mm"),
	length("vesselWidth", Bath, "the vessel's width", "150 mm"),
	length("vesselDiameter", Bath, "the vessel's diameter", "180 mm"),
	length("fill", Bath, "how high the bath stands", "100 mm"),
	{Name: "assay", Part: Bath, Kinds: kinds(quantity.Share), Bare: "%", Units: percent, Default: "100",
		Min: 1, Max: 100, Limit: "%", Noun: "a purity", Example: "98 %"},
	temperature("temperature", "20", "the bath's temperature", "20 C"),
	temperature("coldest", "", "the coldest the bath is kept at", "5 C"),
	{Name: "mixed", Part: Bath, Form: Words, Max: 40, Noun: "the day the bath was mixed", Example: "3 May"},
	mass("saltInHand", Bath, "a mass of salt", "500 g"),
	mass("waterInHand", Bath, "a mass of water", "2 kg"),

	mass("etched", Keep, "the metal etched in this bath so far", "40 g"),
	bathVolume("volumeNow", "what the level shows", "1.8 L"),
	bathStrength("haveStrength", "the strength that there is"),
	bathVolume("haveVolume", "the volume that there is", "2 L"),
	bathStrength("wantStrength", "the strength to be reached"),
	bathStrength("strengthA", "the strength of one bath"),
	bathStrength("strengthB", "the strength of the other bath"),
	{Name: "gravity", Part: Keep, Form: Gravity, Kinds: kinds(quantity.Number, quantity.Density),
		Min: 0.9, Max: 3, Noun: "a hydrometer's reading", Example: "1.14"},

	mass("before", Course, "the piece's weight before", "24.60 g"),
	mass("after", Course, "the piece's weight after", "23.85 g"),
	{Name: "readings", Part: Course, Form: Series, Kinds: kinds(quantity.Time, quantity.Current), Bare: "h", Second: "A",
		Noun: "a list of readings, each a time and the amperes,", Example: "0:00 0.30; 0:30 0.28"},
	{Name: "start", Part: Course, Form: Clock, Noun: "the time of switching on", Example: "14:05"},
	{Name: "paused", Part: Course, Kinds: kinds(quantity.Time), Bare: "min", Units: []string{"min", "h"},
		Min: 0, Max: 1e6, Limit: "min", Noun: "how long the current was off", Example: "10 min"},

	{Name: "units", Part: Page, Form: Choice, Choices: []string{"metric", "us"}, Default: "metric",
		Noun: "the units to print in", Example: "us"},
}

// Answer is a row of what the calculator can say.
type Answer struct {
	Name string
	Part Part
	Kind quantity.Kind
	Unit string // fixed: that of value
	US   string // unit of text in US units; "": as in metric ones
	Noun string // as a sentence names it, without an article
	Text string // unit of text where it says more than the fixed one; "": the fixed one
	Form AnswerForm
}

// AnswerForm is how an answer's text is printed.
type AnswerForm uint8

const (
	Plain       AnswerForm = iota // a number and its unit, or a count
	ClockTime                     // a time after midnight, as one of the clock
	GaugeNumber                   // a Brown & Sharpe number
)

// In turns a value in SI into the answer's fixed unit.
func (a Answer) In(si float64) float64 {
	if a.Kind == quantity.Number {
		return si
	}
	return quantity.In(si, a.Unit)
}

// AnswerByName finds an answer's row, which must be there.
func AnswerByName(name string) Answer {
	for _, a := range Answers {
		if a.Name == name {
			return a
		}
	}
	panic("field: no answer " + name)
}

// Answers is the list of all answers, in the order of the job.
var Answers = []Answer{
	{"depth", Bite, quantity.Length, "mm", "in", "depth", "", Plain},
	{"time", Bite, quantity.Time, "min", "", "time", "", Plain},
	{"current", Bite, quantity.Current, "A", "", "current", "", Plain},
	{"area", Bite, quantity.Area, "cm2", "in2", "open area of one piece", "", Plain},
	{"totalArea", Bite, quantity.Area, "cm2", "in2", "bare metal in all", "", Plain},
	{"density", Bite, quantity.CurrentDensity, "mA/cm2", "", "current density", "", Plain},
	{"charge", Bite, quantity.Charge, "A.h", "", "charge", "", Plain},
	{"removed", Bite, quantity.Mass, "g", "oz", "metal removed in all", "", Plain},
	{"removedEach", Bite, quantity.Mass, "g", "oz", "metal removed from one piece", "", Plain},
	{"equivalent", Bite, quantity.Equivalent, "g/(A.h)", "", "electrochemical equivalent", "", Plain},
	{"rate", Bite, quantity.Rate, "mm/h", "in/h", "rate of bite", "", Plain},

	{"suggestedDensity", Bite, quantity.CurrentDensity, "mA/cm2", "", "suggested current density", "", Plain},
	{"suggestedCurrent", Bite, quantity.Current, "A", "", "suggested current", "", Plain},
	{"suggestedTime", Bite, quantity.Time, "min", "", "suggested time", "", Plain},
	{"extraFound", Design, quantity.Area, "cm2", "in2", "extra bare metal found", "", Plain},
	{"depthIfForgotten", Design, quantity.Length, "mm", "in", "depth if it had been forgotten", "", Plain},
	{"hangerLeft", Design, quantity.Length, "mm", "in", "what is left of the hanger", "", Plain},

	{"left", Sheet, quantity.Length, "mm", "in", "sheet left", "", Plain},
	{"leftShare", Sheet, quantity.Share, "%", "", "share of the sheet left", "", Plain},
	{"deepest", Sheet, quantity.Length, "mm", "in", "deepest bite for this sheet", "", Plain},
	{"thinnestSheet", Sheet, quantity.Length, "mm", "in", "thinnest sheet for this bite", "", Plain},
	{"thinnestGauge", Sheet, quantity.Number, "", "", "its next gauge", "", GaugeNumber},
	{"lineLeft", Sheet, quantity.Length, "mm", "in", "what the line keeps", "", Plain},
	{"narrowestLine", Sheet, quantity.Length, "mm", "in", "line that is just gone", "", Plain},
	{"deepestForLine", Sheet, quantity.Length, "mm", "in", "depth at which the line is gone", "", Plain},
	{"spaceBecomes", Sheet, quantity.Length, "mm", "in", "what the space becomes", "", Plain},

	{"filmDensity", Supply, quantity.CurrentDensity, "mA/cm2", "", "density at which salt covers the metal", "", Plain},
	{"cathodeLimit", Supply, quantity.CurrentDensity, "mA/cm2", "", "cathode's limit", "", Plain},
	{"cathodeNeeded", Supply, quantity.Area, "cm2", "in2", "cathode that is needed", "", Plain},
	{"bathResistance", Supply, quantity.Resistance, "ohm", "", "resistance of the bath", "", Plain},
	{"cellVolts", Supply, quantity.Voltage, "V", "", "volts across the cell", "", Plain},
	{"currentAtVolts", Supply, quantity.Current, "A", "", "current at the supply's volts", "", Plain},
	{"supplyWatts", Supply, quantity.Power, "W", "", "power from the supply", "", Plain},
	{"ballast", Supply, quantity.Resistance, "ohm", "", "ballast", "", Plain},
	{"ballastWatts", Supply, quantity.Power, "W", "", "power in the ballast", "", Plain},
	{"wireDrop", Supply, quantity.Voltage, "V", "", "volts lost in the wire", "", Plain},
	{"wireLimit", Supply, quantity.Current, "A", "", "most for the wire", "", Plain},
	{"warming", Supply, quantity.HeatingRate, "K/h", "", "warming of the bath", "", Plain},
	{"cathodeDensity", Supply, quantity.CurrentDensity, "mA/cm2", "", "density at the cathode", "", Plain},
	{"depthThatFits", Supply, quantity.Length, "mm", "in", "depth that the supply allows", "", Plain},
	{"timeThatFits", Supply, quantity.Time, "min", "", "time that the supply needs", "", Plain},
	{"piecesThatFit", Supply, quantity.Number, "", "", "pieces that the supply allows", "", Plain},

	{"saltMass", Bath, quantity.Mass, "g", "oz", "salt to weigh", "", Plain},
	{"waterMass", Bath, quantity.Mass, "g", "oz", "water to weigh", "", Plain},
	{"solutionMass", Bath, quantity.Mass, "g", "oz", "mass of the bath", "", Plain},
	{"volume", Bath, quantity.Volume, "L", "qt", "volume of the bath", "", Plain},
	{"saltFraction", Bath, quantity.Share, "%", "", "share of salt by mass", "", Plain},
	{"anhydrousFraction", Bath, quantity.Share, "%", "", "share of anhydrous salt by mass", "", Plain},
	{"suggestedStrength", Bath, quantity.Density, "g/L", "", "suggested strength", "", Plain},
	{"molarity", Bath, quantity.Molarity, "mol/L", "", "molarity", "", Plain},
	{"perLitre", Bath, quantity.Density, "g/L", "", "salt per litre of bath", "", Plain},
	{"perLitreWater", Bath, quantity.PerWater, "g/L", "", "salt per litre of water", "g/L water", Plain},
	{"solutionDensity", Bath, quantity.Density, "g/mL", "", "density of the bath", "", Plain},
	{"conductivity", Bath, quantity.Conductivity, "mS/cm", "", "conductivity", "", Plain},
	{"saturation", Bath, quantity.Share, "%", "", "share of saturation", "", Plain},
	{"undissolved", Bath, quantity.Mass, "g", "oz", "salt left undissolved", "", Plain},
	{"waterToDissolve", Bath, quantity.Volume, "L", "qt", "water that dissolves it all", "", Plain},
	{"metalInBath", Bath, quantity.Mass, "g", "oz", "metal in the bath", "", Plain},
	{"crystals", Bath, quantity.Mass, "g", "oz", "crystals that drop when cold", "", Plain},
	{"saturatesAt", Bath, quantity.Temperature, "C", "F", "temperature of saturation", "", Plain},

	{"cathodeDeposit", Keep, quantity.Mass, "g", "oz", "metal plated on the cathode", "", Plain},
	{"bathMetalLost", Keep, quantity.Mass, "g", "oz", "metal the bath loses", "", Plain},
	{"bathDrop", Keep, quantity.Share, "%", "", "how much the bath drops in one run", "", Plain},
	{"bathDropAll", Keep, quantity.Share, "%", "", "how much it has dropped in all", "", Plain},
	{"saltToAdd", Keep, quantity.Mass, "g", "oz", "salt to add back", "", Plain},
	{"zincGained", Keep, quantity.Mass, "g", "oz", "zinc the bath gains", "", Plain},
	{"nickelGained", Keep, quantity.Mass, "g", "oz", "nickel the bath gains", "", Plain},
	{"copperGained", Keep, quantity.Mass, "g", "oz", "copper the bath gains", "", Plain},
	{"zincInBath", Keep, quantity.Density, "g/L", "", "zinc in the bath", "", Plain},
	{"nickelInBath", Keep, quantity.Density, "g/L", "", "nickel in the bath", "", Plain},
	{"copperInBath", Keep, quantity.Density, "g/L", "", "copper in the bath", "", Plain},
	{"leadInBath", Keep, quantity.Density, "g/L", "", "lead in the bath", "", Plain},
	{"sludge", Keep, quantity.Mass, "g", "oz", "sludge", "", Plain},
	{"hydrogen", Keep, quantity.Volume, "L", "qt", "hydrogen given off", "", Plain},
	{"piecesToTenth", Keep, quantity.Number, "", "", "such pieces to a tenth", "", Plain},
	{"strengthNow", Keep, quantity.Density, "g/L", "", "strength now", "", Plain},
	{"waterToAdd", Keep, quantity.Volume, "L", "qt", "water to add", "", Plain},
	{"addSalt", Keep, quantity.Mass, "g", "oz", "salt to strengthen it", "", Plain},
	{"addWater", Keep, quantity.Volume, "L", "qt", "water to weaken it", "", Plain},
	{"partA", Keep, quantity.Mass, "g", "oz", "of the one bath", "", Plain},
	{"partB", Keep, quantity.Mass, "g", "oz", "of the other bath", "", Plain},
	{"strengthByGravity", Keep, quantity.Density, "g/L", "", "strength by the hydrometer", "", Plain},

	{"depthNow", Course, quantity.Length, "mm", "in", "depth so far, by weight", "", Plain},
	{"efficiencyNow", Course, quantity.Share, "%", "", "efficiency of this run", "", Plain},
	{"timeLeft", Course, quantity.Time, "min", "", "time left", "", Plain},
	{"weightAtTarget", Course, quantity.Mass, "g", "oz", "weight at the target", "", Plain},
	{"chargeSoFar", Course, quantity.Charge, "A.h", "", "charge so far", "", Plain},
	{"depthSoFar", Course, quantity.Length, "mm", "in", "depth so far, by the ammeter", "", Plain},
	{"readyIn", Course, quantity.Time, "min", "", "ready in", "", Plain},
	{"halfAt", Course, quantity.Time, "min", "", "half time at", "", ClockTime},
	{"readyAt", Course, quantity.Time, "min", "", "ready at", "", ClockTime},
	{"weightAtHalf", Course, quantity.Mass, "g", "oz", "weight at half time", "", Plain},
}
