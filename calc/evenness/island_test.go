package evenness

import (
	"slices"
	"testing"
)

// A hot spot is held against the deepest of the cell at its place and the eight round it,
// none of them beyond the map's edge.
func TestDeepestRound(t *testing.T) {
	m := Map{Columns: 5, Rows: 4, Values: []float32{
		9, 1, 1, 1, 2,
		1, 1, 1, 1, 1,
		1, 1, 3, 1, 1,
		1, 1, 1, 1, 8,
	}}
	for at, want := range map[[2]int]float64{{0, 0}: 9, {1, 1}: 9, {2, 0}: 1, {4, 0}: 2, {3, 1}: 3, {1, 3}: 3, {3, 2}: 8, {4, 3}: 8, {0, 2}: 1, {0, 3}: 1} {
		place := Place{(float64(at[0]) + 0.5) / 5, (float64(at[1]) + 0.5) / 4}
		if got := m.deepestRound(place); got != want {
			t.Errorf("round cell %v the deepest is %g, not %g", at, got, want)
		}
	}
}

// A spot that is over a twentieth deeper than on the coarser grid still grew with the grid.
func TestSettle(t *testing.T) {
	coarser := Map{Columns: 2, Rows: 1, Values: []float32{1.5, 1}}
	r := Result{HotSpots: []Spot{{X: 0.01, Y: 0.01, Depth: 1.57}, {X: 0.01, Y: 0.01, Depth: 1.59}, {X: 0.03, Y: 0.01, Depth: 1.4}}}
	r.settle(coarser, Problem{Width: 0.04, Height: 0.02}) // 1.5 of 1.57 is 95.5 %, of 1.59 94.3 %
	for i, want := range []bool{false, true, false} {
		if r.HotSpots[i].Over != want {
			t.Errorf("spot %d still grew: %v", i, r.HotSpots[i].Over)
		}
	}
}

// Metal counts from half of a cell on, a depth from 1.01 of the mean and from the least that
// is asked for; beside a deeper cell there is no spot, nor close to a deeper spot.
func TestWhatIsASpot(t *testing.T) {
	d := &depths{columns: 7, rows: 2, dx: 1, dy: 1,
		open:  []float64{0.5, 1, 0.4, 1, 1, 0, 1, 1, 1, 1, 1, 1, 0, 1},
		local: []float64{1.50, 1.2, 9.0, 1, 1.25, 9, 1.005, 1, 1, 1, 1, 1, 9, 1}}
	for _, c := range []struct {
		least float64
		want  []float64
	}{{0, []float64{1.5, 1.25}}, {1.25, []float64{1.5, 1.25}}, {1.3, []float64{1.5}}, {2, nil}} {
		var got []float64
		for _, s := range d.hotSpots(c.least) {
			got = append(got, s.Depth)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("from %g on the spots are %v, not %v", c.least, got, c.want)
		}
	}
	if s := d.hotSpots(0)[1]; s.X != 4.5 || s.Y != 0.5 {
		t.Errorf("the second is at %g, %g", s.X, s.Y)
	}
}

// Open areas that touch at a corner only are two; a cell that is less than half open parts
// them. Their depths are means over the metal: (0.5 x 2 + 1 x 1) / 1.5 = 1.333.
func TestIslands(t *testing.T) {
	d := &depths{columns: 4, rows: 2, dx: 2, dy: 1,
		open:  []float64{0.5, 0.4, 1, 0, 1, 0, 0, 1},
		local: []float64{2, 1, 1.5, 0, 1, 0, 0, 3}}
	all := d.islands()
	if len(all) != 3 {
		t.Fatalf("%d areas", len(all))
	}
	for i, want := range []Island{{2, 3, Spot{7, 1.5, 3, false}}, {3, 4.0 / 3, Spot{1, 0.5, 2, false}}, {2, 1.5, Spot{5, 0.5, 1.5, false}}} {
		if got := all[i]; got.Deepest != want.Deepest || !near(got.Area, want.Area, 1e-12) || !near(got.Mean, want.Mean, 1e-12) {
			t.Errorf("area %d is %+v, not %+v", i, got, want)
		}
	}
}
