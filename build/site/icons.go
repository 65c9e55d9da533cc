package site

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"slices"
	"strings"
)

// The icon is what the page is about, cut through: a line that stands in a sheet
// of copper between two bites, and the strip of resist on it, which they have
// reached under. It is drawn here once, on a field of 64 by 64, and written as SVG
// and as PNGs.

const iconField = 64

var (
	bathTone   = color.NRGBA{0xd5, 0xe6, 0xe1, 0xff}
	metalTone  = color.NRGBA{0xb4, 0x68, 0x3a, 0xff}
	resistTone = color.NRGBA{0x1c, 0x1a, 0x17, 0xff}
)

type point struct{ x, y float64 }

// shape is a closed outline, filled.
type shape struct {
	tone    color.NRGBA
	outline []point
}

// icon is a drawing on a ground, which may be nothing, and cut to its outline.
type icon struct {
	ground []shape
	shapes []shape
}

var (
	rounded    = icon{[]shape{square(14)}, section(0, iconField, iconField, 0)}
	filled     = icon{[]shape{square(0)}, section(0, iconField, iconField, 0)} // the device cuts it by a mask of its own
	silhouette = icon{nil, section(10, 54, 54, 2)}                             // a device uses only its outline
)

// section is the cut between x = left and right, down to the bottom; gap is what
// is left blank under the resist where both have the same colour.
func section(left, right, bottom, gap float64) []shape {
	const (
		surface, thick = 24, 7 // of the sheet; of the resist
		from, to       = 18, 46
		deep, under    = 19, 8 // the bites, and how far they reach under the resist
	)
	resist := []point{{from, surface - thick}, {to, surface - thick}, {to, surface - gap}, {from, surface - gap}}
	metal := []point{{left, surface + deep}}
	metal = append(metal, quarter(from, surface, under, deep)...)
	other := quarter(to, surface, -under, deep)
	slices.Reverse(other)
	metal = append(append(metal, other...), point{right, surface + deep}, point{right, bottom}, point{left, bottom})
	return []shape{{metalTone, metal}, {resistTone, resist}}
}

// quarter is a quarter of an ellipse round (x, y), from below it to beside it.
func quarter(x, y, across, down float64) []point {
	const steps = 10
	points := make([]point, 0, steps+1)
	for i := range steps + 1 {
		sin, cos := math.Sincos(math.Pi / 2 * float64(i) / steps)
		points = append(points, point{hundredths(x + across*sin), hundredths(y + down*cos)})
	}
	return points
}

func hundredths(v float64) float64 { return math.Round(v*100) / 100 }

// square is a field of bath; its corners are rounded.
func square(radius float64) shape {
	const far = iconField
	var outline []point
	for _, corner := range []struct{ x, y, across, down float64 }{
		{far - radius, far - radius, radius, radius}, {far - radius, radius, radius, -radius},
		{radius, radius, -radius, -radius}, {radius, far - radius, -radius, radius},
	} {
		arc := quarter(corner.x, corner.y, corner.across, corner.down)
		if corner.across*corner.down < 0 { // always the same way round
			slices.Reverse(arc)
		}
		outline = append(outline, arc...)
	}
	return shape{bathTone, outline}
}

// icons are the icon's files.
func icons() Files {
	return Files{
		"icon.svg":            rounded.svg(),
		"icon-180.png":        filled.png(180),
		"icon-192.png":        rounded.png(192),
		"icon-512.png":        rounded.png(512),
		"icon-maskable.png":   filled.png(512),
		"icon-monochrome.png": silhouette.png(512),
	}
}

func (i icon) svg() []byte {
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %[1]d"><clipPath id="c"><path d="%s"/></clipPath><g clip-path="url(#c)">`,
		iconField, i.ground[0].path())
	for _, s := range slices.Concat(i.ground, i.shapes) {
		fmt.Fprintf(&b, `<path fill="#%02x%02x%02x" d="%s"/>`, s.tone.R, s.tone.G, s.tone.B, s.path())
	}
	b.WriteString("</g></svg>\n")
	return []byte(b.String())
}

func (s shape) path() string {
	var b strings.Builder
	for i, p := range s.outline {
		fmt.Fprintf(&b, "%c%.4g %.4g", "ML"[min(i, 1)], p.x, p.y)
	}
	return b.String() + "Z"
}

// finer is how many lines are sampled for each line of a picture.
const finer = 8

// png lays the shapes one over the other, in each pixel as far as they cover it;
// the ground, or else the shapes themselves, say how far a pixel is seen at all.
func (i icon) png(size int) []byte {
	const all = finer * finer
	picture := image.NewNRGBA(image.Rect(0, 0, size, size))
	for n, s := range slices.Concat(i.ground, i.shapes) {
		shows := i.ground == nil || n < len(i.ground)
		for at, covered := range s.cover(size) {
			pixel := picture.Pix[4*at : 4*at+4]
			if shows && pixel[3] == 0 && covered > 0 {
				copy(pixel, []uint8{s.tone.R, s.tone.G, s.tone.B, uint8(covered * 255 / all)})
				continue
			}
			for c, tone := range []uint8{s.tone.R, s.tone.G, s.tone.B} {
				pixel[c] = uint8((int(pixel[c])*(all-covered) + int(tone)*covered) / all)
			}
		}
	}
	var b bytes.Buffer
	(&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&b, picture) // writing to a bytes.Buffer never fails
	return b.Bytes()
}

// cover is how many of its finer*finer spots the shape covers of each pixel.
func (s shape) cover(size int) []int {
	covered := make([]int, size*size)
	scale := float64(size*finer) / iconField
	for line := range size * finer {
		y := (float64(line) + 0.5) / scale
		crossings := s.crossings(y)
		for k := 0; k+1 < len(crossings); k += 2 {
			for spot := int(math.Round(crossings[k] * scale)); spot < int(math.Round(crossings[k+1]*scale)); spot++ {
				covered[line/finer*size+spot/finer]++
			}
		}
	}
	return covered
}

// crossings are where a level line crosses the outline, from the left.
func (s shape) crossings(y float64) []float64 {
	var all []float64
	last := s.outline[len(s.outline)-1]
	for _, p := range s.outline {
		if (last.y <= y) != (p.y <= y) {
			all = append(all, last.x+(y-last.y)*(p.x-last.x)/(p.y-last.y))
		}
		last = p
	}
	slices.Sort(all)
	return all
}
