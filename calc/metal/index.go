package metal

import (
	"slices"
	"strings"
	"sync"
)

// call is one way of naming a metal.
type call struct {
	metal *Metal
	name  string // as the catalogue writes it
	why   string
	amid  bool // other words of the text bear it out
}

// whole is a name as it was folded.
type whole struct {
	call
	folded string
}

// index is the catalogue turned round: from folded names and grades to metals.
// It never changes once made.
type index struct {
	names  map[string][]call // words in their order, a blank between
	joined map[string][]call // words in their order, run together
	bags   map[string][]call // words in any order
	grades map[string][]call // see code
	wholes []whole           // every name, in the catalogue's order

	wordsOf map[*Metal]map[string]bool // all that a metal's names consist of

	// For a text that calls nothing by its name: made when the first one comes.
	strangers func() *strangers
}

var theIndex = sync.OnceValue(newIndex)

// manyNames is about how many names and grades there are: a map that need not
// grow is made sooner.
const manyNames = 800

func newIndex() *index {
	x := &index{
		names:   make(map[string][]call, manyNames),
		joined:  make(map[string][]call, manyNames),
		bags:    make(map[string][]call, manyNames),
		grades:  make(map[string][]call, manyNames),
		wordsOf: map[*Metal]map[string]bool{},
	}
	x.strangers = sync.OnceValue(func() *strangers { return newStrangers(x.wholes) })
	for m := range All() {
		x.wordsOf[m] = map[string]bool{}
		x.add(m)
	}
	return x
}

// add enters all names and grades of a metal.
func (x *index) add(m *Metal) {
	x.addName(m, m.Name, "name")
	for language, list := range m.Names {
		why := "name"
		if Language(language) != English {
			why = Language(language).String() + " name"
		}
		for _, name := range list {
			x.addName(m, name, why)
		}
	}
	for _, grade := range append([]string{m.UNS, m.EN, m.Symbol, m.British}, m.Grades...) {
		x.addGrade(m, grade)
	}
	if short, ok := strings.CutSuffix(m.UNS, "00"); ok && m.UNS[0] == 'C' {
		x.addGrade(m, short+"0")
		x.addShort(m, short)
	}
	x.addGrade(m, strings.TrimRight(m.EN, "ABCDEFGHJKLMNR")) // "CW508"
}

// addShort enters what a unified number that ends in 00 is called without it:
// "C260", and "260" beside the word for the metal.
func (x *index) addShort(m *Metal, short string) {
	x.addGrade(m, short)
	x.wordsOf[m][short[1:]] = true
	for _, kind := range []string{"copper", "brass", "bronze", "nickel silver", "copper nickel", "alloy"} {
		first, _, _ := strings.Cut(kind, " ")
		if kind == "alloy" || kind == m.Family.String() || x.wordsOf[m][first] {
			list := append(strings.Fields(kind), short[1:])
			c := call{metal: m, name: m.UNS, why: "grade"}
			enter(x.bags, bag(list), c)
			enter(x.names, short[1:]+" "+kind, c)
			enter(x.names, kind+" "+short[1:], c)
		}
	}
}

func (x *index) addName(m *Metal, name, why string) {
	c := call{metal: m, name: name, why: why}
	list := words(fold(name))
	for _, w := range list {
		x.wordsOf[m][w] = true
	}
	folded := strings.Join(list, " ")
	x.wholes = append(x.wholes, whole{c, folded})
	enter(x.names, folded, c)
	enter(x.joined, strings.Join(list, ""), c)
	if len(list) > 1 && !allElements(list) {
		enter(x.bags, bag(list), c)
	}
}

func (x *index) addGrade(m *Metal, grade string) {
	if grade != "" {
		enter(x.grades, code(words(fold(grade))), call{metal: m, name: grade, why: "grade"})
	}
}

// enter adds a call to a key, once for each metal.
// Kept out of its callers for the size of the program.
//
//go:noinline
func enter(to map[string][]call, key string, c call) {
	if !slices.ContainsFunc(to[key], func(had call) bool { return had.metal == c.metal }) {
		to[key] = append(to[key], c)
	}
}

// bag is a key for words in any order: they are sorted by insertion, being few.
func bag(list []string) string {
	sorted := slices.Clone(list)
	for i := range sorted {
		for ; i > 0 && sorted[i] < sorted[i-1]; i-- {
			sorted[i], sorted[i-1] = sorted[i-1], sorted[i]
		}
	}
	return strings.Join(sorted, " ")
}

// allElements says that a name consists of elements: their order matters then,
// as in copper nickel, which is not nickel copper.
func allElements(list []string) bool {
	for _, w := range list {
		if _, ok := elementNamed(w); !ok {
			return false
		}
	}
	return true
}
