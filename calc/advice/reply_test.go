package advice

import (
	"math"
	"math/rand/v2"
	"net/url"
	"reflect"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/testdata"
)

func ask(fields map[string]string) Reply {
	v := url.Values{}
	for name, text := range fields {
		v.Set(name, text)
	}
	return Answer(job.Work(field.Read(v.Encode())))
}

func (r Reply) value(name string) float64 {
	for _, a := range r.Answers {
		if a.Name == name {
			return a.Value
		}
	}
	return math.NaN()
}

func decimal(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// somewhere is a value spread evenly over so many decades.
func somewhere(r *rand.Rand, least, most float64) float64 {
	return least * math.Pow(most/least, r.Float64())
}

// Each of the four, found from the other three and given back, finds them.
func TestFourInvertEachOther(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	four := map[string]string{"depth": "mm", "time": "min", "current": "A", "area": "cm2"}
	for range 2000 {
		fields := map[string]string{
			"metal": []string{"copper", "C26000", "sterling", "CuNi12Zn24", "CuSn6"}[r.IntN(5)],
			"depth": decimal(somewhere(r, 1e-6, 1e2)), "area": decimal(somewhere(r, 1e-6, 1e6)),
			"time": decimal(somewhere(r, 1e-3, 1e6)),
			"edge": decimal(somewhere(r, 1e-3, 1e3)), "extra": decimal(somewhere(r, 1e-6, 1)),
			"pieces": decimal(float64(1 + r.IntN(9))), "efficiency": "97",
		}
		fields["current"] = decimal(ask(fields).value("current"))
		if fields["current"] == "NaN" {
			t.Fatalf("no current for %v", fields)
		}
		if c, _ := strconv.ParseFloat(fields["current"], 64); c < 1e-6 || c > 1e5 {
			continue // beyond what the field takes
		}
		for name := range four {
			kept := fields[name]
			delete(fields, name)
			want, _ := strconv.ParseFloat(kept, 64)
			got := ask(fields).value(name)
			// An area is a difference: beside much extra metal and undercut it
			// loses the figures that they take.
			tolerance := 1e-9
			if name == "area" {
				tolerance = 1e-6
			}
			if !(math.Abs(got-want) <= tolerance*want) {
				t.Errorf("%s is %v, want %v, from %v", name, got, want, fields)
			}
			fields[name] = kept
		}
	}
}

// A card's line has room for 60 characters; every caution has both its forms.
func TestCautionsFitTheCard(t *testing.T) {
	raised := map[string]bool{}
	for _, fields := range []map[string]string{
		{"metal": "C17200"}, {"sheet": "18"}, {"line": "0.3", "depth": "0.2"}, {"metal": "sterling", "salt": "copper sulfate"}, {"metal": "copper", "salt": "silver nitrate"},
		{"metal": "sterling", "salt": "common salt"}, {"metal": "CuNi18Zn19Pb1", "density": "60", "depth": "1"},
		{"metal": "bronze", "density": "600", "depth": "1"}, {"metal": "silver clay"},
		{"salt": "copper sulfate", "strength": "500", "volume": "1", "coldest": "0"},
		{"salt": "silver nitrate", "strength": "20 % sat"}, {"salt": "common salt", "strength": "100"},
	} {
		for _, c := range ask(fields).Cautions {
			raised[c.Code] = true
			if n := utf8.RuneCountInString(c.Card); n == 0 || n > 60 {
				t.Errorf("%s: its card form has %d characters: %s", c.Code, n, c.Card)
			}
			if c.Text == "" || c.Level == "" {
				t.Errorf("%s has no words", c.Code)
			}
		}
	}
	for _, code := range []string{"dense", "salt-undissolved", "cold-crystals", "outside-table", "metal-guess", "wrong-bath",
		"beryllium", "gauge-meant", "line-at-risk", "nickel", "lead", "porous", "silver-nitrate", "copper-sulfate", "common-salt"} {
		if !raised[code] {
			t.Errorf("%s was never raised", code)
		}
	}
}

// A share of saturation rests on the saturated bath's density, which silver
// nitrate's table does not reach; the same bath in g/L does not.
func TestOutsideTable(t *testing.T) {
	for strength, raised := range map[string]bool{"20 % sat": true, "20": false, "300": false} {
		got := false
		for _, c := range ask(map[string]string{"salt": "silver nitrate", "strength": strength}).Cautions {
			got = got || c.Code == "outside-table"
		}
		if got != raised {
			t.Errorf("silver nitrate, %s: outside-table is raised: %v", strength, got)
		}
	}
}

// A text of 100 kB in any field is answered; what it takes is measured by bench.
func TestLongText(t *testing.T) {
	long := make([]byte, 100<<10)
	for i := range long {
		long[i] = "a1 .é%"[i%6]
	}
	for _, f := range field.Fields {
		if r := ask(map[string]string{f.Name: string(long)}); len(r.Errors) == 0 {
			t.Errorf("%s takes 100 kB without a word", f.Name)
		}
	}
}

func TestEverything(t *testing.T) {
	given := map[string]bool{}
	for _, text := range testdata.Everything {
		r := Answer(job.Work(field.Read(text)))
		for _, e := range r.Errors {
			if e.Code != field.Missing {
				t.Errorf("%s: %s", e.Field, e.Text)
			}
		}
		for _, a := range r.Answers {
			given[a.Name] = true
		}
	}
	for _, row := range field.Answers {
		if !given[row.Name] {
			t.Errorf("%s is absent", row.Name)
		}
	}
}

func BenchmarkEverything(b *testing.B) {
	for b.Loop() {
		for _, text := range testdata.Everything {
			Answer(job.Work(field.Read(text)))
		}
	}
}

// The card says of its range what the reply says of it: in common salt that is
// the charge with which copper leaves, and no common practice.
func TestCardSaysWhatItsRangeRestsOn(t *testing.T) {
	for salt, wrong := range map[string]string{"common salt": "common practice", "copper sulfate": "one charge or two"} {
		s := field.Read(url.Values{"metal": {"copper"}, "salt": {salt}, "area": {"10"}, "depth": {"0.1"}, "density": {"30"}}.Encode())
		w := job.Work(s)
		words := Draw(w).Card.Words
		for _, a := range Answer(w).Answers {
			if a.Name == "time" && (a.Range == "" || !strings.Contains(words, a.Range+", "+a.By)) {
				t.Errorf("in %s the card says %q of the range %s, %s", salt, words, a.Range, a.By)
			}
		}
		if strings.Contains(words, wrong) {
			t.Errorf("in %s the card speaks of %s: %q", salt, wrong, words)
		}
	}
}

// One set answers the same however often, and from two goroutines at once (run
// with -race).
func TestAnsweringChangesNothing(t *testing.T) {
	type answered struct {
		reply Reply
		drawn Drawings
	}
	work := func(s *field.Set) answered {
		w := job.Work(s)
		return answered{Answer(w), Draw(w)}
	}
	for _, fields := range append(testdata.Everything, "metal=copper&depth=0.2&find=depth&time=60&density=30&width=ells", "diameter=30&width=20&back=10") {
		s := field.Read(fields)
		want := work(s)
		others := make(chan answered, 2)
		for range 2 {
			go func() { others <- work(s) }()
		}
		for range 2 {
			if got := <-others; !reflect.DeepEqual(got, want) {
				t.Errorf("%s answers otherwise the second time:\n%+v\n%+v", fields, want, got)
			}
		}
	}
}

// What was read of a field stands in the reply in the field's bare unit.
func TestGiven(t *testing.T) {
	want := map[string]Read{
		"depth":    {"depth", true, 0.2, "mm", "0.200 mm"},
		"time":     {"time", true, 150, "min", "2 h 30 min"},
		"sheet":    {"sheet", true, 1.0237, "mm", "1.02 mm"},
		"keep":     {"keep", true, 40, "%", "40.0 %"},
		"strength": {"strength", true, 1, "mol/L", "1.00 mol/L"},
		"start":    {"start", true, 845, "min", "14:05"},
		"pieces":   {"pieces", true, 3, "", "3"},
		"metal":    {"metal", false, 0, "", "brass"},
		"stir":     {"stir", false, 0, "", "stirred"},
	}
	r := ask(map[string]string{"depth": "0,2 mm", "time": "2 h 30", "sheet": "18 ga", "keep": "40 %", "strength": "1 mol/L", "start": "2:05 pm",
		"pieces": "3", "metal": "brass", "stir": "Stirred", "readings": "0:00 0.3; 0:30 0.2", "width": "ells", "height": ""})
	for _, got := range r.Given {
		w := want[got.Name]
		if math.Abs(got.Value-w.Value) > 1e-4 || got.Number != w.Number || got.Unit != w.Unit || got.Text != w.Text {
			t.Errorf("%s was read as %+v, want %+v", got.Name, got, w)
		}
		delete(want, got.Name)
	}
	if len(want) > 0 {
		t.Errorf("not told: %v", want)
	}
}
