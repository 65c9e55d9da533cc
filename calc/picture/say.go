package picture

import (
	"strconv"

	"saltbite/calc/advice"
	"saltbite/calc/artwork"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Reply is what is said of a picture of the resist.
type Reply struct {
	Sentence string
	Answers  []advice.Figure
	Narrow   []NarrowRow // the narrowest places first
	Greys    []GreyRow   // the largest first
	Fields   []Filled
	Cautions []advice.Caution
	Errors   []field.Error
	Map      artwork.Map // what was measured; empty if nothing was
	Sheet    *Sheet      // that is printed; nil if nothing was prepared
}

// Sheet is the size of what is printed, the paper's or that of the art alone.
type Sheet struct{ Width, Height advice.Cell }

// NarrowRow is a narrow line or space. X and Y are its middle, from the top left.
type NarrowRow struct {
	Kind        string // "line" or "space"
	X, Y, Width advice.Cell
	Lost        bool // a line that does not survive the depth
}

// GreyRow is a stretch of flat grey. X and Y are its middle, from the top left.
type GreyRow struct{ X, Y advice.Cell }

// Measured says what a picture measures.
func Measured(s Pictured) Reply {
	r := Reply{Errors: s.Errors}
	if !s.Known {
		return r
	}
	p := picturePrinter{s.Fields.Printer().US}
	r.Answers = p.art(s.Art)
	r.Answers = append(r.Answers, p.amount("grey", field.Open, s.Art.Grey),
		count("islands", s.Art.Islands), count("holes", s.Art.Holes))
	for _, place := range s.Art.Narrow {
		kind := "line"
		if place.Space {
			kind = "space"
		}
		lost := !place.Space && place.Width < s.limit()
		r.Narrow = append(r.Narrow, NarrowRow{kind, p.cell(place.X), p.cell(place.Y), p.cell(place.Width), lost})
	}
	for _, grey := range s.Art.Greys {
		if s.Art.Width > 0 {
			r.Greys = append(r.Greys, GreyRow{p.cell(grey.X), p.cell(grey.Y)})
		}
	}
	if s.Art.Threshold > 0 {
		r.Answers = append(r.Answers, p.amount("threshold", field.Threshold, s.Art.Threshold))
	}
	r.Sentence = p.words(s.Art)
	r.Fields = s.filled(p.us)
	r.Cautions = s.cautions(p)
	r.Map = s.Art.Map
	return r
}

// Prepared says what art measures that is ready to print.
func Prepared(s Pictured) Reply {
	r := Reply{Errors: s.Errors}
	if s.Known {
		p := picturePrinter{s.Fields.Printer().US}
		r.Answers = append(p.art(s.Art), count("closed", s.Closed))
		r.Sentence = s.printed(p)
		r.Cautions = s.closing(p)
		if s.PNG != nil {
			r.Sheet = &Sheet{p.cell(s.Sheet.Width), p.cell(s.Sheet.Height)}
		}
	}
	return r
}

// picturePrinter prints what a picture gave, in the unit of the field that it is
// typed into.
type picturePrinter struct{ us bool }

// art are the answers that both calls give.
func (p picturePrinter) art(a artwork.Result) []advice.Figure {
	list := []advice.Figure{p.amount("open", field.Open, a.Open)}
	for _, row := range []struct {
		name field.Name
		si   float64
	}{{field.Area, a.Area}, {field.Edge, a.Edge}, {field.Line, a.Line}, {field.Space, a.Space}, {field.Width, a.Width}, {field.Height, a.Height}} {
		if a.Width > 0 && row.si > 0 {
			list = append(list, p.amount(row.name.String(), row.name, row.si))
		}
	}
	if a.Width > 0 {
		list = append(list, count("lost", a.Lost))
	}
	return list
}

// amount is an answer that is printed as a field.
func (p picturePrinter) amount(name string, like field.Name, si float64) advice.Figure {
	row := like.Row()
	return advice.Figure{Name: name, Value: quantity.In(si, row.Bare), Unit: row.Bare, Text: p.say(like, si)}
}

func (p picturePrinter) say(like field.Name, si float64) string {
	row, unit := like.Row(), like.Row().Bare
	if p.us && row.USUnit != "" {
		unit = row.USUnit
	}
	return quantity.Print(si, row.Kinds[0], unit)
}

func (p picturePrinter) cell(si float64) advice.Cell {
	return advice.Cell{Value: quantity.In(si, field.Width.Row().Bare), Unit: field.Width.Row().Bare, Text: p.say(field.Width, si)}
}

func (p picturePrinter) words(a artwork.Result) string {
	open := p.say(field.Open, a.Open)
	if a.Width == 0 {
		return open + " of the picture is exposed."
	}
	return open + " of " + p.say(field.Width, a.Width) + " by " + p.say(field.Height, a.Height) + " is exposed: " + p.say(field.Area, a.Area) + "."
}

func count(name string, n int) advice.Figure {
	return advice.Figure{Name: name, Value: float64(n), Text: strconv.Itoa(n)}
}
