package pagetest

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/quantity"
	"saltbite/testdata"
)

// inNode runs a script that may import the site's modules from "./", and reads
// the JSON that it prints.
func inNode(t *testing.T, script string, into any) {
	t.Helper()
	site, err := filepath.Abs("..")
	if err != nil {
		t.Fatal(err)
	}
	node := exec.Command("node", "--input-type=module", "--eval", script)
	node.Dir = site
	var said strings.Builder
	node.Stderr = &said
	printed, err := node.Output()
	if err != nil {
		t.Fatalf("%v: %s", err, said.String())
	}
	if err := json.Unmarshal(printed, into); err != nil {
		t.Fatalf("%v in %q", err, printed)
	}
}

// What is sent is what was typed, a space and the unit control's unit, unless
// the text has its own unit. The rule is the vocabulary's; the examples are our own.
func TestUnitIsAddedToBareNumbersOnly(t *testing.T) {
	for _, c := range []struct{ typed, unit, sent string }{
		{"12", "mm", "12 mm"},
		{" 0,3 ", "mm", "0,3 mm"},
		{"1 1/2", "in", "1 1/2 in"},
		{"1½", "in", "1½ in"},
		{"1e-3", "mm", "1e-3 mm"},
		{"2E+2", "g/L", "2E+2 g/L"},
		{"-5", "C", "-5 C"},
		{"", "mm", ""},
		{"  ", "mm", ""},
		{"4", "", "4"},
		{"18 ga", "mm", "18 ga"},
		{"0.2mm", "in", "0.2mm"},
		{"1/16\"", "mm", "1/16\""},
		{"90'", "min", "90'"},
		{"90′", "min", "90′"},
		{"20 %", "g/L", "20 %"},
		{"68 °F", "C", "68 °F"},
		{"1:40", "min", "1:40"},
		{"2 h 30", "min", "2 h 30"},
		{"20 µm", "mm", "20 µm"},
		{"#18", "mm", "#18"},
		{"20℃", "F", "20℃"},
		{"40％", "g/L", "40％"},
		{"5´", "mm", "5´"},
		{"3e", "mm", "3e"}, // no exponent: a letter, and the reader says so
	} {
		t.Run(c.typed+" "+c.unit, func(t *testing.T) {
			asked, err := json.Marshal([]string{c.typed, c.unit})
			if err != nil {
				t.Fatal(err)
			}
			var sent string
			inNode(t, `import { withUnit } from './page/form/units.js'
				console.log(JSON.stringify(withUnit(...`+string(asked)+`)))`, &sent)
			if sent != c.sent {
				t.Errorf("%q with the unit %q is sent as %q, not as %q", c.typed, c.unit, sent, c.sent)
			}
		})
	}
}

// The page and the reader of quantities agree on which texts have their own unit: for
// each character of the Basic Multilingual Plane beside a number, for each word of the
// table of units, and for numbers as people write them.
func TestPageAndReaderAgreeOnUnits(t *testing.T) {
	texts := []string{"5", "0,5", ".5", "5.", "1/16", "1 1/2", "1-1/2", "1½", "½", "-5", "+5", "5e3", "5E-3", "5.e3", "5e\u20133", "5 e3", "1:40",
		"5' 6", "2 h 30", "#18", "# 18", "no. 18", "18 b&s", "20 ℃", "40％", "5´", "5ʹ", "90′"}
	for r := rune(1); r < 0x10000; r++ {
		if r < 0xd800 || r > 0xdfff {
			texts = append(texts, "5"+string(r), "5 "+string(r), string(r)+"5", string(r)+" 5")
		}
	}
	for _, word := range wordsOfTheTable(t) {
		texts = append(texts, "5"+word, "5 "+word)
	}

	want := map[string]bool{} // whether it has its own unit, for texts that can be read
	for _, text := range texts {
		mm, err := quantity.Read(text, "mm", quantity.Length)
		in, err2 := quantity.Read(text, "in", quantity.Length)
		if err == nil && err2 == nil && mm.Value != in.Value {
			want[text] = false
		} else if _, err := quantity.Read(text, "", everyKind...); err == nil {
			want[text] = true
		}
	}
	if len(want) < 1000 {
		t.Errorf("only %d texts can be read", len(want))
	}
	asked, err := json.Marshal(want)
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "texts.json")
	if err := os.WriteFile(path, asked, 0o600); err != nil {
		t.Fatal(err)
	}
	var wrong []string
	inNode(t, `import { readFileSync } from 'node:fs'
		import { saysUnit } from './page/form/units.js'
		const want = JSON.parse(readFileSync(`+strconv.Quote(path)+`))
		console.log(JSON.stringify(Object.keys(want).filter((text) => saysUnit(text) !== want[text])))`, &wrong)
	for _, text := range wrong {
		t.Errorf("%+q has its own unit: the reader says %v, the page the opposite", text, want[text])
	}
}

// everyKind is every kind that has units.
var everyKind = []quantity.Kind{quantity.Share, quantity.Length, quantity.Area, quantity.Volume, quantity.Mass, quantity.Time, quantity.Temperature,
	quantity.Current, quantity.CurrentDensity, quantity.Voltage, quantity.Power, quantity.Resistance, quantity.Charge, quantity.Density, quantity.PerWater,
	quantity.Molarity, quantity.Saturation, quantity.Equivalent, quantity.Rate, quantity.Conductivity, quantity.HeatingRate}

var stringsOfTheTable = regexp.MustCompile(`(?:symbol|words): +("(?:[^"\\]|\\.)*")`)

// wordsOfTheTable are the symbols and words of the table of units, as its source
// has them.
func wordsOfTheTable(t *testing.T) []string {
	t.Helper()
	source, err := os.ReadFile("../../calc/quantity/table.go")
	if err != nil {
		t.Fatal(err)
	}
	var words []string
	for _, found := range stringsOfTheTable.FindAllStringSubmatch(string(source), -1) {
		text, err := strconv.Unquote(found[1])
		if err != nil {
			t.Fatal(err)
		}
		words = append(words, append(strings.Fields(text), text)...)
	}
	if !slices.Contains(words, "millimetre") || len(words) < 500 {
		t.Fatalf("the table has %d words", len(words))
	}
	return words
}

// Any value from a script becomes text: text is unchanged, a finite number
// is written out, anything else counts as not given, and nothing throws.
func TestValuesBecomeText(t *testing.T) {
	for _, c := range []struct{ name, value, text string }{
		{"text", `{ metal: 'yellow brass', depth: '0.2 mm' }`, "metal=yellow+brass&depth=0.2+mm"},
		{"numbers", `{ depth: 0.2, area: 1e21, time: 0 }`, "depth=0.2&area=1e%2B21&time=0"},
		{"no finite number", `{ depth: NaN, time: Infinity }`, ""},
		{"no text", `{ depth: null, time: undefined, area: true, metal: {}, find: [], open: () => 1, edge: Symbol('x'), fill: 1n }`, ""},
		{"null", `null`, ""},
		{"a number", `5`, ""},
		{"text alone", `'metal=brass'`, ""},
		{"a getter that throws", `{ get metal() { throw new Error('no') }, depth: '1' }`, "depth=1"},
		{"a proxy that refuses", `new Proxy({}, { ownKeys() { throw new Error('no') } })`, ""},
		{"half a pair of surrogates", `{ metal: '\ud800' }`, "metal=%EF%BF%BD"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var text string
			inNode(t, `import { textOf } from './engine/fields.js'
				console.log(JSON.stringify(textOf(`+c.value+`)))`, &text)
			if text != c.text {
				t.Errorf("%s becomes %q, not %q", c.value, text, c.text)
			}
		})
	}
}

// A text is split from its unit only if joining them gives the same text again; the
// examples are our own.
func TestTextIsPartedFromItsUnit(t *testing.T) {
	for _, c := range []struct{ sent, typed, unit string }{
		{"12 mm", "12", "mm"},
		{"0,3 in", "0,3", "in"},
		{"1 1/2 in", "1 1/2", "in"},
		{"200 g/L water", "200", "g/L water"},
		{"1e-3 mm", "1e-3", "mm"},
		{"12", "12", ""},
		{"1,234", "1,234", ""},
		{"12mm", "12mm", "none"},
		{"12  mm", "12  mm", "none"},
		{"18 ga", "18 ga", "none"},
		{"2 h 30 mm", "2 h 30 mm", "none"},
		{"mm", "mm", "none"},
		{" mm", " mm", "none"},
	} {
		t.Run(c.sent, func(t *testing.T) {
			asked, err := json.Marshal(c.sent)
			if err != nil {
				t.Fatal(err)
			}
			var got struct{ Typed, Unit, Again string }
			inNode(t, `import { withUnit, withoutUnit } from './page/form/units.js'
				const { typed, unit = 'none' } = withoutUnit(`+string(asked)+`, ['mm', 'in', 'g/L', 'g/L water'])
				console.log(JSON.stringify({ typed, unit, again: withUnit(typed, unit === 'none' ? 'cm' : unit) }))`, &got)
			if got.Typed != c.typed || got.Unit != c.unit {
				t.Errorf("%q is parted into %q and %q", c.sent, got.Typed, got.Unit)
			}
			if got.Again != strings.TrimSpace(c.sent) {
				t.Errorf("%q is sent again as %q", c.sent, got.Again)
			}
		})
	}
}

// Every vector's fields, as stored jobs, come back from the text of a file as they
// were, with their names and dates, and its lines are those of the one text form.
func TestJobsComeBackFromTheirText(t *testing.T) {
	all, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	var texts []string
	for _, v := range all {
		texts = append(texts, v.Text())
	}
	asked, err := json.Marshal(texts)
	if err != nil {
		t.Fatal(err)
	}
	var wrong []string
	inNode(t, `import { jobsText, readJobs } from './page/jobs/file.js'
		const jobs = `+string(asked)+`.map((text, i) => ({
			name: 'No. ' + i + ' ]x[ #1', fields: String(new URLSearchParams(text)), sentence: 'Two\nlines.', saved: 1e12 + i }))
		const text = jobsText(jobs)
		const { jobs: back, faults } = readJobs(text, () => '', 2e12)
		const wrong = [...faults]
		if (back.length !== jobs.length) wrong.push(jobs.length + ' jobs became ' + back.length)
		for (const [i, job] of jobs.entries()) {
			const want = JSON.stringify({ ...job, sentence: '' }), got = JSON.stringify(back[i])
			if (want !== got) wrong.push(want + ' came back as ' + got)
			if (!text.includes('\n' + job.fields.split('&').join('\n') + '\n')) wrong.push(job.fields + ' does not stand in the text')
		}
		console.log(JSON.stringify(wrong))`, &wrong)
	for _, w := range wrong {
		t.Error(w)
	}
}

// A name is unique on the shelf; the examples are our own.
func TestNamesAreToldApart(t *testing.T) {
	for _, c := range []struct{ name, others, want string }{
		{"A", `[]`, "A"},
		{"A", `["B"]`, "A"},
		{"A", `["A"]`, "A (2)"},
		{"A", `["A", "A (2)"]`, "A (3)"},
		{"A (2)", `["A", "A (2)"]`, "A (3)"},
		{"A (2)", `["A"]`, "A (2)"},
	} {
		var got string
		inNode(t, `import { namesBeside } from './page/jobs/names.js'
			console.log(JSON.stringify(namesBeside(`+c.others+`.map((name) => ({ name })))('`+c.name+`')))`, &got)
		if got != c.want {
			t.Errorf("%q beside %s becomes %q, not %q", c.name, c.others, got, c.want)
		}
	}
}

// A name has at most 200 characters, also with the number that tells it apart.
func TestNamesAreCut(t *testing.T) {
	var got []int
	inNode(t, `import { nameOf, namesBeside } from './page/jobs/names.js'
		const long = nameOf('é'.repeat(150) + '🧂'.repeat(150)), free = namesBeside([])
		console.log(JSON.stringify([long, free(long), free(long), nameOf('a\n  b')].map((name) => [...name].length)))`, &got)
	if want := []int{200, 200, 200, 3}; !slices.Equal(got, want) {
		t.Errorf("names have %v characters, want %v", got, want)
	}
}

// A file may give an impossible date.
func TestSavedDatesArePast(t *testing.T) {
	for _, c := range []struct{ said, saved string }{
		{"2026-11-25T14:05:00.000Z", "2026-11-25T14:05:00.000Z"},
		{"+275760-09-13T00:00:00.000Z", "2027-01-01T00:00:00.000Z"},
		{"-271821-04-20T00:00:00.000Z", "1970-01-01T00:00:00.000Z"},
		{"+275760-09-13", "2027-01-01T00:00:00.000Z"},
		{"never", "2027-01-01T00:00:00.000Z"},
	} {
		var got string
		inNode(t, `import { jobsText, readJobs } from './page/jobs/file.js'
			const { jobs } = readJobs('[A]\n# saved `+c.said+`\nmetal=copper', () => '', Date.parse('2027-01-01T00:00:00.000Z'))
			console.log(JSON.stringify(/# saved (.*)/.exec(jobsText(jobs))[1]))`, &got)
		if got != c.saved {
			t.Errorf("saved %s is read as %s, not %s", c.said, got, c.saved)
		}
	}
}
