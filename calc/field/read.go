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

// NameOf finds the field of that name.
func NameOf(text string) (Name, bool) {
	for i := range Fields {
		if Fields[i].Name == text {
			return Name(i), true
		}
	}
	return 0, false
}

// read reads a field's text, which is not blank.
func (f *Field) read(text string) (Value, *Error) {
	v := Value{State: quantity.Given, Text: text}
	switch f.Form {
	case Words:
		if f.Max > 0 && utf8.RuneCountInString(text) > int(f.Max) {
			return v, f.because(text, string(quantity.OutOfSize), "is longer than "+limit(f.Max, "")+" characters")
		}
		return v, nil
	case Choice:
		return f.pick(v)
	case Series:
		return f.series(v)
	case Clock:
		return f.clock(v)
	case Hydrometer:
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
	if why := f.beyond(q); why != "" {
		return v, f.because(text, string(quantity.OutOfSize), why)
	}
	return v, nil
}

// pick reads one of the field's choices, or another word for it, whatever its
// case.
func (f *Field) pick(v Value) (Value, *Error) {
	typed := strings.ToLower(v.Text)
	for _, also := range f.Also {
		if also.Word == typed {
			v.Pick = also.Choice
			return v, nil
		}
	}
	for _, c := range f.Choices {
		if strings.ToLower(c) == typed {
			v.Pick = c
			return v, nil
		}
	}
	return v, f.because(v.Text, Unknown, "is not one of "+strings.Join(f.Choices, ", "))
}

// beyond says in what way a quantity is outside the field's limits; "" if it is
// not.
func (f *Field) beyond(q quantity.Quantity) string {
	bound := f.bound(q)
	least, most := bound.Min, bound.Max
	if bound.Unit != "" {
		least, most = quantity.Of(bound.Min, bound.Unit), quantity.Of(bound.Max, bound.Unit)
	}
	switch {
	case q.Value <= 0 && least > 0 && q.Kind != quantity.Temperature:
		return "is not more than 0"
	case q.Value < least:
		return "is less than " + limit(bound.Min, bound.Unit)
	case q.Value > most:
		return "is more than " + limit(bound.Max, bound.Unit)
	}
	return ""
}

// bound is what the field takes of a quantity's kind.
func (f *Field) bound(q quantity.Quantity) Bound {
	for _, b := range f.Bounds {
		if kind, ok := quantity.KindOf(b.Unit); ok && kind == q.Kind {
			return b
		}
	}
	return Bound{f.Min, f.Max, f.Limit}
}

// limit prints a limit as short as it is written in the table.
func limit(x float64, unit string) string {
	return strings.TrimSpace(strconv.FormatFloat(x, 'f', -1, 64) + " " + unit)
}

// fallbacks are what a blank means in each field.
var fallbacks = func() (values [fieldCount]*Value) {
	for i := range Fields {
		v := Fields[i].fallback()
		values[i] = &v
	}
	return values
}()

// fallback is what a blank means.
func (f *Field) fallback() Value {
	if f.Default == "" {
		return Value{}
	}
	if f.Form == Choice {
		return Value{State: quantity.Assumed, Pick: f.Default}
	}
	v, err := f.read(f.Default)
	if err != nil {
		panic("field: default of " + f.Name + ": " + err.Text)
	}
	v.State, v.Text = quantity.Assumed, ""
	return v
}

// wrong words an error of the quantity reader.
func (f *Field) wrong(text string, err error) *Error {
	code := string(quantity.BadNumber)
	var readings []string
	if e, ok := err.(*quantity.Error); ok {
		code, readings = string(e.Code), e.Readings
	}
	wrong := f.because(text, code, "can't be read: "+err.Error())
	wrong.Readings = readings
	return wrong
}

// because words a mistake: what was typed, why it can't stand, what is wanted.
func (f *Field) because(text, code, why string) *Error {
	return &Error{Field: f.Name, Code: code, Text: quantity.Quote(text) + " " + why + ". " + f.Wanted()}
}

// Wanted says what belongs into the field, with an example.
func (f *Field) Wanted() string {
	return "Type " + f.Noun + ", such as " + f.Example + "."
}

// Capital begins a sentence with a text: a letter a to z becomes a capital.
func Capital(text string) string {
	if text != "" && 'a' <= text[0] && text[0] <= 'z' {
		return string(text[0]-'a'+'A') + text[1:]
	}
	return text
}
