package pagetest

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"net"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"saltbite/build/browser"
	"saltbite/build/seal"
)

// visit is the page from a host, in a browser that may keep it.
type visit struct {
	page
	host *host
}

func newVisit(t *testing.T, s *browser.Session, files map[string][]byte) *visit {
	t.Helper()
	return &visit{page{t, s, nil}, newHost(t, files)}
}

// open opens the page, or a deep link into it, and waits until it answers.
func (v *visit) open(link string) {
	v.Helper()
	if err := v.Navigate(v.host.url() + link); err != nil {
		v.Fatal(err)
	}
	v.answersAnything()
}

// again loads the page again, as a press of the browser's own button does. The
// command for it goes past the worker in Firefox.
func (v *visit) again() {
	v.Helper()
	v.reload()
	v.loadsAnew()
}

// reload loads the page again and waits for nothing.
func (v *visit) reload() {
	v.Helper()
	// Later: a driver may wait in vain for the reply to a script whose page is gone.
	v.ask(`window.old = true; setTimeout(() => location.reload(), 50)`)
}

func (v *visit) loadsAnew() {
	v.Helper()
	v.until(`!window.old`)
	v.answersAnything()
}

func (v *visit) answersAnything() {
	v.Helper()
	v.until(`document.getElementById('sentence')?.textContent && !document.querySelector('.waiting')`)
}

// foot is what the page says of being kept, and of a new version.
const foot = `document.getElementById('on-device').textContent`

func (v *visit) ready() {
	v.Helper()
	v.until(foot + `.includes('Ready without internet')`)
}

// offered waits until a new version is offered.
func (v *visit) offered() {
	v.Helper()
	v.until(`document.querySelector('#on-device button').checkVisibility() && ` + foot + `.includes('new version')`)
}

// useNew takes the new version over.
func (v *visit) useNew() {
	v.Helper()
	v.ask(`window.old = true; document.querySelector('#on-device button').click()`)
	v.loadsAnew()
}

// settled waits until no install is under way.
func (v *visit) settled() {
	v.Helper()
	v.untilTrue(`navigator.serviceWorker.getRegistration().then((r) => !r?.installing)`)
}

// untilTrue waits for the promise of a truth.
func (v *visit) untilTrue(promise string) {
	v.Helper()
	for deadline := time.Now().Add(patience); v.ask("return "+promise) != true; time.Sleep(20 * time.Millisecond) {
		if time.Now().After(deadline) {
			v.Fatalf("not in %v: %s; the caches are %v", patience, promise, v.ask(`return caches.keys().then((names) => names.join(', '))`))
		}
	}
}

// seen is of which versions the parts of a page are, and what is kept.
type seen struct {
	Busy                   bool // a version was being installed meanwhile, and its cache not whole yet
	Content, Style, Script string
	Tags                   []string                     // in the addresses of all files that the page loaded
	Caches                 map[string]map[string]string // the hash of each body, by cache and address
}

// changes is whether something is still on its way: an install, or a cache that is of
// no version that is allowed or is not full yet. The caches are read one after the
// other, and an install may begin meanwhile.
func (s seen) changes(allowed map[string]version, files map[string]int) bool {
	if s.Busy {
		return true
	}
	for cache, bodies := range s.Caches {
		if _, known := allowed[cache]; !known || len(bodies) < files[cache] {
			return true
		}
	}
	return false
}

const looking = `return (async () => {
	const registration = await navigator.serviceWorker?.getRegistration()
	if (registration?.installing) return { busy: true }
	const caught = {}
	for (const cache of await caches.keys()) {
		caught[cache] = {}
		const store = await caches.open(cache)
		const requests = await store.keys()
		if (requests.length === 0 && !registration?.installing) {
			await caches.delete(cache) // it was removed meanwhile, and this look made it again
			return { busy: true }
		}
		for (const request of requests) {
			const body = await (await store.match(request)).arrayBuffer()
			const hash = Array.from(new Uint8Array(await crypto.subtle.digest('SHA-256', body)), (b) => b.toString(16).padStart(2, '0')).join('')
			caught[cache][request.url] = hash
		}
	}
	return {
		busy: Boolean(registration?.installing) || String(await caches.keys()) !== String(Object.keys(caught)),
		content: document.getElementById('on-device').dataset.content,
		style: getComputedStyle(document.documentElement).getPropertyValue('--made').trim(),
		script: document.documentElement.dataset.made ?? '',
		tags: performance.getEntriesByType('resource').map(({ name }) => new URL(name).searchParams.get('v')).filter(Boolean),
		caches: caught,
	}
})()`

// isWhole fails if the page is not all of one version, or a cache of the site
// holds anything but all files of its version: those that were published are all
// that may be kept.
func (v *visit) isWhole(want version, published ...version) {
	v.Helper()
	allowed, files := map[string]version{}, map[string]int{}
	for _, p := range append(published, want) {
		cache := "saltbite " + strings.ReplaceAll(shed, " ", "%20") + " " + p.content
		allowed[cache], files[cache] = p, len(p.kept())
	}
	got := seen{Busy: true}
	// A page hears a little late of an install that has begun.
	for deadline := time.Now().Add(patience); got.changes(allowed, files) && time.Now().Before(deadline); {
		got = seen{}
		if err := v.ExecuteTo(&got, looking); err != nil {
			v.Fatal(err)
		}
	}
	if got.Content != want.content || got.Style != want.mark || got.Script != want.mark {
		v.Errorf("of version %q the page shows content %s, style %q, script %q", want.mark, got.Content, got.Style, got.Script)
	}
	tags := map[string]bool{}
	for _, body := range want.files {
		tags[sealOf(body).Tag()] = true
	}
	loaded := map[string]bool{}
	for _, tag := range got.Tags {
		loaded[tag] = true
		if !tags[tag] {
			v.Errorf("the page of version %q loaded a file with the tag %s, which is none of its", want.mark, tag)
		}
	}
	// The worker reads the program, which head.js knows by its hash.
	for _, name := range []string{"head.js", "style.css", "page.js"} {
		if !loaded[sealOf(want.files[name]).Tag()] {
			v.Errorf("the page of version %q did not load its %s", want.mark, name)
		}
	}
	for cache, bodies := range got.Caches {
		p, known := allowed[cache]
		if !known {
			v.Errorf("a cache is named %q", cache)
			continue
		}
		v.holdsAll(cache, bodies, p)
	}
}

func (v *visit) holdsAll(cache string, bodies map[string]string, of version) {
	v.Helper()
	want := map[string]string{}
	for _, name := range of.kept() {
		want[v.host.url()+name] = sealOf(of.files[name]).Hash
	}
	if !maps.Equal(bodies, want) {
		v.Errorf("%s holds %v, not %v", cache, bodies, want)
	}
}

// jobs are worked on one after the other. Copper as in copperJob; twice as deep
// takes twice as long.
const twiceCopperTime = "5 h 2 min"

// works changes the job and back, and has it answered.
func (v *visit) works() {
	v.Helper()
	v.fill(map[string]string{"depth": "0.2"})
	v.answers(twiceCopperTime)
	v.fill(copperJob)
	v.answers(copperTime)
}

// kept fails if a field does not hold what was typed into it.
func (v *visit) kept() {
	v.Helper()
	for field, text := range copperJob {
		if got := v.value(field); got != text {
			v.Errorf("%s held %q and holds %q", field, text, got)
		}
	}
}

// rests waits for as long as the page takes to keep what was typed.
func (v *visit) rests() { time.Sleep(500 * time.Millisecond) }

// TestOffline opens the page once, stops the server, and uses the page.
func TestOffline(t *testing.T) {
	t.Parallel()
	a := asBuilt(t)
	inEngines(t, browser.Names, func(t *testing.T, s *browser.Session) {
		t.Run("without a server", func(t *testing.T) { withoutServer(t, s, a) })
		t.Run("requests", func(t *testing.T) { onlyItsOwnRequests(t, s, a) })
		t.Run("an update of one file", func(t *testing.T) { updateOfOneFile(t, s, a) })
		t.Run("checked once", func(t *testing.T) { checkedOnce(t, s, a) })
		t.Run("a tab left open", func(t *testing.T) { leftOpenAsks(t, s, a) })
		t.Run("other caches", func(t *testing.T) { othersCachesStay(t, s, a) })
		t.Run("a worker that was replaced", func(t *testing.T) { replacedWorker(t, s, a) })
		t.Run("withdrawn", func(t *testing.T) { withdrawn(t, s, a) })
		t.Run("a server half replaced", func(t *testing.T) { halfReplaced(t, s, a) })
		t.Run("first visit with a wrong file", func(t *testing.T) { wrongFirstVisit(t, s, a) })
		t.Run("can't keep what is typed", func(t *testing.T) { cantKeepTyped(t, s, a) })
		t.Run("plain http", func(t *testing.T) { overPlainHTTP(t, s, a) })
	})
}

func withoutServer(t *testing.T, s *browser.Session, a version) {
	v := newVisit(t, s, a.files)
	v.open("")
	v.ready()
	if hidden := v.ask(`return document.getElementById('state').hidden`); hidden != false {
		t.Error("by the page's name stands nothing of being ready")
	}
	v.host.stop()
	for _, link := range []string{"index.html", "?from=a%20message#depth"} {
		if err := v.Navigate("about:blank"); err != nil {
			t.Fatal(err)
		}
		v.open(link)
		v.isWhole(a)
	}
	v.fill(copperJob)
	v.answers(copperTime)
	v.works()
	v.ready()
	v.fill(map[string]string{"area": ""})
	v.brings("dropped", "stripes.png", "image/png", pngOf(t, stripes())) // which the second program reads
	v.measures("62.5 %")
	missing := v.say(`return fetch('saltbite.mjs').then(() => 'there', () => 'missing')`)
	if missing != "missing" {
		t.Error("a file that is not kept came although there is no server")
	}
	if err := v.Navigate(v.host.url() + "class.html"); err != nil { // which nobody has opened before
		t.Fatal(err)
	}
	v.until(begun)
	v.fill(weakSupply)
	v.pastes("[data-cell=name]", students())
	v.planned("Two loads in two rounds")
}

// onlyItsOwnRequests counts at the server what is asked for, and has the browser
// report what the page's policy forbids: all that goes to another origin.
func onlyItsOwnRequests(t *testing.T, s *browser.Session, a version) {
	v := newVisit(t, s, a.files)
	v.host.policy = policyOf(t, a.files["index.html"]) + "; report-uri /report"
	v.open("")
	v.ready()
	v.fill(copperJob)
	v.answers(copperTime)
	v.works()
	v.askedOnce(append(a.kept(), "sw.js"))
	v.click("#example")
	v.click("#clear")
	v.rests()
	if late := v.host.requests(); len(late) > 0 {
		t.Errorf("once it was kept the page asked for %q", late)
	}
	v.again()
	v.ready()
	if late := slices.DeleteFunc(v.host.requests(), func(a string) bool { return strings.HasSuffix(a, "/sw.js") }); len(late) > 0 {
		t.Errorf("the kept page asked for %q", late)
	}
	if said := v.host.reports(); len(said) > 0 {
		t.Errorf("the page's policy was violated: %q", said)
	}
	// What counts must be able to count: the page is made to ask elsewhere.
	other := newHost(t, a.files)
	v.ask(`return fetch(arguments[0]).then(() => 'came', () => 'failed')`, other.url())
	for deadline := time.Now().Add(patience); ; time.Sleep(20 * time.Millisecond) {
		if said := v.host.reports(); len(said) > 0 {
			break
		}
		if time.Now().After(deadline) {
			t.Fatal("a request to another origin was not reported")
		}
	}
	if got := other.requests(); len(got) > 0 {
		t.Errorf("a request reached another origin: %q", got)
	}
}

// askedOnce fails if the server was asked for anything but some files, or for one
// of them twice. WebKitGTK has no cache of its own while it is driven: there the
// page asks, and the worker again.
func (v *visit) askedOnce(files []string) {
	v.Helper()
	most := 1
	if v.Name == browser.WebKit {
		most = 2
	}
	asked := map[string]int{}
	for _, address := range v.host.requests() {
		name, _, _ := strings.Cut(strings.TrimPrefix(strings.ReplaceAll(address, "%20", " "), shed), "?")
		if name == "" {
			name = "index.html"
		}
		if asked[name]++; asked[name] > most || !slices.Contains(files, name) {
			v.Errorf("the server was asked for %s, %d times", address, asked[name])
		}
	}
	for _, name := range files {
		if asked[name] == 0 {
			v.Errorf("the server was not asked for %s", name)
		}
	}
}

// updateOfOneFile: an update fetches only what has changed: the script, and the
// page and the worker, which know it by its hash.
func updateOfOneFile(t *testing.T, s *browser.Session, a version) {
	v := newVisit(t, s, a.files)
	v.open("")
	v.ready()
	v.again()
	v.ready()
	b := version{mark: "", content: seal.Of([]byte(a.content + "one")).Tag(), files: maps.Clone(a.files)}
	seal.Replace(b.files, "page.js", append(bytes.Clone(a.files["page.js"]), "\n;"...))
	seal.Replace(b.files, "index.html", bytes.ReplaceAll(b.files["index.html"], []byte(a.content), []byte(b.content)))
	b.files["sw.js"] = bytes.ReplaceAll(b.files["sw.js"], []byte(a.content), []byte(b.content))
	if err := v.update(b); err != nil {
		t.Fatal(err)
	}
	v.offered()
	v.useNew()
	v.isWhole(b)
	asked := slices.DeleteFunc(v.host.requests(), func(address string) bool { return strings.HasSuffix(address, "/sw.js") })
	kinds := map[string]bool{}
	for _, address := range asked {
		name, _, _ := strings.Cut(address[strings.LastIndex(address, "/")+1:], "?")
		kinds[name] = true
	}
	delete(kinds, "") // the page, also as the browser has it
	if len(kinds) != 1 || !kinds["page.js"] || len(asked) > 3 {
		t.Errorf("an update of one file asked for %q", asked)
	}
}

// countingHashes has a worker count the bytes that it hashes.
const countingHashes = `{
	const own = SubtleCrypto.prototype.digest
	let hashed = 0
	SubtleCrypto.prototype.digest = function (kind, body) { hashed += body.byteLength; return own.call(this, kind, body) }
	addEventListener('message', ({ data, ports }) => { if (data === 'hashed') ports[0].postMessage(hashed) })
}
`

// checkedOnce: a version is hashed as it is stored. A later opening hashes only
// the small files that it is given, and never the program.
func checkedOnce(t *testing.T, s *browser.Session, a version) {
	counted := version{content: a.content, files: maps.Clone(a.files)}
	counted.files["sw.js"] = append([]byte(countingHashes), a.files["sw.js"]...)
	v := newVisit(t, s, counted.files)
	hashed := func() float64 {
		n, _ := v.ask(`return navigator.serviceWorker.getRegistration().then(({ active }) => new Promise((resolve) => {
			const { port1, port2 } = new MessageChannel()
			port1.onmessage = ({ data }) => resolve(data)
			active.postMessage('hashed', [port2])
		}))`).(float64)
		return n
	}
	v.open("")
	v.ready()
	all := 0
	for _, name := range a.kept() {
		all += len(a.files[name])
	}
	before := hashed()
	if before < float64(all) {
		t.Errorf("of a version of %d bytes only %.0f were hashed as it was stored", all, before)
	}
	v.again()
	v.ready()
	v.rests()
	if again := hashed() - before; again > float64(len(a.files["saltbite.wasm"]))/2 {
		t.Errorf("another opening hashed %.0f bytes", again)
	}
}

// leftOpenAsks: two hours after a first visit the tab asks for a new version.
func leftOpenAsks(t *testing.T, s *browser.Session, a version) {
	v := newVisit(t, s, a.files)
	v.open("")
	v.ready()
	v.settled()
	v.host.requests()
	v.ask(`const clock = window.Date, own = clock.now; clock.now = () => own() + 2 * 3600e3; document.dispatchEvent(new Event('visibilitychange'))`)
	for deadline := time.Now().Add(patience); ; time.Sleep(20 * time.Millisecond) {
		if slices.Contains(v.host.requests(), strings.ReplaceAll(shed, " ", "%20")+"sw.js") {
			return
		}
		if time.Now().After(deadline) {
			t.Fatal("a tab that is left open never asks for a new version")
		}
	}
}

// policyOf is the policy that the page states.
func policyOf(t *testing.T, page []byte) string {
	t.Helper()
	_, after, found := strings.Cut(string(page), `http-equiv="Content-Security-Policy" content="`)
	policy, _, closed := strings.Cut(after, `"`)
	if !found || !closed {
		t.Fatal("the page states no policy")
	}
	return policy
}

// othersCachesStay: an origin is shared. Caches of other pages stay, of this page
// in another folder too; older ones of its own go.
func othersCachesStay(t *testing.T, s *browser.Session, a version) {
	v := newVisit(t, s, a.files)
	if err := v.Navigate(v.host.url() + "icon.svg"); err != nil {
		t.Fatal(err)
	}
	own := "saltbite " + strings.ReplaceAll(shed, " ", "%20") + " "
	others := []string{"of another page", "saltbite /elsewhere/ 0123456789ab", "saltbite / 0123456789ab"}
	v.open("")
	v.ask(`return Promise.all(arguments[0].map((name) => caches.open(name)))`, append(others, own+"0123456789ab"))
	v.ready()
	if err := v.update(a.next("B")); err != nil {
		t.Fatal(err)
	}
	v.offered()
	v.useNew()
	v.ready()
	names := v.lines(`return caches.keys()`)
	for _, name := range others {
		if !slices.Contains(names, name) {
			t.Errorf("the cache %q was removed", name)
		}
	}
	if slices.Contains(names, own+"0123456789ab") || slices.Contains(names, own+a.content) {
		t.Errorf("an old cache of its own stayed: %q", names)
	}
}

// update publishes a version and has the page notice.
func (v *visit) update(next version) error {
	v.host.publish(next.files, nil)
	_, err := v.Execute(`return navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => true)`)
	return err
}

// withdrawn publishes gone.js as sw.js.
func withdrawn(t *testing.T, s *browser.Session, a version) {
	v := newVisit(t, s, a.files)
	v.open("")
	v.ready()
	v.fill(copperJob)
	v.answers(copperTime)
	without := maps.Clone(a.files)
	without["sw.js"] = a.files["offline/gone.js"]
	v.ask(`return caches.open('of another page').then(() => true)`)
	if err := v.update(version{files: without}); err != nil {
		t.Fatal(err)
	}
	v.untilTrue(`caches.keys().then((names) => names.join() === 'of another page')`)
	v.works() // the page that is open goes on
	v.rests()
	v.again()
	v.kept()
	v.untilTrue(`caches.keys().then((names) => names.join() === 'of another page')`)
	v.works()
}

// replacedWorker: one whose place another has taken touches no cache, whatever a page
// asked it just before. That happens too seldom to be waited for: the worker is run in
// a page, with a scope that says how it stands.
func replacedWorker(t *testing.T, s *browser.Session, a version) {
	p := &page{t, s, serve(t)}
	p.loadOnly("/blank")
	for state, touched := range map[string]bool{"activated": true, "redundant": false} {
		want := fmt.Sprintf(`check %[1]v {"content":"%[2]s","whole":false}; mend %[1]v {"again":false}`, touched, a.content)
		got := p.say(`const [code, state] = arguments, listeners = {}
			let touched = false
			const store = { keys: async () => [], match: async () => undefined, put: async () => {} }
			const self = { registration: { scope: location.origin + '/' }, serviceWorker: { state }, addEventListener: (kind, heard) => { listeners[kind] = heard } }
			const caches = { keys: async () => [], open: async () => { touched = true; return store } }
			new Function('self', 'caches', 'fetch', code)(self, caches, async () => { throw new TypeError('no server') })
			const ask = async (data) => {
				touched = false
				const reply = await new Promise((postMessage) => { listeners.message({ data, ports: [{ postMessage }], waitUntil: () => {} }) })
				return data + ' ' + touched + ' ' + JSON.stringify(reply)
			}
			return ask('check').then(async (said) => said + '; ' + await ask('mend'))`, string(a.files["sw.js"]), state)
		if got != want {
			t.Errorf("%s: %s, want %s", state, got, want)
		}
	}
}

// halfReplaced: on a first visit, files of two versions stand side by side on
// the server. The page refuses what is not its own, and says so plainly; once all
// files are there, it comes whole.
func halfReplaced(t *testing.T, s *browser.Session, a version) {
	b := a.next("B")
	for _, old := range [][]string{{"saltbite.wasm"}, {"head.js"}, {"style.css", "page.js"}} {
		mixed := maps.Clone(b.files)
		for _, name := range old {
			mixed[name] = a.files[name]
		}
		v := newVisit(t, s, mixed)
		if err := v.Navigate(v.host.url()); err != nil {
			t.Fatal(err)
		}
		v.rests()
		v.until(`/could not be loaded|needs JavaScript/.test(document.getElementById('sentence').textContent)`)
		v.host.publish(b.files, nil)
		v.open("")
		v.ready()
		v.isWhole(b)
	}
}

// wrongFirstVisit: what the page itself loads is right, and what is to be kept
// is not. It works, and does not say that it is ready.
func wrongFirstVisit(t *testing.T, s *browser.Session, a version) {
	v := newVisit(t, s, a.files)
	v.host.publish(a.files, map[string]fault{"icon-512.png": changesAByte})
	v.open("")
	v.until(foot + `.includes('Not ready') || ` + foot + `.includes('could not be kept')`)
	v.isWhole(a)
	v.fill(copperJob)
	v.answers(copperTime)
	if names := v.lines(`return caches.keys()`); len(names) > 0 {
		t.Errorf("of an install that failed there stay %q", names)
	}
	v.host.publish(a.files, nil)
	v.rests()
	v.again()
	v.ready()
	v.kept()
}

// cantKeepTyped: where nothing can be kept over a reload, the page with a job
// is not loaded again.
func cantKeepTyped(t *testing.T, s *browser.Session, a version) {
	v := newVisit(t, s, a.files)
	v.open("")
	v.ready()
	b := a.next("B")
	if err := v.update(b); err != nil {
		t.Fatal(err)
	}
	v.offered()
	v.ask(`Storage.prototype.setItem = Storage.prototype.getItem = () => { throw new DOMException('full', 'QuotaExceededError') }`)
	v.fill(copperJob)
	v.answers(copperTime)
	v.ask(`document.querySelector('#on-device button').click()`)
	v.until(foot + `.includes('can’t save what is typed')`)
	v.rests()
	v.isWhole(a, b)
	v.kept()
}

// overPlainHTTP: loopback is a secure context, so the page is opened by another
// address of this machine; without one, the browser is told that the address is not secure.
func overPlainHTTP(t *testing.T, s *browser.Session, a version) {
	v := &visit{page{t, s, nil}, &host{t: t, address: net.JoinHostPort(addressOfMachine(), "0"), files: maps.Clone(a.files)}}
	v.host.files["insecure.js"] = []byte(`if (isSecureContext) Object.defineProperty(window, 'isSecureContext', { value: false })`)
	v.host.files["index.html"] = bytes.Replace(a.files["index.html"], []byte("<head>"), []byte(`<head><script src="insecure.js"></script>`), 1)
	v.host.start()
	t.Cleanup(v.host.stop)
	v.open("")
	v.until(foot + `.includes('Opened over plain http')`)
	v.fill(copperJob)
	v.answers(copperTime)
	if said := v.host.requests(); slices.ContainsFunc(said, func(a string) bool { return strings.HasSuffix(a, "/sw.js") }) {
		t.Errorf("a page that can't be kept asked for sw.js: %q", said)
	}
}

// TestInstalledApart: two copies of the site on one origin are two applications,
// each known by its own folder (W3C Web Application Manifest, 1.14).
func TestInstalledApart(t *testing.T) {
	t.Parallel()
	a := asBuilt(t)
	s := browser.ForTest(t, browser.Chromium, browser.Options{})
	v := newVisit(t, s, a.files)
	v.open("")
	var app struct{ AppID string }
	if err := s.DevToolsTo(&app, "Page.getAppId", nil); err != nil {
		t.Fatal(err)
	}
	if app.AppID != v.host.url() {
		t.Errorf("the application in %s is known as %q", v.host.url(), app.AppID)
	}
}

func addressOfMachine() string {
	all, _ := net.InterfaceAddrs() // none is as good as an error
	for _, one := range all {
		if ip, ok := one.(*net.IPNet); ok && ip.IP.To4() != nil && !ip.IP.IsLoopback() {
			return ip.IP.String()
		}
	}
	return "127.0.0.1"
}

// TestOpenedAgain stops the server, ends the browser, and starts it again with a
// deep link: the page comes, and the job that was changed stands on it.
func TestOpenedAgain(t *testing.T) {
	t.Parallel()
	a := asBuilt(t)
	eachOf(t, browser.Names, func(t *testing.T, name string) {
		profile := t.TempDir()
		s, err := browser.Start(name, browser.Options{Profile: profile})
		if errors.Is(err, browser.ErrNotHere) {
			// WebKitGTK's driver keeps no profile: the nearest is another tab, with the server gone.
			anotherTab(t, browser.ForTest(t, name, browser.Options{}), a)
			return
		}
		if errors.Is(err, browser.ErrMissing) && os.Getenv("SALTBITE_SETUP") == "" {
			t.Skip(err)
		}
		if err != nil {
			t.Fatal(err)
		}
		v := withJob(t, s, a)
		v.host.stop()
		s.Close()
		removeLocks(profile)
		v.page.Session = browser.ForTest(t, name, browser.Options{Profile: profile})
		v.opensAlone(a)
	})
}

func anotherTab(t *testing.T, s *browser.Session, a version) {
	v := withJob(t, s, a)
	v.host.stop()
	if err := v.Navigate("about:blank"); err != nil {
		t.Fatal(err)
	}
	tab, err := v.NewTab()
	if err != nil {
		t.Fatal(err)
	}
	if err := v.SwitchTo(tab); err != nil {
		t.Fatal(err)
	}
	v.opensAlone(a)
}

// opensAlone opens a deep link with no server there, and finds the job.
func (v *visit) opensAlone(a version) {
	v.Helper()
	v.open("?from=a%20message#depth")
	v.isWhole(a)
	v.kept()
	v.answers(copperTime)
	v.works()
	v.ready()
}

// removeLocks: a browser that was ended by force leaves what says that it runs.
func removeLocks(profile string) {
	for _, name := range []string{"SingletonLock", "SingletonCookie", "SingletonSocket", "lock", ".parentlock", "MarionetteActivePort"} {
		os.Remove(filepath.Join(profile, name))
	}
}
