package field

import (
	"net/url"
	"strings"
	"testing"
	"unicode/utf8"

	"saltbite/calc/quantity"
)

func one(name, text string) *Set {
	return Read(url.Values{name: {text}}.Encode())
}

// Every row of the table can be read with its own words: its example, its
// default, and each unit that its control offers.
func TestTableReadsItself(t *testing.T) {
	seen := map[string]bool{}
	for _, f := range Fields {
		if seen[f.Name] {
			t.Errorf("%s stands twice", f.Name)
		}
		seen[f.Name] = true
		if f.Noun == "" || f.Example == "" {
			t.Errorf("%s: an error could not say what is wanted", f.Name)
		}
		if s := one(f.Name, f.Example); len(s.Errors()) > 0 || s.Value(f.Name).State != Given {
			t.Errorf("%s: its example %q gives %v", f.Name, f.Example, s.Errors())
		}
		if v := Read("").Value(f.Name); (v.State == Assumed) != (f.Default != "") {
			t.Errorf("%s: a blank gives %v, its default is %q", f.Name, v, f.Default)
		}
		for _, u := range f.Units {
			text := middle(f) + " " + u
			if f.Kinds[0] == quantity.Temperature || f.Name == "strength" || f.Name == "open" {
				text = "50 " + u
			}
			if s := one(f.Name, text); len(s.Errors()) > 0 {
				t.Errorf("%s: its control's %q gives %v", f.Name, text, s.Errors())
			}
		}
		if len(f.Units) > 0 && f.Bare != "" && f.Units[0] != f.Bare {
			t.Errorf("%s: its control starts with %q, a bare number means %q", f.Name, f.Units[0], f.Bare)
		}
	}
}

// middle is a number that any unit of a field's control can carry.
func middle(f Field) string {
	number, _, _ := strings.Cut(f.Example, " ")
	return number
}

func TestAnswersHaveTheirUnits(t *testing.T) {
	seen := map[string]bool{}
	for _, a := range Answers {
		if seen[a.Name] {
			t.Errorf("%s stands twice", a.Name)
		}
		seen[a.Name] = true
		for _, unit := range []string{a.Unit, a.US, a.Text} {
			if unit == "" || unit == a.Unit && a.Text != "" {
				continue
			}
			printed := quantity.Print(quantity.Of(12, unit), a.Kind, unit)
			if back, err := quantity.Read(printed, "", a.Kind); err != nil || quantity.In(back.Value, unit) < 11.9 || quantity.In(back.Value, unit) > 12.1 {
				t.Errorf("%s: 12 %s prints as %q and reads as %v, %v", a.Name, unit, printed, back, err)
			}
		}
	}
}

func TestRead(t *testing.T) {
	s := Read("depth=0%2C2+mm&metal=+brass+&foo=1&depth=3&find=TIME&pieces=1.5&temperature=900+C&width=12+ells&height=")
	if v := s.Value("depth"); v.State != Given || v.Q.Value != 0.2e-3 {
		t.Errorf("depth is %v, want the first, 0.2 mm", v)
	}
	if v := s.Value("metal"); v.Text != "brass" {
		t.Errorf("metal is %q", v.Text)
	}
	if v := s.Value("find"); v.Pick != "time" {
		t.Errorf("find is %q", v.Pick)
	}
	if v := s.Value("height"); v.State != Blank {
		t.Errorf("a blank height is %v", v)
	}
	want := map[string]string{"foo": Unknown, "depth": "ambiguous", "pieces": "number", "temperature": "range", "width": "unit"}
	for _, e := range s.Errors() {
		if want[e.Field] != e.Code {
			t.Errorf("%s: code %s, want %s: %s", e.Field, e.Code, want[e.Field], e.Text)
		}
		delete(want, e.Field)
	}
	for name := range want {
		t.Errorf("no error at %s", name)
	}
}

// A sentence about a mistake quotes what was typed, its first 40 characters,
// says what is wanted, and gives an example.
func TestErrorsSayAllThree(t *testing.T) {
	typed := strings.Repeat("é", 100)
	for _, f := range Fields {
		if f.Form == Words {
			continue
		}
		errs := one(f.Name, typed).Errors()
		if len(errs) != 1 {
			t.Errorf("%s: %d errors", f.Name, len(errs))
			continue
		}
		text := errs[0].Text
		if !strings.Contains(text, strings.Repeat("é", 40)) || strings.Contains(text, strings.Repeat("é", 41)) {
			t.Errorf("%s does not quote the first 40 characters: %s", f.Name, text)
		}
		if !strings.Contains(text, f.Example) || !strings.Contains(text, "wanted") {
			t.Errorf("%s does not say what is wanted: %s", f.Name, text)
		}
	}
}

func TestSetAside(t *testing.T) {
	s := Read("depth=ells&time=3+h")
	s.SetAside("depth")
	if v := s.Value("depth"); v.State != Blank || len(s.Errors()) != 0 {
		t.Errorf("set aside, depth is %v with %v", v, s.Errors())
	}
}

// A hostile text of many strange keys gives a bounded list of errors.
func TestStrangeKeysAreBounded(t *testing.T) {
	if n := len(Read(strings.Repeat("a=1&", 1<<15)).Errors()); n > mostUnknown {
		t.Errorf("%d errors", n)
	}
}

func FuzzRead(f *testing.F) {
	for _, row := range Fields {
		f.Add(url.Values{row.Name: {row.Example}}.Encode())
	}
	f.Add("depth=%zz&=&&&time=%FF")
	f.Fuzz(func(t *testing.T, text string) {
		s := Read(text)
		for _, row := range Fields {
			s.Value(row.Name)
		}
		for _, e := range s.Errors() {
			if !utf8.ValidString(e.Text) || e.Text == "" {
				t.Errorf("%q: a sentence that can't be shown: %q", text, e.Text)
			}
		}
	})
}
