package pagetest

import (
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"saltbite/build/browser"
)

// copperBench is copperJob as attributes of the element.
const copperBench = `<saltbite-bench metal="copper" metaldensity="8.96" area="10" depth="0.1" density="30"%s><a href="/">the calculator</a></saltbite-bench>`

// hostPage is another site's page with the element on it. BENCH in it is replaced by
// the address of the site.
type hostPage struct {
	policy   string // its content security policy
	isolated bool   // it shuts itself off from others (HTML standard, 7.1.4)
	page     string
}

const fromBench = `<script src="BENCH/embed.js" defer></script>`

// hosts are the pages by name, each difficult in a different way. They write the
// answers that they receive into their own document.
var hosts = map[string]hostPage{
	"plain": {page: `<!doctype html><title>plain</title>` + harness + fromBench + fmt.Sprintf(copperBench, "")},
	"strict": {
		policy: "default-src 'none'; script-src 'nonce-n1'; frame-src BENCH; base-uri 'none'; require-trusted-types-for 'script'; trusted-types 'none'",
		page: `<!doctype html><title>strict</title><script nonce="n1" src="/harness.js"></script><script nonce="n1" src="BENCH/embed.js" defer></script>` +
			fmt.Sprintf(copperBench, "")},
	"base": {page: `<!doctype html><base href="http://elsewhere.invalid/deep/" target="_blank"><title>base</title>` +
		`<script src="HOST/harness.js"></script>` + fromBench + fmt.Sprintf(copperBench, "")},
	"quirks":    {page: `<title>quirks</title>` + harness + fromBench + fmt.Sprintf(copperBench, "")},
	"rtl":       {page: `<!doctype html><html dir="rtl"><title>rtl</title>` + harness + fromBench + fmt.Sprintf(copperBench, "")},
	"sandboxed": {policy: "sandbox allow-scripts", page: `<!doctype html><title>sandboxed</title>` + harness + fromBench + fmt.Sprintf(copperBench, "")},
	"module":    {page: `<!doctype html><title>module</title><script src="/not-embed.js"></script>` + harness + `<script type="module" src="BENCH/embed.js" data-saltbite></script>` + fmt.Sprintf(copperBench, "")},
	"unmarked":  {page: `<!doctype html><title>unmarked</title><script src="/not-embed.js"></script><script type="module" src="BENCH/embed.js"></script>` + fmt.Sprintf(copperBench, "")},
	"isolated":  {isolated: true, page: `<!doctype html><title>isolated</title>` + harness + `<script src="BENCH/host/settings/embed.js" defer></script>` + fmt.Sprintf(copperBench, "")},
	"early": {page: `<!doctype html><title>early</title>` + harness + `<saltbite-bench></saltbite-bench><script>
		document.querySelector('saltbite-bench').fields = { metal: 'copper', metalDensity: 8.96, area: 10, depth: '0.1', density: '30' }</script>` + fromBench},
	"altered":   {page: `<!doctype html><title>altered</title><script src="/altering.js"></script>` + harness + fromBench + fmt.Sprintf(copperBench, "")},
	"clobbered": {page: `<!doctype html><title>clobbered</title>` + harness + fromBench + `<form name="currentScript"></form><img name="customElements" alt="">` + fmt.Sprintf(copperBench, "")},
	"around":    {page: `<!doctype html><title>around</title><iframe title="page" src="/altered" width="900" height="900"></iframe>`},
	"two":       {page: `<!doctype html><title>two</title>` + harness + fromBench + `<script src="OTHER/embed.js" defer></script>` + fmt.Sprintf(copperBench, "") + fmt.Sprintf(copperBench, "")},
	"ten":       {page: `<!doctype html><title>ten</title>` + harness + fromBench + strings.Repeat(fmt.Sprintf(copperBench, ` show="bite"`), 10)},
	"gone": {page: `<!doctype html><title>gone</title>` + harness + `<script>{ const wait = setTimeout; setTimeout = (work, time) => wait(work, time === 30000 ? 300 : time) }</script>` +
		`<script src="HOST/lonely/embed.js" defer></script>` + fmt.Sprintf(copperBench, "")},
	"scripts": {page: `<!doctype html><title>scripts</title><script src="/altering.js"></script><output></output><script type="module">
		const { open } = await import('BENCH/saltbite.mjs')
		const bench = await open()
		const { sentence } = await bench.answer({ metal: 'copper', metalDensity: '8.96', area: '10', depth: '0.1', density: '30' })
		document.documentElement.dataset.sentence = sentence</script>`},
	"around scripts": {page: `<!doctype html><title>around</title><iframe title="page" src="/scripts"></iframe>`},
}

const harness = `<script src="/harness.js"></script>`

// hearing writes the answers of the elements into the page.
const hearing = `document.addEventListener('saltbite:answer', ({ target, detail }) => {
	target.dataset.sentence = detail.sentence
	document.documentElement.dataset.sentence = detail.sentence
})
for (const kind of ['ready', 'error']) document.addEventListener('saltbite:' + kind, ({ detail }) => {
	document.documentElement.dataset[kind] = String(detail)
})`

// altering changes the built-in objects as old or careless libraries do.
const altering = `
Object.prototype.extra = function () {}
Object.prototype.ended = Object.prototype.reply = Object.prototype.height = Object.prototype.hello = Object.prototype.module = 1
Array.prototype.extra = function () {}
Array.prototype.toJSON = function () { return '[' + this.join() + ']' }
String.prototype.toJSON = function () { return 'text' }
{
	const parse = JSON.parse
	JSON.parse = function (text, revive) { return parse.call(this, text, revive ?? ((key, value) => value)) }
	const listen = EventTarget.prototype.addEventListener
	EventTarget.prototype.addEventListener = function (kind, work, options) {
		return listen.call(this, kind, typeof work === 'function' ? function (event) { return work.call(this, event) } : work, options)
	}
	const Own = Promise
	window.Promise = class Promise extends Own { then(...work) { return super.then(...work) } }
}`

// hostServer serves the pages of other people, from another origin than the site.
func hostServer(t *testing.T, bench, other *server) *httptest.Server {
	t.Helper()
	var s *httptest.Server
	s = httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		addresses := strings.NewReplacer("BENCH", bench.URL, "OTHER", other.URL, "HOST", s.URL)
		w.Header().Set("Cache-Control", "no-store")
		switch name := strings.TrimPrefix(r.URL.Path, "/"); name {
		case "harness.js":
			bench.send(w, ".js", hearing)
		case "altering.js":
			bench.send(w, ".js", altering)
		case "not-embed.js":
			bench.send(w, ".js", "")
		case "lonely/embed.js":
			http.ServeFile(w, r, bench.dist+"/embed.js")
		default:
			page, found := hosts[name]
			if !found {
				http.NotFound(w, r)
				return
			}
			if page.isolated {
				w.Header().Set("Cross-Origin-Opener-Policy", "same-origin")
				w.Header().Set("Cross-Origin-Embedder-Policy", "require-corp")
			}
			if page.policy != "" {
				w.Header().Set("Content-Security-Policy", addresses.Replace(page.policy))
			}
			w.Header().Set("Content-Type", types[".html"])
			io.WriteString(w, addresses.Replace(page.page))
		}
	}))
	t.Cleanup(s.Close)
	return s
}

// guest is a page with the element on it, in a browser.
type guest struct {
	*page
	hosts *httptest.Server
	other *server // a second copy of the site
}

// visit opens another site's page.
func (g *guest) visit(name string) {
	g.Helper()
	if err := g.Navigate(g.hosts.URL + "/" + name); err != nil {
		g.Fatal(err)
	}
}

// hears waits until the page has received an answer with these words: twice as long
// as elsewhere, because the program loads in a page within a page.
func (g *guest) hears(words string) {
	g.Helper()
	const said = `(document.querySelector('iframe')?.contentDocument ?? document).documentElement.dataset.sentence`
	if err := g.Wait(2*patience, said+`?.includes(arguments[0])`, words); err != nil {
		g.Fatalf("%v; it heard %q", err, g.say(`return `+said))
	}
}

// inside does something in the element's frame.
func (g *guest) inside(work func()) {
	g.Helper()
	if err := g.Enter(`return document.querySelector('saltbite-bench').shadowRoot.querySelector('iframe')`); err != nil {
		g.Fatal(err)
	}
	work()
	if err := g.Leave(); err != nil {
		g.Fatal(err)
	}
}

// set sets an attribute of the element.
func (g *guest) set(name, text string) {
	g.Helper()
	g.ask(`document.querySelector('saltbite-bench').setAttribute(arguments[0], arguments[1])`, name, text)
}

var embedChecks = []struct {
	name string
	hold func(*testing.T, *guest)
}{
	{"attributes and events", attributesAndEvents},
	{"what was typed", whatWasTypedStays},
	{"fields set early", fieldsSetEarly},
	{"put back far away", putBackFarAway},
	{"height", heightFollows},
	{"locked fields", lockedFieldsStay},
	{"parts", partsThatAreShown},
	{"colours", coloursThatCanBeRead},
	{"colours after the card", coloursAfterTheCard},
	{"hostile messages", hostileMessages},
	{"hostile attributes", hostileAttributes},
	{"hostile pages", hostilePages},
	{"unmarked module", unmarkedModule},
	{"two versions", twoVersions},
	{"ten", tenOnOnePage},
	{"nothing at its address", nothingAtItsAddress},
	{"the school's page", schoolsPage},
	{"no violation", noViolationInTheFrame},
}

// TestEmbed puts the element on other people's pages.
func TestEmbed(t *testing.T) {
	t.Parallel()
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		bench, other := serve(t), serve(t)
		pages := hostServer(t, bench, other)
		for _, c := range embedChecks {
			t.Run(c.name, func(t *testing.T) {
				if err := session.Leave(); err != nil {
					t.Fatal(err)
				}
				c.hold(t, &guest{&page{t, session, bench}, pages, other})
			})
		}
	})
}

func attributesAndEvents(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	g.set("depth", "0.2 mm")
	g.hears("5 h 2 min") // twice as deep: twice 151.2 min
	got := g.say(`const b = document.querySelector('saltbite-bench'); return b.answer().then(({ answers }) => b.fields.depth + ', ' + answers.time.text)`)
	if got != "0.2 mm, 5 h 2 min" {
		t.Errorf("a script is told %s", got)
	}
	got = g.say(`const b = document.querySelector('saltbite-bench')
		b.fields = { metal: 'copper', metalDensity: 8.96, area: '10', depth: '0.1', current: '0.3 A', time: undefined }
		return b.answer().then(({ answers }) => [answers.time.text, b.fields.current, b.fields.density].join())`)
	if got != copperTime+",0.3 A," {
		t.Errorf("after a whole job was given a script is told %s", got)
	}
	g.inside(func() { g.fill(map[string]string{"depth": "0.2"}) }) // as a visitor types
	g.hears("5 h 2 min")
	if got := g.say(`return document.querySelector('saltbite-bench').fields.depth`); got != "0.2 mm" {
		t.Errorf("a visitor typed 0.2 as depth, and the script is told %q", got)
	}
	g.ask(`const b = document.querySelector('saltbite-bench'); delete document.documentElement.dataset.sentence; document.body.prepend(b)`)
	g.hears("5 h 2 min") // a moved frame is loaded again, with what was typed
}

// whatWasTypedStays: a change of the look, or of the place in the document, leaves
// what a visitor typed as it was, so that the next key goes on from there.
func whatWasTypedStays(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	if g.say(`return document.documentElement.dataset.ready`) != "null" {
		t.Error("the page has heard of no frame that is ready")
	}
	typed := func() string {
		return g.say(`const e = document.getElementById('depth'); return e.value + ' ' + document.querySelector('[data-unit=depth]').value`)
	}
	nextKey := func() { // as a key does; a driver's own keys don't reach every frame
		g.ask(`const e = document.getElementById('depth')
			e.setRangeText('0', e.value.length, e.value.length, 'end')
			e.dispatchEvent(new InputEvent('input', { bubbles: true, data: '0', inputType: 'insertText' }))`)
	}
	g.inside(func() { g.fill(map[string]string{"depth": "6"}) })
	g.ask(`document.querySelector('saltbite-bench').style.setProperty('--saltbite-paper', '#101418')`)
	if err := g.Dark(true); err == nil { // the system turns dark, which only one engine can be told while it runs
		defer g.Dark(false)
	} else {
		g.set("theme", "dark")
	}
	g.inside(func() {
		g.until(`getComputedStyle(document.documentElement).getPropertyValue('--paper').trim() === '#101418'`)
		if got := typed(); got != "6 mm" {
			t.Errorf("after a change of the look there stands %q", got)
		}
		nextKey()
		if got := typed(); got != "60 mm" {
			t.Errorf("the key after it makes %q", got)
		}
	})
	g.until(`document.querySelector('saltbite-bench').fields.depth === '60 mm'`)
	g.ask(`const b = document.querySelector('saltbite-bench'); delete document.documentElement.dataset.sentence; document.body.append(document.createElement('p'), b)`)
	g.hears("") // loaded again
	g.inside(func() {
		g.until(`document.getElementById('depth').value !== ''`)
		if got := typed(); got != "60 mm" {
			t.Errorf("after a move in the document there stands %q", got)
		}
		nextKey()
		if got := typed(); got != "600 mm" {
			t.Errorf("the key after it makes %q", got)
		}
	})
}

func fieldsSetEarly(t *testing.T, g *guest) {
	g.visit("early")
	g.hears(copperTime)
	got := g.say(`const b = document.querySelector('saltbite-bench')
		b.fields = { ...b.fields, depth: '0.2 mm' }
		return b.answer().then(({ answers }) => answers.time.text)`)
	if got != "5 h 2 min" {
		t.Errorf("fields that are set later give %q", got)
	}
}

func putBackFarAway(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	got := g.ask(`const b = document.querySelector('saltbite-bench'), far = document.createElement('div')
		far.style.height = '20000px'
		const before = b.clientHeight
		b.remove()
		document.body.append(far, b)
		return new Promise((resolve) => setTimeout(() => resolve([before, b.clientHeight, b.shadowRoot.querySelectorAll('iframe').length]), 300))`)
	sizes, _ := got.([]any)
	if len(sizes) != 3 || sizes[0] != sizes[1] || sizes[2] != 0.0 {
		t.Errorf("its height before, then, and its frames then are %v", got)
	}
}

func heightFollows(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	fits := func() float64 {
		var tall float64
		g.inside(func() {
			g.until(`Math.abs(document.body.getBoundingClientRect().height - innerHeight) < 2`)
			if over := g.ask(`const d = document.scrollingElement; return d.scrollHeight > d.clientHeight || d.scrollWidth > d.clientWidth`); over == true {
				t.Error("the frame scrolls within")
			}
			tall, _ = g.ask(`return innerHeight`).(float64)
		})
		return tall
	}
	before := fits()
	g.inside(func() { g.unfold("volts") })
	if err := g.Wait(patience, `document.querySelector('saltbite-bench').clientHeight > arguments[0] + 100`, before); err != nil {
		t.Error(err)
	}
	fits()
	for _, wide := range []string{"350px", "800px", "1200px"} {
		g.ask(`document.querySelector('saltbite-bench').style.width = arguments[0]`, wide)
		fits()
		g.inside(func() {
			hidden := g.say(`return [...document.querySelectorAll('.say, .figures, .answer, .form')].filter((e) => e.scrollHeight > e.clientHeight + 1).map((e) => e.className).join()`)
			if hidden != "" {
				t.Errorf("where the element is %s wide one must scroll in %s", wide, hidden)
			}
		})
	}
	g.ask(`document.querySelector('saltbite-bench').style.width = '320px'`)
	g.inside(func() {
		g.fill(map[string]string{"metal": "leaded brass", "salt": "common salt", "open": "90", "depth": "0.9"})
		g.until(`document.querySelectorAll('#cautions li').length > 1`)
		g.settle()
		if clipped := g.say(clippedText); clipped != "" {
			t.Errorf("in a frame of 320 px is clipped: %s", clipped)
		}
	})
	fits()
	g.inside(func() {
		// A dialog opens where the hand is, not in the middle of a frame that is taller than the screen.
		g.ask(`document.querySelector('.foot [data-origin=all]').click()`)
		away := g.ask(`const d = document.getElementById('sources').getBoundingClientRect(), at = document.querySelector('.foot [data-origin=all]').getBoundingClientRect()
			return d.top > at.top || d.bottom < at.top - 50 || d.bottom > innerHeight`)
		if away != false {
			t.Error("a dialog opens far from the hand")
		}
	})
}

// clippedText names what is shown and reaches out of the window at its sides, or has
// more text than its box lets be seen; what is for readers of screens alone is no text
// here, nor the one line of a folded part or a caution, which shows the rest when it opens.
const clippedText = `return [...document.querySelectorAll('body *')].filter((e) => {
	if (!e.checkVisibility({ visibilityProperty: true }) || e.closest('.unseen, svg, details:not([open]) > summary, .gist')) return false
	if (![...e.childNodes].some((n) => n.nodeType === 3 && n.textContent.trim())) return false
	const r = e.getBoundingClientRect(), style = getComputedStyle(e)
	return r.width > 1 && (r.left < -0.5 || r.right > document.documentElement.clientWidth + 0.5 || (style.overflowX !== 'visible' && e.scrollWidth > e.clientWidth + 1))
}).map((e) => e.localName + '.' + e.className + ' ' + e.textContent.trim().slice(0, 30)).join('; ')`

func lockedFieldsStay(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	g.set("lock", "metal, DEPTH units position")
	g.set("depth", "0.2") // a script may change what a visitor can't
	g.hears("5 h 2 min")
	g.inside(func() {
		g.until(`document.getElementById('depth').readOnly && document.getElementById('metal').readOnly`)
		if free := g.ask(`return document.getElementById('area').readOnly || document.getElementById('depth').disabled`); free != false {
			t.Error("a field that is not locked is, or one that is can't be read")
		}
		press := func(field, keys string) {
			g.ask(`document.getElementById(arguments[0]).focus()`, field)
			if err := g.Press(keys); err != nil {
				t.Fatal(err)
			}
		}
		press("depth", "9")
		press("metal", browser.ArrowDown+browser.ArrowDown+browser.Enter)
		press("area", browser.Backspace+browser.Backspace+"20")
		g.until(`document.getElementById('sentence').textContent.includes('0.600 A')`) // 30 mA/cm2 on 20 cm2
	})
	g.ask(`scrollTo(0, 0)`) // which no frame can do, nor one engine's driver
	g.inside(func() {
		g.click("#clear")
		g.until(`document.getElementById('area').value === ''`)
		if got := g.value("depth") + g.value("metal"); got != "0.2copper" {
			t.Errorf("what is locked became %q", got)
		}
		if said := g.say(`return document.querySelector('#depth-says').textContent`); !strings.Contains(said, "Set by this page") {
			t.Errorf("the help of a locked field is %q", said)
		}
		loose := g.ask(`return document.querySelector('[name=units][value=us]').disabled && [...document.getElementById('position').options].every((o) => o.disabled !== o.selected)`)
		if loose != true {
			t.Error("a locked choice can be changed")
		}
	})
	g.set("lock", "")
	g.inside(func() { g.until(`!document.getElementById('depth').readOnly && !document.querySelector('.set')`) })
}

func partsThatAreShown(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	g.set("volts", "3 V")
	g.set("show", "bite nosuchpart")
	shown := `[...document.querySelectorAll('.form [data-part]')].filter((e) => e.offsetHeight > 0).map((e) => e.dataset.part).join()`
	g.inside(func() {
		g.until(shown + ` === 'bite'`)
		g.until(`document.getElementById('volts').value === '3 V'`)
		if safety := g.ask(`return document.querySelector('.safety').offsetHeight > 0`); safety != true {
			t.Error("the notes on safety are hidden")
		}
		g.until(`document.querySelector('#figures [data-part=bite]:not([hidden])') && document.getElementById('cut').offsetHeight > 0`)
		g.until(`document.querySelectorAll('#figures [data-part=supply]:not([hidden]), #figures [data-part=metal]:not([hidden])').length === 0`)
	})
	g.set("show", "bath")
	g.inside(func() {
		g.until(shown + ` === 'bath'`)
		g.until(`document.getElementById('cut').offsetHeight === 0 && !document.querySelector('#figures [data-part=bite]:not([hidden])')`)
	})
	g.set("show", "nosuchpart")
	g.inside(func() { g.until(shown + `.startsWith('metal,')`) })
}

func coloursThatCanBeRead(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	wear := func(colours string) {
		g.ask(`const b = document.querySelector('saltbite-bench'); b.style.cssText = arguments[0]; b.setAttribute('theme', b.getAttribute('theme') === 'light' ? 'LIGHT' : 'light')`, colours)
	}
	worn := `getComputedStyle(document.documentElement).getPropertyValue('--paper').trim() + getComputedStyle(document.body).backgroundColor + getComputedStyle(document.body).fontFamily`
	wear("--saltbite-paper: #eef3f8; --saltbite-ink: rgb(16 24 40); --saltbite-font: Courier, monospace")
	g.inside(func() {
		g.until(worn + `.startsWith('#eef3f8') && getComputedStyle(document.body).color === 'rgb(16, 24, 40)' && ` + worn + `.includes('Courier')`)
	})
	for _, hard := range []string{
		"--saltbite-ink: #888888",                              // 3.5:1 on white: computed by the formula of WCAG 2.2
		"--saltbite-paper: #101010",                            // the light theme's own ink on it
		"--saltbite-accent: #d0d0d0",                           // can't be read
		"--saltbite-ink: #000; --saltbite-paper: #8080a0",      // not 7:1
		"--saltbite-paper: rgb(255 255 255 / 0)",               // lets through what is behind
		"--saltbite-paper: red;}*{display:none}",               // no colour
		"--saltbite-font: x;}*{display:none}; --saltbite-ink:", // no font
	} {
		wear("--saltbite-paper: #eef3f8")
		g.inside(func() { g.until(worn + `.startsWith('#eef3f8')`) })
		wear(hard)
		g.inside(func() { g.until(worn + `.startsWith('#f7f3ea')`) })
	}
}

// coloursAfterTheCard: the page keeps the colours of the page around it after the
// card was shown.
func coloursAfterTheCard(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	g.ask(`const b = document.querySelector('saltbite-bench'); b.style.cssText = '--saltbite-paper: #eef3f8; --saltbite-font: Courier, monospace'; b.setAttribute('theme', 'light')`)
	worn := `getComputedStyle(document.documentElement).getPropertyValue('--paper').trim() + getComputedStyle(document.body).fontFamily`
	g.inside(func() {
		g.until(worn + `.startsWith('#eef3f8Courier')`)
		g.click("#card")
		g.until(`document.querySelector('#preview svg')`)
		if got := g.say(`return ` + worn); !strings.HasPrefix(got, "#eef3f8Courier") {
			t.Errorf("while the card is open the page wears %s", got)
		}
		g.click("#onpaper [data-close]")
		g.until(`!document.getElementById('onpaper').open && !document.documentElement.matches('.prints-leaf')`)
		if got := g.say(`return ` + worn); !strings.HasPrefix(got, "#eef3f8Courier") {
			t.Errorf("after the card the page wears %s", got)
		}
	})
}

func hostileMessages(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	// From the page around it, which may send anything, in wrong shapes.
	g.ask(`const frame = document.querySelector('saltbite-bench').shadowRoot.querySelector('iframe').contentWindow
		const deep = []; { let at = deep; for (let n = 0; n < 500; n++) at.push(at = []) }
		const fields = JSON.parse('{"__proto__": {"depth": "7"}, "constructor": "x", "metal": {"toString": 1}, "area": ["1"], "nosuchfield": "1"}')
		for (const message of [null, 7, 'saltbite', [], deep, {}, { saltbite: 1 }, { saltbite: 2, told: 2, tell: { fields: { depth: '9' } } },
			{ saltbite: 1, told: 'x', tell: { fields: { depth: '9' } } }, { saltbite: 1, told: 1, tell: null }, { saltbite: 1, told: 1, tell: 'x' },
			{ saltbite: 1, told: 1, tell: { fields, lock: 5, show: {}, theme: ['dark'], look: 'x', whole: 'yes' } },
			{ saltbite: 1, told: 1, tell: { fields: { depth: '9'.repeat(1e6) }, lock: 'metal '.repeat(1e5), look: { paper: '#'.repeat(1e6) } } },
		]) frame.postMessage(message, '*')`)
	g.set("depth", "0.2")
	g.hears("5 h 2 min")
	g.inside(func() {
		// From a window that is not the one around it: its own.
		g.ask(`postMessage({ saltbite: 1, told: 99, tell: { whole: true, fields: { depth: '9 mm' } } }, '*')`)
		g.until(`new Promise((resolve) => setTimeout(resolve, 100, true))`)
		if got := g.value("depth"); got != "0.2" {
			t.Errorf("a message made the depth %q", got)
		}
	})
	// To the page around it, from a window that is not the element's frame.
	g.ask(`const reply = { sentence: 'forged' }, frame = document.createElement('iframe')
		document.body.append(frame)
		for (let told = 0; told < 50; told++) {
			const message = { saltbite: 1, told, fields: {}, reply, height: 19999, hello: true }
			postMessage(message, '*')
			frame.contentWindow.eval('parent.postMessage(' + JSON.stringify(message) + ', "*")')
		}
		return new Promise((resolve) => setTimeout(() => { frame.remove(); resolve() }, 200))`)
	// And from the frame, in wrong shapes.
	g.inside(func() {
		g.ask(`for (const message of [null, 7, {}, { saltbite: 1, height: 1e9 }, { saltbite: 1, height: -1 }, { saltbite: 1, height: NaN }, { saltbite: 1, height: '900' },
			{ saltbite: 1, fields: 5, reply: 5, told: 2 }, { saltbite: 1, fields: {}, reply: { sentence: 5 }, told: 2 }, { saltbite: 1, reply: { sentence: 'forged' } }]) parent.postMessage(message, '*')`)
	})
	g.set("depth", "0.1")
	g.hears(copperTime)
	tall := g.ask(`return document.querySelector('saltbite-bench').clientHeight`)
	if height, _ := tall.(float64); height > 19000 || height < 500 {
		t.Errorf("a message made the element %v pixels tall", tall)
	}
}

func hostileAttributes(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	const injected = `"><img src=x onerror="document.body.remove()"><script>document.body.remove()</script>`
	g.set("depth", injected)
	g.set("position", "upside down")
	g.set("units", "cubits")
	g.set("theme", injected)
	g.set("lock", "constructor __proto__ toString "+injected)
	g.set("show", "constructor __proto__ "+injected)
	g.set("metal", strings.Repeat("x", 100_000)) // too long to be a name: not taken
	g.inside(func() {
		g.until(`document.getElementById('depth').ariaInvalid === 'true'`)
		if got := g.value("depth"); got != injected {
			t.Errorf("the depth is %q", got)
		}
		if got := g.value("metal"); len(got) > 2000 {
			t.Errorf("the metal has %d characters", len(got))
		}
		if got := g.say(`return document.getElementById('position').selectedOptions[0]?.label + document.querySelector('[name=units]:checked').value`); got != "hangingmetric" {
			t.Errorf("choices that there are not became %q", got)
		}
	})
	g.set("depth", "0.1")
	g.hears(copperTime)
	g.ask(`for (const name of [...document.querySelector('saltbite-bench').attributes].map(({ name }) => name)) document.querySelector('saltbite-bench').removeAttribute(name)`)
	g.inside(func() { g.until(`document.getElementById('depth').value === ''`) })
}

func hostilePages(t *testing.T, g *guest) {
	for _, name := range []string{"strict", "base", "quirks", "rtl", "sandboxed", "module", "clobbered", "isolated", "around", "around scripts"} {
		t.Run(name, func(t *testing.T) {
			(&guest{&page{t, g.Session, g.server}, g.hosts, g.other}).answersOn(name)
		})
	}
}

func (g *guest) answersOn(name string) {
	g.visit(strings.ReplaceAll(name, " ", "%20"))
	g.hears(copperTime)
	if hosts[name].isolated && g.ask(`return crossOriginIsolated`) != true {
		g.Error("the page is not shut off from others")
	}
}

// A module that is not marked does not guess which script it is.
func unmarkedModule(t *testing.T, g *guest) {
	g.visit("unmarked")
	g.until(`document.readyState === 'complete'`)
	if defined := g.ask(`return customElements.get('saltbite-bench') !== undefined`); defined != false {
		t.Error("an unmarked module defines the element")
	}
}

func twoVersions(t *testing.T, g *guest) {
	g.server.requests()
	g.other.requests()
	g.visit("two")
	g.until(`[...document.querySelectorAll('saltbite-bench')].every(({ dataset }) => dataset.sentence?.includes(arguments[0]))`, copperTime)
	if asked := strings.Join(g.other.requests(), " "); asked != "/embed.js" {
		t.Errorf("of the copy that came second was asked %s", asked)
	}
	if asked := strings.Join(g.server.requests(), " "); !strings.Contains(asked, "/embed.html") {
		t.Errorf("of the copy that came first was asked %s", asked)
	}
}

func tenOnOnePage(t *testing.T, g *guest) {
	g.visit("ten")
	g.hears(copperTime)
	started := g.ask(`return [...document.querySelectorAll('saltbite-bench')].filter((b) => b.shadowRoot.querySelector('iframe')).length`)
	if n, _ := started.(float64); n < 1 || n > 5 {
		t.Errorf("of ten that are far apart %v started", started)
	}
	for n := range 10 {
		g.ask(`document.querySelectorAll('saltbite-bench')[arguments[0]].scrollIntoView()`, n)
		g.until(`document.querySelectorAll('saltbite-bench')[arguments[0]].dataset.sentence?.includes(arguments[1])`, n, copperTime)
	}
}

func nothingAtItsAddress(t *testing.T, g *guest) {
	g.visit("gone")
	g.ask(`const told = document.documentElement.dataset
		document.querySelector('saltbite-bench').answer().then(() => { told.answer = 'there' }, ({ name }) => { told.answer = name })`)
	g.until(`document.documentElement.dataset.answer === 'TimeoutError'`)
	g.until(`document.documentElement.dataset.error?.endsWith('/lonely/embed.html has not come in 30 s')`)
	g.until(`document.querySelector('saltbite-bench a').checkVisibility() && !document.querySelector('saltbite-bench').shadowRoot.querySelector('iframe').checkVisibility()`)
}

func schoolsPage(t *testing.T, g *guest) {
	g.server.requests()
	if err := g.Navigate(g.server.URL + "/embed/school.html"); err != nil {
		t.Fatal(err)
	}
	// 33.6 cm2 at 25 mA/cm2.
	g.until(`document.getElementById('slip').textContent.includes('0.840 A')`)
	g.inside(func() {
		locked := g.say(`return [...document.querySelectorAll('.locked')].map((row) => row.dataset.field).join()`)
		if !strings.Contains(locked, "salt,strength,volume") || strings.Contains(locked, "width") {
			t.Errorf("on the school's page are locked: %s", locked)
		}
	})
	for _, violation := range g.violations(axe(t)) {
		t.Error(violation)
	}
	if err := g.Navigate(g.server.URL + "/embed/"); err != nil {
		t.Fatal(err)
	}
	g.ask(`return document.querySelector('saltbite-bench').answer()`)
	for _, violation := range g.violations(axe(t)) {
		t.Error(violation)
	}
}

func noViolationInTheFrame(t *testing.T, g *guest) {
	g.visit("plain")
	g.hears(copperTime)
	g.set("lock", "metal position depth units find time")
	g.set("volume", "1,234")
	g.inside(func() {
		g.until(`document.querySelector('.locked')`)
		g.unfold("volume")
		g.unfold("position")
		for _, violation := range g.violations(axe(t)) {
			t.Error(violation)
		}
	})
}

// TestElementTypes holds a page's script to the types of the element.
func TestElementTypes(t *testing.T) {
	dist := finished(t)
	dir := t.TempDir()
	for _, name := range []string{"embed.d.ts", "saltbite.d.mts"} {
		body, err := os.ReadFile(filepath.Join(dist, name))
		if err != nil {
			t.Fatal(err)
		}
		write(t, filepath.Join(dir, name), string(body))
	}
	right := `/// <reference path="embed.d.ts" />
const bench = document.querySelector('saltbite-bench')!
bench.fields = { metal: 'copper', depth: 0.2 }
const depth: string = bench.fields.depth
bench.addEventListener('saltbite:answer', ({ detail }) => { const text: string | undefined = detail.answers.time?.text; detail.fields.depth.trim(); text })
bench.addEventListener('saltbite:error', ({ detail }) => detail.trim())
bench.addEventListener('click', () => {})
const minutes: number | undefined = (await bench.answer()).answers.time?.value
export { depth, minutes }
`
	holdTypes(t, dir, right, map[string]string{"depth: 0.2": "depht: 0.2", "answers.time": "answers.tiem", "bench.answer()": "bench.anwser()", "detail.trim()": "detail.fields"})
}
