//go:build long || !js

package main

import (
	"saltbite/calc/advice"
	"saltbite/calc/field"
	"saltbite/calc/job"
)

// trialOf fits a log of finished runs, and classOf plans a class. The text is
// that of many sets (field.ReadMany): first the fields that stand beside the
// rows, then the rows.
func trialOf(text string) string {
	fields, rows := parted(text)
	sets := make([]*field.Set, len(rows))
	for i, row := range rows {
		sets[i] = row.Set
	}
	return manyJSON(advice.Trial(job.Try(sets, fields)))
}

func classOf(text string) string {
	fields, rows := parted(text)
	return manyJSON(advice.Class(job.Teach(rows, fields)))
}

// parted are the fields beside the rows, and the rows.
func parted(text string) (*field.Set, []field.Named) {
	sets := field.ReadMany(text)
	if len(sets) == 0 {
		return field.Read(""), nil
	}
	return sets[0].Set, sets[1:]
}

func manyJSON(m advice.Many) string {
	w := writer{}
	w.open('{')
	w.string("sentence", m.Sentence)
	w.answers(m.Answers)
	w.key("rows")
	w.open('{')
	w.runs(m.Runs)
	if len(m.Steps) > 0 {
		w.course(m)
	}
	w.close('}')
	w.plan(m.Loads)
	w.cautions(m.Cautions)
	w.array("errors")
	for _, e := range m.Errors {
		w.rowError(e)
	}
	w.close(']')
	w.close('}')
	return string(w.out)
}

func (w *writer) runs(runs []advice.RunRow) {
	w.objects("runs", len(runs), func(i int) {
		r := runs[i]
		w.number("row", float64(r.Row))
		w.number("efficiency", r.Efficiency)
		w.number("low", r.Low)
		w.number("high", r.High)
		w.unlessBlank("odd", r.Odd)
	})
}

// rowError writes a mistake with its row, from 0; without one it is of the fields
// beside the rows.
func (w *writer) rowError(e job.RowError) {
	w.open('{')
	w.mistake(e.Error)
	if e.Row >= 0 {
		w.number("row", float64(e.Row))
	}
	w.close('}')
}
