package bath

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/quantity"
	"saltbite/testdata"
)

const (
	gram   = 1e-3 // kg
	litre  = 1e-3 // m3
	room20 = 20   // C
)

func TestWorkedMixes(t *testing.T) {
	crystals := func(molPerLitre, litres float64) Mix {
		return solution(t, CopperSulfate, say(molPerLitre*1000, quantity.Molarity), room20).Mix(litres*litre, 1)
	}
	inHand := func(salt, water float64) Solution {
		s, _, err := CopperSulfate.FromHand(salt, water, 1, room)
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	for _, x := range []struct {
		name                 string
		got, want, tolerance float64
		source               string
	}{
		{"crystals, 500 mL of 0.25 mol/L", crystals(0.25, 0.5).SaltMass, 31.21 * gram, 2e-4, "jiskha.com 1329797715 (seen)"},
		{"crystals, 100 mL of 0.500 mol/L", crystals(0.5, 0.1).SaltMass, 12.48 * gram, 4e-4, "socratic.org 613249 (seen)"},
		{"crystals, 250 mL of 0.200 mol/L", crystals(0.2, 0.25).SaltMass, 12.484 * gram, 1e-4, "coursehero.com p7tp5hn: inputs seen, answer computed"},
		{"crystals' own water, 12.48 g", 12.48 * gram * (1 - CopperSulfate.anhydrous), 4.5 * gram, 3e-3, "socratic.org 613249 (seen)"},
		{"crystals' own water, share", 1 - CopperSulfate.anhydrous, 0.361, 1e-3, "OpenStax Chemistry 2e, exercise (seen), answer computed"},
		{"500 g of crystals and 5000 g of water", inHand(0.5, 5).Anhydrous, 0.0582, 2e-3, "school problem, mail.s5g.ru 23207014 (seen); it takes molar masses 250 and 160"},
		{"1 kg of crystals and 20 kg of water", inHand(1, 20).Anhydrous, 0.0305, 2.4e-3, "school problem, mail.invlad.ru 5673866 (seen); it takes molar masses 250 and 160"},
		{"2.76 kg of crystals in 1.45 L", solution(t, CopperSulfate, say(2.76/1.45e-3, quantity.Density), room20).In(quantity.Molarity) / 1000, 7.624, 1e-4, "OpenStax Chemistry 2e, exercise (seen), answer computed"},
		{"share of anhydrous salt in crystals", CopperSulfate.anhydrous, 0.6392, 1e-4, "159.602/249.677, abridged atomic weights (from memory)"},
		{"molar mass of the crystals", CopperSulfate.MolarMass, 0.249685, 4e-5, "CRC Handbook (seen)"},
		{"molar mass of anhydrous copper sulfate", CopperSulfateAnhydrous.MolarMass, 0.159609, 5e-5, "CRC Handbook (seen)"},
		{"copper in a bath of 250 g/L", solution(t, CopperSulfate, say(250, quantity.Density), room20).Mix(litre, 1).MetalMass, 64 * gram, 8e-3, "a figure of the trade, derived by another hand"},
	} {
		if !within(x.got, x.want, x.tolerance) {
			t.Errorf("%s: %.6g, want %.6g (%s)", x.name, x.got, x.want, x.source)
		}
	}
}

// What is said of a bath of 250 g/L, derived by another hand from the same
// tables: about 80 % of saturated at 20 C, saturated at 7 C, 33 g a litre drop
// at 0 C.
func TestUsualBath(t *testing.T) {
	s := solution(t, CopperSulfate, say(250, quantity.Density), room20)
	if got := s.In(quantity.Saturation); math.Abs(got-0.80) > 0.01 {
		t.Errorf("%.3f of saturated", got)
	}
	if got, ok := known(s.SaturatesAt()); !ok || math.Abs(got-celsius0-7) > 0.5 {
		t.Errorf("saturated at %.2f C", got-celsius0)
	}
	if got, ok := known(s.Crystals(celsius0)); !ok || math.Abs(got-33) > 0.5 {
		t.Errorf("%.2f g of crystals a litre", got)
	}
}

// Grams of crystals that 100 g of water dissolve, as they follow from the
// solubility of the anhydrous salt counted on all the water:
//
//	crystals = a / (h - a/100 (1 - h))
//
// The column was made by that formula; here the water follows from the salt.
func TestWaterToDissolve(t *testing.T) {
	for _, r := range testdata.Sourced(t, "solubility.csv") {
		column := r["derived_g_pentahydrate_per_100g_added_water"]
		if r["solute"] != "CuSO4" || column == "" || r["unit_exactly"] == "mol/kg water" {
			continue
		}
		crystals := r.Number(t, "derived_g_pentahydrate_per_100g_added_water") * gram
		s := solution(t, CopperSulfate, say(100, quantity.Density), r.Number(t, "temperature_C"))
		got := s.Mix(crystals/100, 1).WaterToDissolve * waterDensity(room)
		if !within(got, 100*gram, 3e-4) {
			t.Errorf("%s C: %.3f g of water dissolve %.2f g, want 100 (%s)", r["temperature_C"], got/gram, crystals/gram, r["source"])
		}
	}
}

// Mass is neither made nor lost, and the water that dissolves it all just does.
func TestMassIsKept(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 3000 {
		s, volume, assay := some(t, r), math.Pow(10, 4*r.Float64()-4), 0.5+r.Float64()/2
		m := s.Mix(volume, assay)
		if got, want := m.SaltMass*assay+m.WaterMass, m.SolutionMass+m.Undissolved; !within(got, want, 1e-12) {
			t.Fatalf("%s: %g in, %g out: %+v", s.Salt.Name, got, want, m)
		}
		if over := s.In(quantity.Saturation) > 1; over != (m.Undissolved > 0) {
			t.Fatalf("%s: %g of saturated leaves %g kg", s.Salt.Name, s.In(quantity.Saturation), m.Undissolved)
		}
		full, _, err := s.Salt.FromHand(m.SaltMass, m.WaterToDissolve*waterDensity(room), assay, s.Temperature)
		if err != nil || !within(full.In(quantity.Saturation), 1, 1e-9) {
			t.Fatalf("%s: the water that dissolves it all makes %g of saturated, %v", s.Salt.Name, full.In(quantity.Saturation), err)
		}
	}
}

// From the salt and the water weighed out one gets the bath back, and each
// alone makes its volume.
func TestInHand(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 3000 {
		s, volume, assay := some(t, r), math.Pow(10, 4*r.Float64()-4), 0.5+r.Float64()/2
		m := s.Mix(volume, assay)
		again, made, err := s.Salt.FromHand(m.SaltMass, m.WaterMass, assay, s.Temperature)
		if err != nil || !within(made, volume, 1e-9) || !within(again.Strength, s.Strength, 1e-9) {
			t.Fatalf("%s: %g m3 of %g kg/m3 comes back as %g of %g, %v", s.Salt.Name, volume, s.Strength, made, again.Strength, err)
		}
		if got := s.VolumeOfSalt(m.SaltMass, assay); !within(got, volume, 1e-9) {
			t.Fatalf("%s: its salt makes %g m3 of %g", s.Salt.Name, got, volume)
		}
		if got := s.VolumeOfWater(m.WaterMass); !within(got, volume, 1e-9) {
			t.Fatalf("%s: its water makes %g m3 of %g", s.Salt.Name, got, volume)
		}
	}
	for _, hand := range [][2]float64{{0, 1}, {1, 0}, {0, 0}, {-1, 1}, {1, math.NaN()}} {
		if _, _, err := CopperSulfate.FromHand(hand[0], hand[1], 1, room); err == nil {
			t.Errorf("%g kg of salt and %g kg of water make a bath", hand[0], hand[1])
		}
	}
}

// What the cold leaves is just saturated, crystals drop below the temperature
// of saturation and not above it, and the salt and the water are all there.
func TestCold(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	dropped := 0
	for range 3000 {
		s, cold := some(t, r), celsius0+100*r.Float64()
		x, ok := known(s.Crystals(cold))
		if !ok {
			t.Fatalf("no crystals are known at %g C", cold-celsius0)
		}
		if x > 0 {
			dropped++
			liquid := s.Density() - x
			left := s.Density()*s.Anhydrous - x*s.Salt.crystal
			if want := s.Salt.solubility.at(cold); !within(left/liquid, want, 1e-9) {
				t.Fatalf("%s: the cold leaves a mass fraction of %g, saturated is %g", s.Salt.Name, left/liquid, want)
			}
		}
		at, ok := known(s.SaturatesAt())
		if over := s.In(quantity.Saturation) > 1; ok && over != (at > s.Temperature+1e-9) {
			t.Fatalf("%s: %g of saturated at %g C, saturated at %g C", s.Salt.Name, s.In(quantity.Saturation), s.Temperature-celsius0, at-celsius0)
		}
		if ok && at < s.Temperature && math.Abs(cold-at) > 1e-6 && (x > 0) != (cold < at) {
			t.Fatalf("%s: saturated at %g C, drops %g at %g C", s.Salt.Name, at-celsius0, x, cold-celsius0)
		}
	}
	if dropped < 300 {
		t.Errorf("crystals dropped %d times only", dropped)
	}
	s := solution(t, CopperSulfate, say(250, quantity.Density), room20)
	for _, celsius := range []float64{-0.01, 100.01, math.NaN(), math.Inf(1)} {
		if x, ok := known(s.Crystals(celsius0 + celsius)); ok || x != 0 {
			t.Errorf("%g C drops %g", celsius, x)
		}
	}
	if at, ok := known(solution(t, CopperSulfate, say(50, quantity.Density), room20).SaturatesAt()); ok {
		t.Errorf("50 g/L is saturated at %g C", at-celsius0)
	}
}

func TestNoMix(t *testing.T) {
	s := solution(t, CopperSulfate, say(250, quantity.Density), room20)
	for _, x := range [][2]float64{{0, 1}, {-1, 1}, {1, 0}, {1, 1.01}, {1, 1e-300}, {math.Inf(1), 1}, {math.NaN(), 1}, {1, math.NaN()}} {
		if m := s.Mix(x[0], x[1]); m != (Mix{}) {
			t.Errorf("%g m3 at an assay of %g: %+v", x[0], x[1], m)
		}
	}
}
