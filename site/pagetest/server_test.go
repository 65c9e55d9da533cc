package pagetest

import (
	"bytes"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"saltbite/build/browser"
	"saltbite/testdata"
)

// server serves the finished site as any plain host would, and keeps a log of
// what was asked for. It also serves pages of its own, each in which the site is
// used in another way. It publishes gone.js as sw.js, so that every page is loaded
// from here each time: offline use is tested with a host (host_test.go).
//
//	/            the page; ?with=a,b loads the scripts a and b before its own
//	/blank       a page with nothing on it
//	/frame       the page in a frame as wide as ?width= says
//	/scripts     a page that opens saltbite.mjs, from ?from= or from here, and puts
//	             every vector's reply into its text, or of ?most= of them
//	/pictures    a page that puts pictures to saltbite.mjs; ?with= as above
//	/octet/      the site from a host that has no type for .wasm
//	/host/NAME/  the site from one of the hosts, in any folder there
type server struct {
	*httptest.Server
	dist   string
	policy string // of the page that asks, if it has one

	mu     sync.Mutex
	log    []string
	clears bool // the next page forgets what is kept, before its own scripts
}

func serve(t *testing.T) *server {
	t.Helper()
	s := &server{dist: finished(t)}
	s.Server = httptest.NewServer(s)
	t.Cleanup(s.Server.Close)
	return s
}

var types = map[string]string{
	".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".wasm": "application/wasm",
	".js": "text/javascript; charset=utf-8", ".mjs": "text/javascript; charset=utf-8",
	".svg": "image/svg+xml", ".png": "image/png", ".webmanifest": "application/manifest+json",
}

func (s *server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	s.mu.Lock()
	s.log = append(s.log, r.URL.RequestURI())
	s.mu.Unlock()
	w.Header().Set("Access-Control-Allow-Origin", "*") // other people's pages import saltbite.mjs from here
	w.Header().Set("Cache-Control", "no-store")
	switch name := strings.TrimPrefix(r.URL.Path, "/"); {
	case name == "blank":
		s.send(w, ".html", `<!doctype html><title>blank</title>`)
	case name == "frame":
		s.send(w, ".html", `<!doctype html><title>frame</title><iframe id="frame" title="frame" src="/"></iframe><script>`+
			`const f = document.getElementById('frame'), q = new URLSearchParams(location.search);`+
			`f.width = q.get('width'); f.height = q.get('height'); f.style.border = 0</script>`)
	case name == "scripts":
		if s.policy != "" {
			w.Header().Set("Content-Security-Policy", s.policy)
		}
		s.send(w, ".html", `<!doctype html><title>scripts</title><pre id="replies"></pre><script type="module" src="/asking.js"></script>`)
	case name == "pictures":
		body := []byte(`<!doctype html><html><head><title>pictures</title><script type="module">` + picturing + `
			const { open } = await import('/saltbite.mjs')
			const bench = await open()
			document.body.textContent = await picturing(bench).catch(String)
			bench.close()</script></head><body></body></html>`)
		s.send(w, ".html", string(before(body, strings.Split(r.URL.Query().Get("with"), ","))))
	case name == "asking.js":
		s.send(w, ".js", asking)
	case name == "vectors.json":
		s.vectors(w)
	case strings.HasPrefix(name, "host/"):
		s.hosted(w, r, name)
	case strings.HasPrefix(name, "with/"):
		s.send(w, ".js", scripts[path.Base(name)])
	default:
		s.file(w, r, name)
	}
}

func (s *server) send(w http.ResponseWriter, kind, body string) {
	w.Header().Set("Content-Type", types[kind])
	io.WriteString(w, body)
}

func (s *server) file(w http.ResponseWriter, r *http.Request, name string) {
	name, octet := strings.CutPrefix(name, "octet/")
	if name == "" || strings.HasSuffix(name, "/") {
		name += "index.html"
	}
	if name == "sw.js" {
		name = "offline/gone.js"
	}
	body, err := os.ReadFile(filepath.Join(s.dist, filepath.FromSlash(path.Clean("/"+name))))
	if err != nil {
		http.NotFound(w, r)
		return
	}
	kind := types[path.Ext(name)]
	if octet && path.Ext(name) == ".wasm" {
		kind = "application/octet-stream"
	}
	w.Header().Set("Content-Type", kind)
	if name == "index.html" || name == "class.html" {
		body = before(body, append(strings.Split(r.URL.Query().Get("with"), ","), s.clearing()))
	}
	w.Write(body)
}

// clearsNext lets the next page that is loaded first forget what is kept.
func (s *server) clearsNext() {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.clears = true
}

// clearing is the script that clears what is kept, if this page is to.
func (s *server) clearing() (script string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.clears {
		script = "cleared"
	}
	s.clears = false
	return script
}

// before loads scripts before the page's own.
func before(page []byte, names []string) []byte {
	for _, name := range names {
		if name != "" {
			page = bytes.Replace(page, []byte("<head>"), []byte(`<head><script src="/with/`+name+`"></script>`), 1)
		}
	}
	return page
}

// scripts simulate missing features of a browser, or let a test end a worker.
var scripts = map[string]string{
	"console": browser.ConsoleHook,
	"cleared": `try { localStorage.clear(); sessionStorage.clear() } catch {}`,
	"nostorage": `for (const store of ['localStorage', 'sessionStorage', 'indexedDB']) {
		Object.defineProperty(window, store, { get() { throw new DOMException('no storage here', 'SecurityError') } })
	}`,
	"noroom":    `IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError') }`,
	"nocopying": `Object.defineProperty(navigator, 'clipboard', { value: undefined })`,
	"copying": `Object.defineProperty(navigator, 'clipboard', { value: {
		async writeText(text) { document.documentElement.dataset.copied = text } } })`,
	"filing": `{ const own = URL.createObjectURL
		URL.createObjectURL = (blob) => {
			if (blob.type === 'text/plain' || blob.type === 'text/csv') blob.text().then((text) => { document.documentElement.dataset.file = text })
			return own.call(URL, blob)
		}
		HTMLAnchorElement.prototype.click = function () { document.documentElement.dataset.filed = this.download } }`,
	"overhearing": `{ const Own = Worker
		window.Worker = class extends Own {
			constructor(url) { super(url); this.addEventListener('message', ({ data }) => {
				if (data.text && data.id === this.asked) document.documentElement.dataset.reply = data.text }) }
			postMessage(data) { if (data.call === 'answer') this.asked = data.id; super.postMessage(data) } } }`,
	"noworker": `window.Worker = class { constructor() { throw new DOMException('no worker here', 'SecurityError') } }`,
	"unread": `{ const Own = Blob
		window.Blob = class extends Own { constructor(parts, options) {
			super(options?.type === 'text/javascript' ? ['self.fetch = () => Promise.reject(new TypeError("not here"));', ...parts] : parts, options) } } }`,
	"nowasm": `delete window.WebAssembly`,
	"old":    `delete window.DecompressionStream`,
	"early": `new MutationObserver((_, watch) => { if (document.body) { watch.disconnect()
		document.documentElement.dataset.early = document.documentElement.dataset.theme ?? '' } }).observe(document, { childList: true, subtree: true })`,
	"endable": `{ const Own = Worker, workers = []
		window.Worker = class extends Own { constructor(url) { super(url); workers.push(this); document.documentElement.dataset.workers = workers.length } }
		addEventListener('end-worker', () => workers.at(-1).terminate()) }`,
}

// asking sends every vector to the page's own API.
const asking = `
const place = document.getElementById('replies')
try {
	const query = new URLSearchParams(location.search)
	const from = query.get('from') ?? '/saltbite.mjs'
	const [{ open }, vectors] = await Promise.all([import(from), fetch('/vectors.json').then((reply) => reply.json())])
	const bench = await open()
	const replies = {}
	for (const [name, fields] of Object.entries(vectors).slice(0, Number(query.get('most') ?? Infinity))) replies[name] = JSON.stringify(await bench.answer(fields))
	place.textContent = JSON.stringify(replies)
	bench.close()
} catch (reason) {
	place.textContent = JSON.stringify({ failed: String(reason) })
}
`

func (s *server) vectors(w http.ResponseWriter) {
	all, err := testdata.Vectors()
	if err != nil {
		http.Error(w, err.Error(), http.StatusInternalServerError)
		return
	}
	fields := map[string]map[string]string{}
	for _, v := range all {
		fields[v.Name] = map[string]string{}
		for name, texts := range v.Fields {
			fields[v.Name][name] = texts[0]
		}
	}
	w.Header().Set("Content-Type", "application/json")
	json.NewEncoder(w).Encode(fields)
}

// requests is what was asked for since the last call.
func (s *server) requests() []string {
	s.mu.Lock()
	defer s.mu.Unlock()
	log := s.log
	s.log = nil
	return log
}

// late is what was requested since the last call, after the page had loaded. The
// service worker's own request and the page's second script do not count.
func (s *server) late() []string {
	return slices.DeleteFunc(s.requests(), func(address string) bool {
		return address == "/sw.js" || strings.HasPrefix(address, "/later.js?") || strings.HasPrefix(address, "/log.js?")
	})
}
