//go:build !js

package artwork

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"math"
	"strings"
	"testing"
)

func prepared(t testing.TB, p Picture, o Options, with Printing) (Prepared, *image.Gray) {
	t.Helper()
	out, err := Prepare(p, o, with, silent)
	if err != nil {
		t.Fatal(err)
	}
	decoded, err := png.Decode(bytes.NewReader(out.PNG))
	if err != nil {
		t.Fatal(err)
	}
	grey := image.NewGray(decoded.Bounds())
	for y := range grey.Rect.Dy() {
		for x := range grey.Rect.Dx() {
			grey.Set(x, y, decoded.At(x, y))
		}
	}
	return out, grey
}

// The PNG states its size, which ImageMagick reads, is of one bit, and is as
// large as typed to half a dot.
func TestPreparedIsOfTrueSize(t *testing.T) {
	p := drawing{100, 80, `<circle cx="30" cy="40" r="20"/>`}.picture(t, 5)
	out, _ := prepared(t, p, Options{Width: 0.040}, Printing{DPI: 600})
	// 40 / 25.4 * 600 = 944.9; 600 / 0.0254 = 23622 a metre.
	var wide, tall int
	var density float64
	if _, err := fmt.Sscanf(magick(t, out.PNG, "-format", "%w %h %x", "info:"), "%d %d %g", &wide, &tall, &density); err != nil {
		t.Fatal(err)
	}
	if wide != 945 || tall != 756 || math.Abs(density-236.22) > 1e-6 {
		t.Errorf("ImageMagick reads %d by %d at %v a centimetre", wide, tall, density)
	}
	if bits := out.PNG[24]; bits != 1 {
		t.Errorf("a pixel has %d bits", bits)
	}
	check := func(what string, got, want, slack float64) {
		if math.Abs(got-want) > slack {
			t.Errorf("%s is %v, want %v", what, got, want)
		}
	}
	open := 1 - math.Pi*20*20/8000
	check("open", out.Art.Open, open, 0.002*open)
	check("line", out.Art.Line, 0.016, 0.0004)
	check("width", out.Art.Width, 0.040, 1e-12)
	check("sheet", out.SheetWidth, 0.040, 0.00003)
}

func TestMirrored(t *testing.T) {
	p := drawing{100, 80, `<path d="M10 10h30v50z"/>`}.picture(t, 5)
	_, as := prepared(t, p, Options{Width: 0.040}, Printing{})
	_, mirrored := prepared(t, p, Options{Width: 0.040}, Printing{Mirror: true})
	for y := range as.Rect.Dy() {
		for x := range as.Rect.Dx() {
			if as.GrayAt(x, y) != mirrored.GrayAt(as.Rect.Dx()-1-x, y) {
				t.Fatalf("dot %d, %d is not mirrored", x, y)
			}
		}
	}
}

// What is widened by eight dots and then etched by as much, by ImageMagick's
// morphology, is the drawing again within a dot.
func TestWidenedThenUndercut(t *testing.T) {
	const dot = 0.000254 // m, at 100 to the inch: 1,000 dots across
	d := drawing{100, 80, turned(13, `<g stroke="black" stroke-linecap="round"><path stroke-width="6" d="M20 23h60"/>`+
		`<path stroke-width="3" d="M20 35h60"/></g><circle cx="40" cy="60" r="12"/>`)}
	p := d.picture(t, 10)
	for _, etches := range []bool{false, true} {
		o := Options{Width: 1000 * dot, BlackEtches: etches}
		_, drawn := prepared(t, p, o, Printing{DPI: 100})
		out, _ := prepared(t, p, o, Printing{DPI: 100, Widen: 8 * dot})
		undercut := "Dilate" // white grows over black
		if etches {
			undercut = "Erode"
		}
		bitten, err := Decode(convertTo(t, out.PNG, "-depth", "8", "-morphology", undercut, "Disk:8.0", "png:-"))
		if err != nil {
			t.Fatal(err)
		}
		wrong := 0
		for y := 2; y+2 < bitten.Height; y++ {
			for x := 2; x+2 < bitten.Width; x++ {
				if got := bitten.Grey[y*bitten.Width+x] > 127; !near(drawn, x, y, got) {
					wrong++
				}
			}
		}
		if wrong > 0 {
			t.Errorf("black etches %v: %d dots lie more than a pixel from the drawing", etches, wrong)
		}
	}
}

// near tells whether the drawing is white, or black, there or a dot away.
func near(drawn *image.Gray, x, y int, white bool) bool {
	for dy := -1; dy <= 1; dy++ {
		for dx := -1; dx <= 1; dx++ {
			if (drawn.GrayAt(x+dx, y+dy).Y > 127) == white {
				return true
			}
		}
	}
	return false
}

func TestClosed(t *testing.T) {
	// Gaps of 4, 8 and 12 units between bars; widened by 3 each side the first is closed.
	p := drawing{100, 80, `<path d="M10 10h80v10h-80zM10 24h80v10h-80zM10 42h80v10h-80zM10 64h80v10h-80z"/>`}.picture(t, 5)
	for widen, closed := range map[float64]int{0: 0, 1: 0, 3: 1, 5: 2, 7: 3} {
		out, _ := prepared(t, p, Options{Width: 0.1}, Printing{Widen: widen / 1000})
		if out.Closed != closed {
			t.Errorf("widened by %v: %d closed, drawn %d", widen, out.Closed, closed)
		}
		if space := map[float64]float64{0: 4, 1: 2, 3: 2, 5: 2, 7: 0}[widen]; math.Abs(out.Art.Space*1000-space) > 0.3 {
			t.Errorf("widened by %v: the narrowest space is %v, drawn %v", widen, out.Art.Space*1000, space)
		}
		if want := 1 - 80*40/8000.0; widen == 0 && math.Abs(out.Art.Open-want) > 0.002*want {
			t.Errorf("open is %v, drawn %v", out.Art.Open, want)
		}
	}
}

// The rule on paper is 50 mm, and the copies and marks stand on it.
func TestSetOut(t *testing.T) {
	p := drawing{100, 80, `<rect width="100" height="80"/>`}.picture(t, 2)
	for name, paper := range map[string]Paper{"A4": A4, "letter": Letter} {
		out, sheet := prepared(t, p, Options{Width: 0.050}, Printing{DPI: 300, Paper: paper, Copies: 6})
		if math.Abs(out.SheetWidth-paper.Width) > 0.0001 || math.Abs(out.SheetHeight-paper.Height) > 0.0001 {
			t.Errorf("%s is %v by %v", name, out.SheetWidth, out.SheetHeight)
		}
		black := 0
		for _, v := range sheet.Pix {
			if v == 0 {
				black++
			}
		}
		copies := 6 * 591 * 472 // 50 and 40 mm at 300 to the inch
		if extra := black - copies; extra < 0 || extra > 6*8*36*3+591*3+6*36*3 {
			t.Errorf("%s: %d dots are black, of which copies %d", name, black, copies)
		}
		// The lowest row that is black is the rule: 50 mm are 590.6 dots, to the right side of the last tick.
		for y := sheet.Rect.Dy() - 1; y > 0; y-- {
			row := sheet.Pix[y*sheet.Stride : (y+1)*sheet.Stride]
			first := bytes.IndexByte(row, 0)
			if first < 0 {
				continue
			}
			if last := bytes.LastIndexByte(row, 0); math.Abs(float64(last-1-first)-590.6) > 1 {
				t.Errorf("%s: the rule is %d dots long", name, last-1-first)
			}
			break
		}
	}
}

func TestWhatCannotBePrinted(t *testing.T) {
	p := drawing{100, 80, `<rect width="50" height="40"/>`}.picture(t, 2)
	for _, c := range []struct {
		field string
		o     Options
		with  Printing
	}{
		{"width", Options{}, Printing{}},
		{"height", Options{Width: 0.1, Height: 0.1}, Printing{}},
		{"dpi", Options{Width: 0.1}, Printing{DPI: 1}},
		{"dpi", Options{Width: 1}, Printing{DPI: 2400}},
		{"dpi", Options{Width: 0.1}, Printing{DPI: math.NaN()}},
		{"copies", Options{Width: 0.1}, Printing{Copies: 2}},
		{"copies", Options{Width: 0.1}, Printing{Copies: 20, Paper: A4}},
		{"paper", Options{Width: 0.4}, Printing{Paper: Letter}},
		{"paper", Options{Width: 1e300}, Printing{Paper: Letter}},
		{"dpi", Options{Width: 1e300}, Printing{}},
		{"corners", Options{Width: 0.1, Corners: Corners{{1, 1}, {2, 2}, {3, 3}, {4, 4}}}, Printing{}},
		{"threshold", Options{Width: 0.1, Threshold: 2}, Printing{}},
	} {
		_, err := Prepare(p, c.o, c.with, silent)
		if e, ok := err.(*Error); !ok || e.Field != c.field || e.Text == "" {
			t.Errorf("%+v %+v: %v, want an error at %s", c.o, c.with, err, c.field)
		}
	}
}

// By hand: A4 less 10 mm at either side and at the top and 20 mm at the bottom is 190 by
// 267 mm, with 8 mm between copies.
func TestPaperHolds(t *testing.T) {
	for _, c := range []struct {
		width, height float64 // mm
		columns, rows int
	}{{190, 267, 1, 1}, {190.1, 267, 0, 1}, {190, 267.1, 1, 0}, {91, 129.5, 2, 2}, {91.1, 129.6, 1, 1}, {58, 83, 3, 3}, {58.1, 83.4, 2, 3}, {300, 400, 0, 0}} {
		if columns, rows := A4.holds(c.width/1000, c.height/1000); columns != c.columns || rows != c.rows {
			t.Errorf("of %g by %g mm it holds %d by %d, not %d by %d", c.width, c.height, columns, rows, c.columns, c.rows)
		}
	}
}

// What can't be printed is told with its figures, in mm: letter is 215.9 by 279.4 mm.
func TestWhatCannotBePrintedInFigures(t *testing.T) {
	p := drawing{100, 80, `<rect width="50" height="40"/>`}.picture(t, 2)
	for _, c := range []struct {
		width float64 // m
		with  Printing
		want  string
	}{
		{1, Printing{DPI: 2400}, "1000 by 800 mm at 2400 dots per inch"},
		{0.4, Printing{Paper: Letter}, "art of 400 by 320 mm does not fit on the paper, which leaves 195.9 by 249.4 mm"},
		{0.05, Printing{Paper: A4, Copies: 20}, "the paper holds 15 copies of 50 by 40 mm, not 20; type 15 or fewer"}, // 3 by 5
	} {
		if _, err := Prepare(p, Options{Width: c.width}, c.with, silent); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%+v: %v, not %q", c.with, err, c.want)
		}
	}
}
