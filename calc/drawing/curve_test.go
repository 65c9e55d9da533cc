package drawing_test

import (
	"math"
	"strings"
	"testing"

	"saltbite/calc/drawing"
)

// even is a curve along which so many metres are etched in every second, to a target
// after so many seconds.
func even(perSecond, seconds float64) drawing.Curve {
	size := func(si float64, text string) drawing.Size { return drawing.Size{SI: si, Text: text} }
	return drawing.Curve{Flow: "1 A", Depth: func(s float64) float64 { return perSecond * s },
		Target: drawing.Point{Time: size(seconds, "end"), Depth: size(perSecond*seconds, "deep")}, Half: size(seconds/2, "half")}
}

// An axis of up to two and a half minutes counts seconds, of up to two and a half hours
// minutes, beyond that hours.
func TestAxisOfTime(t *testing.T) {
	for _, seconds := range []float64{2, 20, 100, 200, 2000, 7000, 20000, 200000, 2e6} {
		c := even(1e-8, seconds)
		d := c.Draw()
		if d == nil {
			t.Fatalf("%v s are not drawn", seconds)
		}
		unit := ""
		for _, s := range d.Shapes {
			switch s.Text {
			case "s", "min", "h":
				unit = s.Text
			}
		}
		want := "h"
		if seconds < 120 {
			want = "s"
		} else if seconds < 8000 {
			want = "min"
		}
		if unit != want {
			t.Errorf("%v s are counted in %q, not in %q", seconds, unit, want)
		}
	}
}

// Of an even etch the line is straight; half the time stands half-way to the target, and
// readings and the weighing stand where their time and depth lie.
func TestCurveToScale(t *testing.T) {
	c := even(1e-8, 6000)
	size := func(si float64) drawing.Size { return drawing.Size{SI: si, Text: "x"} }
	for i := range 6 {
		s := 1000 * float64(i)
		c.Readings = append(c.Readings, drawing.Point{Time: size(s), Depth: size(1e-8 * s)})
	}
	c.Weighing = drawing.Point{Time: size(3000), Depth: size(3e-5)}
	d := c.Draw()
	var line, target point
	var half float64
	var marks []box
	var start point
	for _, s := range d.Shapes {
		switch {
		case s.Role == drawing.Line:
			p := points(t, s.Path)
			start, line = p[0], p[len(p)-1]
		case s.Role == drawing.Target && !s.Dash && s.Path != "":
			target = center(t, s.Path)
		case s.Role == drawing.Half && s.Path != "":
			half = boxOfPath(t, s.Path).left
		case s.Role == drawing.Reading:
			marks = append(marks, boxOfPath(t, s.Path))
		}
	}
	if math.Abs(half-(start.x+target.x)/2) > 0.02 {
		t.Errorf("half-way stands at %v, between %v and %v", half, start.x, target.x)
	}
	if slope, want := (target.y-start.y)/(target.x-start.x), (line.y-start.y)/(line.x-start.x); math.Abs(slope/want-1) > 1e-3 {
		t.Errorf("the line rises by %v, to the target by %v", want, slope)
	}
	if len(marks) != 7 {
		t.Fatalf("%d marks are drawn of 6 readings and a weighing", len(marks))
	}
	for i, m := range marks {
		share, wide := float64(i)/6, 1.8
		if i == 6 {
			share, wide = 0.5, 3
		}
		x, y := (m.left+m.right)/2, (m.top+m.bottom)/2
		if math.Abs(x-start.x-share*(target.x-start.x)) > 0.02 || math.Abs(y-start.y-share*(target.y-start.y)) > 0.02 {
			t.Errorf("mark %d stands at %v, %v", i, x, y)
		}
		if math.Abs(m.right-m.left-wide) > 0.05 || math.Abs(m.bottom-m.top-wide) > 0.05 {
			t.Errorf("mark %d takes %v", i, m)
		}
	}
	if !strings.Contains(d.Words, "deep is reached after end; half-way is at half") {
		t.Errorf("%s", d.Words)
	}
}

// Of many readings some are drawn, among them the last.
func TestManyReadings(t *testing.T) {
	c := even(1e-8, 6000)
	const n = 1000
	for i := range n {
		s := 6000 * float64(i+1) / n
		c.Readings = append(c.Readings, drawing.Point{Time: drawing.Size{SI: s, Text: "x"}, Depth: drawing.Size{SI: 1e-8 * s, Text: "x"}})
	}
	d := c.Draw()
	marks, last, target := 0, point{}, point{}
	for _, s := range d.Shapes {
		switch {
		case s.Role == drawing.Reading:
			marks, last = marks+1, center(t, s.Path)
		case s.Role == drawing.Target && !s.Dash && s.Path != "":
			target = center(t, s.Path)
		}
	}
	if marks < 20 || marks > 200 || math.Abs(last.x-target.x) > 0.02 || math.Abs(last.y-target.y) > 0.02 {
		t.Errorf("%d of %d readings are drawn, the last at %v, the target at %v", marks, n, last, target)
	}
}

// As many readings as can be told apart, 60, are all drawn; of more every second, third ...
// with the last one, which is where it stands now.
func TestCurveThinsItsReadings(t *testing.T) {
	for readings, want := range map[int]int{1: 1, 59: 59, 60: 60, 61: 31, 120: 60, 121: 41, 180: 60} {
		c := even(1e-8, 6000)
		for i := range readings {
			s := 5000 * float64(i+1) / float64(readings)
			c.Readings = append(c.Readings, drawing.Point{Time: drawing.Size{SI: s, Text: "x"}, Depth: drawing.Size{SI: 1e-8 * s, Text: "x"}})
		}
		last := c.Readings[readings-1:]
		circles := func(of []drawing.Point) (paths []string) {
			c.Readings = of
			for _, s := range c.Draw().Shapes {
				if s.Role == drawing.Reading {
					paths = append(paths, s.Path)
				}
			}
			return paths
		}
		got := circles(c.Readings)
		if len(got) != want || got[len(got)-1] != circles(last)[0] {
			t.Errorf("of %d readings %d are drawn, not %d and the last", readings, len(got), want)
		}
	}
}
