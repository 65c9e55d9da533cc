// Package advice says what was worked out: in a reply of figures, a sentence,
// cautions and errors, and in pictures. It reads what package job worked out
// and changes nothing.
package advice

import (
	"strconv"
	"strings"

	"saltbite/calc/bite"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/metal"
)

// Reply is all that a set of fields answers.
type Reply struct {
	Sentence string
	Found    []string
	Answers  []Figure // in the order of field.Answers
	Given    []Read   // what was read of each field that was typed, in the order of field.Fields
	Metals   []MetalRow
	Salt     string   // of the bath: as typed, else the metal's own; "" while it is not known
	Supply   *Verdict // nil while neither volts nor amperes are given
	Steps    []StepRow
	Causes   []Cause // likeliest first, where it is said what is seen
	Cautions []Caution
	Errors   []field.Error
}

// Answer says what was worked out.
func Answer(w job.Worked) Reply {
	v := viewOf(&w)
	cautions, verdict := v.cautions(), v.verdict()
	r := Reply{
		Sentence: v.sentence(cautions, verdict.words()),
		Supply:   verdict,
		Answers:  v.answers(),
		Given:    read(w.Fields),
		Metals:   metalRows(w.Metal),
		Steps:    v.stepRows(),
		Cautions: cautions,
		Causes:   v.causes(),
		Errors:   w.Errors,
	}
	for _, name := range w.Bite.Found {
		r.Found = append(r.Found, name.String())
	}
	if w.Salt.Known() {
		r.Salt = w.Salt.Name
	}
	return r
}

// view is what was worked out, with its figures as answers.
type view struct {
	*job.Worked
	figures
	field.Printer
}

func viewOf(w *job.Worked) view { return view{w, figuresOf(w), w.Fields.Printer()} }

// text prints an answer that is there.
func (v *view) text(name field.AnswerName) string { return v.Say(name, v.figures[name].SI) }

// has says whether an answer is there.
func (v *view) has(name field.AnswerName) bool { return v.figures[name].Known() }

// MetalRow is a reading of what was typed as the metal: the first is the one
// used, the others are its rivals.
type MetalRow struct {
	ID          string
	Name        string
	Composition string
	Density     float64 // g/cm3
	Family      string
	Why         string
	Remark      string
}

func metalRows(m job.Metal) (rows []MetalRow) {
	if !m.Given() {
		return nil
	}
	why := m.Reading.Why
	if m.Reading.Typed {
		why += "; its density is calculated by mixing, to within 3 %"
	}
	rows = append(rows, metalRow(m.Reading.Metal, why))
	for _, rival := range m.Reading.Rivals {
		rows = append(rows, metalRow(rival.Metal, rival.Why))
	}
	return rows
}

func metalRow(m *metal.Metal, why string) MetalRow {
	return MetalRow{ID: m.ID, Name: m.Name, Composition: composition(m), Density: m.Density / 1000,
		Family: m.Family.String(), Why: why, Remark: m.Remark}
}

// composition is what a metal holds, in per cent by mass, as "70 Cu 30 Zn".
func composition(m *metal.Metal) string {
	var parts []string
	for _, c := range m.Composition {
		parts = append(parts, strconv.FormatFloat(c.Share*100, 'g', 4, 64)+" "+c.Symbol)
	}
	return strings.Join(parts, " ")
}

// StepRow is one of several bites, with areas stopped out between them. Reached is the
// depth, m inside, of what stays exposed to the end of this step: the sum of the depths so far.
type StepRow struct{ Depth, Area, Minutes, Amperes, Reached Cell }

// Cell is a figure in a list.
type Cell struct {
	Value float64
	Unit  string
	Text  string
}

func (v *view) stepRows() (rows []StepRow) {
	for i, s := range v.Steps {
		rows = append(rows, StepRow{typedCell(v.cell(field.AnswerDepth, s.Depth)), typedCell(v.cell(field.AnswerArea, s.Area)),
			v.cell(field.AnswerTime, s.Time.SI), v.cell(field.AnswerCurrent, s.Current.SI),
			typedCell(v.cell(field.AnswerDepth, bite.InAll(v.Steps[:i+1]).Depth))})
	}
	return rows
}

// typedCell is a cell of what was typed, or of a sum of that: it gains no zeros.
func typedCell(c Cell) Cell {
	c.Text = withoutZeros(c.Text)
	return c
}

// withoutZeros drops the zeros that end the decimals of a figure with its unit:
// "0.0500 mm" becomes "0.05 mm".
func withoutZeros(figure string) string {
	number, unit, _ := strings.Cut(figure, " ")
	if !strings.Contains(number, ".") {
		return figure
	}
	return strings.TrimSuffix(strings.TrimRight(number, "0"), ".") + " " + unit
}

// cell is a figure as the answer of that name would be.
func (v *view) cell(name field.AnswerName, si float64) Cell {
	return Cell{name.Row().In(si), name.Row().Unit, v.Say(name, si)}
}
