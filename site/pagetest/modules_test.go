package pagetest

import (
	"encoding/json"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

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

// What is sent is what was typed, a blank and the unit control's unit, unless
// the text says its own unit. The rule is the vocabulary's; the texts are ours.
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
		{"3e", "mm", "3e"}, // no exponent: a letter, and the reader says so
	} {
		t.Run(c.typed+" "+c.unit, func(t *testing.T) {
			asked, err := json.Marshal([]string{c.typed, c.unit})
			if err != nil {
				t.Fatal(err)
			}
			var sent string
			inNode(t, `import { withUnit } from './page/typed.js'
				console.log(JSON.stringify(withUnit(...`+string(asked)+`)))`, &sent)
			if sent != c.sent {
				t.Errorf("%q with the unit %q is sent as %q, not as %q", c.typed, c.unit, sent, c.sent)
			}
		})
	}
}

// Whatever a script hands over becomes a text form: text stands, a finite number
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

// A text is parted from its unit only so that the same is sent of the two again;
// the texts are ours.
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
			inNode(t, `import { withUnit, withoutUnit } from './page/typed.js'
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

// Every vector's fields, as kept jobs, come back from the text of a file as they
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
	inNode(t, `import { jobsText, readJobs } from './page/jobtext.js'
		const jobs = `+string(asked)+`.map((text, i) => ({
			name: 'No. ' + i + ' ]x[ #1', fields: String(new URLSearchParams(text)), sentence: 'Two\nlines.', saved: 1e12 + i }))
		const text = jobsText(jobs)
		const { jobs: back, faults } = readJobs(text, () => '', 0)
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

// A name is on the shelf once; the names are ours.
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
		inNode(t, `import { apart } from './page/names.js'
			console.log(JSON.stringify(apart('`+c.name+`', `+c.others+`.map((name) => ({ name })))))`, &got)
		if got != c.want {
			t.Errorf("%q beside %s becomes %q, not %q", c.name, c.others, got, c.want)
		}
	}
}
