package picture

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"saltbite/calc/artwork"
	"saltbite/calc/field"
)

// ring is a picture of 100 by 100 pixels: white, with a black square of 40 by 40 in
// its middle that has a white hole of 20 by 20.
func ring(t *testing.T) artwork.Picture {
	t.Helper()
	pixels := make([]byte, 0, 100*100*4)
	within := func(x, y, from, to int) bool { return x >= from && x < to && y >= from && y < to }
	for y := range 100 {
		for x := range 100 {
			shade := byte(255)
			if within(x, y, 30, 70) && !within(x, y, 40, 60) {
				shade = 0
			}
			pixels = append(pixels, shade, shade, shade, 255)
		}
	}
	p, err := artwork.FromPixels(100, 100, pixels)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func quiet(float64) {}

// The ring covers 0.16 - 0.04 = 12 % of the picture. Black that keeps leaves 88 %
// open, in two islands; at 40 mm across, 0.88 x 16 is 14.08 cm2, and its walls are
// 4 mm wide. What is typed has its sources in the vocabulary.
func TestMeasured(t *testing.T) {
	for _, x := range []struct{ fields, want string }{
		{"width=40", "88.0 % of 40.0 mm by 40.0 mm is exposed: 14.1 cm².; open 88.0 %; area 14.1 cm²; width 40.0 mm; height 40.0 mm; lost 0; grey 0 %; islands 2; holes 1"},
		{"height=40", "height 40.0 mm"},
		{"width=40&black=etches", "12.0 % of 40.0 mm by 40.0 mm is exposed: 1.92 cm².; open 12.0 %"},
		{"width=40&black=etches", "islands 1; holes 1"},
		{"width=40&units=us", "88.0 % of 1.57 in by 1.57 in is exposed: 2.18 in²."}, // 14.08 / 6.4516
		{"", "88.0 % of the picture is exposed.; open 88.0 %; grey 0 %; islands 2; holes 1"},
		{"", "error width missing"},
		{"width=40&depth=1&undercut=3", "lost 1"}, // 4 mm, and 6 mm are undercut
		{"width=40&depth=1&undercut=1", "lost 0"},
		{"width=40&threshold=much", "error threshold number"},
		{"width=40&black=perhaps", "error black unknown"},
		{"width=40&corners=1+2;+3+4;+5+6", "error corners number"},
		{"width=40&corners=1+2;+3+4;+5+6;+7+8;+9+9", "error corners number"},
		{"width=40&corners=1+2;+3+4;+5+6;+7", "error corners number"},
		{"width=40&corners=1+2;+3+4;+5+6;+x+8", "error corners number"},
		{"width=40&corners=1+2;+3+4;+5+6;+8+x", "error corners number"},
		{"width=40&ruler=1+2", "error ruler number"},
		{"ruler=10+50;+60+50&rulerLength=20", "88.0 % of 40.0 mm by 40.0 mm is exposed"},   // 50 of 100 pixels are 20 mm
		{"ruler=10+10;+40+50&rulerLength=1+in", "88.0 % of 50.8 mm by 50.8 mm is exposed"}, // 50 pixels, at an angle: 3, 4, 5
		{"ruler=10+50;+60+50&rulerLength=20&width=30", "of 30.0 mm by 30.0 mm"},            // typed
		{"ruler=10+50;+60+50", "88.0 % of the picture is exposed"},
		{"ruler=10+50;+60+50", "error rulerLength missing"},
		{"ruler=10+50;+60+50&rulerLength=some", "error rulerLength number"},
		{"ruler=10+50;+16+50&rulerLength=20", "error ruler range"},
		{"ruler=10+50;+160+50&rulerLength=20", "error ruler range"},
		{"width=50&height=50&corners=0+0;+100+0;+100+100;+0+100", "of 50.0 mm by 50.0 mm is exposed"},
	} {
		if got := told(Measured(Measure(ring(t), field.Read(x.fields), quiet))); !strings.Contains(got, x.want) {
			t.Errorf("%s: %s, want %s", x.fields, got, x.want)
		}
	}
}

// told is a reply in one line.
func told(r Reply) string {
	parts := []string{r.Sentence}
	for _, a := range r.Answers {
		if a.Name != "edge" && a.Name != "line" && a.Name != "space" { // as near as a pixel
			parts = append(parts, a.Name+" "+a.Text)
		}
	}
	for _, e := range r.Errors {
		parts = append(parts, "error "+e.Field+" "+e.Code)
	}
	return strings.Join(parts, "; ")
}

// The ring's walls are the narrow lines of it, where black keeps: 4 mm wide, 14 mm
// from the middle of the picture or nearer.
func TestNarrow(t *testing.T) {
	list := Measured(Measure(ring(t), field.Read("width=40"), quiet)).Narrow
	i := slices.IndexFunc(list, func(n NarrowRow) bool { return n.Kind == "line" })
	if i < 0 {
		t.Fatalf("no line among %+v", list)
	}
	if n := list[i]; n.Width.Unit != "mm" || n.Width.Value < 3.6 || n.Width.Value > 4.4 || n.X.Value < 12 || n.X.Value > 28 || !strings.HasSuffix(n.Y.Text, " mm") {
		t.Errorf("%+v", n)
	}
	etched := Measured(Measure(ring(t), field.Read("width=40&black=etches"), quiet)).Narrow
	if !slices.ContainsFunc(etched, func(n NarrowRow) bool { return n.Kind == "space" && n.Width.Value > 3.6 && n.Width.Value < 4.4 }) {
		t.Errorf("no space among %+v", etched)
	}
}

// Art that is printed is widened by half of what is lost, on each side.
func TestPrepared(t *testing.T) {
	for _, x := range []struct {
		fields, want string
		printed      bool
	}{
		{"width=40&dpi=100", "As drawn, 40.0 mm by 40.0 mm.", true},
		{"width=40&dpi=100", "closed 0", true},
		{"width=40&dpi=100&depth=4&undercut=1.2", "open 60.3 %", true}, // 965 of 1600 mm2, see below
		{"width=40&dpi=100&depth=4&undercut=0.8", "closed 0", true},    // 3.2 mm a side do not
		{"width=40&dpi=many", "error dpi number", false},
		{"width=40&copies=0", "error copies range", false},
		{"width=40&paper=A1", "error paper unknown", false},
		{"width=40&mirror=perhaps", "error mirror unknown", false},
		{"width=40&black=perhaps", "error black unknown", false},
		{"", "error width missing", false},
		{"width=400&dpi=100&paper=A4", "error paper range", false}, // wider than the paper
	} {
		made := Prepare(ring(t), field.Read(x.fields), quiet)
		if got := told(Prepared(made)); !strings.Contains(got, x.want) || (made.PNG != nil) != x.printed {
			t.Errorf("%s: %s, %d bytes; want %s", x.fields, got, len(made.PNG), x.want)
		}
	}
	// The hole is 8 mm wide, and 4.8 mm on each side close it; what stays open is 1600
	// less 25.6 x 25.6 mm2 with its corners rounded by 4.8 mm, 965 mm2.
	if made := Prepare(ring(t), field.Read("width=40&dpi=100&depth=4&undercut=1.2"), quiet); made.Closed == 0 {
		t.Error("nothing is closed")
	}
	plain := Prepare(ring(t), field.Read("width=40&dpi=100"), quiet).PNG
	for _, fields := range []string{"copies=2", "paper=letter", "dpi=101"} {
		if other := Prepare(ring(t), field.Read("width=40&dpi=100&"+fields), quiet).PNG; fields != "dpi=101" && string(other) == string(plain) {
			t.Errorf("%s changes nothing", fields)
		}
	}
}

// A picture that can't be decoded is refused, with the mistakes of its fields.
func TestRefused(t *testing.T) {
	r := Measured(Refused(field.Read("width=soon"), errors.New("it is no picture")))
	if got := fmt.Sprint(told(r), len(r.Answers)); got != "; error width number; error  picture0" || r.Errors[1].Text != "It is no picture." {
		t.Errorf("%q, %v", got, r.Errors)
	}
	_, err := artwork.FromPixels(5000, 5000, nil) // 25 million
	if r := Measured(Refused(field.Read(""), err)); len(r.Errors) != 1 || r.Errors[0].Field != "" || r.Errors[0].Code != "range" {
		t.Errorf("too many pixels: %+v", r.Errors)
	}
}
