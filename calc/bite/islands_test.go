package bite

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Round islands, and round spots of resist in one large island, summed level by level
// with the area of a disc: geometry, no source. A spot that the undercut has eaten
// from all sides takes no more.
func TestVolumeOfIslands(t *testing.T) {
	const undercut, slices = 0.5, 400000
	disc := func(radius float64) float64 { return math.Pi * radius * radius }
	for _, c := range []struct {
		what          string
		count, radius float64
		resist        bool
		depth         float64
	}{
		{"one island", 1, 2 * mm, false, 0.3 * mm},
		{"forty small islands", 40, 0.15 * mm, false, 0.3 * mm},
		{"small spots of resist", 25, 0.4 * mm, true, 0.3 * mm},
		{"spots that are just gone", 25, 0.15 * mm, true, 0.3 * mm},
		{"spots that are gone half way down", 25, 0.1 * mm, true, 0.3 * mm},
		{"spots that are gone at once", 25, 0.01 * mm, true, 0.3 * mm},
	} {
		w := Work{Undercut: undercut, Pieces: 1, Edge: c.count * 2 * math.Pi * c.radius}
		level := func(reach float64) float64 { return c.count * disc(c.radius+reach) }
		w.Area, w.Islands = c.count*disc(c.radius), c.count
		if c.resist {
			const whole = 5 * cm2 // far from its rim
			w.Area, w.Islands = whole-w.Area, -c.count
			level = func(reach float64) float64 { return whole - c.count*disc(max(0, c.radius-reach)) }
		}
		var want float64
		for i := range slices {
			z := (float64(i) + 0.5) / slices
			want += level(undercut*c.depth*math.Sqrt(1-z*z)) * c.depth / slices
		}
		got := w.Volume(c.depth).SI
		if under, all := got-w.Area*c.depth, want-w.Area*c.depth; !near(under, all, 1e-6) {
			t.Errorf("%s: %g under the resist, want %g", c.what, under, all)
		}
		if back := w.Depth(got).SI; !near(back, c.depth, 1e-12) {
			t.Errorf("%s: depth %g comes back as %g", c.what, c.depth, back)
		}
	}
}

// However many islands or spots, each of the four inverts the others, and deeper
// takes more.
func TestIslandsInvertAndGrow(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 20000 {
		law, w, depth, time := some(r)
		if w.Islands = math.Round(decades(r, 10, 6)); r.IntN(2) > 0 {
			w.Islands = -w.Islands
		}
		current := law.Current(w, depth, time).SI
		if got := law.Depth(w, current, time).SI; !near(got, depth, 1e-9) {
			t.Fatalf("depth %g comes back as %g: %+v %+v", depth, got, law, w)
		}
		parts := w.Volume(depth).SI / depth
		if got := law.Area(w, depth, current, time).SI; math.Abs(got-w.Area) > 1e-9*parts {
			t.Fatalf("area %g comes back as %g: %+v %+v", w.Area, got, law, w)
		}
		if deeper := w.Volume(depth * 1.01).SI; !(deeper > parts*depth) {
			t.Fatalf("a hundredth deeper than %g takes %g, not more than %g: %+v", depth, deeper, parts*depth, w)
		}
	}
}

// Without an edge, and for what is stopped out in steps, islands change nothing.
func TestIslandsWithoutAnEdge(t *testing.T) {
	plain := Work{Area: 4 * cm2, Undercut: 0.5, Pieces: 1}
	dotted := plain
	dotted.Islands = 1000
	if a, b := plain.Volume(0.2*mm), dotted.Volume(0.2*mm); a != b {
		t.Errorf("islands without an edge take %v, not %v", b, a)
	}
}
