package pagetest

import (
	"strings"
	"testing"
	"time"

	"saltbite/build/browser"
)

var habits = []check{
	{"Enter moves on", enterMovesOn}, // first: in WebKitGTK a used mouse changes where keys lead
	{"arrows change no number", arrowsChangeNoNumber},
	{"a finger's unit lets go of the keys", fingersUnitLetsGo},
	{"room above the keyboard", roomAboveTheKeyboard},
	{"each is sought by one touch", eachIsSoughtByOneTouch},
	{"pasted sizes", pastedSizes},
}

func TestHabits(t *testing.T) {
	t.Parallel()
	holdAll(t, habits)
}

// inSight says whether the focused element is not covered.
const inSight = `(() => { const e = document.activeElement, r = e.getBoundingClientRect()
	return [r.y + 5, r.bottom - 5].every((y) => e.contains(document.elementFromPoint(r.x + 5, y))) })()`

// enterMovesOn goes down the form and up again by Enter, while a run is under way:
// the focused element is always visible.
func enterMovesOn(t *testing.T, p *page) {
	for _, size := range sizes[:2] {
		if err := p.SetWindow(size[0], size[1]); err != nil {
			t.Fatal(err)
		}
		p.fresh()
		p.fill(copperJob)
		p.answers(copperTime)
		p.until(state + ` === 'before'`)
		p.ask(`document.getElementById('run-on').click()`)
		p.until(state + ` === 'on'`)
		p.ask(`document.getElementById('metal').focus()`)
		fields := p.lines(`return [...document.querySelectorAll('.form .row input')].filter((i) => !i.closest('details:not([open])')).map((i) => i.id)`)
		for i, keys := range []string{browser.Enter, browser.Shift + browser.Enter} {
			for n := range fields {
				field := fields[n]
				if i == 1 {
					field = fields[len(fields)-1-n]
				}
				if at := p.say(`return document.activeElement.id`); at != field {
					t.Fatalf("at %d by %d Enter leads to %s, not to %s", size[0], size[1], at, field)
				}
				if err := p.Wait(10*time.Second, inSight); err != nil {
					t.Errorf("at %d by %d %s has the focus and is covered", size[0], size[1], field)
				}
				if n+1 == len(fields) {
					break
				}
				if err := p.Press(keys); err != nil {
					t.Fatal(err)
				}
			}
		}
	}
	if err := p.SetWindow(1024, 768); err != nil {
		t.Fatal(err)
	}
}

func arrowsChangeNoNumber(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	for field, text := range copperJob {
		p.typeIn(field, browser.ArrowUp+browser.ArrowUp+browser.ArrowDown+browser.ArrowLeft)
		p.ask(`document.activeElement.dispatchEvent(new WheelEvent('wheel', { deltaY: 100, bubbles: true, cancelable: true }))`)
		if got := p.value(field); got != text {
			t.Errorf("arrow keys in %s made %q of %q", field, got, text)
		}
	}
	p.answers(copperTime)
}

// fingersUnitLetsGo sends the events of a choice from a system menu, which no driver
// can open.
func fingersUnitLetsGo(t *testing.T, p *page) {
	choose := `const s = document.querySelector('[data-unit=depth]')
		s.focus()
		s.dispatchEvent(arguments[0] === 'finger' ? new PointerEvent('pointerdown', { bubbles: true }) : new KeyboardEvent('keydown', { key: 'ArrowDown', bubbles: true }))
		s.value = 'in'
		s.dispatchEvent(new Event('change', { bubbles: true }))
		return String(document.activeElement === s)`
	if focused := p.say(choose, "finger"); focused != "false" {
		t.Error("after a finger's choice the next arrow key would choose another unit")
	}
	if focused := p.say(choose, "key"); focused != "true" {
		t.Error("a unit that was chosen by keys lost the focus")
	}
}

// roomAboveTheKeyboard: in a window as low as a keyboard leaves it, the list of names
// is in sight; and a suggestion that a finger takes calls up no keyboard again, while
// keys go on from its field.
func roomAboveTheKeyboard(t *testing.T, p *page) {
	if err := p.SetWindow(1024, 400); err != nil {
		t.Fatal(err)
	}
	p.typeIn("metal", "copper")
	p.until(`document.querySelector('.listing .list')?.getBoundingClientRect().height > 100`)
	if err := p.Wait(10*time.Second, `document.querySelector('.listing .list').getBoundingClientRect().bottom <= innerHeight`); err != nil {
		t.Error("the list of names reaches below the window")
	}
	p.closeList()
	if err := p.SetWindow(1024, 768); err != nil {
		t.Fatal(err)
	}
	take := `const button = document.querySelector('.fill[data-fill=density]')
		document.activeElement.blur()
		button.dispatchEvent(arguments[0] === 'touch' ? new PointerEvent('pointerdown', { bubbles: true, pointerType: 'touch' }) : new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }))
		button.click()
		return document.activeElement.id`
	for by, focused := range map[string]string{"touch": "", "key": "density"} {
		p.fill(map[string]string{"metal": "copper", "area": "10", "density": ""})
		p.until(`document.querySelector('.fill[data-fill=density]').dataset.text === '30.0'`)
		if got := p.say(take, by); got != focused {
			t.Errorf("a suggestion taken by %s leaves the focus in %q", by, got)
		}
	}
}

// eachIsSoughtByOneTouch seeks each in turn: the others keep the values found before,
// so the job stays the same.
func eachIsSoughtByOneTouch(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	for _, wanted := range []struct{ field, text string }{
		{"depth", "0.0999 mm"}, {"current", "0.300 A"}, {"area", "10.0 cm²"}, {"time", copperTime},
	} {
		p.click("[data-seek=" + wanted.field + "]")
		p.until(`document.getElementById(arguments[0]).value === '' && document.getElementById(arguments[0]).closest('.row').matches('.found')`, wanted.field)
		got := p.say(`return document.getElementById(arguments[0]).placeholder`, wanted.field)
		if number, _, _ := strings.Cut(got, " "); !strings.HasPrefix(wanted.text, number[:min(3, len(number))]) {
			t.Errorf("%s is found as %s, not as %s", wanted.field, got, wanted.text)
		}
	}
}

// pastedSizes are written as in other pages and messages: with a comma, without a
// space, with typographic spaces. Each replaces the content of the field and is read. 18 gauge is 1.024 mm (Brown and Sharpe), of which 0.1 mm goes.
func pastedSizes(t *testing.T, p *page) {
	for _, c := range []struct{ field, text, reads string }{
		{"depth", "0,2 mm", "0.200 mm"},
		{"depth", " 0.2\u00a0mm ", "0.200 mm"},
		{"depth", "200\u202fµm", "0.200 mm"},
		{"depth", "0.008in", "0.203 mm"},
		{"sheet", "18ga", "0.924 mm"},
		{"sheet", "18 ga.", "0.924 mm"},
	} {
		p.fill(copperJob)
		p.fill(map[string]string{c.field: "7"})
		p.unfold(c.field)
		p.ask(`document.querySelector('[data-unit=depth]').value = 'mm'
			document.querySelector('[data-unit=' + arguments[0] + ']').value = 'in'`, c.field) // the text says its own
		p.paste(c.field, c.text)
		if got := p.value(c.field); got != c.text {
			t.Errorf("%q was pasted into %s, and it holds %q", c.text, c.field, got)
		}
		if err := p.Wait(patience, `document.getElementById('answer').textContent.includes(arguments[0])`, c.reads); err != nil {
			t.Errorf("%q pasted into %s is not read as %s: %s", c.text, c.field, c.reads,
				p.say(`return document.getElementById(arguments[0] + '-says').textContent + ' ' + document.getElementById('answer').textContent`, c.field))
		}
	}
}

// paste replaces the content of a field, as the system's clipboard does.
func (p *page) paste(field, text string) {
	p.Helper()
	p.ask(`const control = document.getElementById(arguments[0])
		control.focus()
		control.select()
		document.execCommand('insertText', false, arguments[1])`, field, text)
}
