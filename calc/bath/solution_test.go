package bath

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/quantity"
)

var (
	salts    = []*Salt{CopperSulfate, CopperSulfateAnhydrous, SilverNitrate, CommonSalt}
	fiveWays = []quantity.Kind{quantity.Density, quantity.PerWater, quantity.Share, quantity.Molarity, quantity.Saturation}
)

func say(value float64, kind quantity.Kind) quantity.Quantity {
	return quantity.Quantity{Value: value, Kind: kind}
}

// solution is a solution that there must be.
func solution(t *testing.T, salt *Salt, strength quantity.Quantity, celsius float64) Solution {
	t.Helper()
	s, err := salt.Solution(strength, celsius0+celsius)
	if err != nil {
		t.Fatalf("%s, %v at %g C: %v", salt.Name, strength, celsius, err)
	}
	return s
}

// some draws a solution, from a thousandth of saturated to ten times as much.
func some(t *testing.T, r *rand.Rand) Solution {
	salt := salts[r.IntN(len(salts))]
	return solution(t, salt, say(math.Pow(10, 4*r.Float64()-3), quantity.Saturation), 100*r.Float64())
}

func TestFiveWaysRoundTrip(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 3000 {
		s := some(t, r)
		for _, from := range fiveWays {
			again := solution(t, s.Salt, say(s.In(from), from), s.Temperature-celsius0)
			for _, to := range fiveWays {
				if got, want := again.In(to), s.In(to); !within(got, want, 1e-9) {
					t.Fatalf("%s at %.2f C: %.12g %v by way of %v comes back as %.12g", s.Salt.Name, s.Temperature-celsius0, want, to, from, got)
				}
			}
			if !within(again.Anhydrous, s.Anhydrous, 1e-9) {
				t.Fatalf("%s: mass fraction %g by way of %v comes back as %g", s.Salt.Name, s.Anhydrous, from, again.Anhydrous)
			}
		}
	}
}

// However it is said, more of it is more; and at saturation nothing jumps.
func TestStrengthRises(t *testing.T) {
	for _, salt := range salts {
		for _, celsius := range []float64{0, 4, 20, 37, 100} {
			var last Solution
			for i := 1; i <= 4000; i++ {
				s := solution(t, salt, say(float64(i)/2000, quantity.Saturation), celsius)
				for _, kind := range fiveWays {
					if i > 1 && !(s.In(kind) > last.In(kind)) {
						t.Fatalf("%s at %g C: %v falls or stands still at %g of saturated", salt.Name, celsius, kind, float64(i)/2000)
					}
					if i > 2 && s.In(kind)/last.In(kind) > 1.01+2/float64(i) {
						t.Fatalf("%s at %g C: %v jumps at %g of saturated", salt.Name, celsius, kind, float64(i)/2000)
					}
				}
				if i > 1 && s.Anhydrous < last.Anhydrous {
					t.Fatalf("%s at %g C: the mass fraction falls", salt.Name, celsius)
				}
				last = s
			}
		}
	}
}

func TestAbsentAndRefused(t *testing.T) {
	for _, x := range []struct {
		strength quantity.Quantity
		celsius  float64
		want     Error
	}{
		{say(0, quantity.Density), 20, NoSalt},
		{say(-5, quantity.Density), 20, NoSalt},
		{say(math.NaN(), quantity.Share), 20, NoSalt},
		{say(1e-12, quantity.Density), 20, NoSalt},
		{say(1, quantity.Share), 20, NoWater},
		{say(3, quantity.Share), 20, NoWater},
		{say(math.Inf(1), quantity.PerWater), 20, NoWater},
		{say(math.Inf(1), quantity.Density), 20, NoWater},
		{say(1e9, quantity.Molarity), 20, NoWater},
		{say(200, quantity.Mass), 20, NoStrength},
		{say(200, quantity.Density), -1, NotWarmEnough},
		{say(200, quantity.Density), math.NaN(), NotWarmEnough},
		{say(200, quantity.Density), 101, TooWarm},
	} {
		_, err := CopperSulfate.Solution(x.strength, celsius0+x.celsius)
		if !errors.Is(err, x.want) {
			t.Errorf("%+v at %g C: %v, want %v", x.strength, x.celsius, err, x.want)
		}
	}
	if x := solution(t, CopperSulfate, say(200, quantity.Density), 20).In(quantity.Mass); x != 0 {
		t.Errorf("a strength said as a mass is %g", x)
	}
}

// Which figures are read past the end of a table, and that it is said.
func TestOutside(t *testing.T) {
	for _, x := range []struct {
		salt      *Salt
		strength  quantity.Quantity
		celsius   float64
		clauses   int
		saturated bool // the saturated bath's density is, and not this one's
		conducts  bool
	}{
		{CopperSulfate, say(200, quantity.Density), 20, 0, false, true},
		{CopperSulfate, say(1, quantity.Saturation), 20, 0, false, false},       // 16.7 %; the density's last row is 18 %, the conductivity's 15 %
		{CopperSulfate, say(0.5, quantity.Saturation), 24, 0, false, true},      // 17.7 %
		{CopperSulfate, say(0.5, quantity.Saturation), 26, 0, true, true},       // 18.3 %
		{CopperSulfateAnhydrous, say(0.16, quantity.Share), 20, 1, false, true}, // between 15 and 16.5 %
		{CopperSulfate, say(1, quantity.Saturation), 30, 1, false, false},       // 19.3 %
		{CopperSulfate, say(200, quantity.Density), 31, 1, true, true},          // a saturated bath has 19.6 %; and it is warmer than 30 C
		{CopperSulfate, say(100, quantity.Density), 5, 1, false, true},          // colder than 10 C
		{SilverNitrate, say(20, quantity.Density), 20, 0, true, true},           // a saturated bath has 67.8 %; the last row is 40 %
		{SilverNitrate, say(0.42, quantity.Share), 20, 2, false, true},          // past both last rows
		{SilverNitrate, say(0.5, quantity.Share), 20, 1, false, false},          // past 44 %
		{CommonSalt, say(0.264, quantity.Share), 20, 2, false, true},            // past 26 and 25 %
		{CommonSalt, say(0.2, quantity.Share), 20, 0, true, true},               // only a saturated bath is past 26 %
	} {
		s := solution(t, x.salt, x.strength, x.celsius)
		if got := s.Outside(); len(got) != x.clauses {
			t.Errorf("%s %+v at %g C: %q, want %d", x.salt.Name, x.strength, x.celsius, got, x.clauses)
		}
		if clause, ok := s.SaturationOutside(); ok != x.saturated || ok != (clause != "") {
			t.Errorf("%s %+v at %g C: %q of its saturation, %v", x.salt.Name, x.strength, x.celsius, clause, ok)
		}
		if siemens, ok := known(s.Conductivity()); ok != x.conducts || ok != (siemens > 0) {
			t.Errorf("%s %+v at %g C conducts %g, %v", x.salt.Name, x.strength, x.celsius, siemens, ok)
		}
	}
}

// Whatever the strength and the temperature, what comes out is finite or an
// error, and said again it is the same.
func FuzzSolution(f *testing.F) {
	f.Add(250.0, uint8(0), 20.0, uint8(0))
	f.Add(0.2, uint8(2), 0.0, uint8(1))
	f.Add(1.0, uint8(4), 100.0, uint8(2))
	f.Add(math.Inf(1), uint8(1), 20.0, uint8(3))
	f.Add(math.NaN(), uint8(3), math.NaN(), uint8(0))
	f.Add(5e-324, uint8(0), 20.0, uint8(0))
	f.Fuzz(func(t *testing.T, value float64, way uint8, celsius float64, which uint8) {
		salt, kind := salts[int(which)%len(salts)], fiveWays[int(way)%len(fiveWays)]
		s, err := salt.Solution(say(value, kind), celsius0+celsius)
		if err != nil {
			return
		}
		figures := []float64{s.Strength, s.Anhydrous, s.Density()}
		for _, kind := range fiveWays {
			figures = append(figures, s.In(kind), s.Liquid().In(kind))
		}
		m := s.Mix(2e-3, 0.98)
		figures = append(figures, m.SaltMass, m.WaterMass, m.SolutionMass, m.WaterToDissolve)
		for i, x := range figures {
			if !(x > 0 && x <= math.MaxFloat64) {
				t.Fatalf("%s, %g %v at %g C: figure %d is %g", salt.Name, value, kind, celsius, i, x)
			}
		}
		siemens := s.Conductivity().SI
		crystals := s.Crystals(celsius0).SI
		at := s.SaturatesAt().SI
		for i, x := range []float64{m.Undissolved, m.MetalMass, siemens, crystals, at} {
			if !(x >= 0 && x <= math.MaxFloat64) {
				t.Fatalf("%s, %g %v at %g C: figure %d that may be nothing is %g", salt.Name, value, kind, celsius, i, x)
			}
		}
		if got := s.In(kind); !within(got, value, 1e-9) {
			t.Fatalf("%s, %g %v at %g C comes back as %g", salt.Name, value, kind, celsius, got)
		}
	})
}
