//go:build long || !js

package main

import (
	"strconv"
	"strings"

	"saltbite/calc/advice"
	"saltbite/calc/artwork"
	"saltbite/calc/field"
	"saltbite/calc/picture"
)

// measure reads a picture and gives the map of what it measured beside the reply;
// prepare makes it ready to print. The first line of
// the text is blank where the bytes are those of a file, or the pixels across and
// down of raw ones, or the name of a picture to learn from; the fields stand after it.
func measure(args string, data []byte, progress func(share float64)) (string, []byte) {
	p, fields, err := pictureOf(args, data)
	if err != nil {
		return pictureJSON(picture.Measured(picture.Refused(fields, err))), nil
	}
	reply := picture.Measured(picture.Measure(p, fields, progress))
	return pictureJSON(reply), reply.Map.Open
}

func prepare(args string, data []byte, progress func(share float64)) (string, []byte) {
	p, fields, err := pictureOf(args, data)
	if err != nil {
		return pictureJSON(picture.Prepared(picture.Refused(fields, err))), nil
	}
	made := picture.Prepare(p, fields, progress)
	return pictureJSON(picture.Prepared(made)), made.PNG
}

func pictureOf(args string, data []byte) (artwork.Picture, *field.Set, error) {
	size, text, _ := strings.Cut(args, "\n")
	fields := field.Read(text)
	if p, fields, ok := picture.Classic(size, fields); ok {
		return p, fields, nil
	}
	if size == "" {
		p, err := artwork.Decode(data)
		return p, fields, err
	}
	across, down, _ := strings.Cut(size, " ")
	width, _ := strconv.Atoi(across) // text that is not a number gives 0 pixels, which is refused
	height, _ := strconv.Atoi(down)
	p, err := artwork.FromPixels(width, height, data)
	return p, fields, err
}

func pictureJSON(r picture.Reply) string {
	w := writer{}
	w.open('{')
	w.string("sentence", r.Sentence)
	w.answers(r.Answers)
	w.key("rows")
	w.open('{')
	w.objects("narrow", len(r.Narrow), func(i int) {
		n := r.Narrow[i]
		w.string("kind", n.Kind)
		w.cell("x", n.X)
		w.cell("y", n.Y)
		w.cell("width", n.Width)
		w.whether("lost", n.Lost)
	})
	w.objects("greys", len(r.Greys), func(i int) {
		g := r.Greys[i]
		w.cell("x", g.X)
		w.cell("y", g.Y)
	})
	w.close('}')
	w.filled(r.Fields)
	if r.Map.Open != nil {
		w.key("map")
		w.open('{')
		w.number("width", float64(r.Map.Width))
		w.number("height", float64(r.Map.Height))
		w.close('}')
	}
	if r.Sheet != nil {
		w.key("sheet")
		w.open('{')
		w.cell("width", r.Sheet.Width)
		w.cell("height", r.Sheet.Height)
		w.close('}')
	}
	w.cautions(r.Cautions)
	w.errors(r.Errors)
	w.close('}')
	return string(w.out)
}

// filled writes fields that are to be filled in, with their texts.
func (w *writer) filled(fields []advice.Filled) {
	w.key("fields")
	w.open('{')
	for _, f := range fields {
		w.string(f.Name, f.Text)
	}
	w.close('}')
}
