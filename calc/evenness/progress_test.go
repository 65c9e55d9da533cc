package evenness

import "testing"

// A residual that falls by the same factor at each step has come the same way at each; one
// that grows has come nowhere, and one that is small enough is there.
func TestWay(t *testing.T) {
	for _, c := range []struct{ first, now, wanted, want float64 }{
		{1, 1, 1e-8, 0}, {1, 1e-2, 1e-8, 0.25}, {1, 1e-4, 1e-8, 0.5}, {1, 1e-6, 1e-8, 0.75}, {1, 1e-8, 1e-8, 1}, {1, 1e-9, 1e-8, 1},
		{1, 50, 1e-8, 0}, {1e-9, 1e-5, 1e-8, 1}, {0, 0, 0, 1},
	} {
		if got := way(c.first, c.now, c.wanted); !near(got, c.want, 1e-12) {
			t.Errorf("from %g at %g, to %g, the way is %g, not %g", c.first, c.now, c.wanted, got, c.want)
		}
	}
}

// A solution on one grid begins with nothing done and ends with all of it, and each of its
// steps is some of the way.
func TestSolveTellsItsWay(t *testing.T) {
	p := copperBath(noise(32, 4))
	g := p.grid(64)
	s := newSystem(newLayer(g, p.Gap, p.Conductivity), p.cover(g), p.Polarisation, p.edgeResistance(g))
	var told []float64
	if _, err := s.solve(g.sample(Map{}), func(part float64) bool { told = append(told, part); return true }); err != nil {
		t.Fatal(err)
	}
	if told[0] != 0 || told[len(told)-1] != 1 {
		t.Fatalf("told %v", told)
	}
	for i := 1; i < len(told); i++ {
		if told[i] <= told[i-1] {
			t.Fatalf("told %v", told)
		}
	}
}

// Where so many cells are usual an answer may be rough on a grid with nearly as many, nine
// tenths: 231 of 256 are, 230 are not.
func TestEnough(t *testing.T) {
	for _, c := range []struct {
		usual, across, down int
		want                float64
	}{{0, 256, 256, Settled}, {256, 256, 256, Rough}, {256, 512, 64, Rough}, {256, 64, 231, Rough}, {256, 230, 230, Settled}, {256, 128, 128, Settled}} {
		if got := (Problem{Usual: c.usual}).enough(grid{across: c.across, down: c.down}); got != c.want {
			t.Errorf("on %d by %d cells of usually %d it is %g, not %g", c.across, c.down, c.usual, got, c.want)
		}
	}
}
