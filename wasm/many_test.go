//go:build long || !js

package main

import (
	"encoding/json"
	"math"
	"strings"
	"testing"
)

type many struct {
	Sentence string
	Answers  map[string]struct {
		Value     float64
		Low, High *float64
	}
	Rows struct {
		Runs []struct {
			Row                   int
			Efficiency, Low, High float64
			Odd                   string
		}
		Instead []string
		Steps   []struct {
			At         float64
			Time, Text string
		}
		Ticks []struct {
			At   float64
			Text string
		}
		Cards []struct {
			Name  string
			Lines []string
		}
	}
	Plan []struct {
		Load, Round, Supply     int
		Start, Minutes, Amperes float64
		From, To                float64
		Text                    string
		Pieces                  []struct {
			Name       string
			Count      int
			Lift, Down float64
			To         float64
		}
	}
	Cautions []struct{ Code, Level string }
	Errors   []struct {
		Field, Code, Text string
		Row               *int
	}
}

func manyOf(t *testing.T, reply string) (m many) {
	t.Helper()
	if err := json.Unmarshal([]byte(reply), &m); err != nil {
		t.Fatalf("%v in %s", err, reply)
	}
	return m
}

func near(a, b, share float64) bool { return math.Abs(a-b) <= share*math.Abs(b) }

// Three runs of copper, 10 cm2, 0.3 A for 2 h: 0.6 A h, at 1.18597 g/(A h) (two
// charges, 63.546 g/mol, F = 96485.332 C/mol) 0.71158 g. By hand: losses of 0.690,
// 0.700 and 0.710 g are 96.97, 98.37 and 99.78 %; mean 98.37, s 1.4053; Student's t
// for two degrees of freedom 4.3027 (NIST/SEMATECH e-Handbook, table of t): the mean
// +- 4.3027 x 1.4053 / root 3 = 3.491, the next run +- 4.3027 x 1.4053 x root(4/3) = 6.982.
func TestTrial(t *testing.T) {
	const run = "metal=copper&area=10+cm2&current=0.3&time=2+h&before=20&after="
	m := manyOf(t, trialOf("[fields]\nresolution=0.001\n[one]\n"+run+"19.310\n[two]\n"+run+"19.300\n[three]\n"+run+"19.290\n[four]\nmetal=copper&area=10"))
	for name, want := range map[string]float64{"efficiency": 98.373, "efficiencyLow": 91.39, "efficiencyHigh": 105.36, "rowsUsed": 3} {
		if got := m.Answers[name].Value; !near(got, want, 2e-4) {
			t.Errorf("%s is %v, want %v", name, got, want)
		}
	}
	if e := m.Answers["efficiency"]; e.Low == nil || !near(*e.Low, 98.373-3.491, 2e-4) || !near(*e.High, 98.373+3.491, 2e-4) {
		t.Errorf("the mean lies in %v", e)
	}
	if len(m.Rows.Runs) != 3 || !near(m.Rows.Runs[2].Efficiency, 99.778, 1e-4) || m.Rows.Runs[2].Row != 2 {
		t.Errorf("the runs are %v", m.Rows.Runs)
	}
	if len(m.Errors) == 0 || m.Errors[0].Row == nil || *m.Errors[0].Row != 3 || m.Errors[0].Code != "missing" {
		t.Errorf("the errors are %v", m.Errors)
	}
}

// Four pieces of copper of 10 cm2, 0.1 mm deep at 30 mA/cm2, take 0.3 A and 150.4 min
// each (4.513 A min for 0.1 mm on 1 cm2, see the vectors). A supply of 0.65 A takes
// two at a time: two rounds, 300.9 min and a changeover of 10.
func TestClass(t *testing.T) {
	m := manyOf(t, classOf("[fields]\namps=0.65&densityLimit=30&session=4+h&start=9:00&priceMetal=10\n[tag]\nmetal=copper&area=10+cm2&depth=0.1&pieces=4"))
	for name, want := range map[string]float64{"loads": 2, "rounds": 2, "minutes": 310.87, "totalCurrent": 0.6, "removed": 3.568, "readyAt": 540 + 310.87, "cost": 0.03568} {
		if got := m.Answers[name].Value; !near(got, want, 2e-4) {
			t.Errorf("%s is %v, want %v", name, got, want)
		}
	}
	if len(m.Plan) != 2 || m.Plan[0].Pieces[0].Name != "tag" || m.Plan[0].Pieces[0].Count != 2 || !near(m.Plan[1].Start, 160.43, 2e-4) {
		t.Errorf("the plan is %+v", m.Plan)
	}
	if len(m.Cautions) < 2 || m.Cautions[0].Code != "session-short" || len(m.Errors) != 0 {
		t.Errorf("cautions %v, errors %v", m.Cautions, m.Errors)
	}
	if got, want := m.Sentence, "Two loads in two rounds take 5 h 11 min, at 0.600 A at most: longer than the 4 h you have."; got != want {
		t.Errorf("it says %q, want %q", got, want)
	}
	// Two supplies take two each, 150 min; as it is, the first two are done after 150 min, the others after 311.
	if got := strings.Join(m.Rows.Instead, " "); !strings.Contains(got, "With 2 supplies all of it takes 2 h 30 min.") || !strings.Contains(got, "2 of 4 pieces") {
		t.Errorf("instead: %s", got)
	}
	var steps []string
	for _, s := range m.Rows.Steps {
		steps = append(steps, s.Time+" "+s.Text)
	}
	want := "9:00 Hang tag × 2. Switch on at 0.600 A; 11:30 Lift tag × 2, switch off; 11:40 Hang tag × 2. Switch on at 0.600 A; 14:11 Lift tag × 2, switch off"
	if got := strings.Join(steps, "; "); got != want {
		t.Errorf("the steps are %s", got)
	}
	// 150.4 of 310.9 min are 48.4 %; ticks every two hours, none beyond 80 %.
	if l := m.Plan[0]; !near(l.To, 48.39, 1e-3) || l.Pieces[0].To != l.To || m.Plan[1].To != 100 || len(m.Rows.Ticks) != 3 || m.Rows.Ticks[1].Text != "11:00" {
		t.Errorf("the timetable is %+v with %v", m.Plan, m.Rows.Ticks)
	}
	if len(m.Rows.Cards) != 2 || m.Rows.Cards[1].Name != "tag × 2" || m.Rows.Cards[1].Lines[3] != "Each piece loses about 0.892 g" { // a quarter of 3.568 g
		t.Errorf("the cards are %v", m.Rows.Cards)
	}
	// Two cells in series hang two each at once. What is assumed of the bath is no answer.
	if got := strings.Join(m.Rows.Instead, " "); !strings.Contains(got, "With 2 cells in series, a tank each, all of it takes 2 h 30 min. It costs volts: about ") || m.Answers["cellVolts"].Value != 0 {
		t.Errorf("instead: %s, with %v", got, m.Answers)
	}
	said := manyOf(t, classOf("[fields]\namps=0.65&volts=0.3&densityLimit=30&strength=200 g/L&volume=3&gap=80&cathode=100&wire=0.3&wireLength=2\n[tag]\nmetal=copper&width=60&height=40&open=40&depth=0.1&pieces=4"))
	codes := map[string]bool{}
	for _, c := range said.Cautions {
		codes[c.Code] = true
	}
	if !codes["supply-volts"] || !codes["wire-thin"] || !near(said.Answers["saltMass"].Value, 600, 1e-9) || said.Answers["cellVolts"].Low == nil {
		t.Errorf("cautions %v, answers %v", said.Cautions, said.Answers)
	}
	if m := manyOf(t, classOf("[fields]\namps=1&volts=80\n[x]\nmetal=copper&area=3&depth=.1")); len(m.Plan) != 0 || !strings.Contains(m.Sentence, "can kill") {
		t.Errorf("at 80 V it says %q", m.Sentence)
	}
	// Lifts less than a hundredth of the load's time apart are one step: 0.1 and 0.1005 mm, not 0.09.
	m = manyOf(t, classOf("[fields]\namps=2&densityLimit=30\n[a]\nmetal=copper&area=10&depth=0.1\n[b]\nmetal=copper&area=10&depth=0.1005\n[c]\nmetal=copper&area=10&depth=0.09"))
	if s := m.Rows.Steps; len(s) != 3 || !strings.HasPrefix(s[1].Text, "Lift c, turn down to 0.600 A") || s[2].Text != "Lift a and b, switch off" || !strings.HasPrefix(s[2].Time, "after 2 h 3") {
		t.Errorf("the steps are %+v", s)
	}
	if m := manyOf(t, classOf("[fields]\namps=1\n[x]\nmetal=sterling&salt=copper+sulfate&area=3&depth=.1")); len(m.Plan) != 0 || len(m.Errors) == 0 {
		t.Errorf("silver in copper sulfate is planned: %+v", m)
	}
}
