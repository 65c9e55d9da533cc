package advice

import (
	"slices"
	"strings"
	"testing"

	"saltbite/calc/field"
	"saltbite/calc/job"
)

// leaves are two pieces etched 0.1 mm and a third one 0.05 mm: 0.9 and 0.45 g of
// copper, by Faraday's law 151.835 min and half of it at 0.3 A. Between two loads are
// 10 min for the change.
func leaves(class string) Many {
	rows := []field.Named{{Name: "Leaf", Set: field.Read(oneCopper + "depth=0.1&pieces=2")}, {Name: "Star", Set: field.Read(oneCopper + "depth=0.05")}}
	return Class(job.Teach(rows, field.Read(class)))
}

const aLeaf, aChange = 151.835, 10.0 // min

// A class on one supply from 22:00: three loads, one after the other over midnight.
func TestClassOnOneSupply(t *testing.T) {
	m := leaves("amps=0.5&session=4+h&start=22:00")
	if want := "Three loads in three rounds take 6 h 40 min, at 0.300 A at most: longer than the 4 h you have."; m.Sentence != want {
		t.Errorf("%q", m.Sentence)
	}
	const end = 2.5*aLeaf + 2*aChange
	want := map[string]float64{"totalCurrent": 0.3, "loads": 3, "rounds": 3, "minutes": end, "cathodeNeeded": 10, "removed": 2.25,
		"readyAt": 22*60 + end, "deepestThatFits": 0.1 * (240 - 2*aChange) / (3 * aLeaf)} // three of the same depth in 4 h
	for _, a := range m.Answers {
		if w, ok := want[a.Name]; ok && !within(a.Value, w) {
			t.Errorf("%s is %v, not %v", a.Name, a.Value, w)
		}
		delete(want, a.Name)
	}
	if len(want) > 0 {
		t.Errorf("not told: %v", want)
	}
	begins := []float64{0, aLeaf + aChange, 2 * (aLeaf + aChange)}
	lasts := []float64{aLeaf, aLeaf, aLeaf / 2}
	for i, load := range m.Loads {
		if load.Load != i+1 || load.Round != i+1 || load.Supply != 1 || !near(load.Start.Value, begins[i]) || !near(load.Minutes.Value, lasts[i]) || load.Amperes.Text != "0.300 A" {
			t.Errorf("load %d is %+v", i, load)
		}
		if from, to := 100*begins[i]/end, 100*(begins[i]+lasts[i])/end; !near(load.From, from) || !near(load.To, to) || !near(load.Pieces[0].To, to) {
			t.Errorf("load %d goes from %v to %v %% of the timetable, its piece to %v, not from %v to %v", i, load.From, load.To, load.Pieces[0].To, from, to)
		}
		if p := load.Pieces[0]; p.Count != 1 || !near(p.Lift.Value, begins[i]+lasts[i]) || p.Down.Value != 0 {
			t.Errorf("load %d: %+v", i, p)
		}
	}
	if got := m.Loads[0].Pieces[0].Text; got != "lift at 0:32 next day, switch off" {
		t.Errorf("%q", got)
	}
	var steps []string
	for _, s := range m.Steps {
		steps = append(steps, s.Time+" "+s.Text)
	}
	wantSteps := []string{"22:00 Hang Leaf. Switch on at 0.300 A", "0:32 next day Lift Leaf, switch off", "0:42 next day Hang Leaf. Switch on at 0.300 A",
		"3:14 next day Lift Leaf, switch off", "3:24 next day Hang Star. Switch on at 0.300 A", "4:40 next day Lift Star, switch off"}
	if !slices.Equal(steps, wantSteps) {
		t.Errorf("%q", steps)
	}
	// 2 h 32 min, 10 min, and 1 h 16 min on the other supply at the same time.
	if got := strings.Join(m.Instead, " "); got != "With 2 supplies all of it takes 3 h 58 min. "+
		"With 2 cells in series, a tank each, all of it takes 3 h 58 min. It costs volts: about 5.0 V in the place of 2.5 V. Where a cell has a piece less, hang scrap with as much exposed metal. "+
		"All pieces fit at 0.0483 mm deep, in the same loads. As it is, 1 of 3 pieces is done in time. Leave the rest for another day." {
		t.Errorf("%q", got)
	}
	if c := m.Cards[1]; c.Name != "Leaf" || !slices.Equal(c.Lines, []string{"Oxygen-free copper, 0.1 mm deep, in copper sulfate", "Load 2: hang it by 0:42 next day",
		"Lift it at 3:14 next day: 2 h 32 min in the bath", "Each piece loses about 0.900 g"}) {
		t.Errorf("%+v", c)
	}
	if m.Cautions[0].Code != "session-short" || !strings.Contains(m.Cautions[0].Text, "it takes 6 h 40 min, longer") {
		t.Errorf("%+v", m.Cautions[0])
	}
}

func near(got, want float64) bool { return got > want-0.02 && got < want+0.02 }

// A class on two supplies without a clock: two leaves at once, then the star.
func TestClassOnTwoSupplies(t *testing.T) {
	m := leaves("amps=0.5&supplies=2")
	if m.Sentence != "Three loads in two rounds take 3 h 58 min, at 0.300 A at most." || m.Instead != nil {
		t.Errorf("%q %q", m.Sentence, m.Instead)
	}
	for i, supply := range []int{1, 2, 1} {
		if m.Loads[i].Supply != supply || !strings.HasPrefix(m.Loads[i].Text, "supply "+string(rune('0'+supply))+" at 0.300 A for ") {
			t.Errorf("load %d: %+v", i+1, m.Loads[i])
		}
	}
	if s := m.Steps[0]; s.Time != "at the start" || s.Text != "Hang Leaf. Switch supply 1 on at 0.300 A" {
		t.Errorf("%+v", s)
	}
	if s := m.Steps[5]; s.Time != "after 3 h 58 min" || s.Text != "Lift Star, switch supply 1 off" || !near(s.At.Value, 1.5*aLeaf+aChange) {
		t.Errorf("%+v", s)
	}
	if c := m.Cards[2]; c.Lines[1] != "Load 3 on supply 1: hang it after 2 h 42 min" || c.Lines[2] != "Lift it after 3 h 58 min: 1 h 16 min in the bath" {
		t.Errorf("%q", c.Lines)
	}
}

// What fits together hangs together; a session that is long enough says so, and an
// hour costs what was typed.
func TestClassTogether(t *testing.T) {
	m := leaves("amps=0.6&session=4+h&priceHour=12")
	if !strings.HasPrefix(m.Sentence, "Two loads in two rounds take 3 h 58 min, at 0.600 A at most. It fits the 4 h you have.") {
		t.Errorf("%q", m.Sentence)
	}
	if m.Loads[0].Pieces[0].Count != 2 || m.Steps[0].Text != "Hang Leaf × 2. Switch on at 0.600 A" || m.Cards[0].Name != "Leaf × 2" {
		t.Errorf("%+v", m)
	}
	var cost float64
	for _, a := range m.Answers {
		if a.Name == "cost" {
			cost = a.Value
		}
	}
	if want := 12 * (1.5*aLeaf + aChange) / 60; !within(cost, want) {
		t.Errorf("it costs %v, not %v", cost, want)
	}
	one := Class(job.Teach([]field.Named{{Name: "Leaf", Set: field.Read(oneCopper + "depth=0.1")}}, field.Read("amps=0.6")))
	if one.Sentence != "One load takes 2 h 32 min, at 0.300 A at most." {
		t.Errorf("%q", one.Sentence)
	}
	for _, c := range m.Cautions {
		if c.Code == "session-short" {
			t.Error("what fits is called too long")
		}
	}
}

// For the bath of a class, of 2 L at 150 g/L, 300 g of salt are weighed out.
func TestClassWeighsItsSalt(t *testing.T) {
	for class, want := range map[string]string{"amps=0.5&strength=150&volume=2": "300 g", "amps=0.5": ""} {
		got := ""
		for _, a := range leaves(class).Answers {
			if a.Name == "saltMass" {
				got = a.Text
			}
		}
		if got != want {
			t.Errorf("%s: %q of salt, not %q", class, got, want)
		}
	}
}

// The scale begins at 0 and goes on in equal steps that people count in: never more
// than four and a first, never so few that it says nothing, none in the last fifth.
func TestTimetablesScale(t *testing.T) {
	for _, depth := range []string{"0.001", "0.005", "0.01", "0.013", "0.02", "0.03", "0.05", "0.1", "0.2", "0.3", "0.5", "1", "2", "4", "9"} {
		rows := []field.Named{{Name: "Leaf", Set: field.Read(oneCopper + "depth=" + depth)}}
		for _, start := range []string{"", "&start=22:30"} {
			m := Class(job.Teach(rows, field.Read("amps=0.3"+start)))
			var end float64 // min
			for _, a := range m.Answers {
				if a.Name == "minutes" {
					end = a.Value
				}
			}
			if len(m.Ticks) == 0 || m.Ticks[0].At != 0 || m.Ticks[0].Text != map[bool]string{true: "0:00", false: "22:30"}[start == ""] {
				t.Fatalf("%s mm: %v", depth, m.Ticks)
			}
			if len(m.Ticks) > 4 || end > 5/0.8 && len(m.Ticks) < 2 {
				t.Errorf("%s mm, %v min: %v", depth, end, m.Ticks)
			}
			for i, tick := range m.Ticks {
				if tick.At > 80.01 || i > 0 && !near(tick.At, float64(i)*m.Ticks[1].At) {
					t.Errorf("%s mm: %v", depth, m.Ticks)
				}
			}
			if len(m.Ticks) < 2 {
				continue
			}
			step := m.Ticks[1].At * end / 100
			if whole := []float64{5, 10, 15, 30, 60, 120, 240, 480, 720, 1440, 2880, 5760, 11520}; !slices.ContainsFunc(whole, func(w float64) bool { return within(step, w) }) {
				t.Errorf("%s mm: a step of %v min", depth, step)
			}
			if next := m.Ticks[len(m.Ticks)-1].At + m.Ticks[1].At; next < 79.99 {
				t.Errorf("%s mm: there is room for another after %v", depth, m.Ticks)
			}
		}
	}
}

// What a log says of its runs: 0.560, 0.565 and 0.570 of 0.59275 g by Faraday's law are
// 94.48, 95.32 and 96.16 %; the depth is the loss over 9 g/cm3 and 10 cm2.
func TestLogInWords(t *testing.T) {
	var runs []job.LogRun
	for _, after := range []string{"24.040", "24.035", "24.030", "24.400", ""} {
		runs = append(runs, job.LogRun{ID: after, Set: field.Read(oneCopper + "depth=0.07&current=0.5&time=60&before=24.6+g&after=" + after)})
	}
	r := Log(job.Log(runs), len(runs))
	want := []LoggedRow{
		{Found: "0.0622 mm", Efficiency: "94.5 %"}, {Found: "0.0628 mm", Efficiency: "95.3 %"}, {Found: "0.0633 mm", Efficiency: "96.2 %"},
		{Found: "0.0222 mm", Efficiency: "33.7 %"}, {}, // of no weight nothing is known
	}
	for i, row := range r.Runs {
		if row.Metal != "Oxygen-free copper" || row.Wanted != "0.0700 mm" || row.Found != want[i].Found || row.Efficiency != want[i].Efficiency ||
			(row.Range == "") != (want[i].Efficiency == "") || (row.Odd != "") != (i == 3) || (row.Wrong != "") != (i == 4) {
			t.Errorf("run %d: %+v", i, row)
		}
	}
	good := Log(job.Log(runs[:3]), len(runs)).Fits
	if len(good) != 2 || good[1].ID != "" || good[0].Runs != 3 || len(good[0].Fields) != 3 || good[0].Fields[0] != (Filled{"efficiency", "95.3 %"}) ||
		!strings.Contains(good[0].Text, "95.3 % of what the charge allows, by 3 runs") {
		t.Errorf("%+v", good)
	}
	if two := Log(job.Log(runs[:2]), len(runs)).Fits; len(two) != 1 || two[0].Runs != 2 || two[0].Fields != nil {
		t.Errorf("two runs fill %+v", two)
	}
	if none := Log(job.Log(runs[4:]), len(runs)); len(none.Fits) > 0 && none.Fits[0].Text != "No run of it counts." || none.Found != nil {
		t.Errorf("%+v", none)
	}
	wrong := job.Log(job.ReadLog("metal=copper&area=10&current=0.5&time=60"))
	if e := wrong.Runs[0].Errors; len(e) < 2 || Log(wrong, 1).Runs[0].Wrong != e[0].Text {
		t.Errorf("of %v a run says %q", e, Log(wrong, 1).Runs[0].Wrong)
	}
	if r.Aged == nil || !strings.Contains(r.Aged.Title, "copper in copper sulfate") || Log(job.Log(runs[:1]), 1).Aged != nil {
		t.Errorf("one after the other they are %+v", r.Aged)
	}
	if r.Found == nil || !strings.Contains(r.Found.Words, "Diamonds stand out: 1 of 4.") {
		t.Errorf("%+v", r.Found)
	}
}
