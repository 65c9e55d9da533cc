// Package metal knows the metals that are etched here: copper, brass, bronze,
// nickel silver and silver, each with what it is made of, how dense it is and
// how much of it a coulomb dissolves; and it finds a metal by whatever a person
// calls it.
//
//	r, err := metal.Understand("yelow bras")  // the metal meant, and rival readings
//	hits := metal.Find("cartridge")           // what to offer while a name is typed
//
// A name may be a trade name in English, German, French, Spanish or Italian,
// spelt roughly; a grade (UNS in three or five digits, EN number and symbol,
// Werkstoffnummer, British and older codes); or a composition ("CuZn37",
// "Cu 85 Zn 15", "70/30 brass", "Ag 925"). Every word of it must be accounted
// for by the metal: "gold" does not find Nordic gold, nor "aluminium"
// aluminium bronze.
//
// What the package cannot know: whether the sheet in hand is what its seller
// calls it. The composition is the grade's nominal one, and a sheet may differ
// from it within the grade's limits, which moves an equivalent by a per cent or
// two at most. All quantities are in SI.
package metal

import "iter"

// Family is the kind a metal belongs to, as the trade sorts its sheets.
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

func (f Family) String() string { return families[f] }

// Language is the one a name belongs to.
type Language uint8

const (
	English Language = iota
	German
	French
	Spanish
	Italian
	Swedish
	Japanese
	languages
)

var languageNames = [languages]string{"English", "German", "French", "Spanish", "Italian", "Swedish", "Japanese"}

func (l Language) String() string { return languageNames[l] }

// Names are what a metal is called, by language.
type Names [languages][]string

// Part is one element of a metal.
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

	Remark string // what a person should know before choosing it: traps of its name, porosity
}

// Share is the part of the mass that an element makes up, 0 to 1.
// Kept out of its callers for the size of the program.
//
//go:noinline
func (m *Metal) Share(symbol string) float64 {
	for _, p := range m.Composition {
		if p.Symbol == symbol {
			return p.Share
		}
	}
	return 0
}

// All yields the catalogue in its order.
func All() iter.Seq[*Metal] {
	return func(yield func(*Metal) bool) {
		for i := range catalogue {
			if !yield(&catalogue[i]) {
				return
			}
		}
	}
}

// ByID is the catalogue's metal of that id.
func ByID(id string) (*Metal, bool) {
	for m := range All() {
		if m.ID == id {
			return m, true
		}
	}
	return nil, false
}
