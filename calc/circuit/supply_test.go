package circuit

import (
	"math/rand/v2"
	"testing"

	"saltbite/calc/bite"
)

func TestSupply(t *testing.T) {
	s := Supply{Volts: 12, Amps: 5}
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"cell", CellVolts(0.5, 2, LikeElectrodes.Usual).SI, 1.2},             // by hand: 0.5 x 2 + 0.2
		{"cell in common salt", CellVolts(0.5, 2, CommonSalt.Usual).SI, 2.75}, // by hand: 0.5 x 2 + 1.75
		{"no resistance known", CellVolts(0.5, 0, 0.2).SI, 0},                 // nothing to say
		{"current", s.Unlimited(3, 0.1, 0.2).SI, 11.8 / 3.1},                  // by hand: (12 - 0.2) / (3 + 0.1)
		{"current, no wire known", s.Unlimited(4, 0, 0.2).SI, 2.95},           // by hand: 11.8 / 4
		{"too few volts", Supply{Volts: 1.5}.Unlimited(1, 0, 1.75).SI, 0},     // under the allowance
		{"watts", s.Watts(0.5).SI, 6},                                         // by hand: 12 x 0.5
		{"ballast", s.Ballast(0.5, 1.2, 0.3).SI, 21},                          // by hand: (12 - 1.2 - 0.3) / 0.5
		{"no ballast", s.Ballast(5, 12, 0.3).SI, 0},                           // nothing left over
		{"no cell", s.Ballast(0.5, 0, 0.3).SI, 0},                             // nothing to set a current through
		{"no current", s.Ballast(0, 1.2, 0.3).SI, 0},                          // any resistor gives that
		{"ballast watts", BallastWatts(0.5, 21).SI, 5.25},                     // by hand: 0.25 x 21
	} {
		if !near(x.got, x.want, 1e-12) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

// The volts go round: cell, wire and ballast take all that the supply gives,
// and without a ballast it gives the current at which cell and wire do.
func TestVoltsGoRound(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 20000 {
		bath, allowance := decades(r, 2, 6), LikeElectrodes.Usual
		wire := Wire{decades(r, mm, 2), decades(r, 2, 2), Aluminium}
		s := Supply{Volts: decades(r, 12, 2)}
		full := s.Unlimited(bath, wire.Resistance().SI, allowance).SI
		if full == 0 {
			if s.Volts > allowance {
				t.Fatalf("no current from %g V", s.Volts)
			}
			continue
		}
		if got := CellVolts(full, bath, allowance).SI + wire.Drop(full).SI; !near(got, s.Volts, 1e-9) {
			t.Fatalf("%g V come back as %g", s.Volts, got)
		}
		current := full * (0.01 + 0.98*r.Float64())
		cell, drop := CellVolts(current, bath, allowance).SI, wire.Drop(current).SI
		ballast := s.Ballast(current, cell, drop).SI
		if got := cell + drop + current*ballast; !near(got, s.Volts, 1e-9) {
			t.Fatalf("%g V come back as %g with a ballast of %g", s.Volts, got, ballast)
		}
		if got, want := s.Watts(current).SI, current*(cell+drop)+BallastWatts(current, ballast).SI; !near(got, want, 1e-9) {
			t.Fatalf("%g W from the supply, %g W in its parts", got, want)
		}
	}
}

// What fits takes just what there is.
func TestWhatFits(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 5000 {
		law := bite.Law{Equivalent: decades(r, 3e-7, 4), Density: decades(r, 9e3, 2), Efficiency: 1}
		w := bite.Work{Area: decades(r, 1e-3, 4), Edge: decades(r, 0.1, 4), Undercut: r.Float64(), Pieces: float64(1 + r.IntN(20))}
		depth, time := decades(r, 2e-4, 4), decades(r, hour, 4)
		need := law.Current(w, depth, time).SI
		amps := need * decades(r, 1, 2)
		if got := law.Current(w, DepthThatFits(law, w, amps, time).SI, time).SI; !near(got, amps, 1e-9) {
			t.Fatalf("the depth that fits %g A takes %g A", amps, got)
		}
		if got := law.Current(w, depth, TimeThatFits(law, w, amps, depth).SI).SI; !near(got, amps, 1e-9) {
			t.Fatalf("the time that fits %g A takes %g A", amps, got)
		}
		fit := piecesThatFit(amps, need, w.Pieces)
		w.Pieces = fit
		if fit > 0 && law.Current(w, depth, time).SI > amps*(1+1e-8) {
			t.Fatalf("%g pieces take more than %g A", fit, amps)
		}
		if w.Pieces++; law.Current(w, depth, time).SI <= amps {
			t.Fatalf("one more than %g pieces fits within %g A", fit, amps)
		}
	}
	for _, x := range []struct{ amps, current, pieces, want float64 }{
		{1, 1.0 / 3, 1, 3}, // by hand: three of a third
		{2, 3, 6, 4},       // by hand: half an ampere each
		{0.4, 3, 6, 0},     // not one of them
		{2, 0, 6, 0},       // no current known
	} {
		if got := piecesThatFit(x.amps, x.current, x.pieces); got != x.want {
			t.Errorf("%g A for %g pieces at %g A: %g fit, want %g", x.amps, x.pieces, x.current, got, x.want)
		}
	}
}
