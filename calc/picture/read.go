// Package picture works out a picture of the resist from its pixels and the fields
// beside it, and says what it found. It stands apart from package job, because
// what decodes pictures would make the program of the first answer a tenth larger.
package picture

import (
	"errors"
	"strconv"
	"strings"

	"saltbite/calc/artwork"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// Pictured is what a picture of the resist says, with the fields it was read by.
type Pictured struct {
	Fields *field.Set
	Art    artwork.Result
	Known  bool // the picture could be read
	Errors []field.Error

	PNG    []byte        // the art ready to print, of Prepare
	Sheet  artwork.Paper // its size
	Closed int           // separate open stretches that the widening closes
}

// Measure reads a picture. Its real size is the width or the height typed,
// else the file's own; without one, lengths and areas are missing.
func Measure(p artwork.Picture, fields *field.Set, progress func(share float64)) Pictured {
	seen := Pictured{Fields: fields, Errors: fields.Errors()}
	options, ok := seen.options()
	if !ok {
		return seen
	}
	art, err := artwork.Measure(p, options, progress)
	if err != nil {
		return seen.refused(err)
	}
	seen.Art, seen.Known = art, true
	if art.Width == 0 {
		seen.Errors = append(seen.Errors, job.Missing(fields, field.Width)...)
	}
	return seen
}

// Prepare makes art that is ready to print.
func Prepare(p artwork.Picture, fields *field.Set, progress func(share float64)) Pictured {
	seen := Pictured{Fields: fields, Errors: fields.Errors()}
	options, ok := seen.options()
	if !ok || seen.unreadable(field.Dpi, field.Copies, field.Paper, field.Mirror) {
		return seen
	}
	made, err := artwork.Prepare(p, options, artwork.Printing{
		DPI: fields.Amount(field.Dpi).SI, Mirror: fields.Pick(field.Mirror) == "yes", Widen: options.Lost / 2,
		Copies: int(fields.Amount(field.Copies).SI), Paper: papers[fields.Pick(field.Paper)],
	}, progress)
	if err != nil {
		return seen.refused(err)
	}
	seen.Art, seen.Known, seen.PNG, seen.Closed = made.Art, true, made.PNG, made.Closed
	seen.Sheet = artwork.Paper{Width: made.SheetWidth, Height: made.SheetHeight}
	return seen
}

var papers = map[string]artwork.Paper{"A4": artwork.A4, "letter": artwork.Letter}

// Refused is the reply for a picture that could not be decoded.
func Refused(fields *field.Set, err error) Pictured {
	return Pictured{Fields: fields, Errors: fields.Errors()}.refused(err)
}

// options say how the picture is to be read; false if a field can't be read
// without which every answer would be wrong.
func (s *Pictured) options() (artwork.Options, bool) {
	f := s.Fields
	if s.unreadable(field.Black, field.Threshold, field.RulerLength) {
		return artwork.Options{}, false
	}
	o := artwork.Options{
		Width: max(f.Amount(field.Width).SI, f.Amount(field.Diameter).SI), Height: f.Amount(field.Height).SI,
		BlackEtches: f.Pick(field.Black) == "etches",
		Threshold:   f.Amount(field.Threshold).SI,
		Lost:        s.limit(),
	}
	if typed := f.Text(field.Corners); typed != "" {
		if !placesOf(typed, o.Corners[:]) {
			s.unplaced(field.Corners)
			return o, false
		}
	}
	if typed := f.Text(field.Ruler); typed != "" {
		var ends [2]artwork.Point
		if !placesOf(typed, ends[:]) {
			s.unplaced(field.Ruler)
			return o, false
		}
		s.Errors = append(s.Errors, job.Missing(f, field.RulerLength)...)
		o.Ruler = artwork.Ruler{From: ends[0], To: ends[1], Length: f.Amount(field.RulerLength).SI}
	}
	return o, true
}

// unplaced says that a field can't be read as places.
func (s *Pictured) unplaced(name field.Name) {
	s.Errors = append(s.Errors, field.Error{Field: name.String(), Code: string(quantity.BadNumber),
		Text: quantity.Quote(s.Fields.Text(name)) + " can't be read as places. " + name.Row().Wanted()})
}

func (s *Pictured) unreadable(names ...field.Name) bool {
	for _, name := range names {
		if s.Fields.Value(name).State == quantity.Bad {
			return true
		}
	}
	return false
}

// placesOf reads as many places as there are, such as "12 30; 980 44"; false if the
// text has others.
func placesOf(text string, points []artwork.Point) bool {
	places := strings.Split(text, ";")
	if len(places) != len(points) {
		return false
	}
	for i, place := range places {
		words := strings.Fields(place)
		if len(words) != 2 {
			return false
		}
		x, errX := strconv.Atoi(words[0])
		y, errY := strconv.Atoi(words[1])
		if errX != nil || errY != nil {
			return false
		}
		points[i] = artwork.Point{X: float64(x), Y: float64(y)}
	}
	return true
}

// refused adds why a picture, or what was asked of it, can't be used.
func (s Pictured) refused(err error) Pictured {
	code, name, text := field.Picture, "", err.Error()
	var why *artwork.Error
	if errors.As(err, &why) && why.TooLarge {
		code = string(quantity.OutOfSize)
	} else if why != nil && why.Field != "" {
		code, name = string(quantity.OutOfSize), why.Field
		if typed := s.typed(name); typed == "" {
			code = field.Missing
		} else {
			text = quantity.Quote(typed) + " can't be used: " + text
		}
	}
	s.Errors = append(s.Errors, field.Error{Field: name, Code: code, Text: field.Capital(text) + "."})
	return s
}

func (s Pictured) typed(name string) string {
	if known, ok := field.NameOf(name); ok {
		return s.Fields.Text(known)
	}
	return ""
}
