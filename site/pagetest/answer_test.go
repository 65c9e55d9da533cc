package pagetest

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"saltbite/build/browser"
)

// TestAnswer checks the answer's pane, and the bar that stands for it where there is
// no room, in every engine.
func TestAnswer(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{
		{"nothing is cut", nothingIsCut},
		{"nothing is cut on a phone", nothingIsCutOnAPhone},
		{"in its order", inItsOrder},
		{"strips open in place", stripsOpenInPlace},
		{"what the question asks for", figuresOfTheQuestion},
		{"verdict on the supply", verdictOnTheSupply},
		{"ways out of a contradiction", waysOut},
		{"a bar and the form", barAndForm},
		{"a keyboard over the page", keyboardOverThePage},
		{"the answer over the form", answerOverTheForm},
		{"a notice on the strip", noticeOnTheStrip},
		{"an empty page", emptyPage},
	})
}

var (
	// cuffJob is an ordinary job with all that the pane can show.
	cuffJob = map[string]string{"metal": "cartridge brass", "width": "150", "height": "25", "open": "1/3", "depth": "0.2", "density": "30",
		"sheet": "18 ga", "line": "0.6", "space": "0.4", "volts": "12", "amps": "1", "salt": "copper sulfate", "strength": "150", "volume": "2"}
	// twoStops is a wrong bath, and a piece that gained weight.
	twoStops = map[string]string{"metal": "sterling", "salt": "copper sulfate", "before": "24.6", "after": "24.9", "area": "10", "depth": "0.1", "density": "30"}
	// leadedJob raises many cautions.
	leadedJob = map[string]string{"metal": "leaded nickel silver", "width": "60", "height": "25", "open": "40", "depth": "0.25", "density": "30", "pieces": "14",
		"sheet": "1", "line": "0.4", "space": "0.4", "volts": "5", "amps": "2", "salt": "copper sulfate", "strength": "200", "volume": "4", "etched": "30",
		"hanger": "1", "hangerLength": "20"}
)

// shown waits until all of the page shows the newest reply, and it is painted.
func (p *page) shown() {
	p.Helper()
	p.settle()
	p.until(`document.getElementById('answer').getAttribute('aria-busy') === 'false'`)
	p.settle()
}

// cutTexts are the texts of the answer's pane that are neither whole nor out of
// sight: half a line at the foot of the pane, and what a box of its own clips. A
// line may be covered in whole or in half by the paper that lies on it.
const cutTexts = `
	const pane = page.getElementById('answer'), cover = pane.querySelector('.fold').getBoundingClientRect(), strip = page.getElementById('run').getBoundingClientRect()
	const box = pane.getBoundingClientRect(), view = page.defaultView
	const striped = page.getElementById('run').checkVisibility({ visibilityProperty: true }) && strip.left < box.right - 1 && strip.right > box.left + 1
	const foot = Math.min(box.bottom, striped ? strip.top : Infinity, cover.height > 0 ? cover.top : Infinity)
	const texts = page.createTreeWalker(pane, NodeFilter.SHOW_TEXT), range = page.createRange(), cut = []
	for (let text = texts.nextNode(); text; text = texts.nextNode()) {
		const around = text.parentElement
		if (text.data.trim() === '' || !around.checkVisibility() || around.closest('.unseen, figcaption')) continue
		range.selectNodeContents(text)
		for (const line of range.getClientRects()) {
			const blank = 0.12 * line.height // over the letters, and under them
			if (line.top + blank < foot - 1 && line.bottom - blank > foot + 1) cut.push('at the foot: ' + text.data.trim())
			if (line.left < box.left - 1 || line.right > box.right + 1) cut.push('at the side: ' + text.data.trim())
		}
		for (let e = around; e !== pane; e = e.parentElement) {
			const how = view.getComputedStyle(e)
			if (/auto|scroll/.test(how.overflowY)) cut.push('scrolls within: ' + (e.id || e.className))
			if (how.overflow !== 'visible' && !e.closest('svg') && e.scrollHeight > e.clientHeight + 1) cut.push('clipped: ' + text.data.trim())
		}
	}
	return cut.slice(0, 5)`

// nothingCut fails if something is still cut a while after a scroll: a busy engine tells
// the page of it a few frames later.
func (p *page) nothingCut(of, where string) {
	p.Helper()
	deadline := time.Now().Add(5 * time.Second)
	cut := p.lines(`const page = ` + of + `; ` + cutTexts)
	for len(cut) > 0 && time.Now().Before(deadline) {
		time.Sleep(50 * time.Millisecond)
		cut = p.lines(`const page = ` + of + `; ` + cutTexts)
	}
	if len(cut) > 0 {
		p.Errorf("%s: cut are %q", where, cut)
	}
}

// nothingIsCut: at the sizes of a tablet, in an ordinary job, with two stops, and
// with many cautions and a running clock; at the top of the pane and further down.
func nothingIsCut(t *testing.T, p *page) {
	for _, size := range sizes[:2] {
		if err := p.SetWindow(size[0], size[1]); err != nil {
			t.Fatal(err)
		}
		for name, job := range map[string]map[string]string{"an ordinary job": cuffJob, "two stops": twoStops, "many cautions": leadedJob} {
			p.fresh()
			p.fill(job)
			p.shown()
			if name == "many cautions" {
				p.ask(`document.getElementById('run-on').click()`)
				p.shown()
			}
			if size[0] < 900 {
				p.ask(`document.getElementById('bar').click()`)
			}
			for _, down := range []int{0, 37, 211, 5000} {
				p.ask(`document.getElementById('answer').scrollTop = arguments[0]`, down)
				p.settle()
				p.nothingCut("document", fmt.Sprintf("%d by %d, %s, %d down", size[0], size[1], name, down))
			}
		}
	}
	if err := p.SetWindow(1024, 768); err != nil {
		t.Fatal(err)
	}
}

const framed = `document.getElementById('frame').contentDocument`

// onAPhone opens the page in a frame, and waits until it answers.
func (p *page) onAPhone(width, height int) {
	p.Helper()
	p.loadOnly(fmt.Sprintf("/frame?width=%d&height=%d", width, height))
	p.until(framed + `?.getElementById('sentence')?.textContent && !` + framed + `.querySelector('.waiting')`)
	p.until(`![...` + framed + `.querySelectorAll('.form template')].some((t) => t.content.querySelector('.row'))`)
}

// fillPhone writes into the fields of the framed page.
func (p *page) fillPhone(fields map[string]string) {
	p.Helper()
	p.ask(`for (const [name, text] of Object.entries(arguments[0])) {
		const control = `+framed+`.getElementById(name)
		control.value = text
		control.dispatchEvent(new Event('input', { bubbles: true }))
	}`, fields)
	p.settle()
	p.until(framed + `.getElementById('answer').getAttribute('aria-busy') === 'false'`)
	p.settle()
}

func nothingIsCutOnAPhone(t *testing.T, p *page) {
	for name, job := range map[string]map[string]string{"an ordinary job": cuffJob, "two stops": twoStops, "many cautions": leadedJob} {
		p.ask(`try { localStorage.clear(); sessionStorage.clear() } catch {}`)
		p.onAPhone(390, 844)
		p.fillPhone(job)
		if name == "many cautions" {
			p.inFrame(`page.getElementById('run-on').click()`)
			p.settle()
		}
		p.inFrame(`page.getElementById('bar').click()`)
		for _, down := range []int{0, 90, 5000} {
			p.ask(framed+`.getElementById('answer').scrollTop = arguments[0]`, down)
			p.settle()
			p.nothingCut(framed, fmt.Sprintf("390 by 844, %s, %d down", name, down))
		}
		p.inFrame(`page.getElementById('run-done').click()`)
	}
}

// inItsOrder: the sentence, the verdict, four figures, cautions, the picture, all
// figures, one below the other; the form comes before them in the document.
func inItsOrder(t *testing.T, p *page) {
	p.fill(cuffJob)
	p.shown()
	order := p.say(`return ['sentence', 'likely', 'verdict', 'main', 'cautions', 'cut', 'all'].sort((a, b) =>
		document.getElementById(a).getBoundingClientRect().top - document.getElementById(b).getBoundingClientRect().top).join(' ')`)
	if order != "sentence likely verdict main cautions cut all" {
		t.Errorf("from above stand %s", order)
	}
	if before := p.ask(`return !!(document.getElementById('job').compareDocumentPosition(document.getElementById('answer')) & Node.DOCUMENT_POSITION_FOLLOWING)`); before != true {
		t.Error("the answer comes before the form in the document")
	}
	if closed := p.ask(`const all = document.getElementById('all'), n = all.querySelectorAll('dl > div').length; return !all.open && n > 10 && all.querySelector('summary').textContent.includes('(' + n + ')')`); closed != true {
		t.Error("all figures are not folded with their number")
	}
	if large := p.ask(`return [...document.querySelectorAll('#main dd')].every((e) => parseFloat(getComputedStyle(e).fontSize) >= 21)`); large != true {
		t.Error("a leading figure is smaller than 21 pixels")
	}
	if size := p.say(`return getComputedStyle(document.getElementById('sentence')).fontSize`); size != "31px" {
		t.Errorf("on a tablet the sentence is %s", size)
	}
}

// stripsOpenInPlace: each caution has a shape, a word and its line, and opens to its
// whole text; one that was opened stays open while the job is typed. Of two stops
// the first is the sentence, and the second is open.
func stripsOpenInPlace(t *testing.T, p *page) {
	p.fill(leadedJob)
	p.shown()
	bare := p.say(`return [...document.querySelectorAll('#cautions details')].filter((e) => !e.querySelector('use').getAttribute('href').startsWith('#mark-')
		|| !/^(Stop|Take care|Note|\d+ notes)\.$/.test(e.querySelector('strong').textContent) || e.querySelector('.brief').textContent === '' || e.open).map((e) => e.textContent).join()`)
	if bare != "" {
		t.Errorf("without a shape, a word or a line, or open: %s", bare)
	}
	if low := p.ask(`return [...document.querySelectorAll('#cautions > li > details > summary')].filter((e) => e.getBoundingClientRect().height < 48).length`); low != 0.0 {
		t.Errorf("%v heads of cautions are lower than 48 pixels", low)
	}
	p.click("#cautions [data-level=warn] summary")
	p.until(`document.querySelector('#cautions [data-level=warn] .text').getBoundingClientRect().height > 20`)
	p.fill(map[string]string{"depth": "0.3"})
	p.shown()
	if open := p.ask(`return document.querySelectorAll('#cautions [data-level=warn] details[open]').length`); open != 1.0 {
		t.Error("a strip that was opened closed while the job was typed")
	}
	p.click("#clear")
	p.fill(twoStops)
	p.shown()
	open := p.lines(`return [...document.querySelectorAll('#cautions details[open] .brief')].map((e) => e.textContent)`)
	if len(open) != 1 || !strings.HasPrefix(open[0], "Heavier than before") {
		t.Errorf("of two stops are open %q", open)
	}
}

// figuresOfTheQuestion: what the job asks for stands in the large figures.
func figuresOfTheQuestion(t *testing.T, p *page) {
	main := func() string {
		p.shown()
		return p.say(`return [...document.querySelectorAll('#main > :not([hidden])')].map((e) => e.dataset.main).join(' ')`)
	}
	p.fill(cuffJob)
	if got := main(); got != "time current totalArea removedEach" {
		t.Errorf("an ordinary job shows %s", got)
	}
	if core := p.say(`return document.querySelector('#bar .core').textContent`); core != "4 h 45 min · 0.375 A" {
		t.Errorf("its core is %q", core)
	}
	p.click("#clear")
	p.fill(map[string]string{"salt": "copper sulfate", "strength": "150", "volume": "2"})
	if got := main(); got != "saltMass waterVolume volume saturation" {
		t.Errorf("a bath shows %s", got)
	}
	p.ask(`document.querySelector('.questions [value=bath]').click()`)
	p.fill(map[string]string{"etched": "40", "volumeNow": "1.6"})
	if got := main() + p.say(`return document.querySelector('#bar .core').textContent`); got != "Still blank: metal." {
		t.Errorf("of a used bath of an unknown metal is told %q", got)
	}
	p.fill(map[string]string{"metal": "copper"})
	if got := main(); !strings.HasPrefix(got, "waterToAdd strengthNow volume") {
		t.Errorf("a used bath shows %s", got)
	}
	p.click("#clear")
	p.fill(map[string]string{"metal": "copper", "bites": "0.05 12; 0.1 9"}) // no figure of the first step answers for them all
	p.shown()
	if core := p.say(`return document.querySelector('#bar .core').textContent`); core != "Type a current density for the steps, such as 30.0 mA/cm²." {
		t.Errorf("of steps without a current the bar says %q", core)
	}
	p.click("#start-with")
	p.answers("Two steps take")
	p.click("#clear")
	p.fill(copperJob)
	p.fill(map[string]string{"time": "60 min", "depth": "0.2", "before": "24.600", "after": "24.300"})
	if got := main(); !strings.HasPrefix(got, "depthNow timeLeft efficiencyNow") {
		t.Errorf("half-way are shown %s", got)
	}
	p.fill(map[string]string{"time": "", "elapsed": "60 min"}) // the whole time is found, and what is left is told
	p.answers("so far")
	if got := p.say(`return document.getElementById('likely').textContent`); strings.Contains(got, "Likely") {
		t.Errorf("beside the time left stands %q", got)
	}
}

// verdictOnTheSupply: a word and a mark for each, and its line opens to the rest.
func verdictOnTheSupply(t *testing.T, p *page) {
	p.fill(copperJob)
	for _, c := range []struct{ volts, amps, fits, word, mark string }{
		{"3", "1", "yes", "Fits.", "#mark-fits"}, {"12", "2", "limit", "Hold it back.", "#mark-warn"}, {"12", "0.1", "no", "Doesn’t fit.", "#mark-stop"},
	} {
		p.fill(map[string]string{"volts": c.volts, "amps": c.amps})
		p.shown()
		got := p.say(`const v = document.getElementById('verdict'); return [v.hidden ? 'hidden' : v.dataset.fits, v.querySelector('strong').textContent, v.querySelector('use').getAttribute('href')].join(' | ')`)
		if want := c.fits + " | " + c.word + " | " + c.mark; got != want {
			t.Errorf("%s V and %s A: the verdict is %s, not %s", c.volts, c.amps, got, want)
		}
	}
	p.fill(map[string]string{"volts": "", "amps": ""})
	p.shown()
	if hidden := p.ask(`return document.getElementById('verdict').hidden`); hidden != true {
		t.Error("a verdict stands where no supply is given")
	}
	p.fill(map[string]string{"density": "", "volts": "9", "amps": "0.5"})
	p.click(".questions label:has([value=supply])")
	p.shown()
	lines, _ := p.ask(`const s = document.getElementById('sentence'); return s.offsetHeight / parseFloat(getComputedStyle(s).lineHeight)`).(float64)
	if lines < 1 || lines > 7 {
		t.Errorf("the sentence takes the height of %.1f lines", lines)
	}
	said := p.say(`return document.getElementById('verdict').textContent`)
	for _, words := range []string{"If it has none, put", "resistor in the red cable", "Fuse a battery.", "Assumes"} {
		if strings.Contains(p.sentence(), words) || !strings.Contains(said, words) {
			t.Errorf("%q does not stand with the verdict alone", words)
		}
	}
}

// waysOut: a contradiction stands once, with a button for each field in it, and one
// touch on one of them is the way out; Undo takes it back.
func waysOut(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "area": "10", "depth": "0.2", "time": "60", "current": "0.3"})
	p.shown()
	if said := p.sentence(); !strings.Contains(said, "don't fit together") {
		t.Fatalf("in the sentence's place stands %q", said)
	}
	if ways := p.say(`return [...document.querySelectorAll('#ways-out button')].map((b) => b.textContent).join(', ')`); ways != "Clear the depth, Clear the time, Clear the current, Clear the exposed area" {
		t.Errorf("the ways out are %s", ways)
	}
	if seen := p.ask(`return document.getElementById('main').checkVisibility() || document.getElementById('likely').textContent !== ''`); seen != false {
		t.Error("figures stand beside a contradiction")
	}
	p.click("#ways-out button:nth-child(2)")
	p.until(`document.getElementById('time').value === '' && document.getElementById('sentence').textContent.startsWith('Leave it')`)
	p.until(`document.querySelectorAll('#ways-out button').length === 0`)
	p.click("#undo")
	p.until(`document.getElementById('time').value === '60'`)
}

// formShare is which share of the height that is seen the form has, with the bar
// and the strip of a run taken away.
const formShare = `
	const view = page.defaultView, seen = view.visualViewport.height, top = view.visualViewport.offsetTop
	const rect = (id) => page.getElementById(id).getBoundingClientRect()
	const run = page.getElementById('run'), strip = run.checkVisibility({ visibilityProperty: true }) ? rect('run').top : Infinity
	return (Math.min(top + seen, strip) - Math.max(top, rect('bar').bottom)) / seen`

// barAndForm: on a phone and an upright tablet, with no more height than a keyboard
// leaves, the bar is at most 72 pixels and stays, and the form keeps 60 % of it.
func barAndForm(t *testing.T, p *page) {
	for _, size := range [][2]int{{390, 430}, {768, 560}, {390, 844}, {320, 640}} {
		for _, job := range []map[string]string{cuffJob, twoStops} {
			p.ask(`try { localStorage.clear(); sessionStorage.clear() } catch {}`)
			p.onAPhone(size[0], size[1])
			p.fillPhone(job)
			where := fmt.Sprintf("%d by %d", size[0], size[1])
			for _, field := range []string{"", "depth", "start"} {
				if field != "" {
					p.inFrame(`const field = page.getElementById('` + field + `')
						for (let d = field.closest('details'); d; d = d.parentElement.closest('details')) d.open = true
						field.scrollIntoView({ block: 'center' }); field.focus()`)
					p.settle()
				}
				var tall, share float64
				if err := p.ExecuteTo(&tall, `return `+framed+`.getElementById('bar').getBoundingClientRect().height`); err != nil {
					t.Fatal(err)
				}
				if err := p.ExecuteTo(&share, `const page = `+framed+`; `+formShare); err != nil {
					t.Fatal(err)
				}
				if tall > 72.5 || tall < 44 {
					t.Errorf("%s: the bar is %v pixels high", where, tall)
				}
				if share < 0.6 {
					t.Errorf("%s, at %q: the form keeps %.2f of the height", where, field, share)
				}
				if field == "" {
					continue
				}
				if hidden := p.inFrame(`const r = page.activeElement.getBoundingClientRect(), at = page.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2)
					return at === page.activeElement ? '' : page.activeElement.id + ' lies under ' + (at?.id || at?.className)`); hidden != "" {
					t.Errorf("%s: %v", where, hidden)
				}
			}
		}
	}
}

// keyboardOverThePage: a keyboard leaves the window its height, and only less of the
// page is seen: the bar takes the pane's place, and the field is in what is seen.
func keyboardOverThePage(t *testing.T, p *page) {
	p.fill(cuffJob)
	p.shown()
	if bar := p.ask(`return document.getElementById('bar').checkVisibility()`); bar != false {
		t.Fatal("at 1024 by 768 there is a bar")
	}
	p.unfold("start")
	p.ask(`document.getElementById('start').focus()
		Object.defineProperty(visualViewport, 'height', { get: () => 380, configurable: true })
		visualViewport.dispatchEvent(new Event('resize'))`)
	p.settle()
	p.settle()
	got := p.say(`const bar = document.getElementById('bar').getBoundingClientRect(), field = document.getElementById('start').getBoundingClientRect()
		return [bar.top >= 0 && bar.height > 44 && bar.height <= 72.5, document.getElementById('answer').checkVisibility(), field.top >= bar.bottom - 1 && field.bottom <= 381, (380 - bar.bottom) / 380 >= 0.6].join()`)
	if got != "true,false,true,true" {
		t.Errorf("a bar, the pane, the field in sight, the form's share: %s", got)
	}
	// The engine pans what is seen over the page.
	p.ask(`Object.defineProperty(visualViewport, 'offsetTop', { get: () => 120, configurable: true })
		visualViewport.dispatchEvent(new Event('scroll'))`)
	p.settle()
	if top := p.ask(`return Math.round(document.getElementById('bar').getBoundingClientRect().top)`); top != 120.0 {
		t.Errorf("what is seen begins at 120 pixels, and the bar at %v", top)
	}
	p.ask(`delete visualViewport.height; delete visualViewport.offsetTop; visualViewport.dispatchEvent(new Event('resize'))`)
	p.settle()
	if back := p.ask(`return document.getElementById('answer').checkVisibility() && !document.getElementById('bar').checkVisibility()`); back != true {
		t.Error("the keyboard has gone, and the pane is not back")
	}
}

// answerOverTheForm: a touch on the bar opens the whole answer, from which the keys
// can't reach the form; Escape closes it, and the focus is where it was.
func answerOverTheForm(t *testing.T, p *page) {
	if err := p.SetWindow(768, 1024); err != nil {
		t.Fatal(err)
	}
	defer p.SetWindow(1024, 768)
	p.fresh()
	p.fill(cuffJob)
	p.shown()
	p.click("#bar")
	p.draws("0.200 mm")
	state := func() string {
		return p.say(`return [document.getElementById('answer').checkVisibility(), document.getElementById('job').inert, document.activeElement.id, document.getElementById('bar').ariaExpanded].join()`)
	}
	if got := state(); got != "true,true,shut,true" {
		t.Errorf("open: %s", got)
	}
	if err := p.Press(browser.Escape); err != nil {
		t.Fatal(err)
	}
	p.settle()
	if got := state(); got != "false,false,bar,false" {
		t.Errorf("closed by Escape: %s", got)
	}
	// A caution leads to its field.
	p.fill(twoStops)
	p.shown()
	p.click("#bar")
	p.click("#cautions [open] a")
	p.until(`document.activeElement.id === 'after' && !document.getElementById('job').inert`)
}

// noticeOnTheStrip: what the page has to say lies over no run's clock.
func noticeOnTheStrip(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.until(`document.getElementById('run').dataset.state === 'before'`)
	p.click("#run-on")
	p.ask(`const text = document.createElement('p'); text.textContent = 'Said by a test.'; document.getElementById('notice').replaceChildren(text)`)
	p.settle()
	p.settle()
	if over := p.ask(`return document.getElementById('notice').getBoundingClientRect().bottom > document.getElementById('run').getBoundingClientRect().top + 1`); over != false {
		t.Error("a notice lies over the strip of a run")
	}
}

// emptyPage: one invitation, one picture of what will come, and one button.
func emptyPage(t *testing.T, p *page) {
	p.shown()
	if seen := p.lines(`return [...document.querySelectorAll('#answer button, #answer summary')].filter((e) => e.checkVisibility()).map((e) => e.textContent)`); len(seen) != 1 || seen[0] != "Fill in an example" {
		t.Errorf("the empty pane has the buttons %q", seen)
	}
	if drawn := p.ask(`const r = document.querySelector('#cut .uncut').getBoundingClientRect(); return r.width > 300 && r.height > 140`); drawn != true {
		t.Error("the empty pane has no picture")
	}
	p.click("#start-example")
	p.answers("brass")
}
