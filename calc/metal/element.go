package metal

// The constants behind every equivalent are exact in the SI of 2019.
const (
	Avogadro         = 6.02214076e23               // 1/mol; SI brochure, 9th ed. 2019
	elementaryCharge = 1.602176634e-19             // C; SI brochure, 9th ed. 2019
	Faraday          = Avogadro * elementaryCharge // C/mol
)

// Element is an element that occurs in a metal of the catalogue.
type Element struct {
	Symbol string
	Name   Names // in each language the usual name first

	// MolarMass is in kg/mol: the abridged standard atomic weights of
	// IUPAC/CIAAW 2021 (Pure Appl. Chem. 2022, doi 10.1515/pac-2019-0603),
	// from memory; the package bodr 10-2 agrees to the digits given.
	MolarMass float64

	// Density is in kg/m3 at room temperature: CRC Handbook, Physical Constants
	// of Inorganic Compounds, except Zn 7140 and Ag 10490 of the GNU units
	// database 2.22 (CRC 7134 and 10500), which agree better with the alloys' own
	// densities; Be, C, Co, Ge, As and Au are CRC's from memory. Zero for oxygen,
	// whose density as a gas says nothing about a mixture.
	Density float64

	// Charge is how many elementary charges an atom takes with it when it leaves
	// the metal in a sulfate or nitrate bath. Zero: it does not dissolve, and
	// counts as mass only.
	Charge int
}

// Elements are those of the catalogue. Ions: copper, zinc, nickel, lead,
// manganese and iron leave as divalent, aluminium as trivalent, silver as
// monovalent, tin as divalent (EquivalentLow has it as tetravalent).
// Phosphorus, silicon, carbon, germanium, beryllium, cobalt, arsenic, oxygen
// and gold are taken to stay behind: of those, silicon, germanium, beryllium
// and cobalt may oxidise after all, which takes 6 to 16 % more charge in the
// alloys that hold most of them.
var Elements = [...]Element{
	{"Cu", Names{English: {"copper"}, German: {"Kupfer"}, French: {"cuivre"}, Spanish: {"cobre"}, Italian: {"rame"}}, 0.063546, 8960, 2},
	{"Zn", Names{English: {"zinc"}, German: {"Zink"}, French: {"zinc"}, Spanish: {"cinc", "zinc"}, Italian: {"zinco"}}, 0.06538, 7140, 2},
	{"Ag", Names{English: {"silver"}, German: {"Silber"}, French: {"argent"}, Spanish: {"plata"}, Italian: {"argento"}}, 0.10787, 10490, 1},
	{"Ni", Names{English: {"nickel"}, German: {"Nickel"}, French: {"nickel"}, Spanish: {"níquel"}, Italian: {"nichel", "nichelio"}}, 0.058693, 8900, 2},
	{"Sn", Names{English: {"tin"}, German: {"Zinn"}, French: {"étain"}, Spanish: {"estaño"}, Italian: {"stagno"}}, 0.11871, 7287, 2},
	{"Pb", Names{English: {"lead"}, German: {"Blei"}, French: {"plomb"}, Spanish: {"plomo"}, Italian: {"piombo"}}, 0.2072, 11340, 2},
	{"Al", Names{English: {"aluminium", "aluminum"}, German: {"Aluminium"}, French: {"aluminium"}, Spanish: {"aluminio"}, Italian: {"alluminio"}}, 0.026982, 2700, 3},
	{"Fe", Names{English: {"iron"}, German: {"Eisen"}, French: {"fer"}, Spanish: {"hierro"}, Italian: {"ferro"}}, 0.055845, 7870, 2},
	{"Mn", Names{English: {"manganese"}, German: {"Mangan"}, French: {"manganèse"}, Spanish: {"manganeso"}, Italian: {"manganese"}}, 0.054938, 7300, 2},
	{"Si", Names{English: {"silicon"}, German: {"Silizium", "Silicium"}, French: {"silicium"}, Spanish: {"silicio"}, Italian: {"silicio"}}, 0.028085, 2329.6, 0},
	{"P", Names{English: {"phosphorus"}, German: {"Phosphor"}, French: {"phosphore"}, Spanish: {"fósforo"}, Italian: {"fosforo"}}, 0.030974, 1823, 0},
	{"Be", Names{English: {"beryllium"}, German: {"Beryllium"}, French: {"béryllium"}, Spanish: {"berilio"}, Italian: {"berillio"}}, 0.0090122, 1850, 0},
	{"Co", Names{English: {"cobalt"}, German: {"Kobalt"}, French: {"cobalt"}, Spanish: {"cobalto"}, Italian: {"cobalto"}}, 0.058933, 8860, 0},
	{"Ge", Names{English: {"germanium"}, German: {"Germanium"}, French: {"germanium"}, Spanish: {"germanio"}, Italian: {"germanio"}}, 0.07263, 5323.4, 0},
	{"As", Names{English: {"arsenic"}, German: {"Arsen"}, French: {"arsenic"}, Spanish: {"arsénico"}, Italian: {"arsenico"}}, 0.074922, 5750, 0},
	{"Au", Names{English: {"gold"}, German: {"Gold"}, French: {"or"}, Spanish: {"oro"}, Italian: {"oro"}}, 0.19697, 19300, 0},
	{"C", Names{English: {"carbon"}, German: {"Kohlenstoff"}, French: {"carbone"}, Spanish: {"carbono"}, Italian: {"carbonio"}}, 0.012011, 2200, 0},
	{"O", Names{English: {"oxygen"}, German: {"Sauerstoff"}, French: {"oxygène"}, Spanish: {"oxígeno"}, Italian: {"ossigeno"}}, 0.015999, 0, 0},
}

// element is the row of a symbol in Elements; nil if it is not among them.
func element(symbol string) *Element {
	for i := range Elements {
		if Elements[i].Symbol == symbol {
			return &Elements[i]
		}
	}
	return nil
}

// elementNamed is the symbol of an element by its name in any language, folded.
func elementNamed(w string) (symbol string, ok bool) {
	symbol, ok = elementNames[w]
	return symbol, ok
}

var elementNames = func() map[string]string {
	names := map[string]string{}
	for _, e := range Elements {
		for _, list := range e.Name {
			for _, name := range list {
				names[fold(name)] = e.Symbol
			}
		}
	}
	return names
}()
