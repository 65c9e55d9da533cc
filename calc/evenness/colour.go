package evenness

import "math"

// The scale goes straight through OKLab (B. Ottosson, A perceptual color space
// for image processing, 2020) from a light yellow to a dark blue, so that equal
// steps of depth look equal, in colour and in lightness. All of it stands out from
// black, which is the resist, so that it serves in a light and a dark theme. Who can't tell red from
// green sees yellow and blue; people who see no colour see light and dark.
var (
	shallowColour = oklab{0.99, -0.015, 0.04}
	deepColour    = oklab{0.485, 0.05, -0.2}
)

// oklab is a colour: lightness, green to red, blue to yellow.
type oklab struct{ l, a, b float64 }

// Colour is that of a depth on the scale, from 0 (shallow, light) to 1 (deep,
// dark), in sRGB. What is off the scale has the colour of its end.
func Colour(depth float64) (red, green, blue uint8) {
	t := 0.0
	if depth > 0 { // not where a scale has no length
		t = math.Min(depth, 1)
	}
	return oklab{
		shallowColour.l + t*(deepColour.l-shallowColour.l),
		shallowColour.a + t*(deepColour.a-shallowColour.a),
		shallowColour.b + t*(deepColour.b-shallowColour.b),
	}.sRGB()
}

// sRGB is the colour as a screen shows it (Ottosson's matrices; the curve of IEC
// 61966-2-1).
func (c oklab) sRGB() (red, green, blue uint8) {
	l := cube(c.l + 0.3963377774*c.a + 0.2158037573*c.b)
	m := cube(c.l - 0.1055613458*c.a - 0.0638541728*c.b)
	s := cube(c.l - 0.0894841775*c.a - 1.2914855480*c.b)
	return curved(4.0767416621*l - 3.3077115913*m + 0.2309699292*s),
		curved(-1.2684380046*l + 2.6097574011*m - 0.3413193965*s),
		curved(-0.0041960863*l - 0.7034186147*m + 1.7076147010*s)
}

func cube(x float64) float64 { return x * x * x }

func curved(linear float64) uint8 {
	linear = math.Max(0, math.Min(linear, 1))
	if linear <= 0.0031308 {
		return uint8(math.Round(255 * 12.92 * linear))
	}
	return uint8(math.Round(255 * (1.055*math.Pow(linear, 1/2.4) - 0.055)))
}

// Paint is the map in colours, four bytes a cell (red, green, blue, opaque), on
// a scale from one local depth to another; resist is left transparent.
func (m Map) Paint(low, high float64) []byte {
	pixels := make([]byte, 4*len(m.Values))
	for i, depth := range m.Values {
		if depth > 0 {
			red, green, blue := Colour((float64(depth) - low) / (high - low))
			copy(pixels[4*i:], []byte{red, green, blue, 255})
		}
	}
	return pixels
}
