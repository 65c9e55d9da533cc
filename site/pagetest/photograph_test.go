package pagetest

import (
	"bytes"
	"fmt"
	"image"
	"image/jpeg"
	"math"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"
)

func TestPhotograph(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{
		{"turned flat between its corners", photographTurnedFlat},
		{"looked at closely, then scaled by a ruler", lookedAtClosely},
		{"kept with a job", pictureKept},
		{"larger than is read", largePhotograph},
	})
}

// tilted takes a place on a sheet, both coordinates from 0 to 1, to a photograph of 1400
// by 1000 pixels: a projective map, its numbers chosen so that the sheet is seen from the side.
func tilted(u, v float64) (x, y float64) {
	w := 1 + 0.15*u + 0.25*v
	return (120 + 1290*u + 150*v) / w, (90 + 150*u + 1020*v) / w
}

// The photograph shows a sheet of 80 by 60 mm, dark with the resist, with four windows of
// bright metal, each a fifth of its width and three fifths of its height: 4 x 1/5 x 3/5 =
// 48 % of it is exposed. Its ground is as bright as the metal.
const windowsOpen = 48.0

func tiltedSheet(t *testing.T) []byte {
	t.Helper()
	var shapes strings.Builder
	quad := func(left, top, right, bottom float64, shade string) {
		shapes.WriteString(`<polygon fill="` + shade + `" points="`)
		for _, c := range [4][2]float64{{left, top}, {right, top}, {right, bottom}, {left, bottom}} {
			x, y := tilted(c[0], c[1])
			fmt.Fprintf(&shapes, "%.3f,%.3f ", x, y)
		}
		shapes.WriteString(`"/>`)
	}
	quad(0, 0, 1, 1, "#3a3632")
	for n := range 4 {
		left := 0.04 + 0.24*float64(n)
		quad(left, 0.2, left+0.2, 0.8, "#d8cba8")
	}
	return rendered(t, `<svg xmlns="http://www.w3.org/2000/svg" width="1400" height="1000"><rect width="100%" height="100%" fill="#d8cba8"/>`+shapes.String()+`</svg>`)
}

// rendered is an SVG as librsvg draws it.
func rendered(t *testing.T, svg string) []byte {
	t.Helper()
	draw, err := exec.LookPath("rsvg-convert")
	if err != nil {
		if os.Getenv("SALTBITE_SETUP") == "1" {
			t.Fatal("rsvg-convert is missing: install the package librsvg2-bin")
		}
		t.Skip("rsvg-convert is missing: install the package librsvg2-bin to draw pictures with it")
	}
	command := exec.Command(draw)
	command.Stdin = strings.NewReader(svg)
	var complaint bytes.Buffer
	command.Stderr = &complaint
	drawn, err := command.Output()
	if err != nil {
		t.Fatal(err, complaint.String())
	}
	return drawn
}

// exposed is the share that the part Artwork shows.
func (p *page) exposed() float64 {
	p.Helper()
	var share float64
	fmt.Sscanf(p.say(`return document.querySelector('.artwork [data-answer=open] dd').textContent`), "%f", &share)
	return share
}

// moveCorner moves the handle of a corner there by keys.
func (p *page) moveCorner(at int, x, y float64) {
	p.Helper()
	p.ask(`const [at, x, y] = arguments
		const handle = document.querySelectorAll('.artwork .handle')[at]
		handle.focus()
		const canvas = document.querySelector('.artwork .sheet > canvas')
		const now = [parseFloat(handle.style.insetInlineStart) / 100 * canvas.width, parseFloat(handle.style.insetBlockStart) / 100 * canvas.height]
		const press = (key, shiftKey) => handle.dispatchEvent(new KeyboardEvent('keydown', { key, shiftKey, bubbles: true, cancelable: true }))
		for (const [axis, keys] of [['ArrowLeft', 'ArrowRight'], ['ArrowUp', 'ArrowDown']].entries()) {
			let by = Math.round([x, y][axis] - now[axis])
			const key = keys[by > 0 ? 1 : 0]
			for (by = Math.abs(by); by > 0; by -= by >= 10 ? 10 : 1) press(key, by >= 10)
		}`, at, x, y)
}

func photographTurnedFlat(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "brass", "width": "80", "depth": "0.1", "density": "30"})
	p.brings("taken", "sheet.png", "image/png", tiltedSheet(t))
	p.measures("exposed")
	p.until(`document.querySelectorAll('.artwork .handle.corners:not([hidden])').length === 4 && !document.querySelector('.artwork .photograph').hidden`)
	for at, c := range [4][2]float64{{0, 0}, {1, 0}, {1, 1}, {0, 1}} {
		x, y := tilted(c[0], c[1])
		p.moveCorner(at, x, y)
	}
	if hidden := p.ask(`return document.querySelector('.artwork .glass').hidden`); hidden != false {
		t.Error("no magnifier shows what a corner lies on")
	}
	p.until(`Math.abs(parseFloat(document.querySelector('.artwork [data-answer=open] dd').textContent) - arguments[0]) < 0.6 && document.querySelector('.artwork .busy').hidden`, windowsOpen)
	// Corners are whole pixels, and the share holds within 1 % of itself.
	if got := p.exposed(); math.Abs(got/windowsOpen-1) > 0.01 {
		t.Errorf("%g %% is exposed, drawn are %g %%", got, windowsOpen)
	}
	p.holdsAbout("open", windowsOpen, 0.01)
	if islands := p.say(`return document.querySelector('.artwork [data-answer=islands] dd').textContent`); islands != "4" {
		t.Errorf("there are %s islands, and 4 were drawn", islands)
	}
	// The aspect is found from the perspective, which was not that of a camera here; typed, it is what is typed.
	p.fill(map[string]string{"height": "60"})
	p.measures("80.0 mm by 60.0 mm")
	p.answers("Leave it")

	// Otsu's threshold parts the two greys. Above the brighter one nothing is exposed.
	found := p.say(`return document.querySelector('.artwork output').textContent`)
	p.ask(`const slider = document.querySelector('.artwork [type=range]')
		slider.value = '99'
		slider.dispatchEvent(new Event('input', { bubbles: true }))
		slider.dispatchEvent(new Event('change', { bubbles: true }))`)
	p.until(`document.querySelector('.artwork output').textContent.startsWith('99') && document.querySelector('.artwork .busy').hidden && !document.querySelector('.artwork .darkness button').disabled`)
	p.click(".artwork .darkness button")
	p.until(`document.querySelector('.artwork output').textContent === arguments[0] && parseFloat(document.querySelector('.artwork [data-answer=open] dd').textContent) > 47`, found)

	p.settle()
	for _, violation := range p.violations(axe(t)) {
		t.Error(strings.TrimSpace(violation))
	}
	small := p.say(`return [...document.querySelectorAll('.artwork :is(button, label)')].filter((b) => b.checkVisibility()).filter((b) => b.getBoundingClientRect().height < 47.5).map((b) => b.textContent || b.ariaLabel).join()`)
	if small != "" {
		t.Errorf("too small for a gloved finger: %s", small)
	}

	// As a drawing it is read as a whole again, and a link has no corners then.
	p.click(".artwork .kind [value='']")
	p.until(`document.querySelector('.artwork .photograph').hidden && document.querySelector('.artwork .asks').textContent !== ''`) // 60 mm does not fit the whole picture
}

// lookedAtClosely zooms by keys, by a wheel with the control key and by two fingers, and
// reads what lies under the pointer.
func lookedAtClosely(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	wide := func() float64 {
		return p.ask(`return document.querySelector('.artwork .view canvas').getBoundingClientRect().width`).(float64)
	}
	before := wide()
	bottom := `Math.round(document.querySelector('.artwork .look').getBoundingClientRect().top - document.querySelector('.artwork figure').getBoundingClientRect().top)`
	at := p.ask(`return ` + bottom)
	p.ask(`document.querySelector('.artwork .lens').dispatchEvent(new KeyboardEvent('keydown', { key: '+', bubbles: true, cancelable: true }))`)
	if got := wide(); math.Abs(got/before-1.5) > 0.01 {
		t.Errorf("+ makes it %g times as wide", got/before)
	}
	if now := p.ask(`return ` + bottom); now != at {
		t.Errorf("zooming moves what stands below from %v to %v", at, now)
	}
	p.ask(`const lens = document.querySelector('.artwork .lens'), box = lens.getBoundingClientRect()
		const touch = (type, apart) => lens.dispatchEvent(Object.assign(new Event(type, { bubbles: true, cancelable: true }),
			{ touches: [-1, 1].map((side) => ({ clientX: box.left + box.width / 2 + side * apart / 2, clientY: box.top + box.height / 2 })) }))
		touch('touchstart', 100)
		touch('touchmove', 200)`)
	if got := wide(); math.Abs(got/before-3) > 0.02 {
		t.Errorf("two fingers twice as far apart make it %g times as wide, not 3", got/before)
	}
	p.ask(`document.querySelector('.artwork .lens').dispatchEvent(new KeyboardEvent('keydown', { key: '0', bubbles: true, cancelable: true }))`)
	if got := wide(); math.Abs(got/before-1) > 0.01 {
		t.Errorf("0 leaves it %g times as wide", got/before)
	}
	// At 20 mm from the left, 200 of 800 pixels, a stripe ends at 195 and the next begins at 205.
	says := func(u, v float64) string {
		return p.say(`const [u, v] = arguments, view = document.querySelector('.artwork .view'), box = view.querySelector('canvas').getBoundingClientRect()
			view.dispatchEvent(new PointerEvent('pointermove', { clientX: box.left + u * box.width, clientY: box.top + v * box.height, bubbles: true }))
			return document.querySelector('.artwork .under').textContent`, u, v)
	}
	var words []string
	for n := range 20 {
		words = append(words, says(0.5, (float64(n)+0.5)/20))
	}
	all := strings.Join(words, " ")
	if !strings.Contains(all, "Resist.") && !strings.Contains(all, "Line of 1.00 mm") {
		t.Errorf("between two stripes it says %q", all)
	}
	if got := says((5+15)/800.0, 0.5); got != "Exposed metal." && !strings.HasPrefix(got, "Gap of 3.00 mm") {
		t.Errorf("on a stripe it says %q", got)
	}
	if got := says(0.5, 0.01); got != "Resist." {
		t.Errorf("above the stripes it says %q", got)
	}
	scaledByRuler(t, p)
}

// drag drags a handle to a place in the picture by a pointer, and says where it is then,
// as shares of the picture.
func (p *page) drag(handle string, u, v float64) (x, y float64) {
	p.Helper()
	var at struct{ X, Y, ToX, ToY int }
	must := func(err error) {
		if err != nil {
			p.Fatal(err)
		}
	}
	must(p.ExecuteTo(&at, `const [handle, u, v] = arguments, canvas = document.querySelector('.artwork .sheet > canvas')
		canvas.scrollIntoView({ block: 'center', behavior: 'instant' })
		const box = canvas.getBoundingClientRect(), from = document.querySelector(handle).getBoundingClientRect()
		return { X: Math.round(from.x + from.width / 2), Y: Math.round(from.y + from.height / 2), ToX: Math.round(box.x + u * box.width), ToY: Math.round(box.y + v * box.height) }`, handle, u, v))
	must(p.Drag(at.X, at.Y, at.ToX, at.ToY))
	if hidden := p.ask(`return document.querySelector('.artwork .glass').hidden`); hidden != false {
		p.Errorf("no magnifier shows what the finger on %s hides", handle)
	}
	must(p.Lift())
	p.until(`document.querySelector('.artwork .glass').hidden`)
	fmt.Sscanf(p.say(`const { style } = document.querySelector(arguments[0])
		return parseFloat(style.insetInlineStart) + ' ' + parseFloat(style.insetBlockStart)`, handle), "%g %g", &x, &y)
	if math.Abs(x/100-u) > 0.005 || math.Abs(y/100-v) > 0.005 {
		p.Errorf("%s was dragged to %g and %g of the picture, and stands at %g and %g %%", handle, u, v, x, y)
	}
	return x / 100, y / 100
}

// movesNothing: while a finger holds a handle the picture stays, whatever is read meanwhile
// and would be told above it.
func (p *page) movesNothing(change func()) {
	p.Helper()
	const where = `return Math.round(document.querySelector('.artwork .shown .view').getBoundingClientRect().top + scrollY)`
	tell := func(kind string) {
		p.ask(`const handle = document.querySelector('.artwork .handle')
			handle.setPointerCapture = () => {}
			handle.dispatchEvent(new PointerEvent(arguments[0], { bubbles: true }))
			delete handle.setPointerCapture`, kind)
	}
	asked := func() string { return p.say(`return document.querySelector('.artwork .asks').textContent`) }
	tell("pointerdown")
	before, said := p.ask(where), asked()
	change()
	time.Sleep(1200 * time.Millisecond) // 0.4 s until it is read again, and as long as that takes
	if now := p.ask(where); now != before || asked() != said {
		p.Errorf("under a finger it went from %v to %v, and said %q", before, now, asked())
	}
	tell("pointerup")
}

// scaledByRuler: the ends of a ruler in the picture of 800 by 600 pixels and its length
// give the scale, and between corners too.
func scaledByRuler(t *testing.T, p *page) {
	p.movesNothing(func() { p.fill(map[string]string{"width": ""}) })
	p.asksForPicture("Needed.")
	p.click(".artwork .by-ruler")
	p.asksForPicture("how long the ruler is") // and moves the picture
	x0, _ := p.drag(".artwork .handle.ruler", 0.125, 0.5)
	x1, _ := p.drag(".artwork .handle.ruler + .handle.ruler", 0.875, 0.5)
	p.ask(`const length = document.querySelector('.artwork .known input')
		length.value = '45'
		length.dispatchEvent(new Event('change', { bubbles: true }))`)
	p.until(`document.querySelectorAll('.row:is([data-field=width], [data-field=height]) .source').length === 2`)
	p.holdsAbout("width", 45/(x1-x0), 0.002)
	p.holdsAbout("height", 45/(x1-x0)*0.75, 0.002)
	p.measures("62.5 %")

	// As a photograph its corners are those of the picture; dragged in, they leave a part
	// of it to the same scale.
	p.click(".artwork .kind [value=yes]")
	p.until(`!document.querySelector('.artwork .handle.corners').hidden`)
	p.holdsAbout("width", 45/(x1-x0), 0.002)
	left, top := p.drag(".artwork .handle.corners", 0.25, 0.2)
	right, _ := p.drag(".artwork .handle.corners + .handle.corners", 0.75, top)
	_, bottom := p.drag(".artwork .handle.corners:nth-of-type(3)", right, 0.8)
	p.drag(".artwork .handle.corners:nth-of-type(4)", left, bottom)
	p.until(`Math.abs(parseFloat(document.getElementById('width').value) / arguments[0] - 1) < 0.01 && document.querySelector('.artwork .busy').hidden`, 45/(x1-x0)*(right-left))
	for _, violation := range p.violations(axe(t)) {
		t.Error(strings.TrimSpace(violation))
	}
	p.click(".artwork .by-ruler")
	p.asksForPicture("Needed.")
}

// pictureKept: jobs that an older version kept are still there; a job is saved with its
// picture, and opened with it after a reload; a link has none; with its last job it goes.
func pictureKept(t *testing.T, p *page) {
	p.noJobs()
	p.loadOnly("/scripts")
	if err := p.ExecuteAsync(nil, `const done = arguments[0], older = indexedDB.open('saltbite', 1)
		older.onupgradeneeded = () => older.result.createObjectStore('jobs', { keyPath: 'id', autoIncrement: true })
			.put({ name: 'Old', fields: 'metal=brass', sentence: 'Of before.', saved: 1 })
		older.onsuccess = () => { older.result.close(); setTimeout(done, 100) }`); err != nil {
		t.Fatal(err)
	}
	p.load("/")
	p.fill(stripedJob)
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.until(`document.getElementById('answer').getAttribute('aria-busy') !== 'true'`)
	p.click("#to-jobs")
	p.listed("Old")
	p.until(`!document.querySelector('#jobs .with').hidden && !document.querySelector('#jobs .with input').checked`)
	p.ask(`document.querySelector('#jobs .with input').click(); document.getElementById('jobs-name').value = 'Striped'`)
	p.click("#jobs-store button")
	p.says("jobs-said", "“Striped” is saved.")
	p.listed("Striped", "Old")
	p.closes()
	p.click("#to-share")
	if link := p.say(`return document.getElementById('share-link').value`); strings.Contains(link, "picture") || len(link) > 500 {
		t.Errorf("the link is %s", link)
	}
	p.load("/")
	p.click("#clear")
	p.click("#to-jobs")
	if offered := p.ask(`return !document.querySelector('#jobs .with').hidden`); offered != false {
		t.Error("without a picture it is offered to keep one")
	}
	p.listed("Striped", "Old")
	p.act(0, "open")
	p.measures("62.5 %")
	p.until(`document.querySelectorAll('.row .source').length === 5`)
	if got := p.marked(); got != "height open edge line space" {
		t.Errorf("from the picture are %q", got)
	}
	p.fill(map[string]string{"width": "40"}) // the picture is read again, as before
	p.measures("7.50 cm²")
	p.holdsAbout("height", 30, 1e-3)
	kept := func() (count float64) {
		t.Helper()
		if err := p.ExecuteAsync(&count, `const done = arguments[0], open = indexedDB.open('saltbite')
			open.onsuccess = () => {
				const all = open.result.transaction('pictures').objectStore('pictures').count()
				all.onsuccess = () => { open.result.close(); done(all.result) }
			}`); err != nil {
			t.Fatal(err)
		}
		return count
	}
	if n := kept(); n != 1 {
		t.Errorf("%g pictures are kept, not 1", n)
	}
	p.load("/")
	p.click("#to-jobs")
	p.listed("Striped", "Old")
	p.act(0, "remove")
	p.until(`document.querySelector('#jobs-list .gone:not([hidden])') !== null`)
	p.load("/")
	p.click("#to-jobs")
	p.listed("Old")
	if n := kept(); n != 0 {
		t.Errorf("%g pictures are kept, and the job is deleted", n)
	}
	p.noJobs()
}

// largePhotograph has 30.7 million pixels, as those of telephones may have; the bench
// reads at most 24 million. The stripes in it are exposed by the same share.
func largePhotograph(t *testing.T, p *page) {
	const times = 8
	small := stripes()
	large := image.NewGray(image.Rect(0, 0, 800*times, 600*times))
	for y := range 600 * times {
		for x := range 800 * times {
			large.Set(x, y, small.At(x/times, y/times))
		}
	}
	var file bytes.Buffer
	if err := jpeg.Encode(&file, large, &jpeg.Options{Quality: 95}); err != nil {
		t.Fatal(err)
	}
	p.fill(stripedJob)
	p.brings("chosen", "large.jpg", "image/jpeg", file.Bytes())
	p.measures("62.5 %")
	made := func() bool {
		p.Helper()
		return p.say(`return document.querySelector('.artwork .shrunk').textContent`) != ""
	}
	if !made() {
		t.Error("it does not say that the picture was made smaller")
	}
	p.brings("chosen", "stripes.png", "image/png", pngOf(t, stripes()))
	p.until(`document.querySelector('.artwork .shrunk').textContent === '' && document.querySelector('.artwork .busy').hidden`)
	p.measures("62.5 %")

	// A progressive one may have 10 million pixels; this has 12.
	p.brings("chosen", "progressive.jpg", "image/jpeg", progressive(t, stripes(), "4000x3000!"))
	p.until(`document.querySelector('.artwork .shrunk').textContent !== ''`)
	p.measures("62.5 %")
	if said := p.say(`return document.querySelector('.artwork .asks').textContent`); said != "" {
		t.Errorf("it says %q", said)
	}
}

// progressive is a picture of that size as ImageMagick writes a progressive JPEG.
func progressive(t *testing.T, picture image.Image, size string) []byte {
	t.Helper()
	convert, err := exec.LookPath("convert")
	if err != nil {
		if os.Getenv("SALTBITE_SETUP") == "1" {
			t.Fatal("convert is missing: install the package imagemagick")
		}
		t.Skip("convert is missing: install the package imagemagick to write pictures with it")
	}
	command := exec.Command(convert, "png:-", "-sample", size, "-interlace", "JPEG", "-quality", "95", "jpg:-")
	command.Stdin = bytes.NewReader(pngOf(t, picture))
	written, err := command.Output()
	if err != nil {
		t.Fatal(err)
	}
	return written
}
