package metal_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"saltbite/calc/metal"
)

// Names that mean more than one metal, from the notes to the table of alloys,
// and names that mean one and must not raise a doubt.
func TestRivals(t *testing.T) {
	for text, rivals := range map[string]string{
		"C101":             "cu-ofe", // British C101 is ETP, American C101 is C10100
		"C110":             "cu-ofe", // American C110 is ETP, British C110 is Cu-OFE
		"bronze":           "cuzn10,tin-bronze-88-12",
		"Bronzeblech":      "cuzn10,tin-bronze-88-12",
		"silver":           "silver-999",
		"silver sheet":     "silver-999",
		"argent massif":    "silver-999",
		"nickel silver":    "nickel-silver-18", // 12 % in Europe, 18 % in America
		"nickle silver":    "nickel-silver-18",
		"gilding metal":    "cuzn5,cuzn15", // the name covers 95/5 to 80/20
		"red brass":        "gunmetal-85-5-5-5",
		"coin silver":      "silver-835,silver-800",
		"tin bronze":       "phosphor-bronze-6,tin-bronze-88-8-4",
		"CZ107":            "cuzn35",                                     // the code differs by mill
		"unknown brass":    "cuzn30,cuzn35,cuzn15,engraving-brass-cz137", // the usual brasses: which is asked
		"some 70/30 brass": "",
		"argentium":        "germanium-silver-960",
		"bs c101":          "",
		"UNS C10100":       "",
		"C26000":           "",
		"sterling":         "",
		"sterling silver":  "",
		"cartridge brass":  "",
		"copper":           "",
		"copper sheet":     "",
		"brass":            "",
		"18 ga brass":      "",
		"Messing":          "",
		"fine silver":      "",
		"CuZn37":           "",
		"Cu 85 Zn 15":      "",
		"nickel silver 12": "",
	} {
		r, err := metal.Understand(text)
		if err != nil {
			t.Errorf("%q: %v", text, err)
			continue
		}
		if got := strings.Join(ids(r.Rivals), ","); got != rivals {
			t.Errorf("%q as %s has the rivals %q, want %q", text, r.Metal.ID, got, rivals)
		}
	}
}

// The words of the page: this calculator doesn't cover other metals, since they
// need other baths; nor other things, of which that would make no sense.
func TestUnknownSaysWhy(t *testing.T) {
	for text, says := range map[string]string{
		"zinc":   "This calculator doesn't cover “zinc”: it needs other baths",
		" Steel": "This calculator doesn't cover “ Steel”: it needs other baths",
		"Stahl":  "“Stahl” is steel. This calculator doesn't cover it: it needs other baths",
		"wood":   "This calculator doesn't cover “wood”",
		"Holz":   "“Holz” is wood. This calculator doesn't cover it",
		"asdf":   "“asdf” is not a metal that this calculator knows",
	} {
		if _, err := metal.Understand(text); err == nil || err.Error() != says {
			t.Errorf("%q: %v, want %s", text, err, says)
		}
	}
}

// A composition within half a per cent is the catalogue's metal, beyond it its own.
func TestTypedComposition(t *testing.T) {
	for text, id := range map[string]string{ // half a per cent is this project's own rule
		"Cu 70.4 Zn 29.6":  "cuzn30",
		"Cu 70.6 Zn 29.4":  "Cu70.6Zn29.4",
		"CuZn21":           "Cu79Zn21",
		"Ag 98":            "Ag98Cu2",
		"silver 92.9":      "silver-925",
		"Cu 89 Sn 11":      "tin-bronze-89-11", // not the fired clay of the same metals
		"Ag 960":           "silver-958",       // nor silver clay of 960
		"Cu 100":           "cu-etp",
		"88 copper 12 tin": "tin-bronze-88-12",
		"Cu 70 Zn 30.5":    "cuzn30",     // sums to 100.5
		"Ag 83.2 Cu 16.8":  "silver-830", // of two within half a per cent the nearer
		"Cu 100 Zn 0":      "cu-etp",
		"9% tin bronze":    "Cu91Sn9",
		"20% tin bronze":   "bell-bronze-80-20",
		"49.9% zinc brass": "Cu50.1Zn49.9",
		"tin 12 copper":    "tin-bronze-88-12", // a number between two elements is of the one before it
		"copper 12 tin":    "tin-bronze-88-12", // but here of the one after it
		"50 copper 50 tin": "Cu50Sn50",         // half of copper is enough
		"copper 45 tin":    "Cu55Sn45",         // with less, the number is the other one's
	} {
		r, err := metal.Understand(text)
		if err != nil {
			t.Errorf("%q: %v", text, err)
			continue
		}
		if want := "Cu 79 Zn 21"; id == "Cu79Zn21" && r.Metal.Name != want {
			t.Errorf("%q is called %q, want %q", text, r.Metal.Name, want)
		}
		listed := catalogued(id) != nil
		if r.Metal.ID != id || r.Typed == listed {
			t.Errorf("%q is %s, typed %v; want %s", text, r.Metal.ID, r.Typed, id)
		}
	}
}

// Density of a mixture: measured densities of alloys that are not in the
// catalogue.
func TestDensityOfAMixture(t *testing.T) {
	for text, want := range map[string]float64{
		"Cu 68 Zn 32": 8520,  // between CuZn30 8530 and CuZn33 8500 of the catalogue, seen
		"Cu 91 Sn 9":  8790,  // between CuSn8 8800 and CuSn10 8780 of the catalogue, seen and from memory
		"Ag 97 Cu 3":  10430, // between 950 and fine silver, 10400 and 10490, seen
		"Ag 60 Cu 40": 9770,  // Ag 60 brazing alloy group, from memory
	} {
		r, err := metal.Understand(text)
		if err != nil || math.Abs(r.Metal.Density/want-1) > 0.015 {
			t.Errorf("%q: %+v (%v), want %g kg/m3", text, r, err, want)
		}
	}
}

func TestUnbalanced(t *testing.T) {
	for text, sum := range map[string]float64{"Cu 85 Zn 10": 95, "70/20 brass": 90, "Cu 70": 70, "Cu 90 Zn 20": 110, "65/18/10 nickel silver": 93} {
		_, err := metal.Understand(text)
		var u *metal.Unbalanced
		if !errors.As(err, &u) || math.Abs(u.Sum-sum) > 1e-9 || !strings.Contains(err.Error(), text) {
			t.Errorf("%q: %v, want a sum of %g", text, err, sum)
		}
		if hits := metal.Find(text); len(hits) > 0 {
			t.Errorf("%q finds %s", text, hits[0].Metal.ID)
		}
	}
}

func TestErrorsQuoteFortyLetters(t *testing.T) {
	for _, text := range []string{strings.Repeat("ж", 70), strings.Repeat("x", 100_000)} {
		_, err := metal.Understand(text)
		if n := len([]rune(err.Error())); n > 40+45 {
			t.Errorf("the error is %d letters long: %v", n, err)
		}
	}
}

// Beryllium is understood, so that it can be warned of; and no alloy without it,
// or without the lead or nickel that was typed, is taken for the one meant.
func TestBerylliumIsUnderstood(t *testing.T) {
	for _, text := range []string{"beryllium copper", "berylium copper", "C17200", "CuBe2", "BeCu", "Cu 98 Be 2", "2% beryllium copper", "Cu 99.5 Be 0.5", "beryllium bronze", "cuivre au béryllium"} {
		r, err := metal.Understand(text)
		if err != nil || r.Metal.Share("Be") == 0 {
			t.Errorf("%q: %v, %v", text, r.Metal, err)
		}
	}
	for text, symbol := range map[string]string{"Cu 63 Zn 36.7 Pb 0.3": "Pb", "Ag 92.5 Cu 7.3 Ni 0.2": "Ni", "Ag 92.5 Cu 7.4 Ni 0.1": "Ni"} {
		r, err := metal.Understand(text)
		if err != nil || r.Metal.Share(symbol) == 0 {
			t.Errorf("%q: no %s in %v, %v", text, symbol, r.Metal, err)
		}
	}
}
