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
		Runs                  int
		Fields                map[string]string
	}
	Found *struct {
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
	if len(r.Fits) != 2 || r.Fits[0].Runs != 3 || r.Fits[0].Salt != "copper sulfate crystals" || r.Fits[1].Runs != 1 {
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
