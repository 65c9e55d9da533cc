package bath

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/metal"
	"saltbite/calc/quantity"
)

// Two litres of 150 g/L, in which 60 g of brass 70/30 were etched, down to 1.6 L.
// By hand, with 63.546 and 249.68 g/mol: 300 g of crystals hold 76.35 g of
// copper; the brass takes 0.29158 x 60 = 17.49 g of it (TestGramDissolved), which
// is 68.7 g of crystals, so 58.86 g of copper and 231.3 g of crystals are left.
func TestNow(t *testing.T) {
	brass := alloy(metal.Part{Symbol: "Cu", Share: 70}, metal.Part{Symbol: "Zn", Share: 30})
	s := solution(t, CopperSulfate, say(150, quantity.Density), room20)
	taken := Run{CopperSulfate, brass, 0, 1}.After(60 * gram).Lost().SI
	now, err := s.Now(2*litre, 1.6*litre, taken)
	if err != nil {
		t.Fatal(err)
	}
	add := s.SaltToRestore(2*litre, taken, 1).SI
	addHalf := s.SaltToRestore(2*litre, taken, 0.5).SI
	for _, x := range []struct {
		name                 string
		got, want, tolerance float64
	}{
		{"metal, g", now.Metal / gram, 58.86, 2e-4},
		{"strength, g/L", now.Strength, 231.26 / 1.6, 2e-4},
		{"sulfate in all, g/L", now.Mixed.Strength, 187.5, 1e-12}, // 150 x 2 / 1.6
		{"undissolved, g", now.Undissolved, 0, 0},
		{"volume, L", now.Volume / litre, 1.6, 1e-12},
		{"salt to add, g", add / gram, 68.74, 2e-4},
		{"salt to add of half assay, g", addHalf / gram, 137.48, 2e-4},
	} {
		if !within(x.got, x.want, x.tolerance) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
	if now.Spent(0) || now.Spent(58.8*gram) || !now.Spent(58.9*gram) {
		t.Error("it is spent too soon or too late")
	}
}

// A bath stronger than saturated, or evaporated beyond it, keeps the rest as a solid.
func TestNowSaturates(t *testing.T) {
	full := solution(t, CopperSulfate, say(1, quantity.Saturation), room20).Strength
	s := solution(t, CopperSulfate, say(0.8, quantity.Saturation), room20)
	now, err := s.Now(1*litre, 0.5*litre, 0) // 1.6 of saturated in half the volume
	if err != nil || !within(now.Strength, full, 1e-12) || !within(now.Undissolved, 0.3*full*litre, 1e-9) {
		t.Errorf("%+v, %v, saturated %g", now, err, full)
	}
	if now, err = s.Now(1*litre, 0.8*litre, 0); err != nil || !within(now.Strength, full, 1e-12) || now.Undissolved > 1e-12 {
		t.Errorf("just saturated: %+v, %v", now, err)
	}
	over := solution(t, CopperSulfate, say(1.25, quantity.Saturation), room20)
	if now, err = over.Now(1*litre, 1*litre, 0); err != nil || !within(now.Strength, full, 1e-12) || !within(now.Undissolved, 0.25*full*litre, 1e-9) {
		t.Errorf("as mixed: %+v, %v", now, err)
	}
}

// Whatever was etched: the metal is kept, and nothing is below nothing.
func TestNowConserves(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 32))
	spent := 0
	for range 5000 {
		s := some(t, r)
		volume := math.Pow(10, 3*r.Float64()-3)
		level := volume * (0.3 + 0.7*r.Float64())
		all := s.Strength * volume * s.Salt.metal * s.Salt.anhydrous
		taken := all * 1.5 * r.Float64()
		if r.IntN(5) == 0 {
			taken = -taken // a bath that gained
		}
		now, err := s.Now(volume, level, taken)
		if err != nil {
			t.Fatal(err)
		}
		if s.Salt.Metal == "" {
			if want := math.Min(s.Strength*volume/level, s.Salt.saturated(s.Temperature).Strength); now.Metal != 0 || !within(now.Strength, want, 1e-12) || now.Spent(1) {
				t.Fatalf("common salt: %+v", now)
			}
			continue
		}
		if want := math.Max(0, all-taken); math.Abs(now.Metal-want) > 1e-11*all {
			t.Fatalf("%g of %g kg of metal are left, want %g", now.Metal, all, want)
		}
		if got := (now.Strength*level + now.Undissolved) * s.Salt.metal * s.Salt.anhydrous; math.Abs(got-now.Metal) > 1e-11*all {
			t.Fatalf("dissolved and not, %g kg of metal of %g", got, now.Metal)
		}
		if now.Spent(0) != (taken >= all) || now.Spent(0) != (now.Strength == 0) || now.Spent(all) != (taken >= 0) {
			t.Fatalf("spent %v with %g of %g kg taken", now.Spent(0), taken, all)
		}
		if now.Spent(0) {
			spent++
		}
	}
	if spent < 500 {
		t.Errorf("spent %d times only", spent)
	}
	s := solution(t, CopperSulfate, say(150, quantity.Density), room20)
	all := s.Mix(litre, 1).MetalMass
	if now, err := s.Now(litre, litre, all); err != nil || !now.Spent(0) || now.Metal != 0 {
		t.Errorf("all its metal taken: %+v, %v", now, err)
	}
	for _, x := range [][2]float64{{0, 1}, {1, 0}, {-1, 1}, {1, -1}, {math.NaN(), 1}, {1, math.NaN()}} {
		if now, err := s.Now(x[0], x[1], 0); err == nil {
			t.Errorf("%g m3 down to %g m3: %+v", x[0], x[1], now)
		}
	}
}

// With nothing taken and nothing evaporated the limits are those of the bath as
// mixed; both follow from the same figures.
func TestLimitsNowAsMixed(t *testing.T) {
	for _, salt := range []*Salt{CopperSulfate, SilverNitrate} {
		s := solution(t, salt, say(60, quantity.Density), room20)
		now, err := s.Now(2*litre, 2*litre, 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range []Face{{Length: 0.03}, {Length: 0.03, Position: FaceDown}, {Length: 0.03, Stirred: true}, {Length: 0.03, Position: FaceUp}} {
			film, ok := knownRange(s.FilmDensity(f))
			if got, okNow := knownRange(now.FilmDensity(f)); got != film || ok != okNow {
				t.Errorf("%s: film %+v, now %+v", salt.Name, film, got)
			}
			cathode, ok := knownRange(s.CathodeLimit(f))
			if got, okNow := knownRange(now.CathodeLimit(f, 0)); !within(got.SI, cathode.SI, 1e-9) || ok != okNow {
				t.Errorf("%s: cathode %+v, now %+v", salt.Name, cathode, got)
			}
		}
	}
}

// With half of the copper gone the stirred cathode keeps up with half as much:
// z F D c / (delta (1 - t+)), definition, and delta 0.1 mm. In a still bath the
// driving difference in density halves too, so it is 2^(-5/4) = 0.42 of it, as far
// as density is straight in strength. What evaporates strengthens it again.
func TestCathodeLimitNow(t *testing.T) {
	s := solution(t, CopperSulfate, say(120, quantity.Density), room20)
	all := s.Mix(litre, 1).MetalMass
	half, err := s.Now(litre, litre, all/2)
	if err != nil {
		t.Fatal(err)
	}
	stirred, still := Face{Length: 0.03, Stirred: true}, Face{Length: 0.03}
	moles := 60.0 / 249.677 * 1000                        // mol/m3, by hand
	want := 2 * 96485.332 * 4.6e-10 * moles / 1e-4 / 0.70 // A/m2, definition
	if got, ok := knownRange(half.CathodeLimit(stirred, 0)); !ok || !within(got.SI, want, 1e-4) {
		t.Errorf("stirred %g A/m2, want %g", got.SI, want)
	}
	mixed := s.CathodeLimit(still)
	if got, ok := knownRange(half.CathodeLimit(still, 0)); !ok || !within(got.SI/mixed.SI, math.Pow(2, -1.25), 0.01) {
		t.Errorf("still %g of %g A/m2", got.SI, mixed.SI)
	}
	film := s.FilmDensity(still)
	if got, ok := knownRange(half.FilmDensity(still)); !ok || got != film {
		t.Errorf("the film knows that copper became zinc: %+v, %+v", got, film)
	}
	level, err := s.Now(litre, litre/2, all/2)
	if err != nil {
		t.Fatal(err)
	}
	if got, ok := knownRange(level.CathodeLimit(stirred, 0)); !ok || !within(got.SI, 2*want, 1e-4) { // as many moles in half the volume
		t.Errorf("in half the volume %g A/m2, want %g", got.SI, 2*want)
	}

	for name, got := range map[string]func() quantity.Range{
		"nothing left": func() quantity.Range {
			gone, _ := s.Now(litre, litre, 2*all)
			return gone.CathodeLimit(still, 0)
		},
		"this run takes the last": func() quantity.Range { return half.CathodeLimit(still, all) },
		"nothing left, face up": func() quantity.Range {
			gone, _ := s.Now(litre, litre, all)
			return gone.CathodeLimit(Face{Length: 0.03, Position: FaceUp}, 0)
		},
	} {
		if limit := got(); !limit.Known() || limit.SI != 0 || limit.High.SI != 0 {
			t.Errorf("%s: %+v", name, limit)
		}
	}
	if limit, ok := knownRange(half.CathodeLimit(still, all/2*0.99)); !ok || limit.SI == 0 {
		t.Errorf("this run leaves some: %+v, %v", limit, ok)
	}
	gained, err := s.Now(litre, litre, -all)
	if err != nil {
		t.Fatal(err)
	}
	if got, ok := knownRange(gained.CathodeLimit(stirred, 0)); !ok || !within(got.SI, 4*want, 1e-4) { // twice as strong as mixed
		t.Errorf("having gained as much %g A/m2, want %g", got.SI, 4*want)
	}
	salt := solution(t, CommonSalt, say(100, quantity.Density), room20)
	brine, _ := salt.Now(litre, litre, 0)
	if limit, ok := knownRange(brine.CathodeLimit(still, 1)); ok {
		t.Errorf("common salt: %+v", limit)
	}
}

// By hand: 63.546 / 249.677 of the crystals is copper. Never more is added than
// was mixed.
func TestSaltToRestore(t *testing.T) {
	s := solution(t, CopperSulfate, say(150, quantity.Density), room20)
	for _, x := range []struct {
		name                string
		volume, loss, assay float64 // m3, kg
		want                float64 // g; 0: none
	}{
		{"ten grams", 2 * litre, 10 * gram, 1, 39.291},        // 10 x 249.677 / 63.546
		{"all but a little", 2 * litre, 76 * gram, 1, 298.61}, // 76 x 3.92907
		{"more than was mixed", 2 * litre, 90 * gram, 1, 300},
		{"more, of half assay", 2 * litre, 90 * gram, 0.5, 600},
		{"nothing lost", 2 * litre, 0, 1, 0},
		{"gained", 2 * litre, -1, 1, 0},
		{"no volume", 0, 10 * gram, 1, 0},
		{"no assay", 2 * litre, 10 * gram, 0, 0},
	} {
		got, ok := known(s.SaltToRestore(x.volume, x.loss, x.assay))
		if ok != (x.want > 0) || ok && !within(got/gram, x.want, 1e-4) {
			t.Errorf("%s: %.6g g, %v, want %g", x.name, got/gram, ok, x.want)
		}
	}
}

// G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, his table: 998.206 kg/m3 at 20 C,
// 971.79 at 80 C (CRC Handbook, from memory).
func TestWaterVolume(t *testing.T) {
	for _, x := range []struct{ celsius, density float64 }{{20, 998.206}, {80, 971.79}, {0, 999.84}, {100, 958.37}} {
		kelvin := celsius0 + x.celsius
		if got := WaterMass(1.5*litre, kelvin); !within(got, 1.5*litre*x.density, 2e-5) {
			t.Errorf("1.5 L at %g C weigh %g kg", x.celsius, got)
		}
		if got := WaterVolume(WaterMass(1.5*litre, kelvin), kelvin); !within(got, 1.5*litre, 1e-12) {
			t.Errorf("1.5 L come back as %g", got/litre)
		}
	}
	for _, kelvin := range []float64{0, celsius0 - 0.01, celsius0 + 100.01, math.NaN()} {
		if WaterMass(1, kelvin) != 0 || WaterVolume(1, kelvin) != 0 {
			t.Errorf("water at %g K", kelvin)
		}
	}
}
