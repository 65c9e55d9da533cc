package picture

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/artwork"
	"saltbite/calc/field"
)

// drawn is a picture of that size, white but for black rectangles of left, top,
// width and height; a fifth number is another grey.
func drawn(width, height int, rectangles ...[]int) artwork.Picture {
	p := artwork.Picture{Width: width, Height: height, Grey: make([]byte, width*height)}
	for i := range p.Grey {
		p.Grey[i] = 255
	}
	for _, r := range rectangles {
		grey := byte(0)
		if len(r) > 4 {
			grey = byte(r[4])
		}
		for y := r[1]; y < r[1]+r[3]; y++ {
			for x := r[0]; x < r[0]+r[2]; x++ {
				p.Grey[y*width+x] = grey
			}
		}
	}
	return p
}

func measured(p artwork.Picture, fields string) Reply {
	return Measured(Measure(p, field.Read(fields), func(float64) {}))
}

// A frame of 400 by 400 pixels in which 160 by 160 are black: at 40 mm across the
// black is 16 % and 16 mm on a side, 2.56 cm2, its outline 64 mm; what is white is
// 84 %, one island with one spot of resist. Plain sums.
func TestFilled(t *testing.T) {
	square := drawn(400, 400, []int{120, 120, 160, 160})
	for _, c := range []struct{ fields, want string }{
		{"width=40", "open 84.00 % height 40.00 mm edge 64 line 16 islands 1 holes 1"},
		{"width=40&black=etches", "open 16.00 % height 40.00 mm edge 64 space 16 islands 1"},
		{"width=40&sides=2", "open 84.00 % height 40.00 mm edge 128 line 16 islands 2 holes 2"},
		{"width=40&open=50", "height 40.00 mm edge 64 line 16 islands 1 holes 1"},
		{"width=40&area=5&edge=70&line=0.3", "height 40.00 mm islands 1 holes 1"},
		{"diameter=40", "area 13.44 cm2 edge 64 line 16 islands 1 holes 1"},
		{"width=40&units=us", "open 84.00 % height 1.575 in edge 2.52 line 0.63 islands 1 holes 1"},
		{"", "open 84.00 %"},
		{"width=40&open=much", "height 40.00 mm edge 64 line 16 islands 1 holes 1"},
	} {
		var got []string
		for _, f := range measured(square, c.fields).Fields {
			text := f.Text
			if f.Name == "edge" || f.Name == "line" || f.Name == "space" { // sharp corners: within 1 % and half a pixel
				number, _, _ := strings.Cut(text, " ")
				x, _ := strconv.ParseFloat(number, 64)
				for _, near := range []float64{64, 128, 16, 2.52, 0.63} {
					if math.Abs(x-near) < 0.01*near {
						text = strconv.FormatFloat(near, 'g', -1, 64)
					}
				}
			}
			got = append(got, f.Name+" "+text)
		}
		if all := strings.Join(got, " "); all != c.want {
			t.Errorf("%s fills %q, not %q", c.fields, all, c.want)
		}
	}
}

// What is filled in is what was measured, within half of its last digit: 0.05 %.
func TestFilledIsMeasured(t *testing.T) {
	for _, side := range []int{13, 57, 101, 333} {
		p := drawn(400, 400, []int{20, 20, side, side})
		want := 1 - float64(side*side)/160000
		for _, f := range measured(p, "width=40").Fields {
			if number, isShare := strings.CutSuffix(f.Text, " %"); isShare {
				got, _ := strconv.ParseFloat(number, 64)
				if math.Abs(got/100/want-1) > 0.0005 {
					t.Errorf("a square of %d pixels leaves %g %%, not %g", side, got, want*100)
				}
			}
		}
	}
}

// Stripes of 10 and 16 pixels at 40 pixels a millimetre are 0.25 and 0.4 mm wide. At
// an undercut of 0.7 a line of 2 x 0.7 x 0.2 = 0.28 mm is just gone at 0.2 mm.
func TestCautions(t *testing.T) {
	lines := drawn(800, 400, []int{100, 0, 10, 400}, []int{300, 0, 16, 400}, []int{500, 0, 10, 400})
	patch := drawn(400, 400, []int{0, 0, 200, 400}, []int{300, 100, 50, 200, 128})
	for _, c := range []struct {
		picture      artwork.Picture
		fields       string
		code, level  string
		words        []string
		anotherThing string
	}{
		{lines, "width=20&depth=0.2&undercut=0.7", "lines-lost", "warn", []string{"0.400 mm lines survive a depth of 0.200 mm", "0.250 mm ones don't", "2 places"}, "lines-survive"},
		{lines, "width=20&depth=0.2&undercut=0.5", "lines-survive", "note", []string{"0.250 mm", "keeps 0.0500 mm"}, "lines-lost"},
		{lines, "width=20", "balance", "note", []string{"95.5 % exposed: at 30.0 mA/cm²"}, "lines-lost"},               // 764 of 800 columns; the width as read may differ by a hair
		{lines, "width=20&density=20&pieces=2&sides=2", "balance", "note", []string{"20.0 mA/cm²", "0.153 A"}, "grey"}, // 0.955 x 2 cm2 x 4 x 20
		{lines, "", "", "", nil, "balance"},
		{patch, "", "grey", "warn", []string{"6.25 % is grey"}, "balance"}, // 50 x 200 of 160,000
		{drawn(400, 400, []int{0, 0, 200, 400}, []int{250, 0, 99, 400, 128}), "", "grey", "warn", []string{"won't transfer"}, "balance"}, // 24.75 %
		{drawn(400, 400, []int{0, 0, 200, 400}, []int{250, 0, 101, 400, 128}), "", "grey", "warn", []string{"25.2 % is grey, as in a photograph", "choose “A photograph”"}, "balance"},
		{drawn(50, 50), "", "one-tone", "warn", []string{"All of the picture is exposed"}, "grey"},
		{drawn(50, 50), "black=etches", "one-tone", "warn", []string{"Nothing of the picture is exposed"}, "grey"},
		{lines, "diameter=20", "round", "note", []string{"corners"}, "ruler-aside"},
		{lines, "width=20&ruler=1+1;+90+90&rulerLength=5", "ruler-aside", "note", []string{"typed counts, not the ruler"}, "grey"},
		{lines, "ruler=1+1;+90+90&rulerLength=5", "", "", nil, "ruler-aside"},
	} {
		found := c.code == ""
		for _, said := range measured(c.picture, c.fields).Cautions {
			if said.Code == c.anotherThing {
				t.Errorf("%s: it says %q", c.fields, said.Text)
			}
			if said.Code != c.code {
				continue
			}
			found = true
			for _, words := range c.words {
				if !strings.Contains(said.Text, words) || string(said.Level) != c.level {
					t.Errorf("%s: %s %q holds no %q", c.fields, said.Level, said.Text, words)
				}
			}
		}
		if !found {
			t.Errorf("%s: there is no %s", c.fields, c.code)
		}
	}
}

// Of the stripes of 0.25 and 0.4 mm, in spaces of 2.5 mm and more, those of 0.25 mm are marked as lost.
func TestLostLinesAreMarked(t *testing.T) {
	lines := drawn(800, 400, []int{100, 0, 10, 400}, []int{300, 0, 16, 400}, []int{500, 0, 10, 400})
	for fields, want := range map[string]bool{"width=20&depth=0.2&undercut=0.7": true, "width=20&depth=0.1&undercut=0.7": false, "width=20": false} {
		for _, place := range measured(lines, fields).Narrow {
			if narrow := place.Kind == "line" && place.Width.Value < 0.28; place.Lost != (want && narrow) {
				t.Errorf("%s: a %s of %s is lost: %v", fields, place.Kind, place.Width.Text, place.Lost)
			}
		}
	}
}

// The map is what was measured: its mean is the share, and it has at most 1,000 cells on a side.
func TestMap(t *testing.T) {
	for _, size := range [][2]int{{400, 300}, {2500, 100}, {1, 1}} {
		p := drawn(size[0], size[1], []int{0, 0, size[0] / 4, size[1]})
		m := measured(p, "black=etches").Map
		sum := 0
		for _, v := range m.Open {
			sum += int(v)
		}
		want := float64(size[0]/4) / float64(size[0])
		if got := float64(sum) / 255 / float64(len(m.Open)); math.Abs(got-want) > 0.002 || m.Width > 1000 || m.Width*m.Height != len(m.Open) {
			t.Errorf("%v: a map of %d by %d, %g open, not %g", size, m.Width, m.Height, got, want)
		}
	}
}
