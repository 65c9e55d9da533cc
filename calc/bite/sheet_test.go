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
		{"left, one side", one.Left(0.2 * mm), 0.6128 * mm},                                      // subtraction by hand: 0.8128 - 0.2
		{"left, two sides", two.Left(0.2 * mm), 0.4128 * mm},                                     // by hand: 0.8128 - 0.4
		{"left of nothing", two.Left(0.5 * mm), -0.1872 * mm},                                    // by hand: 0.8128 - 1.0, eaten through
		{"share left", two.LeftShare(0.2 * mm), 0.507874},                                        // by hand: 0.4128 / 0.8128
		{"share of less than nothing", two.LeftShare(0.5 * mm), -0.230315},                       // by hand: -0.1872 / 0.8128
		{"deepest, half kept", one.Deepest(half), 0.4064 * mm},                                   // by hand: 0.8128 / 2
		{"deepest, half kept, two sides", two.Deepest(half), 0.2032 * mm},                        // by hand: 0.8128 / 4
		{"deepest, 0.5 mm kept", two.Deepest(Keep{Thickness: 0.5 * mm}), 0.1564 * mm},            // by hand: (0.8128 - 0.5) / 2
		{"thinnest, half kept", ThinnestSheet(0.3*mm, 1, half), 0.6 * mm},                        // by hand: 0.3 / (1 - 0.5)
		{"thinnest, 0.5 mm kept", ThinnestSheet(0.3*mm, 2, Keep{Thickness: 0.5 * mm}), 1.1 * mm}, // by hand: 2 x 0.3 + 0.5
		{"nothing kept", ThinnestSheet(0.3*mm, 2, Keep{}), 0.6 * mm},                             // by hand: 2 x 0.3
		{"all kept", ThinnestSheet(0.3*mm, 1, Keep{Share: 1}), 0},                                // no sheet is thick enough
		{"sheet thinner than what is to be kept", one.Deepest(Keep{Thickness: 1 * mm}), 0},       // nothing may be bitten
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
		deepest := s.Deepest(k)
		// Each is a difference, so it is held to what it was taken from.
		slack := 1e-9 * s.Thickness
		if got := ThinnestSheet(deepest, s.Sides, k); !near(got, s.Thickness, 1e-9) {
			t.Fatalf("the sheet for the deepest bite is %g: %+v %+v", got, s, k)
		}
		if got := s.Left(deepest); math.Abs(got-k.of(s.Thickness)) > slack {
			t.Fatalf("the deepest bite leaves %g: %+v %+v", got, s, k)
		}
		least, most := s.DeepestRange(k)
		if got, _ := s.LeftRange(least); math.Abs(got-k.of(s.Thickness)) > slack {
			t.Fatalf("the deepest spot leaves %g: %+v %+v", got, s, k)
		}
		if _, got := s.LeftRange(most); math.Abs(got-k.of(s.Thickness)) > slack {
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
		s, k, w := Sheet{draw(), draw()}, Keep{draw(), draw()}, Work{draw(), draw(), draw(), draw(), draw()}
		h, law := Hidden{draw(), draw(), draw(), draw(), draw(), draw()}, Law{draw(), draw(), draw()}
		a, b, c := draw(), draw(), draw()
		least, most := s.LeftRange(a)
		for i, got := range []float64{s.Left(a), s.LeftShare(a), least, most, LineLeft(a, b, c), HangerLeft(a, b)} {
			if !(math.Abs(got) <= math.MaxFloat64) {
				t.Fatalf("difference %d is %g: %+v %g %g %g", i, got, s, a, b, c)
			}
		}
		shallow, deep := s.DeepestRange(k)
		all := InAll(law.Bites(w, a, []Bite{{b, c}, {c, b}}))
		for i, got := range []float64{
			s.Deepest(k), shallow, deep, ThinnestSheet(a, b, k), NarrowestLine(a, b), DeepestForLine(a, b), SpaceBecomes(a, b, c),
			h.OnHanger(), h.OnPiece(), w.DepthIfForgotten(a), all.Depth, all.Time, all.Current, all.Charge, all.Removed,
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
