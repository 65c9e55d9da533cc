package drawing_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/drawing"
)

// sized is a length, m, as it might be printed.
func sized(mm float64) drawing.Size {
	return drawing.Size{SI: mm / 1000, Text: strconv.FormatFloat(mm, 'g', 3, 64) + " mm"}
}

// What is etched away of a stretch whose depth grows from 0.1 to 0.3 mm is a trapezium
// and a quarter of an ellipse at each end (textbook): to within what six straight pieces
// miss of a quarter, 1 % of it. Widths and depths have their scales from the drawing's words.
func TestAlongHasItsArea(t *testing.T) {
	a := drawing.Along{Length: sized(20), Depth: sized(0.2), Why: "as asked for", Deepest: sized(0.3), Shallowest: sized(0.1), Where: sized(15),
		Computed: true, Undercut: 0.8, Sides: 1, Sheet: sized(1), Left: sized(0.7),
		Open: []drawing.Stretch{{Left: 0.005, Right: 0.015, Depths: []float64{0.1e-3, 0.2e-3, 0.3e-3}}}}
	d := a.Draw()
	if !strings.Contains(d.Words, "Depths are drawn 5 times as large as widths.") {
		t.Fatal(d.Words)
	}
	const across = 58.5 / 20 // mm of drawing to a mm: the frame's room for a sheet
	const down = 5 * across
	want := (10*0.2 + math.Pi/4*0.8*(0.1*0.1+0.3*0.3)) * across * down
	found := 0
	for _, s := range d.Shapes {
		if s.Role == drawing.Gone {
			found++
			if got := area(t, s.Path); math.Abs(got/want-1) > 0.002 {
				t.Errorf("its area is %g, not %g", got, want)
			}
		}
		if s.Role == drawing.Metal { // 20 x 1 mm, less that
			if got := area(t, s.Path); math.Abs(got/(20*across*1*down-want)-1) > 0.001 {
				t.Errorf("what stays has %g", got)
			}
		}
	}
	if found != 1 {
		t.Errorf("%d bites", found)
	}
	for _, want := range []string{"from A to B, 20 mm.", "It crosses one exposed stretch.", "from 0.1 mm to 0.3 mm deep along it, deepest 15 mm from A",
		"the mean is 0.2 mm, as asked for.", "0.7 mm is left of the sheet of 1 mm there."} {
		if !strings.Contains(d.Words, want) {
			t.Errorf("%q lacks %q", d.Words, want)
		}
	}
}

// A line of resist of 0.2 mm between bites of 0.3 and 0.2 mm that go as far under it as
// they are deep: the walls are circles, which meet at x from the first with
//
//	0.09 - x^2 = 0.04 - (0.2 - x)^2, x = 0.225 mm
//
// beyond the line, so that the deeper bite has swallowed it and its wall ends in the other's
// floor. With a line of 0.3 mm they meet at x = 0.2333 mm, 0.1886 mm deep (textbook).
func TestAlongLosesALine(t *testing.T) {
	for _, c := range []struct {
		line, ridge float64
	}{{0.2, 0}, {0.3, 0.1886}, {0.6, 0}} {
		right := 1 + c.line
		a := drawing.Along{Length: sized(3), Depth: sized(0.25), Why: "as asked for", Deepest: sized(0.3), Shallowest: sized(0.2), Where: sized(0.5), Undercut: 1, Sides: 1,
			Open: []drawing.Stretch{{Left: 0.2e-3, Right: 1e-3, Depths: []float64{0.3e-3, 0.3e-3}}, {Left: right * 1e-3, Right: 2e-3, Depths: []float64{0.2e-3, 0.2e-3}}}}
		d := a.Draw()
		if lost := strings.Contains(d.Words, "One line between them has lost its top."); lost != (c.line < 0.5) {
			t.Errorf("a line of %g mm: %s", c.line, d.Words)
		}
		const across = 58.5 / 3
		x := 3 + (1+0.2333)*across
		for _, s := range d.Shapes {
			if s.Role != drawing.Gone || c.ridge == 0 {
				continue
			}
			for _, p := range points(t, s.Path) {
				if math.Abs(p.x-x) < 0.01 && p.y > 18 && math.Abs(p.y-18-c.ridge*across) > 0.02 {
					t.Errorf("the walls meet at %g, not %g", p.y, 18+c.ridge*across)
				}
			}
			if !shows(d, "0.3 mm") {
				t.Error("the deepest is not told")
			}
		}
	}
}

// Nothing of random cuts lies out of its frame, over another text or on metal. Invented.
func TestRandomAlong(t *testing.T) {
	r := rand.New(rand.NewPCG(14, 1))
	through := 0
	for range 2000 {
		length := 0.5 * math.Pow(600, r.Float64())
		depth := 0.01 * math.Pow(100, r.Float64())
		a := drawing.Along{Length: sized(length), Depth: sized(depth), Why: "as asked for", Computed: r.IntN(2) == 0, Undercut: 1.2 * r.Float64() * float64(r.IntN(4)), Sides: 1 + r.IntN(2), US: r.IntN(4) == 0}
		least, most, where := math.Inf(1), 0.0, 0.0
		for at := length * r.Float64() * float64(r.IntN(2)); at < length && r.IntN(8) > 0; {
			s := drawing.Stretch{Left: at / 1000}
			at = math.Min(length, at+length*0.2*r.Float64()+1e-6)
			s.Right = at / 1000
			for range 2 + r.IntN(5) {
				local := depth * (0.5 + r.Float64())
				s.Depths = append(s.Depths, local/1000)
				if local > most {
					most, where = local, s.Left*1000
				}
				least = math.Min(least, local)
			}
			a.Open = append(a.Open, s)
			at += length*0.1*r.Float64() + 1e-6
		}
		if most > 0 {
			a.Deepest, a.Shallowest, a.Where = sized(most), sized(least), sized(where)
		}
		if sheet := depth * float64(a.Sides) * (1 + 3*r.Float64()); r.IntN(4) > 0 {
			a.Sheet, a.Left = sized(sheet), sized(sheet-most*float64(a.Sides))
			if r.IntN(2) == 0 {
				a.Least = sized(sheet * r.Float64())
			}
		}
		d := a.Draw()
		for _, wrong := range sound(t, d, 0, screenLeast) {
			t.Errorf("%s\n%s", wrong, d.Words)
		}
		if strings.Contains(d.Words, "eaten through") {
			through++
		}
		for _, s := range d.Shapes {
			if strings.Contains(s.Path, "NaN") {
				t.Error(s.Path)
			}
		}
		if t.Failed() {
			break
		}
	}
	if through < 100 {
		t.Errorf("only %d are eaten through", through)
	}
}

// What is to stay of the sheet is drawn as a dashed line, on both sides where both are
// etched.
func TestAlongDrawsWhatIsToStay(t *testing.T) {
	for sides := 1; sides <= 2; sides++ {
		a := drawing.Along{Length: sized(20), Depth: sized(0.4), Why: "as asked for", Deepest: sized(0.4), Shallowest: sized(0.4), Where: sized(10),
			Sides: sides, Sheet: sized(1), Left: sized(0.2), Least: sized(0.1), Open: []drawing.Stretch{{Left: 0.005, Right: 0.015, Depths: []float64{0.4e-3, 0.4e-3}}}}
		dashed := 0
		for _, s := range a.Draw().Shapes {
			if s.Role == drawing.Keep && s.Dash {
				dashed++
			}
		}
		if dashed != sides {
			t.Errorf("of %d sides: %d dashed lines", sides, dashed)
		}
	}
}

// Etched from both faces a sheet of 1 mm is through at 0.5 mm: what is drawn of a bite of
// 0.6 mm ends in the sheet's middle, on both sides.
func TestAlongMeetsInTheMiddle(t *testing.T) {
	a := drawing.Along{Length: sized(20), Depth: sized(0.6), Why: "as asked for", Deepest: sized(0.6), Shallowest: sized(0.6), Where: sized(10),
		Sides: 2, Sheet: sized(1), Left: sized(-0.2), Open: []drawing.Stretch{{Left: 0.005, Right: 0.015, Depths: []float64{0.6e-3, 0.6e-3}}}}
	d := a.Draw()
	top, bottom := math.Inf(1), math.Inf(-1)
	for _, metal := range ofRole(t, d, drawing.Metal) {
		top, bottom = math.Min(top, metal.top), math.Max(bottom, metal.bottom)
	}
	gone := ofRole(t, d, drawing.Gone)
	if len(gone) != 2 {
		t.Fatalf("%d bites", len(gone))
	}
	for _, bite := range gone {
		isNear(t, "how deep a bite is drawn", bite.bottom-bite.top, (bottom-top)/2)
	}
}
