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
	amid  bool // other words of the text confirm it
	vague bool // other words of the text say that the metal is not known
}

// whole is a name of a metal, and the same folded.
type whole struct {
	call
	folded string
}

// directory holds calls by a key; several at one key stand in the order they were
// entered in.
type directory struct {
	at    map[string][]call
	calls []call // the lists in at are slices of it
}

func newDirectory(size int) directory {
	return directory{make(map[string][]call, size), make([]call, 0, size)}
}

// enter adds a call to a key, once for each metal. Most keys have one call, and
// share the memory of one list.
func (d *directory) enter(key string, c call) {
	others := d.at[key]
	if others == nil {
		d.calls = append(d.calls, c)
		n := len(d.calls)
		d.at[key] = d.calls[n-1 : n : n]
	} else if !slices.ContainsFunc(others, func(had call) bool { return had.metal == c.metal }) {
		d.at[key] = append(others, c)
	}
}

// index leads from folded names and grades to metals. Its functions make, at their
// first call, what is needed only for a text that is not a name as it stands: the
// first answer waits for the rest alone. Nothing in it changes once made.
type index struct {
	names   directory // words in their order, a blank between
	grades  directory // see code
	wholes  []whole   // every name, in the catalogue's order
	phrases []whole   // the names of several words, and short numbers beside a word, in the same order

	joined    func() *directory // names without the blanks between their words
	bags      func() *directory // names whose words may be in any order, see bag
	gapsOf    func() *gaps
	strangers func() *strangers
}

var theIndex = sync.OnceValue(newIndex)

// About how many names and grades there are: a map that is made large enough at
// once is made faster.
const (
	manyNames  = 1000
	manyGrades = 500
)

func newIndex() *index {
	x := &index{
		names: newDirectory(manyNames), grades: newDirectory(manyGrades),
		wholes: make([]whole, 0, manyNames), phrases: make([]whole, 0, manyNames),
	}
	x.joined, x.bags = sync.OnceValue(x.runTogether), sync.OnceValue(x.unordered)
	x.gapsOf = sync.OnceValue(x.withGaps)
	x.strangers = sync.OnceValue(func() *strangers { return newStrangers(x.wholes) })
	for i := range catalogue {
		m := &catalogue[i]
		x.add(m)
	}
	return x
}

// runTogether makes the directory of names without their blanks.
func (x *index) runTogether() *directory {
	d := newDirectory(manyNames)
	for _, w := range x.wholes {
		d.enter(strings.ReplaceAll(w.folded, " ", ""), w.call)
	}
	return &d
}

// unordered makes the directory of names whose words may change places.
func (x *index) unordered() *directory {
	d := newDirectory(manyNames)
	for _, w := range x.phrases {
		if list := strings.Fields(w.folded); !allElements(list) {
			d.enter(bag(list), w.call)
		}
	}
	return &d
}

// isWordOf says that one of a metal's names has a word, or that it is its short
// number or the plain word for its family.
func (x *index) isWordOf(m *Metal, word string) bool {
	if familyOfWord(word) == m.Family.String() {
		return true
	}
	for i := range x.wholes {
		if w := &x.wholes[i]; w.metal == m && w.has(word) {
			return true
		}
	}
	short, ok := shortNumber(m)
	return ok && word == short[1:]
}

// add enters all names and grades of a metal.
func (x *index) add(m *Metal) {
	own := len(x.wholes)
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
	for _, grade := range [...]string{m.UNS, m.EN, m.Symbol, m.British} {
		x.addGrade(m, grade)
	}
	for _, grade := range m.Grades {
		x.addGrade(m, grade)
	}
	if short, ok := shortNumber(m); ok {
		x.addGrade(m, short+"0")
		x.addGrade(m, short)
		x.addShort(m, short, x.wholes[own:])
	}
	x.addGrade(m, strings.TrimRight(m.EN, "ABCDEFGHJKLMNR")) // "CW508"
}

// shortNumber is a unified number that ends in 00 without that: "C260".
func shortNumber(m *Metal) (short string, ok bool) {
	short, ok = strings.CutSuffix(m.UNS, "00")
	return short, ok && m.UNS[0] == 'C'
}

// addShort enters a short number beside the word for its metal: "260 brass",
// "brass 260".
func (x *index) addShort(m *Metal, short string, own []whole) {
	for _, kind := range [...]string{"copper", "brass", "bronze", "nickel silver", "copper nickel", "alloy"} {
		first, _, _ := strings.Cut(kind, " ")
		if kind == "alloy" || kind == m.Family.String() || slices.ContainsFunc(own, func(w whole) bool { return w.has(first) }) {
			c := call{metal: m, name: m.UNS, why: "grade"}
			x.phrases = append(x.phrases, whole{c, kind + " " + short[1:]})
			x.names.enter(short[1:]+" "+kind, c)
			x.names.enter(kind+" "+short[1:], c)
		}
	}
}

// has says that a word is one of the name's words.
func (w *whole) has(word string) bool {
	one, rest, more := strings.Cut(w.folded, " ")
	for more && one != word {
		one, rest, more = strings.Cut(rest, " ")
	}
	return one == word
}

func (x *index) addName(m *Metal, name, why string) {
	list := words(fold(name))
	w := whole{call{metal: m, name: name, why: why}, strings.Join(list, " ")}
	x.wholes = append(x.wholes, w)
	x.names.enter(w.folded, w.call)
	if len(list) > 1 {
		x.phrases = append(x.phrases, w)
	}
	if pair, ok := strings.CutSuffix(w.folded, " nickel silver"); ok && len(list) == 4 {
		x.names.enter(pair, w.call) // "65-18": no other family is called by two numbers alone
	}
}

func (x *index) addGrade(m *Metal, grade string) {
	if grade != "" {
		x.grades.enter(code(words(fold(grade))), call{metal: m, name: grade, why: "grade"})
	}
}

// bag is a key that is the same for words in any order. They are few, so they are
// sorted by insertion.
func bag(list []string) string {
	sorted := slices.Clone(list)
	for i := range sorted {
		for ; i > 0 && sorted[i] < sorted[i-1]; i-- {
			sorted[i], sorted[i-1] = sorted[i-1], sorted[i]
		}
	}
	return strings.Join(sorted, " ")
}

// allElements says that every word of a name is an element. Then their order
// matters: copper nickel is not nickel copper.
func allElements(list []string) bool {
	for _, w := range list {
		if _, ok := elementNamed(w); !ok {
			return false
		}
	}
	return true
}
