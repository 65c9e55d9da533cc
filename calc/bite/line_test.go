package bite

import (
	"math/rand/v2"
	"testing"
)

func TestLines(t *testing.T) {
	undercut := 1 / 2.75 // etch factor of copper in iron chloride: Groover, table of etchants in chemical machining, from memory
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"line left", LineLeft(0.5*mm, 0.5, 0.2*mm).SI, 0.3 * mm},                // by hand: 0.5 - 2 x 0.5 x 0.2
		{"line gone", LineLeft(0.3*mm, 1, 0.2*mm).SI, -0.1 * mm},                 // by hand: 0.3 - 2 x 1 x 0.2
		{"line just gone", LineLeft(0.4*mm, 1, 0.2*mm).SI, 0},                    // by hand: 0.4 - 2 x 1 x 0.2
		{"no undercut", LineLeft(0.4*mm, 0, 0.2*mm).SI, 0.4 * mm},                // a bite straight down
		{"narrowest line", NarrowestLine(0.5, 0.25*mm).SI, 0.25 * mm},            // by hand: 2 x 0.5 x 0.25
		{"deepest for a line", DeepestForLine(0.3*mm, undercut).SI, 0.4125 * mm}, // by hand: 0.3 x 2.75 / 2
		{"deepest without undercut", DeepestForLine(0.3*mm, 0).SI, 0},            // no depth takes it
		{"space becomes", SpaceBecomes(0.125*mm, 0.29, 0.05*mm).SI, 0.154 * mm},  // by hand: 0.125 + 2 x 0.29 x 0.05
		{"no space", SpaceBecomes(0, 0.5, 0.2*mm).SI, 0},                         // nothing was open
		{"space at etch factor 1", SpaceBecomes(1*mm, 1, 0.25*mm).SI, 1.5 * mm},  // by hand: 1 + 2 x 0.25, the isotropic bite
	} {
		if !near(x.got, x.want, 1e-9) && !(x.want == 0 && x.got < 1e-18) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

func TestLinesInvert(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	for range 20000 {
		line, undercut := decades(r, mm, 12), decades(r, 1, 12)
		depth := DeepestForLine(line, undercut).SI
		if got := NarrowestLine(undercut, depth).SI; !near(got, line, 1e-12) {
			t.Fatalf("the narrowest line at its own deepest is %g, want %g", got, line)
		}
		if got := LineLeft(line, undercut, depth/2).SI; !near(got, line/2, 1e-9) {
			t.Fatalf("half way a line of %g has %g", line, got)
		}
		// What the resist loses the spaces gain.
		space := line * r.Float64()
		if kept, grown := LineLeft(line, undercut, depth/3).SI, SpaceBecomes(space, undercut, depth/3).SI; !near(kept+grown, line+space, 1e-9) {
			t.Fatalf("a line of %g and a space of %g become %g and %g", line, space, kept, grown)
		}
	}
}
