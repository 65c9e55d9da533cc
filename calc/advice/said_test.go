package advice

import (
	_ "embed"
	"fmt"
	"strings"
	"testing"

	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/testdata"
)

// said is what every vector's job is told in words. A change is read first, and then
// written with SALTBITE_WRITE=1 go test ./calc/advice -run Said.
//
//go:embed testdata/said.txt
var said string

// TestSaid compares all sentences with what is written down. Their figures are checked
// by the vectors; this notices a sentence that comes at the wrong job, or in other words.
func TestSaid(t *testing.T) {
	vectors, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	told, before := new(strings.Builder), map[string]bool{}
	for _, v := range vectors {
		fmt.Fprintf(told, "%s\n", v.Name)
		sayAll(told, before, Answer(job.Work(field.Read(v.Text()))))
	}
	if changed, err := testdata.Changed("testdata/said.txt", said, told.String()); changed != "" || err != nil {
		t.Fatal(changed, err)
	}
}

// sayAll writes the words of a reply, a line each; what was said before is a mark.
func sayAll(told *strings.Builder, before map[string]bool, r Reply) {
	once := func(text string) string {
		if before[text] {
			return "as before"
		}
		before[text] = true
		return text
	}
	if r.Sentence != "" {
		fmt.Fprintf(told, "  says: %s\n", r.Sentence)
	}
	if r.Supply != nil {
		fmt.Fprintf(told, "  supply %s: %s %v\n", r.Supply.Fits, r.Supply.Text, r.Supply.Assumed)
	}
	for _, c := range r.Cautions {
		fmt.Fprintf(told, "  %s %s at %s: %s\n", c.Level, c.Code, c.Field, once(c.Text+" | "+c.Card))
	}
	for _, c := range r.Causes {
		fmt.Fprintf(told, "  cause %s at %s: %s\n", c.Code, c.Field, once(c.Text+" | "+c.Do+" | "+c.Source))
	}
	for _, e := range r.Errors {
		fmt.Fprintf(told, "  error %s at %s: %s\n", e.Code, e.Field, once(e.Text))
	}
}
