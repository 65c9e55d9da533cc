package drawing_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/drawing"
)

// box is a rectangle in mm of the frame.
type box struct{ left, top, right, bottom float64 }

func (b box) String() string {
	return fmt.Sprintf("%.2f to %.2f across, %.2f to %.2f down", b.left, b.right, b.top, b.bottom)
}

// meets says whether two boxes overlap by more than a hair.
func (b box) meets(o box) bool {
	const hair = 0.02
	return b.left < o.right-hair && o.left < b.right-hair && b.top < o.bottom-hair && o.top < b.bottom-hair
}

// within says whether a box lies inside a frame less a margin.
func (b box) within(d *drawing.Drawing, margin float64) bool {
	const hair = 0.002
	return b.left >= margin-hair && b.top >= margin-hair && b.right <= d.Width-margin+hair && b.bottom <= d.Height-margin+hair
}

// boxOf is the room that a text or a path takes. A font's letters reach from
// 0.76 of its size over the baseline to 0.22 under it (DejaVu Sans).
func boxOf(t testing.TB, s drawing.Shape) box {
	if s.Text == "" {
		return boxOfPath(t, s.Path)
	}
	width := drawing.WidthOf(s.Text, s.Size, s.Strong)
	left := s.X
	switch s.Anchor {
	case drawing.Middle:
		left -= width / 2
	case drawing.End:
		left -= width
	}
	return box{left, s.Y - 0.76*s.Size, left + width, s.Y + 0.22*s.Size}
}

func boxOfPath(t testing.TB, data string) box {
	b := box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, p := range points(t, data) {
		b = box{math.Min(b.left, p.x), math.Min(b.top, p.y), math.Max(b.right, p.x), math.Max(b.bottom, p.y)}
	}
	return b
}

type point struct{ x, y float64 }

// points follows path data, its arcs in short steps. Anything but M, L, A and Z
// with numbers of at most three decimals fails the test.
func points(t testing.TB, data string) (all []point) {
	t.Helper()
	for rest := data; rest != ""; {
		letter := rest[0]
		end := strings.IndexAny(rest[1:], "MLAZ")
		if end < 0 {
			end = len(rest) - 1
		}
		var n []float64
		for _, text := range strings.Fields(rest[1 : 1+end]) {
			x, err := strconv.ParseFloat(text, 64)
			if _, decimals, _ := strings.Cut(text, "."); err != nil || len(decimals) > 3 || math.IsInf(x, 0) || math.IsNaN(x) {
				t.Fatalf("%q in %q", text, data)
			}
			n = append(n, x)
		}
		rest = rest[1+end:]
		switch {
		case (letter == 'M' || letter == 'L') && len(n) == 2:
			all = append(all, point{n[0], n[1]})
		case letter == 'A' && len(n) == 7 && n[2] == 0 && n[3] == 0 && n[4] == 0 && len(all) > 0:
			all = append(all, arc(all[len(all)-1], point{n[5], n[6]}, n[0], n[1])...)
		case letter == 'Z' && len(n) == 0:
		default:
			t.Fatalf("%c with %v in %q", letter, n, data)
		}
	}
	return all
}

// arc is the smaller arc against the clock from a to b, by the conversion from
// endpoints to centre of SVG 2, appendix B.2.4.
func arc(a, b point, rx, ry float64) (steps []point) {
	const count = 60
	if a == b {
		return nil
	}
	hx, hy := (a.x-b.x)/2/rx, (a.y-b.y)/2/ry // on the unit circle
	half := hx*hx + hy*hy
	if half > 1 { // rounded too far apart: the ellipse is taken larger
		rx, ry, hx, hy, half = rx*math.Sqrt(half), ry*math.Sqrt(half), hx/math.Sqrt(half), hy/math.Sqrt(half), 1
	}
	k := math.Sqrt(math.Max(0, 1/half-1))
	cx, cy := -k*hy, k*hx // flags equal: the negative root
	from, to := math.Atan2(hy-cy, hx-cx), math.Atan2(-hy-cy, -hx-cx)
	if to > from {
		to -= 2 * math.Pi
	}
	mx, my := (a.x+b.x)/2, (a.y+b.y)/2
	for i := 1; i <= count; i++ {
		sin, cos := math.Sincos(from + (to-from)*float64(i)/count)
		steps = append(steps, point{mx + rx*(cx+cos), my + ry*(cy+sin)})
	}
	return steps
}

// area is what a closed path encloses, mm2.
func area(t testing.TB, data string) (sum float64) {
	p := points(t, data)
	for i := range p {
		q := p[(i+1)%len(p)]
		sum += (p[i].x*q.y - q.x*p[i].y) / 2
	}
	return math.Abs(sum)
}

// sound finds what is wrong with any drawing: out of its frame, text over text,
// text on metal or resist, type too small, no words.
func sound(t testing.TB, d *drawing.Drawing, margin, least float64) (wrong []string) {
	say := func(format string, args ...any) { wrong = append(wrong, fmt.Sprintf(format, args...)) }
	for _, s := range d.Shapes {
		if s.Path != "" && s.Path[0] != 'M' {
			say("a path that begins nowhere: %s", s.Path)
		}
	}
	if d.Title == "" || !strings.HasSuffix(d.Words, ".") {
		say("its words are %q, %q", d.Title, d.Words)
	}
	var texts, solid []box
	for _, s := range d.Shapes {
		b := boxOf(t, s)
		room := margin
		if s.Text == "" {
			room = 0
		}
		if !b.within(d, room) {
			say("%s %s%s is out of its frame: %v", s.Role, s.Text, s.Path, b)
		}
		if s.Text != "" && s.Size < least {
			say("%s is %v mm high", s.Text, s.Size)
		}
		switch {
		case s.Text != "":
			for i, o := range texts {
				if b.meets(o) {
					say("text %d and %q overlap: %v; %v", i, s.Text, o, b)
				}
			}
			texts = append(texts, b)
		case s.Role == drawing.Metal || s.Role == drawing.Resist || s.Role == drawing.Lost || s.Role == drawing.Cathode:
			solid = append(solid, b)
		}
	}
	for _, text := range texts {
		for _, b := range solid {
			if text.meets(b) {
				say("a text stands on metal or resist: %v; %v", text, b)
			}
		}
	}
	return wrong
}
