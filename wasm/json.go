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

type writer struct{ out []byte }

func replyJSON(r job.Reply) string {
	w := writer{make([]byte, 0, 4096)}
	w.object(func(key func(string)) {
		key("sentence")
		w.text(r.Sentence)
		key("found")
		list(&w, r.Found, w.text)
		key("answers")
		w.answers(r.Answers)
		key("rows")
		w.rows(r)
		key("cautions")
		list(&w, r.Cautions, w.caution)
		key("errors")
		list(&w, r.Errors, w.err)
	})
	return string(w.out)
}

func hitsJSON(hits []metal.Hit) string {
	w := writer{}
	list(&w, hits, func(h metal.Hit) {
		w.object(func(key func(string)) {
			key("id")
			w.text(h.Metal.ID)
			key("name")
			w.text(h.Metal.Name)
			key("why")
			w.text(why(h))
		})
	})
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

func (w *writer) answers(answers []job.Figure) {
	w.object(func(key func(string)) {
		for _, a := range answers {
			key(a.Name)
			w.answer(a)
		}
	})
}

func (w *writer) answer(a job.Figure) {
	w.object(func(key func(string)) {
		key("value")
		w.number(a.Value)
		key("unit")
		w.text(a.Unit)
		key("text")
		w.text(a.Text)
		if a.Low != nil {
			key("low")
			w.number(*a.Low)
		}
		if a.High != nil {
			key("high")
			w.number(*a.High)
		}
		if a.Range != "" {
			key("range")
			w.text(a.Range)
		}
	})
}

func (w *writer) rows(r job.Reply) {
	w.object(func(key func(string)) {
		key("metal")
		list(w, r.Metals, w.metal)
		key("bites")
		list(w, r.Bites, w.bite)
	})
}

func (w *writer) bite(row job.BiteRow) {
	w.object(func(key func(string)) {
		key("depth")
		w.cell(row.Depth)
		key("area")
		w.cell(row.Area)
		key("minutes")
		w.cell(row.Minutes)
		key("amperes")
		w.cell(row.Amperes)
	})
}

func (w *writer) cell(c job.Cell) {
	w.object(func(key func(string)) {
		key("value")
		w.number(c.Value)
		key("unit")
		w.text(c.Unit)
		key("text")
		w.text(c.Text)
	})
}

func (w *writer) metal(m job.MetalRow) {
	w.object(func(key func(string)) {
		key("id")
		w.text(m.ID)
		key("name")
		w.text(m.Name)
		key("composition")
		w.text(m.Composition)
		key("density")
		w.number(m.Density)
		key("family")
		w.text(m.Family)
		key("why")
		w.text(m.Why)
		if m.Remark != "" {
			key("remark")
			w.text(m.Remark)
		}
	})
}

func (w *writer) caution(c job.Caution) {
	w.object(func(key func(string)) {
		key("code")
		w.text(c.Code)
		key("level")
		w.text(string(c.Level))
		if c.Field != "" {
			key("field")
			w.text(c.Field)
		}
		key("text")
		w.text(c.Text)
		key("card")
		w.text(c.Card)
	})
}

func (w *writer) err(e field.Error) {
	w.object(func(key func(string)) {
		key("field")
		w.text(e.Field)
		key("code")
		w.text(e.Code)
		key("text")
		w.text(e.Text)
	})
}

// object writes an object; the callback writes each value after its key.
func (w *writer) object(fill func(key func(string))) {
	w.out = append(w.out, '{')
	first := true
	fill(func(name string) {
		if !first {
			w.out = append(w.out, ',')
		}
		first = false
		w.text(name)
		w.out = append(w.out, ':')
	})
	w.out = append(w.out, '}')
}

// list writes an array of what each writes; nil is an empty array.
func list[T any](w *writer, items []T, each func(T)) {
	w.out = append(w.out, '[')
	for i, item := range items {
		if i > 0 {
			w.out = append(w.out, ',')
		}
		each(item)
	}
	w.out = append(w.out, ']')
}

func (w *writer) number(x float64) {
	w.out = strconv.AppendFloat(w.out, x, 'g', -1, 64)
}

// text writes a string: quotation mark, backslash and controls escaped, bytes
// that are no UTF-8 replaced.
func (w *writer) text(s string) {
	const hex = "0123456789abcdef"
	w.out = append(w.out, '"')
	for _, r := range s {
		switch {
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
