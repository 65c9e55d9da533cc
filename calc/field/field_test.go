package field

import (
	"net/url"
	"reflect"
	"strconv"
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
	for i, f := range Fields {
		name := Name(i)
		if seen[f.Name] {
			t.Errorf("%s stands twice", f.Name)
		}
		seen[f.Name] = true
		if f.Noun == "" || f.Example == "" {
			t.Errorf("%s: an error could not say what is wanted", f.Name)
		}
		if s := one(f.Name, f.Example); len(s.Errors()) > 0 || s.Value(name).State != quantity.Given {
			t.Errorf("%s: its example %q gives %v", f.Name, f.Example, s.Errors())
		}
		if v := Read("").Value(name); (v.State == quantity.Assumed) != (f.Default != "") {
			t.Errorf("%s: a blank gives %v, its default is %q", f.Name, v, f.Default)
		}
		for _, u := range f.Units {
			text := middle(f) + " " + u
			if f.Kinds[0] == quantity.Temperature || len(f.Bounds) > 0 || f.Name == "open" {
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
	if v := s.Value(Depth); v.State != quantity.Given || v.Q.Value != 0.2e-3 {
		t.Errorf("depth is %v, want the first, 0.2 mm", v)
	}
	if v := s.Value(Metal); v.Text != "brass" {
		t.Errorf("metal is %q", v.Text)
	}
	if v := s.Value(Find); v.Pick != "time" {
		t.Errorf("find is %q", v.Pick)
	}
	if v := s.Value(Height); v.State != quantity.Blank {
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
		if !strings.Contains(text, f.Example) || !strings.Contains(text, "Type ") {
			t.Errorf("%s does not say what is wanted: %s", f.Name, text)
		}
	}
}

func TestWithout(t *testing.T) {
	s := Read("depth=ells&time=3+h&foo=1")
	less := s.Without(Depth)
	if !less.Blank(Depth) || len(less.Errors()) != 1 || less.Errors()[0].Field != "foo" {
		t.Errorf("without it, depth is %v with %v", less.Value(Depth), less.Errors())
	}
	if s.Value(Depth).State != quantity.Bad || len(s.Errors()) != 2 || less.Text(Time) != "3 h" {
		t.Errorf("the set itself changed: %v", s.Errors())
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
		for i := range Fields {
			if v := s.Value(Name(i)); v.State == quantity.Given && v.Text == "" {
				t.Errorf("%q: %s was read out of nothing", text, Fields[i].Name)
			}
		}
		for _, e := range s.Errors() {
			if !utf8.ValidString(e.Text) || e.Text == "" {
				t.Errorf("%q: a sentence that can't be shown: %q", text, e.Text)
			}
		}
	})
}

// A field that takes several kinds of quantity is held to the limits of each.
func TestBounds(t *testing.T) {
	for _, x := range []struct {
		name, text string
		ok         bool
	}{
		{"keep", "-50 %", false}, {"keep", "150 %", false}, {"keep", "100 %", false}, {"keep", "99 %", true}, {"keep", "3 m", false}, {"keep", "0.5 mm", true},
		{"strength", "6000 g/L", false}, {"strength", "101 %", false}, {"strength", "80 % sat", true}, {"strength", "150 mol/L", false},
		{"haveStrength", "6000", false}, {"waterInHand", "2 L", true}, {"waterInHand", "2 cups", true}, {"waterInHand", "0 L", false}, {"waterInHand", "2 kg", true},
	} {
		errors := one(x.name, x.text).Errors()
		if (len(errors) == 0) != x.ok {
			t.Errorf("%s=%s gives %v", x.name, x.text, errors)
		}
	}
}

// What is remembered of one set stands in no other: sets read with a memory, of which
// many texts are alike, are what each is alone, with the same mistakes in the same order.
func TestMemory(t *testing.T) {
	memory := Memory{}
	for _, text := range []string{"metal=brass&depth=0.2&current=x", "current=x&depth=0.2&metal=copper", "depth=x&depth=0.2&sides=two&mood=good",
		"current=0.2&depth=0.2+mm&sides=2", "mood=good&depth=x&metal=brass", ""} {
		if got, want := memory.ReadPairs(Pairs(text)), Read(text); !reflect.DeepEqual(got, want) {
			t.Errorf("%s is read as %+v with %v, alone with %v", text, got, got.Errors(), want.Errors())
		}
	}
	for i := range 2 * mostRemembered {
		memory.ReadPairs(Pairs("depth=" + strconv.Itoa(i)))
	}
	if len(memory) != mostRemembered {
		t.Errorf("%d texts are remembered", len(memory))
	}
}
