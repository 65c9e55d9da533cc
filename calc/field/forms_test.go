package field

import (
	"slices"
	"strings"
	"testing"
)

// Noon is 12 pm and midnight 12 am (NIST, Times of Day FAQ, from memory).
func TestReadClock(t *testing.T) {
	for text, minutes := range map[string]float64{
		"14:05": 845, "0:00": 0, "23:59": 1439, "9.30": 570, "9h30": 570, "7 am": 420, "12 am": 0, "12 pm": 720, "1 pm": 780, "12:30 a.m.": 30, "11:59 p.m.": 1439,
		"14 Uhr": 840, "14h": 840, "07:05": 425,
	} {
		if got, ok := readClock(text); !ok || got != minutes*60 {
			t.Errorf("%q is %g min, want %g", text, got/60, minutes)
		}
	}
	for _, text := range []string{"", "14", "24:00", "14:60", "0 am", "13 pm", "14:", ":30", "1:2:3", "014:00", "x:00", "9:3x"} {
		if got, ok := readClock(text); ok || got != 0 {
			t.Errorf("%q is %g s", text, got)
		}
	}
}

// A hydrometer's scales part by their words; a bare number is the gravity.
func TestHydrometer(t *testing.T) {
	for text, want := range map[string]struct {
		value float64
		unit  string
	}{"1.14": {1.14, ""}, "1.14 g/mL": {1140, "g/mL"}, "14 °Bé": {14, Baume}, "14 Baume": {14, Baume}, "14 deg Be": {14, Baume}} {
		q := one("gravity", text).Value(Gravity).Q
		if q.Value != want.value || want.unit == Baume && q.Unit != Baume {
			t.Errorf("%q is read as %+v", text, q)
		}
	}
}

// Gauge 0 is followed by 00, 000 and 0000 (ASTM B258).
func TestGaugeText(t *testing.T) {
	for n, want := range map[float64]string{18: "18 ga", 1: "1 ga", 0: "0 ga", -1: "00 ga", -3: "0000 ga"} {
		if got := gaugeText(n); got != want {
			t.Errorf("%g is %q, want %q", n, got, want)
		}
	}
}

func TestCapital(t *testing.T) {
	for text, want := range map[string]string{"a depth": "A depth", "z": "Z", "8 mm": "8 mm", "A b": "A b", "": ""} {
		if got := Capital(text); got != want {
			t.Errorf("%q begins as %q", text, got)
		}
	}
}

// A series ends at so many entries, and an entry at so many characters.
func TestSeriesIsLimited(t *testing.T) {
	if s := one("readings", strings.Repeat("0:00 1;", mostPairs-1)+"0:00 1"); len(s.Value(Readings).Pairs) != mostPairs {
		t.Error(s.Errors())
	}
	if s := one("readings", strings.Repeat("0:00 1;", mostPairs)+"0:00 1"); len(s.Errors()) != 1 {
		t.Error("one more is read")
	}
}

// A run counts unless it is said not to, and no picture is mirrored unless it is
// said so (the vocabulary).
func TestQuestionsHaveTheirDefaults(t *testing.T) {
	blank := Read("")
	if blank.Pick(Use) != "yes" || blank.Pick(Mirror) != "no" {
		t.Errorf("use is %q, mirror %q", blank.Pick(Use), blank.Pick(Mirror))
	}
}

// An inch is 25.4 mm (international yard and pound agreement of 1959). What has no
// unit of its own in US units is printed as in metric ones.
func TestSay(t *testing.T) {
	for _, x := range []struct {
		us   bool
		name AnswerName
		si   float64
		want string
	}{
		{false, AnswerDepth, 0.254e-3, "0.254 mm"}, {true, AnswerDepth, 0.254e-3, "0.0100 in"}, {true, AnswerCurrent, 0.3, "0.300 A"},
		{false, AnswerThinnestGauge, -1, "00 ga"}, {false, AnswerReadyAt, 50700, "14:05"}, {false, AnswerPiecesThatFit, 3, "3"},
	} {
		if got := (Printer{x.us}).Say(x.name, x.si); got != x.want {
			t.Errorf("%s of %g is %q, want %q", x.name.Row().Name, x.si, got, x.want)
		}
	}
}

// A series may have one entry, whose time may be one of the clock; of none it is a mistake.
func TestEntriesOfASeries(t *testing.T) {
	for text, want := range map[string][]Pair{
		"0:30 1":                   {{1800, 1}},
		"2:05 pm 0.3; 3:05 pm 0.2": {{(14*60 + 5) * 60, 0.3}, {(15*60 + 5) * 60, 0.2}},
		" ; 30 min 0.3;":           {{1800, 0.3}},
		";":                        nil,
		"noon 0.3":                 nil,
		"30 min -0.3":              nil,
	} {
		s := one("readings", text)
		if got := s.Value(Readings).Pairs; want != nil && !slices.Equal(got, want) || (len(s.Errors()) > 0) != (want == nil) {
			t.Errorf("%q is read as %v, %v", text, got, s.Errors())
		}
	}
	if _, ok := Bites.Row().first("2:05 pm"); ok {
		t.Error("a depth is read off a clock")
	}
}

// What was typed stands before what another set has, which fills only what is blank.
func TestUnderAnother(t *testing.T) {
	other := Read("depth=0.2&area=10&width=ells")
	s := Read("depth=0.1").Under(other, Depth, Area, Width, Height)
	if s.Text(Depth) != "0.1" || s.Text(Area) != "10" || !s.Blank(Width) || !s.Blank(Height) {
		t.Errorf("depth %q, area %q, width %q", s.Text(Depth), s.Text(Area), s.Text(Width))
	}
	if s := Read("depth=0.1").Under(other, Depth); !s.Blank(Area) {
		t.Error("a field is taken that was not asked for")
	}
}
