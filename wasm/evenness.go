//go:build long || !js

package main

import (
	"encoding/binary"
	"math"

	"saltbite/calc/evenness"
	"saltbite/calc/picture"
)

// evened works out how evenly a picture is etched. The bytes are the map: the local
// depths over the mean, four bytes each with the lowest first, and after them the same
// in whole per cent, a byte each.
func evened(args string, data []byte, progress func(share float64)) (string, []byte) {
	p, fields, err := pictureOf(args, data)
	if err != nil {
		return evenJSON(picture.EvenSaid(picture.Evened{Pictured: picture.Refused(fields, err)})), nil
	}
	reply := picture.EvenSaid(picture.Even(p, fields, progress))
	return evenJSON(reply), append(floats(reply.Map), reply.Levels...)
}

// distances works out how even the etch would be at other distances to the cathode, and
// with a border of scrap.
func distances(args string, data []byte, progress func(share float64)) (string, []byte) {
	p, fields, err := pictureOf(args, data)
	if err != nil {
		return distancesJSON(picture.DistanceReply{Errors: picture.Refused(fields, err).Errors}), nil
	}
	return distancesJSON(picture.DistancesSaid(picture.Distances(p, fields, progress))), nil
}

func distancesJSON(r picture.DistanceReply) string {
	w := writer{}
	w.open('{')
	w.string("sentence", r.Sentence)
	w.key("rows")
	w.open('{')
	w.varied("distances", "distance", r.Rows)
	w.varied("scrap", "border", r.Scrap)
	w.close('}')
	w.errors(r.Errors)
	w.close('}')
	return string(w.out)
}

func (w *writer) contours(list []picture.Contour) {
	w.objects("contours", len(list), func(i int) {
		c := list[i]
		w.string("text", c.Text)
		w.string("path", c.Path)
		w.number("across", c.Across)
		w.number("down", c.Down)
	})
}

// varied writes rows, each under what stands first in it.
func (w *writer) varied(key, first string, rows []picture.VariedRow) {
	w.objects(key, len(rows), func(i int) {
		row := rows[i]
		w.cell(first, row.At)
		w.cell("least", row.Least)
		w.cell("most", row.Most)
		w.cell("spread", row.Spread)
		w.cell("volts", row.Volts)
		w.cell("longer", row.Longer)
	})
}

func floats(m evenness.Map) []byte {
	out := make([]byte, 0, 5*len(m.Values)) // with room for the levels
	for _, v := range m.Values {
		out = binary.LittleEndian.AppendUint32(out, math.Float32bits(v))
	}
	return out
}

func evenJSON(r picture.EvenReply) string {
	w := writer{}
	w.open('{')
	w.string("sentence", r.Sentence)
	w.answers(r.Answers)
	w.key("rows")
	w.open('{')
	w.objects("spots", len(r.Spots), func(i int) {
		s := r.Spots[i]
		w.cell("x", s.X)
		w.cell("y", s.Y)
		w.cell("depth", s.Depth)
		w.number("across", s.Across)
		w.number("down", s.Down)
		w.whether("over", s.Over)
	})
	w.close('}')
	w.filled(r.Fields)
	if r.Levels != nil {
		w.key("map")
		w.open('{')
		w.number("width", float64(r.Map.Columns))
		w.number("height", float64(r.Map.Rows))
		w.number("first", float64(r.First))
		w.shades("shades", r.Shades)
		w.shades("scale", r.Scale)
		w.contours(r.Contours)
		w.close('}')
	}
	w.array("assumed")
	for _, name := range r.Assumed {
		w.text(name.String())
	}
	w.close(']')
	w.cautions(r.Cautions)
	w.errors(r.Errors)
	w.close('}')
	return string(w.out)
}

func (w *writer) shades(key string, list []picture.Shade) {
	w.objects(key, len(list), func(i int) {
		s := list[i]
		w.string("text", s.Text)
		w.string("colour", s.Colour)
	})
}
