// Package pagetest tests the finished page in three browser engines. It reads the
// site from the folder named by SALTBITE_DIST, which the build's test command makes
// and sets.
package pagetest

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"
	"time"

	"saltbite/build/browser"
	"saltbite/testdata"
)

// patience is how long the page may take to load its program on a busy machine.
const patience = time.Minute

// checks run in every engine. Each starts on a freshly loaded page with nothing
// stored.
var checks = []check{
	{"keyboard alone", keyboardAlone}, // first: in WebKitGTK a used mouse changes where Tab leads
	{"empty first visit", emptyFirstVisit},
	{"example", exampleFillsIn},
	{"clearing is taken back", clearingIsTakenBack},
	{"what was typed stands", typedStands},
	{"seeking another", seekingAnother},
	{"metal by any name", metalByAnyName},
	{"units", unitsLeaveFilledFields},
	{"mistakes", mistakesAtTheirFields},
	{"kept over a reload", keptOverReload},
	{"a damaged store", damagedStore},
	{"a part that fails", partThatFails},
	{"suggestions for no current in mind", suggestsACurrent},
	{"what a part lacks", saysWhatIsLacking},
	{"figures of parts in use", figuresOfPartsInUse},
	{"bite by bite", biteByBite},
	{"where a figure comes from", whereAFigureComesFrom},
	{"stops come first", stopsComeFirst},
	{"nothing moves", nothingMoves},
	{"no request after load", noRequestAfterLoad},
	{"narrow", worksNarrow},
	{"large text", worksWithLargeText},
	{"no violation", noViolation},
	{"a worker that ends", workerThatEnds},
	{"no worker", withoutWorker},
	{"a worker that reaches nothing", workerThatReachesNothing},
	{"no storage", withoutStorage},
	{"no type for wasm", withoutType},
	{"silent console", silentConsole},
}

func TestPage(t *testing.T) {
	t.Parallel()
	holdAll(t, checks)
}

// TestDark tests the contrasts of the dark scheme. An engine that can't change the
// scheme while it runs is started again.
func TestDark(t *testing.T) {
	t.Parallel()
	eachOf(t, browser.Names, func(t *testing.T, name string) {
		p := &page{t, browser.ForTest(t, name, browser.Options{Dark: true}), serve(t)}
		p.fresh()
		if dark := p.ask(`return matchMedia('(prefers-color-scheme: dark)').matches`); dark != true {
			t.Fatal("the page is not dark")
		}
		source := axe(t)
		inEachState(p, shareOf(name, states), source, "color-contrast") // the colours are the same in each engine
		p.fresh()
		p.ask(`Object.assign(document.querySelector('label[for=metal]').style, { color: '#444', backgroundColor: '#333' })`)
		if len(p.violations(source, "color-contrast")) == 0 {
			t.Error("a label is dark on dark, and axe saw nothing wrong")
		}
	})
}

// page is the page in a browser, and what a person does with it.
type page struct {
	*testing.T
	*browser.Session
	server *server
}

// fresh loads the page as a first visitor does.
func (p *page) fresh() {
	p.Helper()
	p.freshAt("/")
}

// freshAt is fresh at an address of the page's own.
func (p *page) freshAt(path string) {
	p.Helper()
	p.server.clearsNext()
	p.load(path)
}

// load loads the page and waits until all of it is there.
func (p *page) load(path string) {
	p.Helper()
	p.loadOnly(path)
	p.until(loaded)
}

// answering is true once the program has answered and all rows are laid out; loaded,
// once the second script has set up what the page begins without as well.
const (
	answering = `!document.querySelector('.waiting') && document.getElementById('sentence').textContent !== '' && ![...document.querySelectorAll('.form template')].some((t) => t.content.querySelector('.row'))`
	loaded    = answering + ` && (!document.querySelector('.artwork') || document.querySelector('.artwork .asks') !== null)`
)

func (p *page) loadOnly(path string) {
	p.Helper()
	if p.Name == browser.WebKit && !strings.HasPrefix(path, "/scripts") && !strings.HasPrefix(path, "/frame") && path != "/blank" {
		path += map[bool]string{true: ",console", false: "?with=console"}[strings.Contains(path, "with=")]
	}
	p.server.requests()
	if err := p.Navigate(p.server.URL + path); err != nil {
		p.Fatal(err)
	}
}

// ask runs the body of a function in the page.
func (p *page) ask(script string, args ...any) any {
	p.Helper()
	result, err := p.Execute(script, args...)
	if err != nil {
		p.Fatal(err)
	}
	return result
}

// say returns the text result of a script in the page.
func (p *page) say(script string, args ...any) string {
	p.Helper()
	text, _ := p.ask(script, args...).(string)
	return text
}

// until waits for an expression to be true in the page.
func (p *page) until(expression string, args ...any) {
	p.Helper()
	if err := p.Wait(patience, expression, args...); err != nil {
		p.Fatalf("%v; the sentence is %q, the console %s", err, p.sentence(), p.consoleNow())
	}
}

func (p *page) consoleNow() string {
	said, err := p.Console()
	if err != nil {
		return err.Error()
	}
	return strings.Join(said, " | ")
}

func (p *page) sentence() string {
	p.Helper()
	return p.say(`return document.getElementById('sentence')?.textContent`)
}

// typeIn types into a field as a person does, its part unfolded.
func (p *page) typeIn(field, text string) {
	p.Helper()
	p.unfold(field)
	e, err := p.Find("#" + field)
	if err != nil {
		p.Fatal(err)
	}
	if err := e.Type(text); err != nil {
		p.Fatal(err)
	}
}

func (p *page) unfold(field string) {
	p.Helper()
	p.there(field)
	p.ask(`for (let d = document.getElementById(arguments[0]).closest('details'); d; d = d.parentElement.closest('details')) d.open = true`, field)
}

// fill writes into fields at once, as autofill would.
func (p *page) fill(fields map[string]string) {
	p.Helper()
	for name := range fields {
		p.there(name)
	}
	p.ask(`for (const [name, text] of Object.entries(arguments[0])) {
		const control = document.getElementById(name)
		control.value = text
		control.dispatchEvent(new Event('input', { bubbles: true }))
	}`, fields)
}

// there waits for a field: rows of folded parts come after the first answer.
func (p *page) there(field string) {
	p.Helper()
	p.until(`document.getElementById(arguments[0]) !== null`, field)
}

// click scrolls an element out from under what covers it, waits until it stops
// moving, and clicks: a driver looks up its position and presses there a moment later.
func (p *page) click(selector string) {
	p.Helper()
	p.closeList()
	p.ask(`const e = document.querySelector(arguments[0]), r = e?.getBoundingClientRect()
		if (r && !e.contains(document.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2))) e.scrollIntoView({ block: 'center' })`, selector)
	e, err := p.Find(selector)
	if err != nil {
		p.Fatal(err)
	}
	deadline := time.Now().Add(patience)
	for last, now := "", p.place(selector); now != last && time.Now().Before(deadline); last, now = now, p.place(selector) {
		time.Sleep(20 * time.Millisecond)
	}
	// What has just been opened is in view a moment later.
	for err = e.Click(); err != nil; err = e.Click() {
		if !strings.Contains(err.Error(), "not interactable") || time.Now().After(deadline) {
			p.Fatal(err)
		}
		time.Sleep(20 * time.Millisecond)
	}
}

// closeList closes a list of suggestions, which would swallow the first touch.
func (p *page) closeList() {
	p.Helper()
	if open := p.ask(`return document.querySelector('.listing') !== null`); open == true {
		if err := p.Press(browser.Escape); err != nil {
			p.Fatal(err)
		}
	}
}

// place is the position of an element in the window.
func (p *page) place(selector string) string {
	p.Helper()
	return p.say(`return JSON.stringify(document.querySelector(arguments[0])?.getBoundingClientRect())`, selector)
}

func (p *page) value(field string) string {
	p.Helper()
	return p.say(`return document.getElementById(arguments[0]).value`, field)
}

// answers waits until the sentence holds some words, and the rest of the page
// shows the same reply.
func (p *page) answers(words ...string) {
	p.Helper()
	p.until(`arguments[0].every((w) => document.getElementById('sentence').textContent.includes(w)) && document.getElementById('answer').getAttribute('aria-busy') !== 'true'`, words)
}

// copperJob has an answer that is easy to check. From Faraday's law: 0.01 cm over
// 10 cm2 at 8.96 g/cm3 (CRC Handbook, copper) is 0.896 g; over 63.546 g/mol
// (IUPAC), times 2 x 96485 C/mol (CODATA), is 2721 C; over 0.3 A is 151.2 min.
var copperJob = map[string]string{"metal": "copper", "metalDensity": "8.96", "area": "10", "depth": "0.1", "density": "30"}

const copperTime = "2 h 31 min"

// aboutCopperTime begins the time where the density is left to the catalogue:
// sheet copper has 8.89 to 8.96 g/cm3 (CRC Handbook, UNS C11000), 150.0 to 151.2 min.
const aboutCopperTime = "2 h 3"

// damagedStore: the page opens and answers whatever is in its storage.
func damagedStore(t *testing.T, p *page) {
	for _, text := range []string{"x", "\x00", "metal=copper", "%%%\n%zz", "{}", "metal=copper\n\nid=x&name=y&saved=z", "\n\n\n\n"} {
		p.loadOnly("/with/nothing")
		p.ask(`for (const store of [localStorage, sessionStorage]) for (const name of ['saltbite', 'saltbite run', 'saltbite-theme']) store.setItem(name, arguments[0])`, text)
		p.load("/")
		p.fill(copperJob)
		p.answers(copperTime)
	}
}

// partThatFails: one part of the page throws at a reply, and the next key is still
// answered.
func partThatFails(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.ask(`const gist = document.getElementById('safety-gist')
		Object.defineProperty(gist, 'textContent', { get() { document.documentElement.dataset.failed = ''; throw new Error('thrown by a test') }, configurable: true })`)
	p.fill(map[string]string{"depth": "0.15"})
	p.until(`'failed' in document.documentElement.dataset`)
	p.fill(map[string]string{"depth": "0.2"})
	p.answers("5 h 2 min")                 // twice as deep: twice 151.2 min
	if _, err := p.Console(); err != nil { // what was thrown is not the next check's
		t.Fatal(err)
	}
}

func emptyFirstVisit(t *testing.T, p *page) {
	typed := p.ask(`return [...document.querySelectorAll('.form input[type=text]')].map((i) => i.value).join('')`)
	if typed != "" {
		t.Errorf("a first visit finds %q typed", typed)
	}
	if alarms := p.ask(`return document.querySelectorAll('[aria-invalid=true]').length`); alarms != 0.0 {
		t.Errorf("a first visit finds %v mistakes", alarms)
	}
}

func exampleFillsIn(t *testing.T, p *page) {
	p.click("#example")
	p.answers("brass", "0.25")
	p.click("#undo")
	p.until(`document.getElementById('metal').value === ''`)
}

func clearingIsTakenBack(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.click("#clear")
	p.until(`document.getElementById('metal').value === '' && !document.getElementById('undo').disabled`)
	p.typeIn("metal", "x")
	p.typeIn("metal", "y")
	p.click("#undo") // never more than the last deed: what was typed in one field
	p.until(`document.getElementById('metal').value === ''`)
	p.click("#undo") // also after something was typed
	p.answers(copperTime)
	p.click("#example")
	p.answers("brass")
	p.click("#clear") // an example can be cleared as well as taken back
	p.until(`document.getElementById('metal').value === ''`)
}

func typedStands(t *testing.T, p *page) {
	job := map[string]string{"metal": "Copper ", "area": "10", "depth": "0,1", "density": "30"}
	for field, text := range job {
		p.typeIn(field, text)
	}
	p.answers(aboutCopperTime)
	for field, text := range job {
		if got := p.value(field); got != text {
			t.Errorf("typed %q into %s, and it holds %q", text, field, got)
		}
	}
	if got := p.value("time"); got != "" {
		t.Errorf("the time was left blank, and it holds %q", got)
	}
	found := p.say(`const row = document.getElementById('time').closest('.row'); return row.className + ': ' + row.querySelector('input').placeholder`)
	if !strings.Contains(found, "found") || !strings.Contains(found, aboutCopperTime) {
		t.Errorf("the time was found, and its row is %s", found)
	}
}

func seekingAnother(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.click("[data-seek=depth]")
	p.until(`document.getElementById('depth').value === '' && document.getElementById('depth').closest('.row').matches('.found')`)
	if got := p.value("time"); got != copperTime {
		t.Errorf("the found time was not written into its field: %q", got)
	}
	p.until(`document.getElementById('depth').placeholder === '0.0999 mm'`) // 151 of 151.2 min
}

func metalByAnyName(t *testing.T, p *page) {
	p.typeIn("metal", "yelow bras")
	p.until(`document.querySelectorAll('#metal-list [role=option]').length > 0 && document.getElementById('metal').ariaExpanded === 'true'`)
	p.typeIn("metal", browser.ArrowDown)
	p.until(`document.getElementById('metal').getAttribute('aria-activedescendant')`)
	p.typeIn("metal", browser.Escape)
	p.until(`document.getElementById('metal').ariaExpanded === 'false'`)
	if got := p.value("metal"); got != "yelow bras" {
		t.Errorf("Escape left %q", got)
	}
	p.typeIn("metal", browser.ArrowDown)
	p.until(`document.getElementById('metal').ariaExpanded === 'true'`)
	p.typeIn("metal", browser.ArrowDown+browser.Enter)
	p.until(`document.getElementById('metal').value !== 'yelow bras'`)
	if got := p.value("metal"); !strings.Contains(strings.ToLower(got), "brass") {
		t.Errorf("the first suggestion for yelow bras is %q", got)
	}
}

func unitsLeaveFilledFields(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	unit := func(field string) string {
		return p.say(`return document.querySelector('[data-unit=' + arguments[0] + ']').value`, field)
	}
	p.ask(`document.querySelector('[name=units][value=us]').click()`)
	p.until(`document.querySelector('[data-answer=removed] dd').textContent.endsWith('oz')`)
	if got := unit("depth"); got != "mm" {
		t.Errorf("a filled depth's unit became %s", got)
	}
	if got := unit("volume"); got != "qt" {
		t.Errorf("a blank volume's unit is %s in US units", got)
	}
	p.answers(copperTime)
	p.ask(`const s = document.querySelector('[data-unit=depth]'); s.value = 'in'; s.dispatchEvent(new Event('input', { bubbles: true })); s.dispatchEvent(new Event('change', { bubbles: true }))`)
	p.until(`!document.getElementById('sentence').textContent.includes(arguments[0])`, copperTime)
	p.fill(map[string]string{"depth": "0.1 mm"}) // says its own unit: the control's does not count
	p.answers(copperTime)
}

func mistakesAtTheirFields(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.fill(map[string]string{"depth": "a lot"})
	p.until(`document.getElementById('depth').ariaInvalid === 'true'`)
	said := p.say(`return document.getElementById('depth').getAttribute('aria-describedby').split(' ').map((id) => document.getElementById(id).textContent).join(' ')`)
	if !strings.Contains(said, "a lot") {
		t.Errorf("the mistake in the depth is said to be %q", said)
	}
	p.fill(map[string]string{"depth": ""})
	p.until(`document.getElementById('depth').ariaInvalid !== 'true'`)
	p.fill(map[string]string{"density": ""})
	p.until(`document.querySelector('.row.needed')`)
	if invalid := p.ask(`return document.querySelectorAll('[aria-invalid=true]').length`); invalid != 0.0 {
		t.Error("what is only missing is called a mistake")
	}
}

func keptOverReload(t *testing.T, p *page) {
	p.fill(copperJob)
	p.ask(`const s = document.querySelector('[data-unit=volume]'); s.value = 'gal'; s.dispatchEvent(new Event('input', { bubbles: true })); s.dispatchEvent(new Event('change', { bubbles: true }))`)
	p.answers(copperTime)
	p.load("/")
	p.answers(copperTime)
	for field, text := range copperJob {
		if got := p.value(field); got != text {
			t.Errorf("%s was %q before a reload and is %q after it", field, text, got)
		}
	}
	if got := p.say(`return document.querySelector('[data-unit=volume]').value`); got != "gal" {
		t.Errorf("the volume's unit was gal before a reload and is %s after it", got)
	}
}

// suggestsACurrent: with no bath there is no limit, and 30 mA/cm2 is what is
// suggested (common practice, no source), at which copper bites as in copperJob.
func suggestsACurrent(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "metalDensity": "8.96", "area": "10", "depth": "0.1"})
	p.until(`document.querySelector('[data-field=density] .fill .word').textContent.includes('h')`)
	said := p.say(`return document.querySelector('[data-field=density] .fill .word').textContent`)
	for _, figure := range []string{"30.0 mA/cm²", "0.300 A", copperTime} {
		if !strings.Contains(said, figure) {
			t.Errorf("%s is not suggested: %q", figure, said)
		}
	}
	p.ask(`document.querySelector('[data-unit=density]').value = 'A/dm2'`)
	p.click(".fill[data-fill=density]")
	p.answers(copperTime)
	if got := p.value("density") + " " + p.say(`return document.querySelector('[data-unit=density]').value`); got != "30.0 mA/cm2" {
		t.Errorf("one touch wrote %q", got)
	}
}

func saysWhatIsLacking(t *testing.T, p *page) {
	lacking := `[...document.querySelectorAll('[data-part=supply] > .lacks span:not([hidden])')].map((s) => s.textContent).join()`
	gist := `document.querySelector('[data-part=supply] > summary .gist').textContent`
	p.fill(map[string]string{"volts": "3"})
	p.until(lacking + ` !== '' && ` + gist + `.includes(` + lacking + `)`)
	p.fill(copperJob) // the verdict assumes the rest
	p.until(lacking + ` === ''`)
	p.fill(map[string]string{"gap": "60", "cathode": "60", "strength": "150"})
	p.until(lacking + ` === '' && ` + gist + `.includes('V')`)
}

func figuresOfPartsInUse(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	if there := p.ask(`return document.querySelector('#figures [data-part=sheet]') !== null`); there != false {
		t.Error("figures of an unused part are in the pane")
	}
	p.ask(`document.querySelector('.form [data-part=sheet]').open = true`)
	p.until(`document.querySelector('#figures [data-part=sheet] [data-answer=narrowestLine] .range').textContent.includes('common practice')`)
	p.ask(`document.querySelector('.form [data-part=sheet]').open = false`)
	p.until(`!document.querySelector('#figures [data-part=sheet]')`)
}

// biteByBite: the first bite is half as deep as that of copperJob, on the same
// area at the same density, so it takes half of 151.2 min; the second is as deep
// on half the area, so it takes as long at half the current.
func biteByBite(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "metalDensity": "8.96", "area": "10", "density": "30", "bites": "0.05 10; 0.05 5"})
	p.until(`document.querySelectorAll('#figures .bites tbody tr').length === 2`)
	got := p.say(`return [...document.querySelectorAll('#figures .bites tbody tr')].map((r) => [...r.cells].map((c) => c.textContent).join(' ')).join('; ')`)
	if want := "0.05 mm 10 cm² 1 h 16 min 0.300 A; 0.05 mm 5 cm² 1 h 16 min 0.150 A"; got != want {
		t.Errorf("the bites are %s, not %s", got, want)
	}
}

func whereAFigureComesFrom(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.ask(`document.getElementById('all').open = true; const b = document.querySelector('#figures [data-origin=removed]'); b.focus(); b.click()`)
	p.until(`document.getElementById('sources').open`)
	shown := p.say(`return [...document.querySelectorAll('#sources article, #sources [data-source]')].filter((e) => e.offsetHeight > 0).map((e) => e.id || e.dataset.source).join(' ')`)
	if !strings.HasPrefix(shown, "from-removed ") || strings.Count(shown, "from-") != 1 || !strings.Contains(shown, "faraday") {
		t.Errorf("asked where the dissolved metal comes from, the page shows %s", shown)
	}
	if row := p.say(`return document.getElementById('metal-row').textContent`); !strings.Contains(row, "opper") || !strings.Contains(row, "seen") {
		t.Errorf("the metal's row is said to be %q", row)
	}
	if err := p.Press(browser.Escape); err != nil {
		t.Fatal(err)
	}
	p.until(`!document.getElementById('sources').open`)
	p.until(`document.activeElement.dataset.origin === 'removed'`)
	p.click(".foot button")
	all := p.ask(`return [...document.querySelectorAll('#sources article')].every((e) => e.offsetHeight > 0)`)
	if all != true {
		t.Error("asked for all origins, the page shows some")
	}
	p.click("#sources [data-close]")
	p.until(`!document.getElementById('sources').open`)
}

func stopsComeFirst(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "sterling", "salt": "copper sulfate", "before": "24.6", "after": "24.9", "area": "10", "depth": "0.1", "density": "30"})
	p.until(`document.querySelectorAll('#cautions [data-level=stop]').length === 2`)
	p.stopped("Don't etch sterling silver")
	// Where the etch is not worked out for it, too.
	p.fill(map[string]string{"metal": "beryllium copper", "salt": "", "before": "", "after": ""})
	p.until(`document.getElementById('sentence').textContent.includes('eryllium')`)
	p.stopped("eryllium")
	p.fill(map[string]string{"metal": "sterling", "salt": "copper sulfate"})
	p.until(`document.querySelector('#salt-says .word').textContent.startsWith('Stop. ')`)
}

// stopped fails unless the gravest stop stands in the sentence's place, in its
// colour, with its word and its shape, and nothing stands beside it that says
// otherwise.
func (p *page) stopped(words string) {
	p.Helper()
	p.until(`document.getElementById('answer').getAttribute('aria-busy') !== 'true'`)
	sentence := p.sentence()
	if !strings.HasPrefix(sentence, "Stop. ") || !strings.Contains(sentence, words) {
		p.Errorf("in the place of the sentence stands %q", sentence)
	}
	if shaped := p.say(`return document.querySelector('#sentence use')?.getAttribute('href')`); shaped != "#mark-stop" {
		p.Errorf("the stop's shape is %q", shaped)
	}
	if likely := p.say(`return document.getElementById('likely').textContent`); likely != "" {
		p.Errorf("beside a stop stands %q", likely)
	}
	if seen := p.say(`return ['main', 'cut', 'all', 'ways-out'].filter((id) => document.getElementById(id).checkVisibility() && document.getElementById(id).getClientRects()[0]?.height > 0).join()`); seen != "" {
		p.Errorf("beside a stop stand %s", seen)
	}
}

func keyboardAlone(t *testing.T, p *page) {
	press := func(keys string) {
		t.Helper()
		if err := p.Press(keys); err != nil {
			t.Fatal(err)
		}
	}
	focused := func() string {
		return p.say(`const e = document.activeElement; return e.id || e.name || e.dataset.unit || e.localName`)
	}
	var reached []string
	for range 80 {
		press(browser.Tab)
		where := focused()
		if where == "metal" {
			break
		}
		reached = append(reached, where)
	}
	if focused() != "metal" {
		t.Fatalf("Tab never reached the metal, but %v", reached)
	}
	for _, name := range []string{"example", "clear", "units"} {
		if !slices.Contains(reached, name) {
			t.Errorf("Tab passed by %s: %v", name, reached)
		}
	}
	press("copper")
	p.until(`document.getElementById('metal').value === 'copper'`)
	for _, step := range []struct{ field, text string }{{"area", "10"}, {"depth", "0.1"}, {"density", "30"}} {
		for range 20 {
			if focused() == step.field {
				break
			}
			press(browser.Enter)
		}
		if focused() != step.field {
			t.Fatalf("Enter never reached %s", step.field)
		}
		press(step.text)
	}
	p.answers(aboutCopperTime)
	visible := p.ask(`const s = getComputedStyle(document.activeElement); const around = getComputedStyle(document.activeElement.parentElement);
		return [s, around].some((o) => (o.outlineStyle !== 'none' && parseFloat(o.outlineWidth) >= 2) || o.boxShadow !== 'none')`)
	if visible != true {
		t.Error("where the focus is can't be seen")
	}
}

func noRequestAfterLoad(t *testing.T, p *page) {
	p.server.requests()
	p.fill(copperJob)
	p.answers(copperTime)
	p.typeIn("salt", "silv")
	p.click("#example")
	p.click("#clear")
	time.Sleep(300 * time.Millisecond)
	if late := p.server.late(); len(late) > 0 {
		t.Errorf("after it was loaded the page asked for %q", late)
	}
}

func workerThatEnds(t *testing.T, p *page) {
	p.load("/?with=endable")
	p.fill(copperJob)
	p.answers(copperTime)
	p.ask(`dispatchEvent(new Event('end-worker'))`)
	p.fill(map[string]string{"depth": "0.2"})
	p.until(`!document.getElementById('sentence').textContent.includes(arguments[0]) && /\d h/.test(document.getElementById('sentence').textContent)`, copperTime)
	if n := p.say(`return document.documentElement.dataset.workers`); n != "2" {
		t.Errorf("%s workers were started; one ended and one took its place", n)
	}
	if got := p.value("metal"); got != "copper" {
		t.Errorf("the metal is %q after a worker ended", got)
	}
}

func withoutWorker(t *testing.T, p *page) {
	p.load("/?with=noworker")
	p.fill(copperJob)
	p.answers(copperTime)
}

// workerThatReachesNothing: an engine may give stored files to the page, but not to
// its worker.
func workerThatReachesNothing(t *testing.T, p *page) {
	p.load("/?with=unread")
	p.fill(copperJob)
	p.answers(copperTime)
}

func withoutStorage(t *testing.T, p *page) {
	p.load("/?with=nostorage")
	p.fill(copperJob)
	p.answers(copperTime)
}

func withoutType(t *testing.T, p *page) {
	p.load("/octet/")
	p.fill(copperJob)
	p.answers(copperTime)
}

// TestVectors puts every vector to saltbite.mjs on a page, and from another site's.
func TestVectors(t *testing.T) {
	t.Parallel()
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		own, other := serve(t), serve(t)
		p := &page{t, session, own}
		vectors(t, p, "/scripts")
		vectors(t, p, "/scripts?from="+other.URL+"/saltbite.mjs")
	})
}

func vectors(t *testing.T, p *page, path string) {
	all, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	p.loadOnly(path)
	p.until(`document.getElementById('replies').textContent !== ''`)
	var replies map[string]string
	if err := json.Unmarshal([]byte(p.say(`return document.getElementById('replies').textContent`)), &replies); err != nil {
		t.Fatal(err)
	}
	if why, failed := replies["failed"]; failed {
		t.Fatal(why)
	}
	for _, v := range all {
		reply, there := replies[v.Name]
		if !there {
			t.Errorf("%s was not answered", v.Name)
			continue
		}
		for _, wrong := range v.Check(reply) {
			t.Errorf("%s: %s", v.Name, wrong)
		}
	}
}

// silentConsole uses the page and finds nothing in the console.
func silentConsole(t *testing.T, p *page) {
	p.Console()
	p.load("/")
	p.click("#example")
	p.answers("brass")
	p.typeIn("metal", "x")
	p.fill(map[string]string{"depth": "a lot", "volume": "1,234"})
	p.until(`document.getElementById('depth').ariaInvalid === 'true'`)
	p.click("#clear")
	time.Sleep(1500 * time.Millisecond) // the sentence is spoken after a pause
	said, err := p.Console()
	if err != nil {
		t.Fatal(err)
	}
	for _, message := range said {
		// Firefox says so once more of a page that registers a worker.
		if strings.Contains(message, "unknown directive") && strings.Contains(message, "trusted-types") {
			continue
		}
		// Chromium says so of every page that offers to be installed by a button of its own.
		if strings.HasPrefix(message, "INFO") && strings.Contains(message, "Banner not shown") {
			continue
		}
		t.Errorf("the console says %s", message)
	}
}
