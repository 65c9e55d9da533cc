// Package field is the vocabulary: the one table of fields, the one of answers,
// and the one reader of the text form of a set of fields.
//
// The text form is that of URLSearchParams, "metal=sterling&depth=0.25+mm". It
// is the request at the border, a share link's fragment, a saved job and an
// embedded element's fields. Every value is text as a person types it; a blank
// means not given.
package field

import (
	"strings"

	"saltbite/calc/quantity"
)

// State says what became of a field's text.
type State uint8

const (
	Blank   State = iota // not given, and nothing stands for it
	Assumed              // not given; its default stands for it
	Given                // read
	Bad                  // given but unreadable; an error stands at the field
)

// Value is what was read of a field.
type Value struct {
	State State
	Text  string            // as typed, trimmed
	Q     quantity.Quantity // of an Amount, a Whole, a Clock or a Gravity
	Pick  string            // of a Choice
	Pairs []Pair            // of a Series
}

// Error is a mistake in a field, in a sentence for people.
type Error struct {
	Field string
	Code  string
	Text  string
}

// Codes of errors beyond those of quantity.Code.
const (
	Missing       = "missing"
	Contradiction = "contradiction"
	Unknown       = "unknown"
	Internal      = "internal"
)

// mostUnknown keys are reported; a hostile text may hold thousands.
const mostUnknown = 20

// Set is a set of fields as read.
type Set struct {
	values  map[string]Value
	errors  []Error
	unknown int
}

// Read reads the text form. It never fails: what can't be read stands in Errors.
func Read(text string) *Set {
	s := &Set{values: make(map[string]Value, len(Fields))}
	for text != "" {
		var pair string
		pair, text, _ = strings.Cut(text, "&")
		key, value, _ := strings.Cut(pair, "=")
		s.take(unescape(key), strings.TrimSpace(unescape(value)))
	}
	return s
}

// take reads one key and its value into the set.
func (s *Set) take(key, text string) {
	if text == "" {
		return
	}
	f, ok := ByName(key)
	if !ok {
		s.strange(key, text)
		return
	}
	if first, twice := s.values[key]; twice {
		s.fail(Error{key, string(quantity.Ambiguous), Quote(first.Text) + " stands, but the field is given twice. " +
			Capital(f.Noun) + " is wanted once, such as " + f.Example + "."})
		return
	}
	v, err := f.read(text)
	if err != nil {
		v = Value{State: Bad, Text: text}
		s.fail(*err)
	}
	s.values[key] = v
}

// strange reports a key that is no field. It blocks nothing.
func (s *Set) strange(key, text string) {
	s.unknown++
	if s.unknown > mostUnknown {
		return
	}
	s.fail(Error{cut(key), Unknown, Quote(key) + " is no field here, and its " + Quote(text) +
		" counts for nothing. A field's name is wanted, such as depth."})
}

// fail is kept out of its callers for the size of the program.
//
//go:noinline
func (s *Set) fail(e Error) { s.errors = append(s.errors, e) }

// Value returns what was read of a field, or its default if nothing was given.
// The name must be one of Fields.
func (s *Set) Value(name string) Value {
	if v, ok := s.values[name]; ok {
		return v
	}
	f, ok := ByName(name)
	if !ok {
		panic("field: no field " + name)
	}
	return f.fallback()
}

// Errors lists the mistakes, in the order in which the fields were given.
func (s *Set) Errors() []Error { return s.errors }

// SetAside makes fields blank, as when their answer is sought: their text and
// their errors count no more.
func (s *Set) SetAside(names ...string) {
	for _, name := range names {
		delete(s.values, name)
		kept := s.errors[:0]
		for _, e := range s.errors {
			if e.Field != name {
				kept = append(kept, e)
			}
		}
		s.errors = kept
	}
}

// Fail adds an error found by a room that reads more into a field than its
// table can, and makes the field Bad.
// Kept out of its callers for the size of the program.
//
//go:noinline
func (s *Set) Fail(e Error) {
	s.fail(e)
	if v, ok := s.values[e.Field]; ok && e.Code != Missing {
		v.State = Bad
		s.values[e.Field] = v
	}
}
