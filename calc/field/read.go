package field

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"saltbite/calc/quantity"
)

// A sentence about a mistake says three things in this order: what was typed
// (its first 40 characters, quoted), why it can't stand, and what is wanted,
// with an example that can be read. It never scolds.

// ByName finds a field's row.
// Kept out of its callers for the size of the program.
//
//go:noinline
func ByName(name string) (*Field, bool) {
	for i := range Fields {
		if Fields[i].Name == name {
			return &Fields[i], true
		}
	}
	return nil, false
}

// read reads a field's text, which is not blank.
func (f *Field) read(text string) (Value, *Error) {
	v := Value{State: Given, Text: text}
	switch f.Form {
	case Words:
		if f.Max > 0 && utf8.RuneCountInString(text) > int(f.Max) {
			return v, f.because(text, string(quantity.OutOfSize), "is longer than "+f.limit(f.Max)+" characters")
		}
		return v, nil
	case Choice:
		return f.pick(v)
	case Series:
		return f.series(v)
	case Clock:
		return f.clock(v)
	case Gravity:
		return f.gravity(v)
	}
	q, err := quantity.Read(text, f.Bare, f.Kinds...)
	if err != nil {
		return v, f.wrong(text, err)
	}
	v.Q = q
	if f.Form == Whole && q.Value != float64(int64(q.Value)) {
		return v, f.because(text, string(quantity.BadNumber), "is no whole number")
	}
	if why := f.beyond(q.Value); why != "" {
		return v, f.because(text, string(quantity.OutOfSize), why)
	}
	return v, nil
}

// pick reads one of the field's choices, or another word for it, whatever its
// case.
func (f *Field) pick(v Value) (Value, *Error) {
	if c, ok := f.Also[strings.ToLower(v.Text)]; ok {
		v.Pick = c
		return v, nil
	}
	for _, c := range f.Choices {
		if strings.ToLower(c) == strings.ToLower(v.Text) {
			v.Pick = c
			return v, nil
		}
	}
	return v, f.because(v.Text, Unknown, "is none of "+strings.Join(f.Choices, ", "))
}

// beyond says in what way a value in SI is outside the field's limits; "" if it
// is not. A field without a unit of limits has none of its own.
func (f *Field) beyond(si float64) string {
	if f.Limit == "" && f.Kinds[0] != quantity.Number {
		return ""
	}
	least, most := si, si
	if f.Limit == "" {
		least, most = f.Min, f.Max
	} else {
		least, most = quantity.Of(f.Min, f.Limit), quantity.Of(f.Max, f.Limit)
	}
	switch {
	case si <= 0 && least > 0 && f.Kinds[0] != quantity.Temperature:
		return "is not more than 0"
	case si < least:
		return "is less than " + f.limit(f.Min)
	case si > most:
		return "is more than " + f.limit(f.Max)
	}
	return ""
}

// limit prints a limit as short as it is written in the table.
func (f *Field) limit(x float64) string {
	return strings.TrimSpace(strconv.FormatFloat(x, 'f', -1, 64) + " " + f.Limit)
}

// fallback is what a blank means.
func (f *Field) fallback() Value {
	if f.Default == "" {
		return Value{}
	}
	if f.Form == Choice {
		return Value{State: Assumed, Pick: f.Default}
	}
	v, err := f.read(f.Default)
	if err != nil {
		panic("field: default of " + f.Name + ": " + err.Text)
	}
	v.State, v.Text = Assumed, ""
	return v
}

// wrong words an error of the quantity reader.
func (f *Field) wrong(text string, err error) *Error {
	code := string(quantity.BadNumber)
	if e, ok := err.(*quantity.Error); ok {
		code = string(e.Code)
	}
	return f.because(text, code, "can't be read: "+err.Error())
}

// because words a mistake: what was typed, why it can't stand, what is wanted.
func (f *Field) because(text, code, why string) *Error {
	return &Error{f.Name, code, Quote(text) + " " + why + ". " + f.Wanted()}
}

// Wanted says what belongs into the field, with an example.
// Kept out of its callers for the size of the program.
//
//go:noinline
func (f *Field) Wanted() string {
	return Capital(f.Noun) + " is wanted, such as " + f.Example + "."
}

// longest is how much of what was typed a sentence quotes.
const longest = 40

// Quote puts what was typed between quotation marks, its first 40 characters.
// Kept out of its callers for the size of the program.
//
//go:noinline
func Quote(text string) string { return "“" + cut(text) + "”" }

func cut(text string) string {
	n := 0
	for i := range text {
		if n == longest {
			return text[:i] + "…"
		}
		n++
	}
	return text
}

// Capital begins a sentence with a text: a letter a to z becomes a capital.
func Capital(text string) string {
	if text != "" && 'a' <= text[0] && text[0] <= 'z' {
		return string(text[0]-'a'+'A') + text[1:]
	}
	return text
}
