package pagetest

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"saltbite/build/browser"
)

// sizes are those of a tablet in both orientations and of a phone.
var sizes = [][2]int{{1024, 768}, {768, 1024}, {390, 844}}

// controls are what a finger may be on while an answer appears. The readings of a text
// that may mean two things appear where no control is.
const controls = `.form input, .form select, .form button:not(.readings *), .form summary, .head button, .head input`

// rectangles are where the controls stand on the sheet, however far that is
// scrolled, in tenths of a pixel.
const rectangles = `return [...document.querySelectorAll(arguments[0])].filter((e) => e.checkVisibility()).map((e) => {
	const r = e.getBoundingClientRect()
	let down = r.y
	for (let around = e.parentElement; around; around = around.parentElement) down += around.scrollTop
	const name = e.id || e.dataset.unit || e.dataset.seek || e.closest('[data-part]')?.dataset.part || e.name
	return e.localName + ' ' + name + ' ' + [r.x, down, r.width, r.height].map((n) => Math.round(n * 10)).join(' ')
})`

// typed is a job typed key by key, with mistakes on the way: each step shows an
// error, a caution or an answer that was not there before.
var typed = []struct{ field, keys string }{
	{"metal", "brasss"}, {"metal", browser.Backspace}, {"width", "60"}, {"height", "40x"}, {"height", browser.Backspace},
	{"open", "400"}, {"open", browser.Backspace}, {"depth", "0,234"}, {"density", "300"}, {"salt", "copper sulf"},
	{"strength", "900"}, {"volume", "1,234"}, {"pieces", "1.5"}, {"current", "3"},
	{"sheet", "18 ga"}, {"line", "0.1"}, {"volts", "3"}, {"gap", "60"}, {"cathode", "6"}, {"hanger", "40 ga"}, {"hangerLength", "25"},
	{"bites-depth-1", "0.05"}, {"bites-area-1", "12"}, {"bites-depth-2", "0,1"}, {"bites-area-2", "9x"}, {"before", "24.6"}, {"after", "24.9"}, {"readings", "0:00 0.3; 0:30 0.2"}, {"start", "14:05"},
}

// shiftLimit is the sum of layout shifts that is called good (web.dev, Cumulative
// Layout Shift). What is in the answer's pane makes room for new content, and no
// finger is there while someone types, so its shifts are not counted. Nothing that a
// finger is on may move at all.
const shiftLimit = 0.1

// watchShifts records each layout shift and whether a control was in it.
const watchShifts = `window.shifts = []
	if (window.PerformanceObserver?.supportedEntryTypes?.includes('layout-shift')) new PerformanceObserver((list) => {
		for (const entry of list.getEntries()) {
			const moved = entry.sources.map(({ node }) => node).filter(Boolean)
			window.shifts.push({ value: entry.value, nodes: moved.map((n) => n.id || n.className || n.nodeName).join(', '),
				control: moved.some((n) => n.matches?.(arguments[0]) || n.querySelector?.(arguments[0])),
				within: moved.length > 0 && moved.every((n) => n.parentElement?.closest('.answer')) })
		}
	}).observe({ type: 'layout-shift' })`

type shift struct {
	Value   float64
	Nodes   string
	Control bool
	Within  bool // the answer's pane alone
}

// nothingMoves: no control moves while a job is typed. In Chromium the layout shifts
// are summed too, including those right after a key.
func nothingMoves(t *testing.T, p *page) {
	for _, size := range sizes {
		if err := p.SetWindow(size[0], size[1]); err != nil {
			if size[0] < 500 { // a window has a least width: the narrow page is tried in a frame
				continue
			}
			t.Fatal(err)
		}
		p.fresh()
		p.ask(`for (const d of document.querySelectorAll('.part, .part .more')) d.open = true`)
		p.settle()
		p.ask(watchShifts, controls)
		before := p.lines(rectangles, controls)
		for _, step := range typed {
			p.typeIn(step.field, step.keys)
			p.settle()
			after := p.lines(rectangles, controls)
			if moved := difference(before, after); moved != "" {
				t.Errorf("at %d by %d, typing %q into %s moved %s", size[0], size[1], step.keys, step.field, moved)
				before = after
			}
		}
		var shifts []shift
		if err := p.ExecuteTo(&shifts, `return window.shifts`); err != nil {
			t.Fatal(err)
		}
		sum := 0.0
		for _, s := range shifts {
			if !s.Within {
				sum += s.Value
			}
			if s.Control {
				t.Errorf("at %d by %d a control was in a shift of the layout of %.4f: %s", size[0], size[1], s.Value, s.Nodes)
			}
		}
		if sum > shiftLimit {
			t.Errorf("at %d by %d the layout shifted by %.3f in all: %+v", size[0], size[1], sum, shifts)
		}
	}
	p.seesShifts()
	if err := p.SetWindow(1024, 768); err != nil {
		t.Fatal(err)
	}
}

// seesShifts fails if a deliberate shift is not recorded.
func (p *page) seesShifts() {
	p.Helper()
	if p.Name != browser.Chromium {
		return
	}
	p.ask(`window.shifts.length = 0; document.getElementById('job').style.marginTop = '90px'`)
	p.settle()
	if seen := p.ask(`return window.shifts.some((s) => s.control)`); seen != true {
		p.Error("the sheet was pushed down, and no shift of the layout was noted")
	}
}

// settle waits until what was typed is answered and painted.
func (p *page) settle() {
	p.Helper()
	time.Sleep(120 * time.Millisecond)
	if err := p.ExecuteAsync(nil, `const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => done(true)))`); err != nil {
		p.Fatal(err)
	}
}

func (p *page) lines(script string, args ...any) []string {
	p.Helper()
	var lines []string
	if err := p.ExecuteTo(&lines, script, args...); err != nil {
		p.Fatal(err)
	}
	return lines
}

func difference(before, after []string) string {
	if len(before) != len(after) {
		return fmt.Sprintf("%d controls to %d", len(before), len(after))
	}
	for i := range before {
		if !samePlace(before[i], after[i]) {
			return before[i] + " to " + after[i]
		}
	}
	return ""
}

// samePlace compares two lines of rectangles: to half a pixel, since an engine rounds
// a place again in each layout.
func samePlace(a, b string) bool {
	near := func(a, b string) bool {
		x, errX := strconv.Atoi(a)
		y, errY := strconv.Atoi(b)
		return a == b || errX == nil && errY == nil && max(x-y, y-x) <= 5
	}
	return slices.EqualFunc(strings.Fields(a), strings.Fields(b), near)
}

// inFrame runs a script with the framed page's document as its first argument.
func (p *page) inFrame(script string) any {
	p.Helper()
	return p.ask(`const page = document.getElementById('frame').contentDocument; ` + script)
}

// worksNarrow tests the page at 320 and 390 pixels, in a frame, because windows can't
// be that narrow in every engine.
func worksNarrow(t *testing.T, p *page) {
	for _, width := range []int{320, 390} {
		p.loadOnly(fmt.Sprintf("/frame?width=%d&height=700", width))
		p.until(`document.getElementById('frame').contentDocument?.getElementById('sentence')?.textContent && !document.getElementById('frame').contentDocument.querySelector('.waiting')`)
		p.inFrame(`for (const d of page.querySelectorAll('details')) d.open = true; page.getElementById('example').click()`)
		p.until(`document.getElementById('frame').contentDocument.getElementById('sentence').textContent.includes('brass')`)
		p.settle()
		p.fits(width)
		small := p.inFrame(`return [...page.querySelectorAll('button, select, summary, .form input[type=text], .switch label')]
			.filter((e) => e.offsetParent && !e.closest('.list')).map((e) => [e.getBoundingClientRect(), e]).filter(([r]) => r.height < 47.5 || r.width < 44)
			.map(([r, e]) => (e.id || e.className || e.localName) + ' ' + r.width.toFixed(0) + 'x' + r.height.toFixed(0)).join(', ')`)
		if small != "" {
			t.Errorf("at %d pixels these are too small for a gloved finger: %v", width, small)
		}
		if rows := p.inFrame(`return String(new Set([...page.querySelectorAll('.head button')].map((e) => e.offsetTop)).size)`); rows != "2" {
			t.Errorf("at %d pixels the buttons of the head stand in %s rows", width, rows)
		}
	}
}

// fits fails if the framed page is wider than its frame, or text in it is cut off.
func (p *page) fits(width int) {
	p.Helper()
	var wide float64
	if err := p.ExecuteTo(&wide, `const page = document.getElementById('frame').contentDocument; return page.documentElement.scrollWidth`); err != nil {
		p.Fatal(err)
	}
	if wide > float64(width) {
		p.Errorf("at %d pixels the page is %v wide: %v", width, wide, p.inFrame(
			`const w = page.documentElement.clientWidth; return [...page.querySelectorAll('body *')].filter((e) => e.getBoundingClientRect().right > w + 1).slice(0, 5).map((e) => e.localName + '.' + e.className + '#' + e.id).join(', ')`))
	}
}

// worksWithLargeText doubles the size of text, as a browser's own setting does.
func worksWithLargeText(t *testing.T, p *page) {
	p.loadOnly("/frame?width=768&height=900")
	p.until(`document.getElementById('frame').contentDocument?.getElementById('sentence')?.textContent && !document.getElementById('frame').contentDocument.querySelector('.waiting')`)
	var single, double float64
	size := `const page = document.getElementById('frame').contentDocument; return parseFloat(page.defaultView.getComputedStyle(page.getElementById('metal')).fontSize)`
	if err := p.ExecuteTo(&single, size); err != nil {
		t.Fatal(err)
	}
	p.inFrame(`page.documentElement.style.fontSize = '200%'; page.getElementById('example').click()`)
	p.settle()
	if err := p.ExecuteTo(&double, size); err != nil {
		t.Fatal(err)
	}
	if math.Abs(double-2*single) > 1 {
		t.Errorf("text of %v pixels became %v when it was doubled", single, double)
	}
	p.fits(768)
}

// pageState is a state of the page, and how it comes about.
type pageState struct {
	name string
	make func(*page)
}

// states are those that axe checks.
var states = []pageState{
	{"empty", func(*page) {}},
	{"an ordinary job", func(p *page) {
		p.click("#example")
		p.answers("brass")
	}},
	{"mistakes and cautions", func(p *page) {
		p.ask(`for (const d of document.querySelectorAll('details')) d.open = true`)
		p.fill(map[string]string{"metal": "sterling", "area": "1,234", "depth": "a lot", "time": "60", "density": "200",
			"salt": "copper sulfate", "strength": "900 g/L", "volume": "1"})
		p.until(`document.querySelectorAll('[aria-invalid=true]').length > 1`)
	}},
	{"all parts open", func(p *page) {
		p.click("#example")
		p.answers("brass")
		p.ask(`for (const d of document.querySelectorAll('details')) d.open = true`)
	}},
	{"all parts folded", func(p *page) {
		p.click("#example")
		p.answers("brass")
		p.ask(`for (const d of document.querySelectorAll('details')) d.open = false`)
	}},
	{"where a figure comes from", func(p *page) {
		p.click("#example")
		p.answers("brass")
		p.ask(`document.querySelector('#figures [data-origin=removed]').click()`)
	}},
	{"where all figures come from", func(p *page) {
		p.ask(`document.querySelector('.foot button').click()`)
	}},
	{"a job to share", func(p *page) {
		p.click("#example")
		p.answers("brass")
		p.click("#to-share")
	}},
	{"kept jobs", func(p *page) {
		p.click("#example")
		p.answers("brass")
		p.keeps("Nameplate", "is saved")
		p.takes("[Other]\nmetal=copper\nx\n")
		p.says("jobs-taken", "was damaged")
		p.act(0, "remove")
		p.until(`document.querySelector('#jobs-list .gone:not([hidden])')`)
	}},
	{"a question about a link", func(p *page) {
		p.fill(copperJob)
		p.answers(copperTime)
		p.bring("metal=silver&x=1")
		p.answered()
	}},
	{"what was said of a link", func(p *page) {
		p.bring("metal=silver&x=1")
		p.noticed("no field here")
	}},
	{"bites and stops", func(p *page) {
		p.fill(map[string]string{"metal": "brass", "area": "10", "density": "30", "bites": "0.05 10; 0.05 5", "hanger": "1", "hangerLength": "10"})
		p.ask(`const s = document.getElementById('hangerMetal'); s.value = 'stainless'; s.dispatchEvent(new Event('input', { bubbles: true }))`)
		p.until(`document.querySelector('#cautions [data-level=stop]') && document.querySelector('#figures .bites')`)
	}},
	{"suggestions", func(p *page) {
		p.typeIn("metal", "bras")
		p.until(`document.getElementById('metal').ariaExpanded === 'true'`)
	}},
}

// noViolation runs axe on the page in each state, and once on a page with a label
// removed, to see that it reports that. What axe reads of a page is written by the same
// scripts in each engine.
func noViolation(t *testing.T, p *page) {
	source := axe(t)
	inEachState(p, shareOf(p.Name, states), source)
	p.ask(`document.querySelector('label[for=metal]').remove()`)
	if len(p.violations(source)) == 0 {
		t.Error("a field lost its label, and axe saw nothing wrong")
	}
}

// inEachState has axe look at the page in each of some states.
func inEachState(p *page, states []pageState, axe string, rules ...string) {
	p.Helper()
	for _, state := range states {
		p.fresh()
		state.make(p)
		p.settle()
		for _, violation := range p.violations(axe, rules...) {
			p.Errorf("%s: %s", state.name, strings.TrimSpace(violation))
		}
	}
}

// axe is the script that looks for violations.
func axe(t *testing.T) string {
	source, err := os.ReadFile("../node_modules/axe-core/axe.min.js")
	if os.IsNotExist(err) && os.Getenv("SALTBITE_SETUP") == "" {
		t.Skip("there is no axe-core; npm ci in site/ brings it")
	}
	if err != nil {
		t.Fatal(err)
	}
	return string(source)
}

// violations are the violations that axe finds, and the cases that it can't decide,
// except contrasts over a picture, and frames, which are checked from inside. It looks
// by the rules that are named; by all if none is.
func (p *page) violations(axe string, rules ...string) []string {
	p.Helper()
	var found []string
	err := p.ExecuteAsync(&found, axe+`;
		const [rules, done] = arguments
		const why = (n) => n.target.join(' ') + ' (' + [...n.any, ...n.all, ...n.none][0]?.message + ')'
		window.axe.run(document, { iframes: false, ...(rules.length > 0 && { runOnly: rules }) }).then(
			(r) => done(r.violations.concat(r.incomplete.filter((v) => !['color-contrast', 'frame-tested'].includes(v.id)))
				.map((v) => v.id + ': ' + v.help + ' at ' + v.nodes.slice(0, 3).map(why).join('; '))),
			(reason) => done(['axe failed: ' + reason]))`, append([]string{}, rules...))
	if err != nil {
		p.Fatal(err)
	}
	return found
}
