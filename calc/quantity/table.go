package quantity

import "strings"

// The table of units. A unit's value in SI is (value + zero) x up / down; up and
// down are whole numbers where the definition allows it, so that 0.2 mm is the
// float nearest to 0.0002 m and comes back as 0.2.
//
// Exact definitions, and where they were read:
//   - SI prefixes, litre, minute, hour, day, tonne: SI Brochure, 9th ed. (2019), tables 7 and 8.
//   - inch 25.4 mm, foot, yard, pound 0.45359237 kg: international yard and pound agreement, 1959
//     (NIST SP 811, 2008, appendix B).
//   - ounce 1/16 lb, grain 1/7000 lb, troy ounce 480 grains, pennyweight 24 grains: NIST Handbook 44, appendix C.
//   - metric carat 200 mg: CGPM 1907.
//   - US gallon 231 cubic inches; quart, pint, cup, fluid ounce 1/4, 1/8, 1/16, 1/128 of it: NIST Handbook 44, appendix C.
//   - imperial gallon 4.54609 L; fluid ounce 1/160 of it: UK Weights and Measures Act 1985, schedule 1.
//   - Celsius = K - 273.15; Fahrenheit = 9/5 Celsius + 32: SI Brochure; NIST SP 811.

// unit is a row of the table, or made of two rows.
type unit struct {
	kind   Kind
	symbol string // as the vocabulary writes it
	sign   string // as people read it
	up     float64
	down   float64
	zero   float64 // what is added first: temperatures
	ask    string  // why the word has two readings; "" if it has one
	means  string  // what else to type then: symbols, separated by blanks, with "_" for a blank
}

// row is a unit and the words for it, folded (see fold): lower case, no blanks,
// full stops, dashes or accents. The symbol itself is one of them, but where
// cased is set it must be typed just so.
type row struct {
	unit
	words string
	cased bool
}

const (
	cubic    = 16387064.0  // 1e-12 m3 in a cubic inch: 254 x 254 x 254
	gallon   = 231 * cubic // 1e-12 m3
	imperial = 454609.0    // 1e-8 m3 in an imperial gallon
	grain    = 6479891.0   // 1e-11 kg
	pound    = 45359237.0  // 1e-8 kg
)

var table = []row{
	// Shares and strengths that are no composed unit.
	{unit: unit{kind: Share, symbol: "%", sign: "%", up: 1, down: 100},
		words: "percent pct prozent vonhundert pourcent porciento percento %w/w %m/m %wt wt% mass% %mass %byweight %bymass %weight percentbyweight percentbymass"},
	{unit: unit{kind: Saturation, symbol: "% sat", sign: "% sat", up: 1, down: 100},
		words: "%saturated %saturation %ofsaturation %ofsat percentsat percentsaturated percentsaturation percentofsaturation pctsat satd% sat%"},
	{unit: unit{kind: Density, symbol: "% w/v", sign: "% w/v", up: 10, down: 1}, words: "%m/v percentw/v"},
	{unit: unit{kind: Molarity, symbol: "M", sign: "M", up: 1000, down: 1}, words: "molar", cased: true},
	{unit: unit{kind: Molarity, symbol: "mM", sign: "mM", up: 1, down: 1}, words: "millimolar", cased: true},
	{unit: unit{kind: amount, symbol: "mol", sign: "mol", up: 1, down: 1}, words: "mole moles mols"},
	{unit: unit{kind: amount, symbol: "mmol", sign: "mmol", up: 1, down: 1e3}, words: "millimole millimoles"},

	// Lengths.
	{unit: unit{kind: Length, symbol: "mm", sign: "mm", up: 1, down: 1e3},
		words: "millimetre millimetres millimeter millimeters millimetri millimetro milimetro milimetros mms"},
	{unit: unit{kind: Length, symbol: "cm", sign: "cm", up: 1, down: 1e2},
		words: "centimetre centimetres centimeter centimeters centimetri centimetro centimetros zentimeter cms"},
	{unit: unit{kind: Length, symbol: "dm", sign: "dm", up: 1, down: 10},
		words: "decimetre decimetres decimeter decimeters decimetro decimetros dezimeter"},
	{unit: unit{kind: Length, symbol: "m", sign: "m", up: 1, down: 1},
		words: "metre metres meter meters metro metros metri"},
	{unit: unit{kind: Length, symbol: "um", sign: "µm", up: 1, down: 1e6},
		words: "micron microns micrometre micrometres micrometer micrometers mikrometer mikron micra"},
	{unit: unit{kind: Length, symbol: "nm", sign: "nm", up: 1, down: 1e9},
		words: "nanometre nanometres nanometer nanometers"},
	{unit: unit{kind: Length, symbol: "in", sign: "in", up: 254, down: 1e4},
		words: "inch inches ins \" zoll pouce pouces pulgada pulgadas pollice pollici"},
	{unit: unit{kind: Length, symbol: "ft", sign: "ft", up: 3048, down: 1e4},
		words: "foot feet ' fuss pied pieds pie pies piede piedi"},
	{unit: unit{kind: Length, symbol: "yd", sign: "yd", up: 9144, down: 1e4}, words: "yard yards yds"},
	{unit: unit{kind: Length, symbol: "thou", sign: "thou", up: 254, down: 1e7},
		words: "thous mil mils thousandths thousandthsofaninch"},

	// Volumes that are no cubed length.
	{unit: unit{kind: Volume, symbol: "L", sign: "L", up: 1, down: 1e3},
		words: "litre litres liter liters lt ltr ltrs litro litros litri"},
	{unit: unit{kind: Volume, symbol: "mL", sign: "mL", up: 1, down: 1e6},
		words: "millilitre millilitres milliliter milliliters mililitro mililitros millilitro millilitri mls cc ccs ccm"},
	{unit: unit{kind: Volume, symbol: "cL", sign: "cL", up: 1, down: 1e5},
		words: "centilitre centilitres centiliter centiliters zentiliter centilitro centilitros centilitri"},
	{unit: unit{kind: Volume, symbol: "dL", sign: "dL", up: 1, down: 1e4},
		words: "decilitre decilitres deciliter deciliters deziliter"},
	{unit: unit{kind: Volume, symbol: "gal", sign: "gal", up: gallon, down: 1e12},
		words: "gals gallon gallons usgal usgals usgallon usgallons galus gallonus gallonsus gallone gallonen galon galones"},
	{unit: unit{kind: Volume, symbol: "qt", sign: "qt", up: gallon, down: 4e12},
		words: "qts quart quarts usqt usqts usquart usquarts qtus quartus quartsus"},
	{unit: unit{kind: Volume, symbol: "US pt", sign: "US pt", up: gallon, down: 8e12},
		words: "uspint uspints uspts ptus pintus pintsus"},
	{unit: unit{kind: Volume, symbol: "cup", sign: "cup", up: gallon, down: 16e12},
		words: "cups uscup uscups cupus cupsus"},
	{unit: unit{kind: Volume, symbol: "fl oz", sign: "fl oz", up: gallon, down: 128e12},
		words: "flozs ozfl fluidounce fluidounces fluidoz fluidozs flounce flounces usfloz usfluidounce usfluidounces flozus fluidounceus fluidouncesus"},
	{unit: unit{kind: Volume, symbol: "imp gal", sign: "imp gal", up: imperial, down: 1e8},
		words: "impgals impgallon impgallons imperialgal imperialgallon imperialgallons ukgal ukgals ukgallon ukgallons britishgallon britishgallons galimp galimperial galuk gallonimp gallonimperial gallonuk gallonsimp gallonsimperial gallonsuk"},
	{unit: unit{kind: Volume, symbol: "imp qt", sign: "imp qt", up: imperial, down: 4e8},
		words: "impqts impquart impquarts imperialqt imperialquart imperialquarts ukqt ukquart ukquarts britishquart britishquarts qtimp qtimperial qtuk quartimp quartimperial quartuk quartsimp quartsimperial quartsuk"},
	{unit: unit{kind: Volume, symbol: "imp pt", sign: "imp pt", up: imperial, down: 8e8},
		words: "imppts imppint imppints imperialpt imperialpint imperialpints ukpt ukpint ukpints britishpint britishpints ptimp ptimperial ptuk pintimp pintimperial pintuk pintsimp pintsimperial pintsuk"},
	{unit: unit{kind: Volume, symbol: "imp cup", sign: "imp cup", up: imperial, down: 16e8},
		words: "impcups imperialcup imperialcups ukcup ukcups britishcup britishcups cupimp cupimperial cupuk cupsimp cupsimperial cupsuk"},
	{unit: unit{kind: Volume, symbol: "imp fl oz", sign: "imp fl oz", up: imperial, down: 160e8},
		words: "imperialfloz ukfloz britishfloz impfluidounce impfluidounces imperialfluidounce imperialfluidounces ukfluidounce ukfluidounces flozimp flozimperial flozuk fluidounceimperial fluidouncesimperial fluidouncesuk"},
	{unit: unit{kind: Volume, symbol: "pint", ask: "a pint may be US (473 mL) or imperial (568 mL)", means: "US_pt imp_pt"}, words: "pints pt pts"},

	// Masses.
	{unit: unit{kind: Mass, symbol: "g", sign: "g", up: 1, down: 1e3},
		words: "gram grams gramme grammes gm gms gramm gramos gramo grammo grammi"},
	{unit: unit{kind: Mass, symbol: "kg", sign: "kg", up: 1, down: 1},
		words: "kilo kilos kgs kilogram kilograms kilogramme kilogrammes kilogramm kilogramo kilogramos chilo chili chilogrammo chilogrammi"},
	{unit: unit{kind: Mass, symbol: "mg", sign: "mg", up: 1, down: 1e6},
		words: "milligram milligrams milligramme milligrammes milligramm mgs miligramo miligramos milligrammi"},
	{unit: unit{kind: Mass, symbol: "t", sign: "t", up: 1e3, down: 1}, words: "tonne tonnes metricton metrictons"},
	{unit: unit{kind: Mass, symbol: "oz", sign: "oz", up: pound, down: 16e8},
		words: "ozs ounce ounces once onces unze unzen onza onzas oncia avoirdupoisounce avoirdupoisounces ozavdp ozav"},
	{unit: unit{kind: Mass, symbol: "lb", sign: "lb", up: pound, down: 1e8}, words: "lbs pound pounds"},
	{unit: unit{kind: Mass, symbol: "oz t", sign: "oz t", up: 480 * grain, down: 1e11},
		words: "ozts troyoz troyozs troyounce troyounces oztroy ouncetroy ouncestroy ozstroy tozs toz feinunze feinunzen oncetroy oncestroy"},
	{unit: unit{kind: Mass, symbol: "dwt", sign: "dwt", up: 24 * grain, down: 1e11}, words: "dwts pennyweight pennyweights"},
	{unit: unit{kind: Mass, symbol: "grain", sign: "grain", up: grain, down: 1e11}, words: "grains"},
	{unit: unit{kind: Mass, symbol: "ct", sign: "ct", up: 2, down: 1e4}, words: "carat carats metriccarat metriccarats"},
	{unit: unit{kind: Mass, symbol: "gr", ask: "gr may be grams or grains", means: "g grain"}},

	// Times.
	{unit: unit{kind: Time, symbol: "min", sign: "min", up: 60, down: 1},
		words: "m ' mins mn minute minutes minuten minuto minutos minuti"},
	{unit: unit{kind: Time, symbol: "h", sign: "h", up: 3600, down: 1},
		words: "hr hrs hour hours std stunde stunden heure heures hora horas ora ore"},
	{unit: unit{kind: Time, symbol: "s", sign: "s", up: 1, down: 1},
		words: "sec secs second seconds \" sekunde sekunden sek seconde secondes segundo segundos secondo secondi"},
	{unit: unit{kind: Time, symbol: "d", sign: "d", up: 86400, down: 1},
		words: "day days tag tage tagen jour jours dia dias giorno giorni"},
	{unit: unit{kind: Time, symbol: "week", sign: "week", up: 604800, down: 1}, words: "weeks wk wks"},

	// Temperatures.
	{unit: unit{kind: Temperature, symbol: "C", sign: "°C", up: 1, down: 1, zero: 273.15},
		words: "degc degreec degreesc celsius degcelsius degreecelsius degreescelsius centigrade degreescentigrade gradc gradcelsius gradoscelsius degrescelsius gradicelsius"},
	{unit: unit{kind: Temperature, symbol: "F", sign: "°F", up: 5, down: 9, zero: 459.67},
		words: "degf degreef degreesf fahrenheit degfahrenheit degreefahrenheit degreesfahrenheit gradf gradfahrenheit"},
	{unit: unit{kind: Temperature, symbol: "K", sign: "K", up: 1, down: 1}, words: "kelvin kelvins degk degreesk degreeskelvin"},
	{unit: unit{kind: Temperature, symbol: "°", ask: "degrees may be C or F", means: "C F"}, words: "degree degrees grad grados gradi degres"},

	// Electricity.
	{unit: unit{kind: Current, symbol: "A", sign: "A", up: 1, down: 1},
		words: "amp amps ampere amperes amperio amperios amperi"},
	{unit: unit{kind: Current, symbol: "mA", sign: "mA", up: 1, down: 1e3},
		words: "mamp mamps milliamp milliamps milliampere milliamperes miliamperios"},
	{unit: unit{kind: Current, symbol: "uA", sign: "µA", up: 1, down: 1e6}, words: "microamp microamps microampere microamperes"},
	{unit: unit{kind: CurrentDensity, symbol: "A/ft2", sign: "A/ft²", up: 1e8, down: 3048 * 3048}, words: "asf"},
	{unit: unit{kind: CurrentDensity, symbol: "A/dm2", sign: "A/dm²", up: 100, down: 1}, words: "asd"},
	{unit: unit{kind: CurrentDensity, symbol: "A/in2", sign: "A/in²", up: 1e8, down: 254 * 254}, words: "asi"},
	{unit: unit{kind: Voltage, symbol: "V", sign: "V", up: 1, down: 1}, words: "volt volts vdc voltios"},
	{unit: unit{kind: Voltage, symbol: "mV", sign: "mV", up: 1, down: 1e3}, words: "millivolt millivolts"},
	{unit: unit{kind: Voltage, symbol: "kV", sign: "kV", up: 1e3, down: 1}, words: "kilovolt kilovolts"},
	{unit: unit{kind: Power, symbol: "W", sign: "W", up: 1, down: 1}, words: "watt watts"},
	{unit: unit{kind: Power, symbol: "mW", sign: "mW", up: 1, down: 1e3}, words: "milliwatt milliwatts"},
	{unit: unit{kind: Power, symbol: "kW", sign: "kW", up: 1e3, down: 1}, words: "kilowatt kilowatts"},
	{unit: unit{kind: Resistance, symbol: "ohm", sign: "Ω", up: 1, down: 1}, words: "ohms"},
	{unit: unit{kind: Resistance, symbol: "mohm", sign: "mΩ", up: 1, down: 1e3}, words: "milliohm milliohms"},
	{unit: unit{kind: Resistance, symbol: "kohm", sign: "kΩ", up: 1e3, down: 1}, words: "kiloohm kiloohms kilohm kilohms"},
	{unit: unit{kind: Resistance, symbol: "Mohm", sign: "MΩ", up: 1e6, down: 1}, words: "megohm megohms megaohm megaohms", cased: true},
	{unit: unit{kind: Charge, symbol: "A.h", sign: "A·h", up: 3600, down: 1},
		words: "amphour amphours amphr amphrs amperehour amperehours amperestunden amperestunde"},
	{unit: unit{kind: Charge, symbol: "mA.h", sign: "mA·h", up: 3600, down: 1e3}, words: "milliamphour milliamphours milliamperehours"},
	{unit: unit{kind: Charge, symbol: "A.min", sign: "A·min", up: 60, down: 1}, words: "ampmin ampmins ampminute ampminutes ampereminutes"},
	{unit: unit{kind: Charge, symbol: "A.s", sign: "A·s", up: 1, down: 1}, words: "c coulomb coulombs ampsec ampseconds ampereseconds"},
	{unit: unit{kind: conductance, symbol: "S", sign: "S", up: 1, down: 1}, words: "siemens"},
	{unit: unit{kind: conductance, symbol: "mS", sign: "mS", up: 1, down: 1e3}, words: "millisiemens"},
	{unit: unit{kind: conductance, symbol: "uS", sign: "µS", up: 1, down: 1e6}, words: "microsiemens"},
}

// compositions says what a unit of one kind per a unit of another measures.
var compositions = []struct{ over, under, kind Kind }{
	{Mass, Volume, Density},
	{amount, Volume, Molarity},
	{Current, Area, CurrentDensity},
	{Mass, Charge, Equivalent},
	{Length, Time, Rate},
	{conductance, Length, Conductivity},
	{Temperature, Time, HeatingRate},
}

// familiar are the composed units of forms and answers; to know them at the start
// spares their reading at every keystroke.
var familiar = []string{
	"cm2", "mm2", "in2", "cm3", "mA/cm2", "g/L", "g/L water", "g/mL", "g/cm3", "mol/L", "mS/cm", "g/(A.h)",
	"mm/h", "in/h", "K/h",
}

var (
	bySymbol = make(map[string]*unit, manySymbols) // by the symbol, as written
	byWord   = make(map[string][]*unit, manyWords) // by each word for it, folded
)

// manySymbols and manyWords are about how many there are: a map that need not
// grow is made sooner.
const (
	manySymbols = 150
	manyWords   = 600
)

func init() {
	for i := range table {
		r := &table[i]
		if r.sign == "" {
			r.sign = r.symbol
		}
		bySymbol[r.symbol] = &r.unit
		if !r.cased {
			learn(fold(r.symbol), &r.unit)
		}
		for _, w := range strings.Fields(r.words) {
			learn(w, &r.unit)
		}
	}
	for _, symbol := range familiar {
		bySymbol[symbol] = &readings(symbol)[0]
	}
}

// learn adds a word for a unit. One word may mean several, of different kinds.
func learn(word string, u *unit) { byWord[word] = append(byWord[word], u) }
