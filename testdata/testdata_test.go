package testdata_test

import (
	"strings"
	"testing"

	"saltbite/site/words"
	"saltbite/testdata"
)

// Every caution has a vector that raises it, and one just short of it.
func TestEveryCautionIsRaisedAndNot(t *testing.T) {
	vectors, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, v := range vectors {
		for _, w := range v.Wants {
			seen[strings.Join(strings.Fields(w.Line)[:2], " ")] = true
		}
	}
	for code := range words.CautionOrigins {
		for _, way := range []string{"caution ", "calm "} {
			if !seen[way+code] {
				t.Errorf("no vector has %q", way+code)
			}
		}
	}
}

// A vector is known by its name: the page's tests ask for its reply by it.
func TestNamesOfVectorsAreTheirOwn(t *testing.T) {
	vectors, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, v := range vectors {
		if seen[v.Name] {
			t.Errorf("two vectors are named %q", v.Name)
		}
		seen[v.Name] = true
	}
}
