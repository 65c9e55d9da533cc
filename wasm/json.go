package main

import (
	"strconv"
	"unicode/utf8"

	"saltbite/calc/advice"
	"saltbite/calc/field"
	"saltbite/calc/metal"
)

// A small JSON writer, because encoding/json would add a fifth to the size of
// the program. It writes RFC 8259 text; a number is always finite, or absent.
// Each value but the first of its object or array has a comma before it.

type writer struct{ out []byte }

func replyJSON(r advice.Reply) string {
	w := writer{make([]byte, 0, 4096)}
	w.open('{')
	w.string("sentence", r.Sentence)
	w.texts("found", r.Found)
	w.answers(r.Answers)
	w.given(r.Given)
	w.unlessBlank("salt", r.Salt)
	w.supply(r.Supply)
	w.key("rows")
	w.rows(r)
	w.cautions(r.Cautions)
	w.errors(r.Errors)
	w.close('}')
	return string(w.out)
}

// supply writes the verdict on the supply, if there is one.
func (w *writer) supply(v *advice.Verdict) {
	if v == nil {
		return
	}
	w.key("supply")
	w.open('{')
	w.string("fits", v.Fits)
	w.string("text", v.Text)
	w.texts("assumed", v.Assumed)
	w.close('}')
}

// given writes what was read of each field that was typed.
func (w *writer) given(list []advice.Read) {
	w.key("given")
	w.open('{')
	for _, g := range list {
		w.key(g.Name)
		w.open('{')
		if g.Number {
			w.number("value", g.Value)
			w.string("unit", g.Unit)
		}
		w.string("text", g.Text)
		w.close('}')
	}
	w.close('}')
}

func hitsJSON(hits []metal.Hit) string {
	w := writer{}
	w.open('[')
	for _, h := range hits {
		w.open('{')
		w.string("id", h.Metal.ID)
		w.string("name", h.Metal.Name)
		w.string("why", why(h))
		w.close('}')
	}
	w.close(']')
	return string(w.out)
}

// why is the reason of a hit, and what a person should know of a name that
// misleads.
func why(h metal.Hit) string {
	if h.Remark == "" {
		return h.Why
	}
	return h.Why + "; " + h.Remark
}

// answers writes figures by their names.
func (w *writer) answers(list []advice.Figure) {
	w.key("answers")
	w.open('{')
	for _, a := range list {
		w.key(a.Name)
		w.answer(a)
	}
	w.close('}')
}

func (w *writer) answer(a advice.Figure) {
	w.open('{')
	w.figure(a.Value, a.Unit, a.Text)
	if a.Low != nil {
		w.number("low", *a.Low)
	}
	if a.High != nil {
		w.number("high", *a.High)
	}
	w.unlessBlank("range", a.Range)
	w.unlessBlank("by", a.By)
	w.close('}')
}

func (w *writer) figure(value float64, unit, text string) {
	w.number("value", value)
	w.string("unit", unit)
	w.string("text", text)
}

func (w *writer) rows(r advice.Reply) {
	w.open('{')
	w.array("metal")
	for _, m := range r.Metals {
		w.metal(m)
	}
	w.close(']')
	w.objects("bites", len(r.Steps), func(i int) {
		row := r.Steps[i]
		w.cell("depth", row.Depth)
		w.cell("area", row.Area)
		w.cell("minutes", row.Minutes)
		w.cell("amperes", row.Amperes)
		w.cell("reached", row.Reached)
	})
	if len(r.Causes) > 0 {
		w.objects("causes", len(r.Causes), func(i int) {
			c := r.Causes[i]
			w.string("code", c.Code)
			w.string("text", c.Text)
			w.string("do", c.Do)
			w.string("field", c.Field)
			w.string("source", c.Source)
		})
	}
	w.close('}')
}

func (w *writer) cell(name string, c advice.Cell) {
	w.key(name)
	w.open('{')
	w.figure(c.Value, c.Unit, c.Text)
	w.close('}')
}

func (w *writer) metal(m advice.MetalRow) {
	w.open('{')
	w.string("id", m.ID)
	w.string("name", m.Name)
	w.string("composition", m.Composition)
	w.number("density", m.Density)
	w.string("family", m.Family)
	w.string("why", m.Why)
	w.unlessBlank("remark", m.Remark)
	w.close('}')
}

func (w *writer) cautions(list []advice.Caution) {
	w.objects("cautions", len(list), func(i int) {
		c := list[i]
		w.string("code", c.Code)
		w.string("level", string(c.Level))
		w.unlessBlank("field", c.Field)
		w.string("text", c.Text)
		w.string("card", c.Card)
	})
}

func (w *writer) errors(list []field.Error) {
	w.objects("errors", len(list), func(i int) {
		e := list[i]
		w.mistake(e)
	})
}

// mistake writes what an error holds.
func (w *writer) mistake(e field.Error) {
	w.string("field", e.Field)
	w.string("code", e.Code)
	w.string("text", e.Text)
	if len(e.Readings) > 0 {
		w.texts("readings", e.Readings)
	}
}

// open begins an object or an array.
func (w *writer) open(bracket byte) {
	w.comma()
	w.out = append(w.out, bracket)
}

// close ends it.
func (w *writer) close(bracket byte) { w.out = append(w.out, bracket) }

// comma parts a value from the one before it, if there is one.
func (w *writer) comma() {
	if len(w.out) == 0 {
		return
	}
	switch w.out[len(w.out)-1] {
	case '{', '[', ':':
	default:
		w.out = append(w.out, ',')
	}
}

// key begins a value of an object.
func (w *writer) key(name string) {
	w.text(name)
	w.out = append(w.out, ':')
}

func (w *writer) array(name string) {
	w.key(name)
	w.open('[')
}

// objects writes a list of so many objects, whose values write writes, one by one.
func (w *writer) objects(name string, count int, write func(i int)) {
	w.array(name)
	for i := range count {
		w.open('{')
		write(i)
		w.close('}')
	}
	w.close(']')
}

// texts writes a list of texts.
func (w *writer) texts(name string, texts []string) {
	w.array(name)
	for _, text := range texts {
		w.text(text)
	}
	w.close(']')
}

func (w *writer) string(name, value string) {
	w.key(name)
	w.text(value)
}

// unlessBlank writes a text that may be absent.
func (w *writer) unlessBlank(name, value string) {
	if value != "" {
		w.string(name, value)
	}
}

func (w *writer) number(name string, x float64) {
	w.key(name)
	w.out = strconv.AppendFloat(w.out, x, 'g', -1, 64)
}

// text writes a string: quotation mark, backslash and controls escaped, bytes
// that are no UTF-8 replaced.
func (w *writer) text(s string) {
	w.comma()
	w.out = append(w.out, '"')
	from := 0 // of what stands as it is
	for i, r := range s {
		if r >= ' ' && r != '"' && r != '\\' && r != utf8.RuneError {
			continue
		}
		w.out = append(w.out, s[from:i]...)
		_, width := utf8.DecodeRuneInString(s[i:])
		from = i + width
		w.escape(r)
	}
	w.out = append(append(w.out, s[from:]...), '"')
}

func (w *writer) escape(r rune) {
	const hex = "0123456789abcdef"
	switch {
	case r == utf8.RuneError:
		w.out = utf8.AppendRune(w.out, r)
	case r < ' ':
		w.out = append(w.out, '\\', 'u', '0', '0', hex[r>>4], hex[r&15])
	default:
		w.out = append(w.out, '\\', byte(r))
	}
}
