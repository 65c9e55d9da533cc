//go:build long || !js

package main

import "saltbite/calc/advice"

// plan writes the loads of a class.
func (w *writer) plan(loads []advice.LoadRow) {
	w.array("plan")
	for _, l := range loads {
		w.open('{')
		w.number("load", float64(l.Load))
		w.number("round", float64(l.Round))
		w.number("supply", float64(l.Supply))
		w.number("start", l.Start.Value)
		w.number("minutes", l.Minutes.Value)
		w.number("amperes", l.Amperes.Value)
		w.number("from", l.From)
		w.number("to", l.To)
		w.string("text", l.Text)
		w.array("pieces")
		for _, p := range l.Pieces {
			w.open('{')
			w.string("name", p.Name)
			w.number("count", float64(p.Count))
			w.number("lift", p.Lift.Value)
			w.number("down", p.Down.Value)
			w.number("to", p.To)
			w.string("text", p.Text)
			w.close('}')
		}
		w.close(']')
		w.close('}')
	}
	w.close(']')
}

// course writes what is to be done in a class, the scale of its timetable, its
// cards, and what fits instead.
func (w *writer) course(m advice.Many) {
	w.texts("instead", m.Instead)
	w.array("steps")
	for _, s := range m.Steps {
		w.open('{')
		w.number("at", s.At.Value)
		w.string("time", s.Time)
		w.number("load", float64(s.Load))
		w.number("supply", float64(s.Supply))
		w.string("text", s.Text)
		w.close('}')
	}
	w.close(']')
	w.array("ticks")
	for _, t := range m.Ticks {
		w.open('{')
		w.number("at", t.At)
		w.string("text", t.Text)
		w.close('}')
	}
	w.close(']')
	w.array("cards")
	for _, c := range m.Cards {
		w.open('{')
		w.string("name", c.Name)
		w.texts("lines", c.Lines)
		w.close('}')
	}
	w.close(']')
}

func (w *writer) texts(name string, texts []string) {
	w.array(name)
	for _, text := range texts {
		w.text(text)
	}
	w.close(']')
}
