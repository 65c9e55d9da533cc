package advice

import (
	"strings"
	"testing"

	"saltbite/calc/field"
	"saltbite/calc/job"
)

// A name begins small in a sentence, unless it is a sign.
func TestLower(t *testing.T) {
	for name, want := range map[string]string{"Cartridge brass": "cartridge brass", "Ag 20 Cu 80": "Ag 20 Cu 80", "Cu 0.5 Be": "Cu 0.5 Be",
		"Cu 9": "Cu 9", "C26000": "C26000", "K2": "K2", "A": "a", "Silver 925 x": "Silver 925 x", "Brass b": "brass b", "Az z": "az z"} {
		if got := lower(name); got != want {
			t.Errorf("%q is %q in a sentence", name, got)
		}
	}
}

// A figure that stands alone gets its unit; one of a unit or of a time does not.
func TestBareNumber(t *testing.T) {
	for text, want := range map[string]bool{"0.2": true, "9": true, "0": true, "2": true, "1/2": true, "1 2": true, "12 cm2": false, "a2": false, "z2": false,
		"1:40": false, "2 h 30": false, "5 mm": false, "": false, "cm3": true} {
		if got := bareNumber(text); got != want {
			t.Errorf("%q ends in a bare number: %v", text, got)
		}
	}
}

// Sentences of a bath and of a supply. Sums by hand: 200 g/L in 2 L, of which
// 0.29158 g of copper a gram of brass goes, as 249.677 / 63.546 of salt.
func TestSentences(t *testing.T) {
	for fields, want := range map[string]string{
		"salt=copper+sulfate&strength=200&volume=2&ask=bath":                                          "Dissolve 400 g of copper sulfate crystals in ",
		"salt=copper+sulfate&strength=400&volume=1&ask=bath":                                          "No more dissolves at 20",
		"metal=Cu+70+Zn+30&strength=200&volume=2&etched=40&ask=bath":                                  "Add 45.8 g of copper sulfate crystals to the bath.",
		"metal=Cu+70+Zn+30&strength=200&volume=2&etched=40&volumeNow=1.8&ask=bath":                    "Add 45.8 g of copper sulfate crystals, then distilled water to the 2 L mark, about 0.200 L.",
		"metal=copper&strength=150&volume=2&etched=40&volumeNow=1.6&ask=bath":                         "Add distilled water to the 2 L mark, about 0.400 L, and no salt.", // copper comes back at the cathode
		"metal=copper&strength=200&volume=2&volumeNow=1.8&ask=bath":                                   "Add distilled water to the 2 L mark, about 0.200 L.",
		"metal=copper&strength=200&volume=2&etched=40&ask=bath":                                       "The bath needs nothing added yet.",
		"salt=copper+sulfate+anhydrous&haveStrength=5+%25&haveVolume=1&wantStrength=10+%25":           "Dissolve 58.4 g of ",
		"salt=copper+sulfate+anhydrous&haveStrength=10+%25&haveVolume=1&wantStrength=5+%25":           "Add 1.11 L of distilled water to the bath: it becomes 5 %.",
		"salt=copper+sulfate+anhydrous&strengthA=15+%25&strengthB=5+%25&wantStrength=10+%25&volume=1": "it makes 1 L of 10 %.",
		"salt=copper+sulfate+anhydrous&gravity=1.1090":                                                "By the hydrometer the bath holds 11",
		oneCopper + "depth=0.2&current=0.3&pieces=3":                                                  "at 0.3 A for all 3 pieces",
		oneCopper + "depth=0.2&current=0.3&pieces=1":                                                  "at 0.3 A in copper sulfate",
		"ask=time":              "Type the metal.",
		"ask=time&metal=copper": "Type the size of the piece, or its exposed area.",
		"ask=time&metal=copper&width=60&height=40": "Type the exposed share.",
		"ask=time&metal=copper&area=10":            "Type the depth.",
		"ask=time&metal=copper&bites=0.05+12":      "Type a current density for the steps, such as 30.0 mA/cm².",
		"metal=copper&bites=0.05+12;+0.1+9":        "Type a current density for the steps, such as 30.0 mA/cm².",
		"ask=supply":                               "Type the supply voltage.",
		"ask=bath":                                 "Type the salt, or the metal.",
		"ask=check":                                "Type the weights before and now, or the ammeter readings.",
		"ask=check&before=9":                       "Type the weight now, or the ammeter readings.",
		"ask=check&after=9":                        "Type the weight before.",
	} {
		if got := Answer(job.Work(field.Read(fields))).Sentence; !strings.Contains(got, want) || want == "" && got != "" {
			t.Errorf("%s: %q, want %q", fields, got, want)
		}
	}
}

// Where nothing but the current is missing a job is told what a current to start from
// comes to: not where one was typed that can't be read.
func TestSuggestionInWords(t *testing.T) {
	for fields, want := range map[string]string{
		oneCopper + "depth=0.2":                  "At 30 mA/cm² it takes 5 h 4 min at 0.300 A in copper sulfate.",
		oneCopper + "depth=0.2&pieces=3":         "At 30 mA/cm² it takes 5 h 4 min at 0.900 A for all 3 pieces in copper sulfate.",
		oneCopper + "depth=0.2&salt=common+salt": " in salt water. Check early: it may be only half as deep.",
		"metal=copper&depth=0.2":                 "At 30 mA/cm² it takes 5 h 1 min in copper sulfate.",
		oneCopper + "depth=0.2&time=much":        "",
		oneCopper + "depth=0.2&current=much":     "",
		oneCopper + "depth=0.2&density=much":     "",
	} {
		got := askText(fields).Sentence
		if !strings.Contains(got, want) || strings.Contains(got, "it takes") != (want != "") && !strings.Contains(want, "Check") {
			t.Errorf("%s: %q", fields, got)
		}
	}
}

// In salt water the range of one charge or two is told of what was found; of several bites
// their number; of a depth alone what it leaves.
func TestMoreSentences(t *testing.T) {
	for fields, want := range map[string]string{
		oneCopper + "depth=0.1&current=0.3&salt=common+salt": "and check early: copper can dissolve twice as fast there.",
		oneCopper + "time=60&current=0.3&salt=common+salt":   "into oxygen-free copper: check early.",
		oneCopper + "depth=0.1&time=60&salt=common+salt":     "in 1 h. Check early: it may be only half as deep.",
		"metal=copper&bites=0.1+10&density=30":               "One step takes ",
		"metal=copper&bites=0.1+10;+0.2+8&density=30":        "Two steps take ",
		"sheet=1+mm&depth=0.2&line=0.4&undercut=1":           "An etch of 0.200 mm leaves 0.800 mm of the sheet. The finest line does not survive it.",
		"sheet=1+mm&depth=0.2&line=0.5&undercut=1":           "The finest line keeps 0.100 mm.",
	} {
		if got := askText(fields).Sentence; !strings.Contains(got, want) {
			t.Errorf("%s: %q", fields, got)
		}
	}
	for n, want := range map[int]string{0: "No", 1: "One", 9: "Nine", 10: "10"} {
		if got := countInWords(n); got != want {
			t.Errorf("%d is %q", n, got)
		}
	}
	for text, want := range map[string]string{"30.0 mA/cm²": "30 mA/cm²", "12.5 V": "12.5 V", "0.300 A": "0.300 A"} {
		if got := withoutPoint(text); got != want {
			t.Errorf("%q becomes %q", text, got)
		}
	}
}
