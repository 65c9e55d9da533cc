package pagetest

import (
	"fmt"
	"strings"
	"testing"

	"saltbite/build/browser"
)

// TestClass tests the page for a class.
func TestClass(t *testing.T) {
	t.Parallel()
	hold(t, browser.Names, (*page).freshClass, []check{
		{"by keyboard alone", classByKeyboard}, // first: in WebKitGTK a used mouse changes where Tab leads
		{"twelve students on a weak supply", twelveStudents},
		{"without violation", classWithoutViolation},
		{"told while hidden", classTellsHidden},
	})
	hold(t, []string{browser.Chromium, browser.Firefox}, (*page).freshClass, []check{{"printed", classPrinted}})
}

func (p *page) freshClass() {
	p.Helper()
	p.server.clearsNext()
	p.loadOnly("/class.html")
	p.until(begun)
}

// begun is true once the page for a class can be typed into.
const begun = `'answered' in document.documentElement.dataset && document.querySelector('#pieces input') !== null`

// planned waits for a plan whose sentence holds some words.
func (p *page) planned(words string) {
	p.Helper()
	p.until(`document.getElementById('sentence').textContent.includes(arguments[0])`, words)
}

// pastes puts a text into a control as a paste does.
func (p *page) pastes(selector, text string) {
	p.Helper()
	p.ask(`const data = new DataTransfer(), event = new Event('paste', { bubbles: true, cancelable: true })
		data.setData('text/plain', arguments[1])
		Object.defineProperty(event, 'clipboardData', { value: data })
		document.querySelector(arguments[0]).dispatchEvent(event)`, selector, text)
}

// steps are what the page says is to be done.
func (p *page) steps() string {
	p.Helper()
	return p.say(`return [...document.querySelectorAll('#steps li')].map((li) => li.querySelector('b').textContent + ' ' + li.querySelector('.text').textContent).join('; ')`)
}

// students are twelve rows as a spreadsheet gives them: copper, 10 cm2 each, 0.1 mm.
// At 30 mA/cm2 (common practice, no source) each takes 0.3 A and, by Faraday's law,
// about 150 min (see copperTime): six hang at once on 2 A, so that two rounds take 300
// and a changeover of 10 (common practice, no source) 310 min; two supplies 150.
func students() string {
	lines := []string{"Name\tMetal\tArea\tDepth\tPieces"}
	for i := range 12 {
		lines = append(lines, fmt.Sprintf("Student %d\tcopper\t10,0 cm2\t0,1\t1", i+1))
	}
	return strings.Join(lines, "\r\n")
}

var weakSupply = map[string]string{"amps": "2", "densityLimit": "30", "session": "180", "start": "9:00"}

func twelveStudents(t *testing.T, p *page) {
	p.fill(weakSupply)
	p.pastes("[data-cell=name]", students())
	p.planned("Two loads in two rounds take 5 h 1")
	p.until(`document.getElementById('instead').textContent.includes('With 2 supplies all of it takes 2 h 3')
		&& document.getElementById('instead').textContent.includes('6 of 12 pieces are done in time')`)
	steps := p.steps()
	if !strings.HasPrefix(steps, "9:00 Hang Student ") || !strings.Contains(steps, "Switch on at 1.80 A; 11:3") || strings.Count(steps, "; ") != 3 {
		t.Errorf("the steps are %s", steps)
	}
	var bars []float64
	p.until(`document.querySelectorAll('#loads li').length === 12`)
	if err := p.ExecuteTo(&bars, `return [...document.querySelectorAll('#loads li')].map((li) => {
		const track = li.querySelector('.track').getBoundingClientRect(), bar = getComputedStyle(li.querySelector('.track'), '::before')
		return [parseFloat(bar.left) / track.width, (parseFloat(bar.left) + parseFloat(bar.width)) / track.width] }).flat()`); err != nil {
		t.Fatal(err)
	}
	// Of 310 min the first six hang from 0 to 150, the others from 160: 0, 0.484, 0.516, 1.
	for i, want := range map[int]float64{0: 0, 1: 0.484, 22: 0.516, 23: 1} {
		if got := bars[i]; got < want-0.02 || got > want+0.02 {
			t.Errorf("bar %d ends at %.3f of the timetable, want %.3f", i, got, want)
		}
	}
	// What can't be read stands under its row, and the others are planned without it.
	p.ask(`const cell = document.querySelectorAll('[data-cell=depth]')[2]; cell.value = 'deep'; cell.dispatchEvent(new Event('input', { bubbles: true }))`)
	p.until(`document.getElementById('left-out').textContent === 'Not in the plan yet: Student 3.' && document.querySelectorAll('#loads li').length === 11`)
	if said := p.say(`return [...document.querySelectorAll('#pieces li')].map((li) => li.querySelector('.wrong').textContent).join('|')`); !strings.HasPrefix(said, "||“deep”") || strings.Count(said, "deep") != 1 {
		t.Errorf("under the rows stands %q", said)
	}
	// Kept over a reload, and in a link.
	link := p.say(`document.getElementById('link').open = true; return new Promise((done) => setTimeout(() => done(document.getElementById('address').value), 100))`)
	p.ask(`dispatchEvent(new Event('pagehide'))`)
	p.loadOnly("/class.html")
	p.until(`document.querySelectorAll('[data-cell=depth]')[2]?.value === 'deep' && document.getElementById('amps').value === '2'`)
	p.until(`document.querySelectorAll('#loads li').length === 11`)
	p.click("#clear")
	p.until(`document.querySelectorAll('#pieces li').length === 1`)
	p.ask(`location.hash = arguments[0]`, link[strings.Index(link, "#"):])
	p.until(`document.querySelectorAll('#pieces li').length === 13 && document.querySelectorAll('#loads li').length === 11`)
	// The clock counts to the next step, over a reload too, and a late load moves what follows.
	p.click("#begin")
	p.until(`document.getElementById('class-run').dataset.state === 'runs' && document.getElementById('class').disabled && document.getElementById('class-next').textContent.includes('Lift')`)
	p.loadOnly("/class.html")
	p.until(`document.getElementById('class-left').textContent.startsWith('in 2 h ')`)
	before := p.steps()
	p.click("#steps button:not([hidden])")
	if after := p.steps(); after == before || !strings.Contains(after, "Hang") {
		t.Errorf("after the second load was hung early the steps are %s, as before", after)
	}
	p.click("#class-stop")
	p.click("#class-stop-it")
	p.until(`document.getElementById('class-run').dataset.state === 'before' && !document.getElementById('class').disabled`)
	p.takesSavedJob()
	p.opensLockedLink()
}

// classTellsHidden moves the clock past the first lift while the page is hidden.
func classTellsHidden(t *testing.T, p *page) {
	p.loadOnly("/class.html?with=clock,sounds,lock,hidden")
	p.until(begun)
	p.fill(weakSupply)
	p.pastes("[data-cell=name]", students())
	p.planned("Two loads")
	p.click("#begin")
	p.click("#class-tell")
	p.until(`document.getElementById('class-tell').getAttribute('aria-checked') === 'true'`)
	p.ask(`Object.assign(document.documentElement.dataset, { hidden: 'yes', pass: 155 * 60000 }); dispatchEvent(new Event('pass'))`)
	p.until(`document.documentElement.dataset.notified?.startsWith('Now: Lift Student 1')`)
}

// opensLockedLink makes a link that locks the supply, the metal and the open share,
// which stands in the last row only, and opens it.
func (p *page) opensLockedLink() {
	p.Helper()
	for _, name := range []string{"amps", "metal", "open"} {
		p.ask(`document.querySelector('#locks [value=' + arguments[0] + ']').click()`, name)
	}
	link := p.say(`return document.getElementById('address').value`)
	if !strings.Contains(link, "lock%3Damps") {
		p.Errorf("the link is %s", link)
	}
	p.ask(`location.hash = arguments[0]`, link[strings.Index(link, "#"):])
	p.until(`!document.getElementById('locked').hidden && document.getElementById('amps').readOnly`)
	p.until(`[...document.querySelectorAll('[data-cell=metal]')].every((cell) => cell.readOnly) && !document.querySelector('[data-cell=depth]').readOnly`)
	if free := p.ask(`return document.getElementById('session').readOnly`); free != false {
		p.Errorf("the session, which is not locked, can't be changed")
	}
	// Where nothing stands, and nothing above, the cell is free, and stays so once it is filled.
	const lockedShares = `return [...document.querySelectorAll('[data-cell=open]')].map((cell) => cell.value + (cell.readOnly ? ' locked' : '')).join()`
	free, filled := strings.Repeat(",", 12)+"40 % locked, locked", "50,60"+strings.Repeat(",", 11)+"40 % locked, locked"
	if shares := p.say(lockedShares); shares != free {
		p.Errorf("the shares are %s, want %s", shares, free)
	}
	p.pastes("[data-cell=open]", "50\n60")
	if shares := p.say(lockedShares); shares != filled {
		p.Errorf("after a paste the shares are %s, want %s", shares, filled)
	}
	// It stays locked over a reload, and Clear leaves what is locked.
	p.ask(`dispatchEvent(new Event('pagehide'))`)
	p.loadOnly("/class.html")
	p.until(`document.getElementById('amps').readOnly`)
	if shares := p.say(lockedShares); shares != filled {
		p.Errorf("after a reload the shares are %s, want %s", shares, filled)
	}
	p.click("#clear")
	p.until(`document.querySelectorAll('#pieces li').length === 2 && document.getElementById('session').value === ''`)
	if left := p.say(`return document.getElementById('amps').value + ' ' + document.querySelector('[data-cell=metal]').value + document.querySelector('[data-cell=depth]').value + ' ' + document.querySelector('[data-cell=open]').value`); left != "2 copper 40 %" {
		p.Errorf("after Clear stands %q", left)
	}
	p.pastes("[data-cell=name]", "Eve\tbrass\t12 cm2\t\t0,1\t1")
	p.until(`document.querySelector('[data-cell=name]').value === 'Eve'`)
	if metal := p.say(`return document.querySelector('[data-cell=metal]').value`); metal != "copper" {
		p.Errorf("what is pasted makes the locked metal %q", metal)
	}
}

// takesSavedJob adds a saved job to the rows; what has no cell there goes with it.
func (p *page) takesSavedJob() {
	p.Helper()
	p.click("#from-kept") // which makes the shelf
	p.until(`document.getElementById('kept-list').textContent.includes('No job')`)
	p.click("#kept-jobs [data-close]")
	var stored bool
	if err := p.ExecuteAsync(&stored, `const [done] = arguments, opening = indexedDB.open('saltbite')
		opening.onsuccess = () => {
			const put = opening.result.transaction('jobs', 'readwrite')
			put.objectStore('jobs').put({ name: 'Lid', fields: 'metal=brass&width=50+mm&height=20+mm&open=40+%25&depth=0.1+mm&edge=300+mm&current=9+A', sentence: '', saved: 1 })
			put.oncomplete = () => { opening.result.close(); done(true) }
		}`); err != nil || !stored {
		p.Fatalf("%v: no job is stored", err)
	}
	p.click("#from-kept")
	p.until(`document.querySelector('#kept-list input') !== null`)
	p.click("#kept-list label")
	p.click("#take-kept")
	p.until(`[...document.querySelectorAll('#loads .name')].some((name) => name.textContent === 'Lid')`)
	if size := p.say(`return document.querySelectorAll('[data-cell=size]')[12].value`); size != "50 x 20 mm" {
		p.Errorf("the saved job's size is %q", size)
	}
}

// classByKeyboard types a class of three with keys alone.
func classByKeyboard(t *testing.T, p *page) {
	p.ask(`document.getElementById('amps').focus()`)
	for _, keys := range []string{"1", browser.Enter} {
		if err := p.Press(keys); err != nil {
			t.Fatal(err)
		}
	}
	if at := p.say(`return document.activeElement.id`); at != "volts" {
		t.Errorf("Enter leads from the supply's current to %q", at)
	}
	p.ask(`document.querySelector('[data-cell=name]').focus()`)
	for _, keys := range []string{"Ann", browser.Tab, "copper", browser.Tab, "50x20", browser.Tab, "40", browser.Tab, "0.05", browser.Enter, "Ben", browser.Enter, "Cleo"} {
		if err := p.Press(keys); err != nil {
			t.Fatal(err)
		}
	}
	p.planned("One load takes")
	p.until(`document.querySelectorAll('#loads li').length === 3`)
	if names := p.say(`return [...document.querySelectorAll('#loads .name')].map((n) => n.textContent).join(' ')`); names != "Ann Ben Cleo" {
		t.Errorf("the plan has %s", names)
	}
}

func classWithoutViolation(t *testing.T, p *page) {
	source := axe(t)
	p.fill(weakSupply)
	p.pastes("[data-cell=name]", students())
	p.ask(`const cell = document.querySelectorAll('[data-cell=depth]')[2]; cell.value = 'deep'; cell.dispatchEvent(new Event('input', { bubbles: true }))`)
	p.until(`document.querySelectorAll('#loads li').length === 11`)
	p.ask(`document.documentElement.style.inlineSize = '390px'`) // widths are queried on it, and one engine has no window as narrow
	for _, state := range []string{"planned", "under way"} {
		if state == "under way" {
			p.click("#begin")
			p.until(`document.getElementById('class-run').dataset.state === 'runs'`)
		}
		for _, violation := range p.violations(source) {
			t.Errorf("%s: %s", state, violation)
		}
		if wrong := p.say(classLayout); wrong != "" {
			t.Errorf("%s: %s", state, wrong)
		}
	}
}

// classLayout says what is wider than the page, lies over another control, or is too
// small for a gloved finger.
const classLayout = `const edge = document.documentElement.getBoundingClientRect().right
	const wide = [...document.querySelectorAll('body *')].filter((e) => !e.matches('.notice') && e.getBoundingClientRect().right > edge + 1).map((e) => e.localName + '.' + e.className + '#' + e.id + ' reaches over the edge')
	const run = document.getElementById('class-run')
	const all = [...document.querySelectorAll('button, input, select, summary, textarea, a:not(.skip)')].filter((e) => e.checkVisibility() && !run.contains(e)).map((e) => [e, e.getBoundingClientRect()])
	const name = (e) => e.id || e.dataset.cell || e.className || e.localName
	const small = all.filter(([, r]) => r.height < 47.5 || r.width < 44).map(([e, r]) => name(e) + ' is ' + r.width.toFixed(0) + 'x' + r.height.toFixed(0))
	const over = all.flatMap(([e, r], i) => all.slice(i + 1).filter(([f, s]) => !e.contains(f) && !f.contains(e) &&
		r.left < s.right - 1 && s.left < r.right - 1 && r.top < s.bottom - 1 && s.top < r.bottom - 1).map(([f]) => name(e) + ' and ' + name(f) + ' overlap'))
	return [...wide, ...small, ...over].slice(0, 8).join('; ')`

func classPrinted(t *testing.T, p *page) {
	p.fill(weakSupply)
	p.pastes("[data-cell=name]", students())
	p.planned("Two loads")
	p.until(`document.querySelectorAll('.student').length === 12`)
	document, err := p.Print()
	if err != nil {
		t.Fatal(err)
	}
	words := strings.Join(strings.Fields(textOf(t, document)), " ")
	for _, wanted := range []string{"Two loads in two rounds take", "Load 2", "Student 12", "Weight before", "goggles"} {
		if !strings.Contains(words, wanted) {
			t.Errorf("%q is not printed: %s", wanted, words)
		}
	}
	if strings.Contains(words, "Add saved jobs") || strings.Count(words, "Weight before") != 12 {
		t.Errorf("on the paper stands %s", words)
	}
}

// TestClassText reads sizes and what a spreadsheet puts on the clipboard. The examples
// are our own; a cell with a line break stands in quotation marks (RFC 4180, which
// spreadsheets keep to with tabs as well: from memory).
func TestClassText(t *testing.T) {
	t.Parallel()
	var said []string
	inNode(t, `import { sizeFields, sizeText } from './page/class/size.js'
		import { pastedRows } from './page/class/spreadsheet.js'
		const flat = (o) => Object.entries(o).filter(([, v]) => v).map((pair) => pair.join('=')).join(' ')
		const sizes = ['60 x 40', '60x40 mm', '2 × 3 in', '1 1/2 in x 40 mm', '6,5*4 cm', '12 cm2', '30 mm round', 'ø 30', '', '60 x'].map((t) => flat(sizeFields(t)) + ' | ' + sizeText(sizeFields(t)))
		const sheets = ['Ann\tcopper\t60 x 40\t40\t0,2\t2', 'Ann\tcopper\t60\t40\t40 %\t0,2\t2', 'Depth (mm)\tStudent\tAlloy\tArea cm2\r\n0,1\tBen\tbrass\t12\r\n\r\n', '"Ann ""A""\nB"\tcopper']
			.map((t) => pastedRows(t).map(flat).join('; '))
		console.log(JSON.stringify([...sizes, ...sheets]))`, &said)
	want := []string{
		"width=60 height=40 | 60 x 40", "width=60 mm height=40 mm | 60 x 40 mm", "width=2 in height=3 in | 2 x 3 in", "width=1 1/2 in height=40 mm | 1 1/2 in x 40 mm",
		"width=6,5 cm height=4 cm | 6,5 x 4 cm", "area=12 cm2 | 12 cm2", "diameter=30 mm | 30 mm round", "diameter=30 | 30 round", " | ", "width=60 | 60 x ",
		"name=Ann metal=copper size=60 x 40 open=40 depth=0,2 pieces=2", "name=Ann metal=copper open=40 % depth=0,2 pieces=2 size=60 x 40",
		"depth=0,1 name=Ben metal=brass size=12", `name=Ann "A" B metal=copper`,
	}
	for i := range want {
		if i >= len(said) || said[i] != want[i] {
			t.Errorf("%d is %q, want %q", i, said[min(i, len(said)-1)], want[i])
		}
	}
}
