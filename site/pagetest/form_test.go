package pagetest

import (
	"strings"
	"testing"

	"saltbite/build/browser"
)

var formChecks = []check{
	{"few stops before the first field", fewStops}, // first: in WebKitGTK a used mouse changes where Tab leads
	{"a question opens its part", questionOpensItsPart},
	{"a list swallows the touch that closes it", listSwallowsTheTouch},
	{"what a text may mean", readingsAsButtons},
	{"steps as rows", stepsAsRows},
	{"figures at their fields", figuresAtTheirFields},
	{"what went wrong", causesInTheirPart},
	{"one deed at a time", oneDeedAtATime},
	{"fields without a row", fieldsWithoutARow},
	{"an opened part stays under the finger", openedPartStays},
	{"hours and minutes", hoursAndMinutes},
}

func TestForm(t *testing.T) {
	t.Parallel()
	holdAll(t, formChecks)
}

// fewStops: between the head and the first field there are at most six stops, with
// the example on the sheet; and a link leads there at once.
func fewStops(t *testing.T, p *page) {
	p.ask(`document.getElementById('example').click()`)
	p.answers("brass")
	p.ask(`document.getElementById('to-share').focus()`)
	stops := 0
	for at := ""; at != "metal"; stops++ {
		if stops > 7 {
			t.Fatalf("after %d stops the focus is on %s", stops, at)
		}
		if err := p.Press(browser.Tab); err != nil {
			t.Fatal(err)
		}
		at = p.say(`return document.activeElement.id`)
	}
	if stops > 7 { // the field itself counts as well
		t.Errorf("there are %d stops before the first field", stops-1)
	}
	p.ask(`document.querySelector('.skip').click()`)
	if at := p.say(`return location.hash`); at != "#metal" {
		t.Errorf("the skip link leads to %s", at)
	}
}

func questionOpensItsPart(t *testing.T, p *page) {
	for _, q := range []struct{ ask, part, field string }{
		{"time", "bite", "metal"}, {"supply", "supply", "volts"}, {"bath", "bath", "salt"}, {"check", "course", "before"},
	} {
		p.click(".questions label:has([value=" + q.ask + "])")
		p.until(`document.activeElement.id === arguments[0] && document.querySelector('[data-part=' + arguments[1] + ']').open`, q.field, q.part)
		if covered := p.ask(`return !` + inSight); covered == true {
			t.Errorf("asked %s, %s has the focus and is covered", q.ask, q.field)
		}
	}
	p.fill(copperJob)
	p.click(".questions label:has([value=supply])")
	p.fill(map[string]string{"volts": "12", "amps": "2"})
	p.answers("would drive")
	p.load("/") // the question is part of the job
	if asked := p.say(`return document.querySelector('.questions :checked')?.value`); asked != "supply" {
		t.Errorf("after a reload the question is %q", asked)
	}
	p.click("#clear")
	if asked := p.ask(`return document.querySelector('.questions :checked')`); asked != nil {
		t.Error("Clear leaves a question")
	}
}

// listSwallowsTheTouch: a press beside the list, on a label, a button or a heading, closes it
// and does nothing else; the second one does what it says.
func listSwallowsTheTouch(t *testing.T, p *page) {
	for _, there := range []string{"label[for=width]", "#example", "[data-part=design] > summary"} {
		p.fresh()
		p.typeIn("metal", "bra")
		p.until(`document.getElementById('metal').ariaExpanded === 'true'`)
		place := struct{ X, Y int }{}
		if err := p.ExecuteTo(&place, `const r = document.querySelector(arguments[0]).getBoundingClientRect(); return { x: Math.round(r.x + 8), y: Math.round(r.y + r.height / 2) }`, there); err != nil {
			t.Fatal(err)
		}
		for _, press := range []func() error{func() error { return p.Hold(place.X, place.Y) }, p.Lift} {
			if err := press(); err != nil {
				t.Fatal(err)
			}
		}
		p.until(`document.getElementById('metal').ariaExpanded === 'false' && document.querySelector('.veil').hidden`)
		if got := p.say(`return [document.activeElement.id, document.getElementById('metal').value, document.getElementById('width').value, document.querySelector('[data-part=design]').open].join(' ')`); got != "metal bra  true" {
			t.Errorf("the press on %s that closed the list left %q", there, got)
		}
	}
	p.click("[data-part=design] > summary")
	p.until(`!document.querySelector('[data-part=design]').open`)
}

func readingsAsButtons(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "brass", "width": "60", "height": "40", "open": "0,4"})
	p.until(`document.querySelectorAll('[data-field=open] .readings button').length === 2`)
	if got := p.say(`return [...document.querySelectorAll('[data-field=open] .readings button')].map((b) => b.textContent).join('; ')`); got != "40 %; 0.4 %" {
		t.Errorf("0,4 may be %s", got)
	}
	p.click("[data-reading='40 %']")
	p.until(`document.getElementById('open').value === '40 %' && !document.querySelector('.readings')`)
	p.click("#undo")
	p.until(`document.getElementById('open').value === '0,4'`)
}

// stepsAsRows: the steps are one field in its own text form, whichever way they are
// typed. The times are those of the steps in the testdata of the same job.
func stepsAsRows(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "metalDensity": "8.96", "density": "30"})
	p.typeIn("bites-depth-1", "0.05")
	p.until(`document.querySelector('#bites-says .word').textContent.includes('Step 1 needs its exposed area')`)
	p.typeIn("bites-area-1", "10")
	p.typeIn("bites-depth-2", "0,05")
	p.typeIn("bites-area-2", "5")
	p.until(`[...document.querySelectorAll('.steps .amperes')].map((e) => e.textContent).join() === '0.300 A,0.150 A'`)
	if got := p.value("bites"); got != "0.05 10; 0,05 5" {
		t.Errorf("the steps are written as %q", got)
	}
	p.click(".steps .add")
	p.until(`document.activeElement.id === 'bites-depth-3'`)
	p.fill(map[string]string{"bites": "0.1 in 2 in2; 0.05 in 1 in2"}) // as a link brings it
	p.until(`document.getElementById('bites-depth-1').value === '0.1' && document.querySelector('.steps select').value === 'in'`)
	p.click(".steps .remove")
	p.until(`document.getElementById('bites').value === '0.05 in 1 in2'`)
	p.click("#undo")
	p.until(`document.getElementById('bites').value === '0.1 in 2 in2; 0.05 in 1 in2' && document.getElementById('bites-area-2').value === '1'`)
	p.fill(map[string]string{"bites": "deep and wide"}) // no list: it stands as it was typed
	p.until(`document.getElementById('bites').checkVisibility() && document.getElementById('bites').ariaInvalid === 'true'`)
}

func figuresAtTheirFields(t *testing.T, p *page) {
	p.fill(map[string]string{"salt": "copper sulfate", "strength": "150", "volume": "2", "volumeNow": "1.6"})
	p.until(`document.querySelector('#volumeNow-says .word').textContent.includes('Water to add 0.4')`)
	p.fill(map[string]string{"metal": "copper", "area": "10", "before": "24.60", "after": "24.20"})
	p.until(`document.querySelector('#after-says .word').textContent.includes('On for')`)
}

func causesInTheirPart(t *testing.T, p *page) {
	p.fill(copperJob)
	p.fill(map[string]string{"seen": "faint"})
	p.until(`document.querySelectorAll('#causes li').length > 2`)
	p.unfold("seen")
	p.click("#causes button[data-leads=readings]")
	p.until(`document.activeElement.id === 'readings'`)
	p.fill(map[string]string{"seen": ""})
	p.until(`document.querySelectorAll('#causes li').length === 0`)
}

func oneDeedAtATime(t *testing.T, p *page) {
	p.click("#example") // on an empty sheet it asks nothing
	p.answers("brass")
	p.ask(`document.getElementById('depth').select()`)
	p.typeIn("depth", "9")
	p.typeIn("pieces", "14")
	p.until(`document.getElementById('pieces').value === '14'`)
	p.click("#undo")
	p.until(`document.getElementById('pieces').value === '' && document.getElementById('depth').value !== '0.25'`)
	p.click("#undo")
	p.until(`document.getElementById('depth').value === '0.25' && document.getElementById('metal').value === 'brass'`)
	p.click("#undo")
	p.until(`document.getElementById('metal').value === '' && document.getElementById('undo').disabled`)
}

// fieldsWithoutARow come in a link and go on in the next, unseen.
func fieldsWithoutARow(t *testing.T, p *page) {
	p.bring("metal=copper&metalDensity=8.96&area=10&depth=0.1&density=30&islands=12&session=3+h")
	p.answers(copperTime)
	p.load("/")
	p.click("#to-share")
	p.until(`['islands=12', 'session=3+h'].every((text) => [...document.querySelectorAll('#share input, #share textarea')].some((e) => e.value.includes(text)))`)
}

// openedPartStays: the heading that a finger opened is where it was.
func openedPartStays(t *testing.T, p *page) {
	for _, size := range sizes[:2] {
		if err := p.SetWindow(size[0], size[1]); err != nil {
			t.Fatal(err)
		}
		p.fresh()
		for _, part := range []string{"sheet", "supply", "course", "trouble"} {
			moved := p.ask(`const summary = document.querySelector('[data-part=' + arguments[0] + '] > summary')
				summary.scrollIntoView({ block: 'center' })
				const before = summary.getBoundingClientRect().y
				summary.click()
				return new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(summary.getBoundingClientRect().y - before))))`, part)
			if by, _ := moved.(float64); by > 12 || by < -12 { // within its own height
				t.Errorf("at %d by %d, opening %s moved its heading by %v", size[0], size[1], part, moved)
			}
		}
	}
	if err := p.SetWindow(1024, 768); err != nil {
		t.Fatal(err)
	}
}

// hoursAndMinutes: where no key has a colon, the unit control says what is typed.
func hoursAndMinutes(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "metalDensity": "8.96", "area": "10", "density": "30"})
	for _, typed := range []string{"2.31", "2 31", "2:31"} {
		p.ask(`document.querySelector('[data-unit=time]').value = 'h:min'`)
		p.fill(map[string]string{"time": typed})
		p.until(`document.getElementById('depth').placeholder.startsWith('0.09')`)
		p.fill(map[string]string{"time": ""})
		p.until(`!document.getElementById('depth').placeholder.startsWith('0.09')`)
	}
	keys := p.say(`return ['time', 'sheet', 'hanger', 'before', 'current', 'pieces', 'width'].map((id) => document.getElementById(id).inputMode).join(' ')`)
	if want := "text text text text decimal numeric decimal"; keys != want {
		t.Errorf("the keys are %s, not %s", keys, want)
	}
	if units := p.say(`return ['sheet', 'hanger', 'wire', 'elapsed'].map((n) => document.querySelector('[data-unit=' + n + ']').lastElementChild.value).join(' ')`); units != "ga ga ga h:min" {
		t.Errorf("the last units are %s", units)
	}
	if bare := p.say(`return [...document.querySelectorAll('.row input[type=text], .steps input')].filter((i) => !i.getAttribute('enterkeyhint')).map((i) => i.id).join()`); strings.TrimSpace(bare) != "" {
		t.Errorf("no hint for the Enter key at %s", bare)
	}
}
