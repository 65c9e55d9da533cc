//go:build long || !js

package main

import (
	"bytes"
	"encoding/json"
	"image"
	"image/color"
	"image/png"
	"net/url"
	"strings"
	"testing"
)

// squarePNG is a picture of 100 by 100 pixels, white but for a black square of 40
// by 40 in its middle. It states no size.
func squarePNG(t *testing.T) []byte {
	t.Helper()
	picture := image.NewGray(image.Rect(0, 0, 100, 100))
	for y := range 100 {
		for x := range 100 {
			if x < 30 || x >= 70 || y < 30 || y >= 70 {
				picture.SetGray(x, y, color.Gray{Y: 255})
			}
		}
	}
	var b bytes.Buffer
	if err := png.Encode(&b, picture); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

type pictureReply struct {
	Sentence string
	Fields   map[string]string
	Map      struct{ Width, Height int }
	Cautions []struct{ Code, Level, Text string }
	Answers  map[string]struct {
		Value      float64
		Unit, Text string
	}
	Sheet struct {
		Width, Height struct {
			Value float64
			Text  string
		}
	}
	Errors []struct{ Field, Code, Text string }
}

func askPicture(t *testing.T, call bytesCall, size, fields string, data []byte) (reply pictureReply, out []byte) {
	t.Helper()
	text, out := call(size+"\n"+fields, data, func(float64) {})
	if err := json.Unmarshal([]byte(text), &reply); err != nil {
		t.Fatalf("%v in %s", err, text)
	}
	return reply, out
}

// The square covers 0.4 x 0.4 = 16 % of the picture: 84 % is open, and at 40 mm
// across 0.84 x 16 cm2 = 13.44 cm2; its outline is 4 x 16 mm = 64 mm.
func TestMeasure(t *testing.T) {
	square := squarePNG(t)
	for _, c := range []struct {
		fields string
		open   string
		area   string
	}{
		{"width=40", "84.0 %", "13.4 cm²"},
		{"width=4+cm&black=etches", "16.0 %", "2.56 cm²"},
		{"height=40+mm&units=us", "84.0 %", "2.08 in²"}, // 13.44 / 6.4516
	} {
		reply, cells := askPicture(t, measure, "", c.fields, square)
		if reply.Map.Width != 100 || reply.Map.Height != 100 || len(cells) != 100*100 {
			t.Errorf("%s: a map of %v in %d bytes", c.fields, reply.Map, len(cells))
		}
		if filled := reply.Fields["open"]; filled[:4] != c.open[:4] || len(reply.Cautions) == 0 {
			t.Errorf("%s: it fills %v, and cautions %v", c.fields, reply.Fields, reply.Cautions)
		}
		if got := reply.Answers["open"].Text; got != c.open {
			t.Errorf("%s: open is %q", c.fields, got)
		}
		if got := reply.Answers["area"].Text; got != c.area {
			t.Errorf("%s: area is %q", c.fields, got)
		}
		if edge := reply.Answers["edge"]; edge.Unit != "mm" || edge.Value < 62 || edge.Value > 65 {
			t.Errorf("%s: the edge is %v", c.fields, edge)
		}
		if len(reply.Errors) > 0 || !strings.Contains(reply.Sentence, c.open) {
			t.Errorf("%s: it says %q, %v", c.fields, reply.Sentence, reply.Errors)
		}
	}
}

// A mistake stands at its field, says what was typed, and blocks only what needs it.
func TestMeasureMistakes(t *testing.T) {
	square := squarePNG(t)
	for _, c := range []struct {
		size, fields string
		data         []byte
		field, code  string
		open         bool
	}{
		{"", "", square, "width", "missing", true},
		{"", "width=soon", square, "width", "number", true},
		{"", "width=40&black=perhaps", square, "black", "unknown", false},
		{"", "width=40&corners=1+2;+3+4", square, "corners", "number", false},
		{"", "width=40&corners=1+2;+3+4;+5+6;+7+x", square, "corners", "number", false},
		{"", "width=40&corners=10+10;+10+10;+10+10;+10+10", square, "corners", "range", false},
		{"", "width=40", nil, "", "picture", false},
		{"", "width=40", square[:len(square)/2], "", "picture", false},
		{"2 2", "width=40", []byte{1, 2, 3}, "", "picture", false},
		{"-1 x", "width=40", []byte{1, 2, 3}, "", "picture", false},
	} {
		reply, _ := askPicture(t, measure, c.size, c.fields, c.data)
		if len(reply.Errors) != 1 || reply.Errors[0].Field != c.field || reply.Errors[0].Code != c.code || reply.Errors[0].Text == "" {
			t.Errorf("%s with %d bytes: the errors are %v", c.fields, len(c.data), reply.Errors)
			continue
		}
		fields, _ := url.ParseQuery(c.fields)
		if typed := fields.Get(c.field); !strings.Contains(reply.Errors[0].Text, typed) {
			t.Errorf("%s: %q does not say what was typed", c.fields, reply.Errors[0].Text)
		}
		if _, open := reply.Answers["open"]; open != c.open {
			t.Errorf("%s: open is answered: %v", c.fields, open)
		}
	}
}

// The line of the square is 16 mm wide; widened on each side by the undercut of
// half of 0.4 mm it is 16.4 mm (0.5 x 0.4 = 0.2 mm a side), within a pixel of the
// picture, which is 9 dots.
func TestPrepare(t *testing.T) {
	square := squarePNG(t)
	reply, out := askPicture(t, prepare, "", "width=40&depth=0.4&undercut=0.5&dpi=600", square)
	made, err := png.Decode(bytes.NewReader(out))
	if err != nil {
		t.Fatalf("%v; %v", err, reply.Errors)
	}
	if want := "As drawn, 40.0 mm by 40.0 mm, lines 0.200 mm wider on each side for an undercut at 0.400 mm."; reply.Sentence != want {
		t.Errorf("it says %q", reply.Sentence)
	}
	if sheet := reply.Sheet.Width.Value; sheet < 39.9 || sheet > 40.1 {
		t.Errorf("the sheet is %g mm wide", sheet)
	}
	page, _ := askPicture(t, prepare, "", "width=40&paper=A4&mirror=yes", square)
	if page.Sheet.Width.Text != "210 mm" || page.Sheet.Height.Text != "297 mm" || !strings.HasPrefix(page.Sentence, "Mirrored, ") { // ISO 216
		t.Errorf("on A4 it says %q, %v", page.Sentence, page.Sheet)
	}
	if size := made.Bounds().Size(); size != image.Pt(945, 945) { // 40 / 25.4 x 600
		t.Errorf("the print has %v dots", size)
	}
	dark := 0
	for x := range 945 {
		if grey, _, _, _ := made.At(x, 472).RGBA(); grey == 0 {
			dark++
		}
	}
	const want = 387 // 16.4 / 25.4 x 600
	if dark < want-6 || dark > want+6 {
		t.Errorf("the square is %d dots wide, not %d", dark, want)
	}
	if _, out := askPicture(t, prepare, "", "dpi=600", square); out != nil {
		t.Error("a picture without a size was printed")
	}
	if reply, _ := askPicture(t, prepare, "", "width=40&dpi=many", square); len(reply.Errors) != 1 || reply.Errors[0].Field != "dpi" {
		t.Errorf("the errors are %v", reply.Errors)
	}
}
