package artwork

import (
	"crypto/sha256"
	_ "embed"
	"fmt"
	"math"
	"strings"
	"testing"

	"saltbite/testdata"
)

// readings is what is read of computed pictures, to five figures. The same picture gives
// the same natively, in WebAssembly, and in the next version: what a change shifts by less
// than the other tests allow is seen here. It proves no
// figure right: the other tests do. The pictures are invented. It is written with
// SALTBITE_WRITE=1 go test ./calc/artwork -run Written.
//
//go:embed testdata/readings.txt
var readings string

// shape is how far a place lies from the edge of black, in pixels; below 0 it is black.
type shape func(x, y float64) float64

// filledIn is a picture of a shape between two greys, its edges covered by shares.
func filledIn(width, height int, black, white float64, of shape) Picture {
	p := Picture{Width: width, Height: height, Grey: make([]byte, width*height)}
	for i := range p.Grey {
		share := max(0, min(of(float64(i%width)+0.5, float64(i/width)+0.5)+0.5, 1))
		p.Grey[i] = byte(math.Round(black + (white-black)*share))
	}
	return p
}

// bar is a rectangle round a middle, turned by an angle.
func bar(middleX, middleY, length, width, angle float64) shape {
	sin, cos := math.Sincos(angle)
	return func(x, y float64) float64 {
		u, v := (x-middleX)*cos+(y-middleY)*sin, (y-middleY)*cos-(x-middleX)*sin
		return max(math.Abs(u)-length/2, math.Abs(v)-width/2)
	}
}

func ring(middleX, middleY, radius, width float64) shape {
	return func(x, y float64) float64 {
		return math.Abs(math.Hypot(x-middleX, y-middleY)-radius) - width/2
	}
}

// together is black where any of the shapes is.
func together(shapes ...shape) shape {
	return func(x, y float64) float64 {
		least := math.Inf(1)
		for _, s := range shapes {
			least = min(least, s(x, y))
		}
		return least
	}
}

var (
	bars  = together(bar(90, 60, 120, 3.4, 0.2), bar(90, 75, 120, 6, 0.2), bar(200, 70, 90, 2.2, 1.3), bar(160, 150, 260, 9, -0.1), bar(60, 175, 70, 1.5, 0.1))
	rings = together(ring(80, 80, 50, 5), ring(80, 80, 30, 2.5), ring(210, 110, 60, 12), bar(210, 110, 140, 4, 0.8), bar(210, 110, 140, 4, 2.4))
	waves = func(x, y float64) float64 { return 6*math.Sin(x/9)*math.Cos(y/13) + 3*math.Sin((x+y)/5) }
	taper = func(x, y float64) float64 { return math.Abs(y-100) - x/14 }
)

func TestReadingsAsWritten(t *testing.T) {
	grey := filledIn(280, 200, 0, 255, rings)
	for y := 20; y < 60; y++ {
		for x := 150; x < 260; x++ {
			grey.Grey[y*grey.Width+x] = byte(60 + 70*((x-150)/40))
		}
	}
	stated := filledIn(280, 200, 0, 255, bars)
	stated.DensityX, stated.DensityY = 8000, 6000
	photo := filledIn(320, 240, 70, 210, func(x, y float64) float64 { return rings(x*0.9+y*0.05, y*0.95-x*0.06) })
	for i, v := range photo.Grey {
		photo.Grey[i] = byte(float64(v) * (0.6 + 0.4*float64(i%320)/320 - 0.1*float64(i/320)/240))
	}
	corners := Corners{{12, 9}, {300, 20}, {310, 228}, {20, 215}}
	var told strings.Builder
	for i, c := range []struct {
		name string
		of   Picture
		o    Options
	}{
		{"bars", filledIn(280, 200, 0, 255, bars), Options{Width: 0.028, Lost: 0.00045}},
		{"bars, black etches", filledIn(280, 200, 0, 255, bars), Options{Height: 0.020, BlackEtches: true, Lost: 0.002}},
		{"bars of a stated size", stated, Options{Lost: 0.0003}},
		{"rings and a cross", filledIn(280, 200, 0, 255, rings), Options{Width: 0.056, Lost: 0.0006}},
		{"rings, etched", filledIn(280, 200, 0, 255, rings), Options{Width: 0.056, Height: 0.0402, BlackEtches: true, Lost: 0.01}},
		{"greys", grey, Options{Width: 0.056}},
		{"waves", filledIn(240, 180, 0, 255, waves), Options{Width: 0.05, Lost: 0.0018}},
		{"waves, tall", filledIn(150, 260, 0, 255, waves).turned(5), Options{Width: 0.05, Lost: 0.0012}},
		{"a taper", filledIn(240, 200, 0, 255, taper), Options{Width: 0.05, Lost: 0.001}},
		{"discs", discs(260, 190, 21), Options{Width: 0.05, Lost: 0.003}},
		{"no size", filledIn(280, 200, 0, 255, bars), Options{}},
		{"a photograph", photo, Options{Width: 0.05, Corners: corners, Lost: 0.0008}},
		{"a photograph by a ruler", photo, Options{Corners: corners, Ruler: Ruler{Point{30, 30}, Point{200, 60}, 0.03}}},
		{"a photograph, its threshold typed", photo, Options{Width: 0.05, Threshold: 0.6, BlackEtches: true}},
	} {
		r, err := Measure(c.of, c.o, silent)
		fmt.Fprintf(&told, "%s: %s %v\n", c.name, r.written(), err)
		with := Printing{DPI: 200, Widen: 0.0002}
		if i%4 == 0 {
			with = Printing{Mirror: true, Widen: 0.0006, Copies: 3, Paper: A4, DPI: 100}
		}
		made, err := Prepare(c.of, c.o, with, silent)
		fmt.Fprintf(&told, "  printed: %.5g by %.5g, %d closed, %x; %s %v\n", made.SheetWidth, made.SheetHeight, made.Closed, sha256.Sum256(made.PNG), made.Art.written(), err)
	}
	if changed, err := testdata.Changed("testdata/readings.txt", readings, told.String()); changed != "" || err != nil {
		t.Fatal(changed, err)
	}
}

// written is all that is read, in one line; of the map its size and its mean.
func (r Result) written() string {
	sum := 0
	for _, v := range r.Map.Open {
		sum += int(v)
	}
	var narrow []string
	for _, n := range r.Narrow {
		narrow = append(narrow, fmt.Sprintf("%.5g at %.4g %.4g %v", n.Width, n.X, n.Y, n.Space))
	}
	return fmt.Sprintf("%.5g by %.5g, open %.5g, area %.5g, edge %.5g, line %.5g, space %.5g, grey %.5g %.4g, %d islands, %d holes, %d lost, kept %.5g, narrow %s, threshold %.5g, pixel %.5g, map %d by %d of %d",
		r.Width, r.Height, r.Open, r.Area, r.Edge, r.Line, r.Space, r.Grey, r.Greys, r.Islands, r.Holes, r.Lost, r.Kept, narrow, r.Threshold, r.Pixel, r.Map.Width, r.Map.Height, sum)
}
