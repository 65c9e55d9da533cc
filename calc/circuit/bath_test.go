package circuit

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/testdata"
)

func TestResistanceOfKnownShapes(t *testing.T) {
	for _, r := range testdata.Sourced(t, "resistance.csv") {
		b := Bath{
			Conductivity: r.Number(t, "conductivity_S_per_m"),
			Gap:          r.Number(t, "gap_m"),
			Face:         Face{r.Number(t, "width1_m"), r.Number(t, "height1_m"), r.Number(t, "diameter1_m")},
			Pieces:       1,
			Cathode:      r.Number(t, "area2_m2"),
		}
		if got, want := b.Resistance(), r.Number(t, "resistance_ohm"); !near(got, want, 5e-5) {
			t.Errorf("%s: %.5g ohm, want %.5g (%s)", r["case"], got, want, r["source"])
		}
	}
}

// A disc before an endless cathode: the column of bath costs nothing.
func TestDiscToAFarPlane(t *testing.T) {
	b := Bath{Conductivity: 5, Gap: 1, Open: math.Pi * cm * cm, Pieces: 1, Cathode: 1e9}
	if got, want := b.HighResistance(), 5.0; !near(got, want, 1e-6) { // 1/(4 kappa a): J. Newman, J. Electrochem. Soc. 113 (1966) 501, seen as quoted
		t.Errorf("%g ohm, want %g", got, want)
	}
	b.Cathode = 100 * cm2
	if got, want := b.HighResistance(), 25.0; !near(got, want, 1e-9) { // by hand: 5 + 1 m / (5 S/m x 0.01 m2)
		t.Errorf("%g ohm, want %g", got, want)
	}
}

// exactDisc is the resistance, in units of 1/(kappa a), of a disc in an
// insulating wall that faces an endless plate g radii away. The dual integral
// equations of the mixed boundary reduce to one of the second kind,
//
//	f(x) - 2/pi integral 0..1 K(x,y) f(y) dy = 2/pi
//	K = integral of (1 - tanh k g) cos kx cos ky dk,  1/R = 2 pi integral f
//
// solved here by Simpson's rule on n steps. The method is textbook (I. N.
// Sneddon, Mixed Boundary Value Problems in Potential Theory, from memory); its
// two ends are checked below.
func exactDisc(g float64) float64 {
	const n = 60
	weight := func(i int) float64 {
		switch {
		case i == 0 || i == n:
			return 1.0 / 3 / n
		case i%2 == 1:
			return 4.0 / 3 / n
		}
		return 2.0 / 3 / n
	}
	var kernel [n + 1][n + 1]float64
	for i := range kernel {
		for j := range kernel[i] {
			x, y := float64(i)/n, float64(j)/n
			kernel[i][j] = (fallOff(x-y, g) + fallOff(x+y, g)) / 2 * 2 / math.Pi
		}
	}
	var f [n + 1]float64
	for range 4000 { // the kernel contracts, so it is enough to put f back in
		var next [n + 1]float64
		var moved float64
		for i := range f {
			next[i] = 2 / math.Pi
			for j := range f {
				next[i] += weight(j) * kernel[i][j] * f[j]
			}
			moved = math.Max(moved, math.Abs(next[i]-f[i]))
		}
		if f = next; moved < 1e-9 {
			break
		}
	}
	var sum float64
	for i := range f {
		sum += weight(i) * f[i]
	}
	return 1 / (2 * math.Pi * sum)
}

// fallOff is the integral of (1 - tanh k g) cos k c dk from 0 on, term by term
// in powers of exp(-2 k g); the mean of two sums ends the alternating series.
func fallOff(c, g float64) float64 {
	var sum, term float64
	for m := 1; m <= 400; m++ {
		step := 2 * g * float64(m)
		term = 2 * step / (step*step + c*c)
		if m%2 == 0 {
			term = -term
		}
		sum += term
	}
	return sum - term/2
}

// The cone against the exact disc: how far the estimate goes wrong.
func TestConeAgainstTheExactDisc(t *testing.T) {
	if got := exactDisc(1000); !near(got, 0.25, 1e-3) { // 1/(4 kappa a), as above
		t.Fatalf("the exact disc at a far plane is %g", got)
	}
	for _, g := range []float64{0.25, 0.5, 1, 3} { // spreading past the rim can only help: less than the column g/(kappa pi a^2), and than a far plane
		if got := exactDisc(g); !(got < g/math.Pi && got < 0.25) {
			t.Fatalf("the exact disc %g radii away is %g", g, got)
		}
	}
	for _, x := range []struct {
		gap   float64 // in radii
		ratio float64 // cone / exact disc, computed by a second calculation
	}{{0.5, 0.99}, {1, 1.02}, {2, 1.07}, {5, 1.16}, {10, 1.21}} {
		b := Bath{Conductivity: 1, Gap: x.gap, Face: Face{Diameter: 2}, Pieces: 1, Cathode: 1e9}
		if got := b.Resistance() / exactDisc(x.gap); !near(got, x.ratio, 0.006) {
			t.Errorf("%g radii away the cone is %.3f of the exact disc, want %.2f", x.gap, got, x.ratio)
		}
	}
}

func TestFaces(t *testing.T) {
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"rectangle", Face{Width: 6 * cm, Height: 4 * cm}.Area(), 24 * cm2},    // by hand: 6 x 4
		{"grown", Face{Width: 6 * cm, Height: 4 * cm}.grown(2 * cm), 80 * cm2}, // by hand: 10 x 8
		{"disc", Face{Diameter: 3 * cm}.Area(), 7.0686 * cm2},                  // by hand: pi/4 x 9
		{"disc grown", Face{Diameter: 3 * cm}.grown(1 * cm), 19.635 * cm2},     // by hand: pi/4 x 25
		{"square", SquareFace(9 * cm2).grown(1 * cm), 25 * cm2},                // by hand: (3 + 2)^2
		{"no face", Face{}.grown(1 * cm), 0},                                   // nothing grows from nothing
		{"half a face", Face{Width: 1 * cm}.grown(1 * cm), 0},                  // nor from a line
	} {
		if !near(x.got, x.want, 1e-5) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

// A wide cathode counts only as far as the current spreads, a narrow one whole.
func TestCathodeIsCapped(t *testing.T) {
	b := Bath{Conductivity: 4, Gap: 8 * cm, Face: Face{Width: 6 * cm, Height: 4 * cm}, Open: 9.6 * cm2, Pieces: 1, Cathode: 60 * cm2}
	if got, want := b.Resistance(), 5.2705; !near(got, want, 1e-4) { // by hand: 0.08 / (4 sqrt(0.0024 x 0.0060))
		t.Errorf("before a narrow cathode %g ohm, want %g", got, want)
	}
	b.Cathode = 1000 * cm2
	if got, want := b.Resistance(), 1.9462; !near(got, want, 1e-4) { // by hand: 0.08 / (4 sqrt(0.0024 x 0.22 x 0.20))
		t.Errorf("before a wide cathode %g ohm, want %g", got, want)
	}
	if got, want := b.HighResistance(), 3.7753; !near(got, want, 1e-4) { // by hand: 1/(4 x 4 x sqrt(0.00096/pi)) + 0.08/(4 x 0.1)
		t.Errorf("as one disc %g ohm, want %g", got, want)
	}
}

func TestResistanceBehaves(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 20000 {
		b := Bath{decades(r, 3, 4), decades(r, 5*cm, 4), Face{decades(r, 5*cm, 4), decades(r, 5*cm, 4), 0}, 0, float64(1 + r.IntN(9)), decades(r, 0.01, 6)}
		b.Open = b.Face.Area() * r.Float64()
		low, high, more := b.Resistance(), b.HighResistance(), 1+r.Float64()
		if !(low > 0) || high < low {
			t.Fatalf("%g to %g ohm: %+v", low, high, b)
		}
		salty, wide, large := b, b, b
		salty.Conductivity *= more
		wide.Cathode *= more
		large.Pieces *= 2
		large.Cathode *= 2
		if got := salty.Resistance(); !near(got*more, low, 1e-12) {
			t.Fatalf("%g times the conductivity makes %g of %g: %+v", more, got, low, b)
		}
		if got := wide.Resistance(); got > low*(1+1e-12) {
			t.Fatalf("a wider cathode resists more, %g than %g: %+v", got, low, b)
		}
		// Twice the cell side by side is half the resistance.
		if got := large.Resistance(); !near(got*2, low, 1e-12) {
			t.Fatalf("twice the cell resists %g, once %g: %+v", got, low, b)
		}
		size := decades(r, 1, 4)
		scaled := Bath{b.Conductivity, b.Gap * size, Face{b.Face.Width * size, b.Face.Height * size, 0}, b.Open * size * size, b.Pieces, b.Cathode * size * size}
		if got := scaled.Resistance(); !near(got*size, low, 1e-9) {
			t.Fatalf("%g times as large it resists %g, once %g: %+v", size, got, low, b)
		}
		if got := scaled.HighResistance(); !near(got*size, high, 1e-9) {
			t.Fatalf("%g times as large it resists %g, once %g: %+v", size, got, high, b)
		}
	}
}

func TestWarmingAndCathode(t *testing.T) {
	const calorie20 = 4.18190 // J, to warm 1 g of water from 19.5 to 20.5 C: Debian package units 2.22-2, definitions.units, seen
	oneKelvin := calorie20 * 1000 * 2
	if got := Warming(5, oneKelvin/5/hour, 2); !near(got*hour, 1, 1e-4) {
		t.Errorf("what warms 2 kg of water by a kelvin in an hour warms it by %g", got*hour)
	}
	if got, want := Warming(2, 6, 2)*hour, 5.165; !near(got, want, 1e-3) { // by hand: 2 x 6 x 3600 / (4182 x 2)
		t.Errorf("%g K/h, want %g", got, want)
	}
	if got, want := CathodeDensity(0.75, 50*cm2), 150.0; !near(got, want, 1e-12) { // by hand: 0.75 A / 0.005 m2
		t.Errorf("%g A/m2, want %g", got, want)
	}
}
