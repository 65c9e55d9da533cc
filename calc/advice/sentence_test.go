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
		"ask=supply":                               "Type the supply voltage.",
		"ask=bath":                                 "Type the salt, or the metal.",
		"ask=check":                                "Type the weight now, or the ammeter readings.",
		"ask=check&after=9":                        "Type the weight before.",
	} {
		if got := Answer(job.Work(field.Read(fields))).Sentence; !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", fields, got, want)
		}
	}
}
