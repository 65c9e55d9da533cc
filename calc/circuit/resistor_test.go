package circuit

import (
	"math"
	"math/rand/v2"
	"testing"
)

// IEC 60063, series E12: twelve values in a decade, each about the twelfth root
// of ten above the one before, within the 10 % that they are made to.
func TestSeriesE12(t *testing.T) {
	published := []float64{1.0, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2} // IEC 60063, from memory
	for i, want := range published {
		for _, decade := range []float64{1e-3, 0.01, 0.1, 1, 10, 100, 1e3, 1e6} {
			if got := nextE12(want * decade); !near(got, want*decade, 1e-15) {
				t.Errorf("%g ohm is followed by %g", want*decade, got)
			}
			above := 10.0
			if i < 11 {
				above = published[i+1]
			}
			if got := nextE12(want * decade * 1.0001); !near(got, above*decade, 1e-12) {
				t.Errorf("a little more than %g ohm is followed by %g, want %g", want*decade, got, above*decade)
			}
		}
		if root := math.Pow(10, float64(i)/12); math.Abs(want/root-1) > 0.05 {
			t.Errorf("%g is far from %g", want, root)
		}
	}
	for _, none := range []float64{0, -5, math.NaN(), math.Inf(1), 0.9e-6, 1.1e12} {
		if got := nextE12(none); got != 0 {
			t.Errorf("%g ohm is followed by %g", none, got)
		}
	}
	for _, end := range []float64{1e-6, 1e12} {
		if got := nextE12(end); got != end {
			t.Errorf("%g ohm is followed by %g", end, got)
		}
	}
}

func TestSeriesResistor(t *testing.T) {
	for _, x := range []struct {
		name                              string
		volts, current, bath, wire, allow float64
		ohms, real, low, high, watts      float64
	}{
		// By hand: 11.8 / 0.054 - 15 = 203.5; 11.8 / 235, 11.8 / 250, 11.8 / 227.5; 2 x 0.050213^2 x 220, more than 144 / 220.
		{"12 V, 54 mA", 12, 0.054, 15, 0, 0.2, 220, 0.0502128, 0.0472, 0.0518681, 1.10939},
		// By hand: 4.8 / 0.5 - 2 - 0.1 = 7.5; 4.8 / 10.3, / 12.3, / 9.3; 2 x 0.46602^2 x 8.2 = 3.5617, more than 25 / 8.2.
		{"5 V, 0.5 A", 5, 0.5, 2, 0.1, 0.2, 8.2, 0.4660194, 0.3902439, 0.5161290, 3.561655},
		// By hand: 4.8 / 1.2 - 3 = 1; 4.8 / 4, / 7, / 2.5; 25 / 1 is more than 2 x 1.2^2.
		{"just a value of the series", 5, 1.2, 3, 0, 0.2, 1, 1.2, 0.6857143, 1.92, 25},
		{"30 V", 30, 0.1, 8, 0, 0.2, 330, 0.08816568, 0.08612717, 0.08922156, 5.130304}, // by hand: 298 - 8 = 290; 29.8 / 338, / 346, / 334; 2 x 0.0881657^2 x 330
	} {
		got, ok := Supply{Volts: x.volts, Amps: 1}.SeriesResistor(x.current, x.bath, x.wire, x.allow)
		want := Resistor{x.ohms, x.real, x.low, x.high, x.watts}
		if !ok || !near(got.Ohms, want.Ohms, 1e-12) || !near(got.Current, want.Current, 1e-5) || !near(got.Low, want.Low, 1e-5) ||
			!near(got.High, want.High, 1e-5) || !near(got.Watts, want.Watts, 1e-5) {
			t.Errorf("%s: %+v %v, want %+v", x.name, got, ok, want)
		}
	}
	for name, none := range map[string][5]float64{
		"over 30 V":           {30.01, 0.1, 8, 0, 0.2},
		"nothing left over":   {5, 4.8, 1, 0, 0.2}, // by hand: 4.8 / 4.8 - 1
		"less than nothing":   {5, 6, 1, 0, 0.2},
		"no current":          {5, 0, 1, 0, 0.2},
		"no bath known":       {5, 0.1, 0, 0, 0.2},
		"under its allowance": {1, 0.1, 1, 0, 1.75},
	} {
		if got, ok := (Supply{Volts: none[0]}).SeriesResistor(none[1], none[2], none[3], none[4]); ok {
			t.Errorf("%s: %+v", name, got)
		}
	}
}

// The real current is never over the one that is wanted, never a whole step of
// the series under it, and the volts go round.
func TestSeriesResistorHolds(t *testing.T) {
	r := rand.New(rand.NewPCG(23, 24))
	found := 0
	for range 20000 {
		s := Supply{Volts: 30 * r.Float64()}
		bath, wire, current := decades(r, 5, 3), decades(r, 0.05, 2), decades(r, 0.3, 3)
		got, ok := s.SeriesResistor(current, bath, wire, 0.2)
		if !ok {
			if s.Ballast(current, CellVolts(current, bath, 0.2).SI, current*wire).SI > 1e-6 {
				t.Fatalf("no resistor for %+v %g A %g ohm", s, current, bath)
			}
			continue
		}
		found++
		if got.Current > current*(1+1e-8) || got.Current < current/1.26 {
			t.Fatalf("%g A of %g: %+v", got.Current, current, got)
		}
		if !(got.Low <= got.Current && got.Current <= got.High) {
			t.Fatalf("no range: %+v", got)
		}
		if v := got.Current*(bath+wire+got.Ohms) + 0.2; !near(v, s.Volts, 1e-9) {
			t.Fatalf("%g V come back as %g", s.Volts, v)
		}
		if got.Watts < 2*got.Current*got.Current*got.Ohms*(1-1e-12) || got.Watts < s.Volts*s.Volts/got.Ohms*(1-1e-12) {
			t.Fatalf("%g W are not enough: %+v", got.Watts, got)
		}
	}
	if found < 5000 {
		t.Errorf("%d resistors only", found)
	}
}
