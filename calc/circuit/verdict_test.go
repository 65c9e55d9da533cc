package circuit

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/quantity"
)

func TestVoltsNeeded(t *testing.T) {
	for _, x := range []struct {
		name             string
		got              quantity.Range
		usual, low, high float64 // V
	}{
		{"like electrodes", VoltsNeeded(0.5, 2, 3, LikeElectrodes), 1.2, 0.95, 1.8},   // by hand: 0.5 x 2 + 0.2; 0.5 x 1.7 + 0.1; 0.5 x 3 + 0.3
		{"common salt", VoltsNeeded(0.5, 2, 3, CommonSalt), 2.75, 2.35, 3.5},          // by hand: 1 + 1.75; 0.85 + 1.5; 1.5 + 2
		{"no high end known", VoltsNeeded(0.5, 2, 0, LikeElectrodes), 1.2, 0.95, 1.3}, // the usual one instead
		{"nothing known", VoltsNeeded(0.5, 0, 0, LikeElectrodes), 0, 0, 0},            // nothing to say
		{"no current", VoltsNeeded(0, 2, 3, LikeElectrodes), 0, 0, 0},                 // nothing to say
		{"a high end below", VoltsNeeded(0.5, 2, 1, LikeElectrodes), 1.2, 0.95, 1.3},  // no range runs backwards
	} {
		for name, pair := range map[string][2]float64{"usual": {x.got.SI, x.usual}, "low": {x.got.Low.SI, x.low}, "high": {x.got.High.SI, x.high}} {
			if !near(pair[0], pair[1], 1e-12) {
				t.Errorf("%s, %s: %.6g V, want %.6g", x.name, name, pair[0], pair[1])
			}
		}
	}
}

func TestUnlimited(t *testing.T) {
	for _, x := range []struct {
		name                  string
		volts, amps           float64
		bath, wire, allowance float64
		want                  float64
		known                 bool
	}{
		{"bath and wire", 12, 0, 3, 0.1, 0.2, 11.8 / 3.1, true},    // by hand: (12 - 0.2) / 3.1
		{"no wire known", 12, 0, 4, 0, 0.2, 2.95, true},            // by hand: 11.8 / 4
		{"whatever its amperes", 12, 1, 4, 0, 0.2, 2.95, true},     // the same
		{"volts under the allowance", 1.5, 0, 1, 0, 1.75, 0, true}, // nothing flows
		{"no bath known", 12, 0, 0, 0.1, 0.2, 0, false},            // nothing to say
	} {
		if got := (Supply{x.volts, x.amps}).Unlimited(x.bath, x.wire, x.allowance); !near(got.SI, x.want, 1e-12) || got.Known() != x.known {
			t.Errorf("%s: %+v A, want %.6g", x.name, got, x.want)
		}
	}
}

func TestJudge(t *testing.T) {
	for _, x := range []struct {
		name        string
		volts, amps float64
		current     float64
		unlimited   quantity.Optional
		want        Verdict
	}{
		{"4 A of 5 A", 5, 5, 4, quantity.Known(4.5), Fits},
		{"just its amperes", 5, 4, 4, quantity.Known(4.5), Fits},
		{"just what its volts drive", 5, 5, 4, quantity.Known(4), Fits},
		{"amperes rounded in between", 5, 1.0 / 3 * 3, 1, quantity.Known(1.2), Fits},
		{"a little over its amperes", 5, 3.99, 4, quantity.Known(4.5), TooWeak},
		{"a little over what its volts drive", 5, 5, 4, quantity.Known(3.99), TooWeak},
		{"volts that drive nothing", 1, 5, 4, quantity.Known(0), TooWeak},
		{"bath not known", 12, 5, 4, quantity.Optional{}, Fits},
		{"bath not known, too weak", 12, 3, 4, quantity.Optional{}, TooWeak},
		{"amperes not known", 12, 0, 4, quantity.Known(4.5), Fits},
		{"under 1.3 times", 12, 5, 1, quantity.Known(1.2999), Fits},
		{"1.3 times", 12, 5, 1, quantity.Known(1.3), NeedsALimit},
		{"fifteen times", 12, 1, 0.054, quantity.Known(0.79), NeedsALimit},
		{"far too strong by its volts, too weak by its amperes", 12, 1, 2, quantity.Known(6), TooWeak},
		{"60 V", 60, 5, 1, quantity.Known(1), Fits},
		{"over 60 V", 60.01, 5, 1, quantity.Known(1), Forbidden},
		{"230 V", 230, 0, 0, quantity.Optional{}, Forbidden},
	} {
		if got := (Supply{x.volts, x.amps}).Judge(x.current, x.unlimited); got != x.want {
			t.Errorf("%s: %d, want %d", x.name, got, x.want)
		}
	}
}

func TestMost(t *testing.T) {
	none := quantity.Optional{}
	for _, x := range []struct {
		amps            float64
		unlimited, want quantity.Optional
	}{
		{5, quantity.Known(3), quantity.Known(3)}, {2, quantity.Known(3), quantity.Known(2)}, {5, quantity.Known(0), none},
		{5, none, quantity.Known(5)}, {0, quantity.Known(3), none}, {0, none, none},
	} {
		if got := (Supply{12, x.amps}).Most(x.unlimited); got != x.want {
			t.Errorf("%+v: %+v", x, got)
		}
	}
}

// Four pieces take 2 A. By hand: half an ampere each.
func TestPiecesWithin(t *testing.T) {
	plenty := func(float64) float64 { return 100 }
	crowded := func(n float64) float64 { return []float64{0, 0.6, 0.9, 1.1, 1.2}[int(n)] } // A, of 0.5, 1.0, 1.5, 2.0 wanted
	for _, x := range []struct {
		name      string
		most      float64
		unlimited func(float64) float64
		want      float64
	}{
		{"amperes alone", 1.7, nil, 3},
		{"amperes for more than there are", 3, nil, 6},
		{"amperes for just so many", 1.5, nil, 3},
		{"volts enough", 1.7, plenty, 3},
		{"what four draw is enough for two, what two draw is not", 1.2, crowded, 1},
		{"volts that drive just one", 5, func(n float64) float64 { return 0.5 }, 1},
		{"volts that drive a little less", 5, func(n float64) float64 { return 0.4999 }, 0},
		{"volts that drive nothing", 1.7, func(float64) float64 { return 0 }, 0},
		{"not one", 0.4, plenty, 0},
	} {
		if got := PiecesWithin(x.most, 2, 4, x.unlimited); got != x.want {
			t.Errorf("%s: %g, want %g", x.name, got, x.want)
		}
	}
}

// Whatever the cell: those that fit do fit, and no more would.
func TestPiecesWithinFit(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 22))
	some := 0
	for range 5000 {
		c := Cell{decades(r, 3, 1), decades(r, 5*cm, 1), Face{decades(r, 3*cm, 1), decades(r, 3*cm, 1), 0}, 0, float64(1 + r.IntN(30)), decades(r, 0.01, 2), 0}
		c.Open = c.Face.area() / 2
		current := decades(r, 3, 2)
		s := Supply{Volts: decades(r, 6, 1), Amps: decades(r, 3, 2)}
		unlimited := func(pieces float64) float64 {
			c.Pieces = pieces
			return s.Unlimited(c.Resistance().SI, 0.01, 0.2).SI
		}
		pieces := c.Pieces
		n, each := PiecesWithin(s.Amps, current, pieces, unlimited), current/pieces
		if n > 0 && (n*each > s.Amps*(1+1e-8) || n*each > unlimited(n)*(1+1e-8)) {
			t.Fatalf("%g pieces at %g A do not fit %+v", n, each, s)
		}
		if more := n + 1; more*each < s.Amps*(1-1e-8) && more*each < unlimited(more)*(1-1e-8) {
			t.Fatalf("%g pieces at %g A fit %+v, one more than %g", more, each, s, n)
		}
		if n > 0 && n < math.Floor(s.Amps/each) {
			some++
		}
	}
	if some < 500 {
		t.Errorf("the volts decided %d times only", some)
	}
}
