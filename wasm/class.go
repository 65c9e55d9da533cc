//go:build long || !js

package main

import "saltbite/calc/advice"

// plan writes the loads of a class.
func (w *writer) plan(loads []advice.LoadRow) {
	w.objects("plan", len(loads), func(i int) {
		l := loads[i]
		w.number("load", float64(l.Load))
		w.number("round", float64(l.Round))
		w.number("supply", float64(l.Supply))
		w.number("start", l.Start.Value)
		w.number("minutes", l.Minutes.Value)
		w.number("amperes", l.Amperes.Value)
		w.number("from", l.From)
		w.number("to", l.To)
		w.string("text", l.Text)
		w.objects("pieces", len(l.Pieces), func(i int) {
			p := l.Pieces[i]
			w.string("name", p.Name)
			w.number("count", float64(p.Count))
			w.number("lift", p.Lift.Value)
			w.number("down", p.Down.Value)
			w.number("to", p.To)
			w.string("text", p.Text)
		})
	})
}

// course writes what is to be done in a class, the scale of its timetable, its
// cards, and what fits instead.
func (w *writer) course(m advice.Many) {
	w.texts("instead", m.Instead)
	w.objects("steps", len(m.Steps), func(i int) {
		s := m.Steps[i]
		w.number("at", s.At.Value)
		w.string("time", s.Time)
		w.number("load", float64(s.Load))
		w.number("supply", float64(s.Supply))
		w.string("text", s.Text)
	})
	w.objects("ticks", len(m.Ticks), func(i int) {
		t := m.Ticks[i]
		w.number("at", t.At)
		w.string("text", t.Text)
	})
	w.objects("cards", len(m.Cards), func(i int) {
		c := m.Cards[i]
		w.string("name", c.Name)
		w.texts("lines", c.Lines)
	})
}
