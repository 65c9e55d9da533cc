package bite

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/quantity"
)

const inch = 0.0254 // m, exact: international yard and pound agreement of 1959

func TestSheet(t *testing.T) {
	half := Keep{Share: 0.5}
	thin := 0.0320 * inch // 20 gauge by the rounded table of ASTM B258 (turbinecar.com/misc/AWG-wire.htm, seen)
	one, two := Sheet{Thickness: thin, Sides: 1}, Sheet{Thickness: thin, Sides: 2}
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"left, one side", one.Left(0.2 * mm).SI, 0.6128 * mm},                                      // subtraction by hand: 0.8128 - 0.2
		{"left, two sides", two.Left(0.2 * mm).SI, 0.4128 * mm},                                     // by hand: 0.8128 - 0.4
		{"left of nothing", two.Left(0.5 * mm).SI, -0.1872 * mm},                                    // by hand: 0.8128 - 1.0, eaten through
		{"share left", two.LeftShare(0.2 * mm).SI, 0.507874},                                        // by hand: 0.4128 / 0.8128
		{"share of less than nothing", two.LeftShare(0.5 * mm).SI, -0.230315},                       // by hand: -0.1872 / 0.8128
		{"deepest, half kept", one.Deepest(half).SI, 0.4064 * mm},                                   // by hand: 0.8128 / 2
		{"deepest, half kept, two sides", two.Deepest(half).SI, 0.2032 * mm},                        // by hand: 0.8128 / 4
		{"deepest, 0.5 mm kept", two.Deepest(Keep{Thickness: 0.5 * mm}).SI, 0.1564 * mm},            // by hand: (0.8128 - 0.5) / 2
		{"thinnest, half kept", ThinnestSheet(0.3*mm, 1, half).SI, 0.6 * mm},                        // by hand: 0.3 / (1 - 0.5)
		{"thinnest, 0.5 mm kept", ThinnestSheet(0.3*mm, 2, Keep{Thickness: 0.5 * mm}).SI, 1.1 * mm}, // by hand: 2 x 0.3 + 0.5
		{"nothing kept", ThinnestSheet(0.3*mm, 2, Keep{}).SI, 0.6 * mm},                             // by hand: 2 x 0.3
		{"all kept", ThinnestSheet(0.3*mm, 1, Keep{Share: 1}).SI, 0},                                // no sheet is thick enough
		{"sheet thinner than what is to be kept", one.Deepest(Keep{Thickness: 1 * mm}).SI, 0},       // nothing may be etched
	} {
		if !near(x.got, x.want, 1e-5) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

// The number of a sheet as thick as a printed gauge is that gauge, and a hair
// more takes the next thicker.
func TestThinnestGauge(t *testing.T) {
	for _, x := range []struct {
		number int
		inches float64 // ASTM B258 by its formula, to 6 digits (formula as in Debian package units 2.22-2, seen; values computed from it)
	}{{-3, 0.460000}, {-2, 0.409642}, {-1, 0.364797}, {0, 0.324861}, {1, 0.289297}, {8, 0.128490}, {9, 0.114424}} {
		if got, ok := ThinnestGauge(x.inches * inch * 0.9999); !ok || got != x.number {
			t.Errorf("just under %g in: gauge %d %v, want %d", x.inches, got, ok, x.number)
		}
		if got, ok := ThinnestGauge(x.inches * inch * 1.0001); ok != (x.number > -3) || ok && got != x.number-1 {
			t.Errorf("just over %g in: gauge %d %v, want %d", x.inches, got, ok, x.number-1)
		}
	}
	for n := -3; n <= 60; n++ {
		if got, ok := ThinnestGauge(quantity.BrownSharpe(n)); !ok || got != n {
			t.Errorf("the thickness of gauge %d gives %d %v", n, got, ok)
		}
	}
	for _, none := range []float64{0, -1 * mm, 12 * mm, math.NaN(), math.Inf(1)} {
		if got, ok := ThinnestGauge(none); ok {
			t.Errorf("a sheet of %g m has gauge %d", none, got)
		}
	}
}

// What the range says of the deepest spot, the sheet below it bears out.
func TestSheetInverts(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	for range 20000 {
		s := Sheet{Thickness: decades(r, mm, 12), Sides: float64(1 + r.IntN(2))}
		k := Keep{Share: r.Float64() * 0.999}
		if r.IntN(2) == 0 {
			k = Keep{Thickness: s.Thickness * (0.001 + 0.998*r.Float64())}
		}
		deepest := s.Deepest(k).SI
		// Each is a difference, so it is held to what it was taken from.
		slack := 1e-9 * s.Thickness
		if got := ThinnestSheet(deepest, s.Sides, k).SI; !near(got, s.Thickness, 1e-9) {
			t.Fatalf("the sheet for the deepest bite is %g: %+v %+v", got, s, k)
		}
		if got := s.Left(deepest).SI; math.Abs(got-k.of(s.Thickness)) > slack {
			t.Fatalf("the deepest bite leaves %g: %+v %+v", got, s, k)
		}
		ends := s.DeepestRange(k)
		least, most := ends.Low.SI, ends.High.SI
		if got := s.LeftRange(least).Low.SI; math.Abs(got-k.of(s.Thickness)) > slack {
			t.Fatalf("the deepest spot leaves %g: %+v %+v", got, s, k)
		}
		if got := s.LeftRange(most).High.SI; math.Abs(got-k.of(s.Thickness)) > slack {
			t.Fatalf("the shallowest spot leaves %g: %+v %+v", got, s, k)
		}
		if least > deepest || deepest > most {
			t.Fatalf("range %g %g %g", least, deepest, most)
		}
	}
}

// Whatever is put in, what comes out is finite; only differences are negative.
func TestSheetWhereFloatsEnd(t *testing.T) {
	odd := []float64{0, -1, 1, 2, 5e-324, 1e-300, 1e300, math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN()}
	r := rand.New(rand.NewPCG(13, 14))
	draw := func() float64 { return odd[r.IntN(len(odd))] }
	for range 50000 {
		s, k, w := Sheet{draw(), draw()}, Keep{draw(), draw()}, Work{draw(), draw(), draw(), draw(), draw(), draw()}
		h, law := Hidden{draw(), draw(), draw(), draw(), draw(), draw()}, Law{draw(), draw(), draw()}
		a, b, c := draw(), draw(), draw()
		left := s.LeftRange(a)
		for i, got := range []float64{left.SI, s.LeftShare(a).SI, left.Low.SI, left.High.SI, LineLeft(a, b, c).SI, HangerLeft(a, b).SI} {
			if !(math.Abs(got) <= math.MaxFloat64) {
				t.Fatalf("difference %d is %g: %+v %g %g %g", i, got, s, a, b, c)
			}
		}
		deepest := s.DeepestRange(k)
		all := InAll(law.Bites(w, a, []Bite{{b, c}, {c, b}}))
		for i, got := range []float64{
			deepest.SI, deepest.Low.SI, deepest.High.SI, ThinnestSheet(a, b, k).SI, NarrowestLine(a, b).SI, DeepestForLine(a, b).SI, SpaceBecomes(a, b, c).SI,
			h.OnHanger().SI, h.OnPiece().SI, w.DepthIfForgotten(a).SI, all.Depth, all.Time.SI, all.Current.SI, all.Charge.SI, all.Removed.SI,
		} {
			if !(got >= 0 && got <= math.MaxFloat64) {
				t.Fatalf("answer %d is %g: %+v %+v %+v %+v %g %g %g", i, got, s, k, h, w, a, b, c)
			}
		}
		if number, ok := ThinnestGauge(a); ok && number < -3 {
			t.Fatalf("%g m is gauge %d", a, number)
		}
	}
}

// A bare back is etched too: by hand, 1.0 mm less 0.2 mm on each side.
func TestBareBack(t *testing.T) {
	keep := Keep{Share: 0.5}
	for _, x := range []struct {
		name                    string
		sides, back             float64
		left, deepest, thinnest float64 // mm
	}{
		{"one side, back covered", 1, 0, 0.8, 0.5, 0.4}, // 1 - 0.2; 1 x 0.5; 0.2 / 0.5
		{"one side, a bare back", 1, 1, 0.6, 0.25, 0.8}, // 1 - 0.4; 0.5 / 2; 0.4 / 0.5
		{"one side, a little bare", 1, 0.05, 0.6, 0.25, 0.8},
		{"both sides", 2, 0, 0.6, 0.25, 0.8},
		{"both sides, and a bare back", 2, 0.3, 0.6, 0.25, 0.8}, // never three
	} {
		sides := SidesEtched(x.sides, x.back)
		sheet := Sheet{1 * mm, sides}
		if got := sheet.Left(0.2 * mm).SI; !near(got, x.left*mm, 1e-9) {
			t.Errorf("%s: %g m left", x.name, got)
		}
		if got := sheet.Deepest(keep).SI; !near(got, x.deepest*mm, 1e-9) {
			t.Errorf("%s: %g m at most", x.name, got)
		}
		if got := ThinnestSheet(0.2*mm, sides, keep).SI; !near(got, x.thinnest*mm, 1e-9) {
			t.Errorf("%s: %g m at least", x.name, got)
		}
	}
}
