package job

import (
	"testing"

	"saltbite/calc/field"
)

func TestPlanStrip(t *testing.T) {
	for _, x := range []struct {
		fields                          string
		areaCM2, amperes, minutes, loss float64 // loss in g
		beyond                          bool
	}{
		// By hand: 0.2 g of copper take 607.3 C, at 0.1 A 101.2 min, so 102; 0.1 A / 30 mA/cm2.
		{"metal=copper&density=30&resolution=0.01", 3.33333, 0.1, 102, 612 * cu2 * 1000, false},
		{"metal=copper&current=0.6&area=20", 3.33333, 0.1, 102, 612 * cu2 * 1000, false}, // the job's own density, and a balance of 0.01 g
		// By hand: 10 mA/cm2 for 4 h bite 144 C/cm2 x 0.32930 mg/C / 8.92 g/cm3, 0.0532 mm; 2 g over that and 8.92 g/cm3.
		{"metal=copper&density=10&resolution=0.1", 42.176, 0.42176, 240, 2, false},
		// By hand: from a sheet of 0.2 mm 0.05 mm a side go; 0.2 g / 8.92 g/cm3 / 0.05 mm; x 30 mA/cm2; 607.3 C over that.
		{"metal=copper&density=30&sheet=0.2+mm", 4.4843, 0.13453, 76, 76 * 60 * 0.13453 * cu2 * 1000, false},
		// By hand: 607.3 C at 0.05 A would take 202.4 min; 0.05 A / 30 mA/cm2 would be 1.67 cm2, and 0.1 mm is reached with 2.24 cm2.
		{"metal=copper&density=30&amps=0.05", 2.24215, 0.067265, 151, 151 * 60 * 0.067265 * cu2 * 1000, true},
	} {
		got := PlanStrip(field.Read(x.fields))
		if !got.Known || !nearly(got.Area*1e4, x.areaCM2) || !nearly(got.Current, x.amperes) || !nearly(got.Time/60, x.minutes) || !nearly(got.Loss*1000, x.loss) || got.Beyond != x.beyond {
			t.Errorf("%s: %+v", x.fields, got)
		}
	}
	for _, fields := range []string{"", "density=30", "metal=copper&resolution=some", "metal=copper&salt=silver+nitrate", "metal=oak"} {
		if got := PlanStrip(field.Read(fields)); got.Known {
			t.Errorf("%q: %+v", fields, got)
		}
	}
}

// nearly is within a part in two thousand: more than figures by hand are off.
func nearly(got, want float64) bool { return got > 0.9995*want && got < 1.0005*want }
