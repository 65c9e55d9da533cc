package job

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// want is what must come of a set of fields, with the source of it.
type want struct {
	fields string // "" for those of the row above
	at     string // where it stands in Worked, as in Bite.Time; Errors.time is the code of the error there
	is     any    // a number in SI, about, none, a bool, a State, a text or a count
	source string
}

// none is no number, and at an error's field no error.
type none struct{}

// about is a number with the share by which it may be off.
type about struct{ x, within float64 }

// exactly is how near a number must be that is worked by hand.
const exactly = 1e-5

func check(t *testing.T, wants []want) {
	t.Helper()
	fields := ""
	for _, w := range wants {
		if w.fields != "" {
			fields = w.fields
		}
		if w.source == "" {
			t.Errorf("%s of %s has no source", w.at, fields)
		}
		got := at(t, Work(field.Read(fields)), w.at)
		if !w.holds(got) {
			t.Errorf("%s\n%s is %+v, want %v (%s)", fields, w.at, got, w.is, w.source)
		}
	}
}

// at finds a value in what was worked out.
func at(t *testing.T, w Worked, path string) any {
	t.Helper()
	if name, ok := strings.CutPrefix(path, "Errors."); ok {
		for _, e := range w.Errors {
			if e.Field == name {
				return e.Code
			}
		}
		return none{}
	}
	v := reflect.ValueOf(w)
	for name := range strings.SplitSeq(path, ".") {
		if v.Kind() == reflect.Pointer {
			v = v.Elem()
		}
		if v = v.FieldByName(name); !v.IsValid() {
			t.Fatalf("no %s", path)
		}
	}
	switch v.Kind() {
	case reflect.Slice:
		return v.Len()
	case reflect.Float64:
		return quantity.Known(v.Float())
	}
	if r, ok := v.Interface().(quantity.Range); ok {
		return r.Optional
	}
	return v.Interface()
}

func (w want) holds(got any) bool {
	number, isNumber := got.(quantity.Optional)
	if !isNumber {
		return got == w.is
	}
	switch is := w.is.(type) {
	case none:
		return !number.Known()
	case quantity.State:
		return number.State == is
	case int:
		return number.Known() && number.SI == float64(is)
	case float64:
		return number.Known() && math.Abs(number.SI-is) <= exactly*math.Abs(is)
	case about:
		return number.Known() && math.Abs(number.SI-is.x) <= is.within*math.Abs(is.x)
	}
	return false
}

// The constants of the sums by hand.
const (
	faraday = 96485.33212 // C/mol, CODATA 2018, exact
	copper  = 63.546e-3   // kg/mol, these four: IUPAC 2021, abridged
	zinc    = 65.38e-3
	silver  = 107.87e-3
	tin     = 118.71e-3

	cu  = "metal=oxygen-free+copper&metalDensity=9&" // pure, of a round density
	cu2 = copper / 2 / faraday                       // kg/C, copper that leaves with two charges
)

const (
	byHand = "sum by hand"
	vocab  = "the vocabulary"
	choice = "common practice, no source"
)

// States as the tables have them.
const (
	blank = quantity.Blank
	read  = quantity.Given
	bad   = quantity.Bad
)

func work(fields string) Worked { return Work(field.Read(fields)) }

func near(got, want float64) bool { return math.Abs(got-want) <= exactly*math.Abs(want) }
