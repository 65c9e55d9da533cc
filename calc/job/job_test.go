package job

import (
	"math"
	"testing"

	"saltbite/calc/bath"
	"saltbite/calc/field"
	"saltbite/calc/quantity"
)

// Of silver and copper the larger share must be the salt's metal, and no silver
// may be put in common salt (the vocabulary: wrong-bath). Compositions: 92.5 % and
// 50 % of silver; beryllium copper C17200.
func TestBarred(t *testing.T) {
	for _, x := range []struct {
		metal, salt          string
		beryllium, wrongBath bool
	}{
		{"sterling", "", false, false}, {"sterling", "copper+sulfate", false, true}, {"copper", "silver+nitrate", false, true},
		{"Ag+50+Cu+50", "silver+nitrate", false, true}, {"Ag+50+Cu+50", "copper+sulfate", false, false},
		{"sterling", "common+salt", false, true}, {"brass", "common+salt", false, false}, {"C17200", "", true, false},
	} {
		got := Work(field.Read("metal=" + x.metal + "&salt=" + x.salt)).Barred
		if got.Beryllium != x.beryllium || got.WrongBath != x.wrongBath {
			t.Errorf("%s in %q: %+v", x.metal, x.salt, got)
		}
	}
}

// A blank salt is the metal's own (the vocabulary).
func TestSaltOfTheMetal(t *testing.T) {
	for metal, want := range map[string]*bath.Salt{"fine+silver": bath.SilverNitrate, "nickel+silver": bath.CopperSulfate} {
		if s := Work(field.Read("metal=" + metal)).Salt; s.Salt != want || s.State != quantity.Assumed {
			t.Errorf("%s goes in %+v", metal, s)
		}
	}
}

// Two figures agree within 1 % of the larger one.
func TestAgree(t *testing.T) {
	for _, x := range []struct {
		a, b float64
		want bool
	}{{100, 100, true}, {100, 99, true}, {100, 98.9, false}, {-100, 100, false}, {0, 0, true}} {
		if Agree(x.a, x.b) != x.want {
			t.Errorf("%v and %v agree: %v", x.a, x.b, !x.want)
		}
	}
}

// By hand: a face of 60 x 40 mm, 25 % exposed on both sides, is 12 cm2; a disc of 30
// mm half exposed is pi/4 x 9 / 2 = 3.534 cm2. A typed area stands beside a size.
func TestOpenArea(t *testing.T) {
	for text, want := range map[string]float64{
		"width=60&height=40&open=25+%25&sides=2": 12e-4, "diameter=30&open=50": math.Pi / 4 * 9e-4 / 2, "width=60&height=40&area=5": 5e-4,
	} {
		if got := Work(field.Read(text)).Bite.Area; !got.Known() || math.Abs(got.SI-want) > 1e-12 {
			t.Errorf("%s: %+v, want %g", text, got, want)
		}
	}
	for _, text := range []string{"width=60&height=40&open=25&area=7", "diameter=30&width=20&open=50"} {
		w := Work(field.Read(text))
		if w.Bite.Area.State != quantity.Bad || len(w.Errors) < 2 || w.Errors[0].Code != field.Contradiction {
			t.Errorf("%s: %+v with %v", text, w.Bite.Area, w.Errors)
		}
	}
}

// What is asked for is set aside, with the face for an area.
func TestSoughtIsSetAside(t *testing.T) {
	w := Work(field.Read("find=area&area=3&width=20&depth=0.2"))
	if !w.Fields.Blank(field.Area) || !w.Fields.Blank(field.Width) || w.Fields.Blank(field.Depth) {
		t.Errorf("there stay %v", w.Fields)
	}
}

// The range of this bench's runs must hold the efficiency, and one end needs the
// other (the vocabulary).
func TestEfficiencyOfRuns(t *testing.T) {
	mean := Work(field.Read("metal=copper&efficiencyLow=90&efficiencyHigh=98")).Law.Efficiency
	if math.Abs(mean.SI-0.94) > 1e-12 || !mean.OwnRuns {
		t.Errorf("the mean of 90 and 98 %% is %+v", mean)
	}
	for text, code := range map[string]string{
		"efficiencyLow=98&efficiencyHigh=90": field.Contradiction, "efficiencyLow=90&efficiencyHigh=98&efficiency=99": field.Contradiction,
		"efficiencyLow=90": field.Missing,
	} {
		w := Work(field.Read("metal=copper&" + text))
		if len(w.Errors) == 0 || w.Errors[0].Code != code {
			t.Errorf("%s: %v, want %s", text, w.Errors, code)
		}
	}
}
