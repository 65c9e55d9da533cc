package drawing

import (
	"math"
	"strconv"
	"strings"

	"saltbite/calc/quantity"
)

// nice is the largest of 1, 2 and 5 times a power of ten that is not more than x.
func nice(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, step := range []float64{5, 2} {
		if step*power <= x*(1+1e-9) {
			return step * power
		}
	}
	return power
}

// niceAbove is the smallest of them that is not less than x.
func niceAbove(x float64) float64 {
	n := nice(x)
	if n >= x*(1-1e-9) {
		return n
	}
	return nice(2.6 * n) // 1 to 2, 2 to 5, 5 to 10
}

// lengthUnit is the unit that lengths are drawn in.
func lengthUnit(us bool) string {
	if us {
		return "in"
	}
	return "mm"
}

// plain writes a round number as short as it can be.
func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// across and down are lines of a dimension with their ends.
func across(left, right, y, ends float64) *path {
	return from(left, y-ends).line(left, y+ends).move(left, y).line(right, y).move(right, y-ends).line(right, y+ends)
}

func down(p *path, x, top, bottom float64) *path {
	const ends = 1
	return p.move(x-ends, top).line(x+ends, top).move(x, top).line(x, bottom).move(x-ends, bottom).line(x+ends, bottom)
}

// scaleBar draws a bar of a round length from x, at most so long, at so many
// mm of drawing to the metre, its text behind it; it returns where that ends.
func (d *Drawing) scaleBar(x, y, most, perMetre float64, us bool) (length Size, end float64) {
	unit := lengthUnit(us)
	round := nice(quantity.In(most/perMetre, unit))
	length = Size{quantity.Of(round, unit), plain(round) + " " + unit}
	to := x + length.SI*perMetre
	d.add(Scale, across(x, to, y, 1))
	d.write(Word, length.Text, to+1.5, y+1.5, wordSize, Start)
	return length, to + 1.5 + widthOf(length.Text, wordSize, false)
}

// besideScale says behind the scale bar, which ends there, what does not go by it.
func (d *Drawing) besideScale(end, stretched float64, short bool) {
	var said []string
	if stretched > 1 {
		said = append(said, "depths drawn "+plain(stretched)+"×")
	}
	if short {
		said = append(said, "cut short")
	}
	for ; len(said) > 0; said = said[:len(said)-1] {
		text := strings.Join(said, ", ")
		if end+3+widthOf(text, wordSize, false) <= columnRight {
			d.write(Word, text, columnRight, scaleY+1.5, wordSize, End)
			return
		}
	}
}

// scaleWords says the same in words.
func scaleWords(stretched float64, short bool) string {
	said := "Widths and depths are drawn to one scale."
	if stretched > 1 {
		said = "Depths are drawn " + plain(stretched) + " times as large as widths."
	}
	if short {
		said += " The middle of the sheet's thickness is left out."
	}
	return said
}
