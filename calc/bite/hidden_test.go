package bite

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/quantity"
)

func TestHidden(t *testing.T) {
	wire := quantity.BrownSharpe(18)
	for _, x := range []struct {
		name                 string
		got, want, tolerance float64
	}{
		{"1 cm of 18 gauge", Hidden{Hanger: wire, Wetted: 10 * mm}.OnHanger().SI, 0.32 * cm2, 0.01},                               // by hand: pi x 1.0237 mm x 10 mm = 32.2 mm2
		{"edges", Hidden{Edges: 200 * mm, Sheet: 1 * mm}.OnPiece().SI, 2 * cm2, 1e-12},                                            // by hand: 200 x 1 mm2
		{"back", Hidden{Back: 0.05, Face: 24 * cm2}.OnPiece().SI, 1.2 * cm2, 1e-12},                                               // by hand: 5 % of 24
		{"hanger left", HangerLeft(1.02*mm, 0.2*mm).SI, 0.62 * mm, 1e-9},                                                          // by hand: 1.02 - 2 x 0.2
		{"hanger gone", HangerLeft(0.5*mm, 0.3*mm).SI, -0.1 * mm, 1e-9},                                                           // by hand: 0.5 - 2 x 0.3
		{"depth if forgotten", Work{Area: 10 * cm2, Extra: 2.5 * cm2, Pieces: 1}.DepthIfForgotten(0.3 * mm).SI, 0.24 * mm, 1e-12}, // by hand: 0.3 x 10 / 12.5
		{"nothing forgotten", Work{Area: 10 * cm2, Pieces: 3}.DepthIfForgotten(0.3 * mm).SI, 0.3 * mm, 1e-12},                     // no extra metal
	} {
		if !near(x.got, x.want, x.tolerance) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

// Forgetting the extra metal is the same as calculating the time without it and
// running that long with it.
func TestForgottenIsRun(t *testing.T) {
	r := rand.New(rand.NewPCG(17, 18))
	for range 20000 {
		law, w, depth, time := some(r)
		forgotten := w
		forgotten.Extra = 0
		want := law.Depth(w, law.Current(forgotten, depth, time).SI, time).SI
		got := w.DepthIfForgotten(depth).SI
		if !near(got, want, 1e-9) {
			t.Fatalf("forgotten %g, run %g: %+v %g", got, want, w, depth)
		}
		if got > depth*(1+1e-12) {
			t.Fatalf("more metal bites deeper: %g than %g", got, depth)
		}
		if !near(w.Volume(got).SI, forgotten.Volume(depth).SI, 1e-9) {
			t.Fatalf("the volumes differ: %+v %g", w, depth)
		}
	}
}

// A wire's side against a prism of many sides: geometry, no source.
func TestWireIsRound(t *testing.T) {
	const sides = 100000
	h := Hidden{Hanger: 1.3 * mm, Wetted: 42 * mm}
	prism := sides * h.Hanger * math.Sin(math.Pi/sides) * h.Wetted
	if got := h.OnHanger().SI; !near(got, prism, 1e-8) {
		t.Errorf("side %g, prism %g", got, prism)
	}
}
