//go:build !js

package artwork

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

// A drawing of 2,000 pixels across is photographed by ImageMagick: its black is
// 15 % and its white 85 % of the light, which falls by 3 to 1 over the picture.
var seen = Corners{{310, 220}, {2105, 340}, {2230, 1790}, {190, 1660}}

func photographed(t testing.TB, d drawing) []byte {
	t.Helper()
	pixels := 2000 / d.width
	var map4 []string
	for i, from := range [4]string{"0,0", "2000,0", "2000,H", "0,H"} {
		from = strings.ReplaceAll(from, "H", fmt.Sprint(d.height*pixels))
		map4 = append(map4, fmt.Sprintf("%s %g,%g", from, seen[i].X, seen[i].Y))
	}
	return convertTo(t, d.png(t, pixels), "-colorspace", "sRGB", "+level", "15%,85%", "-virtual-pixel", "transparent", "-filter", "point", "-define", "distort:viewport=2400x1900+0+0",
		"-distort", "Perspective", strings.Join(map4, " "), "-background", "gray(60%)", "-flatten",
		"(", "-size", "2400x1900", "xc:", "-sparse-color", "Barycentric", "0,0 gray(33.3%) 2400,1900 gray(100%) 2400,0 gray(66.7%)", ")",
		"-compose", "Multiply", "-composite", "-seed", "7", "-attenuate", "0.3", "+noise", "Gaussian", "-quality", "60", "jpg:-")
}

// A photograph comes back within 1 % of the share and 3 % of the outline, and
// with the corners found by hand, each within 3 pixels, within 0.5 % of the same share.
func TestPhotograph(t *testing.T) {
	moved := seen
	for i, by := range [4]Point{{2, -2}, {-3, 0}, {1, 2.5}, {0, -3}} {
		moved[i].X += by.X
		moved[i].Y += by.Y
	}
	for _, k := range knownDrawings()[5:8] { // at 3 degrees
		photo, err := Decode(photographed(t, drawing{100, 75, `<g transform="translate(0 -12.5)">` + k.shapes + `</g>`}))
		if err != nil {
			t.Fatal(err)
		}
		o := Options{Width: 0.1, Height: 0.075, Corners: seen}
		r := measured(t, photo, o)
		open := 1 - k.resist/7500
		if math.Abs(r.Open/open-1) > 0.01 || math.Abs(r.Edge*1000/k.edge-1) > 0.03 || r.Islands != k.islands || r.Holes != k.holes {
			t.Errorf("%s: open %v, drawn %v; edge %v, drawn %v; %d islands, %d holes", k.name, r.Open, open, r.Edge, k.edge/1000, r.Islands, r.Holes)
		}
		if !(r.Threshold > 0.3 && r.Threshold < 0.8) { // between 15/85 and 1
			t.Errorf("%s: threshold %v", k.name, r.Threshold)
		}
		o.Corners = moved
		if by := measured(t, photo, o).Open / r.Open; math.Abs(by-1) > 0.005 {
			t.Errorf("%s: with corners some pixels off the share is %v times as large", k.name, by)
		}
		o.Corners, o.Threshold = seen, r.Threshold
		if again := measured(t, photo, o); math.Abs(again.Open-r.Open) > 1e-12 {
			t.Errorf("%s: with Otsu's threshold typed, open is %v, before %v", k.name, again.Open, r.Open)
		}
	}
}

// The aspect of a sheet of 4 to 3 as a pinhole camera sees it: focal length 2,000
// pixels, turned about two axes, projected by hand.
func TestAspectFromPerspective(t *testing.T) {
	p := Picture{Width: 2400, Height: 1800}
	for _, turn := range [][2]float64{{0, 0}, {0.3, 0.4}, {-0.5, 0.25}, {0.2, -0.6}} {
		var c Corners
		for i, corner := range [4][2]float64{{-2, -1.5}, {2, -1.5}, {2, 1.5}, {-2, 1.5}} {
			x, y, z := corner[0], corner[1], 0.0
			x, z = x*math.Cos(turn[0])-z*math.Sin(turn[0]), x*math.Sin(turn[0])+z*math.Cos(turn[0])
			y, z = y*math.Cos(turn[1])-z*math.Sin(turn[1]), y*math.Sin(turn[1])+z*math.Cos(turn[1])
			c[i] = Point{1200 + 2000*x/(z+6), 900 + 2000*y/(z+6)}
		}
		if aspect := c.aspect(p); math.Abs(aspect-4.0/3) > 0.001 {
			t.Errorf("turned by %v: %v", turn, aspect)
		}
	}
}

// Otsu's threshold of two heaps lies midway between them, worked by hand: any
// cut between them parts them best, and the middle of those is taken.
func TestOtsu(t *testing.T) {
	var h histogram
	h[40], h[200] = 3000, 1000
	if got := h.otsu(); math.Abs(got-120.5/256) > 1.0/256 {
		t.Errorf("%v", got)
	}
}

// A ruler of 2 beside a sheet of 4 to 3, as the pinhole camera above sees both, gives the
// sheet's width; without corners it does where the view is straight, with pixels that need not be square.
func TestRuler(t *testing.T) {
	p := Picture{Width: 2400, Height: 1800}
	seen := func(x, y float64) Point {
		x, z := x*math.Cos(0.3), x*math.Sin(0.3)
		y, z = y*math.Cos(0.4)-z*math.Sin(0.4), y*math.Sin(0.4)+z*math.Cos(0.4)
		return Point{1200 + 2000*x/(z+6), 900 + 2000*y/(z+6)}
	}
	sheet := Corners{seen(-2, -1.5), seen(2, -1.5), seen(2, 1.5), seen(-2, 1.5)}
	for _, x := range []struct {
		p     Picture
		o     Options
		width float64
	}{
		{p, Options{Corners: sheet, Ruler: Ruler{seen(-1, 1.7), seen(1, 1.7), 0.05}}, 0.1},
		{p, Options{Corners: sheet, Ruler: Ruler{seen(-2.1, 1), seen(-2.1, -1), 0.05}}, 0.1},
		{p, Options{Ruler: Ruler{Point{100, 100}, Point{700, 900}, 0.05}}, 0.12},
		{Picture{Width: 2400, Height: 900, DensityX: 2, DensityY: 1}, Options{Ruler: Ruler{Point{100, 100}, Point{700, 500}, 0.05}}, 0.12},
		{p, Options{Width: 0.03, Ruler: Ruler{Point{100, 100}, Point{700, 900}, 0.05}}, 0.03},
		{p, Options{Height: 0.03, Ruler: Ruler{Point{100, 100}, Point{700, 900}, 0.05}}, 0},
	} {
		if o, err := x.o.scaled(x.p); err != nil || math.Abs(o.Width-x.width) > 1e-3*x.width {
			t.Errorf("%+v: %v m, not %v (%v)", x.o, o.Width, x.width, err)
		}
	}
	// Behind the camera's horizon there is no place of the sheet.
	steep := Corners{{1000, 600}, {1400, 600}, {2000, 1700}, {400, 1700}}
	if o, err := (Options{Corners: steep, Ruler: Ruler{Point{1200, 10}, Point{1200, 1000}, 0.05}}).scaled(p); err == nil {
		t.Errorf("an end in the sky gives a width of %v m", o.Width)
	}
}
