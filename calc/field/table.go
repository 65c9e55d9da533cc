package field

import "saltbite/calc/quantity"

// Form is how a field's text is to be read.
type Form uint8

const (
	Amount Form = iota // a number with a unit of one of Kinds
	Whole              // a whole number
	Choice             // one of Choices
	Words              // a name, read by the room that knows such names
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
	Min     float64  // least and most allowed, in the unit of Limit
	Max     float64
	Limit   string // unit of Min and Max
	Choices []string
	Noun    string // with its article, as errors quote it
	Example string // a text that can be read, as errors quote it
}

var (
	lengths   = []string{"mm", "cm", "in"}
	areas     = []string{"cm2", "mm2", "in2"}
	volumes   = []string{"L", "mL", "qt", "gal"}
	masses    = []string{"g", "kg", "oz", "lb"}
	percent   = []string{"%"}
	strengths = []string{"g/L", "g/L water", "%", "mol/L", "% sat"}
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
		Noun: "how many sides are etched", Example: "2"},
	{Name: "pieces", Part: Design, Form: Whole, Kinds: kinds(quantity.Number), Default: "1", Min: 1, Max: 10000,
		Noun: "a whole number of pieces", Example: "4"},
	{Name: "edge", Part: Design, Kinds: kinds(quantity.Length), Bare: "mm", Units: lengths, USUnit: "in",
		Min: 0, Max: 1e7, Limit: "mm", Noun: "a length of resist edge", Example: "800 mm"},
	{Name: "extra", Part: Design, Kinds: kinds(quantity.Area), Bare: "cm2", Units: areas, USUnit: "in2",
		Min: 0, Max: 1e6, Limit: "cm2", Noun: "an extra bare area", Example: "1.5 cm2"},

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
		Noun: "an undercut, side bite over depth", Example: "0.5"},

	{Name: "salt", Part: Bath, Form: Words, Noun: "a salt", Example: "copper sulfate crystals"},
	{Name: "strength", Part: Bath, Kinds: kinds(quantity.Density, quantity.PerWater, quantity.Share, quantity.Molarity, quantity.Saturation),
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
	mass("saltInHand", Bath, "a mass of salt", "500 g"),
	mass("waterInHand", Bath, "a mass of water", "2 kg"),

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
}

// Answers is the list of all answers, in the order of the job.
var Answers = []Answer{
	{"depth", Bite, quantity.Length, "mm", "in", "depth", ""},
	{"time", Bite, quantity.Time, "min", "", "time", ""},
	{"current", Bite, quantity.Current, "A", "", "current", ""},
	{"area", Bite, quantity.Area, "cm2", "in2", "open area of one piece", ""},
	{"totalArea", Bite, quantity.Area, "cm2", "in2", "bare metal in all", ""},
	{"density", Bite, quantity.CurrentDensity, "mA/cm2", "", "current density", ""},
	{"charge", Bite, quantity.Charge, "A.h", "", "charge", ""},
	{"removed", Bite, quantity.Mass, "g", "oz", "metal removed in all", ""},
	{"removedEach", Bite, quantity.Mass, "g", "oz", "metal removed from one piece", ""},
	{"equivalent", Bite, quantity.Equivalent, "g/(A.h)", "", "electrochemical equivalent", ""},
	{"rate", Bite, quantity.Rate, "mm/h", "in/h", "rate of bite", ""},

	{"saltMass", Bath, quantity.Mass, "g", "oz", "salt to weigh", ""},
	{"waterMass", Bath, quantity.Mass, "g", "oz", "water to weigh", ""},
	{"solutionMass", Bath, quantity.Mass, "g", "oz", "mass of the bath", ""},
	{"volume", Bath, quantity.Volume, "L", "qt", "volume of the bath", ""},
	{"saltFraction", Bath, quantity.Share, "%", "", "share of salt by mass", ""},
	{"anhydrousFraction", Bath, quantity.Share, "%", "", "share of anhydrous salt by mass", ""},
	{"molarity", Bath, quantity.Molarity, "mol/L", "", "molarity", ""},
	{"perLitre", Bath, quantity.Density, "g/L", "", "salt per litre of bath", ""},
	{"perLitreWater", Bath, quantity.PerWater, "g/L", "", "salt per litre of water", "g/L water"},
	{"solutionDensity", Bath, quantity.Density, "g/mL", "", "density of the bath", ""},
	{"conductivity", Bath, quantity.Conductivity, "mS/cm", "", "conductivity", ""},
	{"saturation", Bath, quantity.Share, "%", "", "share of saturation", ""},
	{"undissolved", Bath, quantity.Mass, "g", "oz", "salt left undissolved", ""},
	{"waterToDissolve", Bath, quantity.Volume, "L", "qt", "water that dissolves it all", ""},
	{"metalInBath", Bath, quantity.Mass, "g", "oz", "metal in the bath", ""},
	{"crystals", Bath, quantity.Mass, "g", "oz", "crystals that drop when cold", ""},
	{"saturatesAt", Bath, quantity.Temperature, "C", "F", "temperature of saturation", ""},
}
