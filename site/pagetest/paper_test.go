package pagetest

import (
	"encoding/xml"
	"math"
	"strings"
	"testing"

	"saltbite/build/browser"
)

// TestPaper tests the printed bench card and labels. The third engine can't print from
// a test: there only the print style is tested.
func TestPaper(t *testing.T) {
	t.Parallel()
	hold(t, []string{browser.Chromium, browser.Firefox}, (*page).fresh, []check{
		{"the card alone", cardAlone},
		{"the longest job", longestCard},
		{"what went wrong, on the back", whatWentWrongOnTheBack},
		{"labels", labelsOnASheet},
	})
	holdAll(t, []check{
		{"the style of print", styleOfPrint},
		{"lettering in its frame", letteringInItsFrame},
		{"the dialog", paperDialog},
	})
}

// sheet is a printed page: its size in points, its words.
type sheet struct {
	Width  float64 `xml:"width,attr"`
	Height float64 `xml:"height,attr"`
	Words  []word  `xml:"word"`
}

type word struct {
	Left   float64 `xml:"xMin,attr"`
	Top    float64 `xml:"yMin,attr"`
	Right  float64 `xml:"xMax,attr"`
	Bottom float64 `xml:"yMax,attr"`
	Text   string  `xml:",chardata"`
}

func (s sheet) text() string {
	var all []string
	for _, w := range s.Words {
		all = append(all, w.Text)
	}
	return strings.Join(all, " ")
}

// printed is the printed PDF, as poppler reads it.
func (p *page) printed() []sheet {
	p.Helper()
	document, err := p.PrintSheet()
	if err != nil {
		p.Fatal(err)
	}
	return sheetsOf(p.T, document)
}

func sheetsOf(t *testing.T, document []byte) []sheet {
	t.Helper()
	var all struct {
		Sheets []sheet `xml:"body>doc>page"`
	}
	if err := xml.Unmarshal(readPDF(t, document, "-bbox"), &all); err != nil {
		t.Fatal(err)
	}
	return all.Sheets
}

const (
	point      = 25.4 / 72 // mm
	cardMargin = 8         // mm
	nine       = 9         // points: the smallest type on paper
	rounding   = 1         // points, of the size of a sheet
)

// whatWentWrongOnTheBack: once it is chosen what is seen, a tick prints the causes on
// a second sheet of the same size.
func whatWentWrongOnTheBack(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.openPaper("card")
	if there := p.ask(`return document.getElementById('back-wanted').checkVisibility()`); there != false {
		t.Error("nothing is seen, and a back is offered")
	}
	p.Press(browser.Escape)
	p.fill(map[string]string{"seen": "pink"})
	p.until(`document.querySelector('#causes li')`)
	p.openPaper("card")
	if n := len(p.printed()); n != 1 {
		t.Errorf("without the tick %d sheets are printed", n)
	}
	p.click("#back-wanted label")
	p.until(`document.querySelectorAll('#leaves svg').length === 2`)
	sheets := p.printed()
	if len(sheets) != 2 {
		t.Fatalf("with the tick %d sheets are printed", len(sheets))
	}
	if sheets[0].Width != sheets[1].Width || sheets[0].Height != sheets[1].Height {
		t.Errorf("the back is of another size: %v by %v", sheets[1].Width, sheets[1].Height)
	}
	front, back := sheets[0].text(), strings.NewReplacer("ﬀ", "ff", "ﬁ", "fi", "ﬂ", "fl").Replace(sheets[1].text()) // Firefox joins letters
	if !strings.Contains(front, copperTime) || strings.Contains(back, copperTime) || !strings.Contains(back, "What went wrong") {
		t.Errorf("the front says %s\nand the back %s", front, back)
	}
	for _, cause := range p.lines(`return [...document.querySelectorAll('#causes strong')].map((e) => e.textContent)`) {
		if !strings.Contains(back, cause) {
			t.Errorf("the back does not say %q: %s", cause, back)
		}
	}
	p.Press(browser.Escape)
}

// openPaper opens the dialog and waits for what it shows.
func (p *page) openPaper(choice string) {
	p.Helper()
	p.click("#card")
	p.ask(`document.querySelector('#onpaper [value=' + arguments[0] + ']').click()`, choice)
	p.until(`document.documentElement.classList.contains('prints-leaf') && document.querySelector('#leaves svg')`)
	p.settle()
}

// oneSheet fails unless exactly one sheet of a size in mm was printed, with all words
// inside its margin and none too small.
func (p *page) oneSheet(width, height float64) sheet {
	p.Helper()
	sheets := p.printed()
	if len(sheets) != 1 {
		p.Fatalf("%d sheets were printed", len(sheets))
	}
	s := sheets[0]
	if math.Abs(s.Width-width/point) > rounding || math.Abs(s.Height-height/point) > rounding {
		p.Errorf("the sheet is %.1f by %.1f mm, not %v by %v", s.Width*point, s.Height*point, width, height)
	}
	for _, w := range s.Words {
		if min(w.Left, w.Top, s.Width-w.Right, s.Height-w.Bottom)*point < cardMargin-0.5 {
			p.Errorf("%q is in the margin, at %.1f %.1f mm", w.Text, w.Left*point, w.Top*point)
		}
		if w.Bottom-w.Top < nine {
			p.Errorf("%q is %.1f points high", w.Text, w.Bottom-w.Top)
		}
	}
	var least float64
	if err := p.ExecuteTo(&least, `return Math.min(...[...document.querySelectorAll('#leaves text')].map((text) => Number(text.getAttribute('font-size'))))`); err != nil {
		p.Fatal(err)
	}
	if least/point < nine-0.01 {
		p.Errorf("the smallest type is %.2f points", least/point)
	}
	return s
}

// cardAlone: half a sheet in either system of units, with the sentence and nothing
// of the form; and once the dialog is closed, the whole page again.
func cardAlone(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.openPaper("card")
	for units, size := range map[string][2]float64{"metric": {148, 210}, "us": {139.7, 215.9}} {
		p.ask(`document.querySelector('[name=units][value=' + arguments[0] + ']').click()`, units)
		p.until(`document.querySelector('#leaves svg').getAttribute('viewBox').startsWith('0 0 ' + arguments[0] + ' ')`, size[0])
		text := p.oneSheet(size[0], size[1]).text()
		if !strings.Contains(text, copperTime) {
			t.Errorf("the card does not say %q: %s", copperTime, text)
		}
		for _, never := range []string{"printed ", "Example", "Jar label", "Where each figure comes from"} {
			if strings.Contains(text, never) {
				t.Errorf("%q is printed with the card", never)
			}
		}
	}
	p.ask(`document.querySelector('#onpaper [value=form]').click()`)
	p.until(`document.querySelectorAll('#preview svg').length === 0 && !document.documentElement.classList.contains('prints-leaf')`)
	if text := p.printed()[0].text(); !strings.Contains(text, "printed ") || strings.Contains(text, "Jar label") {
		t.Errorf("of the whole form this is printed: %s", text)
	}
	p.Press(browser.Escape)
	p.until(`!document.getElementById('onpaper').open && !document.documentElement.classList.contains('prints-leaf')`)
	if text := p.printed()[0].text(); !strings.Contains(text, "printed ") || !strings.Contains(text, copperTime) {
		t.Errorf("with the dialog closed this is printed: %s", text)
	}
}

// longJob fills in every part, and raises as many cautions as possible.
var longJob = map[string]string{
	"metal": "leaded brass", "width": "60", "height": "40", "open": "90", "pieces": "4", "edge": "800", "extra": "1.5", "hanger": "40 ga", "hangerLength": "25",
	"bareEdges": "120", "back": "10", "depth": "0.9", "density": "400", "undercut": "1", "sheet": "1", "line": "0.1", "space": "0.3", "volts": "12", "amps": "0.2",
	"gap": "60", "cathode": "6", "wire": "40 ga", "wireLength": "2", "salt": "common salt", "strength": "400", "volume": "0.5", "coldest": "1", "etched": "400",
	"before": "24.6", "after": "23.9", "readings": "0:00 0.30; 0:30 0.28", "start": "14:05",
}

func longestCard(t *testing.T, p *page) {
	p.fill(longJob)
	p.until(`document.querySelectorAll('#cautions li').length > 5`)
	p.openPaper("card")
	p.oneSheet(148, 210)
}

// labelsOnASheet: as many as were chosen, each in true size.
func labelsOnASheet(t *testing.T, p *page) {
	p.fill(map[string]string{"salt": "copper sulfate crystals", "strength": "200", "volume": "2"})
	p.answers("copper sulfate")
	p.openPaper("labels")
	p.labelled(1)
	p.ask(`const many = document.getElementById('many'); many.value = '10'; many.dispatchEvent(new Event('change', { bubbles: true }))`)
	p.until(`document.querySelectorAll('#leaves svg svg').length === 10`)
	p.labelled(10)
}

func (p *page) labelled(count int) {
	p.Helper()
	text := p.oneSheet(210, 297).text()
	if got := strings.Count(text, "Danger"); got != count {
		p.Errorf("%d of %d labels are printed with their signal word: %s", got, count, text)
	}
}

// letteringInItsFrame: the drawings do not know the fonts; the space that they allow
// is enough for the fonts of the browser.
func letteringInItsFrame(t *testing.T, p *page) {
	p.fill(lineJob)
	p.fill(map[string]string{"strength": "200", "volume": "2"})
	p.draws("0.100 mm")
	p.within("#cut [role=img]")
	p.ask(`document.querySelector('#cut [value=curve]').click()`)
	p.until(drawing + `.querySelector('[data-role=line]')`)
	p.within("#cut [role=img]")
	for _, more := range []map[string]string{{}, longJob} {
		p.fill(more)
		p.settle()
		p.openPaper("card")
		p.within("#preview > svg")
		p.ask(`document.getElementById('onpaper').close()`)
		p.openPaper("labels")
		p.within("#preview svg svg")
		p.ask(`document.getElementById('onpaper').close()`)
	}
	p.ask(`document.querySelector('#cut [value=section]').click()`)
	p.click("#clear")
	p.fill(cuffJob)
	p.draws("0.200 mm")
	p.within("#cut [role=img]")
}

// within fails if a text of a drawing leaves its frame, or if it has none.
func (p *page) within(selector string) {
	p.Helper()
	out := p.say(`const svg = document.querySelector(arguments[0]), { width, height } = svg.viewBox.baseVal
		const boxes = [...svg.querySelectorAll('text')].map((text) => [text.getBBox(), text.textContent])
		return boxes.length === 0 ? 'no text at all' : boxes.filter(([b]) => b.x < 0 || b.x + b.width > width || b.y + b.height > height + 0.5).map(([b, text]) => text + ' ' + (b.x + b.width).toFixed(1)).join('; ')`, selector)
	if out != "" {
		p.Errorf("out of the frame of %s: %s", selector, out)
	}
}

// styleOfPrint applies the print style to the screen: only the leaf is visible, in
// the size in which it is drawn.
func styleOfPrint(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.openPaper("card")
	p.ask(`const turn = (rules) => { for (const rule of rules) {
			if (rule.media?.mediaText === 'print') rule.media.mediaText = 'all'
			if (rule.cssRules) turn(rule.cssRules)
		} }
		for (const style of [...document.styleSheets, ...document.adoptedStyleSheets]) turn(style.cssRules)`)
	seen := p.say(`return [...document.body.children].filter((child) => child.checkVisibility()).map((child) => child.id || child.className || child.localName).join()`)
	if seen != "leaves" {
		t.Errorf("what is printed is %s", seen)
	}
	size := p.say(`const { width, height } = document.querySelector('#leaves svg').getBoundingClientRect(); return [width, height].map((px) => (px / 96 * 25.4).toFixed(1)).join(' by ')`)
	if size != "148.0 by 210.0" {
		t.Errorf("the card is %s mm", size)
	}
}

// paperDialog: Escape closes it, the focus returns, and for a blank job it says what
// is needed.
func paperDialog(t *testing.T, p *page) {
	p.click("#card")
	p.until(`document.getElementById('onpaper').open && document.getElementById('leaf-says').textContent !== ''`)
	if shown := p.ask(`return document.querySelectorAll('#preview svg').length`); shown != 0.0 {
		t.Errorf("of a blank job there is a card: %s", p.say(`return document.querySelector('#preview desc').textContent`))
	}
	if disabled := p.ask(`return document.querySelector('[data-act=print]').disabled`); disabled != true {
		t.Error("a card that is not there can be printed")
	}
	p.Press(browser.Escape)
	p.until(`document.activeElement.id === 'card'`)
	p.fill(map[string]string{"salt": "copper sulfate crystals", "strength": "200", "volume": "2"})
	p.answers("copper sulfate")
	p.openPaper("labels")
	p.until(`document.getElementById('many').value === '1' && document.querySelectorAll('#preview svg svg').length === 1`)
	p.Press(browser.Escape)
	p.ask(`document.querySelector('#onpaper [value=card]').checked = true`)
	p.fill(copperJob)
	p.answers(copperTime)
	p.openPaper("card")
	name := p.say(`const svg = document.querySelector('#preview svg'); return svg.getAttribute('role') + ' ' + svg.querySelector('desc').textContent`)
	if !strings.HasPrefix(name, "img ") || !strings.Contains(name, copperTime) {
		t.Errorf("the card is to a reader of screens %q", name)
	}
	large := p.ask(`return [...document.querySelectorAll('#onpaper button, #onpaper select:enabled, #onpaper label')].filter((e) => e.checkVisibility()).every((e) => e.getBoundingClientRect().height >= 47.5)`)
	if large != true {
		t.Error("something in the dialog is too small for a gloved finger")
	}
}
