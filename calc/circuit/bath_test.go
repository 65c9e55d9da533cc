package circuit

import "testing"

func TestFaces(t *testing.T) {
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"rectangle", Face{Width: 6 * cm, Height: 4 * cm}.area(), 24 * cm2}, // by hand: 6 x 4
		{"no face", Face{}.area(), 0},                                       // nothing is known
		{"half a face", Face{Width: 1 * cm}.area(), 0},                      // a line
		{"disc", Face{Diameter: 3 * cm}.area(), 7.0686 * cm2},               // by hand: pi/4 x 9
	} {
		if !near(x.got, x.want, 1e-5) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

func TestWarmingAndCathode(t *testing.T) {
	const calorie20 = 4.18190 // J, to warm 1 g of water from 19.5 to 20.5 C: Debian package units 2.22-2, definitions.units, seen
	oneKelvin := calorie20 * 1000 * 2
	if got := Warming(5, oneKelvin/5/hour, 2).SI; !near(got*hour, 1, 1e-4) {
		t.Errorf("what warms 2 kg of water by a kelvin in an hour warms it by %g", got*hour)
	}
	if got, want := Warming(2, 6, 2).SI*hour, 5.165; !near(got, want, 1e-3) { // by hand: 2 x 6 x 3600 / (4182 x 2)
		t.Errorf("%g K/h, want %g", got, want)
	}
	if got, want := CathodeDensity(0.75, 50*cm2).SI, 150.0; !near(got, want, 1e-12) { // by hand: 0.75 A / 0.005 m2
		t.Errorf("%g A/m2, want %g", got, want)
	}
}
