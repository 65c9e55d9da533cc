package pagetest

import (
	"fmt"
	"math"
	"net/url"
	"strconv"
	"strings"
	"testing"

	"saltbite/build/browser"
)

func TestEvenness(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{{"how even it will be", howEven}})
	// It takes long, and what differs between engines is in the other.
	hold(t, []string{browser.Chromium}, (*page).fresh, []check{{"at other distances", evenAtDistances}})
}

const evenButton = `[...document.querySelectorAll('.artwork .even button')].find((button) => button.textContent === 'How even will it be?')`

// evens asks how even it will be, and waits for the map.
func (p *page) evens() {
	p.Helper()
	p.ask(evenButton + `.click()`)
	p.until(`!document.querySelector('.artwork .even figure').hidden`)
	p.until(`!document.querySelector('.artwork .kept').hidden`)
}

// linked are the fields of the job's link.
func (p *page) linked() url.Values {
	p.Helper()
	p.click("#to-share")
	link := p.say(`return document.getElementById('share-link').value`)
	p.ask(`document.getElementById('share-link').closest('dialog').close()`)
	fields, err := url.ParseQuery(link[strings.Index(link, "#")+1:])
	if err != nil {
		p.Error(err)
	}
	return fields
}

// howEven: the stripes' ends and outer sides go deepest. The depth map is read under the
// finger and by keys, fills the link, and follows the distance; with the shallowest part
// to reach the depth the sentence says so. Cancel ends it; the picture takes with it what it
// filled in.
func howEven(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.fill(map[string]string{"gap": "20", "strength": "200", "depth": "0.1"})
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.ask(evenButton + `.click()`)
	p.until(`!document.querySelector('.artwork .even .busy').hidden || !document.querySelector('.artwork .even figure').hidden`)
	p.ask(`document.querySelector('.artwork .even .busy button').click()`)
	p.until(`document.querySelector('.artwork .even .busy').hidden`)
	p.evens()
	if said := p.say(`return document.querySelector('.artwork .even .told').textContent`); !strings.HasPrefix(said, "The shallowest part gets ") || strings.Count(said, " mm") != 2 {
		t.Errorf("it says %q", said)
	}
	p.ask(`const view = document.querySelector('.artwork .even .view'), { left, top, width, height } = view.getBoundingClientRect()
		const at = (x, y) => view.dispatchEvent(new PointerEvent('pointerdown', { clientX: left + x * width, clientY: top + y * height, bubbles: true }))
		const here = () => document.querySelector('.artwork .even .here').textContent
		at(0.5, 0.01)
		window.resist = here()
		at(20 / 800, 0.5)
		window.metal = here()
		view.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true }))
		view.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true }))
		view.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', bubbles: true }))
		window.moved = here()`)
	if resist, metal, moved := p.say(`return window.resist`), p.say(`return window.metal`), p.say(`return window.moved`); resist != "Resist" ||
		!strings.HasSuffix(metal, "% of the mean") || !strings.Contains(metal, " mm, ") || metal == moved {
		t.Errorf("under the finger it is %q and %q, two keys on %q", resist, metal, moved)
	}
	p.cutsAlong()
	near := p.linked()
	least, _ := strconv.ParseFloat(strings.TrimSuffix(near.Get("least"), " %"), 64)
	if !(least > 10 && least < 100) || !strings.HasSuffix(near.Get("resistance"), " ohm") || len(near.Encode()) > 500 {
		t.Errorf("the link has %v", near)
	}
	p.answers("on average. Its shallowest part gets")
	p.ask(`document.querySelector('.artwork .kept [value=least]').click()`)
	p.answers("where it is shallowest. It gets")
	p.fill(map[string]string{"gap": "40"})
	p.until(`!document.querySelector('.artwork .kept p').textContent.includes(arguments[0])`, near.Get("resistance"))
	far := p.linked()
	if near.Get("resistance") >= far.Get("resistance") || near.Get("least") <= far.Get("least") { // texts of the same length
		t.Errorf("at 20 mm it is %s and %s, at 40 mm %s and %s", near.Get("least"), near.Get("resistance"), far.Get("least"), far.Get("resistance"))
	}
	small := p.say(`return [...document.querySelectorAll('.artwork button, .artwork label')].filter((b) => b.checkVisibility()).filter((b) => b.getBoundingClientRect().height < 47.5).map((b) => b.textContent).join()`)
	if small != "" {
		t.Errorf("too small for a gloved finger: %s", small)
	}
	for _, violation := range p.violations(axe(t)) {
		t.Error(strings.TrimSpace(violation))
	}
	link := p.linked().Encode()
	said := p.sentence()
	p.click(".artwork [data-remove]")
	p.until(`document.querySelector('.artwork .shown').hidden`)
	if fields := p.linked(); fields.Get("least") != "" || fields.Get("resistance") != "" {
		t.Errorf("without the picture the link has %v", fields)
	}
	p.fresh()
	p.bring(link)
	p.answers("where it is shallowest")
	if got := p.sentence(); got != said {
		t.Errorf("with the picture it says %q, without it %q", said, got)
	}
	p.until(`document.querySelector('.artwork .kept')?.hidden === false`)
}

// cutsAlong: from a tenth of the way across to nine, at half the height, a line crosses the
// third to the eighteenth of the stripes, and with its end a twentieth further on one less.
// The cut along it has the depths that were worked out.
func (p *page) cutsAlong() {
	p.Helper()
	p.ask(`document.querySelector('.artwork .cutting button').click()`)
	const words = `document.querySelector('.artwork .cutting figure p')?.textContent`
	p.until(words + `?.includes('It crosses 16 exposed stretches. It is etched from 0.')`)
	p.ask(`const end = document.querySelector('.artwork .view .end')
		end.focus()
		end.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', shiftKey: true, bubbles: true, cancelable: true }))`)
	p.until(words + `.includes('It crosses 15 exposed stretches.')`)
	p.ask(`const end = document.querySelectorAll('.artwork .view .end')[1], { left, top, width, height } = end.parentElement.getBoundingClientRect()
		end.setPointerCapture = () => {}
		const at = (kind, x, y) => end.dispatchEvent(new PointerEvent(kind, { clientX: left + x * width, clientY: top + y * height, bubbles: true }))
		at('pointerdown', 0.91, 0.5)
		at('pointermove', 0.18, 0.04)
		at('pointerup', 0.18, 0.04)`)
	p.until(words + `.includes('It crosses one exposed stretch.')`) // from resist up into the fourth stripe
	if shapes := p.ask(`return document.querySelectorAll('.artwork .cutting [data-role=gone]').length`); shapes != 1.0 {
		p.Errorf("the cut has %v bites", shapes)
	}
	// The form keeps the line, and the map has it: from A at 150 thousandths to where B was dragged
	// by 0.73 and 0.46, to what the engine makes of half a pixel.
	var ends [4]float64
	along := p.linked().Get("along")
	fmt.Sscanf(along, "%g %g; %g %g", &ends[0], &ends[1], &ends[2], &ends[3])
	for i, want := range []float64{150, 500, 170, 40} {
		if math.Abs(ends[i]-want) > 3 {
			p.Errorf("the link has the line %q", along)
		}
	}
	p.until(`(() => {
		const line = document.querySelector('.artwork .even .view .across:not([hidden]) [data-mark=line]')
		return line && ['x1', 'y1', 'x2', 'y2'].every((end, at) => Math.abs(10 * parseFloat(line.getAttribute(end)) - arguments[at]) < 1)
	})()`, ends[0], ends[1], ends[2], ends[3])
	p.ask(`document.querySelector('.artwork .cutting button').click()`)
	p.until(`document.querySelector('.artwork .even .across').hasAttribute('hidden') && document.querySelector('.artwork .cutting figure').hidden`)
	p.click("#undo")
	p.until(`!document.querySelector('.artwork .even .across').hasAttribute('hidden') && !document.querySelector('.artwork .cutting figure').hidden`)
}

// learns: without a picture of one's own the lone line beside a field stands there as one,
// with what it fills in, and its depths; it goes as any does.
func (p *page) learns() {
	p.Helper()
	p.until(`document.querySelector('.artwork .like button:not([data-fill])') !== null`)
	p.ask(`document.querySelector('.artwork .like button:not([data-fill])').click()`)
	p.until(`!document.querySelector('.artwork .even figure')?.hidden && document.querySelector('.artwork .shown')?.hidden === false`)
	p.until(`document.querySelector('.artwork .even .strips').textContent.includes('goes deepest')`)
	p.holdsAbout("width", 40, 1e-3)
	p.click(".artwork [data-remove]")
	p.until(`document.querySelector('.artwork .shown').hidden`)
	if got := p.say(`return document.querySelector('[data-field=width] input').value`); got != "" {
		p.Errorf("without it the width is %q", got)
	}
}

// hasContours: they stand over the map where they are asked for, where more contrast is wanted, and
// on paper, which has nothing else of the part.
func (p *page) hasContours() {
	p.Helper()
	const seen = `return ['.view .contours', '.scale', '.acts'].filter((one) => getComputedStyle(document.querySelector('.artwork .even ' + one)).display !== 'none').join()`
	toggle := `[...document.querySelectorAll('.artwork .even button')].find((button) => button.textContent === 'Contour lines').click()`
	media := func(media string, features ...map[string]string) {
		if err := p.DevTools("Emulation.setEmulatedMedia", map[string]any{"media": media, "features": append([]map[string]string{}, features...)}); err != nil {
			p.Error(err)
		}
	}
	for _, c := range []struct {
		name, want string
		before     func()
	}{
		{"as it is", ".scale,.acts", func() {}},
		{"asked for", ".view .contours,.scale,.acts", func() { p.ask(toggle) }},
		{"asked for no more", ".scale,.acts", func() { p.ask(toggle) }},
		{"with more contrast", ".view .contours,.scale,.acts", func() { media("", map[string]string{"name": "prefers-contrast", "value": "more"}) }},
		{"on paper", ".view .contours,.scale", func() { media("print") }},
	} {
		if c.before(); p.say(seen) != c.want {
			p.Errorf("%s there is %q, not %q", c.name, p.say(seen), c.want)
		}
	}
	media("")
}

// evenAtDistances: nearer, each part has its own column of bath.
func evenAtDistances(t *testing.T, p *page) {
	p.learns()
	p.fill(stripedJob)
	p.fill(map[string]string{"gap": "40", "strength": "200"})
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.evens()
	p.hasContours()
	p.ask(`[...document.querySelectorAll('.artwork .even button')].find((button) => button.textContent === 'What would make it more even?').click()`)
	p.until(`!document.querySelector('.artwork .even table').hidden`)
	if rows := p.say(`return [...document.querySelectorAll('.artwork .even table:first-of-type tbody th')].map((cell) => cell.textContent).join()`); rows != "10.0 mm,20.0 mm,40.0 mm,60.0 mm,80.0 mm" {
		t.Errorf("the distances are %q", rows) // 40 mm times a quarter, a half, 1, 1.5 and 2
	}
	if rows := p.say(`return [...document.querySelectorAll('.artwork .even table:last-of-type tbody th')].map((cell) => cell.textContent).join()`); rows != "none,5.00 mm,10.0 mm,20.0 mm" {
		t.Errorf("the borders are %q", rows) // an eighth, a quarter and half of 40 mm
	}
	if said := p.say(`return document.querySelector('.artwork .even table').previousElementSibling.textContent`); !strings.HasPrefix(said, "Of these distances 10.0 mm is the most even") {
		t.Errorf("it says %q", said)
	}
}
