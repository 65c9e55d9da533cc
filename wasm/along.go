//go:build long || !js

package main

import (
	"encoding/binary"
	"math"
	"strconv"
	"strings"

	"saltbite/calc/artwork"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/calc/picture"
)

// along draws the sheet cut through along a line across a picture. The first line of the
// text holds the columns and rows of the map that measure gave, those of the map that
// evenness gave (0 0 without one), and the line's ends, across and down, as shares of the
// picture; the fields stand after it. The bytes are those of both maps, the depths four
// bytes each with the lowest first.
func along(args string, data []byte, _ func(share float64)) (string, []byte) {
	head, text, _ := strings.Cut(args, "\n")
	words := strings.Fields(head)
	numbers := make([]float64, 8)
	for i := range min(len(words), len(numbers)) {
		numbers[i], _ = strconv.ParseFloat(words[i], 64) // what is no number gives maps of another size than the bytes
	}
	across, down, columns, rows := int(numbers[0]), int(numbers[1]), int(numbers[2]), int(numbers[3])
	cells := across * down
	if across < 1 || down < 1 || columns < 0 || rows < 0 || max(across, down, columns, rows) > mostAcross || len(data) != cells+4*columns*rows {
		return alongJSON(picture.AlongReply{}), nil
	}
	depths := make([]float32, columns*rows)
	for i := range depths {
		depths[i] = math.Float32frombits(binary.LittleEndian.Uint32(data[cells+4*i:]))
	}
	line := picture.Line{A: place(numbers[4:]), B: place(numbers[6:])}
	return alongJSON(picture.Along(artwork.Map{Width: across, Height: down, Open: data[:cells]}, evenness.Map{Columns: columns, Rows: rows, Values: depths}, line, field.Read(text))), nil
}

// mostAcross is more than either map has cells on a side.
const mostAcross = 1 << 12

// place is on the picture.
func place(xy []float64) evenness.Place {
	within := func(x float64) float64 {
		if !(x > 0) { // nor a number
			return 0
		}
		return math.Min(x, 1)
	}
	return evenness.Place{X: within(xy[0]), Y: within(xy[1])}
}

func alongJSON(r picture.AlongReply) string {
	w := writer{}
	w.open('{')
	if r.Drawing != nil {
		w.key("drawing")
		w.drawing(r.Drawing)
	}
	w.errors(r.Errors)
	w.close('}')
	return string(w.out)
}
