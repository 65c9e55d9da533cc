package quantity

import (
	"math"
	"testing"
)

// gnu says how the program GNU units writes a unit of the table or of the
// vocabulary, and in what SI unit to ask for it. Units that are here and not
// there, or the reverse, fail the test.
var gnu = map[string][2]string{
	"%": {"percent", "1"}, "% sat": {"percent", "1"}, "% w/v": {"g/(100 mL)", "kg/m^3"},
	"M": {"mol/L", "mol/m^3"}, "mM": {"mmol/L", "mol/m^3"}, "mol": {"mol", "mol"}, "mmol": {"mmol", "mol"},
	"mm": {"mm", "m"}, "cm": {"cm", "m"}, "dm": {"dm", "m"}, "m": {"m", "m"}, "um": {"um", "m"}, "nm": {"nm", "m"},
	"in": {"in", "m"}, "ft": {"ft", "m"}, "yd": {"yd", "m"}, "thou": {"mil", "m"},
	"L": {"L", "m^3"}, "mL": {"mL", "m^3"}, "cL": {"cL", "m^3"}, "dL": {"dL", "m^3"},
	"gal": {"gallon", "m^3"}, "qt": {"quart", "m^3"}, "US pt": {"pint", "m^3"}, "cup": {"cup", "m^3"}, "fl oz": {"floz", "m^3"},
	"imp gal": {"brgallon", "m^3"}, "imp qt": {"brquart", "m^3"}, "imp pt": {"brpint", "m^3"}, "imp cup": {"brcup", "m^3"}, "imp fl oz": {"brfloz", "m^3"},
	"g": {"g", "kg"}, "kg": {"kg", "kg"}, "mg": {"mg", "kg"}, "t": {"tonne", "kg"}, "oz": {"oz", "kg"}, "lb": {"lb", "kg"},
	"oz t": {"troyounce", "kg"}, "dwt": {"dwt", "kg"}, "grain": {"grain", "kg"}, "ct": {"carat", "kg"},
	"min": {"min", "s"}, "h": {"hour", "s"}, "s": {"s", "s"}, "d": {"day", "s"}, "week": {"week", "s"},
	"C": {"degC", "K"}, "F": {"degF", "K"}, "K": {"K", "K"},
	"A": {"A", "A"}, "mA": {"mA", "A"}, "uA": {"uA", "A"}, "V": {"V", "V"}, "mV": {"mV", "V"}, "kV": {"kV", "V"},
	"W": {"W", "W"}, "mW": {"mW", "W"}, "kW": {"kW", "W"},
	"ohm": {"ohm", "ohm"}, "mohm": {"mohm", "ohm"}, "kohm": {"kohm", "ohm"}, "Mohm": {"Mohm", "ohm"},
	"A.h": {"A hour", "C"}, "mA.h": {"mA hour", "C"}, "A.min": {"A min", "C"}, "A.s": {"A s", "C"},
	"S": {"S", "S"}, "mS": {"mS", "S"}, "uS": {"uS", "S"},

	"mm2": {"mm^2", "m^2"}, "cm2": {"cm^2", "m^2"}, "dm2": {"dm^2", "m^2"}, "m2": {"m^2", "m^2"}, "in2": {"in^2", "m^2"}, "ft2": {"ft^2", "m^2"}, "yd2": {"yd^2", "m^2"},
	"mm3": {"mm^3", "m^3"}, "cm3": {"cm^3", "m^3"}, "dm3": {"dm^3", "m^3"}, "m3": {"m^3", "m^3"}, "in3": {"in^3", "m^3"}, "ft3": {"ft^3", "m^3"},
	"mA/cm2": {"mA/cm^2", "A/m^2"}, "A/dm2": {"A/dm^2", "A/m^2"}, "A/ft2": {"A/ft^2", "A/m^2"}, "A/in2": {"A/in^2", "A/m^2"}, "A/m2": {"A/m^2", "A/m^2"}, "mA/in2": {"mA/in^2", "A/m^2"},
	"g/cm3": {"g/cm^3", "kg/m^3"}, "g/mL": {"g/mL", "kg/m^3"}, "kg/m3": {"kg/m^3", "kg/m^3"}, "kg/L": {"kg/L", "kg/m^3"}, "g/L": {"g/L", "kg/m^3"}, "mg/L": {"mg/L", "kg/m^3"},
	"g/100 mL": {"g/(100 mL)", "kg/m^3"}, "oz/gal": {"oz/gallon", "kg/m^3"}, "lb/gal": {"lb/gallon", "kg/m^3"}, "oz/imp gal": {"oz/brgallon", "kg/m^3"},
	"lb/ft3": {"lb/ft^3", "kg/m^3"}, "lb/in3": {"lb/in^3", "kg/m^3"}, "oz t/in3": {"troyounce/in^3", "kg/m^3"},
	"g/L water": {"g/L", "kg/m^3"}, "oz/gal water": {"oz/gallon", "kg/m^3"},
	"mol/L": {"mol/L", "mol/m^3"}, "mmol/L": {"mmol/L", "mol/m^3"}, "mol/dm3": {"mol/dm^3", "mol/m^3"},
	"g/(A.h)": {"g/(A hour)", "kg/C"}, "mg/(A.min)": {"mg/(A min)", "kg/C"}, "mg/(A.s)": {"mg/(A s)", "kg/C"},
	"mm/h": {"mm/hour", "m/s"}, "in/h": {"in/hour", "m/s"}, "um/min": {"um/min", "m/s"}, "thou/h": {"mil/hour", "m/s"},
	"mS/cm": {"mS/cm", "S/m"}, "S/m": {"S/m", "S/m"}, "uS/cm": {"uS/cm", "S/m"},
	"K/h": {"K/hour", "K/s"}, "C/h": {"degC/hour", "K/s"}, "F/h": {"degF/hour", "K/s"},
}

// everySymbol lists the symbols above and those of the table.
func everySymbol() []string {
	seen := map[string]bool{}
	var list []string
	for _, r := range table {
		if r.ask == "" && !seen[r.symbol] {
			seen[r.symbol], list = true, append(list, r.symbol)
		}
	}
	for symbol := range gnu {
		if !seen[symbol] {
			list = append(list, symbol)
		}
	}
	return list
}

func TestTableIsSound(t *testing.T) {
	seen := map[string]Kind{}
	for _, r := range table {
		if kind, twice := seen[r.symbol]; twice {
			t.Errorf("%q is the symbol of %v and of %v", r.symbol, kind, r.kind)
		}
		seen[r.symbol] = r.kind
	}
	for word, found := range byWord {
		kinds := map[Kind]bool{}
		for _, u := range found {
			if kinds[u.kind] {
				t.Errorf("%q means two units of %v", word, u.kind)
			}
			kinds[u.kind] = true
		}
		if word != fold(word) {
			t.Errorf("%q is not folded", word)
		}
	}
	for _, symbol := range everySymbol() {
		if _, ok := gnu[symbol]; !ok {
			t.Errorf("%q is not checked against GNU units", symbol)
		}
	}
}

func TestInReversesOf(t *testing.T) {
	for _, symbol := range everySymbol() {
		for _, x := range []float64{1, 0.2, 0.3, 7, 60, 123.456, 1e-9, 1e9} {
			back := In(Of(x, symbol), symbol)
			slack := 4e-16 * math.Max(x, math.Abs(must(symbol).zero))
			if math.Abs(back-x) > 2*slack {
				t.Errorf("%v %s comes back as %v", x, symbol, back)
			}
		}
	}
}

// What a person types in round figures must not come back frayed.
func TestRoundFiguresStay(t *testing.T) {
	for _, c := range []struct {
		x    float64
		unit string
		si   float64
	}{
		{0.2, "mm", 0.0002}, {0.3, "mm", 0.0003}, {60, "mm", 0.06}, {12, "cm2", 0.0012}, {30, "mA/cm2", 300}, {250, "g/L", 250},
		{8.53, "g/cm3", 8530}, {40, "%", 0.4}, {1, "in", 0.0254}, {1, "gal", 0.003785411784}, {1, "imp gal", 0.00454609}, {2, "A.h", 7200},
	} {
		if got := Of(c.x, c.unit); got != c.si {
			t.Errorf("%v %s is %v, want %v", c.x, c.unit, got, c.si)
		}
		if got := In(c.si, c.unit); math.Abs(got-c.x) > 2e-16*c.x {
			t.Errorf("%v SI is %v %s, want %v", c.si, got, c.unit, c.x)
		}
	}
}

func TestUnknownSymbol(t *testing.T) {
	for _, symbol := range []string{"ell", "pint", "°", "gr", "mm/", "g/h", "ga"} {
		if kind, ok := KindOf(symbol); ok {
			t.Errorf("%q is a unit of %v", symbol, kind)
		}
	}
	defer func() {
		if recover() == nil {
			t.Error("In took an unknown symbol")
		}
	}()
	In(1, "ell")
}
