package site

import (
	"bytes"
	"errors"
	"fmt"
	"html/template"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"saltbite/build/seal"
	"saltbite/calc/field"
	"saltbite/calc/metal"
	"saltbite/calc/quantity"
	"saltbite/site/words"
)

// page is what the template of the page is filled with: the tables of fields
// and answers, each row with its words.
type page struct {
	built
	Example string // a job in the one text form
	Parts   []part
}

// built is what the page says of the version that it belongs to.
type built struct {
	Use                 use
	Version             string
	Content             string // names what is in all files that a device keeps
	Head, Style, Script loaded
	Old                 loaded // for browsers that can't run the page
	Icon                template.URL
}

// loaded is a file that the page loads, by its body.
type loaded struct {
	Tag       string
	Integrity template.HTMLAttr // written as it is: base64 has signs that would be escaped
}

func load(body []byte) loaded {
	s := seal.Of(body)
	return loaded{s.Tag(), template.HTMLAttr(`integrity="` + s.Integrity + `"`)}
}

// sourced is where each figure comes from, and what each caution rests on, as the
// page's script reads it. A row of Sources stands there once, in the order in
// which it is first named.
type sourced struct {
	Origins  []origin             `json:"origins"`
	Cautions []origin             `json:"cautions"`
	Sources  []sourceRow          `json:"sources"`
	Metals   map[string]sourceRow `json:"metals"` // where a row of the catalogue was read, by its id
}

// origin is what is said of an answer, or of the caution whose code stands in its
// name, and has no formula.
type origin struct {
	Name    string   `json:"name"`
	Label   string   `json:"label"`
	Formula string   `json:"formula,omitempty"`
	Assumes string   `json:"assumes"`
	Uses    []string `json:"uses"` // keys of Sources
}

type sourceRow struct {
	Key        string `json:"key"`
	Title      string `json:"title"`
	Text       string `json:"text"`
	Confidence string `json:"confidence"`
}

type part struct {
	Name string
	words.Part
	Fields  []control
	Rare    bool // some of its fields fold away
	Answers []figure
}

// control is a field as the form shows it: its words and what the table says.
type control struct {
	Name, Form, Default, Bare, USUnit, Example string
	Label, Help, HelpUS                        string
	Keys                                       string // the on-screen keys that it brings
	InMetric                                   bool   // only while its unit is metric: others are typed as fractions
	Fill, Suggested                            string // what one touch fills in
	Rare, Sought, Wide                         bool
	Makes, Suggest                             []string
	Units                                      []unit
	Choices                                    []choice
}

type unit struct{ Symbol, Label string }

type choice struct {
	Value, Label string
	Also         []string // in other words: in those of a link or a kept job
}

type figure struct{ Name, Label, Range string }

// use is how a page is used: the template leaves out what can't work there.
type use string

const (
	onSite  use = "site"  // with its files beside it
	asFile  use = "file"  // all in one file, on a memory stick
	inFrame use = "frame" // all in one file, in a frame on somebody else's page
)

// Whole is whether it is the page itself and no part of another.
func (p page) Whole() bool { return p.Use != inFrame }

// pageHTML fills the page's template.
func pageHTML(root string, as built) ([]byte, error) {
	if err := everyNameHasWords(); err != nil {
		return nil, err
	}
	return fill(root, "page.html", page{as, words.Example, parts()})
}

// fill fills one of the page's templates.
func fill(root, name string, with any) ([]byte, error) {
	form, err := template.ParseFS(os.DirFS(filepath.Join(root, "site", "page")), "*.html", "*/*.html")
	if err != nil {
		return nil, err
	}
	var html bytes.Buffer
	err = form.Option("missingkey=error").ExecuteTemplate(&html, name, with)
	return html.Bytes(), err
}

func parts() []part {
	var all []part
	for _, name := range field.Parts {
		if words.Parts[string(name)].OffPage {
			continue
		}
		p := part{Name: string(name), Part: words.Parts[string(name)]}
		for _, f := range field.Fields {
			if f.Part != name {
				continue
			}
			c := controlOf(f)
			p.Fields = append(p.Fields, c)
			p.Rare = p.Rare || c.Rare
		}
		for _, a := range field.Answers {
			if a.Part == name {
				p.Answers = append(p.Answers, figure{a.Name, words.Answers[a.Name], words.Ranges[a.Name]})
			}
		}
		all = append(all, p)
	}
	return all
}

// origins lists where the answers come from, in the order of the answers, the cautions by code.
func origins() (all sourced) {
	named := map[string]bool{}
	cite := func(keys []string) []string {
		for _, key := range keys {
			if !named[key] {
				named[key] = true
				row := words.Sources[key]
				all.Sources = append(all.Sources, sourceRow{key, row.Title, row.Text, row.Confidence})
			}
		}
		return append([]string{}, keys...) // an empty list, not null, in JSON
	}
	for _, a := range field.Answers {
		from := words.Origins[a.Name]
		all.Origins = append(all.Origins, origin{a.Name, words.Answers[a.Name], from.Formula, from.Assumes, cite(from.Uses)})
	}
	for _, code := range slices.Sorted(maps.Keys(words.CautionOrigins)) {
		from := words.CautionOrigins[code]
		all.Cautions = append(all.Cautions, origin{"caution-" + code, "Caution “" + code + "”", "", from.Rests, cite(from.Uses)})
	}
	all.Metals = map[string]sourceRow{}
	for m := range metal.All() {
		source, _ := metal.SourceOf(m.ID)
		all.Metals[m.ID] = sourceRow{Text: source.Text, Confidence: source.Confidence}
	}
	return all
}

var formNames = map[field.Form]string{
	field.Amount: "amount", field.Whole: "whole", field.Choice: "choice", field.Words: "words",
	field.Clock: "text", field.Series: "text", field.Hydrometer: "text",
}

func controlOf(f field.Field) control {
	said := words.Fields[f.Name]
	c := control{Name: f.Name, Form: formNames[f.Form], Default: f.Default, Bare: f.Bare, USUnit: f.USUnit, Example: f.Example,
		Label: said.Label, Help: said.Help, HelpUS: said.HelpUS, Keys: keysOf(f), Fill: said.Fill, Suggested: said.Suggested,
		InMetric: inMetric(f), Rare: said.Rare, Sought: said.Sought, Wide: f.Form == field.Series, Makes: said.Makes, Suggest: said.Suggest}
	for _, symbol := range f.Units {
		c.Units = append(c.Units, unit{symbol, words.Unit(symbol)})
	}
	if f.Form == field.Amount && slices.Contains(f.Kinds, quantity.Time) {
		c.Units = append(c.Units, unit{HoursMinutes, HoursMinutes})
	}
	if len(c.Units) > 0 && c.Default != "" && !strings.Contains(c.Default, " ") {
		c.Default += " " + words.Unit(f.Bare) // also where the unit control shows another
	}
	for _, value := range f.Choices {
		c.Choices = append(c.Choices, choice{value, said.Choices[value], alsoOf(f, value)})
	}
	if f.Name == "metal" {
		for m := range metal.All() {
			c.Suggest = append(c.Suggest, m.Name)
		}
	}
	return c
}

// HoursMinutes is what the unit control of a time offers for a time that is typed
// with a colon, which says its own unit.
const HoursMinutes = "h:min"

// digitsAlone are the kinds of which nothing but a number is typed: their unit
// stands beside the control, and they are not typed as fractions.
var digitsAlone = []quantity.Kind{quantity.Number, quantity.CurrentDensity, quantity.Current, quantity.Voltage,
	quantity.Temperature, quantity.Resistance, quantity.Share}

// digitsInMetric are those of which that holds while their unit is metric.
var digitsInMetric = []quantity.Kind{quantity.Length, quantity.Area, quantity.Volume}

// keysOf is which keys a touch brings up: digits and a mark only where nothing else
// can be typed. A tablet's digits have no colon, no stroke and no letter.
func keysOf(f field.Field) string {
	letters := func(k quantity.Kind) bool { return !slices.Contains(digitsAlone, k) }
	switch {
	case f.Form == field.Whole:
		return "numeric"
	case inMetric(f):
		return "decimal"
	case f.Form != field.Amount || slices.ContainsFunc(f.Kinds, letters) || f.Name == "open" || f.Name == "back":
		return "text"
	}
	return "decimal"
}

// inMetric says whether digits are enough while the unit is metric: not where a
// gauge is typed as well.
func inMetric(f field.Field) bool {
	return f.Form == field.Amount && len(f.Kinds) == 1 && slices.Contains(digitsInMetric, f.Kinds[0]) && !slices.Contains(f.Units, "ga")
}

// alsoOf lists the other words for a choice; the default stands in the form as a
// blank, so its own name is another word for it.
func alsoOf(f field.Field, value string) []string {
	var also []string
	if value == f.Default {
		also = append(also, value)
	}
	for _, other := range f.Also {
		if other.Choice == value {
			also = append(also, other.Word)
		}
	}
	return also
}

// everyNameHasWords fails on a name that stands in the vocabulary and not in
// the words, or the reverse.
func everyNameHasWords() error {
	var fields, answers, parts []string
	for _, f := range field.Fields {
		fields = append(fields, f.Name)
	}
	for _, a := range field.Answers {
		answers = append(answers, a.Name)
	}
	for _, p := range field.Parts {
		parts = append(parts, string(p))
	}
	return errors.Join(
		alike("field", fields, words.Fields),
		alike("answer", answers, words.Answers),
		alike("part", parts, words.Parts),
		alike("origin of the answer", answers, words.Origins),
	)
}

func alike[W any](what string, names []string, said map[string]W) error {
	var wrong error
	named := map[string]bool{}
	for _, name := range names {
		named[name] = true
		if _, ok := said[name]; !ok {
			wrong = errors.Join(wrong, fmt.Errorf("%s %s stands in calc/field and has no words in site/words", what, name))
		}
	}
	for name := range said {
		if !named[name] {
			wrong = errors.Join(wrong, fmt.Errorf("%s %s has words in site/words and does not stand in calc/field", what, name))
		}
	}
	return wrong
}
