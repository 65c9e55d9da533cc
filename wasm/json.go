package main

import (
	"strconv"
	"unicode/utf8"

	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/metal"
)

// A small JSON writer, because encoding/json would add a fifth to the size of
// the program. It writes RFC 8259 text; a number is always finite, or absent.
// Each value but the first of its object or array has a comma before it.

type writer struct{ out []byte }

func replyJSON(r job.Reply) string {
	w := writer{make([]byte, 0, 4096)}
	w.open('{')
	w.string("sentence", r.Sentence)
	w.array("found")
	for _, name := range r.Found {
		w.text(name)
	}
	w.close(']')
	w.key("answers")
	w.open('{')
	for _, a := range r.Answers {
		w.key(a.Name)
		w.answer(a)
	}
	w.close('}')
	w.unlessBlank("salt", r.Salt)
	w.key("rows")
	w.rows(r)
	w.array("cautions")
	for _, c := range r.Cautions {
		w.caution(c)
	}
	w.close(']')
	w.array("errors")
	for _, e := range r.Errors {
		w.err(e)
	}
	w.close(']')
	w.close('}')
	return string(w.out)
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

func (w *writer) answer(a job.Figure) {
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

func (w *writer) rows(r job.Reply) {
	w.open('{')
	w.array("metal")
	for _, m := range r.Metals {
		w.metal(m)
	}
	w.close(']')
	w.array("bites")
	for _, row := range r.Bites {
		w.open('{')
		w.cell("depth", row.Depth)
		w.cell("area", row.Area)
		w.cell("minutes", row.Minutes)
		w.cell("amperes", row.Amperes)
		w.close('}')
	}
	w.close(']')
	w.close('}')
}

func (w *writer) cell(name string, c job.Cell) {
	w.key(name)
	w.open('{')
	w.figure(c.Value, c.Unit, c.Text)
	w.close('}')
}

func (w *writer) metal(m job.MetalRow) {
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

func (w *writer) caution(c job.Caution) {
	w.open('{')
	w.string("code", c.Code)
	w.string("level", string(c.Level))
	w.unlessBlank("field", c.Field)
	w.string("text", c.Text)
	w.string("card", c.Card)
	w.close('}')
}

func (w *writer) err(e field.Error) {
	w.open('{')
	w.string("field", e.Field)
	w.string("code", e.Code)
	w.string("text", e.Text)
	w.close('}')
}

// open begins an object or an array.
// Kept out of its callers for the size of the program.
//
//go:noinline
func (w *writer) open(bracket byte) {
	w.comma()
	w.out = append(w.out, bracket)
}

// close ends it.
func (w *writer) close(bracket byte) { w.out = append(w.out, bracket) }

// comma parts a value from the one before it, if there is one.
// Kept out of its callers for the size of the program.
//
//go:noinline
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

// key is kept out of its callers for the size of the program.
//
//go:noinline
func (w *writer) key(name string) {
	w.text(name)
	w.out = append(w.out, ':')
}

func (w *writer) array(name string) {
	w.key(name)
	w.open('[')
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
	const hex = "0123456789abcdef"
	w.comma()
	w.out = append(w.out, '"')
	for _, r := range s {
		switch {
		case ' ' <= r && r <= '~' && r != '"' && r != '\\': // nothing to escape
			w.out = append(w.out, byte(r))
		case r == '"' || r == '\\':
			w.out = append(w.out, '\\', byte(r))
		case r < ' ':
			w.out = append(w.out, '\\', 'u', '0', '0', hex[r>>4], hex[r&15])
		default:
			w.out = utf8.AppendRune(w.out, r)
		}
	}
	w.out = append(w.out, '"')
}
