// Package metal knows the metals that are etched here: copper, brass, bronze,
// nickel silver and silver, each with what it is made of, how dense it is and
// how much of it a coulomb dissolves. It also finds a metal by the name that a
// person types.
//
//	r, err := metal.Understand("yelow bras")  // the metal meant, and rival readings
//	hits := metal.Find("cartridge")           // what to offer while a name is typed
//
// A name may be a trade name in English, German, French, Spanish or Italian, and
// for the plain metals in some more languages, with a slip or cut short; a grade
// (UNS in three or five digits, EN number and symbol, Werkstoffnummer, British and
// older codes); or a composition ("CuZn37", "Cu 85 Zn 15", "70/30 brass",
// "Ag 925"). Every word must belong to the metal: "gold" does not find Nordic
// gold, and "aluminium" does not find aluminium bronze.
//
// The package cannot know whether the sheet is what its seller calls it. The
// composition is the nominal one of the grade. A sheet may differ from it within
// the grade's limits, which changes the equivalent by one or two per cent at most.
//
// All quantities are in SI. The catalogue is generated from testdata/alloys.csv
// and testdata/alloy_names.csv: run go generate after changing them.
package metal

//go:generate go run ../../build/catalogue

import "iter"

// Family is the kind of a metal, as the trade sorts its sheets.
type Family uint8

const (
	Copper Family = iota
	Brass
	Bronze
	NickelSilver
	Silver
	Clay // fired metal clay, which is porous
)

var families = [...]string{"copper", "brass", "bronze", "nickel silver", "silver", "metal clay"}

// String is the family's name: "nickel silver".
func (f Family) String() string { return families[f] }

// Language is the language of a name.
type Language uint8

const (
	English Language = iota
	German
	French
	Spanish
	Italian
	Swedish
	Dutch
	Portuguese
	Japanese
	languages
)

var languageNames = [languages]string{"English", "German", "French", "Spanish", "Italian", "Swedish", "Dutch", "Portuguese", "Japanese"}

// String is the language's English name.
func (l Language) String() string { return languageNames[l] }

// Names are the names of a metal or an element, by language.
type Names [languages][]string

// Part is an element of a metal, and how much of it there is.
type Part struct {
	Symbol string
	Share  float64 // of the mass, 0 to 1
}

// Metal is a metal or an alloy.
type Metal struct {
	ID      string
	Name    string
	Family  Family
	Names   Names
	UNS     string   // unified number: "C26000"
	EN      string   // European number: "CW505L"
	Symbol  string   // European symbol: "CuZn30"
	British string   // British Standard or trade code: "CZ106"
	Grades  []string // older and foreign codes

	Composition []Part  // shares sum to 1
	Density     float64 // kg/m3

	Remark string // what to know before choosing it: a misleading name, porosity; "" if nothing
}

// Share is an element's share of the metal's mass, 0 to 1; 0 for an element that it
// doesn't hold.
func (m *Metal) Share(symbol string) float64 {
	for _, p := range m.Composition {
		if p.Symbol == symbol {
			return p.Share
		}
	}
	return 0
}

// All yields the metals of the catalogue, in its order: the plain sheet of a family
// before its relatives.
func All() iter.Seq[*Metal] {
	return func(yield func(*Metal) bool) {
		for i := range catalogue {
			if !yield(&catalogue[i]) {
				return
			}
		}
	}
}

// byID is the metal of the catalogue with that id; false if the catalogue has no such metal.
func byID(id string) (*Metal, bool) {
	for i := range catalogue {
		if catalogue[i].ID == id {
			return &catalogue[i], true
		}
	}
	return nil, false
}
