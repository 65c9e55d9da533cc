package field

import (
	"fmt"
	"strings"
	"testing"
)

// told is a set by its name, its line, and what was typed of metal and depth.
func told(sets []Named) string {
	var list []string
	for _, s := range sets {
		list = append(list, fmt.Sprintf("%d %s: %s, %s", s.Line, s.Name, s.Set.Text(Metal), s.Set.Text(Depth)))
	}
	return strings.Join(list, "; ")
}

func TestReadMany(t *testing.T) {
	for text, want := range map[string]string{
		"":                              "",
		"Saltbite jobs\n# a remark\n\n": "",
		"metal=brass":                   "1 : brass, ",
		"\n\nmetal=brass\ndepth=1+mm":   "3 : brass, 1 mm", // a set without a name begins at its first line
		"[A]\nmetal=brass\ndepth=1\n[B]\nmetal=copper":    "1 A: brass, 1; 4 B: copper, ",
		"metal=tin\n[A]\nmetal=brass":                     "1 : tin, ; 2 A: brass, ",
		"[A]\n[B]":                                        "1 A: , ; 2 B: , ", // sets of nothing
		"\ufeffSaltbite jobs\r\n[ A ]\r\n metal=brass \r": "3 A: brass, ",     // a carriage return is a line's end too
		"[A\nmetal=brass&depth=2":                         "1 A: brass, 2",
	} {
		if got := told(ReadMany(text)); got != want {
			t.Errorf("%q is read as %q, want %q", text, got, want)
		}
	}
}

func TestReadManyIsLimited(t *testing.T) {
	if got := len(ReadMany(strings.Repeat("[A]\n", mostSets))); got != mostSets {
		t.Errorf("%d sets of %d", got, mostSets)
	}
	if got := len(ReadMany(strings.Repeat("[A]\n", mostSets+2))); got != mostSets {
		t.Errorf("%d sets of %d", got, mostSets+2)
	}
}
