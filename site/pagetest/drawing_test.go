package pagetest

import (
	"bytes"
	"encoding/base64"
	"fmt"
	"image/png"
	"math"
	"strings"
	"testing"
)

// TestDrawing tests the picture in the answer's pane in every engine.
func TestDrawing(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{
		{"drawn as it is typed", drawnAsTyped},
		{"depth in time", depthInTime},
		{"in view", pictureInView},
		{"only in sight", drawnOnlyInSight},
		{"saved as SVG", savedAsSVG},
		{"saved as PNG", savedAsPNG},
		{"without a worker", drawnWithoutWorker},
	})
}

// lineJob is a job with a sheet and a line, so that a cut can be drawn. Half the
// sheet is left, and of the line 0.6 mm less twice half the depth: 0.5 mm.
var lineJob = map[string]string{"metal": "cartridge brass", "area": "10", "depth": "0.1", "density": "30", "sheet": "1", "line": "0.6"}

const drawing = `document.querySelector('#cut [role=img]')`

func (p *page) draws(words string) {
	p.Helper()
	p.until(`document.getElementById('cut').classList.contains('drawn') && `+drawing+`.querySelector('desc').textContent.includes(arguments[0])`, words)
}

// drawnAsTyped: the picture agrees with the answer, changes in place, and disappears
// when there is nothing to draw. Screen readers do not announce its changes.
func drawnAsTyped(t *testing.T, p *page) {
	empty := p.say(`return document.querySelector('#cut figcaption').textContent`)
	if !strings.Contains(empty, "once a depth is known") {
		t.Errorf("in place of the picture is %q", empty)
	}
	p.fill(lineJob)
	p.draws("0.100 mm")
	const firsts = `['bath', 'metal', 'resist'].map((role) => ` + drawing + `.querySelector('[data-role=' + role + ']'))`
	p.ask(`window.kept = ` + firsts)
	for _, wanted := range []string{"bath", "metal", "resist", "dimension", "scale"} {
		if n := p.ask(`return `+drawing+`.querySelectorAll('[data-role=' + arguments[0] + ']').length`, wanted); n == 0.0 {
			t.Errorf("nothing is drawn as %s", wanted)
		}
	}
	if metal := p.say(`return ` + drawing + `.dataset.metal`); metal != "brass" {
		t.Errorf("the metal is drawn as %q", metal)
	}
	p.fill(map[string]string{"depth": "0.2"})
	p.draws("0.200 mm")
	if same := p.ask(`return ` + firsts + `.every((path, i) => path === window.kept[i])`); same != true {
		t.Error("a key replaced the picture instead of changing it")
	}
	if told := p.ask(`return !!` + drawing + `.closest('[aria-live], [role=status]')`); told != false {
		t.Error("the picture is announced at every key")
	}
	p.click("#clear")
	p.until(`!document.getElementById('cut').classList.contains('drawn') && ` + drawing + `.checkVisibility() === false`)
	if off := p.ask(`return [...document.querySelectorAll('#cut button')].every((button) => button.disabled && !button.checkVisibility())`); off != true {
		t.Error("where nothing is drawn it can be saved")
	}
}

func depthInTime(t *testing.T, p *page) {
	p.fill(lineJob)
	p.draws("0.100 mm")
	cut := p.say(`return ` + drawing + `.querySelector('title').textContent`)
	p.ask(`document.querySelector('#cut [value=curve]').click()`)
	p.until(drawing+`.querySelector('title').textContent !== arguments[0] && `+drawing+`.querySelector('[data-role=line]')`, cut)
	p.ask(`document.querySelector('#cut [value=section]').click()`)
	p.until(drawing+`.querySelector('title').textContent === arguments[0]`, cut)
}

// leastText is the minimum height of a hint, in pixels.
const leastText = 14

// pictureInView: where there is room beside the sheet, sentence and picture stay
// in view while fields far down are typed into; on an upright tablet the bar does,
// and both are there once it is touched. No text in the picture is smaller than a
// hint.
func pictureInView(t *testing.T, p *page) {
	for _, size := range sizes[:2] {
		if err := p.SetWindow(size[0], size[1]); err != nil {
			t.Fatal(err)
		}
		p.fresh()
		p.fill(lineJob)
		p.answers("0.1 mm")
		if size[0] < 900 {
			p.typeIn("start", "14:05")
			p.settle()
			if seen := p.ask(`const r = document.getElementById('bar').getBoundingClientRect(); return r.top >= 0 && r.bottom <= 72.5`); seen != true {
				t.Error("on an upright tablet the bar is out of view while the last field is typed")
			}
			p.click("#bar")
		}
		p.draws("0.100 mm")
		if size[0] >= 900 {
			p.typeIn("start", "14:05")
		}
		p.settle()
		for _, part := range []string{"#sentence", "#cut .view"} {
			if seen := p.ask(`const r = document.querySelector(arguments[0]).getBoundingClientRect(); return r.top >= 0 && r.bottom <= innerHeight`, part); seen != true {
				t.Errorf("at %d by %d %s is out of view while the last field is typed", size[0], size[1], part)
			}
		}
		var least float64
		if err := p.ExecuteTo(&least, `const scale = `+drawing+`.getBoundingClientRect().width / `+drawing+`.viewBox.baseVal.width
			return scale * Math.min(...[...`+drawing+`.querySelectorAll('text')].map((text) => Number(text.getAttribute('font-size'))))`); err != nil {
			t.Fatal(err)
		}
		if math.Round(least) < leastText {
			t.Errorf("at %d by %d a text of the picture is %.1f pixels", size[0], size[1], least)
		}
	}
	if err := p.SetWindow(1024, 768); err != nil {
		t.Fatal(err)
	}
}

// drawnOnlyInSight: on a phone the picture lies under the sheet until the bar is
// touched; it is drawn once it is seen.
func drawnOnlyInSight(t *testing.T, p *page) {
	const there = `document.getElementById('frame').contentDocument`
	p.loadOnly("/frame?width=390&height=700")
	p.until(there + `?.getElementById('sentence')?.textContent && !` + there + `.querySelector('.waiting')`)
	const type_ = `for (const [name, text] of Object.entries(arguments[0])) {
		const control = ` + there + `.getElementById(name)
		control.value = text
		control.dispatchEvent(new Event('input', { bubbles: true }))
	}`
	const words = there + `.querySelector('#cut desc').textContent`
	const open = there + `.getElementById('bar').click()`
	for name := range lineJob {
		p.until(there + `.getElementById('` + name + `') !== null`)
	}
	p.ask(type_, lineJob)
	p.ask(open)
	p.until(words + `.includes('0.100 mm')`)
	p.ask(there + `.getElementById('shut').click()`)
	p.settle()
	p.ask(type_, map[string]string{"depth": "0.2"})
	p.until(there + `.getElementById('sentence').textContent.includes('0.2 mm')`)
	p.settle()
	if drawn := p.ask(`return ` + words + `.includes('0.200 mm')`); drawn != false {
		t.Error("it was drawn out of view")
	}
	p.ask(open)
	p.until(words + `.includes('0.200 mm')`)
}

// saved presses one of the save buttons, and returns the file instead of saving it:
// its name, and its bytes in base64.
func (p *page) saved(kind string) (name string, body []byte) {
	p.Helper()
	var file [2]string
	err := p.ExecuteAsync(&file, `const done = arguments[1], own = HTMLAnchorElement.prototype.click
		HTMLAnchorElement.prototype.click = function () {
			HTMLAnchorElement.prototype.click = own
			const reader = new FileReader()
			reader.onload = () => done([this.download, reader.result.split(',')[1]])
			reader.readAsDataURL(window.file)
		}
		const make = URL.createObjectURL
		URL.createObjectURL = (blob) => { window.file = blob; URL.createObjectURL = make; return make.call(URL, blob) }
		document.querySelector('[data-save=' + arguments[0] + ']').click()`, kind)
	if err != nil {
		p.Fatal(err)
	}
	body, err = base64.StdEncoding.DecodeString(file[1])
	if err != nil {
		p.Fatal(err)
	}
	return file[0], body
}

// savedAsSVG: the file needs nothing from the page, and has the colours for paper
// in either theme.
func savedAsSVG(t *testing.T, p *page) {
	p.choose("dark")
	p.fill(lineJob)
	p.draws("0.100 mm")
	name, body := p.saved("svg")
	if name != "saltbite-cut-brass-0.100mm.svg" {
		t.Errorf("the file is called %q", name)
	}
	text := string(body)
	for _, wanted := range []string{`xmlns="http://www.w3.org/2000/svg"`, `width="100mm"`, `height="50mm"`, "<title>", "<desc>", `fill="#fff"`, "rgb(195, 154, 69)", "font-family="} {
		if !strings.Contains(text, wanted) {
			t.Errorf("the file has no %s", wanted)
		}
	}
	for _, never := range []string{"data-", "class=", `" style=`, "var(", "color("} {
		if strings.Contains(text, never) {
			t.Errorf("the file has %s, which means nothing outside of the page", never)
		}
	}
	if left := p.ask(`return document.querySelectorAll('body > .on-paper svg').length`); left != 0.0 {
		t.Error("what was saved stayed on the page")
	}
}

// savedAsPNG: as many dots as 100 by 50 mm have at 300 to the inch, and the metal's
// own tone among them.
func savedAsPNG(t *testing.T, p *page) {
	p.fill(lineJob)
	p.draws("0.100 mm")
	name, body := p.saved("png")
	if name != "saltbite-cut-brass-0.100mm.png" {
		t.Errorf("the file is called %q", name)
	}
	picture, err := png.Decode(bytes.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	if size := fmt.Sprint(picture.Bounds().Size()); size != "(1181,591)" {
		t.Errorf("the picture has %s dots", size)
	}
	if !bytes.Contains(body[:64], []byte("pHYs\x00\x00\x2e\x23\x00\x00\x2e\x23\x01")) {
		t.Error("the picture does not say that it is 11811 dots in a metre")
	}
	brass := 0
	for y := range 591 {
		for x := range 1181 {
			if r, g, b, _ := picture.At(x, y).RGBA(); r>>8 == 0xc3 && g>>8 == 0x9a && b>>8 == 0x45 {
				brass++
			}
		}
	}
	if brass < 10_000 {
		t.Errorf("%d dots are brass", brass)
	}
}

// drawnWithoutWorker: also if the program runs on the page's own thread.
func drawnWithoutWorker(t *testing.T, p *page) {
	p.load("/?with=noworker")
	p.fill(lineJob)
	p.draws("0.100 mm")
}
