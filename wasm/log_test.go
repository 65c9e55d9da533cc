//go:build long || !js

package main

import (
	"encoding/json"
	"fmt"
	"net/url"
	"strings"
	"testing"
)

type logReply struct {
	Csv            string
	Added, Changed int
	Faults         []string
	Runs           []struct {
		Run, Ended, Note                              string
		Fields                                        map[string]string
		Metal, Salt, Found, Wanted, Efficiency, Range string
		Odd, Wrong                                    string
	}
	Fits []struct {
		ID, Metal, Salt, Text string
		From, Undercut, Ratio string
		Runs                  int
		Fields                map[string]string
	}
	Strip struct {
		Text   string
		Fields map[string]string
	}
	Found, Aged *struct {
		Words  string
		Shapes []struct{ Role string }
	}
}

func logged(t testing.TB, text string) (r logReply) {
	t.Helper()
	reply := logOf(text)
	if err := json.Unmarshal([]byte(reply), &r); err != nil {
		t.Fatalf("%v in %s", err, reply)
	}
	return r
}

// The three runs of TestTrial, one that can't be used, and one in another salt.
const (
	ofCopper  = "&metal=copper&area=10+cm2&current=0.3&elapsed=2+h&depth=0.1&resolution=0.001&before=20&after="
	threeRuns = "run=a&ended=2026-11-01+10:00" + ofCopper + "19.310\nrun=b&ended=2026-11-02+10:00&note=%3D1%2B1" + ofCopper +
		"19.300\nrun=c&ended=2026-11-03+10:00" + ofCopper + "19.290"
)

func TestLogFits(t *testing.T) {
	r := logged(t, "do=fit\n"+threeRuns+"\nrun=d&metal=copper&area=10\nrun=e&salt=common+salt"+ofCopper+"18.9")
	if len(r.Fits) != 3 || r.Fits[0].Runs != 3 || r.Fits[0].Salt != "copper sulfate crystals" || r.Fits[1].Runs != 1 {
		t.Fatalf("the fits are %+v", r.Fits)
	}
	// By hand, see TestTrial: the mean 98.373 %, the next run 91.39 to 105.36 %.
	for name, want := range map[string]string{"efficiency": "98.4 %", "efficiencyLow": "91.4 %", "efficiencyHigh": "105 %"} {
		if got := r.Fits[0].Fields[name]; got != want {
			t.Errorf("%s is %q, want %q", name, got, want)
		}
	}
	if len(r.Fits[1].Fields) != 0 {
		t.Errorf("a single run fills %v", r.Fits[1].Fields)
	}
	// 0.71 g of copper of 8.92 g/cm3 (the catalogue) over 10 cm2 is 0.0796 mm.
	if run := r.Runs[2]; run.Found != "0.0796 mm" || run.Wanted != "0.100 mm" || run.Efficiency != "99.8 %" || run.Odd != "" || run.Wrong != "" {
		t.Errorf("the third run is %+v", run)
	}
	if r.Runs[3].Wrong == "" || r.Runs[3].Efficiency != "" {
		t.Errorf("a run without a current or weights is %+v", r.Runs[3])
	}
	// In common salt copper leaves with one charge: 1.1 g of 1.42 g.
	if run := r.Runs[4]; !strings.Contains(run.Efficiency, "77.3 %") || run.Odd != "" {
		t.Errorf("the run in common salt is %+v", run)
	}
	if r.Found == nil || strings.Count(fmt.Sprint(r.Found.Shapes), "reading") != 4 {
		t.Errorf("the drawing is %+v", r.Found)
	}
}

// What each run tells is said of the last ones, as many as are asked for; the fit is of all.
func TestLogRows(t *testing.T) {
	r := logged(t, "do=fit&rows=1\n"+threeRuns)
	if len(r.Runs) != 1 || r.Runs[0].Efficiency != "99.8 %" || r.Fits[0].Runs != 3 {
		t.Errorf("of the last run %+v, of %+v", r.Runs, r.Fits)
	}
}

// A metal with fewer than three runs is given those of all metals in its salt, which
// are named.
func TestLogPoolsMetals(t *testing.T) {
	brass := strings.ReplaceAll(threeRuns[:strings.LastIndex(threeRuns, "\n")], "metal=copper", "metal=cartridge+brass")
	leftOut := "\nrun=z&use=no" + ofCopper + "19.3"
	r := logged(t, "do=fit\n"+threeRuns+"\n"+brass+leftOut)
	if len(r.Fits) != 3 || r.Fits[1].Runs != 2 || len(r.Fits[1].Fields) != 0 || r.Fits[2].ID != "" || r.Fits[2].Runs != 5 || r.Fits[2].Fields["efficiency"] == "" {
		t.Fatalf("the fits are %+v", r.Fits)
	}
	if got, want := r.Fits[2].From, "from 2 runs with cartridge brass 70/30 and 3 with electrolytic tough pitch copper on this bench"; got != want {
		t.Errorf("the pool is %q, want %q", got, want)
	}
	if got := r.Fits[0].From; got != "from 3 runs on this bench" {
		t.Errorf("copper's own runs are %q", got)
	}
	if r := logged(t, "do=fit\n"+brass+leftOut); len(r.Fits) != 2 {
		t.Errorf("two runs, and one that is left out, are pooled: %+v", r.Fits)
	}
}

// By hand: 0.69, 0.70, 0.71 g of 8.92 g/cm3 over 10 cm2 are 0.077354, 0.078475,
// 0.079596 mm; a line that lost 0.06, 0.08, 0.10 mm makes 0.38783, 0.50971, 0.62817
// of them: mean 0.50857, s 0.12017, x 4.302653 / sqrt 3 is 0.29853.
func TestLogLearnsTheUndercut(t *testing.T) {
	lines := strings.Split(threeRuns, "\n")
	measured := func(n int) logReply {
		text := "do=fit"
		for i, line := range lines {
			if text += "\n" + line; i < n {
				text += "&line=0.5&lineFound=" + []string{"0.44", "0.42", "0.40"}[i]
			}
		}
		return logged(t, text)
	}
	if fit := measured(3).Fits[0]; fit.Ratio != "0.509" || !strings.Contains(fit.Undercut, "0.509, between 0.210 and 0.807") || !strings.Contains(fit.Undercut, "from 3 runs") {
		t.Errorf("of three runs %q, %q", fit.Undercut, fit.Ratio)
	}
	if fit := measured(2).Fits[0]; fit.Ratio != "" || !strings.Contains(fit.Undercut, "0.449, from 2 runs") {
		t.Errorf("of two runs %q, %q", fit.Undercut, fit.Ratio)
	}
	if fit := measured(0).Fits[0]; fit.Undercut != "" {
		t.Errorf("of no run %q", fit.Undercut)
	}
}

// A bath that ages: 98, 96, 94, 92 % of 0.7113 g.
func TestLogDrawsItsCourse(t *testing.T) {
	text := "do=fit"
	for i, after := range []string{"19.303", "19.317", "19.331", "19.346"} {
		text += fmt.Sprintf("\nrun=%d", i) + ofCopper + after
	}
	r := logged(t, text)
	if r.Aged == nil || strings.Count(fmt.Sprint(r.Aged.Shapes), "reading") != 4 || !strings.Contains(r.Aged.Words, "the bath ages") {
		t.Errorf("the drawing is %+v", r.Aged)
	}
	if r := logged(t, "do=fit\n"+threeRuns); r.Aged == nil || !strings.Contains(r.Aged.Words, "neither falls nor rises") {
		t.Errorf("of three runs %+v", r.Aged)
	}
	if r := logged(t, "do=fit\nrun=a"+ofCopper+"19.3"); r.Aged != nil {
		t.Errorf("one run has a course: %+v", r.Aged)
	}
}

// The strip of TestPlanStrip in words, and answered as the job that it becomes.
func TestLogPlansAStrip(t *testing.T) {
	ask := func(fields string) logReply { return logged(t, "do=strip&"+fields) }
	r := ask("metal=copper&density=30&area=99&depth=3&find=time&resolution=0.01&strength=250+g/L")
	for _, part := range []string{"3.33 cm²", "12.9 mm square", "0.100 A for 1 h 42 min", "about 0.202 g", "reads to 0.01 g", "within 5 %"} {
		if !strings.Contains(r.Strip.Text, part) {
			t.Errorf("%q does not say %q", r.Strip.Text, part)
		}
	}
	fields := url.Values{}
	for name, text := range r.Strip.Fields {
		fields.Set(name, text)
	}
	if reply := answer(fields.Encode()); !strings.Contains(reply, `"errors":[]`) || !strings.Contains(reply, `"found":["depth"]`) {
		t.Errorf("%v is answered by %s", r.Strip.Fields, reply)
	}
	if fields.Get("strength") == "" || fields.Has("depth") || fields.Has("find") {
		t.Errorf("the strip's job is %v", fields)
	}
	for fields, said := range map[string]string{
		"": "Type the metal", "metal=copper&resolution=some": "“some”", "metal=silver&salt=copper+sulfate": "is not etched",
		"metal=copper&resolution=10+g&amps=1": "more current than this supply gives",
	} {
		if r := ask(fields); !strings.Contains(r.Strip.Text, said) || len(r.Strip.Fields) > 0 {
			t.Errorf("%q is told %+v, want %q", fields, r.Strip, said)
		}
	}
}

// An answer carries the range that the log gives it.
func TestLogFillsAnAnswer(t *testing.T) {
	fields := url.Values{"metal": {"copper"}, "area": {"10"}, "depth": {"0.1"}, "current": {"0.3"}}
	for name, text := range logged(t, "do=fit\n"+threeRuns).Fits[0].Fields {
		fields.Set(name, text)
	}
	reply := answer(fields.Encode())
	if !strings.Contains(reply, `"by":"from runs on this bench"`) || !strings.Contains(reply, `"errors":[]`) {
		t.Errorf("the answer is %s", reply)
	}
}

// A table that is written and read again changes nothing; one that a spreadsheet has
// changed does, and what it can't be read of is said.
func TestLogTable(t *testing.T) {
	csv := logged(t, "do=csv\n"+threeRuns).Csv
	if !strings.HasPrefix(csv, "run,ended,note,metal,area,depth,current,before,after,resolution,elapsed\r\n") || !strings.Contains(csv, "'=1+1") {
		t.Fatalf("the table is %s", csv)
	}
	merge := func(runs, csv string) logReply { return logged(t, "do=merge&csv="+url.QueryEscape(csv)+"\n"+runs) }
	if r := merge(threeRuns, csv); r.Added != 0 || r.Changed != 0 || len(r.Runs) != 3 || r.Runs[1].Note != "=1+1" || r.Runs[2].Fields["after"] != "19.290" {
		t.Errorf("the same table again gives %+v", r)
	}
	if r := merge("", csv); r.Added != 3 || len(r.Runs) != 3 || r.Runs[0].Ended != "2026-11-01 10:00" || r.Runs[0].Fields["area"] != "10 cm2" {
		t.Errorf("into an empty log comes %+v", r)
	}
	changed := strings.Replace(csv, "19.310", "19.320", 1) + "too,few\r\n"
	if r := merge(threeRuns, changed); r.Changed != 1 || r.Added != 0 || r.Runs[0].Fields["after"] != "19.320" ||
		len(r.Faults) != 1 || !strings.HasPrefix(r.Faults[0], "Line 5, “too,few”") {
		t.Errorf("a changed table gives %+v", r)
	}
	semicolons := "metal;area;weather\r\nbrass;0,5;rain\r\n"
	if r := merge("", semicolons); r.Added != 1 || r.Runs[0].Fields["area"] != "0.5" || len(r.Faults) != 1 || !strings.Contains(r.Faults[0], "weather") {
		t.Errorf("a table with semicolons gives %+v", r)
	}
}

func BenchmarkLogOf5000(b *testing.B) {
	var text strings.Builder
	text.WriteString("do=fit")
	for i := range 5000 {
		fmt.Fprintf(&text, "\nrun=%d%s%g", i, ofCopper, 19.3+0.0001*float64(i%100))
	}
	for b.Loop() {
		logged(b, text.String())
	}
}
