package advice

import (
	"strings"
	"testing"

	"saltbite/calc/field"
	"saltbite/calc/job"
)

// A strip of scrap in words and as a job. By hand: 0.2 g of copper, twenty times what a
// balance of 0.01 g may be off in a difference, take 607.3 C, at 0.1 A 101.2 min, so 102;
// 0.1 A at 30 mA/cm2 are 3.33 cm2, two squares of 12.9 mm.
func TestStripInWords(t *testing.T) {
	for fields, want := range map[string]struct {
		words  string
		filled string
	}{
		"metal=copper&density=30&resolution=0.01": {"with 3.33 cm² exposed in the bath, such as 12.9 mm square with both sides exposed. Run it at 0.100 A for 1 h 42 min, and weigh it before and after. It loses about 0.202 g, which a balance that reads to 0.01 g tells within 5 %.",
			"metal=copper resolution=0.01 area=3.33 cm² current=0.100 A time=1 h 42 min"},
		"metal=copper&density=30&amps=0.05": {"more current than this supply gives", ""},
		"":                                  {"Type the metal on the page first", ""},
		"metal=copper&salt=silver+nitrate":  {"is not etched: choose another salt", ""},
		"metal=copper&resolution=some":      {"“some” can't be read", ""},
	} {
		got := Strip(job.PlanStrip(field.Read(fields)))
		var filled []string
		for _, f := range got.Fields {
			filled = append(filled, f.Name+"="+f.Text)
		}
		if !strings.Contains(got.Text, want.words) || strings.Join(filled, " ") != want.filled {
			t.Errorf("%q: %q fills %q", fields, got.Text, filled)
		}
	}
}

// Up to three metals are named that a pool of runs is from; of more their count stands.
func TestPoolInWords(t *testing.T) {
	of := func(metal string, runs int) job.PooledRuns { return job.PooledRuns{Metal: metal, Runs: runs} }
	for _, x := range []struct {
		from []job.PooledRuns
		want string
	}{
		{[]job.PooledRuns{of("Copper", 3)}, "from 3 runs with copper on this bench"},
		{[]job.PooledRuns{of("Brass", 1), of("Copper", 4)}, "from 1 run with brass and 4 with copper on this bench"},
		{[]job.PooledRuns{of("Brass", 1), of("Copper", 4), of("Silver", 2)}, "from 1 run with brass, 4 with copper and 2 with silver on this bench"},
		{[]job.PooledRuns{of("Brass", 1), of("Copper", 4), of("Silver", 2), of("Bronze", 1)}, "from 8 runs with 4 metals on this bench"},
	} {
		if got := pooledFrom(x.from); got != x.want {
			t.Errorf("%q, want %q", got, x.want)
		}
	}
}

// How a metal was understood says when its density is mixed from shares.
func TestMixedDensityIsTold(t *testing.T) {
	for metal, mixed := range map[string]bool{"Cu+84+Zn+16": true, "copper": false} {
		if why := askText("metal=" + metal).Metals[0].Why; strings.Contains(why, "calculated by mixing") != mixed {
			t.Errorf("%s: %q", metal, why)
		}
	}
}

// A run under way is told what is left, and one that is deep enough is not.
func TestWhatIsLeft(t *testing.T) {
	const run = oneCopper + "depth=0.1&current=0.3&time=60&before=24.6+g&after="
	if got := askText(run + "24.3+g").Sentence; !strings.Contains(got, " Leave it ") || !strings.Contains(got, " more.") {
		t.Errorf("a third of the way: %q", got)
	}
	if got := askText(run + "23.7+g").Sentence; !strings.Contains(got, "It is deep enough") || strings.Contains(got, "Leave it") {
		t.Errorf("all of the way: %q", got) // 0.9 g over 9 g/cm3 and 10 cm2 are 0.1 mm
	}
}
