package drawing_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/drawing"
)

// faceY is where the face of a sheet is drawn, mm; backY the lowest that its back may be.
const faceY, backY = 18.0, 40.0

// ofRole are the boxes of the paths of a role, in their order.
func ofRole(t *testing.T, d *drawing.Drawing, role drawing.Role) (boxes []box) {
	for _, s := range d.Shapes {
		if s.Role == role && s.Path != "" {
			boxes = append(boxes, boxOfPath(t, s.Path))
		}
	}
	return boxes
}

// beside says where the leader of a figure begins: the height of what it is about.
func beside(t *testing.T, d *drawing.Drawing, word string) float64 {
	t.Helper()
	for i, s := range d.Shapes {
		if s.Text == word && i > 0 && d.Shapes[i-1].Role == drawing.Leader {
			return points(t, d.Shapes[i-1].Path)[0].y
		}
	}
	t.Fatalf("there is no %q with a leader", word)
	return 0
}

func isNear(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 0.02 {
		t.Errorf("%s is %v, not %v", what, got, want)
	}
}

// twoDepths is a line of 20 mm over bites of 0.1 and 0.3 mm, the deeper one in the middle, in a
// sheet of so many mm that is etched from so many sides.
func twoDepths(sheet float64, sides int) drawing.Along {
	return drawing.Along{Length: sized(20), Depth: sized(0.2), Why: "as asked for", Deepest: sized(0.3), Shallowest: sized(0.1), Where: sized(10),
		Computed: true, Sides: sides, Sheet: sized(sheet), Left: sized(sheet - 0.3*float64(sides)),
		Open: []drawing.Stretch{{Left: 0.002, Right: 0.006, Depths: []float64{0.1e-3, 0.1e-3}}, {Left: 0.008, Right: 0.012, Depths: []float64{0.3e-3, 0.3e-3}}}}
}

// Beside a cut stand what is etched and what is left, to the scale that its words tell:
// from the face to the deepest floor, and from there to the back or to the floor of the
// bite in it. The parts add up to the sheet. What is to stay is as far from both floors as
// the figures say, and the dimension of the deepest place stands in it.
func TestAlongToScale(t *testing.T) {
	for sides := 1; sides <= 2; sides++ {
		a := twoDepths(1, sides)
		a.Least = sized(0.25)
		d := a.Draw()
		across, down := scales(t, d)
		isNear(t, "a metre across", across, 58.5/0.02)
		isNear(t, "a metre down", down, 5*across) // 22 mm for 1 mm of sheet would be 7.5
		mm := down / 1000
		back := faceY + 1*mm
		isNear(t, "the deepest floor", beside(t, d, "deepest"), faceY+0.3*mm)
		isNear(t, "the shallowest floor", beside(t, d, "shallowest"), faceY+0.1*mm)
		bottom := back
		if sides == 2 {
			bottom = back - 0.3*mm
		}
		isNear(t, "the middle of what is left", beside(t, d, "left"), (faceY+0.3*mm+bottom)/2)
		isNear(t, "the level to leave", beside(t, d, "leave at least"), faceY+0.75*mm/float64(sides))
		keeps := ofRole(t, d, drawing.Keep)
		if len(keeps) != sides {
			t.Fatalf("%d levels to leave", len(keeps))
		}
		isNear(t, "the line to leave", keeps[0].top, faceY+0.75*mm/float64(sides))
		if sides == 2 {
			isNear(t, "what stays between the lines", keeps[1].top-keeps[0].top, 0.25*mm)
			isNear(t, "the middle of what stays", (keeps[1].top+keeps[0].top)/2, (faceY+back)/2)
		}
		metal := ofRole(t, d, drawing.Metal)
		if len(metal) != 1 {
			t.Fatalf("%d pieces of metal", len(metal))
		}
		isNear(t, "the face", metal[0].top, faceY)
		isNear(t, "the back", metal[0].bottom, back)
		gone := ofRole(t, d, drawing.Gone)
		if len(gone) != 2*sides {
			t.Fatalf("%d bites", len(gone))
		}
		floors := []float64{0.1, 0.1, 0.3, 0.3}
		for i, g := range gone {
			n := i // bite after bite, each with that of the back
			if sides == 1 {
				n = 2 * i
			}
			isNear(t, "a bite's depth", g.bottom-g.top, floors[n]*mm)
			isNear(t, "its left edge", g.left, 3+float64(2+6*(n/2))*across/1000)
			isNear(t, "its right edge", g.right, 3+float64(6+6*(n/2))*across/1000)
			if sides == 2 && i%2 == 1 {
				isNear(t, "a bite of the back", g.bottom, back)
			} else {
				isNear(t, "a bite of the face", g.top, faceY)
			}
		}
		resist := ofRole(t, d, drawing.Resist)
		if len(resist) != 3*sides {
			t.Fatalf("%d strips of resist", len(resist))
		}
		for i, r := range resist {
			n := i / sides
			isNear(t, "a strip's left edge", r.left, 3+[]float64{0, 6, 12}[n]*across/1000)
			isNear(t, "a strip's right edge", r.right, 3+[]float64{2, 8, 20}[n]*across/1000)
			if sides == 2 && i%2 == 1 {
				isNear(t, "resist on the back", r.top, back)
			} else {
				isNear(t, "resist on the face", r.bottom, faceY)
			}
		}
		var chain []point // upright lines with their ends
		for _, s := range d.Shapes {
			if s.Role == drawing.Dimension {
				chain = points(t, s.Path)
			}
		}
		upright := func(what string, p []point, x, top, bottom float64) {
			for i, want := range []point{{x - 1, top}, {x + 1, top}, {x, top}, {x, bottom}, {x - 1, bottom}, {x + 1, bottom}} {
				isNear(t, what+", across", p[i].x, want.x)
				isNear(t, what+", down", p[i].y, want.y)
			}
		}
		if len(chain) != 20 {
			t.Fatalf("the chain has %d points", len(chain))
		}
		upright("the deepest", chain, chain[2].x, faceY, faceY+0.3*mm)
		isNear(t, "the tick of the shallowest, down", chain[6].y, faceY+0.1*mm)
		isNear(t, "the tick of the shallowest, across", chain[6].x, chain[0].x)
		isNear(t, "its end, down", chain[7].y, faceY+0.1*mm)
		isNear(t, "its end, across", chain[7].x, chain[1].x)
		upright("what is left", chain[8:], chain[2].x, faceY+0.3*mm, bottom)
		upright("the deepest place", chain[14:], 3+10*across/1000, faceY, faceY+0.3*mm)
	}
}

// A bite through all of the sheet leaves two pieces and no dimension of what is left; what
// is to stay of a sheet is drawn only if that is less than the sheet.
func TestAlongEatenThrough(t *testing.T) {
	a := twoDepths(0.3, 1)
	a.Left = drawing.Size{SI: 0, Text: "0 mm"}
	d := a.Draw()
	if metal := ofRole(t, d, drawing.Metal); len(metal) != 2 || !strings.Contains(d.Words, "eaten through") {
		t.Errorf("%d pieces: %s", len(metal), d.Words)
	}
	if _, told := figures(d)["left"]; told {
		t.Error("a dimension says that nothing is left")
	}
	for least, want := range map[float64]int{0.5: 1, 1: 0, 1.2: 0} {
		a := twoDepths(1, 1)
		a.Least = sized(least)
		if got := len(ofRole(t, a.Draw(), drawing.Keep)); got != want {
			t.Errorf("%v of 1 mm is to stay: %d lines", least, got)
		}
	}
	a = twoDepths(1, 1)
	a.Sheet, a.Left, a.Least = drawing.Size{}, drawing.Size{}, sized(0.2)
	if d := a.Draw(); len(ofRole(t, d, drawing.Keep)) != 0 || strings.Contains(d.Words, "left") {
		t.Errorf("of an unknown sheet %s", d.Words)
	}
	for _, a := range []drawing.Along{{Length: sized(20)}, {Depth: sized(0.1)}} {
		if d := a.Draw(); d != nil {
			t.Errorf("%+v is drawn", a)
		}
	}
}

// A thick sheet is drawn cut short: in the middle of what both bites leave if both sides are
// etched, else with a strip of its back; the words say so, and the two pieces don't meet.
func TestAlongCutShort(t *testing.T) {
	for sides := 1; sides <= 2; sides++ {
		a := twoDepths(40, sides)
		a.Least = sized(1)
		d := a.Draw()
		if !strings.Contains(d.Words, "left out") || !shows(d, "cut short") {
			t.Errorf("%s", d.Words)
		}
		metal := ofRole(t, d, drawing.Metal)
		if len(metal) != 2 {
			t.Fatalf("%d pieces of metal", len(metal))
		}
		upper, lower := metal[0], metal[1]
		isNear(t, "the face", upper.top, faceY)
		isNear(t, "the back", lower.bottom, backY)
		if gap := lower.top - upper.bottom; gap < 0.5 || gap > 3 {
			t.Errorf("the pieces are %v apart", gap)
		}
		// Both pieces of a sheet etched on both sides are as high; of one side's the upper is the higher.
		up, low := upper.bottom-upper.top, lower.bottom-lower.top
		if sides == 2 && math.Abs(up-low) > 1 || sides == 1 && (up < 2*low || low < 4) {
			t.Errorf("the upper piece is %v high, the lower %v", up, low)
		}
		if got := len(ofRole(t, d, drawing.Keep)); got != 0 {
			t.Errorf("%d lines are drawn in what is left out", got)
		}
	}
}

// A and B stand over the ends of the line, and the figure of a short line's end still
// clear of the other.
func TestEndsOfALine(t *testing.T) {
	for _, length := range []float64{20, 0.5} {
		a := twoDepths(1, 1)
		a.Length = sized(length)
		a.Depth = sized(0.3)
		a.Open = nil
		d := a.Draw()
		at := map[string]box{}
		for _, s := range d.Shapes {
			if s.Text == "A" || s.Text == "B" {
				at[s.Text] = boxOf(t, s)
				if !s.Strong {
					t.Errorf("%s is not strong", s.Text)
				}
			}
		}
		isNear(t, "A", at["A"].left, 3)
		across, _ := scales(t, d)
		isNear(t, "B", at["B"].right, math.Max(13, 3+length*across/1000))
		if at["A"].bottom > faceY-1.6 || at["B"].bottom > faceY-1.6 {
			t.Errorf("%v stand on the resist", at)
		}
	}
}

// Where it is deepest is an end of the line within a hundredth of it.
func TestWhereItIsDeepest(t *testing.T) {
	for where, want := range map[float64]string{0: "deepest at A,", 0.19: "deepest at A,", 0.21: "deepest 0.21 mm from A", 10: "deepest 10 mm from A", 19.79: "deepest 19.8 mm from A", 19.81: "deepest at B,", 20: "deepest at B,"} {
		a := twoDepths(1, 1)
		a.Where = sized(where)
		if d := a.Draw(); !strings.Contains(d.Words, want) {
			t.Errorf("%v mm: %s", where, d.Words)
		}
	}
	a := twoDepths(1, 1)
	a.Shallowest = a.Deepest
	if d := a.Draw(); !strings.Contains(d.Words, "It is etched 0.3 mm deep along it, where the mean is 0.2 mm") || strings.Contains(d.Words, " to 0.3") || shows(d, "shallowest") {
		t.Errorf("%s", d.Words)
	}
	a.Computed = false
	if d := a.Draw(); !strings.Contains(d.Words, "All are drawn 0.2 mm deep, as asked for: how even") {
		t.Errorf("%s", d.Words)
	}
}

// Lines between stretches that have lost their tops are counted; resist at an end of the
// line is no line. Bites that go 0.3 mm under the resist from each side take 0.5 mm.
func TestLostLinesAreCounted(t *testing.T) {
	for n, want := range map[int]string{1: "", 2: "One line between them has lost its top.", 4: "3 lines between them have lost their tops."} {
		a := drawing.Along{Length: sized(20), Depth: sized(0.3), Deepest: sized(0.3), Shallowest: sized(0.3), Undercut: 1, Sides: 1}
		for i := range n {
			left := 0.2e-3 + 1.5e-3*float64(i)
			a.Open = append(a.Open, drawing.Stretch{Left: left, Right: left + 1e-3, Depths: []float64{0.3e-3, 0.3e-3}})
		}
		d := a.Draw()
		if lost := strings.Contains(d.Words, "lost its top") || strings.Contains(d.Words, "lost their tops"); lost != (want != "") || !strings.Contains(d.Words, want) {
			t.Errorf("%d stretches: %s", n, d.Words)
		}
		if crosses := map[int]string{1: "one exposed stretch.", 2: "2 exposed stretches.", 4: "4 exposed stretches."}[n]; !strings.Contains(d.Words, crosses) {
			t.Errorf("%d stretches: %s", n, d.Words)
		}
		if got := len(ofRole(t, d, drawing.Lost)); got != n { // and the 0.2 mm at A
			t.Errorf("%d stretches: %d strips are lost", n, got)
		}
	}
}

// A percentage's mark stands where its share lies between the runs'; odd ones are diamonds,
// and the mean's word stands beside the end of its line.
func TestAgeingToScale(t *testing.T) {
	a := drawing.Ageing{Of: "x", Mean: drawing.Size{SI: 0.93, Text: "93.0 %"}, Low: 0.88, High: 0.98, Slope: 0.02, Share: shareText,
		Runs: []drawing.AgeingRun{{Efficiency: 0.9}, {Efficiency: 0.95, Odd: true}, {Efficiency: 0.92}, {Efficiency: 0.94}}}
	d := a.Draw()
	marks := runsOf(d)
	if len(marks) != 4 || !strings.Contains(d.Words, "the lowest 90 %, the highest 95 %.") || !strings.Contains(d.Words, "stand out: 1 of 4.") {
		t.Fatalf("%d marks: %s", len(marks), d.Words)
	}
	first, second := center(t, marks[0].Path), center(t, marks[1].Path)
	perShare := (second.y - first.y) / 0.05
	y := func(share float64) float64 { return first.y + (share-0.9)*perShare }
	step := second.x - first.x
	if perShare >= 0 || step <= 0 {
		t.Errorf("better runs are not higher, or later ones not to the right: %v, %v", first, second)
	}
	numbers := 0
	for _, s := range d.Shapes {
		n, err := strconv.ParseFloat(s.Text, 64)
		switch {
		case err != nil:
		case s.Anchor == drawing.End:
			numbers++
			isNear(t, "the mark of "+s.Text, s.Y-1.5, y(n/100))
		default:
			isNear(t, "the number of run "+s.Text, s.X, first.x+(n-1)*step)
		}
	}
	if numbers < 2 || numbers > 7 {
		t.Errorf("%d marks of shares", numbers)
	}
	band := ofRole(t, d, drawing.Band)[0]
	isNear(t, "the band's top", band.top, y(0.98))
	isNear(t, "the band's bottom", band.bottom, y(0.88))
	for _, s := range d.Shapes {
		if s.Role == drawing.Target {
			p := points(t, s.Path) // through the mean half-way
			isNear(t, "the line's start", p[0].y, y(0.93-1.5*0.02))
			isNear(t, "the line's end", p[1].y, y(0.93+1.5*0.02))
			isNear(t, "the line's left end", p[0].x, first.x)
			isNear(t, "the line's right end", p[1].x, first.x+3*step)
		}
		if s.Text == "mean" {
			isNear(t, "the mean's word", s.Y, y(0.93+1.5*0.02)+1)
		}
	}
	left, right := first.x-step/2, first.x+3.5*step // each run has as much room
	isNear(t, "the band's left", band.left, left)
	isNear(t, "the band's right", band.right, right)
	if n := len(ofRole(t, d, drawing.Axis)); n != 5 { // round the corner, and one for each run
		t.Errorf("%d lines of the axes", n)
	}
}
