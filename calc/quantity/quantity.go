// Package quantity reads numbers and units as people type them and prints them
// as the page shows them. Inside the program every quantity is in SI (m, s, A,
// kg, K, V, ohm); units exist only here, at the edge.
//
// # Reading
//
// Read takes what stands in a field, the unit that a bare number takes there,
// and the kinds of quantity that are wanted. Its grammar, after the text has
// been tidied (one kind of blank, dash, prime and micro sign, ASCII fractions):
//
//	text     = [sign] ( gauge | clock | compound | number [unit] )
//	sign     = "-" | "+"
//	number   = ( decimal [exponent] | fraction | digits ( " " | "-" ) fraction )
//	decimal  = digits [ mark [digits] ] | mark digits
//	mark     = "." | ","
//	exponent = ( "e" | "E" ) [sign] digits
//	fraction = digits "/" digits
//	gauge    = ( "#" | "no" | "awg" | "swg" ... ) count | [ prefix ] count ( "ga" | "awg" | "swg" ... )
//	count    = digits | digits "/0"
//	clock    = digits ":" digits [ ":" digits ] [ "h" ]
//	compound = number word { number word } number [word]
//	unit     = part [ ( "/" | "per" ) [digits] part ] [ "of" ] [ "water" | "bath" ] | part part "-1"
//	part     = word | ( "sq" | "cu" ) word | word ( "2" | "3" | "squared" | "cubed" )
//
// Both marks are decimal marks and nothing else: there are no thousands marks.
// A comma before exactly three final digits, after one to three digits that are
// not a lone 0 ("1,234"), has two readings and is asked about, never guessed. A compound ("2 h 30", "5' 6\"", "1 lb 3 oz") goes down in units of
// one kind; a last number without a unit counts minutes after hours, seconds
// after minutes, inches after feet.
//
// A share, which is typed in per cent, is read as a part of the whole where it is
// a fraction or in words ("1/3", "a third", "half"). A number under 1 without a %
// sign ("0.4") is asked about, and so is a fraction with one ("1/3 %"). Small
// numbers may be words before a unit ("two quarts", "half a litre").
//
// Words are read without regard to case, blanks and full stops, save where case
// tells units apart: M is molar and never metre where a strength is wanted, and
// "MA" is asked about, because a million amperes is not a thousandth.
//
// # Printing
//
// Print gives three significant figures, PrintEstimate two, and both give times in
// hours and minutes. What they print is off by at most half its last digit, and
// reads back: printing what was read from a printed text gives that text again.
//
// # What it can't catch
//
// A unit that was meant otherwise and is of the right kind: "oz" is always the
// avoirdupois ounce and "gal" the US gallon, in every country.
package quantity

// Kind is what a quantity measures.
type Kind uint8

const (
	Number         Kind = iota // a pure number: undercut, pieces
	Share                      // a fraction; read and printed in per cent
	Length                     // m
	Area                       // m2
	Volume                     // m3
	Mass                       // kg
	Time                       // s
	Temperature                // K
	Current                    // A
	CurrentDensity             // A/m2
	Voltage                    // V
	Power                      // W
	Resistance                 // ohm
	Charge                     // C
	Density                    // kg/m3: of a solid, of a liquid, and of salt per litre of finished bath
	PerWater                   // kg/m3: of salt per volume of water, "g/L water"
	Molarity                   // mol/m3
	Saturation                 // a fraction of the saturated strength, "% sat"
	Equivalent                 // kg/C
	Rate                       // m/s
	Conductivity               // S/m
	HeatingRate                // K/s

	// Kinds that no field has, of which composed units are made.
	amount      // mol
	conductance // S
)

// measures names each kind as an error does: "g measures mass".
var measures = [...]string{
	Number: "a number", Share: "a share", Length: "length", Area: "area", Volume: "volume", Mass: "mass",
	Time: "time", Temperature: "temperature", Current: "current", CurrentDensity: "current density",
	Voltage: "voltage", Power: "power", Resistance: "resistance", Charge: "charge",
	Density: "mass per volume", PerWater: "mass per volume of water", Molarity: "moles per volume",
	Saturation: "a share of saturation", Equivalent: "mass per charge", Rate: "length per time",
	Conductivity: "conductivity", HeatingRate: "temperature per time",
	amount: "an amount of substance", conductance: "conductance",
}

func (k Kind) String() string { return measures[k] }

// Code is the kind of mistake in what was typed, as the reply names it.
type Code string

const (
	BadNumber Code = "number"    // can't be read as a number
	BadUnit   Code = "unit"      // the wrong kind of unit, or a word that is not one
	Ambiguous Code = "ambiguous" // two readings, asked about
	OutOfSize Code = "range"     // absurdly large or small
)

// Error says why a text is no quantity.
type Error struct {
	Code     Code
	Reason   string   // lower case, a clause: "two decimal marks"
	Readings []string // of an Ambiguous text: what else to type, each of them clear; empty where none is likely
}

func (e *Error) Error() string { return e.Reason }

// mistake is an error without readings.
func mistake(code Code, reason string) *Error { return &Error{Code: code, Reason: reason} }

// asked is an error that offers readings.
func asked(reason string, readings ...string) *Error { return &Error{Ambiguous, reason, readings} }

// Quantity is what a text says.
type Quantity struct {
	Value float64 // in SI
	Kind  Kind
	Unit  string // symbol of the unit as understood: the one typed, else the bare one; "mm" for a gauge
}
