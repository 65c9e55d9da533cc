package pagetest

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"net"
	"net/http"
	"os"
	"path"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"
	"unsafe"

	"saltbite/build/seal"
)

// shed is the folder of the host that the page is served from; other things may
// stand beside it.
const shed = "/a shed/"

// host serves a version of the site from a folder, as a host does that is being
// updated: the version may be replaced, files may come damaged, and the server
// may be gone for a while.
type host struct {
	t       *testing.T
	address string

	mu      sync.Mutex
	server  *http.Server
	files   map[string][]byte
	policy  string           // a header of each answer
	caching string           // another: what a browser may keep
	faults  map[string]fault // by file
	met     map[string]int   // how often each fault was met
	log     []string
	said    []string // reports of the policy's violations
}

// fault answers a request for a file in its own way.
type fault func(w http.ResponseWriter, r *http.Request, body []byte)

func newHost(t *testing.T, files map[string][]byte) *host {
	t.Helper()
	h := &host{t: t, address: "127.0.0.1:0", files: files, caching: "no-cache"} // as the note for hosts asks
	h.start()
	t.Cleanup(h.stop)
	return h
}

func (h *host) url() string { return "http://" + h.address + strings.ReplaceAll(shed, " ", "%20") }

// start opens the host, after a stop at the address that it had.
func (h *host) start() {
	h.t.Helper()
	listener, err := net.Listen("tcp", h.address)
	if err != nil {
		h.t.Fatal(err)
	}
	h.address = listener.Addr().String()
	h.server = &http.Server{Handler: h, ReadHeaderTimeout: 10 * time.Second}
	go h.server.Serve(listener)
}

// stop closes the host: nobody listens there any more.
func (h *host) stop() { h.server.Close() }

// publish puts another version in the place of what is served, whole or with faults.
func (h *host) publish(files map[string][]byte, faults map[string]fault) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.files, h.faults, h.met, h.log = files, faults, map[string]int{}, nil
}

func (h *host) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	h.mu.Lock()
	name, within := strings.CutPrefix(r.URL.Path, shed)
	if name == "" {
		name = "index.html"
	}
	body, found := h.files[name]
	meet := h.faults[name]
	h.log = append(h.log, r.URL.RequestURI())
	policy, caching := h.policy, h.caching
	h.mu.Unlock()
	if r.URL.Path == "/report" {
		report, _ := io.ReadAll(r.Body) // what came is what there is
		h.mu.Lock()
		h.said = append(h.said, string(report))
		h.mu.Unlock()
		return
	}
	if policy != "" {
		w.Header().Set("Content-Security-Policy", policy)
	}
	w.Header().Set("Content-Type", types[path.Ext(name)])
	w.Header().Set("Cache-Control", caching)
	switch {
	case meet != nil:
		defer func() {
			h.mu.Lock()
			h.met[name]++
			h.mu.Unlock()
		}()
		meet(w, r, body)
	case !within || !found:
		http.NotFound(w, r)
	default:
		w.Write(body)
	}
}

// hasMet is whether a fault that was published has been met: at sw.js if there is
// one, for then nothing else is asked for.
func (h *host) hasMet() bool {
	h.mu.Lock()
	defer h.mu.Unlock()
	if h.faults["sw.js"] != nil {
		return h.met["sw.js"] > 0
	}
	return len(h.met) > 0
}

// requests is what was asked for since the last call.
func (h *host) requests() []string {
	h.mu.Lock()
	defer h.mu.Unlock()
	log := h.log
	h.log = nil
	return log
}

func (h *host) reports() []string {
	h.mu.Lock()
	defer h.mu.Unlock()
	said := h.said
	h.said = nil
	return said
}

// Faults.

// stops sends half of a file and is gone.
func stops(w http.ResponseWriter, _ *http.Request, body []byte) {
	w.Header().Set("Content-Length", fmt.Sprint(len(body)))
	w.Write(body[:len(body)/2])
	panic(http.ErrAbortHandler)
}

// truncates sends half of a file as if it were all.
func truncates(w http.ResponseWriter, _ *http.Request, body []byte) { w.Write(body[:len(body)/2]) }

// changesAByte sends a file with one bit of its last byte turned.
func changesAByte(w http.ResponseWriter, _ *http.Request, body []byte) {
	body = bytes.Clone(body)
	body[len(body)-1] ^= 1
	w.Write(body)
}

// asksForLogin sends what a network sends that wants a password first.
func asksForLogin(w http.ResponseWriter, _ *http.Request, _ []byte) {
	w.Header().Set("Content-Type", types[".html"])
	io.WriteString(w, "<!doctype html><title>Log in</title><form><input name=password></form>")
}

// sendsElsewhere leads to a page for logging in.
func sendsElsewhere(w http.ResponseWriter, r *http.Request, _ []byte) {
	http.Redirect(w, r, shed+"login", http.StatusFound)
}

func answersWith(status int) fault {
	return func(w http.ResponseWriter, _ *http.Request, _ []byte) { http.Error(w, "no", status) }
}

// hangs sends nothing until the visitor gives up or the host closes.
func hangs(h *host) fault {
	return func(_ http.ResponseWriter, r *http.Request, _ []byte) {
		h.mu.Lock()
		h.met["sw.js"]++ // it never comes to an end
		h.mu.Unlock()
		<-r.Context().Done()
	}
}

// Versions.

// version is a version of the site and what shows it on a page.
type version struct {
	mark    string
	content string
	files   map[string][]byte
}

var contentInPage = regexp.MustCompile(`data-content="([0-9a-f]{12})"`)

// asBuilt is the finished site.
func asBuilt(t *testing.T) version {
	t.Helper()
	dist := finished(t)
	v := version{mark: "", files: map[string][]byte{}}
	whole := os.DirFS(dist)
	err := fs.WalkDir(whole, ".", func(name string, entry fs.DirEntry, err error) error {
		if err == nil && !entry.IsDir() {
			v.files[name], err = fs.ReadFile(whole, name)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	found := contentInPage.FindSubmatch(v.files["index.html"])
	if found == nil {
		t.Fatal("the page does not say what version it is of")
	}
	v.content = string(found[1])
	return v
}

// sealOf is the seal of a file, worked out once: the same files are looked at after every
// fault.
func sealOf(body []byte) seal.Seal {
	key := sealed{unsafe.SliceData(body), len(body)}
	if known, ok := seals.Load(key); ok {
		return known.(seal.Seal)
	}
	of := seal.Of(body)
	seals.Store(key, of)
	return of
}

// sealed is where a file is held. What is held is never changed, only replaced.
type sealed struct {
	at   *byte
	size int
}

var seals sync.Map

// kept are the files that the site's sw.js lists.
func (v version) kept() []string {
	var names []string
	for name, body := range v.files {
		if bytes.Contains(v.files["sw.js"], []byte(sealOf(body).Hash)) {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	return names
}

// next is a version that works as this one does, and in which every file is
// another: the style and the script show the mark on a page.
func (v version) next(mark string) version {
	key := v.content + " " + mark
	made, there := nexts.Load(key)
	if !there {
		made, _ = nexts.LoadOrStore(key, v.made(mark))
	}
	n := made.(version)
	n.files = maps.Clone(n.files)
	return n
}

// nexts are the next versions that were made, by the content they come after and their
// mark: the three engines ask for the same ones.
var nexts sync.Map

func (v version) made(mark string) version {
	n := version{mark: mark, content: seal.Of([]byte(v.content + mark)).Tag(), files: maps.Clone(v.files)}
	names := v.kept()
	served := map[string][]byte{"sw.js": v.files["sw.js"]}
	for _, name := range names {
		served[name] = v.files[name]
	}
	for _, name := range names {
		if name != "index.html" { // it knows the others, and is made new by them
			seal.Replace(served, name, marked(name, served[name], mark))
		}
	}
	seal.Replace(served, "index.html", bytes.ReplaceAll(served["index.html"], []byte(v.content), []byte(n.content)))
	served["sw.js"] = bytes.ReplaceAll(served["sw.js"], []byte(v.content), []byte(n.content))
	maps.Copy(n.files, served)
	return n
}

// marked is a file that works as before and shows the mark, where it shows anything.
func marked(name string, body []byte, mark string) []byte {
	body = bytes.Clone(body)
	switch path.Ext(name) {
	case ".css":
		return append(body, "\n:root{--made:"+mark+"}"...)
	case ".js":
		return append(body, "\n;globalThis.document&&(document.documentElement.dataset.made='"+mark+"');"...)
	case ".wasm": // a custom section without a meaning (WebAssembly Core Specification 2.0, 5.5.3)
		return append(body, append([]byte{0, byte(1 + len(mark)), byte(len(mark))}, mark...)...)
	case ".webmanifest":
		return bytes.Replace(body, []byte(`"short_name": "Saltbite`), []byte(`"short_name": "Saltbite `+mark), 1)
	default: // pictures: what follows their end is not looked at
		return append(body, "<!-- "+mark+" -->"...)
	}
}

// TestNextVersionSharesNoFile: what the faults are tried with is itself whole,
// and no file of one version could pass for one of the other.
func TestNextVersionSharesNoFile(t *testing.T) {
	a := asBuilt(t)
	b := a.next("B")
	if len(a.kept()) < 6 || !slices.Equal(a.kept(), b.kept()) {
		t.Fatalf("kept are %q of the one and %q of the other", a.kept(), b.kept())
	}
	for _, name := range append(a.kept(), "sw.js") {
		if bytes.Equal(a.files[name], b.files[name]) {
			t.Errorf("%s is the same in both versions", name)
		}
		if was := []byte(sealOf(a.files[name]).Tag()); bytes.Contains(b.files["index.html"], was) || bytes.Contains(b.files["sw.js"], was) {
			t.Errorf("the next version still knows %s by its old seal", name)
		}
	}
	for _, text := range []string{"sw.js", "index.html"} {
		if !bytes.Contains(b.files[text], []byte(b.content)) || bytes.Contains(b.files[text], []byte(a.content)) {
			t.Errorf("%s does not say that it is of the next version", text)
		}
	}
}
