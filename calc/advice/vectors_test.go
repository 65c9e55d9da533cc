package advice

import (
	"strings"
	"testing"

	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/testdata"
)

// Every vector, before its reply is made a text.
func TestVectors(t *testing.T) {
	vectors, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range vectors {
		if wrong := v.Wrong(seenBy(Answer(job.Work(field.Read(v.Text()))))); len(wrong) > 0 {
			t.Errorf("%s, %v\n%s", v.Name, v.Fields, strings.Join(wrong, "\n"))
		}
	}
}

// seenBy is what the vectors ask of a reply.
func seenBy(r Reply) testdata.Reply {
	seen := testdata.Reply{Sentence: r.Sentence, Found: r.Found, Answers: map[string]testdata.Answer{}}
	for _, a := range r.Answers {
		seen.Answers[a.Name] = testdata.Answer{Value: a.Value, Low: a.Low, High: a.High}
	}
	if v := r.Supply; v != nil {
		seen.Supply = &testdata.Supply{Fits: v.Fits, Text: v.Text, Assumed: v.Assumed}
	}
	for _, c := range r.Causes {
		seen.Rows.Causes = append(seen.Rows.Causes, testdata.Cause{Code: c.Code})
	}
	for _, c := range r.Cautions {
		seen.Cautions = append(seen.Cautions, testdata.Caution{Code: c.Code, Level: string(c.Level), Text: c.Text})
	}
	for _, e := range r.Errors {
		seen.Errors = append(seen.Errors, testdata.Error{Field: e.Field, Code: e.Code, Text: e.Text, Readings: e.Readings})
	}
	return seen
}
