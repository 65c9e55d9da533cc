package pagetest

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"saltbite/build/browser"
)

// touched are jobs in the text form of a set of fields: ordinary ones, half-typed ones,
// mistakes, what may mean two things, contradictions, cautions, every part in use.
var touched = []string{
	"",
	"metal=brass",
	"metal=brass&width=60&height=40&open=30&depth=0.2",
	"metal=brass&width=60&height=40&open=30&depth=0.2&density=30&salt=copper+sulfate+crystals&strength=150&volume=1.5",
	"metal=copper&area=10&depth=0.1&density=30&volts=12&amps=1",
	"metal=sterling&area=11.6&depth=0.25&density=20&salt=silver+nitrate&strength=40&volume=1",
	"metal=sterling&area=11.6&depth=0.25&density=20&salt=copper+sulfate",
	"metal=steel&area=10&depth=0.2&density=30",
	"metal=nickel+silver&area=10&depth=0.2&density=30",
	"metal=brass&width=1,234&height=1,234&open=0,4&depth=1,234&density=1,234&volume=1,234&efficiency=0,9&keep=50&back=1/3+%25",
	"metal=xyz&width=x&height=-1&open=400&depth=a+lot&density=3+min&time=1:75&current=5+kg&pieces=1.5&sheet=99+ga&strength=6000",
	"metal=brass&area=10&depth=0.2&time=1:40&density=30&current=0.3",
	"metal=brass&area=10&density=30&bites=0.05+10;+0.10+9;+0.1+4",
	"metal=brass&area=10&density=30&bites=0.05+12;+0.10+9",
	"metal=brass&density=30&bites=0.05+12;+0.10",
	"metal=brass&density=30&bites=0.05",
	"metal=copper&area=10&depth=0.3&density=30&sheet=0.5&keep=0.3+mm&line=0.2&space=0.2&undercut=1",
	"metal=copper&area=10&depth=0.1&density=300&volts=3&amps=0.1&gap=60&cathode=6&position=face-up&wire=30+ga&wireLength=4",
	"metal=copper&area=10&depth=0.1&density=30&hanger=40+ga&hangerLength=25&hangerMetal=stainless&bareEdges=120&back=10&sheet=18+ga",
	"metal=brass&area=10&depth=0.2&density=30&strength=150&volume=2&etched=40&volumeNow=1.6&gravity=1.1",
	"salt=copper+sulfate&haveStrength=100&haveVolume=2&wantStrength=150&strengthA=100&strengthB=200&volume=3",
	"salt=copper+sulfate&saltInHand=500&waterInHand=2+L&coldest=5&assay=98&mixed=3+May",
	"metal=brass&area=10&depth=0.2&density=30&before=24.60&after=23.85",
	"metal=brass&area=10&depth=0.2&density=30&before=24.60&after=23.85&elapsed=1+h+10&resolution=0.1",
	"metal=brass&area=10&depth=0.2&readings=0:00+0.30;+0:30+0.28&start=14:05&paused=10",
	"metal=brass&area=10&depth=0.2&density=30&volume=2&seen=faint",
	"metal=Cu+85+Zn+15&diameter=30&sides=2&open=1/3&depth=0.2&density=30&pieces=14",
	"units=us&metal=brass&width=2+3/8&height=1+in&open=30&depth=0.008+in&density=30&strength=20+%25&volume=2+qt",
	"metal=lead+brass&area=10&depth=0.2&density=30&pieces=14&strength=150&volume=2&volts=12&amps=10",
	"ask=supply&metal=common+salt&salt=common+salt&temperature=900&time=1:2:3:4&start=25:00&readings=x&hanger=18+ga+x",
}

// layJob puts a job on the sheet, all its parts open.
const layJob = `const fields = new URLSearchParams(arguments[0])
	page.getElementById('clear').click()
	for (const d of page.querySelectorAll('.part, .part .more')) d.open = true
	for (const [name, text] of fields) {
		if (name === 'units' || name === 'ask') { page.querySelector('[name=' + name + '][value=' + text + ']').click(); continue }
		const control = page.getElementById(name)
		control.value = text
		control.dispatchEvent(new Event('input', { bubbles: true }))
	}`

// untouchable lists what is wrong for a finger on the sheet and in the head.
const untouchable = `
const wrong = []
const view = page.defaultView
const seen = (e) => e.checkVisibility({ visibilityProperty: true, opacityProperty: false }) && !e.closest('[inert]')
const nameOf = (e) => e.id || e.name || e.dataset.unit || e.dataset.seek || e.dataset.reading || e.textContent.trim().slice(0, 30) || e.className
const sheet = page.getElementById('job')

// What lies over a field.
for (const field of sheet.querySelectorAll('.row [name], .steps input')) {
	if (!seen(field)) continue
	let r = field.getBoundingClientRect()
	if (r.top < 0.3 * view.innerHeight || r.bottom > 0.75 * view.innerHeight) { // else it is in the clear
		field.scrollIntoView({ block: 'center' })
		r = field.getBoundingClientRect()
	}
	for (const at of [0.2, 0.5, 0.8]) {
		const over = page.elementFromPoint(r.x + at * r.width, r.y + r.height / 2)
		if (over !== field) wrong.push(nameOf(field) + ' at ' + at + ' lies under ' + (over ? nameOf(over) : 'nothing'))
	}
}

// Targets: how large they are, and whether two lie over each other.
const targets = [...page.querySelectorAll('.head button, .head .switch label, .form button, .form select, .form input[type=text], .form summary, .form .questions label, .form .switch label')].filter(seen)
const boxes = targets.map((e) => [e, e.getBoundingClientRect()])
for (const [e, r] of boxes) if (r.height < 43.9 || r.width < 43.9) wrong.push(nameOf(e) + ' is ' + r.width.toFixed(1) + ' by ' + r.height.toFixed(1))
const overlap = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.9 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.9
const down = boxes.filter(([e]) => e.closest('.form')).sort(([, a], [, b]) => a.top - b.top)
down.forEach(([e, r], i) => {
	for (let j = i + 1; j < down.length && down[j][1].top < r.bottom; j++) {
		if (overlap(r, down[j][1])) wrong.push(nameOf(e) + ' lies over ' + nameOf(down[j][0]))
	}
})

// Texts: each whole within its row or button, none over another or over a target.
// The one line that a folded part tells ends in an ellipsis, and is no text to the end.
const lines = []
const range = page.createRange()
for (const row of sheet.querySelectorAll('.row')) {
	if (!seen(row)) continue
	const box = row.getBoundingClientRect()
	for (const text of row.querySelectorAll('label, .says > span, .titles span, .found-for, .fill, .readings button, .add')) {
		if (!seen(text) || text.closest('.unseen') || !text.textContent.trim()) continue
		if (view.getComputedStyle(text).clipPath !== 'none' || view.getComputedStyle(text.parentElement).clipPath !== 'none') continue
		const own = text.matches('button') ? text.getBoundingClientRect() : box
		const walk = page.createTreeWalker(text, NodeFilter.SHOW_TEXT)
		for (let node = walk.nextNode(); node; node = walk.nextNode()) {
			if (node.parentElement.closest('.unseen') || !node.textContent.trim()) continue
			range.selectNodeContents(node)
			for (const line of range.getClientRects()) {
				if (line.width < 2) continue
				if (line.bottom > own.bottom + 1.5 || line.top < own.top - 1.5 || line.right > own.right + 1 || line.left < own.left - 1) wrong.push('“' + node.textContent.slice(0, 40) + '” is cut at ' + nameOf(row.querySelector('[name]')))
				lines.push([text, line, row])
			}
		}
	}
}
lines.sort(([, a], [, b]) => a.top - b.top)
lines.forEach(([text, line, row], i) => {
	for (let j = i + 1; j < lines.length && lines[j][1].top < line.bottom; j++) {
		const [other, second] = lines[j]
		const less = (r) => new DOMRect(r.x, r.y + 3, r.width, r.height - 6) // without what stands between lines
		if (other !== text && overlap(less(line), less(second))) wrong.push('“' + text.textContent.trim().slice(0, 30) + '” lies over “' + other.textContent.trim().slice(0, 30) + '”')
	}
	for (const target of row.querySelectorAll('button, select, input')) {
		if (seen(target) && !target.contains(text) && overlap(line, target.getBoundingClientRect())) wrong.push('“' + text.textContent.trim().slice(0, 30) + '” lies over ' + nameOf(target))
	}
})
return [...new Set(wrong)].slice(0, 12)`

// finger has the functions aim, of a field to put a finger on: where it is and what
// stands in it; and hit, of what became of that field.
const finger = `const aim = (n) => {
		const all = [...page.querySelectorAll('.row input[type=text], .steps input')].filter((e) => e.checkVisibility() && !e.readOnly)
		const field = all[n % all.length]
		field.scrollIntoView({ block: 'center' })
		const r = field.getBoundingClientRect(), at = [0.2, 0.5, 0.8][n % 3]
		const frame = page.defaultView.frameElement?.getBoundingClientRect()
		return { id: field.id, text: field.value, x: Math.round((frame?.x ?? 0) + r.x + at * r.width), y: Math.round((frame?.y ?? 0) + r.y + r.height / 2), place: [r.x, r.y, r.width, r.height] }
	}
	const hit = (id) => {
		const field = page.getElementById(id), r = field.getBoundingClientRect()
		return { id: page.activeElement.id, text: field.value, place: [r.x, r.y, r.width, r.height] }
	}
	`

// leastTaps are put on the fields in each engine, each tapStep fields after the last.
const leastTaps, tapStep = 200, 7

type tap struct {
	ID, Text string
	X, Y     int
	Place    [4]float64
}

// movedFrom says whether a field is elsewhere than it was, by more than the pixel to
// which an engine rounds how far a page is scrolled.
func (now tap) movedFrom(before tap) bool {
	for i := range now.Place {
		if math.Abs(now.Place[i]-before.Place[i]) > 1.01 {
			return true
		}
	}
	return false
}

// TestTouch: in three engines at three sizes nothing lies over a field, no target is
// small or over another, no text is cut or over another, in each of the jobs; and a
// finger that is put on a field gets a caret there and nothing else, and moves nothing
// before it is lifted.
func TestTouch(t *testing.T) {
	t.Parallel()
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		p := &page{t, session, serve(t)}
		taps := 0
		for _, size := range sizes {
			inPage, ready := `const page = document; `, loaded
			if size[0] < 500 { // a window has a least width
				inPage = `const page = document.getElementById('frame').contentDocument; `
				ready = `(() => { const document = window.document.getElementById('frame').contentDocument; return ` + loaded + ` })()`
				p.loadOnly(fmt.Sprintf("/frame?width=%d&height=%d", size[0], size[1]))
			} else {
				if err := p.SetWindow(size[0], size[1]); err != nil {
					t.Fatal(err)
				}
				p.loadOnly("/")
			}
			p.until(ready)
			for i, job := range touched {
				p.ask(inPage+layJob, job)
				p.settle()
				if wrong := p.lines(inPage + untouchable); len(wrong) > 0 {
					t.Errorf("at %d by %d, with %q:\n\t%s", size[0], size[1], job, strings.Join(wrong, "\n\t"))
				}
				n := 2 + i%2*(i/2%2) // nine in every four jobs
				p.tap(inPage, size, i*11+taps, n)
				taps += n
			}
		}
		if taps < leastTaps {
			t.Errorf("only %d taps", taps)
		}
		p.seesFaults()
	})
}

// seesFaults fails if faults that are made on purpose are not found.
func (p *page) seesFaults() {
	p.Helper()
	inPage := `const page = document.getElementById('frame').contentDocument; `
	p.ask(inPage+layJob, touched[1])
	p.settle()
	p.ask(inPage + `
		page.querySelector('.fill[data-fill=density]').style.insetBlockEnd = '4rem'
		page.querySelector('[data-seek=depth]').style.inlineSize = '20px'
		page.querySelector('[data-unit=width]').style.marginInlineStart = '-2rem'
		page.querySelector('[data-field=height] .help').style.cssText = 'position: relative; top: -1.4rem'
		page.querySelector('[data-field=gap]').style.cssText = 'min-block-size: 0; block-size: 2rem'`)
	found := strings.Join(p.lines(strings.Replace(inPage+untouchable, ".slice(0, 12)", "", 1)), "\n")
	for _, wanted := range []string{"density at 0.5 lies under", "depth is 20", "lies over width", "Height” lies over “of one piece”|“of one piece” lies over “Height”", "is cut at gap"} {
		if !regexp.MustCompile(wanted).MatchString(found) {
			p.Errorf("faults were made, and %q is not among what is found:\n%s", wanted, found)
		}
	}
}

// tap puts a finger on some of the fields that are seen, one after the other.
func (p *page) tap(inPage string, size [2]int, first, count int) {
	p.Helper()
	must := func(err error) {
		p.Helper()
		if err != nil {
			p.Fatal(err)
		}
	}
	inPage += finger
	var before tap
	must(p.ExecuteTo(&before, inPage+`return aim(arguments[0])`, first))
	for n := first + tapStep; count > 0; n, count = n+tapStep, count-1 {
		var held tap
		var after struct{ Now, Next tap }
		must(p.Hold(before.X, before.Y))
		must(p.ExecuteTo(&held, inPage+`return hit(arguments[0])`, before.ID))
		must(p.Lift())
		must(p.ExecuteTo(&after, inPage+`const now = hit(arguments[0])
			page.activeElement.blur() // which closes a list
			return { now, next: aim(arguments[1]) }`, before.ID, n))
		if now := after.Now; now.ID != before.ID || now.Text != before.Text {
			p.Errorf("at %d by %d, a finger on %s with %q leads to %s with %q", size[0], size[1], before.ID, before.Text, now.ID, now.Text)
		}
		if held.movedFrom(before) {
			p.Errorf("at %d by %d, under a finger %s moved from %v to %v", size[0], size[1], before.ID, before.Place, held.Place)
		}
		before = after.Next
	}
}
