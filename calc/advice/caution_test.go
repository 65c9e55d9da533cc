package advice

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/testdata"
)

// What the vectors raise has its words, a card form of at most 60 characters and
// a field to stand beside; the gravest comes first, and where that is a stop its
// text is the sentence.
func TestCautionsOfTheVectors(t *testing.T) {
	vectors, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	rank := map[Level]int{Stop: 0, Warn: 1, Note: 2}
	for _, vector := range vectors {
		r := Answer(job.Work(field.Read(vector.Text())))
		for i, c := range r.Cautions {
			if n := utf8.RuneCountInString(c.Card); n == 0 || n > 60 {
				t.Errorf("%s: the card form of %s has %d characters: %s", vector.Name, c.Code, n, c.Card)
			}
			if _, ok := field.NameOf(c.Field); c.Text == "" || !ok {
				t.Errorf("%s: %+v", vector.Name, c)
			}
			if i > 0 && rank[c.Level] < rank[r.Cautions[i-1].Level] {
				t.Errorf("%s: %s comes after %s", vector.Name, c.Code, r.Cautions[i-1].Code)
			}
		}
		if stopped(r.Cautions) && (r.Sentence != r.Cautions[0].Text || strings.Contains(r.Sentence, "Leave it")) {
			t.Errorf("%s: beside a stop the sentence is %q", vector.Name, r.Sentence)
		}
	}
}

// The salt's own caution stands as soon as the salt is named, or anything of an
// etch or a bath is asked about; a metal alone asks about neither (the vocabulary).
func TestSaltMatters(t *testing.T) {
	asked := map[string]string{"depth": "0.2", "time": "60", "current": "0.3", "density": "30", "bites": "0.1 9", "strength": "200", "volume": "2", "fill": "100",
		"saltInHand": "500", "waterInHand": "2 kg", "etched": "20", "volumeNow": "2", "haveStrength": "200", "strengthA": "200", "gravity": "1.1", "after": "20",
		"readings": "0:00 0.3; 1:00 0.3", "salt": "copper sulfate"}
	for name, text := range asked {
		if !raises(ask(map[string]string{"metal": "copper", name: text}), "copper-sulfate") {
			t.Errorf("%s alone asks about no bath", name)
		}
	}
	for name, text := range map[string]string{"area": "10", "sheet": "1 mm", "hanger": "1", "salt": "lemonade"} {
		if raises(ask(map[string]string{"metal": "copper", name: text}), "copper-sulfate") {
			t.Errorf("%s asks about a bath", name)
		}
	}
	if raises(ask(map[string]string{"depth": "0.2"}), "common-salt") {
		t.Error("without a metal or a salt one is cautioned about")
	}
}

func raises(r Reply, code string) bool {
	return slices.ContainsFunc(r.Cautions, func(c Caution) bool { return c.Code == code })
}
