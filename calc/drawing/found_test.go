package drawing_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/drawing"
)

// foundRuns are n runs of 0.1 mm and more, all found as predicted, the first of them odd.
func foundRuns(n int) (runs []drawing.FoundRun) {
	for i := range n {
		depth := 1e-4 * (1 + float64(i)/float64(n))
		runs = append(runs, drawing.FoundRun{Predicted: depth, Found: depth, Odd: i == 0})
	}
	return runs
}

// center is the middle of a path's box.
func center(t *testing.T, path string) point {
	b := boxOfPath(t, path)
	return point{(b.left + b.right) / 2, (b.top + b.bottom) / 2}
}

// runsOf are the marks of the runs, in their order.
func runsOf(d *drawing.Drawing) (marks []drawing.Shape) {
	for _, s := range d.Shapes {
		if s.Role == drawing.Reading {
			marks = append(marks, s)
		}
	}
	return marks
}

// Runs found as predicted lie on the dashed line, one found deeper over it; twice the
// depth lies twice as far from the corner; nothing stands over anything else.
func TestFoundToScale(t *testing.T) {
	for _, us := range []bool{false, true} {
		d := drawing.Found{US: us, Runs: []drawing.FoundRun{{1e-4, 1e-4, false}, {2e-4, 2e-4, false}, {1e-4, 2e-4, true}, {2e-4, 1e-4, false}}}.Draw()
		for _, wrong := range sound(t, d, 0, 2) {
			t.Error(wrong)
		}
		marks := runsOf(d)
		if len(marks) != 4 {
			t.Fatalf("%d runs are drawn of 4", len(marks))
		}
		var at []point
		for _, m := range marks {
			at = append(at, center(t, m.Path))
		}
		corner := point{2*at[0].x - at[1].x, 2*at[0].y - at[1].y}
		var ends []point
		for _, s := range d.Shapes {
			if s.Role == drawing.Target && s.Path != "" {
				ends = points(t, s.Path)
			}
		}
		near := func(what string, a, b float64) {
			if math.Abs(a-b) > 0.02 {
				t.Errorf("%s: %v and %v", what, a, b)
			}
		}
		near("the corner across", corner.x, ends[0].x)
		near("the corner down", corner.y, ends[0].y)
		slope := func(a, b point) float64 { return (b.y - a.y) / (b.x - a.x) }
		near("the line", slope(at[0], at[1]), slope(ends[0], ends[len(ends)-1]))
		near("deeper than predicted, across", at[2].x, at[0].x)
		near("deeper than predicted, up", at[2].y, at[1].y)
		near("less deep than predicted, across", at[3].x, at[1].x)
		near("less deep than predicted, up", at[3].y, at[0].y)
		if at[1].y >= at[0].y || at[1].x <= at[0].x {
			t.Errorf("deeper is not further up and to the right: %v, %v", at[0], at[1])
		}
		// The marks are about their points, and the odd one is the larger.
		for i, m := range marks {
			b := boxOfPath(t, m.Path)
			if want := map[bool]float64{false: 1.8, true: 3}[i == 2]; math.Abs(b.right-b.left-want) > 0.05 || math.Abs(b.bottom-b.top-want) > 0.05 {
				t.Errorf("mark %d takes %v, not %v mm each way", i, b, want)
			}
			if math.Abs(area(t, m.Path)) < 2 {
				t.Errorf("mark %d encloses %v mm2", i, area(t, m.Path))
			}
		}
	}
}

// The figures beside the axes stand where their depths lie, and on the same scale as
// the runs: each figure of the axis down is a tick's depth.
func TestFoundScales(t *testing.T) {
	for _, depth := range []float64{2e-6, 7e-5, 1e-4, 3.3e-4, 1e-3, 4e-3} {
		d := drawing.Found{Runs: []drawing.FoundRun{{depth, depth, false}}}.Draw()
		at := center(t, runsOf(d)[0].Path)
		var corner point
		for _, s := range d.Shapes {
			if s.Role == drawing.Target && s.Path != "" {
				corner = points(t, s.Path)[0]
			}
		}
		beside, under := 0, 0
		for _, s := range d.Shapes {
			figure, err := strconv.ParseFloat(s.Text, 64)
			if err != nil || figure == 0 {
				continue
			}
			share := figure * 1e-3 / depth
			if s.Anchor == drawing.End { // its letters stand on a line 1.5 mm under what it marks
				if beside++; math.Abs(s.Y-1.5-(corner.y+share*(at.y-corner.y))) > 0.02 {
					t.Errorf("%v m: %s stands beside %v", depth, s.Text, s.Y)
				}
			} else if under++; math.Abs(s.X-(corner.x+share*(at.x-corner.x))) > 0.02 {
				t.Errorf("%v m: %s stands under %v", depth, s.Text, s.X)
			}
		}
		if beside < 1 || beside > 6 || under < 1 {
			t.Errorf("%v m: %d figures beside it, %d under it", depth, beside, under)
		}
	}
}

// As many as can be told apart are drawn, the last ones, and the words say how many,
// and of the drawn ones how many stand out.
func TestFoundCounts(t *testing.T) {
	for n, want := range map[int]struct {
		drawn     int
		odd, last string
	}{1: {1, "stand out: 1 of 1.", ""}, 300: {300, "stand out: 1 of 300.", ""}, 301: {300, "", "The last 300 runs are drawn."}} {
		d := drawing.Found{Runs: foundRuns(n)}.Draw()
		if got := len(runsOf(d)); got != want.drawn {
			t.Errorf("of %d runs %d are drawn", n, got)
		}
		if strings.Contains(d.Words, "stand out") != (want.odd != "") || !strings.Contains(d.Words, want.odd) {
			t.Errorf("of %d runs: %s", n, d.Words)
		}
		if strings.Contains(d.Words, "The last") != (want.last != "") || !strings.Contains(d.Words, want.last) {
			t.Errorf("of %d runs: %s", n, d.Words)
		}
	}
	for _, runs := range [][]drawing.FoundRun{nil, {{0, 0, false}}, {{1e300, 1e300, false}}} {
		if d := (drawing.Found{Runs: runs}).Draw(); d != nil {
			t.Errorf("%v is drawn", runs)
		}
	}
}

// The plot has its two axes, upright and level, from one corner.
func TestFoundHasAxes(t *testing.T) {
	d := drawing.Found{Runs: []drawing.FoundRun{{Predicted: 1e-4, Found: 1e-4}}}.Draw()
	for _, s := range d.Shapes {
		if s.Role == drawing.Axis && strings.Count(s.Path, "L") == 2 {
			return
		}
	}
	t.Errorf("there is no line round the corner in %v", d.Shapes)
}
