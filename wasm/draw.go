package main

import (
	"saltbite/calc/advice"
	"saltbite/calc/drawing"
)

// drawingsJSON writes the pictures of a job by their names; what can't be drawn
// is absent.
func drawingsJSON(d advice.Drawings) string {
	w := writer{make([]byte, 0, 32<<10)}
	w.open('{')
	for _, named := range []struct {
		name    string
		drawing *drawing.Drawing
	}{{"section", d.Section}, {"curve", d.Curve}, {"card", d.Card}, {"back", d.Back}, {"label", d.Label}} {
		if named.drawing != nil {
			w.key(named.name)
			w.drawing(named.drawing)
		}
	}
	w.close('}')
	return string(w.out)
}

func (w *writer) drawing(d *drawing.Drawing) {
	w.open('{')
	w.number("width", d.Width)
	w.number("height", d.Height)
	w.string("title", d.Title)
	w.string("words", d.Words)
	w.unlessBlank("metal", d.Metal)
	w.array("shapes")
	for i := range d.Shapes {
		w.shape(&d.Shapes[i])
	}
	w.close(']')
	w.close('}')
}

func (w *writer) shape(s *drawing.Shape) {
	w.open('{')
	w.string("role", string(s.Role))
	if s.Text == "" {
		w.string("path", s.Path)
		w.whether("dash", s.Dash)
	} else {
		w.string("text", s.Text)
		w.number("x", s.X)
		w.number("y", s.Y)
		w.number("size", s.Size)
		w.string("anchor", string(s.Anchor))
		w.whether("strong", s.Strong)
	}
	w.close('}')
}

// whether writes what is true and leaves out what is not.
func (w *writer) whether(name string, is bool) {
	if is {
		w.key(name)
		w.out = append(w.out, "true"...)
	}
}
