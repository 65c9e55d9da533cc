package testdata

import (
	"encoding/json"
	"strings"
	"testing"
)

// A reply made by hand, with something of each kind that a vector can ask about.
const made = `{"sentence": "Leave it 2 h.",
	"supply": {"fits": "limit", "text": "Set the limit to 54 mA.", "assumed": ["gap", "cathode"]},
	"rows": {"causes": [{"code": "film"}, {"code": "density"}]},
	"errors": [{"field": "open", "code": "ambiguous", "text": "?", "readings": ["40 %", "0.4 %"]}]}`

// Each kind of want is met by what is so, and reports what is not.
func TestWantsAreMetOrReported(t *testing.T) {
	var reply Reply
	if err := json.Unmarshal([]byte(made), &reply); err != nil {
		t.Fatal(err)
	}
	for line, met := range map[string]bool{
		"sentence Leave it":             true,
		"sentence Take it out":          false,
		"silent Take it out":            true,
		"silent Leave it":               false,
		"supply limit":                  true,
		"supply limit to 54 mA":         true,
		"supply limit to 55 mA":         false,
		"supply yes":                    false,
		"assumes cathode gap":           true,
		"assumes gap":                   false,
		"assumes nothing":               false,
		"assumes gap cathode strength":  false,
		"cause film first":              true,
		"cause density first":           false,
		`offers open "40 %"`:            true,
		`offers open "40"`:              false,
		`offers back "40 %"`:            false,
		"error open ambiguous":          true,
		"fair open":                     false,
		"absent depth":                  true,
		"caution dense":                 false,
		"calm dense":                    true,
		"found time":                    false,
		"depth = 0.2 mm within 1 %":     false,
		"low depth = 0.2 mm within 1 %": false,
	} {
		check, err := want(strings.Fields(line))
		if err != nil {
			t.Errorf("%s: %v", line, err)
			continue
		}
		if what := check(reply); (what == "") != met {
			t.Errorf("%s: %q", line, what)
		}
	}
	for _, line := range []string{"supply yes", "assumes gap", "cause film first"} {
		check, err := want(strings.Fields(line))
		if err != nil {
			t.Fatal(err)
		}
		if check(Reply{}) == "" {
			t.Errorf("%s is met by an empty reply", line)
		}
	}
}

// What can't be read is no want: a vector with a slip in it fails at once.
func TestNoSuchWant(t *testing.T) {
	for _, line := range []string{
		"supply perhaps", "assumes ells", "cause film", "cause film second", "offers open 40", `offers ells "40 %"`,
		"error ells", "absent ells", "depth = 0.2 cm within 1 %", "depth = 0.2 mm", "sentence",
	} {
		if _, err := want(strings.Fields(line)); err == nil {
			t.Errorf("%q is read as a want", line)
		}
	}
}
