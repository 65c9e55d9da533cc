package pagetest

import (
	"bytes"
	"encoding/base64"
	"encoding/binary"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"saltbite/build/browser"
)

func TestArtwork(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{
		{"a picture fills the form", pictureFills},
		{"of every kind", picturesOfEveryKind},
		{"what is typed wins", typedBeforePicture},
		{"a link needs no picture", linkWithoutPicture},
		{"black keeps or etches", blackKeepsOrEtches},
		{"undone and removed", pictureUndone},
		{"cut short", pictureCutShort},
		{"broken pictures", brokenPictures},
		{"a pattern to compare with", patternsToCompare},
		{"made ready to print", artworkSaved},
		{"no violation with a picture", artworkWithoutViolation},
	})
	// The third engine can't print from a test.
	hold(t, []string{browser.Chromium, browser.Firefox}, (*page).fresh, []check{{"printed in true size", artworkPrinted}})
}

// stripes are white stripes on a black ground, drawn in whole pixels: 20 of 30 by 500
// pixels on 800 by 600, that is 300,000 of 480,000, 62.5 %. At 80 mm across 10 pixels
// are a millimetre: 30 cm2 of 48 cm2 is white, a stripe is 3 mm wide and its outline
// 2 x (3 + 50) = 106 mm, of all 2120 mm; between two there is 1 mm. Plain sums.
const (
	stripeCount = 20
	stripeWide  = 30
	stripeTall  = 500
	stripeStep  = 40
	stripeOpen  = 62.5
	stripeEdge  = 2120.0
)

func stripes() image.Image {
	picture := image.NewGray(image.Rect(0, 0, 800, 600))
	for n := range stripeCount {
		for y := range stripeTall {
			for x := range stripeWide {
				picture.SetGray(5+n*stripeStep+x, 50+y, color.Gray{Y: 255})
			}
		}
	}
	return picture
}

func pngOf(t *testing.T, picture image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, picture); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// bmpOf is a bitmap file of 24 bits a pixel (BITMAPINFOHEADER, rows from below), which
// the bench itself can't read and every browser can.
func bmpOf(picture image.Image) []byte {
	const head = 54
	size := picture.Bounds()
	row := (3*size.Dx() + 3) / 4 * 4
	file := make([]byte, head+row*size.Dy())
	copy(file, "BM")
	for _, field := range []struct{ at, value int }{{2, len(file)}, {10, head}, {14, 40}, {18, size.Dx()}, {22, size.Dy()}, {26, 1 | 24<<16}} {
		binary.LittleEndian.PutUint32(file[field.at:], uint32(field.value))
	}
	for y := range size.Dy() {
		for x := range size.Dx() {
			r, g, b, _ := picture.At(x, size.Dy()-1-y).RGBA()
			copy(file[head+y*row+3*x:], []byte{byte(b >> 8), byte(g >> 8), byte(r >> 8)})
		}
	}
	return file
}

// stripesSVG are the same stripes as a drawing that says no size of its own.
func stripesSVG() []byte {
	var b strings.Builder
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 800 600"><rect width="800" height="600"/>`)
	for n := range stripeCount {
		fmt.Fprintf(&b, `<rect x="%d" y="50" width="%d" height="%d" fill="#fff"/>`, 5+n*stripeStep, stripeWide, stripeTall)
	}
	b.WriteString("</svg>")
	return []byte(b.String())
}

// brings lets a file come to the page: chosen, taken with the camera, dropped or pasted.
func (p *page) brings(way, name, kind string, file []byte) {
	p.Helper()
	p.until(`document.querySelector('.artwork .offer') !== null`)
	p.ask(`const [way, name, type, text] = arguments
		const file = new File([Uint8Array.from(atob(text), (c) => c.charCodeAt(0))], name, { type }), data = new DataTransfer()
		data.items.add(file)
		const input = document.querySelectorAll('.artwork input[type=file]')[way === 'taken' ? 1 : 0]
		if (way === 'chosen' || way === 'taken') {
			input.files = data.files
			input.dispatchEvent(new Event('change', { bubbles: true }))
		} else {
			const event = new Event(way === 'dropped' ? 'drop' : 'paste', { bubbles: true, cancelable: true })
			Object.defineProperty(event, way === 'dropped' ? 'dataTransfer' : 'clipboardData', { value: data })
			document.body.dispatchEvent(event)
		}`, way, name, kind, base64.StdEncoding.EncodeToString(file))
}

// measures waits until the picture stands there with a sentence that holds some words.
func (p *page) measures(words string) {
	p.Helper()
	p.until(`!document.querySelector('.artwork .shown').hidden && document.querySelector('.artwork .shown canvas').getAttribute('aria-label').includes(arguments[0])
		&& document.querySelector('.artwork .busy').hidden`, words)
}

func (p *page) asksForPicture(words string) {
	p.Helper()
	p.until(`document.querySelector('.artwork .asks').textContent.includes(arguments[0])`, words)
}

// number is the number that a field's text begins with.
func (p *page) number(field string) float64 {
	p.Helper()
	text, _, _ := strings.Cut(p.value(field), " ")
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		p.Errorf("%s holds %q", field, p.value(field))
	}
	return x
}

// holdsAbout says whether a field holds a number, to a share of it.
func (p *page) holdsAbout(field string, want, within float64) {
	p.Helper()
	if got := p.number(field); math.Abs(got/want-1) > within {
		p.Errorf("%s holds %g, not %g within %g", field, got, want, within)
	}
}

func (p *page) marked() string {
	p.Helper()
	return p.say(`return [...document.querySelectorAll('.row:has(.source)')].map((row) => row.dataset.field).join(' ')`)
}

var stripedJob = map[string]string{"metal": "copper", "metalDensity": "8.96", "width": "80", "depth": "0.1", "density": "30"}

func pictureFills(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.answers("Leave it")
	p.holdsAbout("open", stripeOpen, 0.002)
	p.holdsAbout("height", 60, 1e-3)
	p.holdsAbout("edge", stripeEdge, 0.01)
	p.holdsAbout("line", 1, 0.02+0.05) // 2 % and half a pixel
	p.holdsAbout("space", 3, 0.02+0.05/3)
	if got := p.marked(); got != "height open edge line space" {
		t.Errorf("from the picture are %q", got)
	}
	if got := p.say(`return document.querySelector('.artwork [data-answer=islands] dd').textContent`); got != "20" {
		t.Errorf("there are %s islands, and 20 were drawn", got)
	}
	strips := p.say(`return document.querySelector('.artwork .strips').textContent`)
	for _, words := range []string{"All lines survive a depth of 0.100 mm: the finest", "62.5 % exposed: at 30.0 mA/cm² it needs 0.900 A"} { // 30 cm2 x 30 mA
		if !strings.Contains(strips, words) {
			t.Errorf("the strips say %q", strips)
		}
	}
	p.fill(map[string]string{"width": "40"}) // half as wide: a quarter of the area
	p.measures("7.50 cm²")
	p.holdsAbout("height", 30, 1e-3)
	p.holdsAbout("edge", stripeEdge/2, 0.01)
}

// picturesOfEveryKind come by each way; what the bench does not read itself goes
// through the browser's own decoder.
func picturesOfEveryKind(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.until(`document.querySelector('.artwork .shown canvas') !== null`)
	for _, c := range []struct {
		way, name, kind string
		file            []byte
	}{
		{"chosen", "stripes.png", "image/png", pngOf(t, stripes())},
		{"pasted", "stripes.bmp", "image/bmp", bmpOf(stripes())},
		{"dropped", "stripes.svg", "image/svg+xml", stripesSVG()},
	} {
		p.ask(`document.querySelector('.artwork .shown canvas').removeAttribute('aria-label')`)
		p.brings(c.way, c.name, c.kind, c.file)
		p.measures("62.5 %")
		p.holdsAbout("open", stripeOpen, 0.002)
		p.holdsAbout("edge", stripeEdge, 0.01)
	}
}

func typedBeforePicture(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.fill(map[string]string{"open": "50", "line": "0.3"})
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.answers("Leave it")
	if open, line := p.value("open"), p.value("line"); open != "50" || line != "0.3" {
		t.Errorf("the picture made %q and %q of the 50 and 0.3 that were typed", open, line)
	}
	p.fill(map[string]string{"edge": "900"})
	p.until(`!document.querySelector('[data-field=edge] .source')`)
	p.fill(map[string]string{"width": "40"})
	p.measures("7.50 cm²")
	if edge := p.value("edge"); edge != "900" {
		t.Errorf("the picture made %q of the 900 that was typed over it", edge)
	}
	p.fill(map[string]string{"open": "", "area": "12"}) // an area says all that a share would
	p.until(`document.querySelector('.artwork .busy').hidden && document.getElementById('open').value === ''`)
	p.answers("Leave it")
}

// linkWithoutPicture opens the link of a job with a picture on a page that has none.
func linkWithoutPicture(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.until(`document.querySelector('#open').value !== '' && document.getElementById('answer').getAttribute('aria-busy') !== 'true'`)
	p.answers("Leave it")
	said := p.sentence()
	p.click("#to-share")
	link := p.say(`return document.getElementById('share-link').value`)
	if !strings.Contains(link, "islands=20") || len(link) > 500 {
		t.Errorf("the link is %s", link)
	}
	p.fresh()
	p.bring(link[strings.Index(link, "#")+1:])
	p.answers("Leave it")
	if got := p.sentence(); got != said {
		t.Errorf("with the picture it says %q, without it %q", said, got)
	}
	if shown := p.ask(`return document.querySelector('.artwork .shown')?.hidden`); shown == false {
		t.Error("a picture stands there")
	}
}

func blackKeepsOrEtches(t *testing.T, p *page) {
	p.fill(map[string]string{"width": "80"})
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	keeps := p.number("open")
	p.click(".artwork [data-field=black][value=etches]")
	p.measures("37.5 %")
	if etches := p.number("open"); math.Abs(keeps+etches-100) > 1e-9 {
		t.Errorf("black keeps %g %% and etches %g %%", keeps, etches)
	}
	p.click("#undo")
	p.measures("62.5 %")
	p.until(`document.querySelector('.artwork [data-field=black]:checked').value === ''`)
}

func pictureUndone(t *testing.T, p *page) {
	p.fill(map[string]string{"width": "80"})
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.click("#undo")
	p.until(`document.getElementById('open').value === '' && document.querySelector('.artwork .shown').hidden`)
	if got := p.marked(); got != "" {
		t.Errorf("%q still are the picture's", got)
	}
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.click(".artwork [data-remove]")
	p.until(`document.getElementById('open').value === '' && document.getElementById('width').value === '80' && document.querySelector('.artwork .shown').hidden`)
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.click("#clear")
	p.until(`document.querySelector('.artwork .shown').hidden && document.getElementById('open').value === ''`)
}

// noise is a large picture that takes long: each of its blocks is black or white.
func noise() image.Image {
	const block = 6
	r := rand.New(rand.NewPCG(1, 2))
	picture := image.NewGray(image.Rect(0, 0, 4002, 3000))
	for y := 0; y < 3000; y += block {
		for x := 0; x < 4002; x += block {
			if r.IntN(2) == 0 {
				continue
			}
			for k := range block * block {
				picture.SetGray(x+k%block, y+k/block, color.Gray{Y: 255})
			}
		}
	}
	return picture
}

// pictureCutShort: while a large picture is read the page answers; Cancel ends it, and
// the next is read.
func pictureCutShort(t *testing.T, p *page) {
	p.fill(map[string]string{"width": "80"})
	p.brings("dropped", "noise.png", "image/png", pngOf(t, noise()))
	p.until(`!document.querySelector('.artwork .busy').hidden`)
	p.fill(copperJob)
	p.answers(copperTime)
	if busy := p.ask(`return !document.querySelector('.artwork .busy').hidden`); busy != true {
		t.Log("the picture was read before the answer was there")
	}
	p.ask(`document.querySelector('.artwork [data-cancel]').click()`)
	p.until(`document.querySelector('.artwork .busy').hidden && document.querySelector('.artwork .shown').hidden`)
	p.fill(map[string]string{"area": ""})
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.holdsAbout("open", stripeOpen, 0.002)
}

func brokenPictures(t *testing.T, p *page) {
	p.fill(map[string]string{"width": "80"})
	whole := pngOf(t, stripes())
	for _, c := range []struct {
		name, kind string
		file       []byte
		asks       string
	}{
		{"cut.png", "image/png", whole[:len(whole)/2], "damaged or cut short"},
		{"list.txt", "text/plain", []byte("nothing but words"), "“list.txt” can’t be opened as a picture here. Save it as PNG or JPEG."},
		{"empty.png", "image/png", nil, "“empty.png” is empty"},
		{"half.svg", "image/svg+xml", stripesSVG()[:300], "can’t be opened"},
	} {
		p.brings("chosen", c.name, c.kind, c.file)
		p.asksForPicture(c.asks)
		if shown := p.ask(`return document.querySelector('.artwork .shown').hidden`); shown != true {
			t.Errorf("%s stands there", c.name)
		}
	}
	p.fill(map[string]string{"height": "10"})
	p.brings("chosen", "stripes.png", "image/png", whole)
	p.asksForPicture("“10 mm” can't be used: the picture is 800 by 600 pixels: 80 mm wide makes it 60 mm high")
	p.fill(map[string]string{"height": ""})
	p.brings("chosen", "stripes.png", "image/png", whole)
	p.measures("62.5 %")
	if asks := p.say(`return document.querySelector('.artwork .asks').textContent`); asks != "" {
		t.Errorf("with a whole picture it says %q", asks)
	}
}

// patternsToCompare: each pattern shows the share that its touch fills in; its discs
// stand one in each square of 20 units, so that they cover pi d^2 / 4 / 400 of it.
func patternsToCompare(t *testing.T, p *page) {
	p.until(`document.querySelector('.artwork .like') !== null`)
	p.ask(`document.querySelector('.artwork').open = true`)
	for _, button := range p.lines(`return [...document.querySelectorAll('.artwork .like [data-text]')].map((b) => [b.dataset.text, b.querySelector('path').getAttribute('stroke-width'), b.textContent].join(' '))`) {
		parts := strings.Fields(button)
		share, _ := strconv.ParseFloat(parts[0], 64)
		wide, _ := strconv.ParseFloat(parts[1], 64)
		if drawn := math.Pi * wide * wide / 4 / 400; math.Abs(drawn*100-share) > 0.02 || parts[2] != parts[0] {
			t.Errorf("the pattern %q is %.2f %% exposed", button, drawn*100)
		}
	}
	p.click(".artwork .like [data-text='30']")
	p.until(`document.getElementById('open').value === '30'`)
}

// artworkSaved: on A4 at 300 dots an inch the PNG has 2480 by 3508 dots (ISO 216: 210 by
// 297 mm) and says so, 11811 a metre.
func artworkSaved(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.ask(`for (const [name, text] of [['dpi', '300'], ['paper', 'A4'], ['copies', '2']]) {
		const control = document.querySelector('.artwork [data-field=' + name + ']')
		control.value = text
		control.dispatchEvent(new Event('change', { bubbles: true }))
	}
	document.querySelector('.artwork [data-field=mirror][value=yes]').click()`)
	p.ask(`document.querySelector('.artwork [data-make=save]').dataset.save = 'art'`) // as saved presses it
	name, file := p.saved("art")
	if name != "saltbite-artwork.png" {
		t.Errorf("the file is called %q", name)
	}
	made, err := png.DecodeConfig(bytes.NewReader(file))
	if err != nil || made.Width != 2480 || made.Height != 3508 {
		t.Errorf("the file is %d by %d dots, %v", made.Width, made.Height, err)
	}
	if at := bytes.Index(file, []byte("pHYs")); at < 0 || binary.BigEndian.Uint32(file[at+4:]) != 11811 {
		t.Error("the file does not state 11811 dots a metre")
	}
	p.until(`document.querySelector('.artwork .made').textContent.startsWith('Mirrored, 80.0 mm by 60.0 mm, lines 0.0500 mm wider')`) // 0.5 x 0.1 mm
	if way := p.say(`return [...document.querySelectorAll('.artwork .way')].filter((w) => !w.hidden).map((w) => w.textContent).join()`); !strings.Contains(way, "mirrored, it reads right") {
		t.Errorf("of mirroring it says %q", way)
	}
	p.ask(`const dpi = document.querySelector('.artwork [data-field=dpi]')
		dpi.value = 'many'
		dpi.dispatchEvent(new Event('change', { bubbles: true }))
		document.querySelector('.artwork [data-make=save]').click()`)
	p.until(`document.querySelector('.artwork .made').textContent.includes('“many” can')`)
}

// artworkPrinted: of A4 paper, on one sheet, with the rule of 50 mm as poppler draws it
// within 0.2 mm, and the job beside the rule.
func artworkPrinted(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.ask(`const paper = document.querySelector('.artwork [data-field=paper]')
		paper.value = 'A4'
		paper.dispatchEvent(new Event('change', { bubbles: true }))
		window.print = () => { document.body.dataset.printing = 'yes' }
		document.querySelector('.artwork [data-make=print]').click()`)
	p.until(`document.body.dataset.printing === 'yes'`)
	document, err := p.PrintSheet()
	if err != nil {
		t.Fatal(err)
	}
	sheets := sheetsOf(t, document)
	if len(sheets) != 1 || math.Abs(sheets[0].Width-210/point) > rounding || math.Abs(sheets[0].Height-297/point) > rounding {
		t.Fatalf("%d sheets were printed, %+v", len(sheets), sheets)
	}
	for _, words := range []string{"As drawn, 80.0 mm by 60.0 mm", "Leave it"} {
		if !strings.Contains(sheets[0].text(), words) {
			t.Errorf("the footer is %q", sheets[0].text())
		}
	}
	const fine, tick = 600 / 25.4, 0.2 // dots a millimetre; mm, of the last tick, which begins where the rule ends
	if wide := ruleOf(drawnPDF(t, document, "600"))/fine - tick; math.Abs(wide-50) > 0.2 {
		t.Errorf("the rule is %.2f mm long", wide)
	}
	p.ask(`document.dispatchEvent(new Event('pointerdown', { bubbles: true }))`)
	if left := p.ask(`return document.documentElement.classList.contains('prints-leaf') || document.getElementById('leaves').children.length > 0`); left != false {
		t.Error("after a touch the art still takes the page's place")
	}
}

// ruleOf is the longest run of dark dots among the lowest 15 mm of a sheet.
func ruleOf(sheet image.Image) (longest float64) {
	size := sheet.Bounds()
	for y := size.Max.Y - size.Max.Y*15/297; y < size.Max.Y; y++ {
		run := 0.0
		for x := range size.Max.X {
			if r, _, _, _ := sheet.At(x, y).RGBA(); r < 0x8000 {
				run++
				longest = max(longest, run)
			} else {
				run = 0
			}
		}
	}
	return longest
}

// drawnPDF is the first sheet of a PDF as poppler draws it at so many dots an inch.
func drawnPDF(t *testing.T, document []byte, dots string) image.Image {
	t.Helper()
	path := filepath.Join(t.TempDir(), "art")
	write(t, path+".pdf", string(document))
	if out, err := exec.Command("pdftoppm", "-r", dots, "-gray", "-png", "-singlefile", path+".pdf", path).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	file, err := os.Open(path + ".png")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	drawn, err := png.Decode(file)
	if err != nil {
		t.Fatal(err)
	}
	return drawn
}

func artworkWithoutViolation(t *testing.T, p *page) {
	p.fill(stripedJob)
	p.fill(map[string]string{"depth": "1.5", "undercut": "0.5"})
	p.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes()))
	p.measures("62.5 %")
	p.until(`document.querySelector('.artwork .strips').textContent.includes("don't survive") || document.querySelector('.artwork .strips').textContent.includes("ones don't")`)
	p.settle()
	for _, violation := range p.violations(axe(t)) {
		t.Error(strings.TrimSpace(violation))
	}
	small := p.say(`return [...document.querySelectorAll('.artwork button, .artwork label')].filter((b) => b.checkVisibility()).filter((b) => b.getBoundingClientRect().height < 47.5).map((b) => b.textContent).join()`)
	if small != "" {
		t.Errorf("too small for a gloved finger: %s", small)
	}
}
