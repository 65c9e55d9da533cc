package job

import (
	"slices"
	"testing"

	"saltbite/calc/field"
)

// oneRun is copper, 10 cm2, half an ampere for an hour: 0.5927 g at 100 % (Faraday's law).
const oneRun = plate + "current=0.5&time=60&before=24.6+g&"

// A log's text, its table and back: each run keeps its number, its time and its note,
// which are no fields, and a table has the columns that some run fills.
func TestLogGoesRound(t *testing.T) {
	runs := ReadLog("run=7&ended=2026-11-27+14:05&note=cold+day&metal=copper&depth=0.1\n\nrun=8&metal=brass&area=9")
	if r := runs[0]; r.ID != "7" || r.Ended != "2026-11-27 14:05" || r.Note != "cold day" || r.Text(field.Depth) != "0.1" || len(r.Errors()) > 0 {
		t.Errorf("%+v with %v", r, r.Errors())
	}
	table := LogTable(runs)
	if !slices.Equal(slices.Sorted(slices.Values(table.Columns)), []string{"area", "depth", "ended", "metal", "note", "run"}) {
		t.Errorf("the columns are %v", table.Columns)
	}
	if len(table.Rows) != 2 || len(table.Rows[1]) != 6 || table.Rows[0][2] != "cold day" {
		t.Errorf("%+v", table.Rows)
	}
}

// A spreadsheet adds what is new and changes what it has of a run; a column of no field
// is named and left out, and so is a line that holds nothing else.
func TestMergeLog(t *testing.T) {
	runs := ReadLog("run=7&metal=copper&depth=0.1")
	m := MergeLog(runs, "run,ended,note,metal,depth,mood\n7,,,copper,0.2,good\n9,yesterday,new, brass ,0.3,bad\n,,,,,lonely\n")
	if m.Added != 1 || m.Changed != 1 || !slices.Equal(m.Strange, []string{"mood"}) || len(m.Damaged) > 0 || len(m.Runs) != 2 {
		t.Fatalf("%+v", m)
	}
	if a, b := m.Runs[0], m.Runs[1]; a.ID != "7" || a.Text(field.Depth) != "0.2" || b.ID != "9" || b.Ended != "yesterday" || b.Note != "new" || b.Text(field.Metal) != "brass" {
		t.Errorf("%+v, %+v", a, b)
	}
	if again := MergeLog(m.Runs, "run,depth\n9,0.3\n"); again.Added != 0 || again.Changed != 0 || len(again.Runs) != 2 {
		t.Errorf("the same again: %+v", again)
	}
	if short := MergeLog(nil, "run,depth\n9\n"); len(short.Damaged) != 1 || len(short.Runs) != 0 {
		t.Errorf("a line too short: %+v", short)
	}
}

// The runs of one metal in one salt are judged together, the metal of the most runs
// first, and each run says what the fit holds of it.
func TestLogFits(t *testing.T) {
	run := func(fields string) LogRun { return LogRun{Set: field.Read(fields)} }
	const silver = "metal=fine+silver&area=10&current=0.5&time=60&before=24.6+g&"
	l := Log([]LogRun{run(silver + "after=22.6+g"), run(oneRun + "after=24.04+g"), run(oneRun + "after=24.4+g"), run(oneRun + "after=24.035+g"),
		run(oneRun), run(oneRun + "after=24.03+g&salt=common+salt")})
	if len(l.Fits) != 3 || l.Fits[0].Metal.Name != "Oxygen-free copper" || l.Fits[0].Used != 3 || l.Fits[1].Used != 1 || l.Fits[2].Used != 1 {
		t.Fatalf("%+v", l.Fits)
	}
	if l.Fits[1].Metal.Name >= l.Fits[2].Metal.Name {
		t.Errorf("of one run each, %s comes before %s", l.Fits[1].Metal.Name, l.Fits[2].Metal.Name)
	}
	for i, efficiency := range map[int]float64{1: 0.56, 2: 0.2, 3: 0.565} {
		if got := l.Runs[i].Judged.SI; !near(got, efficiency*1e-3/(1800*cu2)) {
			t.Errorf("run %d is judged as %v", i, got)
		}
	}
	if l.Runs[0].Judged.SI < 0.98 || l.Runs[0].Judged.SI > 1.01 { // 2.0 of 2.012 g of silver
		t.Errorf("silver: %+v", l.Runs[0].Judged)
	}
	if r := l.Runs[4]; len(r.Errors) == 0 || r.Judged.Known() || r.Metal == nil {
		t.Errorf("without a weight after: %+v", r)
	}
	if r := l.Runs[5]; r.Salt == l.Runs[1].Salt || len(r.Errors) > 0 {
		t.Errorf("in salt water: %+v", r)
	}
}

// What fits a session: as many pieces as are lifted in time, exactly at its end too, and
// as few more supplies as do it. A piece alone takes 151.8 min, by Faraday's law, and 10 min
// are between two.
func TestInstead(t *testing.T) {
	const pair = plate + "depth=0.1&pieces=4&"
	for _, x := range []struct {
		session                 string
		supplies, inTime, whole int
	}{
		{"", 0, 0, 0}, // without a session nothing is too long
		{"session=150", 0, 0, 4},
		{"session=153", 4, 1, 4},  // 151.8 min: one after the other, or all at once
		{"session=320", 2, 2, 4},  // 313.7 min are two of them
		{"session=1000", 0, 0, 0}, // 637.3 min: all fit
	} {
		c := teach("amps=0.3&"+x.session, pair)
		if i := c.Instead; c.TooLong != (x.whole > 0) || i.Supplies != x.supplies || i.InTime != x.inTime || i.Pieces != x.whole {
			t.Errorf("%s: %+v, too long %v", x.session, i, c.TooLong)
		}
	}
}

// What is wrong with what stands for all rows is told of none of them: its row is -1.
func TestMistakesOfNoRow(t *testing.T) {
	for _, fields := range []string{"metal=unobtainium", "metal=copper&salt=lemonade", "resolution=some", "colour=red"} {
		tried := Try(nil, field.Read(fields))
		if len(tried.Errors) == 0 {
			t.Errorf("%s is taken without a word", fields)
		}
		for _, e := range tried.Errors {
			if e.Row != -1 {
				t.Errorf("%s: row %d, %v", fields, e.Row, e)
			}
		}
	}
}

// Of a run's mistakes the first is that of the field that stands first, each time; one of
// what comes after the bite is among them.
func TestLogMistakes(t *testing.T) {
	for range 20 { // they once came in any order
		l := Log(ReadLog("run=1&depth=x&area=abc&current=y&volume=-2&metal=steel&elapsed=1+h&before=3&after=2"))
		var at []string
		for _, e := range l.Runs[0].Errors {
			at = append(at, e.Field)
		}
		if want := []string{"area", "current", "volume", "metal"}; !slices.Equal(at, want) {
			t.Fatalf("the mistakes are at %v, want %v", at, want)
		}
	}
	l := Log(ReadLog("metal=copper&area=x&elapsed=1+h&current=0.3&before=3&after=2&saltInHand=100&waterInHand=1+L&volume=2"))
	if e := l.Runs[0].Errors; len(e) < 2 || e[0].Field != "area" || e[1].Code != field.Contradiction {
		t.Errorf("the mistakes are %v", e)
	}
}

// A run of what must not be etched says so in a sentence, and counts for nothing, whatever
// else is given or not. A class is told the same.
func TestLogBarred(t *testing.T) {
	const rest = "&area=10&current=0.5&time=60&before=24.6+g&after=24.06+g"
	for _, x := range []struct{ fields, at, text string }{
		{"metal=beryllium+copper", "metal", "“beryllium copper” holds beryllium, and must not be etched in any bath. Use another metal."},
		{"metal=fine+silver&salt=copper+sulfate", "salt", "“fine silver” must not be etched in copper sulfate crystals. Correct the metal or the salt."},
		{"metal=copper&salt=silver+nitrate", "salt", "“copper” must not be etched in silver nitrate. Correct the metal or the salt."},
		{"metal=sterling&salt=common+salt", "salt", "“sterling” must not be etched in common salt. Correct the metal or the salt."},
	} {
		for _, fields := range []string{x.fields + rest, x.fields} {
			l := Log(ReadLog(fields))
			if r := l.Runs[0]; len(r.Errors) != 1 || r.Errors[0].Field != x.at || r.Errors[0].Text != x.text || r.Judged.Known() || len(l.Fits) > 0 {
				t.Errorf("%s: %+v, %d fits", fields, r.Errors, len(l.Fits))
			}
		}
		if c := teach("amps=2", x.fields+"&area=10&depth=0.1"); len(c.Errors) != 1 || c.Errors[0].Row != 0 || c.Errors[0].Text != x.text {
			t.Errorf("a class of %s: %+v", x.fields, c.Errors)
		}
	}
}
