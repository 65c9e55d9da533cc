package picture

import (
	"math"
	"strconv"

	"saltbite/calc/advice"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Filled is a field that was blank, with what the picture gives for it. The same
// job with these fields is answered alike without the picture.
type Filled = advice.Filled

// filled are the fields that the picture fills, of one piece, both its sides where
// two are etched. What is typed stays: with an area typed no share is filled in, and
// a round piece is given its area, since its share is that of the disc.
func (s Pictured) filled(us bool) (list []Filled) {
	fields, art := s.Fields, s.Art
	sides := fields.Amount(field.Sides).SI
	fill := func(name field.Name, si float64) {
		if fields.Blank(name) && si > 0 {
			list = append(list, Filled{Name: name.String(), Text: exactly(name, si, us)})
		}
	}
	round := !fields.Blank(field.Diameter)
	switch {
	case !fields.Blank(field.Area):
	case round:
		fill(field.Area, art.Area*sides)
	default:
		fill(field.Open, art.Open)
	}
	if art.Width == 0 {
		return list
	}
	if !round {
		fill(field.Width, art.Width)
		fill(field.Height, art.Height)
	}
	fill(field.Edge, art.Edge*sides)
	fill(field.Line, art.Line)
	fill(field.Space, art.Space)
	fill(field.Islands, float64(art.Islands)*sides)
	fill(field.Holes, float64(art.Holes)*sides)
	return list
}

// exactly is a text of the field with four significant figures: half a digit is then
// at most 0.05 %.
func exactly(name field.Name, si float64, us bool) string {
	row := name.Row()
	if row.Bare == "" {
		return strconv.FormatFloat(si, 'f', 0, 64)
	}
	unit := row.Bare
	if us && row.USUnit != "" {
		unit = row.USUnit
	}
	const figures = 4
	x := quantity.In(si, unit)
	after := figures - 1 - int(math.Floor(math.Log10(x)))
	return strconv.FormatFloat(x, 'f', max(0, after), 64) + " " + unit
}
