package drawing_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/drawing"
)

// aSection is etched 0.2 mm deep and 0.1 mm under the resist: lines of 0.6 mm keep 0.4, gaps
// of 0.4 mm widen to 0.6.
func aSection(sides int) drawing.Section {
	return drawing.Section{Depth: sized(0.2), Why: "as asked for", Undercut: 0.5, SideBite: sized(0.1), Sides: sides, Sheet: sized(1), Left: sized(1 - 0.2*float64(sides)),
		Least: sized(0.25), Line: sized(0.6), Space: sized(0.4), LineLeft: sized(0.4), SpaceGets: sized(0.6)}
}

// A section is to one scale where it can be: the depths beside it, the level to leave, the
// strips of resist, what the line keeps and what the gap widens to.
func TestSectionToScale(t *testing.T) {
	for sides := 1; sides <= 2; sides++ {
		s := aSection(sides)
		d := s.Draw()
		across, down := scales(t, d)
		isNear(t, "a metre", across, 22/0.001) // all of the frame's room for the sheet
		isNear(t, "a metre down", down, across)
		mm := across / 1000
		const back, middle = backY, (3 + 61.5) / 2
		floor, bottom := faceY+0.2*mm, back
		if sides == 2 {
			bottom = back - 0.2*mm
		}
		isNear(t, "the middle of what is etched", beside(t, d, "etched"), (faceY+floor)/2)
		isNear(t, "the middle of what is left", beside(t, d, "left"), (floor+bottom)/2)
		isNear(t, "the level to leave", beside(t, d, "leave at least"), faceY+0.75*mm/float64(sides))
		keeps := ofRole(t, d, drawing.Keep)
		if len(keeps) != sides {
			t.Fatalf("%d levels to leave", len(keeps))
		}
		if sides == 2 {
			isNear(t, "what stays between the lines", keeps[1].top-keeps[0].top, 0.25*mm)
			isNear(t, "the middle of what stays", (keeps[1].top+keeps[0].top)/2, (faceY+back)/2)
		}
		resist := ofRole(t, d, drawing.Resist)
		if len(resist) != 3*sides {
			t.Fatalf("%d strips of resist", len(resist))
		}
		line := resist[sides]
		isNear(t, "the line's left edge", line.left, middle-0.3*mm)
		isNear(t, "the line's right edge", line.right, middle+0.3*mm)
		isNear(t, "the first strip's end", resist[0].right, middle-0.7*mm)
		isNear(t, "the last strip's begin", resist[2*sides].left, middle+0.7*mm)
		isNear(t, "the sheet's left", resist[0].left, 3)
		isNear(t, "the sheet's right", resist[2*sides].right, 61.5)
		gone := ofRole(t, d, drawing.Gone)
		if len(gone) != 2*sides {
			t.Fatalf("%d bites", len(gone))
		}
		for i, g := range gone {
			at := middle - 0.5*mm
			if i >= sides {
				at = middle + 0.5*mm
			}
			isNear(t, "a bite's left", g.left, at-0.3*mm)
			isNear(t, "a bite's right", g.right, at+0.3*mm)
			if sides == 2 && i%2 == 1 {
				isNear(t, "a bite of the back", g.bottom, back)
				isNear(t, "its floor", g.top, bottom)
			} else {
				isNear(t, "a bite of the face", g.top, faceY)
				isNear(t, "its floor", g.bottom, floor)
			}
		}
		spans := map[float64]float64{} // of the widths over the resist: how wide, by their middles
		for _, b := range ofRole(t, d, drawing.Dimension) {
			if b.bottom < faceY {
				spans[math.Round((b.left+b.right)/2*100)/100] = b.right - b.left
			}
		}
		isNear(t, "what the line keeps", spans[middle], 0.4*mm)
		isNear(t, "what the gap widens to", spans[middle-0.5*mm], 0.6*mm)
		for word, x := range map[string]float64{"line keeps": middle, "gap widens to": middle - 0.5*mm} {
			found := false
			for _, s := range d.Shapes { // a leader goes from its span to under its word
				if s.Role == drawing.Leader {
					p := points(t, s.Path)
					found = found || math.Abs(p[0].x-x) < 0.02 && p[0].y > p[1].y && p[1].y > 4.8
				}
			}
			if !found || !shows(d, word) {
				t.Errorf("no leader goes from %v to %q", x, word)
			}
		}
	}
}

// As many lines are drawn as have room beside the strips of 4 mm at both ends, five at most.
func TestLinesThatHaveRoom(t *testing.T) {
	const across, undercut, depth = 140, 0.1, 0.05 // mm of drawing to a mm: 7 mm to the depth
	drawn := map[int]bool{}
	for _, space := range []float64{0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.07, 0.08, 0.09, 0.1} {
		const line = 0.02
		s := drawing.Section{Depth: sized(depth), Why: "as asked for", Undercut: undercut, Sides: 1, Line: sized(line), Space: sized(space)}
		d := s.Draw()
		if got, _ := scales(t, d); math.Abs(got/1000/across-1) > 1e-3 {
			t.Fatalf("a mm is drawn %v mm wide", got/1000)
		}
		want := 1
		for n := 2; n <= 5; n++ {
			if across*(float64(n)*(line+space)+space+2*undercut*depth) <= 58.5-8 {
				want = n
			}
		}
		if got := len(ofRole(t, d, drawing.Resist)) - 2; got != want {
			t.Errorf("gaps of %v mm: %d lines, not %d", space, got, want)
		}
		drawn[want] = true
	}
	if len(drawn) < 4 {
		t.Errorf("only so many lines come up: %v", drawn)
	}
}

// What is left is held against what is to stay, with nothing said where that is not known.
func TestWhatIsToStayInWords(t *testing.T) {
	for least, want := range map[float64]string{0.79: "and at least 0.79 mm is to stay.", 0.8: "and at least 0.8 mm is to stay.", 0.81: "less than the 0.81 mm to leave.", 0.5: "and at least 0.5 mm"} {
		s := aSection(1)
		s.Least = sized(least)
		if d := s.Draw(); !strings.Contains(d.Words, want) {
			t.Errorf("%s", d.Words)
		}
	}
	s := aSection(1)
	s.Least = drawing.Size{}
	if d := s.Draw(); !strings.Contains(d.Words, "0.8 mm is left of the sheet of 1 mm.") || len(ofRole(t, d, drawing.Keep)) != 0 {
		t.Errorf("%s", d.Words)
	}
	s.Left = drawing.Size{}
	if d := s.Draw(); !strings.Contains(d.Words, "The sheet is 1 mm.") || shows(d, "left") {
		t.Errorf("%s", d.Words)
	}
	for sheet, drawn := range map[float64]bool{0.2: false, 0.199: false, 0.201: true} { // eaten through
		s := aSection(1)
		s.Sheet = sized(sheet)
		if d := s.Draw(); (d != nil) != drawn {
			t.Errorf("a sheet of %v mm: %v", sheet, d)
		}
	}
}

// A line is gone as soon as the walls from both sides meet, at twice the 0.1 mm of a side.
func TestWhenALineIsGone(t *testing.T) {
	for line, gone := range map[float64]bool{0.19: true, 0.2: true, 0.21: false} {
		s := aSection(1)
		s.Line, s.LineLeft = sized(line), sized(line-0.2)
		d := s.Draw()
		if got := len(ofRole(t, d, drawing.Lost)) > 0; got != gone || strings.Contains(d.Words, "is gone") != gone || strings.Contains(d.Words, "widens to") == gone || figures(d)["finest line"] == "gone" != gone {
			t.Errorf("a line of %v mm: %s", line, d.Words)
		}
	}
}

// Ticks of both axes stand where their figures lie, on the scale of the line, and levels
// beside it where theirs do: a target of 60 µm after so long, limits of 70 and 80 µm.
func TestCurveHasItsScales(t *testing.T) {
	for _, us := range []bool{false, true} {
		for seconds, unit := range map[float64]float64{0.5: 1, 90: 1, 5000: 60, 40000: 3600} {
			c := even(6e-5/seconds, seconds)
			c.US = us
			c.Sheet, c.Line = sized(0.08), sized(0.07)
			d := c.Draw()
			if d == nil {
				t.Fatalf("%v s are not drawn", seconds)
			}
			var corner, target point
			for _, s := range d.Shapes {
				switch {
				case s.Role == drawing.Line:
					corner = points(t, s.Path)[0]
				case s.Role == drawing.Target && !s.Dash && s.Path != "":
					target = center(t, s.Path)
				}
			}
			metre, second := (target.y-corner.y)/6e-5, (target.x-corner.x)/seconds
			length := 1e-3
			if us {
				length = 25.4e-3
			}
			beneath, left := 0, 0
			for _, s := range d.Shapes {
				n, err := strconv.ParseFloat(s.Text, 64)
				switch {
				case err != nil:
				case s.Anchor == drawing.End:
					left++
					isNear(t, "the tick of "+s.Text, s.Y-1.5, corner.y+n*length*metre)
				case s.Anchor == drawing.Middle:
					beneath++
					isNear(t, "the tick of "+s.Text, s.X, corner.x+n*unit*second)
				}
			}
			if left < 3 || beneath < 2 || left > 8 || beneath > 8 {
				t.Errorf("%v s: %d ticks beside it, %d under it", seconds, left, beneath)
			}
			limits := ofRole(t, d, drawing.Limit)
			if len(limits) != 2 {
				t.Fatalf("%d limits", len(limits))
			}
			isNear(t, "the sheet's limit", limits[0].top, corner.y+8e-5*metre)
			isNear(t, "the line's limit", limits[1].top, corner.y+7e-5*metre)
			isNear(t, "the sheet's limit's word", beside(t, d, "sheet's limit"), limits[0].top)
			isNear(t, "the line's limit's word", beside(t, d, "line is gone"), limits[1].top)
			isNear(t, "the job's word", beside(t, d, "this job"), target.y)
		}
	}
}

// A limit is drawn up to 1.6 times what else there is to see, and told beyond it; a curve
// without an end or without a depth is not drawn.
func TestHowFarACurveGoes(t *testing.T) {
	for limit, want := range map[float64]int{1.15: 1, 1.19: 1, 1.21: 0, 3: 0} { // of 0.06 mm at the target, 0.072 at the end: 0.1152
		c := even(1e-8, 6000)
		c.Sheet = sized(0.06 * limit * 1.6)
		d := c.Draw()
		if got := len(ofRole(t, d, drawing.Limit)); got != want || strings.Contains(d.Words, "deeper than is drawn") != (want == 0) {
			t.Errorf("%v: %d limits: %s", limit, got, d.Words)
		}
	}
	for name, c := range map[string]drawing.Curve{"no end": even(1e-8, 0), "no depth": even(0, 60), "no curve": {}} {
		if d := c.Draw(); d != nil {
			t.Errorf("%s: %s", name, d.Words)
		}
	}
	c := even(1e-8, 60)
	c.Depth = func(float64) float64 { return math.Inf(1) }
	if d := c.Draw(); d != nil {
		t.Errorf("an endless depth is drawn: %s", d.Words)
	}
}

// A target is marked if both its time and its depth are known; one reading is told.
func TestHalfATarget(t *testing.T) {
	for _, c := range []struct{ time, depth string }{{"end", ""}, {"", "deep"}} {
		curve := even(1e-8, 6000)
		curve.Target.Time.Text, curve.Target.Depth.Text = c.time, c.depth
		d := curve.Draw()
		if strings.Contains(d.Words, "reached") || len(ofRole(t, d, drawing.Target)) > 0 {
			t.Errorf("%v: %s", c, d.Words)
		}
	}
	c := even(1e-8, 6000)
	c.Readings = []drawing.Point{{Time: drawing.Size{SI: 600, Text: "10 min"}, Depth: drawing.Size{SI: 6e-6, Text: "6 µm"}}}
	d := c.Draw()
	if !strings.Contains(d.Words, "By the ammeter it is 6 µm deep after 10 min.") || figures(d)["so far"] != "6 µm" {
		t.Errorf("%s", d.Words)
	}
	for _, s := range d.Shapes { // of two words there is room for bold type
		if s.Text == "end" && !s.Strong {
			t.Error("the time is not strong")
		}
	}
}

// On a label there is room to write down what else is etched in a bath, however much stands
// there already; what is not known of it has all its line.
func TestRoomOnALabel(t *testing.T) {
	rules := func(l drawing.Label) (boxes []box) {
		l.Title = "Copper sulfate bath"
		return ofRole(t, l.Draw(), drawing.Rule)
	}
	if blank := rules(drawing.Label{}); len(blank) != 3 || blank[0].right-blank[0].left < 60 || blank[2].right != 87 {
		t.Errorf("%v", blank)
	}
	for _, etched := range []string{"20 g of brass", strings.Repeat("20 g of brass, ", 20)} {
		full := rules(drawing.Label{Holds: "2 L", Mixed: "3 May", Etched: etched})
		if len(full) != 1 || full[0].right != 87 || full[0].right-full[0].left < 10.4 || len(etched) > 50 && full[0].right-full[0].left > 10.6 {
			t.Errorf("%q: %v", etched, full)
		}
	}
}

// Where two walls meet there is a corner, between each two of several stretches; a stretch
// that begins at A or ends at B leaves no resist there.
func TestCornersWhereWallsMeet(t *testing.T) {
	a := drawing.Along{Length: sized(4.8), Depth: sized(0.3), Deepest: sized(0.3), Shallowest: sized(0.3), Undercut: 1, Sides: 1}
	for i := range 4 { // lines of 0.4 mm, gone down to the square root of 0.3² - 0.2² in their middles
		left := 1.4e-3 * float64(i)
		a.Open = append(a.Open, drawing.Stretch{Left: left, Right: left + 1e-3, Depths: []float64{0.3e-3, 0.3e-3}})
	}
	a.Length = sized(5.2)
	d := a.Draw()
	across, down := scales(t, d)
	for i := range 3 {
		x, y := 3+(1.2+1.4*float64(i))*across/1000, faceY+math.Sqrt(0.05)*down/1000
		found := false
		for _, s := range d.Shapes {
			if s.Role == drawing.Metal {
				for _, p := range points(t, s.Path) {
					found = found || math.Abs(p.x-x) < 0.01 && math.Abs(p.y-y) < 0.01
				}
			}
		}
		if !found {
			t.Errorf("no corner of line %d at %v, %v", i, x, y)
		}
	}
	if got := ofRole(t, d, drawing.Resist); len(got) != 0 {
		t.Errorf("resist at the ends: %v", got)
	}
	if got := ofRole(t, d, drawing.Lost); len(got) != 3 {
		t.Errorf("%d strips of lost resist", len(got))
	}
}

// Without a depth, or with one of 0 or less, there is no section.
func TestSectionOfNoDepth(t *testing.T) {
	for _, depth := range []drawing.Size{{}, {SI: 0, Text: "0 mm"}, {SI: -1e-4, Text: "-0.1 mm"}} {
		s := aSection(1)
		s.Depth = depth
		if d := s.Draw(); d != nil {
			t.Errorf("a depth of %q is drawn", depth.Text)
		}
	}
}

// In a sheet that is cut short the level to leave is drawn only where it stays clear of the
// break, 2 mm. The frame's 50.5 mm beside blocks of resist are for a line, two gaps and what
// is etched under it, 1.6 mm; the break is 15 mm under the face, 0.475 mm, so that the level
// is drawn as far as 13 mm, 0.412 mm.
func TestLevelToLeaveNearTheBreak(t *testing.T) {
	for level, want := range map[float64]int{0.25: 1, 0.41: 1, 0.415: 0, 0.47: 0, 0.53: 0, 2: 0} {
		s := aSection(1)
		s.Sheet, s.Left, s.Least = sized(10), sized(9.8), sized(10-level)
		if got := len(ofRole(t, s.Draw(), drawing.Keep)); got != want {
			t.Errorf("a level %g mm under the face is drawn %d times, not %d", level, got, want)
		}
	}
}
