package pagetest

import (
	"encoding/json"
	"net/url"
	"slices"
	"strings"
	"testing"
	"time"

	"saltbite/testdata"
)

func TestShare(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{
		{"every vector opens to its answers", vectorsByLink},
		{"a link on opening", linkOnOpening},
		{"a link over a changed job", linkOverAChangedJob},
		{"a link where nothing is kept", linkWithoutStorage},
		{"links that can't be read", unreadableLinks},
		{"what a link says", linkSaysWhatWasTyped},
		{"a question alone", questionAlone},
		{"copying", copying},
		{"copying by hand", copyingByHand},
		{"code for a web page", codeForAPage},
		{"the code at work", codeAtWork},
	})
}

// bring follows a link within the page.
func (p *page) bring(fields string) {
	p.Helper()
	p.ask(`location.hash = arguments[0]`, fields)
}

func (p *page) noticed(words string) {
	p.Helper()
	p.until(`document.getElementById('notice').textContent.includes(arguments[0])`, words)
}

// vectorsByLink opens each vector's text, then the link that the page makes of
// it, and compares the program's replies with that to a script: the form has
// separated the texts from their units and joined them again. A question alone is
// asked of what is on the form. It is the same script in each engine: each has its
// share of the vectors.
func vectorsByLink(t *testing.T, p *page) {
	all, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	all = shareOf(p.Name, slices.DeleteFunc(all, func(v testdata.Vector) bool {
		return strings.HasPrefix(v.Text(), "ask=") && !strings.Contains(v.Text(), "&") // a question alone
	}))
	var texts []string
	for _, v := range all {
		texts = append(texts, v.Text())
	}
	p.load("/?with=overhearing")
	var replies [][2]string
	for batch := range slices.Chunk(texts, 6) { // each within the time that a script has
		replies = append(replies, p.byLink(batch)...)
	}
	wanted := scriptReplies(t, all)
	for i, v := range all {
		for j, how := range []string{"its text", "the page's link"} {
			for _, wrong := range v.Check(replies[i][j]) {
				t.Errorf("%s, by %s: %s", v.Name, how, wrong)
			}
			if answersOf(t, replies[i][j]) != answersOf(t, wanted[i]) {
				t.Errorf("%s, by %s, is answered with\n%s\nand to a script with\n%s", v.Name, how, replies[i][j], wanted[i])
			}
		}
	}
}

// answersOf is a reply without what its errors quote: on the page a bare number
// that can't be read is quoted with the unit that its control shows.
func answersOf(t *testing.T, reply string) string {
	t.Helper()
	var kept struct {
		Sentence, Found, Answers, Rows, Cautions json.RawMessage
		Errors                                   []struct{ Field, Code string }
	}
	if err := json.Unmarshal([]byte(reply), &kept); err != nil {
		t.Fatalf("%v in %q", err, reply)
	}
	answers, err := json.Marshal(kept)
	if err != nil {
		t.Fatal(err)
	}
	return string(answers)
}

// byLink are the replies to texts that come in links, and to the links that the
// page then makes. Engines let a page change its address ten to twenty times in a
// second (from memory of their sources; faster ones got no reply), so each takes its time.
func (p *page) byLink(texts []string) (replies [][2]string) {
	p.Helper()
	err := p.ExecuteAsync(&replies, `const [texts, done] = arguments
		const { dataset } = document.documentElement
		const answered = async (text) => {
			dataset.reply = ''
			location.hash = text
			const paced = new Promise((next) => setTimeout(next, 120))
			for (let n = 0; n < 2000 && !dataset.reply; n++) await new Promise((next) => setTimeout(next, 5))
			await paced
			return dataset.reply
		}
		void (async () => {
			const replies = []
			for (const text of texts) {
				const first = await answered(text)
				document.getElementById('to-share').click()
				const link = document.getElementById('share-link').value
				document.getElementById('share').close()
				replies.push([first, await answered(link.slice(link.indexOf('#') + 1))])
			}
			done(replies)
		})()`, texts)
	if err != nil {
		p.Fatal(err)
	}
	return replies
}

func linkOnOpening(t *testing.T, p *page) {
	p.load("/#metal=copper&metalDensity=8.96&area=10+cm2&depth=0,1+mm&density=30&units=us")
	p.answers(copperTime)
	for field, text := range map[string]string{"metal": "copper", "area": "10", "depth": "0,1", "density": "30", "metalDensity": "8.96"} {
		if got := p.value(field); got != text {
			t.Errorf("the link's %s is shown as %q, not as %q", field, got, text)
		}
	}
	if unit := p.say(`return document.querySelector('[data-unit=depth]').value`); unit != "mm" {
		t.Errorf("the depth was sent in mm and is shown in %s", unit)
	}
	for _, asked := range p.server.requests() {
		if strings.Contains(asked, "metal") {
			t.Errorf("the server was asked for %s", asked)
		}
	}
	if hash := p.say(`return location.hash`); hash != "" {
		t.Errorf("the address still ends in %s", hash)
	}
	p.fill(map[string]string{"depth": "0.2"})
	p.load("/")
	if got := p.value("depth"); got != "0.2" {
		t.Errorf("the depth was changed to 0.2, and after a reload it is %q", got)
	}
	// A bare number where a unit must be said is asked about, as in any request.
	p.bring("metal=copper&sheet=1+mm&depth=0.2+mm&keep=50")
	p.answered()
	p.click("#brought-open")
	p.until(`document.getElementById('keep').ariaInvalid === 'true'`)
	p.load("/") // the choice of no unit is restored
	p.until(`document.getElementById('keep').ariaInvalid === 'true'`)
	p.bring("depth") // a place on the page, no job
	time.Sleep(100 * time.Millisecond)
	if notice := p.say(`return document.getElementById('notice').textContent`); notice != "" {
		t.Errorf("an anchor is taken for a job: %s", notice)
	}
}

// answered waits until the question about a link is put, with what it comes to.
func (p *page) answered() {
	p.Helper()
	p.until(`document.getElementById('brought').open`)
}

func linkOverAChangedJob(t *testing.T, p *page) {
	p.noJobs()
	p.fill(copperJob)
	p.answers(copperTime)
	link := "metal=copper&area=20+cm2&depth=0.1+mm&density=30"
	p.bring(link)
	p.answered()
	p.until(`document.querySelector('#brought .gist').textContent.includes('0.600 A')`)
	p.click("#brought [data-close]")
	if got := p.value("area"); got != "10" {
		t.Errorf("the page was to stay as it is, and the area is %q", got)
	}
	p.ask(`new ResizeObserver(([{ contentRect }]) => { if (contentRect.height > 0) (window.heights ??= new Set()).add(contentRect.height) }).observe(document.getElementById('brought'))`)
	p.bring(link)
	p.answered()
	p.click("#brought-open")
	p.answers("0.600 A")
	if heights, _ := p.ask(`return [...window.heights ?? []]`).([]any); len(heights) > 1 {
		t.Errorf("the question was %v px high while it was to be answered, so its buttons moved", heights)
	}
	p.noticed("Before the link")
	p.click("#undo")
	p.answers(copperTime)
	p.click("#to-jobs")
	p.until(`document.querySelector('#jobs-list input')?.value.startsWith('Before the link, ') && document.querySelector('#jobs-list .gist').textContent.includes(arguments[0])`, copperTime)
	p.click("#jobs [data-close]")
	// Stored already, so there is no question.
	p.bring(link)
	p.answers("0.600 A")
	p.bring(strings.Replace(link, "20", "30", 1)) // the unchanged job of a link
	p.answers("0.900 A")
	p.click("#example")
	p.answers("brass")
	p.bring(link) // the example
	p.answers("0.600 A")
	if n := p.ask(`return document.getElementById('brought').open`); n != false {
		t.Error("it is asked about a job that is there anyway")
	}
}

func linkWithoutStorage(t *testing.T, p *page) {
	p.load("/?with=nostorage")
	p.fill(copperJob)
	p.answers(copperTime)
	p.bring("metal=copper&area=20+cm2&depth=0.1+mm&density=30")
	p.answered()
	p.click("#brought-open")
	p.until(`document.querySelector('#brought .trouble').textContent.includes('saves no jobs')`)
	p.answers(copperTime)
	p.click("#brought-open")
	p.answers("0.600 A")
	p.click("#undo")
	p.answers(copperTime)
}

func unreadableLinks(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	for _, c := range []struct{ name, fields, said string }{
		{"too long", "metal=" + strings.Repeat("x", 100_000), "100 kB"},
		{"no field", "colour=red", "“colour” is no field here"},
		{"hostile", "__proto__=1&constructor=2&" + url.QueryEscape("<img src=x onerror=alert(1)>") + "=3&to%53tring=4", "“constructor” is no field here"},
		{"bad escapes", "metal=%zz&depth=%e", "“metal=%zz” is damaged"},
		{"no UTF-8", "metal=%ff%fe", "is damaged"},
		{"escaped as a whole", "metal%3Dcopper%26depth%3D1", "is no field with its text"},
		{"no such choice", "stir=shaken", "“shaken” is no choice"},
	} {
		p.bring(c.fields)
		p.noticed(c.said)
		p.noticed("What is on the page stays.")
		p.ask(`document.querySelector('#notice button').click()`)
		p.until(`document.getElementById('notice').textContent === '' && location.hash === ''`)
	}
	for field, text := range copperJob {
		if got := p.value(field); got != text {
			t.Errorf("%s was %q before those links and is %q after them", field, text, got)
		}
	}
	p.answers(copperTime)
	p.click("#clear")
	p.bring("metal=copper&metal=silver&depth=%zz&metalDensity=8.96&area=10+cm2&depth=0.1+mm&density=30&w=1&x=1&y=1")
	p.answers(copperTime)
	p.noticed("“metal” is there twice, “depth=%zz” is damaged, “w” is no field here, and 2 more")
	p.load("/#area=" + strings.Repeat("1", 100_001)) // on opening, too
	p.noticed("100 kB")
	p.answers(copperTime)
}

// linkSaysWhatWasTyped: the address contains what was typed, each with its unit, in
// the one text form, and the text for a notebook contains the results.
func linkSaysWhatWasTyped(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "metalDensity": "8.96", "area": "10", "depth": "0,1 mm", "density": "30"})
	p.answers(copperTime)
	p.click("#to-share")
	link := p.say(`return document.getElementById('share-link').value`)
	want := p.server.URL + p.say(`return location.pathname + location.search`) + "#metal=copper&metalDensity=8.96&area=10+cm2&depth=0%2C1+mm&density=30+mA%2Fcm2"
	if link != want {
		t.Errorf("the link is %s, not %s", link, want)
	}
	text := p.say(`return document.getElementById('share-text').value`)
	for _, line := range []string{"Leave it " + copperTime, "Likely ", "Exposed area: 10 cm²", "Depth: 0,1 mm", "Current: 0.300 A", link} {
		if !strings.Contains(text, line) {
			t.Errorf("%q is not in the text for a notebook:\n%s", line, text)
		}
	}
	p.click("#share [data-close]")
	p.until(`document.activeElement.id === 'to-share'`)
	p.ask(`document.querySelector('[name=units][value=us]').click()`)
	p.click("#to-share")
	if link := p.say(`return document.getElementById('share-link').value`); link != want+"&units=us" {
		t.Errorf("in US units the link is %s", link)
	}
	p.click("#share [data-close]")
	p.click("#example")
	p.answers("brass")
	p.click("#to-share")
	if text := p.say(`return document.getElementById('share-text').value`); !strings.Contains(text, "\n\nCautions\nNote. Copper sulfate") {
		t.Errorf("the cautions are not in the text for a notebook:\n%s", text)
	}
	p.click("#share [data-close]")
}

func copying(t *testing.T, p *page) {
	p.load("/?with=copying")
	p.fill(copperJob)
	p.answers(copperTime)
	p.click("#to-share")
	for _, id := range []string{"share-link", "share-text"} {
		p.click("[data-copies=" + id + "]")
		p.until(`document.documentElement.dataset.copied === document.getElementById(arguments[0]).value`, id)
		p.until(`document.getElementById('share-said').textContent.endsWith(' is copied.')`)
	}
	p.click("#share [data-close]")
}

func copyingByHand(t *testing.T, p *page) {
	p.load("/?with=nocopying")
	p.fill(copperJob)
	p.answers(copperTime)
	p.click("#to-share")
	p.click("[data-copies=share-link]")
	p.until(`document.getElementById('share-said').textContent.includes('Press Ctrl and C')`)
	marked := p.ask(`const f = document.getElementById('share-link'); return f.selectionStart === 0 && f.selectionEnd === f.value.length && document.activeElement === f`)
	if marked != true {
		t.Error("the link is not marked")
	}
	p.click("#share [data-close]")
}

// openEmbedding opens what puts the job on a web page.
func (p *page) openEmbedding() {
	p.Helper()
	p.click("#to-share")
	p.click("#embed-make > summary")
	p.until(`document.getElementById('embed-code').value !== ''`)
}

// tick ticks a box, or takes its tick away.
func (p *page) tick(place, value string) {
	p.Helper()
	p.ask(`document.querySelector('#' + arguments[0] + ' [value=' + arguments[1] + ']').click()`, place, value)
}

func codeForAPage(t *testing.T, p *page) {
	p.load("/?with=copying")
	p.fill(map[string]string{"metal": `copper "C110" & <b>`, "depth": "0,1"})
	p.openEmbedding()
	p.tick("embed-lock", "depth")
	for _, part := range []string{"metal", "supply"} {
		p.tick("embed-show", part)
	}
	p.click("[data-copies=embed-code]")
	p.until(`document.documentElement.dataset.copied === document.getElementById('embed-code').value`)
	code := p.say(`return document.getElementById('embed-code').value`)
	for _, wanted := range []string{
		`<script src="` + p.server.URL + `/embed.js" defer></script>`,
		`metal="copper &quot;C110&quot; &amp; &lt;b>"`, `depth="0,1 mm"`, `lock="depth"`, `show="design, `,
		`<a href="` + p.server.URL + `/">`,
	} {
		if !strings.Contains(code, wanted) {
			t.Errorf("%s is not in the code:\n%s", wanted, code)
		}
	}
	for _, never := range []string{"supply", "units=", `show="metal`} {
		if strings.Contains(code, never) {
			t.Errorf("%s is in the code:\n%s", never, code)
		}
	}
	p.click("#share [data-close]")
}

// codeAtWork: the element that the code makes answers as the page does, and so does
// the preview.
func codeAtWork(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.openEmbedding()
	p.tick("embed-lock", "metal")
	code := p.say(`return document.getElementById('embed-code').value`)
	p.click("#embed-try")
	p.until(`parseFloat(document.querySelector('#embed-preview iframe')?.style.blockSize) > 300`) // it has said how tall it is
	p.click("#embed-try")
	p.until(`!document.querySelector('#embed-preview iframe')`)
	p.loadOnly("/blank")
	p.ask(`addEventListener('saltbite:answer', ({ detail }) => { document.documentElement.dataset.said = detail.sentence + ' ' + detail.fields.metal })
		document.body.innerHTML = arguments[0]
		const script = document.createElement('script')
		script.src = document.querySelector('script').src
		document.querySelector('script').replaceWith(script)`, code)
	p.until(`document.documentElement.dataset.said?.includes(arguments[0])`, copperTime)
}

// questionAlone: a shortcut of the icon asks of the job that is there.
func questionAlone(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.bring("ask=check")
	p.until(`document.querySelector('[name=ask]:checked')?.value === 'check'`)
	if got := p.value("area"); got != copperJob["area"] {
		t.Errorf("a question was asked, and the area became %q", got)
	}
}
