package metal

import (
	"strings"
	"testing"
)

// One short word may be wrong or cut short where the rest of the name is right.
// Judged by hand.
func TestNearly(t *testing.T) {
	for text, id := range map[string]string{
		"munz metal":               "cuzn40", // a letter left out
		"muuntz metal":             "cuzn40", // one too many
		"mumtz metal":              "cuzn40", // a wrong one
		"mutnz metal":              "cuzn40", // two that changed places
		"muntz metla sheet":        "cuzn40", // beside a word for a form
		"funtz metal":              "",       // not the first
		"mumtz metla":              "",       // nor two words
		"rde brass":                "cuzn15", // of three letters: changed places
		"redd brass":               "cuzn15", // doubled
		"rid brass":                "",       // but not wrong
		"rd brass":                 "",       // nor two letters
		"bel metal":                "bell-metal",
		"belt metal":               "", // an everyday word
		"plata puar":               "silver-999",
		"plata pula":               "", // in other languages no letter may be wrong
		"cart brass":               "cuzn30",
		"car brass":                "", // cut too short
		"cartridg brass":           "cuzn30",
		"brass cart":               "", // the last word may not be cut short
		"silver bull":              "",
		"germ silver":              "nickel-silver-12",
		"munz metal munz metal":    "",
		"70-40 cartridge brass":    "",       // numbers are right or wrong
		"260 brss":                 "cuzn30", // and bear a word out
		"sterling silvre claay oo": "",
	} {
		calls, _, _ := theIndex().look(text)
		got := ""
		if calls != nil {
			got = calls[0].metal.ID
		}
		if got != id {
			t.Errorf("%q calls %q, want %q", text, got, id)
		}
	}
}

// Two metals that a cut word may mean are both called.
func TestCutShortOfTwo(t *testing.T) {
	calls, _, _ := theIndex().look("germ silver")
	if len(calls) < 2 || calls[0].metal.ID != "nickel-silver-12" || calls[1].metal.Family != Silver {
		t.Errorf("calls %v", calls)
	}
}

// No everyday word in place of a word of a name makes it that name.
func TestEverydayWordsAreNoSlips(t *testing.T) {
	x, tried := theIndex(), 0
	for key, gaps := range x.gapsOf().at {
		for _, g := range gaps {
			for word := range strings.FieldsSeq(everyday) {
				if d := len(word) - len(g.word); d < -1 || d > 1 {
					continue
				}
				tried++
				if g.isSlip(word) {
					t.Errorf("%s is taken for %s in %q", word, g.word, key)
				}
			}
		}
	}
	if tried < 10_000 {
		t.Errorf("only %d were tried", tried)
	}
}
