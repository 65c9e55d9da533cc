package field

import (
	"strconv"
	"strings"
	"testing"
)

// limits are the least and the most that a field takes: what no bench has lies
// outside. Choices, no source; zero and a hundred per cent are bounds by nature.
var limits = []struct{ names, least, most string }{
	{"width height diameter hangerLength bareEdges line space gap vesselLength vesselWidth vesselDiameter fill hanger wire rulerLength depthFound lineFound spaceFound", "0.001 mm", "10000 mm"},
	{"sheet", "0.001 mm", "1000 mm"},
	{"depth", "0.000001 mm", "100 mm"},
	{"edge", "0 mm", "10000000 mm"},
	{"wireLength", "0.001 m", "10000 m"},
	{"area", "0.000001 cm2", "1000000 cm2"},
	{"extra", "0 cm2", "1000000 cm2"},
	{"cathode", "0.0001 cm2", "1000000 cm2"},
	{"open", "0.001 %", "100 %"},
	{"back threshold", "0 %", "100 %"},
	{"efficiency efficiencyLow efficiencyHigh", "1 %", "200 %"},
	{"assay least", "1 %", "100 %"},
	{"keep", "0 %", "99.9 %"},
	{"keep", "0 mm", "2000 mm"},
	{"metalDensity", "1 g/cm3", "25 g/cm3"},
	{"density densityLimit", "0.0001 mA/cm2", "100000 mA/cm2"},
	{"current", "0.000001 A", "100000 A"},
	{"amps", "0.0001 A", "100000 A"},
	{"volts", "0.001 V", "1000 V"},
	{"resistance", "0.000001 ohm", "1000000000 ohm"},
	{"time", "0.001 min", "1000000 min"},
	{"elapsed paused session changeover", "0 min", "1000000 min"},
	{"volume volumeNow haveVolume", "0.0001 L", "100000 L"},
	{"strength haveStrength wantStrength strengthA strengthB", "0 g/L", "5000 g/L"},
	{"strength", "0 g/L water", "100000 g/L water"},
	{"strength", "0 %", "100 %"},
	{"strength", "0 mol/L", "100 mol/L"},
	{"strength", "0 % sat", "1000 % sat"},
	{"saltInHand waterInHand before after", "0.001 g", "1000000 g"},
	{"etched", "0 g", "1000000 g"},
	{"waterInHand", "0.000001 L", "1000 L"},
	{"resolution", "0.000001 g", "10000 g"},
	{"temperature coldest", "0 C", "100 C"},
	{"undercut", "0", "10"},
	{"gravity", "0.9", "3"},
	{"gravity", "0.9 g/mL", "3 g/mL"},
	{"gravity", "0 °Bé", "100 °Bé"},
	{"dpi", "30", "4800"},
	{"priceSalt priceMetal priceHour", "0", "1000000000"},
	{"sides", "1", "2"},
	{"pieces", "1", "10000"},
	{"copies", "1", "1000"},
	{"supplies", "1", "100"},
	{"islands holes", "0", "10000000"},
}

// What lies at a limit is read; a little beyond it is refused, or one beyond where
// whole numbers are asked for.
func TestLimits(t *testing.T) {
	covered := map[string]bool{}
	for _, x := range limits {
		for name := range strings.FieldsSeq(x.names) {
			covered[name] = true
			n, _ := NameOf(name)
			for _, end := range []struct {
				at   string
				away float64
			}{{x.least, -1}, {x.most, 1}} {
				if s := one(name, end.at); len(s.Errors()) > 0 {
					t.Errorf("%s: %v", name, s.Errors())
				}
				beyond := beyond(t, end.at, end.away, n.Row().Form == Whole)
				if s := one(name, beyond); len(s.Errors()) == 0 {
					t.Errorf("%s takes %s", name, beyond)
				}
			}
		}
	}
	for _, f := range Fields {
		if (f.Form == Amount || f.Form == Whole) && !covered[f.Name] {
			t.Errorf("%s has no limits here", f.Name)
		}
	}
}

// beyond is an amount a little farther up or down, or one farther.
func beyond(t *testing.T, text string, away float64, whole bool) string {
	number, unit, _ := strings.Cut(text, " ")
	x, err := strconv.ParseFloat(number, 64)
	if err != nil {
		t.Fatal(err)
	}
	step := max(x, 0.001) / 1e7
	if whole {
		step = 1
	}
	return strconv.FormatFloat(x+away*step, 'f', -1, 64) + " " + unit
}

// A word holds no more characters than its row says.
func TestWordsAreLimited(t *testing.T) {
	for name, most := range map[string]int{"mixed": 40, "corners": 120, "ruler": 60, "along": 40} {
		if s := one(name, strings.Repeat("é", most)); len(s.Errors()) > 0 {
			t.Errorf("%s: %v", name, s.Errors())
		}
		if s := one(name, strings.Repeat("é", most+1)); len(s.Errors()) != 1 {
			t.Errorf("%s takes %d characters", name, most+1)
		}
	}
}
