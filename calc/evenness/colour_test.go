package evenness

import (
	"math"
	"testing"
)

// seen is how a colour is seen: OKLab of sRGB, both from their publications, by
// the inverse way of what is checked. blind is a matrix on linear sRGB, nil for
// none.
func seen(red, green, blue uint8, blind *[3][3]float64) oklab {
	rgb := [3]float64{linear(red), linear(green), linear(blue)}
	if blind != nil {
		rgb = times(*blind, rgb)
	}
	lms := times([3][3]float64{ // B. Ottosson, A perceptual color space for image processing, 2020
		{0.4122214708, 0.5363325363, 0.0514459929},
		{0.2119034982, 0.6806995451, 0.1073969566},
		{0.0883024619, 0.2817188376, 0.6299787005}}, rgb)
	for i, v := range lms {
		lms[i] = math.Cbrt(v)
	}
	lab := times([3][3]float64{
		{0.2104542553, 0.7936177850, -0.0040720468},
		{1.9779984951, -2.4285922050, 0.4505937099},
		{0.0259040371, 0.7827717662, -0.8086757660}}, lms)
	return oklab{lab[0], lab[1], lab[2]}
}

func linear(c uint8) float64 {
	x := float64(c) / 255
	if x <= 0.04045 {
		return x / 12.92
	}
	return math.Pow((x+0.055)/1.055, 2.4)
}

func times(m [3][3]float64, v [3]float64) (out [3]float64) {
	for i, row := range m {
		out[i] = row[0]*v[0] + row[1]*v[1] + row[2]*v[2]
	}
	return out
}

func distance(a, b oklab) float64 {
	return math.Sqrt((a.l-b.l)*(a.l-b.l) + (a.a-b.a)*(a.a-b.a) + (a.b-b.b)*(a.b-b.b))
}

// blindness as simulated by G. M. Machado, M. M. Oliveira and L. A. F. Fernandes,
// IEEE Trans. Vis. Comput. Graph. 15 (2009) 1291, full severity, from memory.
var blindness = map[string]*[3][3]float64{
	"none": nil,
	"protanopia": {
		{0.152286, 1.052583, -0.204868},
		{0.114503, 0.786281, 0.099216},
		{-0.003882, -0.048116, 1.051998}},
	"deuteranopia": {
		{0.367322, 0.860646, -0.227968},
		{0.280085, 0.672501, 0.047413},
		{-0.011820, 0.042940, 0.968881}},
	"tritanopia": {
		{1.255528, -0.076749, -0.178779},
		{-0.078411, 0.930809, 0.147602},
		{0.004733, 0.691367, 0.303900}},
}

// Equal steps of depth are equal steps to the eye, darker each time; to
// colour-blind eyes none is less than half as large as the mean.
func TestColourScaleIsEven(t *testing.T) {
	const steps = 20
	for name, blind := range blindness {
		var colours []oklab
		for i := range steps + 1 {
			r, g, b := Colour(float64(i) / steps)
			colours = append(colours, seen(r, g, b, blind))
		}
		even, mean := 0.5, 0.0
		if blind == nil {
			even = 0.9 // a colour is one of 256 steps
		}
		for i := range steps {
			mean += distance(colours[i], colours[i+1]) / steps
		}
		drop := (colours[0].l - colours[steps].l) / steps
		if drop < 0.5/steps {
			t.Errorf("%s: from lightness %.2f only to %.2f", name, colours[0].l, colours[steps].l)
		}
		for i := range steps {
			if d := distance(colours[i], colours[i+1]); d < even*mean || d > mean/even {
				t.Errorf("%s: step %d is %.4f, the mean %.4f", name, i, d, mean)
			}
			if d := colours[i].l - colours[i+1].l; d < even*drop || d > drop/even {
				t.Errorf("%s: step %d is darker by %.4f, the mean %.4f", name, i, d, drop)
			}
		}
	}
}

// All of the scale can be shown: no colour is cut off at the screen's limits.
func TestColourScaleIsInGamut(t *testing.T) {
	for i := range 101 {
		depth := float64(i) / 100
		want := oklab{
			shallowColour.l + depth*(deepColour.l-shallowColour.l),
			shallowColour.a + depth*(deepColour.a-shallowColour.a),
			shallowColour.b + depth*(deepColour.b-shallowColour.b)}
		r, g, b := Colour(depth)
		if got := seen(r, g, b, nil); distance(got, want) > 0.005 {
			t.Errorf("at %g: %v, want %v", depth, got, want)
		}
	}
}

// Every colour has a contrast of 3 to 1 or more with the black of resist, which WCAG 2.2
// wants of what a graphic is understood by (1.4.11; the luminance is its own too).
func TestColourScaleStandsOutFromResist(t *testing.T) {
	for i := range 101 {
		r, g, b := Colour(float64(i) / 100)
		luminance := 0.2126*linear(r) + 0.7152*linear(g) + 0.0722*linear(b)
		if contrast := (luminance + 0.05) / 0.05; contrast < 3 {
			t.Errorf("at %d %% the contrast is %.2f", i, contrast)
		}
	}
}

// What no screen can show is cut off at its ends and doesn't go round.
func TestColourOffTheScreen(t *testing.T) {
	for _, c := range []struct {
		is   oklab
		want [3]uint8
	}{{oklab{l: 1}, [3]uint8{255, 255, 255}}, {oklab{l: 1.1}, [3]uint8{255, 255, 255}}, {oklab{}, [3]uint8{}}, {oklab{l: -0.5}, [3]uint8{}}} {
		red, green, blue := c.is.sRGB()
		if got := [3]uint8{red, green, blue}; got != c.want {
			t.Errorf("%v is shown as %v, not %v", c.is, got, c.want)
		}
	}
}

func TestPaint(t *testing.T) {
	m := Map{3, 1, []float32{0, 0.5, 2}}
	pixels := m.Paint(0.5, 1.5)
	r, g, b := Colour(0)
	R, G, B := Colour(1)
	want := []byte{0, 0, 0, 0, r, g, b, 255, R, G, B, 255}
	if string(pixels) != string(want) {
		t.Errorf("%v, want %v", pixels, want)
	}
	if got := m.Paint(0.5, 0.5); got[4] != r || got[8] != R { // a scale without length: all above it is deep
		t.Errorf("%v", got)
	}
}
