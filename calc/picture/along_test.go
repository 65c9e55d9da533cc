package picture

import (
	"math"
	"strings"
	"testing"

	"saltbite/calc/artwork"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
)

// Across half() 40 mm wide lies metal from 0 to 15 mm and from 30 to 32.5 mm (its pixels:
// to 60 and from 120 to 130 of 160); a line that goes over 3/4 of it crosses each at the same share
// of its way.
func TestStretchesAlong(t *testing.T) {
	e := even(half(), field.Read(inBath+"depth=0.2"), 128, func(float64) {})
	for _, c := range []struct {
		line Line
		want []float64 // mm
	}{
		{Line{evenness.Place{X: 0, Y: 0.5}, evenness.Place{X: 1, Y: 0.5}}, []float64{0, 15, 30, 32.5}},
		{Line{evenness.Place{X: 1, Y: 0.5}, evenness.Place{X: 0.25, Y: 0.5}}, []float64{7.5, 10, 25, 30}},
		{Line{evenness.Place{X: 0.5, Y: 0}, evenness.Place{X: 0.5, Y: 1}}, nil},
		{Line{evenness.Place{X: 0.25, Y: 0}, evenness.Place{X: 0.25, Y: 1}}, []float64{0, 30}},
	} {
		length := math.Hypot(0.04*(c.line.B.X-c.line.A.X), 0.03*(c.line.B.Y-c.line.A.Y))
		var got []float64
		for _, s := range c.line.stretches(e.Art.Map, evenness.Map{}, length) {
			got = append(got, 1000*s.Left, 1000*s.Right)
		}
		if len(got) != len(c.want) {
			t.Fatalf("%v has edges at %v, not %v", c.line, got, c.want)
		}
		for i, want := range c.want {
			if math.Abs(got[i]-want) > 0.05 {
				t.Errorf("%v has edges at %v, not %v", c.line, got, c.want)
			}
		}
	}
}

// Along a line the depths are those of the map there; without a solution the job's stands
// for all. What is needed is said.
func TestAlong(t *testing.T) {
	m := artwork.Map{Width: 4, Height: 1, Open: []byte{255, 0, 0, 255}}
	solved := evenness.Map{Columns: 4, Rows: 1, Values: []float32{1.5, 0, 0, 0.5}}
	line := Line{evenness.Place{X: 0, Y: 0.5}, evenness.Place{X: 1, Y: 0.5}}
	for _, c := range []struct {
		fields string
		solved evenness.Map
		want   string
	}{
		{"metal=copper&width=40&depth=0.2&sheet=1", solved, "It is etched from 0.10 mm to 0.30 mm deep along it, deepest at A, where the mean is 0.200 mm, as asked for. 0.70 mm is left of the sheet of 1.00 mm there."},
		{"metal=copper&width=40&depth=0.2&sheet=1", evenness.Map{}, "All are drawn 0.200 mm deep, as asked for: how even it will be is not worked out yet."},
		{"metal=copper&diameter=40&depth=0.2&sheet=0.3", solved, "There the sheet of 0.300 mm is eaten through."},
		{"metal=copper&depth=0.2", solved, "width missing"},
		{"metal=copper&width=40", solved, "depth missing"},
		{"metal=silver&salt=copper+sulfate&width=40&depth=0.2", solved, ""}, // the bath that is stopped
	} {
		r := Along(m, c.solved, line, field.Read(c.fields))
		said := ""
		if r.Drawing != nil {
			said = r.Drawing.Words
		}
		for _, e := range r.Errors {
			said += e.Field + " " + e.Code
		}
		if !strings.Contains(said, c.want) || (c.want == "") != (said == "") {
			t.Errorf("%s: %q, not %q", c.fields, said, c.want)
		}
	}
}

// A line down the picture is as long as the height that is typed; without one the height
// follows from the width and the picture's pixels.
func TestAlongDown(t *testing.T) {
	m := artwork.Map{Width: 4, Height: 3, Open: []byte{0, 255, 0, 0, 0, 255, 0, 0, 0, 0, 0, 0}}
	down := Line{evenness.Place{X: 0.375, Y: 0}, evenness.Place{X: 0.375, Y: 1}}
	for fields, want := range map[string]string{"width=40": "from A to B, 30.0 mm.", "width=40&height=20": "from A to B, 20.0 mm.", "diameter=20": "from A to B, 15.0 mm."} {
		r := Along(m, evenness.Map{}, down, field.Read("metal=copper&depth=0.2&"+fields))
		if r.Drawing == nil || !strings.Contains(r.Drawing.Words, want) {
			t.Errorf("%s: %+v, not %q", fields, r.Drawing, want)
		}
	}
}
