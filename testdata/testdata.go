// Package testdata holds what the project is checked against, as plain files,
// and the one reader of its vectors.
//
// A vector is a set of fields as a person types them and what must come of it.
// A file of vectors is lines; a blank line ends a vector, "#" starts a comment:
//
//	vector: copper, an hour at 0.123 A
//	metal=copper                                  a field: its name, "=", its text
//	current=0.123 A
//	found time depth | S                          names of what was found
//	removed = 0.1457 g within 0.1 % | S           an answer in its fixed unit
//	low depth = 0.1 mm within 0.1 % | S           an end of its range, or "high"
//	absent time | S                               an answer that may not be there
//	caution dense note | S                        a caution and its level
//	calm dense | S                                a caution that may not be there
//	error depth missing | S                       an error, its field and code
//	fair depth | S                                a field at which no error may stand
//	sentence … | S                                words that the sentence holds
//	silent … | S                                  words that the sentence does not hold
//	supply limit … | S                            the verdict: yes, limit or no; words that its line holds
//	assumes gap cathode | S                       the fields that the verdict assumes, all of them, or "nothing"
//	cause film first | S                          the likeliest cause of what is seen
//	offers open "40 %" | S                        a reading that an ambiguous field's error offers
//
// S is the source of what is expected; it stands on every line. A key that is
// neither a field nor an answer fails the reading.
package testdata

import (
	"embed"
	"encoding/json"
	"fmt"
	"math"
	"net/url"
	"path"
	"slices"
	"strconv"
	"strings"

	"saltbite/calc/field"
)

// Files are the data as they stand.
//
//go:embed *.csv vectors/*.txt
var Files embed.FS

// Vector is one set of fields and what must come of it.
type Vector struct {
	Name   string // with the file's name before it
	Fields url.Values
	Wants  []Want
}

// Want is one thing that must be so.
type Want struct {
	Line   string // as it stands in the file, for the report
	Source string
	check  func(Reply) string // what is wrong, or ""
}

// Text is the vector's fields in the one text form.
func (v Vector) Text() string { return v.Fields.Encode() }

// Check lists what is wrong with a reply in JSON; nothing if all is as wanted.
func (v Vector) Check(reply string) []string {
	var r Reply
	if err := json.Unmarshal([]byte(reply), &r); err != nil {
		return []string{"the reply is no JSON: " + err.Error()}
	}
	return v.Wrong(r)
}

// Wrong is Check of a reply that is no text any more.
func (v Vector) Wrong(r Reply) []string {
	var wrong []string
	for _, w := range v.Wants {
		if what := w.check(r); what != "" {
			wrong = append(wrong, fmt.Sprintf("%s: %s", w.Line, what))
		}
	}
	return wrong
}

// Reply is what the border sends, as far as a vector can ask about it.
type Reply struct {
	Sentence string
	Found    []string
	Answers  map[string]Answer
	Supply   *Supply
	Rows     struct{ Causes []Cause }
	Cautions []Caution
	Errors   []Error
}

// What a reply is made of.
type (
	Answer struct {
		Value     float64
		Low, High *float64
	}
	Supply struct {
		Fits, Text string
		Assumed    []string
	}
	Cause   struct{ Code string }
	Caution struct{ Code, Level, Text string }
	Error   struct {
		Field, Code string
		Text        string
		Readings    []string
	}
)

// Vectors reads all files of vectors.
func Vectors() ([]Vector, error) {
	names, err := Files.ReadDir("vectors")
	if err != nil {
		return nil, err
	}
	var all []Vector
	for _, n := range names {
		text, err := Files.ReadFile(path.Join("vectors", n.Name()))
		if err != nil {
			return nil, err
		}
		list, err := read(strings.TrimSuffix(n.Name(), ".txt"), string(text))
		if err != nil {
			return nil, err
		}
		all = append(all, list...)
	}
	return all, nil
}

// read reads one file.
func read(file, text string) ([]Vector, error) {
	var list []Vector
	open := false
	for i, line := range strings.Split(text, "\n") {
		line = strings.TrimSpace(line)
		switch name, isVector := strings.CutPrefix(line, "vector:"); {
		case line == "":
			open = false
		case line[0] == '#':
		case isVector:
			list = append(list, Vector{Name: file + ": " + strings.TrimSpace(name), Fields: url.Values{}})
			open = true
		case !open:
			return nil, fmt.Errorf("%s line %d: %q stands in no vector", file, i+1, line)
		default:
			if err := list[len(list)-1].take(line); err != nil {
				return nil, fmt.Errorf("%s line %d: %w", file, i+1, err)
			}
		}
	}
	for _, v := range list {
		if len(v.Wants) == 0 {
			return nil, fmt.Errorf("%s: nothing is wanted", v.Name)
		}
	}
	return list, nil
}

// take reads one line of a vector: a field, or a want with its source.
func (v *Vector) take(line string) error {
	ask, source, hasSource := strings.Cut(line, "|")
	if !hasSource {
		name, text, ok := strings.Cut(line, "=")
		if _, known := field.NameOf(name); !ok || !known {
			return fmt.Errorf("%q is no field, and no want with its source", line)
		}
		v.Fields.Set(name, strings.TrimSpace(text))
		return nil
	}
	ask, source = strings.TrimSpace(ask), strings.TrimSpace(source)
	if source == "" {
		return fmt.Errorf("%q has no source", ask)
	}
	check, err := want(strings.Fields(ask))
	if err != nil {
		return fmt.Errorf("%q: %w", ask, err)
	}
	v.Wants = append(v.Wants, Want{ask, source, check})
	return nil
}

// want reads the words of a want.
func want(w []string) (func(Reply) string, error) {
	if len(w) < 2 {
		return nil, fmt.Errorf("too few words")
	}
	rest := w[1:]
	switch w[0] {
	case "found":
		return func(r Reply) string { return unless(slices.Equal(r.Found, rest), "found %v", r.Found) }, nil
	case "absent":
		return absent(rest[0])
	case "caution", "calm":
		return caution(w[0] == "caution", rest), nil
	case "error", "fair":
		return mistake(w[0] == "error", rest)
	case "low", "high":
		return number(rest, w[0])
	case "sentence", "silent":
		return sentence(w[0] == "sentence", strings.Join(rest, " ")), nil
	case "supply":
		return supply(rest[0], strings.Join(rest[1:], " "))
	case "assumes":
		return assumes(rest)
	case "cause":
		return cause(rest)
	case "offers":
		return offers(rest[0], strings.Join(rest[1:], " "))
	}
	return number(w, "")
}

func unless(fine bool, format string, args ...any) string {
	if fine {
		return ""
	}
	return fmt.Sprintf(format, args...)
}

func absent(name string) (func(Reply) string, error) {
	if _, err := unit(name); err != nil {
		return nil, err
	}
	return func(r Reply) string {
		a, there := r.Answers[name]
		return unless(!there, "it is %v", a.Value)
	}, nil
}

func caution(wanted bool, w []string) func(Reply) string {
	return func(r Reply) string {
		for _, c := range r.Cautions {
			if c.Code == w[0] && (len(w) == 1 || c.Level == w[1]) {
				return unless(wanted, "it is raised: %s", c.Text)
			}
		}
		return unless(!wanted, "it is not raised, but %v", r.Cautions)
	}
}

func mistake(wanted bool, w []string) (func(Reply) string, error) {
	if _, ok := field.NameOf(w[0]); !ok {
		return nil, fmt.Errorf("no field %s", w[0])
	}
	return func(r Reply) string {
		for _, e := range r.Errors {
			if e.Field == w[0] && (len(w) == 1 || e.Code == w[1]) {
				return unless(wanted, "it stands: %s", e.Text)
			}
		}
		return unless(!wanted, "it does not stand, but %v", r.Errors)
	}, nil
}

func sentence(wanted bool, words string) func(Reply) string {
	return func(r Reply) string {
		return unless(strings.Contains(r.Sentence, words) == wanted, "the sentence is %q", r.Sentence)
	}
}

func supply(fits, words string) (func(Reply) string, error) {
	if !slices.Contains([]string{"yes", "limit", "no"}, fits) {
		return nil, fmt.Errorf("no verdict %s", fits)
	}
	return func(r Reply) string {
		if r.Supply == nil {
			return "there is no verdict"
		}
		return unless(r.Supply.Fits == fits && strings.Contains(r.Supply.Text, words), "the verdict is %s: %s", r.Supply.Fits, r.Supply.Text)
	}, nil
}

func assumes(names []string) (func(Reply) string, error) {
	if slices.Equal(names, []string{"nothing"}) {
		names = nil
	}
	for _, name := range names {
		if _, ok := field.NameOf(name); !ok {
			return nil, fmt.Errorf("no field %s", name)
		}
	}
	return func(r Reply) string {
		if r.Supply == nil {
			return "there is no verdict"
		}
		return unless(slices.Equal(slices.Sorted(slices.Values(r.Supply.Assumed)), slices.Sorted(slices.Values(names))), "it assumes %v", r.Supply.Assumed)
	}, nil
}

// cause reads "CODE first".
func cause(w []string) (func(Reply) string, error) {
	if len(w) != 2 || w[1] != "first" {
		return nil, fmt.Errorf("a code and the word first are wanted")
	}
	return func(r Reply) string {
		list := r.Rows.Causes
		return unless(len(list) > 0 && list[0].Code == w[0], "the causes are %v", list)
	}, nil
}

// offers reads what stands between quotation marks, as the page would type it.
func offers(name, quoted string) (func(Reply) string, error) {
	reading, err := strconv.Unquote(quoted)
	if _, ok := field.NameOf(name); !ok || err != nil {
		return nil, fmt.Errorf("a field and a reading in quotation marks are wanted")
	}
	return func(r Reply) string {
		for _, e := range r.Errors {
			if e.Field == name && slices.Contains(e.Readings, reading) {
				return ""
			}
		}
		return fmt.Sprintf("it is not offered, but %v", r.Errors)
	}, nil
}

func unit(answer string) (string, error) {
	for _, a := range field.Answers {
		if a.Name == answer {
			return a.Unit, nil
		}
	}
	return "", fmt.Errorf("no answer %s", answer)
}

// number reads "NAME = X UNIT within P %", of the value or an end of its range.
func number(w []string, end string) (func(Reply) string, error) {
	fixed, err := unit(w[0])
	if err != nil {
		return nil, err
	}
	head, tail, _ := strings.Cut(strings.Join(w[1:], " "), " within ")
	var percent float64
	if _, err := fmt.Sscanf(tail, "%f %%", &percent); err != nil {
		return nil, fmt.Errorf("how near is it to be, in %%")
	}
	value, typed, _ := strings.Cut(strings.TrimPrefix(head, "= "), " ")
	x, err := strconv.ParseFloat(value, 64)
	if err != nil || typed != fixed {
		return nil, fmt.Errorf("a number and the unit %s are wanted", fixed)
	}
	return func(r Reply) string {
		a, there := r.Answers[w[0]]
		got := map[string]*float64{"": &a.Value, "low": a.Low, "high": a.High}[end]
		if !there || got == nil {
			return fmt.Sprintf("it is absent; errors %v", r.Errors)
		}
		return unless(math.Abs(*got-x) <= percent/100*math.Abs(x), "it is %.6g", *got)
	}, nil
}
