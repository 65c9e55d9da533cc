package words

import (
	"net/url"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"saltbite/calc/field"
)

func TestEveryFieldHasWords(t *testing.T) {
	named := map[string]bool{}
	for _, f := range field.Fields {
		named[f.Name] = true
		said, ok := Fields[f.Name]
		if !ok || said.Label == "" {
			t.Errorf("field %s has no label", f.Name)
		}
		for _, c := range f.Choices {
			if said.Choices[c] == "" {
				t.Errorf("choice %s of %s has no label", c, f.Name)
			}
		}
		if len(said.Choices) != len(f.Choices) {
			t.Errorf("%s: %d choices have labels, the vocabulary has %d", f.Name, len(said.Choices), len(f.Choices))
		}
	}
	for name := range Fields {
		if !named[name] {
			t.Errorf("words for %s, which is no field", name)
		}
	}
}

func TestEveryAnswerHasALabel(t *testing.T) {
	named := map[string]bool{}
	for _, a := range field.Answers {
		named[a.Name] = true
		if Answers[a.Name] == "" {
			t.Errorf("answer %s has no label", a.Name)
		}
	}
	for name := range Answers {
		if !named[name] {
			t.Errorf("a label for %s, which is no answer", name)
		}
	}
	for name := range Ranges {
		if !named[name] {
			t.Errorf("what the range of %s rests on, which is no answer", name)
		}
	}
}

func TestEveryPartHasATitle(t *testing.T) {
	for _, p := range field.Parts {
		if Parts[string(p)].Title == "" {
			t.Errorf("part %s has no title", p)
		}
	}
	for name, p := range Parts {
		for _, a := range p.Shows {
			if Answers[a] == "" {
				t.Errorf("the folded line of %s shows %s, which is no answer", name, a)
			}
		}
		for _, lack := range p.Lacks {
			lackIsOfTheVocabulary(t, name, lack)
		}
	}
	if len(Parts) != len(field.Parts) {
		t.Errorf("%d parts have titles, the vocabulary has %d", len(Parts), len(field.Parts))
	}
}

func lackIsOfTheVocabulary(t *testing.T, part string, lack Lack) {
	t.Helper()
	parts := map[string]string{}
	for _, f := range field.Fields {
		parts[f.Name] = string(f.Part)
	}
	for _, f := range lack.Typed {
		if parts[f] != part {
			t.Errorf("%s says what it lacks when %s is typed, which is no field of it", part, f)
		}
	}
	for _, a := range lack.For {
		if Answers[a] == "" && a != "bites" {
			t.Errorf("%s says what %s lacks, which is no answer", part, a)
		}
	}
	if len(lack.Needs) == 0 {
		t.Errorf("%s lacks something for %v, and doesn't say what", part, lack.For)
	}
	for _, f := range lack.Needs {
		for _, one := range strings.Split(f, "|") {
			if parts[one] == "" {
				t.Errorf("%s needs %s, which is no field", part, one)
			}
		}
	}
}

// Longer labels would break into three lines beside their control on a phone,
// longer helps would not fit into the space that is kept for them.
func TestWordsFitTheirSpace(t *testing.T) {
	for name, f := range Fields {
		if n := utf8.RuneCountInString(f.Label); n > 26 {
			t.Errorf("label of %s is %d characters long", name, n)
		}
		for _, help := range []string{f.Help, f.HelpUS} {
			if n := utf8.RuneCountInString(help); n > 70 {
				t.Errorf("help of %s is %d characters long", name, n)
			}
			if strings.HasSuffix(help, ".") {
				t.Errorf("help of %s ends in a full stop", name)
			}
		}
	}
}

// A help that names a unit of one system is no help to who works in the other.
func TestHelpNamesNoUnitOfTheOtherSystem(t *testing.T) {
	metric, us := regexp.MustCompile(`\d (mm|cm|kg)\b`), regexp.MustCompile(`\d (in|oz|qt|gal)\b`)
	for name, f := range Fields {
		if metric.MatchString(f.Help) && (f.HelpUS == "" || metric.MatchString(f.HelpUS)) {
			t.Errorf("in US units the help of %s still says %q", name, f.Help)
		}
		if us.MatchString(f.Help) || f.HelpUS == f.Help && f.Help != "" {
			t.Errorf("the helps of %s are %q and %q", name, f.Help, f.HelpUS)
		}
	}
}

func TestWhatIsSuggestedIsAnAnswer(t *testing.T) {
	for name, f := range Fields {
		if f.Suggested != "" && Answers[f.Suggested] == "" {
			t.Errorf("%s is to be filled with %s, which is no answer", name, f.Suggested)
		}
	}
}

func TestExampleIsOfTheVocabulary(t *testing.T) {
	fields, err := url.ParseQuery(Example)
	if err != nil {
		t.Fatal(err)
	}
	for name := range fields {
		if _, ok := Fields[name]; !ok {
			t.Errorf("the example fills %s, which is no field", name)
		}
	}
}
