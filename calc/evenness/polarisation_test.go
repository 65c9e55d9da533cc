package evenness

import (
	"math"
	"testing"
)

func TestPolarisation(t *testing.T) {
	const ohmCm2 = 1e-4
	for _, c := range []struct {
		name      string
		got, want float64
		source    string
		within    float64
	}{
		{"copper at 20 mA/cm2", Copper.Polarisation(200, 293.15), 0.822 * ohmCm2, "RT/F / (1.5 x 203.7 + 0.5 x 3.7 A/m2), by hand; 0.84 for the Tafel slope alone", 0.001},
		{"copper's other slope", Copper.HighPolarisation(200), 1.19 * ohmCm2, "55 mV / (ln 10 x 20 mA/cm2), by hand", 0.005},
		{"copper at next to nothing", Copper.Polarisation(1e-3, 293.15), 0.025261 / (2 * 10), "RT/(2 F i0), by hand", 0.001},
		{"silver at 10 mA/cm2", Silver.Polarisation(100, 293.15), 0.025261 / math.Hypot(1500, 100/2), "i = 2 i0 sinh(F eta / 2RT), so RT/F / sqrt(i0^2 + i^2/4)", 0.001},
	} {
		if !near(c.got, c.want, c.within) {
			t.Errorf("%s: %.5g ohm m2, want %.5g (%s)", c.name, c.got, c.want, c.source)
		}
	}
	for density := 1e-6; density < 1e7; density *= 3 {
		for _, k := range []Kinetics{Copper, Silver} {
			if r, more := k.Polarisation(density, 293.15), k.Polarisation(density*1.01, 293.15); !(r > 0 && more <= r) {
				t.Fatalf("%s: %g ohm m2 at %g A/m2, then %g", k.Source.Figure, r, density, more)
			}
		}
	}
}
