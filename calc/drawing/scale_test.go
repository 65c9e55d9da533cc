package drawing

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

// A scale counts in 1, 2 and 5 times a power of ten, the largest that is not more, or
// the smallest that is not less.
func TestNice(t *testing.T) {
	round := []float64{1, 2, 5, 10, 20, 50, 100}
	for _, decade := range []float64{1e-7, 1e-3, 0.1, 1, 10, 1e5} {
		for i, step := range round[:6] {
			next := round[i+1]
			for x, want := range map[float64][2]float64{step: {step, step}, step * 1.0001: {step, next}, next * 0.9999: {step, next}, (step + next) / 2: {step, next}} {
				if got := nice(x * decade); math.Abs(got/decade/want[0]-1) > 1e-9 {
					t.Errorf("the largest to %v is %v", x*decade, got)
				}
				if got := niceAbove(x * decade); math.Abs(got/decade/want[1]-1) > 1e-9 {
					t.Errorf("the smallest from %v is %v", x*decade, got)
				}
			}
		}
	}
}

// Notes keep their order, stand beside their things where the others let them, and
// never over one another or under the column.
func TestSpread(t *testing.T) {
	const top, pair = 9.4, 2 * rowHeight
	if got := spread([]note{{at: 20}}, top); got[0] != 19 {
		t.Errorf("alone at 20 it stands at %v", got[0])
	}
	if got := spread([]note{{at: 12}, {at: 30}}, top); got[0] != 11 || got[1] != 29 {
		t.Errorf("far apart they stand at %v", got)
	}
	if got := spread([]note{{at: 2}, {at: 45}}, top); got[0] != top || got[1] != columnBottom {
		t.Errorf("beyond both ends they stand at %v", got)
	}
	r := rand.New(rand.NewPCG(71, 72))
	for range 500 {
		var notes []note
		for range 1 + r.IntN(4) {
			notes = insert(notes, note{at: 50 * r.Float64()})
		}
		if !slices.IsSortedFunc(notes, func(a, b note) int { return int(math.Copysign(1, a.at-b.at)) }) {
			t.Fatalf("%v are out of order", notes)
		}
		rows := spread(notes, top)
		for i, row := range rows {
			if row > columnBottom || i > 0 && row-rows[i-1] < pair-1e-9 {
				t.Fatalf("%v stand at %v", notes, rows)
			}
			if wanted := notes[i].at - 1; row != wanted && row != top && row != columnBottom && (i == 0 || row-rows[i-1] > pair+1e-9) &&
				(i == len(rows)-1 || rows[i+1]-row > pair+1e-9) {
				t.Fatalf("%v of %v stands at %v, though it had room", wanted, notes, rows)
			}
		}
	}
}

func TestInsertKeepsTheOrder(t *testing.T) {
	old := []note{{word: "a", at: 1}, {word: "c", at: 3}}
	var words string
	for _, n := range insert(old, note{word: "b", at: 2}) {
		words += n.word
	}
	for _, n := range insert(insert(nil, note{word: "y", at: 2}), note{word: "z", at: 2}) {
		words += n.word
	}
	for _, n := range insert([]note{{word: "q", at: 5}}, note{word: "p", at: 1}) {
		words += n.word
	}
	if words != "abcyzpq" || old[1].word != "c" {
		t.Errorf("%s", words)
	}
}

// Coordinates have at most three decimals and no zero too many.
func TestNumbersOfAPath(t *testing.T) {
	for x, want := range map[float64]string{0: "M0 1", 1.5: "M1.5 1", -0.25: "M-0.25 1", 12.003: "M12.003 1", 0.0004: "M0 1", 0.0006: "M0.001 1", -7: "M-7 1",
		100.1: "M100.1 1", 9.9996: "M10 1", 0.12: "M0.12 1", 1e12: "M1000000000 1", -1e12: "M-1000000000 1"} {
		if got := string(from(x, 1).data); got != want {
			t.Errorf("%v is written %q", x, got)
		}
	}
	if got := string(segment(1, 2, 3.25, -4).data); got != "M1 2L3.25 -4" {
		t.Errorf("a line is %q", got)
	}
	if got := string(rectangle(1, 2, 3, 4).data); got != "M1 2L3 2L3 4L1 4Z" {
		t.Errorf("a rectangle is %q", got)
	}
	if got := string(from(0, 0).arc(1, 2, 3, 4).data); got != "M0 0A1 2 0 0 0 3 4" {
		t.Errorf("an arc is %q", got)
	}
	for _, flat := range [][2]float64{{0, 1}, {1, 0}, {0.0001, 1}} {
		if got := string(from(0, 0).arc(flat[0], flat[1], 3, 4).data); got != "M0 0L3 4" {
			t.Errorf("an arc of no height is %q", got)
		}
	}
}

func TestTimeUnit(t *testing.T) {
	for s, want := range map[float64]string{1: "s", 149: "s", 150: "min", 8999: "min", 9000: "h", 1e6: "h"} {
		if got := timeUnit(s); got != want {
			t.Errorf("%v s are counted in %s, not %s", s, got, want)
		}
	}
}

// A line that is narrower than the undercut of both its sides takes is gone down to where
// the two ellipses meet: x^2 / (u d)^2 + y^2 / d^2 = 1 at half its width.
func TestRidge(t *testing.T) {
	c := cut{depth: 3, undercut: 2}                                                                // half axes 6 and 3
	for width, want := range map[float64]float64{12: 0, 20: 0, 0: 3, 7.2: 3 * 0.8, 9.6: 3 * 0.6} { // 3, 4, 5
		if got := c.ridge(width); math.Abs(got-want) > 1e-12 {
			t.Errorf("%v wide it is gone down to %v, not %v", width, got, want)
		}
	}
	for y, want := range map[float64]float64{0: 6, 3: 0, 1.8: 4.8, 2.4: 3.6, 4: 0} {
		if got := c.reach(y); math.Abs(got-want) > 1e-12 {
			t.Errorf("at a depth of %v it reaches %v, not %v", y, got, want)
		}
	}
}

func TestSentences(t *testing.T) {
	if got := sentences("", "A.", "", "B.", ""); got != "A. B." {
		t.Errorf("%q", got)
	}
	if got := sentences("", ""); got != "" {
		t.Errorf("%q", got)
	}
}
