package field

import "saltbite/calc/quantity"

// Form is how a field's text is to be read.
type Form uint8

const (
	Amount     Form = iota // a number with a unit of one of Kinds
	Whole                  // a whole number
	Choice                 // one of Choices
	Words                  // a name, read by the room that knows such names
	Clock                  // a time of day
	Series                 // pairs of amounts: of Kinds[0] with the unit Bare, of Kinds[1] with Second
	Hydrometer             // a hydrometer's reading: a bare number, a density, or degrees Baume
)

// Field is a row of the vocabulary: all that a reader, a form and a list of
// attributes must know of it but its label and help, which are the page's words.
type Field struct {
	Name    string
	Part    Part
	Form    Form
	Kinds   []quantity.Kind
	Bare    string   // unit symbol of a bare number; "" if a unit must be typed, or the field has no unit
	Units   []string // the page's unit control, the bare unit first; none: no control
	USUnit  string   // which of Units the page starts with in US units; "": the bare one
	Default string   // what a blank means, in the bare unit; "": not given
	Min     float64  // least and most allowed, in the unit of Limit; of Words, the most characters
	Max     float64
	Limit   string  // unit of Min and Max
	Bounds  []Bound // instead of Min and Max where the kinds differ
	Second  string  // unit symbol of a bare second number of a Series
	Choices []string
	Also    []Synonym // other words for a choice
	Noun    string    // with its article, as errors quote it
	Example string    // a text that can be read, as errors quote it
}

// Synonym is another word for a choice.
type Synonym struct{ Word, Choice string }

// Bound is the least and the most that a field takes of one of its kinds.
type Bound struct {
	Min, Max float64
	Unit     string
}

var (
	lengths       = []string{"mm", "cm", "in"}
	gauged        = []string{"mm", "cm", "in", "ga"}
	areas         = []string{"cm2", "mm2", "in2"}
	volumes       = []string{"L", "mL", "qt", "gal"}
	masses        = []string{"g", "kg", "oz", "lb"}
	percent       = []string{"%"}
	strengthKinds = kinds(quantity.Density, quantity.PerWater, quantity.Share, quantity.Molarity, quantity.Saturation)
	strengths     = []string{"g/L", "g/L water", "%", "mol/L", "% sat"}

	strengthBounds = []Bound{{0, 5000, "g/L"}, {0, 1e5, "g/L water"}, {0, 100, "%"}, {0, 100, "mol/L"}, {0, 1000, "% sat"}}
)

func kinds(k ...quantity.Kind) []quantity.Kind { return k }

// length is the row of a size in the plane, from a micrometre to ten metres.
func length(name string, part Part, noun, example string) Field {
	return size(name, part, lengths, noun, example)
}

// thickness is the row of a sheet's or a wire's, by its size or by its gauge.
func thickness(name string, part Part, noun string) Field {
	return size(name, part, gauged, noun, "18 ga")
}

// size is the row of a length within those limits.
func size(name string, part Part, units []string, noun, example string) Field {
	return Field{Name: name, Part: part, Kinds: kinds(quantity.Length), Bare: "mm", Units: units, USUnit: "in",
		Min: 1e-3, Max: 1e4, Limit: "mm", Noun: noun, Example: example}
}

// mass is the row of something weighed, from a milligram to a tonne.
func mass(name string, part Part, noun, example string) Field {
	return Field{Name: name, Part: part, Kinds: kinds(quantity.Mass), Bare: "g", Units: masses, USUnit: "oz",
		Min: 1e-3, Max: 1e6, Limit: "g", Noun: noun, Example: example}
}

// bathVolume and bathStrength are the rows of a bath that is there already.
func bathVolume(name, noun, example string) Field {
	return Field{Name: name, Part: PartKeep, Kinds: kinds(quantity.Volume), Bare: "L", Units: volumes, USUnit: "qt",
		Min: 1e-4, Max: 1e5, Limit: "L", Noun: noun, Example: example}
}

func bathStrength(name, noun string) Field {
	return Field{Name: name, Part: PartKeep, Kinds: strengthKinds, Bare: "g/L", Units: strengths,
		Bounds: strengthBounds, Noun: noun, Example: "200 g/L"}
}

// temperature is the row of a bath's warmth, while it is liquid water.
func temperature(name string, fallback, noun, example string) Field {
	return Field{Name: name, Part: PartBath, Kinds: kinds(quantity.Temperature), Bare: "C", Units: []string{"C", "F"}, USUnit: "F",
		Default: fallback, Min: 0, Max: 100, Limit: "C", Noun: noun, Example: example}
}

// yesOrNo is the row of a question.
func yesOrNo(name string, part Part, fallback, noun, example string) Field {
	return Field{Name: name, Part: part, Form: Choice, Default: fallback, Choices: []string{"yes", "no"}, Noun: noun, Example: example}
}

// span is the row of a length of time in a class.
func span(name, noun, example string) Field {
	return Field{Name: name, Part: PartClass, Kinds: kinds(quantity.Time), Bare: "min", Units: []string{"min", "h"},
		Min: 0, Max: 1e6, Limit: "min", Noun: noun, Example: example}
}

// price is the row of a price, in whatever money.
func price(name, noun string) Field {
	return Field{Name: name, Part: PartClass, Kinds: kinds(quantity.Number), Min: 0, Max: 1e9, Noun: noun, Example: "12"}
}

// Fields is the vocabulary, in the order of the job.
var Fields = [...]Field{
	{Name: "metal", Part: PartMetal, Form: Words, Noun: "a metal", Example: "cartridge brass"},
	{Name: "metalDensity", Part: PartMetal, Kinds: kinds(quantity.Density), Bare: "g/cm3", Units: []string{"g/cm3"},
		Min: 1, Max: 25, Limit: "g/cm3", Noun: "a metal's density", Example: "8.1 g/cm3"},

	length("width", PartDesign, "a width", "60 mm"),
	length("height", PartDesign, "a height", "40 mm"),
	length("diameter", PartDesign, "a diameter", "30 mm"),
	{Name: "open", Part: PartDesign, Kinds: kinds(quantity.Share), Bare: "%", Units: percent,
		Min: 1e-3, Max: 100, Limit: "%", Noun: "an exposed share of the face", Example: "40 %"},
	{Name: "area", Part: PartDesign, Kinds: kinds(quantity.Area), Bare: "cm2", Units: areas, USUnit: "in2",
		Min: 1e-6, Max: 1e6, Limit: "cm2", Noun: "an exposed area", Example: "12 cm2"},
	{Name: "sides", Part: PartDesign, Form: Whole, Kinds: kinds(quantity.Number), Default: "1", Min: 1, Max: 2,
		Noun: "a number of sides, 1 or 2,", Example: "2"},
	{Name: "pieces", Part: PartDesign, Form: Whole, Kinds: kinds(quantity.Number), Default: "1", Min: 1, Max: 10000,
		Noun: "a whole number of pieces", Example: "4"},
	{Name: "edge", Part: PartDesign, Kinds: kinds(quantity.Length), Bare: "mm", Units: lengths, USUnit: "in",
		Min: 0, Max: 1e7, Limit: "mm", Noun: "a length of resist outline", Example: "800 mm"},
	{Name: "extra", Part: PartDesign, Kinds: kinds(quantity.Area), Bare: "cm2", Units: areas, USUnit: "in2",
		Min: 0, Max: 1e6, Limit: "cm2", Noun: "an area of other exposed metal", Example: "1.5 cm2"},

	thickness("hanger", PartDesign, "a hanging wire's gauge or diameter"),
	length("hangerLength", PartDesign, "a length of wire in the bath", "25 mm"),
	{Name: "hangerMetal", Part: PartDesign, Form: Choice,
		Choices: []string{"copper", "brass", "bronze", "silver", "aluminium", "stainless", "plated", "galvanised"},
		Also: []Synonym{{"aluminum", "aluminium"}, {"stainless steel", "stainless"}, {"steel", "stainless"}, {"nickel plated", "plated"},
			{"chrome plated", "plated"}, {"galvanized", "galvanised"}, {"galvanised steel", "galvanised"}, {"galvanized steel", "galvanised"},
			{"sterling", "silver"}, {"copper wire", "copper"}, {"brass wire", "brass"}},
		Noun: "the hanging wire's metal", Example: "copper"},
	length("bareEdges", PartDesign, "a length of exposed edge", "120 mm"),
	{Name: "back", Part: PartDesign, Kinds: kinds(quantity.Share), Bare: "%", Units: percent,
		Min: 0, Max: 100, Limit: "%", Noun: "an exposed share of the back", Example: "10 %"},

	{Name: "depth", Part: PartBite, Kinds: kinds(quantity.Length), Bare: "mm", Units: []string{"mm", "in"}, USUnit: "in",
		Min: 1e-6, Max: 100, Limit: "mm", Noun: "a depth", Example: "0.2 mm"},
	{Name: "density", Part: PartBite, Kinds: kinds(quantity.CurrentDensity), Bare: "mA/cm2", Units: []string{"mA/cm2", "A/dm2", "A/ft2"},
		Min: 1e-4, Max: 1e5, Limit: "mA/cm2", Noun: "a current density", Example: "30 mA/cm2"},
	{Name: "current", Part: PartBite, Kinds: kinds(quantity.Current), Bare: "A", Units: []string{"A", "mA"},
		Min: 1e-6, Max: 1e5, Limit: "A", Noun: "a current", Example: "0.25 A"},
	{Name: "time", Part: PartBite, Kinds: kinds(quantity.Time), Bare: "min", Units: []string{"min", "h"},
		Min: 1e-3, Max: 1e6, Limit: "min", Noun: "a running time", Example: "2 h 30"},
	{Name: "find", Part: PartBite, Form: Choice, Choices: []string{"depth", "time", "current", "area"},
		Noun: "what to find", Example: "time"},
	{Name: "efficiency", Part: PartBite, Kinds: kinds(quantity.Share), Bare: "%", Units: percent, Default: "100",
		Min: 1, Max: 200, Limit: "%", Noun: "a current efficiency", Example: "95 %"},
	{Name: "efficiencyLow", Part: PartBite, Kinds: kinds(quantity.Share), Bare: "%", Units: percent,
		Min: 1, Max: 200, Limit: "%", Noun: "the least efficiency of this bench's runs", Example: "92 %"},
	{Name: "efficiencyHigh", Part: PartBite, Kinds: kinds(quantity.Share), Bare: "%", Units: percent,
		Min: 1, Max: 200, Limit: "%", Noun: "the most efficiency of this bench's runs", Example: "99 %"},
	{Name: "undercut", Part: PartBite, Kinds: kinds(quantity.Number), Default: "0.5", Min: 0, Max: 10,
		Noun: "an undercut ratio, sideways over depth,", Example: "0.5"},

	{Name: "bites", Part: PartBite, Form: Series, Kinds: kinds(quantity.Length, quantity.Area), Bare: "mm", Second: "cm2",
		Noun: "a list of steps, each a depth and its exposed area,", Example: "0.05 12; 0.10 9"},

	{Name: "sheet", Part: PartSheet, Kinds: kinds(quantity.Length), Bare: "mm", Units: gauged, USUnit: "in",
		Min: 1e-3, Max: 1e3, Limit: "mm", Noun: "a sheet's thickness", Example: "18 ga"},
	{Name: "keep", Part: PartSheet, Kinds: kinds(quantity.Share, quantity.Length), Units: []string{"%", "mm", "in"}, Default: "50 %",
		Bounds: []Bound{{0, 99.9, "%"}, {0, 2e3, "mm"}}, Noun: "the least to leave, a share or a thickness,", Example: "0.5 mm"},
	length("line", PartSheet, "the finest line of resist", "0.4 mm"),
	length("space", PartSheet, "the finest gap", "0.3 mm"),

	{Name: "volts", Part: PartSupply, Kinds: kinds(quantity.Voltage), Bare: "V", Units: []string{"V"},
		Min: 1e-3, Max: 1000, Limit: "V", Noun: "the supply's voltage", Example: "3 V"},
	{Name: "amps", Part: PartSupply, Kinds: kinds(quantity.Current), Bare: "A", Units: []string{"A", "mA"},
		Min: 1e-4, Max: 1e5, Limit: "A", Noun: "the most amperes of the supply", Example: "2 A"},
	length("gap", PartSupply, "the distance to the cathode", "60 mm"),
	{Name: "cathode", Part: PartSupply, Kinds: kinds(quantity.Area), Bare: "cm2", Units: areas, USUnit: "in2",
		Min: 1e-4, Max: 1e6, Limit: "cm2", Noun: "the cathode's area", Example: "60 cm2"},
	{Name: "position", Part: PartSupply, Form: Choice, Default: "hanging", Choices: []string{"hanging", "face-down", "face-up"},
		Also: []Synonym{{"face down", "face-down"}, {"face up", "face-up"}, {"vertical", "hanging"}},
		Noun: "how the work is placed", Example: "face-down"},
	{Name: "stir", Part: PartSupply, Form: Choice, Default: "still", Choices: []string{"still", "stirred"},
		Noun: "whether the bath is stirred", Example: "stirred"},
	thickness("wire", PartSupply, "the cable's gauge or diameter"),
	{Name: "wireLength", Part: PartSupply, Kinds: kinds(quantity.Length), Bare: "m", Units: []string{"m", "ft"}, USUnit: "ft",
		Min: 1e-3, Max: 1e4, Limit: "m", Noun: "the cable's length, there and back,", Example: "2 m"},
	{Name: "wireMetal", Part: PartSupply, Form: Choice, Default: "copper", Choices: []string{"copper", "aluminium"},
		Also: []Synonym{{"aluminum", "aluminium"}}, Noun: "the cable's metal", Example: "copper"},

	{Name: "salt", Part: PartBath, Form: Words, Noun: "a salt", Example: "copper sulfate crystals"},
	{Name: "strength", Part: PartBath, Kinds: strengthKinds,
		Bare: "g/L", Units: strengths, Bounds: strengthBounds, Noun: "a strength", Example: "200 g/L"},
	{Name: "volume", Part: PartBath, Kinds: kinds(quantity.Volume), Bare: "L", Units: volumes, USUnit: "qt",
		Min: 1e-4, Max: 1e5, Limit: "L", Noun: "a volume of bath", Example: "2 L"},
	length("vesselLength", PartBath, "the tank's length", "250 mm"),
	length("vesselWidth", PartBath, "the tank's width", "150 mm"),
	length("vesselDiameter", PartBath, "the tank's diameter", "180 mm"),
	length("fill", PartBath, "the depth of the liquid", "100 mm"),
	{Name: "assay", Part: PartBath, Kinds: kinds(quantity.Share), Bare: "%", Units: percent, Default: "100",
		Min: 1, Max: 100, Limit: "%", Noun: "a purity", Example: "98 %"},
	temperature("temperature", "20", "the bath's temperature", "20 C"),
	temperature("coldest", "", "the coldest storage", "5 C"),
	{Name: "mixed", Part: PartBath, Form: Words, Max: 40, Noun: "the day the bath was mixed", Example: "3 May"},
	mass("saltInHand", PartBath, "a mass of salt", "500 g"),
	{Name: "waterInHand", Part: PartBath, Kinds: kinds(quantity.Mass, quantity.Volume), Bare: "g", Units: []string{"g", "kg", "L", "mL", "qt", "cup", "oz", "lb"}, USUnit: "qt",
		Bounds: []Bound{{1e-3, 1e6, "g"}, {1e-6, 1e3, "L"}}, Noun: "the water you have, by weight or by volume,", Example: "2 L"},

	{Name: "etched", Part: PartKeep, Kinds: kinds(quantity.Mass), Bare: "g", Units: masses, USUnit: "oz",
		Min: 0, Max: 1e6, Limit: "g", Noun: "the metal etched in this bath so far", Example: "40 g"},
	bathVolume("volumeNow", "the volume now", "1.8 L"),
	bathStrength("haveStrength", "the strength of the bath"),
	bathVolume("haveVolume", "the volume of the bath", "2 L"),
	bathStrength("wantStrength", "the strength wanted"),
	bathStrength("strengthA", "the strength of bath A"),
	bathStrength("strengthB", "the strength of bath B"),
	{Name: "gravity", Part: PartKeep, Form: Hydrometer, Kinds: kinds(quantity.Number, quantity.Density),
		Min: 0.9, Max: 3, Noun: "a hydrometer's reading", Example: "1.14"},

	mass("before", PartCourse, "the piece's weight before", "24.60 g"),
	mass("after", PartCourse, "the piece's weight now", "23.85 g"),
	{Name: "resolution", Part: PartCourse, Kinds: kinds(quantity.Mass), Bare: "g", Units: masses, USUnit: "oz",
		Min: 1e-6, Max: 1e4, Limit: "g", Noun: "the smallest step that the balance shows", Example: "0.01 g"},
	{Name: "readings", Part: PartCourse, Form: Series, Kinds: kinds(quantity.Time, quantity.Current), Bare: "h", Second: "A",
		Noun: "a list of readings, each a time and the amperes,", Example: "0:00 0.30; 0:30 0.28"},
	{Name: "elapsed", Part: PartCourse, Kinds: kinds(quantity.Time), Bare: "min", Units: []string{"min", "h"},
		Min: 0, Max: 1e6, Limit: "min", Noun: "how long the current has been on", Example: "1 h 10"},
	{Name: "start", Part: PartCourse, Form: Clock, Noun: "the time of switching on", Example: "14:05"},
	{Name: "paused", Part: PartCourse, Kinds: kinds(quantity.Time), Bare: "min", Units: []string{"min", "h"},
		Min: 0, Max: 1e6, Limit: "min", Noun: "how long the current was off", Example: "10 min"},

	{Name: "seen", Part: PartTrouble, Form: Choice,
		Choices: []string{"faint", "deep", "lifted", "fuzzy", "rough", "pink", "black", "uneven", "falling", "nothing", "wire"},
		Also: []Synonym{{"too faint", "faint"}, {"too deep", "deep"}, {"resist lifted", "lifted"}, {"fuzzy edges", "fuzzy"},
			{"one side deeper", "uneven"}, {"current falls", "falling"}, {"nothing happens", "nothing"}, {"wire eaten", "wire"}},
		Noun: "what is seen of the piece", Example: "faint"},

	{Name: "black", Part: PartArtwork, Form: Choice, Default: "keeps", Choices: []string{"keeps", "etches"},
		Also: []Synonym{{"resist", "keeps"}, {"etched", "etches"}}, Noun: "what black stands for", Example: "etches"},
	yesOrNo("mirror", PartArtwork, "no", "whether the picture is mirrored", "yes"),
	{Name: "threshold", Part: PartArtwork, Kinds: kinds(quantity.Share), Bare: "%", Units: percent,
		Min: 0, Max: 100, Limit: "%", Noun: "a share of white", Example: "50 %"},
	{Name: "corners", Part: PartArtwork, Form: Words, Max: 120, Noun: "the sheet's four corners in pixels, clockwise from the top left,", Example: "12 30; 980 44; 970 700; 20 690"},
	{Name: "ruler", Part: PartArtwork, Form: Words, Max: 60, Noun: "the two ends of a ruler in pixels of the picture", Example: "120 340; 980 352"},
	length("rulerLength", PartArtwork, "how long the ruler is from end to end", "50 mm"),
	{Name: "along", Part: PartArtwork, Form: Words, Max: 40, Noun: "the two ends of a line in thousandths of the picture's width and height", Example: "100 500; 900 500"},
	{Name: "dpi", Part: PartArtwork, Kinds: kinds(quantity.Number), Default: "600", Min: 30, Max: 4800, Noun: "a printer's dots per inch", Example: "600"},
	{Name: "copies", Part: PartArtwork, Form: Whole, Kinds: kinds(quantity.Number), Default: "1", Min: 1, Max: 1000, Noun: "a whole number of copies", Example: "6"},
	{Name: "paper", Part: PartArtwork, Form: Choice, Choices: []string{"A4", "letter"}, Noun: "a paper", Example: "A4"},
	{Name: "islands", Part: PartArtwork, Form: Whole, Kinds: kinds(quantity.Number), Min: 0, Max: 1e7, Noun: "a number of separate exposed areas", Example: "12"},
	{Name: "holes", Part: PartArtwork, Form: Whole, Kinds: kinds(quantity.Number), Min: 0, Max: 1e7, Noun: "a number of spots of resist in them", Example: "3"},
	{Name: "least", Part: PartArtwork, Kinds: kinds(quantity.Share), Bare: "%", Units: percent,
		Min: 1, Max: 100, Limit: "%", Noun: "the shallowest depth over the mean", Example: "85 %"},
	{Name: "resistance", Part: PartArtwork, Kinds: kinds(quantity.Resistance), Bare: "ohm", Units: []string{"ohm"},
		Min: 1e-6, Max: 1e9, Limit: "ohm", Noun: "the bath's resistance", Example: "2.4 ohm"},
	{Name: "until", Part: PartArtwork, Form: Choice, Default: "mean", Choices: []string{"mean", "least"},
		Noun: "what the depth is reached by", Example: "least"},

	length("depthFound", PartLog, "the depth measured", "0.18 mm"),
	length("lineFound", PartLog, "the width of the line measured", "0.3 mm"),
	length("spaceFound", PartLog, "the width of the gap measured", "0.5 mm"),
	yesOrNo("use", PartLog, "yes", "whether this run counts", "no"),

	{Name: "densityLimit", Part: PartClass, Kinds: kinds(quantity.CurrentDensity), Bare: "mA/cm2", Units: []string{"mA/cm2", "A/dm2", "A/ft2"},
		Min: 1e-4, Max: 1e5, Limit: "mA/cm2", Noun: "the densest current allowed", Example: "30 mA/cm2"},
	span("session", "the time there is", "3 h"),
	span("changeover", "the time between rounds", "10 min"),
	{Name: "supplies", Part: PartClass, Form: Whole, Kinds: kinds(quantity.Number), Default: "1", Min: 1, Max: 100, Noun: "a whole number of supplies", Example: "2"},
	price("priceSalt", "the price of a kilogram of salt"),
	price("priceMetal", "the price of a kilogram of metal"),
	price("priceHour", "the price of an hour"),

	{Name: "ask", Part: PartPage, Form: Choice, Choices: []string{"time", "supply", "bath", "check"},
		Noun: "the question that comes first", Example: "supply"},
	{Name: "units", Part: PartPage, Form: Choice, Choices: []string{"metric", "us"}, Default: "metric",
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
	Estimated                     // a number in two figures and its unit
)

// In turns a value in SI into the answer's fixed unit.
func (a *Answer) In(si float64) float64 {
	if a.Kind == quantity.Number {
		return si
	}
	return quantity.In(si, a.Unit)
}

// AnswerName is the name of an answer: its place in Answers.
type AnswerName uint8

// Row returns the answer's row of the table.
func (n AnswerName) Row() *Answer { return &Answers[n] }

// Answers is the list of all answers, in the order of the job.
var Answers = [...]Answer{
	{"depth", PartBite, quantity.Length, "mm", "in", "depth", "", Plain},
	{"time", PartBite, quantity.Time, "min", "", "time", "", Plain},
	{"current", PartBite, quantity.Current, "A", "", "current", "", Plain},
	{"area", PartBite, quantity.Area, "cm2", "in2", "exposed area of one piece", "", Plain},
	{"totalArea", PartBite, quantity.Area, "cm2", "in2", "exposed in all", "", Plain},
	{"density", PartBite, quantity.CurrentDensity, "mA/cm2", "", "current density", "", Plain},
	{"charge", PartBite, quantity.Charge, "A.h", "", "charge", "", Plain},
	{"removed", PartBite, quantity.Mass, "g", "oz", "metal dissolved", "", Plain},
	{"removedEach", PartBite, quantity.Mass, "g", "oz", "metal removed from one piece", "", Plain},
	{"equivalent", PartBite, quantity.Equivalent, "g/(A.h)", "", "electrochemical equivalent", "", Plain},
	{"rate", PartBite, quantity.Rate, "mm/h", "in/h", "etch rate", "", Plain},

	{"suggestedDensity", PartBite, quantity.CurrentDensity, "mA/cm2", "", "suggested current density", "", Plain},
	{"suggestedCurrent", PartBite, quantity.Current, "A", "", "suggested current", "", Plain},
	{"suggestedTime", PartBite, quantity.Time, "min", "", "suggested time", "", Plain},
	{"extraFound", PartDesign, quantity.Area, "cm2", "in2", "other exposed metal", "", Plain},
	{"depthIfForgotten", PartDesign, quantity.Length, "mm", "in", "depth if that is left out", "", Plain},
	{"hangerLeft", PartDesign, quantity.Length, "mm", "in", "wire left", "", Plain},

	{"left", PartSheet, quantity.Length, "mm", "in", "sheet left", "", Plain},
	{"leftShare", PartSheet, quantity.Share, "%", "", "share of the sheet left", "", Plain},
	{"deepest", PartSheet, quantity.Length, "mm", "in", "deepest safe etch", "", Plain},
	{"thinnestSheet", PartSheet, quantity.Length, "mm", "in", "thinnest safe sheet", "", Plain},
	{"thinnestGauge", PartSheet, quantity.Number, "", "", "nearest safe gauge", "", GaugeNumber},
	{"lineLeft", PartSheet, quantity.Length, "mm", "in", "what the finest line keeps", "", Plain},
	{"narrowestLine", PartSheet, quantity.Length, "mm", "in", "line that is just gone", "", Plain},
	{"deepestForLine", PartSheet, quantity.Length, "mm", "in", "depth at which the line is gone", "", Plain},
	{"spaceBecomes", PartSheet, quantity.Length, "mm", "in", "what the gap widens to", "", Plain},

	{"filmDensity", PartSupply, quantity.CurrentDensity, "mA/cm2", "", "density above which it gets rough", "", Estimated},
	{"cathodeLimit", PartSupply, quantity.CurrentDensity, "mA/cm2", "", "cathode's limit", "", Estimated},
	{"cathodeNeeded", PartSupply, quantity.Area, "cm2", "in2", "cathode needed", "", Estimated},
	{"bathResistance", PartSupply, quantity.Resistance, "ohm", "", "resistance of the bath", "", Estimated},
	{"cellVolts", PartSupply, quantity.Voltage, "V", "", "volts needed", "", Estimated},
	{"currentAtVolts", PartSupply, quantity.Current, "A", "", "current if not limited", "", Estimated},
	{"supplyWatts", PartSupply, quantity.Power, "W", "", "power from the supply", "", Plain},
	{"ballast", PartSupply, quantity.Resistance, "ohm", "", "series resistor", "", Estimated},
	{"ballastWatts", PartSupply, quantity.Power, "W", "", "watts of the series resistor", "", Estimated},
	{"wireDrop", PartSupply, quantity.Voltage, "V", "", "volts lost in the cable", "", Plain},
	{"wireLimit", PartSupply, quantity.Current, "A", "", "most for the cable", "", Plain},
	{"warming", PartSupply, quantity.HeatingRate, "K/h", "", "warming of the bath", "", Estimated},
	{"cathodeDensity", PartSupply, quantity.CurrentDensity, "mA/cm2", "", "density at the cathode", "", Plain},
	{"depthThatFits", PartSupply, quantity.Length, "mm", "in", "depth that the supply allows", "", Plain},
	{"timeThatFits", PartSupply, quantity.Time, "min", "", "time that the supply needs", "", Plain},
	{"piecesThatFit", PartSupply, quantity.Number, "", "", "pieces that the supply allows", "", Plain},

	{"saltMass", PartBath, quantity.Mass, "g", "oz", "salt", "", Plain},
	{"waterMass", PartBath, quantity.Mass, "g", "oz", "water by weight", "", Plain},
	{"waterVolume", PartBath, quantity.Volume, "L", "qt", "water", "", Plain},
	{"solutionMass", PartBath, quantity.Mass, "g", "oz", "mass of the bath", "", Plain},
	{"volume", PartBath, quantity.Volume, "L", "qt", "volume of the bath", "", Plain},
	{"saltFraction", PartBath, quantity.Share, "%", "", "share of salt by mass", "", Plain},
	{"anhydrousFraction", PartBath, quantity.Share, "%", "", "share of anhydrous salt by mass", "", Plain},
	{"suggestedStrength", PartBath, quantity.Density, "g/L", "", "suggested strength", "", Plain},
	{"molarity", PartBath, quantity.Molarity, "mol/L", "", "molarity", "", Plain},
	{"perLitre", PartBath, quantity.Density, "g/L", "", "salt per litre of bath", "", Plain},
	{"perLitreWater", PartBath, quantity.PerWater, "g/L", "", "salt per litre of water", "g/L water", Plain},
	{"solutionDensity", PartBath, quantity.Density, "g/mL", "", "density of the bath", "", Plain},
	{"conductivity", PartBath, quantity.Conductivity, "mS/cm", "", "conductivity", "", Plain},
	{"saturation", PartBath, quantity.Share, "%", "", "share of saturation", "", Plain},
	{"undissolved", PartBath, quantity.Mass, "g", "oz", "salt left undissolved", "", Plain},
	{"waterToDissolve", PartBath, quantity.Volume, "L", "qt", "water that dissolves it all", "", Plain},
	{"metalInBath", PartBath, quantity.Mass, "g", "oz", "metal in the bath", "", Plain},
	{"crystals", PartBath, quantity.Mass, "g", "oz", "crystals that drop when cold", "", Plain},
	{"saturatesAt", PartBath, quantity.Temperature, "C", "F", "temperature of saturation", "", Plain},

	{"cathodeDeposit", PartKeep, quantity.Mass, "g", "oz", "metal plated on the cathode", "", Plain},
	{"bathMetalLost", PartKeep, quantity.Mass, "g", "oz", "metal the bath loses", "", Plain},
	{"bathDrop", PartKeep, quantity.Share, "%", "", "how much weaker this run makes the bath", "", Plain},
	{"bathDropAll", PartKeep, quantity.Share, "%", "", "how much weaker it is in total", "", Plain},
	{"saltToAdd", PartKeep, quantity.Mass, "g", "oz", "salt to add for this run", "", Plain},
	{"saltToAddAll", PartKeep, quantity.Mass, "g", "oz", "salt to add in total", "", Plain},
	{"zincGained", PartKeep, quantity.Mass, "g", "oz", "zinc the bath gains", "", Plain},
	{"nickelGained", PartKeep, quantity.Mass, "g", "oz", "nickel the bath gains", "", Plain},
	{"copperGained", PartKeep, quantity.Mass, "g", "oz", "copper the bath gains", "", Plain},
	{"zincInBath", PartKeep, quantity.Density, "g/L", "", "zinc in the bath", "", Plain},
	{"nickelInBath", PartKeep, quantity.Density, "g/L", "", "nickel in the bath", "", Plain},
	{"copperInBath", PartKeep, quantity.Density, "g/L", "", "copper in the bath", "", Plain},
	{"leadInBath", PartKeep, quantity.Density, "g/L", "", "lead in the bath", "", Plain},
	{"sludge", PartKeep, quantity.Mass, "g", "oz", "sludge", "", Plain},
	{"hydrogen", PartKeep, quantity.Volume, "L", "qt", "hydrogen given off", "", Plain},
	{"piecesToTenth", PartKeep, quantity.Number, "", "", "pieces per 10 % loss", "", Plain},
	{"strengthNow", PartKeep, quantity.Density, "g/L", "", "strength now", "", Plain},
	{"waterToAdd", PartKeep, quantity.Volume, "L", "qt", "water to add", "", Plain},
	{"addSalt", PartKeep, quantity.Mass, "g", "oz", "salt to strengthen it", "", Plain},
	{"addWater", PartKeep, quantity.Volume, "L", "qt", "water to weaken it", "", Plain},
	{"partA", PartKeep, quantity.Mass, "g", "oz", "from bath A", "", Plain},
	{"partB", PartKeep, quantity.Mass, "g", "oz", "from bath B", "", Plain},
	{"strengthByGravity", PartKeep, quantity.Density, "g/L", "", "strength by the hydrometer", "", Plain},

	{"depthNow", PartCourse, quantity.Length, "mm", "in", "etched so far, by weight", "", Plain},
	{"efficiencyNow", PartCourse, quantity.Share, "%", "", "efficiency of this run", "", Plain},
	{"timeLeft", PartCourse, quantity.Time, "min", "", "time left", "", Plain},
	{"weightAtTarget", PartCourse, quantity.Mass, "g", "oz", "weight when done", "", Plain},
	{"chargeSoFar", PartCourse, quantity.Charge, "A.h", "", "charge so far", "", Plain},
	{"depthSoFar", PartCourse, quantity.Length, "mm", "in", "etched so far, by the ammeter", "", Plain},
	{"readyIn", PartCourse, quantity.Time, "min", "", "time left, by the ammeter", "", Plain},
	{"halfAt", PartCourse, quantity.Time, "min", "", "half-way at", "", ClockTime},
	{"readyAt", PartCourse, quantity.Time, "min", "", "ready at", "", ClockTime},
	{"weightAtHalf", PartCourse, quantity.Mass, "g", "oz", "weight half-way", "", Plain},
}

const fieldCount = len(Fields)

// AnswerCount is how many answers there are.
const AnswerCount = len(Answers)
