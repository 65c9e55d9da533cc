package circuit

import (
	"math"
	"testing"

	"saltbite/calc/quantity"
	"saltbite/testdata"
)

// The published ohms of copper wire by gauge, to their four digits.
func TestWireTable(t *testing.T) {
	var seen int
	for _, r := range testdata.Sourced(t, "lead_wire.csv") {
		ohms := r.Number(t, "ohm_per_1000ft_published")
		if ohms == 0 {
			continue
		}
		seen++
		wire := Wire{Diameter: quantity.BrownSharpe(int(r.Number(t, "awg"))), Length: 1000 * foot, Resistivity: Copper}
		if got := wire.Resistance().SI; !near(got, ohms, 1e-3) {
			t.Errorf("gauge %s: %.4g ohm per 1000 ft, want %.4g (%s)", r["awg"], got, ohms, r["source"])
		}
	}
	if seen != 27 {
		t.Errorf("%d gauges with ohms, want 27", seen)
	}
}

// 5 A/mm2 is never bolder than the published amperes of a short wire in air.
func TestWireLimitIsCautious(t *testing.T) {
	for _, r := range testdata.Sourced(t, "lead_wire.csv") {
		if r.Number(t, "ohm_per_1000ft_published") == 0 || r.Number(t, "awg") > 30 {
			continue
		}
		wire := Wire{Diameter: quantity.BrownSharpe(int(r.Number(t, "awg")))}
		if got, bold := wire.Limit().SI, r.Number(t, "ampere_limit"); !(got > 0 && got < bold) {
			t.Errorf("gauge %s: limit %.3g A, a chassis wire's %.3g A (%s)", r["awg"], got, bold, r["source"])
		}
	}
}

func TestWire(t *testing.T) {
	const circularMil = math.Pi / 4 * (inch / 1000) * (inch / 1000)            // m2, by its definition
	square := Wire{Diameter: 1.128379167 * mm, Length: 1, Resistivity: Copper} // 1 mm2: 2 / sqrt(pi)
	for _, x := range []struct {
		name                 string
		got, want, tolerance float64
	}{
		{"copper, ohm m", Copper, 1.72414e-8, 3e-6},                         // 58 S m/mm2: Debian package units 2.22-2, seen
		{"copper by mass", Copper * 8890, 0.15328e-3, 1e-4},                 // 0.15328 ohm g/m2 at 8.89 g/cm3: copper.org Design Guide, seen
		{"copper, circular mils", Copper * foot / circularMil, 10.37, 5e-4}, // ohm circular mil per foot: pearen.ca/Reference/wire.htm, seen
		{"aluminium, ohm m", Aluminium, 2.8264e-8, 5e-5},                    // grade 1350, ASTM B609, from memory
		{"1 m of 1 mm2", square.Resistance().SI, 0.0172414, 1e-5},           // 1/58 ohm: definition of the IACS
		{"its drop at 3 A", square.Drop(3).SI, 0.0517241, 1e-5},             // by hand: 3/58
		{"its limit", square.Limit().SI, 5, 1e-8},                           // 5 A/mm2: common practice, no source
	} {
		if !near(x.got, x.want, x.tolerance) {
			t.Errorf("%s: %.6g, want %.6g", x.name, x.got, x.want)
		}
	}
}

// A wire just thick enough for a current has that current as its limit.
func TestWireFor(t *testing.T) {
	for _, amps := range []float64{0.05, 1, 12} {
		if got := (Wire{Diameter: WireFor(amps).SI}).Limit().SI; !near(got, amps, 1e-12) {
			t.Errorf("the wire for %g A carries %g", amps, got)
		}
	}
	if WireFor(-1).Known() || WireFor(0).Known() {
		t.Error("there is a wire for no current")
	}
}

// By hand: two of 60 x 40 mm and one of 30 x 80 mm are 50 mm wide in the mean, and
// their 7200 mm2 on 150 mm are 48 mm high. A round one of 40 mm is a square of
// 35.449 mm.
func TestMeanFace(t *testing.T) {
	got := MeanFace([]Face{{Width: 0.060, Height: 0.040}, {Width: 0.030, Height: 0.080}}, []float64{2, 1})
	if !near(got.Width, 0.050, 1e-12) || !near(got.Height, 0.048, 1e-12) {
		t.Errorf("%+v", got)
	}
	if round := MeanFace([]Face{{Diameter: 0.040}}, []float64{3}); !near(round.Width, 0.035449, 1e-4) || !near(round.Height, round.Width, 1e-12) {
		t.Errorf("%+v", round)
	}
	if none := MeanFace([]Face{{Width: 0.060, Height: 0.040}, {}}, []float64{1, 1}); none != (Face{}) {
		t.Errorf("%+v, with a face that is not known", none)
	}
}
