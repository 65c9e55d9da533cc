package pagetest

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"saltbite/build/browser"
)

// TestReading: the page is read by someone who enlarges it, sets its text wider, or
// has the colours of the system.
func TestReading(t *testing.T) {
	t.Parallel()
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		p := &page{t, session, serve(t)}
		t.Run("at 400 %", func(t *testing.T) { p.T = t; reflows(p) })
		t.Run("with wider text", func(t *testing.T) { p.T = t; spacedOut(p) })
		t.Run("in the system's colours", func(t *testing.T) { p.T = t; inForcedColours(p) })
	})
}

const inFramed = `const page = document.getElementById('frame').contentDocument; `

// openFramed opens the page in a frame of a size.
func (p *page) openFramed(width, height int) {
	p.Helper()
	p.loadOnly(fmt.Sprintf("/frame?width=%d&height=%d", width, height))
	p.until(`(() => { const document = window.document.getElementById('frame').contentDocument; return ` + loaded + ` })()`)
}

// lost lists what can't be read: text beside the page, and text that something cuts.
// The line of a folded part and the core of an answer end in an ellipsis: both stand
// in full where they lead.
const lost = `
const wrong = [], view = page.defaultView, wide = page.documentElement.clientWidth
if (page.documentElement.scrollWidth > wide) wrong.push('the page is ' + page.documentElement.scrollWidth + ' wide')
const range = page.createRange()
const within = page.querySelector('dialog[open]') ?? page.body
const walk = page.createTreeWalker(within, NodeFilter.SHOW_TEXT)
for (let text = walk.nextNode(); text; text = walk.nextNode()) {
	const of = text.parentElement
	if (!text.textContent.trim() || !of.checkVisibility({ visibilityProperty: true, opacityProperty: true }) || of.closest('.unseen, .gist, .core, option, svg, dialog:not([open]), [inert], textarea')) continue
	let cutBy = []
	for (let around = of; around && around !== page.documentElement; around = around.parentElement) {
		const style = view.getComputedStyle(around)
		if (style.clipPath !== 'none') { cutBy = undefined; break } // told, and not shown
		if (['hidden', 'clip'].includes(style.overflowX) || ['hidden', 'clip'].includes(style.overflowY)) cutBy.push([around, style, around.getBoundingClientRect()])
	}
	if (!cutBy) continue
	range.selectNodeContents(text)
	for (const r of range.getClientRects()) {
		if (r.width < 2) continue
		const says = '“' + text.textContent.trim().slice(0, 40) + '”'
		if (r.left < -1 || r.right > wide + 1) wrong.push(says + ' is beside the page, ' + r.left.toFixed(0) + ' to ' + r.right.toFixed(0))
		for (const [around, style, box] of cutBy) {
			const across = ['hidden', 'clip'].includes(style.overflowX) && (r.left < box.left - 1.5 || r.right > box.right + 1.5)
			const down = ['hidden', 'clip'].includes(style.overflowY) && (r.top < box.top - 3 || r.bottom > box.bottom + 3)
			if (across || down) wrong.push(says + ' is cut by ' + (around.id || around.className || around.localName))
		}
	}
}
return [...new Set(wrong)].slice(0, 10)`

// read are the jobs of the touch test that are read too: none, an ordinary one,
// mistakes, steps, and one with a little of everything.
var read = []string{touched[0], touched[3], touched[10], touched[13], touched[28]}

// reads fails if something can't be read of the form, of the answer, or of a dialog.
func (p *page) reads(how string) {
	p.Helper()
	fails := func(of string) {
		p.Helper()
		p.settle()
		if wrong := p.lines(inFramed + lost); len(wrong) > 0 {
			p.Errorf("%s, %s:\n\t%s", how, of, strings.Join(wrong, "\n\t"))
		}
	}
	for _, job := range read {
		p.ask(inFramed+layJob, job)
		fails(fmt.Sprintf("the form of %q", job))
		p.ask(inFramed + `if (page.getElementById('bar').checkVisibility()) page.getElementById('bar').click(); for (const d of page.querySelectorAll('.answer details')) d.open = true`)
		fails(fmt.Sprintf("the answer of %q", job))
		p.ask(inFramed + `if (page.getElementById('shut').checkVisibility()) page.getElementById('shut').click()`)
	}
	for _, dialog := range []string{"card", "to-jobs", "to-share"} {
		p.ask(inFramed+`page.getElementById(arguments[0]).click()`, dialog)
		p.until(`document.getElementById('frame').contentDocument.querySelector('dialog[open]')`)
		fails("the dialog of " + dialog)
		p.ask(inFramed + `page.querySelector('dialog[open]').close()`)
	}
}

// reflows: a window of 1280 by 1024 at 400 % is 320 by 256 (WCAG 2.2, 1.4.10): all
// is read by scrolling one way.
func reflows(p *page) {
	p.openFramed(320, 256)
	p.reads("at 320 by 256")
	p.ask(inFramed + `page.querySelector('.head h1').style.cssText = 'white-space: nowrap; letter-spacing: 3em'`)
	if found := p.lines(inFramed + lost); len(found) == 0 {
		p.Error("a heading was made too wide, and that is not among what is found")
	}
}

// spacing is that of WCAG 2.2, 1.4.12.
const spacing = `const sheet = new page.defaultView.CSSStyleSheet()
	sheet.replaceSync('* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }')
	page.adoptedStyleSheets = [...page.adoptedStyleSheets, sheet]`

func spacedOut(p *page) {
	for _, size := range [][2]int{{1024, 768}, {390, 844}} {
		p.openFramed(size[0], size[1])
		p.ask(inFramed + spacing)
		how := fmt.Sprintf("with wider text at %d by %d", size[0], size[1])
		p.reads(how)
		for _, job := range read {
			p.ask(inFramed+layJob, job)
			p.settle()
			for _, wrong := range p.lines(inFramed + untouchable) {
				if strings.HasPrefix(wrong, "“") {
					p.Errorf("%s, %q: %s", how, job, wrong)
				}
			}
		}
	}
	p.ask(inFramed + `for (const row of page.querySelectorAll('.row')) row.style.cssText = 'block-size: 4rem; overflow: clip'`)
	if found := p.lines(inFramed + lost); len(found) == 0 {
		p.Error("rows were made too low for their text, and that is not among what is found")
	}
}

// forced lists what is told by a colour that the system takes away.
const forced = `const wrong = []
const style = (e) => getComputedStyle(e)
if (!matchMedia('(forced-colors: active)').matches) wrong.push('the colours are not forced')
for (const choices of document.querySelectorAll('.switch')) {
	const chosen = choices.querySelector(':checked + span'), other = choices.querySelector('input:not(:checked) + span')
	if (chosen?.checkVisibility() && other && style(chosen).borderBottomColor === style(other).borderBottomColor) wrong.push('what is chosen of ' + chosen.textContent + ' and ' + other.textContent)
}
for (const e of document.querySelectorAll('#cautions li, .verdict')) {
	if (!e.checkVisibility()) continue
	const mark = e.querySelector('.mark')
	if (!e.querySelector('strong')?.textContent || !mark || style(mark).stroke === style(document.body).backgroundColor) wrong.push('how grave it is: ' + e.textContent.trim().slice(0, 40))
}
const paint = (role) => { const e = document.querySelector('#cut [role=img] [data-role=' + role + ']'); return e && style(e).fill + style(e).stroke + style(e).strokeDasharray }
if (!paint('metal') || !paint('resist') || paint('metal') === paint('resist')) wrong.push('the metal beside the resist')
for (const e of document.querySelectorAll('.form input[type=text], .form .unit select')) {
	if (e.checkVisibility() && style(e).borderBottomColor === style(e).backgroundColor) { wrong.push('the edge of ' + (e.id || e.name)); break }
}
document.getElementById('metal').focus()
const focused = style(document.activeElement)
if (focused.outlineStyle === 'none' || focused.outlineColor === style(document.body).backgroundColor) wrong.push('where the focus is')
return wrong`

// inForcedColours: nothing is told by colour alone (WCAG 2.2, 1.4.1), so that a
// person's own colours take nothing away. WebKitGTK has no such colours.
func inForcedColours(p *page) {
	err := p.ForceColours()
	if errors.Is(err, browser.ErrNotHere) {
		return
	}
	if err != nil {
		p.Fatal(err)
	}
	p.fresh()
	p.fill(map[string]string{"metal": "brass", "area": "10", "depth": "0.2", "density": "30", "volts": "3", "amps": "0.1", "hanger": "40 ga", "hangerLength": "25"})
	p.until(`document.querySelector('#cautions li') && document.querySelector('#cut.drawn') && document.querySelector('.verdict').checkVisibility()`)
	p.ask(`document.getElementById('metal').scrollIntoView()`)
	for _, wrong := range p.lines(forced) {
		p.Errorf("in the system's colours can't be told: %s", wrong)
	}
	p.ask(`document.querySelector('.switch :checked + span').style.borderColor = document.querySelector('.switch input:not(:checked) + span').style.borderColor = 'Canvas'`)
	if found := p.lines(forced); len(found) == 0 {
		p.Error("a choice was made to look like the other, and that is not found")
	}
}
