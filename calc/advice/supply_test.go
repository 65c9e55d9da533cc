package advice

import (
	"strings"
	"testing"

	"saltbite/calc/circuit"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
)

// supplied is a job of 0.3 A for an hour with a supply that would drive so many amperes; 0: unknown.
func supplied(fields string, drives float64) *view {
	w := job.Work(field.Read("current=0.3&" + fields))
	w.Supply.Current, w.Supply.Drives, w.Supply.Judged, w.Supply.Verdict = quantity.Known(0.3), quantity.Positive(drives), true, circuit.TooWeak
	w.Supply.Volts, w.Bite.Time = quantity.Known(2.5), quantity.Known(3600)
	v := viewOf(&w)
	return &v
}

// What fits says by what: the amperes on its label before those that its volts would drive.
func TestWhatFitsInWords(t *testing.T) {
	const unknown = " Set its limit to 0.3 A: what 3 V would drive is not known here."
	for _, x := range []struct {
		fields string
		drives float64
		want   string
	}{
		{"amps=2", 0, "Fits: 0.3 A of 2 A."},
		{"volts=3", 0, "Fits, if it can give 0.3 A." + unknown},
		{"volts=3", 0.35, "Fits: it would drive 0.35 A, and 0.3 A is needed."},
		{"volts=3&amps=2", 0.35, "Fits: 0.3 A of 2 A."},
		{"volts=3&amps=2", 0, "Fits: 0.3 A of 2 A." + unknown},
	} {
		if got := supplied(x.fields, x.drives).fitsWords(); got != x.want {
			t.Errorf("%s, %v A: %q", x.fields, x.drives, got)
		}
	}
}

// What is too weak lacks amperes where its label has fewer than are wanted, else volts;
// it says the same under the sentence.
func TestWhatIsTooWeakInWords(t *testing.T) {
	for fields, want := range map[string]string{
		"volts=1&amps=0.3":  "Needs 2.5 V for 0.3 A, gives 1 V: bring the cathode nearer, or use less current.",
		"volts=1&amps=0.29": "Needs 0.3 A, gives 0.29 A: use less current for longer.",
		"volts=1":           "Needs 2.5 V for 0.3 A, gives 1 V: bring the cathode nearer, or use less current.",
	} {
		v := supplied(fields, 0.2)
		if got := v.weakWords(); got != want {
			t.Errorf("%s: %q", fields, got)
		}
		if got := v.tooWeak(); got != " Your supply gives too little." {
			t.Errorf("%s: %q", fields, got)
		}
		v.Circuit.TimeThatFits = quantity.Known(7200)
		v.figures[field.AnswerTimeThatFits].Optional = quantity.Known(7200)
		gives := "1 V"
		if strings.Contains(fields, "0.29") {
			gives = "0.29 A"
		}
		if got := v.tooWeak(); got != " Your supply gives "+gives+": it takes 2 h." {
			t.Errorf("%s: %q", fields, got)
		}
		if got := v.weakWords(); !strings.HasSuffix(got, ", gives "+gives+": it takes 2 h.") {
			t.Errorf("%s: %q", fields, got)
		}
	}
	fits := supplied("volts=1", 0.2)
	if fits.Supply.Verdict = circuit.Fits; fits.tooWeak() != "" {
		t.Errorf("what fits is too weak: %q", fits.tooWeak())
	}
	if asked := supplied("volts=1&ask=supply", 0.2); asked.tooWeak() != "" {
		t.Errorf("it is said twice: %q", asked.tooWeak())
	}
}

// Fewer pieces at a time, or more time, are offered where they are fewer or more.
func TestWhatASupplyCanDoInstead(t *testing.T) {
	for _, x := range []struct {
		fit, pieces, seconds float64
		want                 string
	}{
		{0, 3, 3600, ""},
		{3, 3, 3600, ""},
		{1, 3, 3600, "one piece at a time"},
		{2, 3, 0, "two pieces at a time"},
		{2, 3, 7200, "two pieces at a time, or 2 h"},
		{3, 3, 7200, "it takes 2 h"},
	} {
		v := supplied("amps=0.2", 0)
		v.Circuit.PiecesThatFit, v.Bite.Count, v.Circuit.TimeThatFits = quantity.Known(x.fit), quantity.Known(x.pieces), quantity.Known(x.seconds)
		v.figures[field.AnswerTimeThatFits].Optional = v.Circuit.TimeThatFits
		if got := v.instead(); got != x.want {
			t.Errorf("%+v: %q", x, got)
		}
	}
}

// A supply that would drive too much is held back by its limit, or by a resistor up to 30 V;
// its label's amperes need not hold it back, and a share of the current takes longer by its inverse.
func TestHoldingASupplyBack(t *testing.T) {
	for _, x := range []struct {
		fields  string
		resists bool
		want    []string
	}{
		{"volts=12", false, []string{"12 V would drive 5.0 A where 0.3 A is wanted: set the supply's limit to 0.3 A."}},
		{"volts=12&amps=5", false, []string{"would drive 5.0 A where"}},
		{"volts=12&amps=2", false, []string{"would drive over 2.0 A where"}},
		{"volts=30", true, []string{"; if it has none, put a 10 ", "then 0.250 A, likely 0.200 A to 0.300 A, and it takes 20 % longer). Fuse a battery."}},
		{"volts=30.1", true, []string{"Over 30 V no resistor is offered."}},
	} {
		v := supplied(x.fields, 5)
		v.Supply.Resists, v.Supply.Resistor = x.resists, circuit.Resistor{Ohms: 10, Watts: 2, Current: 0.25, Low: 0.2, High: 0.3}
		for _, want := range x.want {
			if got := v.limitWords(); !strings.Contains(got, want) {
				t.Errorf("%s: %q lacks %q", x.fields, got, want)
			}
		}
	}
	v := supplied("volts=12", 5)
	for share, want := range map[float64]string{1: "", 1 / 1.004: "", 1 / 1.006: ", and it takes 1 % longer", 0.5: ", and it takes 100 % longer", 1.2: ""} {
		if got := v.longer(share); got != want {
			t.Errorf("with %v of the current: %q", share, got)
		}
	}
}
