// Package field is the vocabulary: the one table of fields, the one of answers,
// and the one reader of the text form of a set of fields.
//
// The text form is that of URLSearchParams, "metal=sterling&depth=0.25+mm". It
// is the request at the border, a share link's fragment, a saved job and an
// embedded element's fields. Every value is text as a person types it; a blank
// means not given.
package field

import (
	"iter"
	"slices"
	"strings"

	"saltbite/calc/quantity"
)

// Name is the name of a field: its place in Fields.
type Name uint8

// String returns the name as the vocabulary has it.
func (n Name) String() string { return Fields[n].Name }

// Row returns the field's row of the table.
func (n Name) Row() *Field { return &Fields[n] }

// Answer returns the answer of the same name, which must be there.
func (n Name) Answer() AnswerName {
	for i := range Answers {
		if Answers[i].Name == n.String() {
			return AnswerName(i)
		}
	}
	panic("field: no answer " + n.String())
}

//go:generate go run ../../build/names

// Value is what was read of a field.
type Value struct {
	State quantity.State
	Text  string            // as typed, trimmed
	Q     quantity.Quantity // of an Amount, a Whole, a Clock or a Hydrometer
	Pick  string            // of a Choice
	Pairs []Pair            // of a Series
}

// Error is a mistake in a field, in a sentence for people.
type Error struct {
	Field    string
	Code     string
	Text     string
	Readings []string // of an Ambiguous text: what else to type, each of them clear
	Why      string   // the same as an answer's sentence: of a Contradiction what can't all be true, of a metal that it is not covered
}

// Codes of errors beyond those of quantity.Code.
const (
	Missing       = "missing"
	Contradiction = "contradiction"
	Unknown       = "unknown"
	Internal      = "internal"
	Picture       = "picture" // can't be read as a picture
)

// mostUnknown keys are reported; a hostile text may hold thousands.
const mostUnknown = 20

// Set is a set of fields as read. It never changes, so that any number of
// calls may read it at once.
type Set struct {
	values [fieldCount]*Value // shared by sets that are alike: none is ever changed
	errors []Error
}

// Read reads the text form. It never fails: what can't be read stands in Errors.
func Read(text string) *Set { return ReadPairs(Pairs(text)) }

// Pairs are the keys of a text form, each with its text.
func Pairs(text string) iter.Seq2[string, string] {
	return func(yield func(key, text string) bool) {
		for rest := text; rest != ""; {
			var pair string
			pair, rest, _ = strings.Cut(rest, "&")
			key, value, _ := strings.Cut(pair, "=")
			if !yield(unescape(key), strings.TrimSpace(unescape(value))) {
				return
			}
		}
	}
}

// Beside are the pairs without those whose key others has: their texts go in there.
func Beside(pairs iter.Seq2[string, string], others map[string]string) iter.Seq2[string, string] {
	return func(yield func(key, text string) bool) {
		for key, text := range pairs {
			if _, other := others[key]; other {
				others[key] = text
			} else if !yield(key, text) {
				return
			}
		}
	}
}

// ReadPairs reads fields by their names. Like Read it never fails.
func ReadPairs(pairs iter.Seq2[string, string]) *Set { return Memory(nil).ReadPairs(pairs) }

// Memory is what texts were read as, by their field's name: thousands of sets that
// are alike are read quickly. A nil one remembers nothing.
type Memory map[[2]string]entry

// entry is what a field's text was read as.
type entry struct {
	name  Name
	known bool // there is such a field
	value *Value
	err   *Error
}

// mostRemembered is how many texts are remembered: in a long log the weights differ
// from run to run, and what else there is does not.
const mostRemembered = 4096

// ReadPairs is the function of that name, with a memory.
func (m Memory) ReadPairs(pairs iter.Seq2[string, string]) *Set {
	r := reader{memory: m, set: &Set{values: fallbacks}}
	for key, text := range pairs {
		r.take(key, text)
	}
	return r.set
}

// read reads a field's text, or remembers it.
func (m Memory) read(key, text string) entry {
	e, known := m[[2]string{key, text}]
	if known {
		return e
	}
	if e.name, e.known = NameOf(key); e.known {
		v, err := e.name.Row().read(text)
		if err != nil {
			v = Value{State: quantity.Bad, Text: text}
		}
		e.value, e.err = &v, err
	}
	if m != nil && len(m) < mostRemembered {
		m[[2]string{key, text}] = e
	}
	return e
}

// reader fills a set.
type reader struct {
	memory  Memory
	set     *Set
	unknown int // keys that are no field
}

// take reads one key and its value into the set.
func (r *reader) take(key, text string) {
	if text == "" {
		return
	}
	e := r.memory.read(key, text)
	if !e.known {
		r.strange(key, text)
		return
	}
	f := e.name.Row()
	if first := r.set.Text(e.name); first != "" {
		r.fail(Error{Field: key, Code: string(quantity.Ambiguous), Text: quantity.Quote(first) + " stands, but the field is given twice. " +
			"Type " + f.Noun + " once, such as " + f.Example + "."})
		return
	}
	if e.err != nil {
		r.fail(*e.err)
	}
	r.set.values[e.name] = e.value
}

// strange reports a key that is no field. It blocks nothing.
func (r *reader) strange(key, text string) {
	r.unknown++
	if r.unknown > mostUnknown {
		return
	}
	r.fail(Error{Field: quantity.Shorten(key), Code: Unknown, Text: quantity.Quote(key) + " is no field here, and its " + quantity.Quote(text) +
		" counts for nothing. Type a field's name, such as depth."})
}

func (r *reader) fail(e Error) { r.set.errors = append(r.set.errors, e) }

// Value returns what was read of a field, or its default if nothing was given.
func (s *Set) Value(name Name) Value { return *s.values[name] }

// Amount returns the number that was read of a field, in SI.
func (s *Set) Amount(name Name) quantity.Optional {
	v := s.values[name]
	return quantity.Optional{SI: v.Q.Value, State: v.State}
}

// Text returns what was typed into a field; "" if nothing was.
func (s *Set) Text(name Name) string { return s.values[name].Text }

// Pick returns the choice that was made in a field, or its default.
func (s *Set) Pick(name Name) string { return s.values[name].Pick }

// Blank says whether nothing was typed into a field and no default stands for it.
func (s *Set) Blank(name Name) bool { return s.values[name].State == quantity.Blank }

// Given says whether a field was typed and could be read.
func (s *Set) Given(name Name) bool { return s.values[name].State == quantity.Given }

// Errors lists the mistakes, in the order in which the fields were given.
func (s *Set) Errors() []Error { return s.errors }

// Under returns the set with some of its fields, where nothing was typed into
// them, as they were read of another.
func (s *Set) Under(other *Set, names ...Name) *Set {
	more := &Set{values: s.values, errors: s.errors}
	for _, name := range names {
		if s.values[name].Text == "" && other.Given(name) {
			more.values[name] = other.values[name]
		}
	}
	return more
}

// Without returns the set as if nothing had been typed into some fields.
func (s *Set) Without(names ...Name) *Set {
	less := &Set{values: s.values}
	for _, name := range names {
		less.values[name] = fallbacks[name]
	}
	for _, e := range s.errors {
		if name, ok := NameOf(e.Field); !ok || !slices.Contains(names, name) {
			less.errors = append(less.errors, e)
		}
	}
	return less
}
