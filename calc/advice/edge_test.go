package advice

import (
	"strings"
	"testing"

	"saltbite/calc/batch"
	"saltbite/calc/circuit"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
	"saltbite/calc/trial"
)

// spread is a range as a log or a circuit gives it.
func spread(x, low, high float64) quantity.Range {
	return quantity.Range{Optional: quantity.Known(x), Low: quantity.Known(low), High: quantity.Known(high)}
}

// A drift is told where all of its range lies on one side of none. By the definition of
// a range that holds in 95 of 100 cases.
func TestDriftInWords(t *testing.T) {
	for _, x := range []struct {
		drift quantity.Range
		want  string
	}{
		{quantity.Range{}, ""},
		{spread(-0.02, -0.03, -0.01), " It falls by about 2.00 %"},
		{spread(-0.02, -0.04, 0), ""},
		{spread(-0.02, -0.06, 0.02), ""},
		{spread(0.02, -0.02, 0.06), ""},
		{spread(0.02, 0, 0.04), ""},
		{spread(0.02, 0.01, 0.03), " It rises by about 2.00 %"},
	} {
		if got := driftWords(x.drift); !strings.HasPrefix(got, x.want) || (got == "") != (x.want == "") {
			t.Errorf("%v: %q", x.drift, got)
		}
	}
}

// Of an undercut nothing is said that no run measured; three runs fill its field, kept
// to what the field takes.
func TestUndercutInWords(t *testing.T) {
	row := field.Undercut.Row()
	for _, x := range []struct {
		runs        int
		ratio       float64
		said, fills string
	}{
		{0, 0, "", ""},
		{1, 0.6, "from 1 run whose", ""},
		{2, 0.6, "from 2 runs whose", ""},
		{3, 0.6, "Its undercut is 0.600, between 0.500 and 0.700", "0.600"},
		{3, row.Max + 1, "from 3 runs", quantity.PrintNumber(row.Max)},
	} {
		said, fills := undercutWords(trial.Fit{Measured: x.runs, Undercut: spread(x.ratio, x.ratio-0.1, x.ratio+0.1)})
		if !strings.Contains(said, x.said) || (said == "") != (x.said == "") || fills != x.fills {
			t.Errorf("%d runs: %q fills %q", x.runs, said, fills)
		}
	}
}

// An answer carries what three runs say, as near as its fields take the ends: none where
// the mean would lie outside them.
func TestWhatIsCarried(t *testing.T) {
	row := field.EfficiencyLow.Row()
	least, most := quantity.Of(row.Min, row.Limit), quantity.Of(row.Max, row.Limit)
	for _, x := range []struct {
		used            int
		mean, low, high float64
		fills           string
	}{
		{2, 0.95, 0.9, 1, ""},
		{3, 0.95, 0.9, 1, "95.0 % 90.0 % 100 %"},
		{3, 0.95, 0, 9, "95.0 % " + share(least) + " " + share(most)},
		{3, least, least - 0.1, 1, share(least) + " " + share(least) + " 100 %"},
		{3, most, 0.9, most + 0.1, share(most) + " 90.0 % " + share(most)},
		{3, least - 0.01, 0, 1, ""},
		{3, most + 0.01, 0.9, most + 1, ""},
	} {
		var texts []string
		for _, f := range carried(trial.Fit{Used: x.used, Next: spread(x.mean, x.low, x.high)}) {
			texts = append(texts, f.Text)
		}
		if got := strings.Join(texts, " "); got != x.fills {
			t.Errorf("%+v fills %q", x, got)
		}
	}
}

// The last rows of a log are told; a run without a prediction or a depth is not drawn,
// one that something keeps from being used tells no efficiency, and a pool stands from
// three runs on.
func TestRowsOfALog(t *testing.T) {
	run := func(predicted, found float64, errors ...field.Error) job.LoggedRun {
		return job.LoggedRun{LogRun: job.ReadLog("depth=0.1")[0], Run: trial.Run{Predicted: predicted, Found: found},
			Judged: trial.Judged{Range: spread(0.9, 0.8, 1)}, Errors: errors}
	}
	log := job.Logged{Runs: []job.LoggedRun{run(1e-4, 1e-4), run(0, 1e-4), run(1e-4, 0), run(1e-4, 2e-4, field.Error{Text: "No."}, field.Error{Text: "Never."})},
		Pool: []job.LogPool{{Salt: "one", Fit: trial.Fit{Used: 2}}, {Salt: "two", Fit: trial.Fit{Used: 3}}}}
	r := Log(log, 3)
	if len(r.Runs) != 3 || r.Runs[0].Found == "" || r.Runs[1].Found != "" || r.Runs[2].Wrong != "No." || r.Runs[2].Efficiency != "" || r.Runs[0].Efficiency != "90.0 %" || r.Runs[0].Range != "80.0 % to 100 %" {
		t.Errorf("%+v", r.Runs)
	}
	drawn := 0
	for _, s := range r.Found.Shapes {
		if s.Role == drawing.Reading {
			drawn++
		}
	}
	if drawn != 2 || len(r.Fits) != 1 || r.Fits[0].Salt != "two" || r.Aged != nil {
		t.Errorf("%d runs are drawn, fits are %+v", drawn, r.Fits)
	}
}

// Of the runs of a metal those are drawn one after the other that count and are known;
// of a drift that is not sure no line is drawn.
func TestRunsOneAfterTheOther(t *testing.T) {
	fit := job.LogFit{Metal: job.Work(field.Read("metal=copper")).Metal.Reading.Metal, Salt: "copper sulfate", Drift: spread(0.01, -0.01, 0.03)}
	fit.Told = []trial.Run{{Efficiency: 0.9}, {Efficiency: 0.5, Skip: true}, {Efficiency: 0.95}, {Efficiency: 0.4}}
	fit.Runs = []trial.Judged{{Range: spread(0.9, 0.8, 1)}, {Range: spread(0.5, 0.4, 0.6)}, {Range: spread(0.95, 0.9, 1), Odd: trial.Above}, {}}
	a := aged(fit)
	if len(a.Runs) != 2 || a.Runs[0] != (drawing.AgeingRun{Efficiency: 0.9}) || a.Runs[1] != (drawing.AgeingRun{Efficiency: 0.95, Odd: true}) || a.Slope != 0 {
		t.Errorf("%+v", a)
	}
	if fit.Drift = spread(0.02, 0.01, 0.03); aged(fit).Slope != 0.02 || !strings.HasPrefix(aged(fit).Trend, "It rises") {
		t.Errorf("%+v", aged(fit))
	}
	if row := fitRow(fit); row.Text != "No run of it counts." || row.Fields != nil {
		t.Errorf("%+v", row)
	}
}

// plan is a class whose plan takes so many minutes.
func plan(minutes float64, fields string) classView {
	set := field.Read(fields)
	return classView{job.Class{Fields: set, Plan: batch.Plan{End: 60 * minutes}}, set.Printer()}
}

// Marks of a timetable stand at whole steps up to four fifths of it, that one too; by
// the clock they go on after midnight from 0:00.
func TestMarksOfTheTimetable(t *testing.T) {
	for _, x := range []struct {
		minutes float64
		start   string
		want    string
	}{
		{20, "", "0:00 0:05 0:10 0:15"},
		{20.1, "", "0:00 0:10"},
		{25, "", "0:00 0:10 0:20"},
		{60, "", "0:00 0:15 0:30 0:45"},
		{600, "start=22:30", "22:30 2:30 6:30"},
		{300, "start=23:00", "23:00 1:00 3:00"},
		{300, "start=22:00", "22:00 0:00 2:00"},
	} {
		var texts []string
		for _, tick := range plan(x.minutes, x.start).ticks() {
			texts = append(texts, tick.Text)
		}
		if got := strings.Join(texts, " "); got != x.want {
			t.Errorf("%v min, %q: %s, not %s", x.minutes, x.start, got, x.want)
		}
	}
	if ticks := plan(25, "").ticks(); ticks[1].At != 40 || ticks[2].At != 80 {
		t.Errorf("%v", ticks)
	}
}

// What fits a session is offered where there is such a thing, in the number of things.
func TestInsteadOfALongClass(t *testing.T) {
	v := plan(60, "")
	if got := v.instead(); got != nil {
		t.Errorf("nothing fits, and %q is said", got)
	}
	v.Instead = job.Instead{Supplies: 1, End: 3600, InTime: 1, Pieces: 1, Series: job.Series{Cells: 1, End: 1800, Volts: 3, One: 2}}
	v.Deepest = quantity.Known(1e-4)
	if got, want := strings.Join(v.instead(), " "), "With 1 supplies all of it takes 1 h. With 1 cells in series, a tank each, all of it takes 30 min. It costs volts: about 3.0 V in the place of 2.0 V. "+
		"All pieces fit at 0.100 mm deep, in the same loads. As it is, 1 of 1 piece is done in time. Leave the rest for another day."; got != want {
		t.Errorf("%q", got)
	}
	v.Instead = job.Instead{InTime: 2, Pieces: 3}
	if got := strings.Join(v.instead(), " "); !strings.Contains(got, "2 of 3 pieces are done") {
		t.Errorf("%q", got)
	}
}

// Pieces whose ends lie less than a hundredth of the load apart are lifted in one step,
// others in steps of their own, the supply turned down between them; each step knows its load.
func TestPiecesLiftedTogether(t *testing.T) {
	for other, want := range map[string]string{
		"0.0995": "Hang Leaf and Star. Switch on at 0.600 A|Lift Star and Leaf, switch off",
		"0.098":  "Hang Leaf and Star. Switch on at 0.600 A|Lift Star, turn down to 0.300 A|Lift Leaf, switch off",
	} {
		rows := []field.Named{{Name: "Leaf", Set: field.Read(oneCopper + "depth=0.1")}, {Name: "Star", Set: field.Read(oneCopper + "depth=" + other)}}
		m := Class(job.Teach(rows, field.Read("amps=0.6")))
		var texts []string
		for _, s := range m.Steps {
			texts = append(texts, s.Text)
		}
		if got := strings.Join(texts, "|"); strings.ReplaceAll(got, "Star and Leaf", "Leaf and Star") != strings.ReplaceAll(want, "Star and Leaf", "Leaf and Star") {
			t.Errorf("%s mm: %q", other, got)
		}
		// The timetable says of a piece what its step says.
		star, leaf := m.Loads[0].Pieces[0].Text, m.Loads[0].Pieces[1].Text
		if other == "0.098" {
			star = strings.Replace(star, "down to 0.300 A", "switch off", 1)
		}
		if !strings.HasSuffix(star, ", switch off") || !strings.HasSuffix(leaf, ", switch off") || (star == leaf) != (other == "0.0995") {
			t.Errorf("%s mm: %q and %q", other, star, leaf)
		}
	}
	m := leaves("amps=0.5&start=22:00")
	for i, s := range m.Steps {
		if s.Load != i/2+1 || i > 0 && s.At.Value < m.Steps[i-1].At.Value {
			t.Errorf("step %d: %+v", i, s)
		}
	}
}

// Volts are told of a class whose tank is; one that can't be planned calls for nothing.
func TestVoltsOfAClass(t *testing.T) {
	for fields, want := range map[string]bool{"amps=0.5": false, "amps=0.5&gap=60&cathode=50+cm2&strength=150&volume=2": true} {
		told := false
		for _, a := range leaves(fields).Answers {
			told = told || a.Name == "cellVolts"
		}
		if told != want {
			t.Errorf("%s: its volts are told: %v", fields, told)
		}
	}
	if m := Class(job.Teach(nil, field.Read("amps=0.5&volts=40"))); m.Cautions != nil {
		t.Errorf("%+v", m)
	}
}

// A resistor has the article that it is spoken with.
func TestArticleOfAResistor(t *testing.T) {
	for ohms, want := range map[float64]string{1.8: "a 1.8", 8.2: "an 8.2", 82: "an 82", 18: "an 18 ", 15: "a 15 ", 10: "a 10 "} {
		if got := resistorWords(circuit.Resistor{Ohms: ohms, Watts: 2}); !strings.HasPrefix(got, want) {
			t.Errorf("%v ohm: %q", ohms, got)
		}
	}
}

// What lacks in volts counts the highest that the cell may take, and is grave where even
// its usual volts lack: 2 V, up to 2.5, and 0.5 on the cable.
func TestLackingVoltsFromBothSides(t *testing.T) {
	for volts, want := range map[string]struct {
		level Level
		said  string
	}{"3": {}, "2.9": {Note, "may need 3.0 V"}, "2.5": {Note, "may need 3.0 V"}, "2.4": {Warn, "may need 2.5 V"}} {
		w := job.Work(field.Read("volts=" + volts))
		w.Circuit.CellVolts, w.Circuit.WireDrop = spread(2, 1.5, 2.5), quantity.Known(0.5)
		v := viewOf(&w)
		var list raised
		v.warnOfLackingVolts(&list)
		if want.level == "" && list != nil || want.level != "" && (len(list) != 1 || list[0].Level != want.level || !strings.Contains(list[0].Text, want.said)) {
			t.Errorf("%s V: %+v", volts, list)
		}
	}
}

// A cathode is too small from half of its limit on, and gravely from all of it; a cable
// beyond 5 A/mm2 (common practice, no source).
func TestLimitsOfCathodeAndCable(t *testing.T) {
	for density, want := range map[float64]Level{50: "", 51: Note, 100: Note, 101: Warn} {
		w := job.Work(field.Read("cathode=10"))
		w.Circuit.CathodeDensity, w.Limits.Cathode.Optional = quantity.Known(density), quantity.Known(100)
		v := viewOf(&w)
		var list raised
		if v.warnOfCathode(&list); levelOf(Reply{Cautions: list}, "cathode-limit") != want {
			t.Errorf("%v of 100 A/m2: %+v", density, list)
		}
	}
	for current, want := range map[float64]int{5: 0, 5.01: 1} {
		w := job.Work(field.Read(""))
		w.Circuit.WireLimit, w.Bite.Current = quantity.Known(5), quantity.Known(current)
		v := viewOf(&w)
		var list raised
		if v.warnOfThinWire(&list); len(list) != want {
			t.Errorf("%v A on 5: %+v", current, list)
		}
	}
}

// The causes of what is seen stand on the back of the card, under what is seen in words.
func TestBackTellsItsCauses(t *testing.T) {
	w := job.Work(field.Read(oneCopper + "depth=0.1&seen=deep"))
	back := Draw(w).Back
	if back == nil {
		t.Fatal("there is no back")
	}
	for _, c := range Answer(w).Causes {
		if !strings.Contains(back.Words, c.Text) || !strings.Contains(back.Words, c.Do) {
			t.Errorf("%q lacks %+v", back.Words, c)
		}
	}
	if back := Draw(job.Work(field.Read(oneCopper + "depth=0.1"))).Back; back != nil {
		t.Errorf("nothing is seen, and it says %q", back.Words)
	}
}

// What a range rests on is told of depth and time only, and there by whose it is.
func TestWhatRangesRestOn(t *testing.T) {
	const own, two, fine = "from runs on this bench", "as copper leaves with one charge or two", "common practice; a fine pattern may take up to a sixth more"
	for fields, want := range map[string]string{
		oneCopper + "depth=0.1&current=0.3":                                                  fine,
		oneCopper + "depth=0.1&current=0.3&edge=100":                                         "",
		"metal=copper&depth=0.1&density=30":                                                  "",
		oneCopper + "depth=0.1&current=0.3&salt=common+salt":                                 two,
		oneCopper + "depth=0.1&current=0.3&efficiency=95&efficiencyLow=90&efficiencyHigh=99": own,
	} {
		told := false
		for _, a := range askText(fields).Answers {
			if a.Name == "time" {
				told = true
				if a.Range == "" || a.By != want {
					t.Errorf("%s: %q rests on %q, not on %q", fields, a.Range, a.By, want)
				}
			} else if a.Name != "depth" && a.By != "" {
				t.Errorf("%s: %s rests on %q", fields, a.Name, a.By)
			}
		}
		if !told {
			t.Errorf("%s: there is no time", fields)
		}
	}
}

// Any crystals that drop are told, in all or by the litre; a hanging wire is from under half
// of its thickness on.
func TestCrystalsAndHangersFromTheLeast(t *testing.T) {
	for _, x := range []struct {
		each, all float64
		want      int
	}{{0, 0, 0}, {0.5, 0, 1}, {0, 0.5, 1}} {
		w := job.Work(field.Read("salt=copper+sulfate"))
		w.Mix.CrystalsEach, w.Standing.Crystals = quantity.Known(x.each), quantity.Known(x.all)
		v := viewOf(&w)
		var list raised
		if v.warnOfMix(&list); len(list) != x.want {
			t.Errorf("%+v: %+v", x, list)
		}
	}
	for left, want := range map[float64]bool{0.6e-3: false, 0.5e-3: false, 0.49e-3: true, 0: true} {
		w := job.Work(field.Read("hanger=1"))
		w.Effects.HangerLeft = quantity.Known(left)
		v := viewOf(&w)
		var list raised
		if v.warnOfHanger(&list); (levelOf(Reply{Cautions: list}, "hanger") == Warn) != want || strings.Contains(list.texts(), "eaten through") != (left == 0) {
			t.Errorf("%v m of 1 mm: %+v", left, list)
		}
	}
}

// texts are those of all cautions.
func (r raised) texts() (all string) {
	for _, c := range r {
		all += c.Text
	}
	return all
}

// An estimate has a range where its ends differ.
func TestRangeOfAnEstimate(t *testing.T) {
	if f := percent("efficiency", spread(0.95, 0.9, 1)); f.Range != "90.0 % to 100 %" || f.Value != 95 || *f.Low != 90 || *f.High != 100 {
		t.Errorf("%+v", f)
	}
	if f := percent("efficiency", spread(0.95, 0.95, 0.95)); f.Range != "" || f.Low != nil || f.High != nil {
		t.Errorf("%+v", f)
	}
}
