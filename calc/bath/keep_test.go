package bath

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/quantity"
	"saltbite/testdata"
)

// Evaporation keeps the salt; and the water that has gone is, by weight, as much
// as the level has sunk, to what the comment says.
func TestConcentrated(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	for range 3000 {
		s := some(t, r)
		volume := math.Pow(10, 3*r.Float64()-3)
		left := volume * (0.3 + 0.7*r.Float64())
		now, err := s.concentrated(volume, left)
		if err != nil {
			t.Fatalf("%s: %g m3 of %g down to %g: %v", s.Salt.Name, volume, s.Strength, left, err)
		}
		if !within(now.Strength*left, s.Strength*volume, 1e-12) {
			t.Fatalf("%s: %g kg of salt become %g", s.Salt.Name, s.Strength*volume, now.Strength*left)
		}
	}
	for _, salt := range salts { // down to what saturates it, or less far
		worst := 0.0
		for range 2000 {
			s := solution(t, salt, say(r.Float64(), quantity.Saturation), room20)
			left := s.In(quantity.Saturation) + (1-s.In(quantity.Saturation))*r.Float64()
			now, err := s.concentrated(litre, left*litre)
			if err != nil || left > 0.99 {
				continue
			}
			gone := (s.water() - now.water()*left) * litre / waterDensity(room)
			if off := gone/(litre*(1-left)) - 1; math.Abs(off) > math.Abs(worst) {
				worst = off
			}
		}
		if t.Logf("%s: %.4f", salt.Name, worst); math.Abs(worst) > 0.015 { // measured: 0.0132 in common salt, 0.0085 in silver nitrate
			t.Errorf("%s: by weight the water that has gone is %.4f off the level", salt.Name, worst)
		}
	}
	s := solution(t, CopperSulfate, say(250, quantity.Density), room20)
	if got, err := s.concentrated(2*litre, 1.6*litre); err != nil || !within(got.Strength, 312.5, 1e-12) { // 250 x 2 / 1.6, by hand
		t.Errorf("%+v, %v", got, err)
	}
	for _, x := range [][2]float64{{1, 0}, {0, 1}, {-1, 1}, {1, -1}, {math.NaN(), 1}, {1, math.NaN()}, {math.Inf(1), 1}, {1, math.Inf(1)}} {
		if got, err := s.concentrated(x[0], x[1]); err == nil {
			t.Errorf("%g m3 down to %g m3: %+v", x[0], x[1], got)
		}
	}
}

// Salt or water, not both; and with it salt and water stand as they should.
func TestToward(t *testing.T) {
	r := rand.New(rand.NewPCG(17, 18))
	for range 3000 {
		s := some(t, r)
		want := solution(t, s.Salt, say(math.Pow(10, 3*r.Float64()-2), quantity.Saturation), s.Temperature-celsius0)
		volume, assay := math.Pow(10, 3*r.Float64()-3), 0.5+r.Float64()/2
		salt, water, err := s.Toward(want, volume, assay)
		if err != nil || salt < 0 || water < 0 || salt > 0 && water > 0 {
			t.Fatalf("%s: %g kg and %g m3, %v", s.Salt.Name, salt, water, err)
		}
		if stronger := want.In(quantity.PerWater) > s.In(quantity.PerWater); stronger != (salt > 0) {
			t.Fatalf("%s: from %g to %g by %g kg and %g m3", s.Salt.Name, s.Strength, want.Strength, salt, water)
		}
		allSalt, allWater := s.Strength*volume+salt*assay, s.water()*volume+water*waterDensity(room)
		if got, ratio := allSalt/allWater, want.Strength/want.water(); !within(got, ratio, 1e-12) {
			t.Fatalf("%s: salt to water %g, want %g", s.Salt.Name, got, ratio)
		}
	}
	// OpenStax, Chemistry 2e, Molarity, a worked example (seen): 0.314 L of 1.59
	// mol/L makes 5.00 L of 0.100 mol/L. It adds volumes, which here are a bit less.
	strong := solution(t, SilverNitrate, say(1590, quantity.Molarity), room20)
	_, water, err := strong.Toward(solution(t, SilverNitrate, say(100, quantity.Molarity), room20), 0.3145*litre, 1)
	if err != nil || !within(water, (5.00-0.3145)*litre, 5e-3) {
		t.Errorf("%.4f L of water, %v", water/litre, err)
	}
	weak := solution(t, CopperSulfate, say(150, quantity.Density), room20)
	if salt, water, err := weak.Toward(weak, litre, 1); salt != 0 || water != 0 || err != nil {
		t.Errorf("to itself: %g, %g, %v", salt, water, err)
	}
	if _, _, err := weak.Toward(strong, litre, 1); !errors.Is(err, TwoSalts) {
		t.Errorf("two salts: %v", err)
	}
	for _, x := range [][2]float64{{0, 1}, {-1, 1}, {math.Inf(1), 1}, {math.NaN(), 1}, {1, 0}, {1, 1.1}, {1, math.NaN()}} {
		if salt, water, err := weak.Toward(solution(t, CopperSulfate, say(250, quantity.Density), room20), x[0], x[1]); salt != 0 || water != 0 || err != nil {
			t.Errorf("%g m3 with salt of %g: %g, %g, %v", x[0], x[1], salt, water, err)
		}
	}
}

// Two parts make the bath that was wanted, by salt and by water.
func TestParts(t *testing.T) {
	r := rand.New(rand.NewPCG(19, 20))
	for range 3000 {
		a := some(t, r)
		at := func(saturation float64) Solution {
			return solution(t, a.Salt, say(saturation, quantity.Saturation), a.Temperature-celsius0)
		}
		b := at(math.Pow(10, 3*r.Float64()-2))
		between := b.all() + r.Float64()*(a.all()-b.all())
		want, err := a.Salt.Solution(say(between/a.Salt.anhydrous, quantity.Share), a.Temperature)
		if err != nil {
			t.Fatal(err)
		}
		volume := math.Pow(10, 3*r.Float64()-3)
		ofA, ofB, err := want.Parts(a, b, volume)
		if err != nil || ofA < 0 || ofB < 0 {
			t.Fatalf("%s: %g and %g of %g: %g and %g, %v", a.Salt.Name, a.Strength, b.Strength, want.Strength, ofA, ofB, err)
		}
		mass := (want.Strength + want.water()) * volume
		if !within(ofA+ofB, mass, 1e-12) || !within(ofA*a.all()+ofB*b.all(), mass*want.all(), 1e-12) {
			t.Fatalf("%s: %g + %g kg of %g kg, salt %g of %g", a.Salt.Name, ofA, ofB, mass, ofA*a.all()+ofB*b.all(), mass*want.all())
		}
	}
	// 20 % from 30 % and 5 %: 15 parts to 10, the cross of every textbook of mixing.
	share := func(w float64) Solution { return solution(t, SilverNitrate, say(w, quantity.Share), room20) }
	ofA, ofB, err := share(0.20).Parts(share(0.30), share(0.05), litre)
	if err != nil || !within(ofA/ofB, 1.5, 1e-9) || !within(ofA+ofB, 1.1942, 1e-9) { // a litre of 20 % weighs 1.1942 kg, CRC Handbook (seen)
		t.Errorf("%g and %g kg, %v", ofA, ofB, err)
	}
	a := share(0.30)
	if ofA, ofB, err := a.Parts(a, a, litre); err != nil || ofB != 0 || !within(ofA, 1.3204, 1e-9) { // CRC Handbook (seen)
		t.Errorf("of itself: %g and %g kg, %v", ofA, ofB, err)
	}
	for _, w := range []float64{0.04, 0.31} {
		if _, _, err := share(w).Parts(a, share(0.05), litre); !errors.Is(err, NotBetween) {
			t.Errorf("%g from 0.30 and 0.05: %v", w, err)
		}
	}
	if _, _, err := solution(t, CopperSulfate, say(0.1, quantity.Share), room20).Parts(a, a, litre); !errors.Is(err, TwoSalts) {
		t.Errorf("two salts: %v", err)
	}
	for _, other := range [][2]Solution{{a, solution(t, CopperSulfate, say(0.1, quantity.Share), room20)}, {solution(t, CopperSulfate, say(0.1, quantity.Share), room20), a}} {
		if _, _, err := share(0.20).Parts(other[0], other[1], litre); !errors.Is(err, TwoSalts) {
			t.Errorf("one of another salt: %v", err)
		}
	}
	for _, volume := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if ofA, ofB, err := share(0.20).Parts(a, share(0.05), volume); ofA != 0 || ofB != 0 || err != nil {
			t.Errorf("%g m3: %g and %g, %v", volume, ofA, ofB, err)
		}
	}
}

// A hydrometer in a bath of every row of the Handbook says its share of salt.
func TestByDensity(t *testing.T) {
	for _, r := range testdata.Sourced(t, "solution_density.csv") {
		w := r.Number(t, "mass_percent_anhydrous") / 100
		salt := bySolute[r["solute"]]
		if r["kind"] != "table" || w > salt.solubility.at(room) {
			continue
		}
		gravity := r.Number(t, "density_g_cm3") * 1000 / 998.2071 // water at 20 C, a general table (seen)
		got, err := salt.ByDensity(DensityOfGravity(gravity), Room)
		if err != nil || math.Abs(got.Anhydrous-w) > 1e-5 {
			t.Errorf("%s, %.4f: %.6f, want %g, %v (%s)", salt.Name, gravity, got.Anhydrous, w, err, r["source"])
		}
	}
	// The form named: 10 % of anhydrous salt, 0.694 mol/L, is 173.3 g/L of crystals (x 249.685, CRC Handbook, seen).
	if got, err := CopperSulfate.ByDensity(1107.0, Room); err != nil || !within(got.Strength, 173.3, 1e-3) {
		t.Errorf("%+v, %v", got, err)
	}
	r := rand.New(rand.NewPCG(21, 22))
	for range 1000 {
		s := some(t, r).Liquid()
		got, err := s.Salt.ByDensity(s.Density(), s.Temperature)
		if s.In(quantity.Saturation) > 0.99999 {
			continue
		}
		if err != nil || math.Abs(got.Anhydrous-s.Anhydrous) > 1e-9 {
			t.Fatalf("%s, %g C: %g comes back as %g, %v", s.Salt.Name, s.Temperature-celsius0, s.Anhydrous, got.Anhydrous, err)
		}
	}
	for _, x := range []struct {
		density, celsius float64
		want             Error
	}{
		{DensityOfGravity(1), 20, NoSalt}, {990, 20, TooLight}, {0, 20, NoSalt}, {math.NaN(), 20, NoSalt},
		{1300, 20, TooHeavy}, {math.Inf(1), 20, TooHeavy}, {1100, -1, NotWarmEnough}, {1100, 101, TooWarm},
	} {
		if got, err := CopperSulfate.ByDensity(x.density, celsius0+x.celsius); !errors.Is(err, x.want) {
			t.Errorf("%g kg/m3 at %g C: %+v, %v, want %v", x.density, x.celsius, got, err, x.want)
		}
	}
}

func TestBaume(t *testing.T) {
	for _, x := range []struct{ degrees, want float64 }{ // tables of degrees Baumé and specific gravity at 60 F, from memory
		{0, 1}, {10, 1.0741}, {20, 1.1600}, {30, 1.2609}, {66, 1.8354},
	} {
		if got := GravityOfBaume(x.degrees); !within(got, x.want, 5e-5) {
			t.Errorf("%g degrees: %.5f, want %.4f", x.degrees, got, x.want)
		}
	}
	for _, degrees := range []float64{145, 200, math.NaN(), math.Inf(1)} {
		if got := GravityOfBaume(degrees); got != 0 {
			t.Errorf("%g degrees: %g", degrees, got)
		}
	}
}

// Whatever is asked of a bath, what comes out is finite, or nothing, or an error.
func FuzzKeep(f *testing.F) {
	f.Add(250.0, 2e-3, 1.5e-3, 0.98, 0.03, 3600.0, 1.0, uint8(0))
	f.Add(20.0, 1e-3, 0.0, 1.0, 0.0, -1.0, math.NaN(), uint8(2))
	f.Add(1e4, math.Inf(1), 5e-324, 1e-300, math.MaxFloat64, math.MaxFloat64, 5e-324, uint8(3))
	f.Fuzz(func(t *testing.T, strength, volume, other, assay, length, charge, efficiency float64, which uint8) {
		salt := salts[int(which)%len(salts)]
		var figures []float64
		run := Run{salt, catalogued(t, "gunmetal-85-5-5-5"), charge, efficiency}
		for _, run := range []Run{run, run.After(other)} {
			deposit := run.Deposit().SI
			lost := run.Lost().SI
			hydrogen := run.Hydrogen().SI
			add := salt.SaltToAdd(math.Abs(lost), assay).SI
			whole, ok := known(PiecesToTenth(other, lost))
			if !ok {
				whole = 0
			}
			figures = append(figures, run.removed(), deposit, math.Abs(lost), run.Gained("Zn"), run.Sludge(), hydrogen, add, whole)
		}
		if made, err := salt.ByDensity(strength, room); err == nil {
			figures = append(figures, made.Strength)
		}
		figures = append(figures, GravityOfBaume(math.Abs(strength)))
		s, err := salt.Solution(say(strength, quantity.Density), room)
		if err != nil {
			return
		}
		want := solution(t, salt, say(0.5, quantity.Saturation), room20)
		now, err := s.concentrated(volume, other)
		if err == nil {
			figures = append(figures, now.Strength)
		}
		add, water, _ := s.Toward(want, volume, assay)
		ofA, ofB, _ := want.Parts(s, want, volume)
		face := Face{length, Position(which / 4 % 3), which > 127}
		film := s.FilmDensity(face)
		cathode := s.CathodeLimit(face)
		needed, ok := known(CathodeNeeded(charge, cathode.SI))
		if !ok {
			needed = 0
		}
		for i, x := range append(figures, add, water, ofA, ofB, film.High.SI, cathode.High.SI, needed) {
			if !(x >= 0 && x <= math.MaxFloat64) {
				t.Fatalf("%s: figure %d is %g", salt.Name, i, x)
			}
		}
	})
}

func BenchmarkKeep(b *testing.B) {
	s, _ := CopperSulfate.Solution(say(250, quantity.Density), room)
	want, _ := CopperSulfate.Solution(say(200, quantity.Density), room)
	bronze := catalogued(b, "gunmetal-85-5-5-5")
	for b.Loop() {
		run := Run{CopperSulfate, bronze, 3600, 1}
		lost := run.Lost().SI
		all := run.After(0.1)
		all.Lost()
		CopperSulfate.SaltToAdd(lost, 0.98)
		for _, symbol := range []string{"Zn", "Ni", "Pb", "Cu"} {
			run.Gained(symbol)
			all.Gained(symbol)
		}
		run.Sludge()
		_, _ = s.concentrated(2e-3, 1.5e-3)
		_, _, _ = s.Toward(want, 2e-3, 1)
		_, _ = CopperSulfate.ByDensity(1107, room)
		s.FilmDensity(Face{Length: 0.03})
		s.CathodeLimit(Face{Length: 0.03})
	}
}
