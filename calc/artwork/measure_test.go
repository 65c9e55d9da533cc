//go:build !js

package artwork

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
)

// known is a drawing on 100 by 100 units whose measures follow from geometry.
type known struct {
	name        string
	shapes      string // black
	resist      float64
	edge        float64 // units
	line, space float64 // units; 0: none, or not checked
	islands     int
	holes       int
	grey        float64 // share
}

func turned(angle float64, shapes string) string {
	return fmt.Sprintf(`<g transform="rotate(%g 50.17 49.91)">%s</g>`, angle, shapes)
}

const stroke = `<path fill="none" stroke="black" stroke-width="4" d="M20 20 H80 V50 H20 V80 H80"/>`

func knownDrawings() []known {
	var all []known
	for _, angle := range []float64{0, 3, 7, 22.5, 30, 45, 61} {
		add := func(k known) {
			k.name = fmt.Sprintf("%s at %g", k.name, angle)
			k.shapes = turned(angle, k.shapes)
			all = append(all, k)
		}
		add(known{name: "disc", shapes: `<circle cx="51.3" cy="49.6" r="36"/>`,
			resist: math.Pi * 36 * 36, edge: 2 * math.Pi * 36, line: 72, islands: 1, holes: 1})
		add(known{name: "square", shapes: `<rect x="22" y="22" width="56" height="56"/>`,
			resist: 56 * 56, edge: 4 * 56, line: 56, islands: 1, holes: 1})
		add(known{name: "ring", shapes: `<circle cx="50" cy="50" r="30" fill="none" stroke="black" stroke-width="6"/>`,
			resist: 2 * math.Pi * 30 * 6, edge: 4 * math.Pi * 30, line: 6, space: 54, islands: 2, holes: 1})
		add(known{name: "bars", shapes: `<path d="M20 25h60v9h-60zM20 41h60v9h-60zM20 62h60v5h-60z"/>`,
			resist: 60 * 23, edge: 2*23 + 6*60, line: 5, space: 7, islands: 1, holes: 3})
		// Its length along the middle is 60+30+60+30+60; each of the four turns
		// of 90 degrees adds as much outside as it takes inside.
		add(known{name: "bent stroke", shapes: stroke,
			resist: 240 * 4, edge: 2*240 + 2*4, line: 4, space: 26, islands: 1, holes: 1})
	}
	return all
}

func TestKnownMeasures(t *testing.T) {
	for _, k := range knownDrawings() {
		for _, scale := range []float64{3, 5, 10} {
			r := measured(t, drawing{100, 100, k.shapes}.picture(t, scale), Options{Width: 0.1})
			check := func(what string, got, want, slack float64) {
				if !(math.Abs(got-want) <= slack) {
					t.Errorf("%s, %g pixels a unit: %s is %v, drawn %v, may be off by %v", k.name, scale, what, got, want, slack)
				}
			}
			open := 1 - k.resist/1e4
			check("open", r.Open, open, 0.002*open)
			check("area", r.Area, open*0.01, 0.002*open*0.01)
			check("edge", r.Edge, k.edge/1000, 0.01*k.edge/1000)
			width := func(what string, got, units float64) {
				if units > 0 {
					check(what, got, units/1000, 0.02*units/1000+0.5*0.001/scale)
				}
			}
			width("line", r.Line, k.line)
			width("space", r.Space, k.space)
			if r.Islands != k.islands || r.Holes != k.holes {
				t.Errorf("%s, %g pixels a unit: %d islands and %d holes, drawn %d and %d", k.name, scale, r.Islands, r.Holes, k.islands, k.holes)
			}
		}
	}
}

// ImageMagick's mean of the same file, and its connected components.
func TestAgainstImageMagick(t *testing.T) {
	for _, d := range []drawing{ornament(), {100, 100, turned(7, stroke)}} {
		file := d.png(t, 6)
		p, err := Decode(file)
		if err != nil {
			t.Fatal(err)
		}
		r := measured(t, p, Options{Width: 0.1})
		mean, err := strconv.ParseFloat(magick(t, file, "-colorspace", "gray", "-format", "%[fx:mean]", "info:"), 64)
		if err != nil || math.Abs(r.Open-mean) > 1e-5 {
			t.Errorf("open is %v, ImageMagick's mean %v, %v", r.Open, mean, err)
		}
		if islands := components(t, file, "4", "255"); r.Islands != islands {
			t.Errorf("%d islands, ImageMagick finds %d", r.Islands, islands)
		}
		// Ringed by resist, all of it that meets the border is one component; the rest are holes.
		ringed := convertTo(t, file, "-bordercolor", "black", "-border", "1", "png:-")
		if holes := components(t, ringed, "8", "0") - 1; r.Holes != holes {
			t.Errorf("%d holes, ImageMagick finds %d", r.Holes, holes)
		}
	}
}

// components counts the connected components of one grey once the picture is cut at half.
func components(t *testing.T, file []byte, connectivity, grey string) int {
	said := magick(t, file, "-colorspace", "gray", "-threshold", "49.9%", "-define", "connected-components:verbose=true",
		"-connected-components", connectivity, "null:")
	count := 0
	for _, line := range strings.Split(said, "\n") {
		if strings.HasSuffix(line, "gray("+grey+")") {
			count++
		}
	}
	return count
}

// Turned by quarters and mirrored, a picture measures the same; with black and
// white changed round, what is open is the rest.
func TestTurnedAndMirrored(t *testing.T) {
	for _, d := range []drawing{ornament(), {100, 100, turned(7, stroke)}, {100, 100, `<circle cx="51.3" cy="49.6" r="36"/>`},
		{90, 60, `<path d="M10 10h70v9h-70zM10 26h70v4h-70z"/>`}} {
		p := d.picture(t, 4)
		for _, etches := range []bool{false, true} {
			o := Options{Width: 0.1, Lost: 0.0015, BlackEtches: etches}
			first := measured(t, p, o)
			for orientation := 2; orientation <= 8; orientation++ {
				q := p.turned(orientation)
				turned := o
				if orientation >= 5 {
					turned.Width, turned.Height = 0, o.Width
				}
				r := measured(t, q, turned)
				for _, c := range [][2]float64{{r.Open, first.Open}, {r.Area, first.Area}, {r.Edge, first.Edge}, {r.Line, first.Line},
					{r.Space, first.Space}, {r.Grey, first.Grey}} {
					if math.Abs(c[0]-c[1]) > 1e-9*math.Abs(c[1]) {
						t.Errorf("%s, orientation %d: %v, before %v", d.shapes[:20], orientation, c[0], c[1])
					}
				}
				if r.Islands != first.Islands || r.Holes != first.Holes || r.Lost != first.Lost {
					t.Errorf("%s, orientation %d: %d %d %d, before %d %d %d", d.shapes[:20], orientation,
						r.Islands, r.Holes, r.Lost, first.Islands, first.Holes, first.Lost)
				}
			}
		}
		keeps, etches := measured(t, p, Options{}), measured(t, p, Options{BlackEtches: true})
		if math.Abs(keeps.Open+etches.Open-1) > 1e-12 {
			t.Errorf("black keeps %v, black etches %v", keeps.Open, etches.Open)
		}
	}
}

func TestGreys(t *testing.T) {
	// A disc of radius 20 in each of three greys and a black one; 18 % grey at an angle.
	d := drawing{100, 100, `<circle cx="25" cy="25" r="20" fill="#404040"/><circle cx="74" cy="24" r="20" fill="#808080"/>` +
		`<circle cx="25" cy="74" r="20" fill="#d0d0d0"/><circle cx="74" cy="74" r="20"/><rect x="68" y="66" width="12" height="14" fill="#606060" transform="rotate(19 74 74)"/>`}
	grey := (3*math.Pi*400 + 12*14) / 1e4
	for _, scale := range []float64{2, 5, 10} {
		r := measured(t, d.picture(t, scale), Options{Width: 0.1})
		if math.Abs(r.Grey/grey-1) > 0.03 {
			t.Errorf("%g pixels a unit: grey %v, drawn %v", scale, r.Grey, grey)
		}
		if len(r.Greys) != 4 {
			t.Fatalf("%g pixels a unit: %d grey stretches", scale, len(r.Greys))
		}
		if last := r.Greys[3]; math.Hypot(last.X-0.074, last.Y-0.073) > 0.0005 || math.Abs(last.Area/168e-6-1) > 0.06 {
			t.Errorf("the smallest grey is %+v", last)
		}
	}
	// Edges are grey and are no flat grey; nor are hairlines.
	if r := measured(t, drawing{100, 100, turned(7, stroke)}.picture(t, 3), Options{Width: 0.1}); r.Grey != 0 {
		t.Errorf("a drawing without grey has %v", r.Grey)
	}
}

// Lines of 1 to 5 units: those that are narrower than the limit are lost, each once.
func TestLost(t *testing.T) {
	d := drawing{100, 100, turned(11, `<path d="M20 15h60v1h-60zM20 25h60v2h-60zM20 35h60v3h-60zM20 45h60v4h-60zM20 55h60v5h-60z"/>`+
		`<path fill="none" stroke="black" stroke-width="2" d="M20 70h60M20 80h60M30 65v20M50 65v20"/>`)}
	for limit, lost := range map[float64]int{0: 0, 0.5: 0, 1.5: 1, 2.5: 3, 3.5: 4, 4.5: 5, 5.5: 6} { // the net of strokes is one
		for _, scale := range []float64{5, 10} {
			if r := measured(t, d.picture(t, scale), Options{Width: 0.1, Lost: limit / 1000}); r.Lost != lost {
				t.Errorf("narrower than %v, %g pixels a unit: %d lost, drawn %d", limit, scale, r.Lost, lost)
			}
		}
	}
}

// What is no line and no space: corners, tapers, and strips that the border cuts.
func TestNoWidth(t *testing.T) {
	for _, c := range []struct {
		name, shapes string
		line, space  float64
	}{
		{"a triangle of 60 degrees at the border", `<path d="M0 0L100 0L50 86.6z"/>`, 0, 0},
		{"a taper of 40 degrees from the border", `<path d="M0 0L100 36.4L0 72.8z"/>`, 0, 0},
		{"half a plane", `<path d="M0 0H100V43.3H0z"/>`, 0, 0},
		{"a strip along the border", `<path d="M0 0H100V3H0z"/>`, 0, 0},
		{"a strip from border to border", turned(9, `<path d="M-50 40H150V47H-50z"/>`), 7, 0},
		{"a corner", `<path d="M0 0H40V60H0z"/>`, 0, 0},
		{"two corners that meet nearly", `<path d="M0 0H49V49H0zM52 52H100V100H52z"/>`, 0, 3 * math.Sqrt2},
	} {
		r := measured(t, drawing{100, 100, c.shapes}.picture(t, 5), Options{Width: 0.1})
		slack := 0.0001 // half a pixel
		if strings.Contains(c.name, "two corners") {
			slack += 2 * 0.8 * 0.0002
		}
		if math.Abs(r.Line-c.line/1000) > slack+0.02*c.line/1000 || math.Abs(r.Space-c.space/1000) > slack+0.02*c.space/1000 {
			t.Errorf("%s: line %v, space %v; drawn %v, %v", c.name, r.Line, r.Space, c.line/1000, c.space/1000)
		}
	}
}

// With more pixels the figures come closer to what is drawn.
func TestConvergence(t *testing.T) {
	k := known{shapes: turned(13, `<path d="M20 25h60v9h-60zM20 41h60v9h-60zM20 62h60v5h-60z"/>`), resist: 60 * 23, edge: 2*23 + 6*60}
	errors := func(scale float64) (open, edge, line float64) {
		r := measured(t, drawing{100, 100, k.shapes}.picture(t, scale), Options{Width: 0.1})
		return math.Abs(r.Open - 1 + k.resist/1e4), math.Abs(r.Edge*1000 - k.edge), math.Abs(r.Line*1000 - 5)
	}
	coarseOpen, coarseEdge, coarseLine := errors(1)
	fineOpen, fineEdge, fineLine := errors(16)
	if fineOpen > coarseOpen/4 || fineEdge > coarseEdge/2 || fineEdge > 0.0015*k.edge || fineLine > coarseLine/4 {
		t.Errorf("at 1 pixel a unit %v %v %v, at 16 %v %v %v", coarseOpen, coarseEdge, coarseLine, fineOpen, fineEdge, fineLine)
	}
}

// Where it is narrow is said from the top left.
func TestNarrowPlaces(t *testing.T) {
	d := drawing{100, 50, `<rect x="10" y="8" width="20" height="3"/><rect x="60" y="30" width="30" height="2"/>`}
	r := measured(t, d.picture(t, 10), Options{Width: 0.1})
	if len(r.Narrow) < 2 || len(r.Narrow) > 20 || math.Abs(r.Narrow[0].Y-0.031) > 0.0001 || r.Narrow[0].X < 0.060 || r.Narrow[0].X > 0.090 ||
		math.Abs(r.Narrow[0].Width-0.002) > 0.00005 || r.Narrow[0].Width != r.Line {
		t.Fatalf("%+v", r.Narrow)
	}
	for i, place := range r.Narrow[1:] {
		if place.Width < r.Narrow[i].Width {
			t.Errorf("%d is narrower than the one before", i+1)
		}
	}
}
