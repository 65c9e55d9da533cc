package pagetest

import (
	"strings"
	"testing"
	"time"
)

// looks are the checks of appearance, in every engine.
var looks = []check{
	{"theme", themeIsChosen},
	{"theme without storage", themeWithoutStorage},
	{"unit that is said already", quietUnits},
	{"helps in the units chosen", helpFollowsUnits},
	{"a current to start with", startsWithASuggestion},
	{"a strength to start with", strengthIsSuggested},
	{"safety of the bath's own salt", safetyOfItsSalt},
	{"one wording of a range", oneWordingOfARange},
	{"mistakes that are too long", longMistakesAreWhole},
	{"spoken once", spokenOnce},
}

func TestLook(t *testing.T) {
	t.Parallel()
	holdAll(t, looks)
}

// inTheme is the visible theme: judged by the page's background, the scheme of the
// browser's own controls, and the active theme-color.
const inTheme = `const root = getComputedStyle(document.documentElement)
	const bars = [...document.querySelectorAll('meta[name=theme-color]')].filter((bar) => matchMedia(bar.media).matches)
	return [root.backgroundColor === 'rgb(23, 22, 20)' ? 'dark' : 'light', root.colorScheme, ...bars.map((bar) => bar.dataset.theme)].join()`

func (p *page) choose(theme string) {
	p.Helper()
	p.ask(`document.querySelector('[name=theme][value="' + arguments[0] + '"]').click()`, theme)
}

func (p *page) sees(theme string) {
	p.Helper()
	if got := p.say(inTheme); got != theme+","+theme+","+theme {
		p.Errorf("the ground, the scheme and the bar are %s, not %s", got, theme)
	}
}

// themeIsChosen: the system asks for light. The chosen theme is applied before the
// page is painted, survives a reload, and is not part of the job.
func themeIsChosen(t *testing.T, p *page) {
	p.sees("light")
	p.click("#example")
	p.answers("brass")
	p.choose("dark")
	p.sees("dark")
	if off := p.ask(`return document.getElementById('undo').disabled`); off != false {
		t.Error("choosing a theme took away what could be undone")
	}
	p.load("/?with=early")
	if early := p.say(`return document.documentElement.dataset.early`); early != "dark" {
		t.Errorf("when the page's body begins the theme is %q", early)
	}
	p.sees("dark")
	if chosen := p.say(`return document.querySelector('[name=theme]:checked').value`); chosen != "dark" {
		t.Errorf("after a reload the switch stands at %q", chosen)
	}
	p.choose("light")
	p.sees("light")
	p.choose("")
	p.sees("light")
	p.load("/?with=early")
	if early := p.ask(`return document.documentElement.dataset.early`); early != "" {
		t.Errorf("the system's theme was chosen, and the page begins with %v", early)
	}
}

// quietUnits: a unit control has no effect beside a text with its own unit. It is
// hidden, and nothing moves.
func quietUnits(t *testing.T, p *page) {
	shown := func(field string) string {
		return p.say(`return getComputedStyle(document.querySelector('[data-field=' + arguments[0] + '] .unit')).visibility`, field)
	}
	before := p.lines(rectangles, controls)
	p.fill(copperJob)
	p.answers(copperTime)
	for field, want := range map[string]string{"depth": "visible", "time": "hidden", "volume": "visible"} {
		if got := shown(field); got != want {
			t.Errorf("beside %s, which is %q, the unit control is %s", field, p.value(field), got)
		}
	}
	p.fill(map[string]string{"depth": "0.1 mm"})
	if got := shown("depth"); got != "hidden" {
		t.Errorf("beside 0.1 mm the unit control is %s", got)
	}
	if moved := difference(before, p.lines(rectangles, controls)); moved != "" {
		t.Errorf("a unit control stood back and moved %s", moved)
	}
}

func helpFollowsUnits(t *testing.T, p *page) {
	help := func() string {
		return p.say(`return [...document.querySelectorAll('#depth-says .help')].filter((e) => e.checkVisibility()).map((e) => e.textContent).join()`)
	}
	if got := help(); !strings.Contains(got, "mm") || strings.Contains(got, " in,") {
		t.Errorf("in metric units the depth's help is %q", got)
	}
	p.ask(`document.querySelector('[name=units][value=us]').click()`)
	if got := help(); strings.Contains(got, "mm") || !strings.Contains(got, "0.012 in") {
		t.Errorf("in US units the depth's help is %q", got)
	}
}

// startsWithASuggestion: copperJob with no current in mind; 30 mA/cm2 is what is
// suggested (common practice, no source), and 10 cm2 of it are 0.3 A.
func startsWithASuggestion(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "metalDensity": "8.96", "area": "10", "depth": "0.1"})
	p.answers("30 mA/cm²", "it takes", copperTime, "0.300 A")
	p.click("#start-with")
	p.answers("Leave it", copperTime)
	if got := p.value("density"); got != "30.0" {
		t.Errorf("one touch wrote the density %q", got)
	}
	p.click("#undo")
	p.answers("it takes")
}

// strengthIsSuggested: 40 g/L of silver nitrate (common practice, no source).
func strengthIsSuggested(t *testing.T, p *page) {
	offered := func() string { return p.say(`return document.querySelector('[data-fill=strength]').dataset.text`) }
	p.unfold("strength")
	if got := offered(); got != "" {
		t.Errorf("with no metal a strength of %q is offered", got)
	}
	p.fill(map[string]string{"metal": "sterling", "volume": "2"})
	p.until(`document.querySelector('[data-fill=strength]').dataset.text === '40.0'`)
	p.click("[data-fill=strength]")
	p.answers("80.0 g of silver nitrate")
	p.fill(map[string]string{"metal": "brass", "strength": ""})
	p.until(`document.querySelector('[data-fill=strength]').dataset.text === '150'`)
}

func safetyOfItsSalt(t *testing.T, p *page) {
	own := `[...document.querySelectorAll('#safety .own')].map((line) => line.textContent).join()`
	if got := p.say(`return ` + own); got != "" {
		t.Errorf("with no metal the safety part points at %q", got)
	}
	p.fill(map[string]string{"metal": "sterling"})
	p.until(own + `.startsWith('Silver nitrate') && document.getElementById('safety-gist').textContent.startsWith('silver nitrate')`)
	p.fill(map[string]string{"metal": "brass"})
	p.until(own + `.startsWith('Copper sulfate')`)
	p.fill(map[string]string{"salt": "common salt"})
	p.until(own + `.startsWith('Common salt')`)
}

// oneWordingOfARange: the sentence and the figure give the same basis for a range: in
// common salt the valence at which copper dissolves, else common practice.
func oneWordingOfARange(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "area": "10", "depth": "0.1", "density": "30"})
	for salt, basis := range map[string]string{"common salt": "one charge or two", "copper sulfate": "common practice"} {
		p.fill(map[string]string{"salt": salt})
		p.until(`document.getElementById('likely').textContent.includes(arguments[0]) && document.getElementById('answer').getAttribute('aria-busy') !== 'true'`, basis)
		said := p.say(`return document.getElementById('likely').textContent`)
		if range_ := p.say(`return document.querySelector('#figures [data-answer=time] .range').textContent`); said != "Likely "+range_+"." {
			t.Errorf("in %s the headline says %q and the figure %q", salt, said, range_)
		}
	}
}

// longMistakesAreWhole: what has no room in its row makes the row higher.
func longMistakesAreWhole(t *testing.T, p *page) {
	p.fill(map[string]string{"salt": "whatever stands in the jar on the upper shelf", "volume": "2"})
	p.unfold("salt")
	p.until(`document.querySelector('[data-field=salt]').dataset.word === 'error'`)
	p.settle()
	if out := p.ask(`const row = document.querySelector('[data-field=salt]'), whole = row.getBoundingClientRect()
		return row.querySelector('.word').getBoundingClientRect().bottom - Math.min(whole.bottom, row.nextElementSibling?.getBoundingClientRect().top ?? whole.bottom)`); out.(float64) > 0 {
		t.Errorf("a long mistake hangs %.1f px out of its row", out)
	}
}

// spokenOnce: while keys come nothing is said; after a pause the sentence is, once.
func spokenOnce(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "metalDensity": "8.96", "area": "10", "density": "30"})
	p.until(`document.getElementById('spoken').textContent.startsWith('Still blank')`)
	p.ask(`document.body.dataset.spoken = ''
		new MutationObserver(() => { document.body.dataset.spoken += document.getElementById('spoken').textContent + '|' })
			.observe(document.getElementById('spoken'), { childList: true, characterData: true, subtree: true })`)
	p.typeIn("depth", "0.100") // in one call: a busy machine makes pauses between calls
	p.answers(copperTime)
	time.Sleep(1500 * time.Millisecond)
	if spoken := p.say(`return document.body.dataset.spoken`); spoken != p.sentence()+"|" {
		t.Errorf("spoken is %q, and the sentence is %q", spoken, p.sentence())
	}
}

func themeWithoutStorage(t *testing.T, p *page) {
	p.load("/?with=nostorage")
	p.choose("dark")
	p.sees("dark")
}
