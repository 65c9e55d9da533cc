package pagetest

import (
	"net/http"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"saltbite/build/browser"
)

// serving is how a host serves a file of the site: it may set headers, change the
// body, or answer on its own, which it says by returning nil.
type serving func(s *server, w http.ResponseWriter, r *http.Request, name string, body []byte) []byte

// servings are the three kinds in the note for hosts, and some with faults.
var servings = map[string]serving{
	"settings":   settings,
	"configured": configured,
	"school":     school,
	"no types":   noTypes,

	"no head.js":        lacking("head.js"),
	"no page.js":        lacking("page.js"),
	"half of page.js":   halving("page.js"),
	"no program":        lacking("saltbite.wasm"),
	"half a program":    halving("saltbite.wasm"),
	"a login page":      loggingIn,
	"program forbidden": underPolicy("default-src 'self'; img-src data:; worker-src blob:"),
	"scripts forbidden": underPolicy("default-src 'self'; img-src data:; script-src 'none'"),
	"no answer":         silent,
}

// hosted serves /host/NAME/any folder/file.
func (s *server) hosted(w http.ResponseWriter, r *http.Request, address string) {
	parts := strings.Split(address, "/")
	serve, known := servings[parts[1]]
	name := parts[len(parts)-1]
	if name == "" {
		name = "index.html"
	}
	body, err := os.ReadFile(filepath.Join(s.dist, name))
	if !known || err != nil {
		http.NotFound(w, r)
		return
	}
	w.Header().Del("Access-Control-Allow-Origin")
	w.Header().Set("Content-Type", types[path.Ext(name)])
	if name == "index.html" {
		body = before(body, strings.Split(r.URL.Query().Get("with"), ","))
	}
	if body = serve(s, w, r, name, body); body != nil {
		w.Write(body)
	}
}

// noted is a header of the note for hosts, with the files it is for.
var noted = regexp.MustCompile(`(?m)^    ([A-Z][A-Za-z-]+): (.+)\n(?:        For ([^\n]+)\.\n)?`)

// settings sends the headers as in the note for hosts.
func settings(s *server, w http.ResponseWriter, _ *http.Request, name string, body []byte) []byte {
	note, err := os.ReadFile(filepath.Join(s.dist, "hosting.txt"))
	if err != nil {
		http.Error(w, err.Error(), http.StatusInternalServerError)
		return nil
	}
	for _, h := range noted.FindAllStringSubmatch(string(note), -1) {
		if files := h[3]; files == "" || strings.Contains(", "+files+",", ", "+name+",") {
			w.Header().Set(h[1], h[2])
		}
	}
	return body
}

// configured does the same, and sends the compressed files if there are any.
func configured(s *server, w http.ResponseWriter, r *http.Request, name string, body []byte) []byte {
	for _, c := range []struct{ coding, suffix string }{{"br", ".br"}, {"gzip", ".gz"}} {
		packed, err := os.ReadFile(filepath.Join(s.dist, name+c.suffix))
		if err == nil && name != "index.html" && strings.Contains(r.Header.Get("Accept-Encoding"), c.coding) {
			w.Header().Set("Content-Encoding", c.coding)
			body = packed
			break
		}
	}
	return settings(s, w, r, name, body)
}

// school sets no headers, and does not know the type of WebAssembly.
func school(_ *server, w http.ResponseWriter, _ *http.Request, name string, body []byte) []byte {
	w.Header().Del("Cache-Control")
	if path.Ext(name) == ".wasm" {
		w.Header().Set("Content-Type", "application/octet-stream")
	}
	return body
}

func noTypes(_ *server, w http.ResponseWriter, _ *http.Request, name string, body []byte) []byte {
	w.Header()["Content-Type"] = nil
	return body
}

func lacking(file string) serving {
	return func(_ *server, w http.ResponseWriter, r *http.Request, name string, body []byte) []byte {
		if name == file {
			http.NotFound(w, r)
			return nil
		}
		return body
	}
}

func halving(file string) serving {
	return func(_ *server, _ http.ResponseWriter, _ *http.Request, name string, body []byte) []byte {
		if name == file {
			return body[:len(body)/2]
		}
		return body
	}
}

func loggingIn(_ *server, w http.ResponseWriter, _ *http.Request, name string, body []byte) []byte {
	if name == "saltbite.wasm" {
		w.Header().Set("Content-Type", types[".html"])
		return []byte("<!doctype html><title>Guest network</title><p>Type your room's number.")
	}
	return body
}

func underPolicy(policy string) serving {
	return func(_ *server, w http.ResponseWriter, _ *http.Request, name string, body []byte) []byte {
		w.Header().Set("Content-Security-Policy", policy)
		return body
	}
}

// silent takes the request for the program and sends nothing.
func silent(_ *server, _ http.ResponseWriter, r *http.Request, name string, body []byte) []byte {
	if name == "saltbite.wasm" {
		select {
		case <-r.Context().Done():
		case <-time.After(patience):
		}
		return nil
	}
	return body
}

// TestHosts opens the page on each kind of host, in folders of any name, and
// answers there.
func TestHosts(t *testing.T) {
	t.Parallel()
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		for _, address := range []string{"settings/", "configured/", "school/", "school/a%20b%20c/", "school/100%25/%C3%A9%20%23/index.html", "no%20types/"} {
			t.Run(address, func(t *testing.T) {
				s := serve(t) // one for each: the page before may still be storing its files
				p := &page{t, session, s}
				p.load("/host/" + address)
				p.fill(copperJob)
				p.answers(copperTime)
				for _, said := range s.requests() {
					if !strings.HasPrefix(said, "/host/"+strings.TrimSuffix(address, "index.html")) && !strings.HasPrefix(said, "/with/") && said != "/favicon.ico" {
						t.Errorf("asked for %s", said)
					}
				}
			})
		}
	})
}

// TestFromAFolder opens the page as a file: it says which file to open instead.
// Firefox under automation lets a file load files; there the page simply works.
func TestFromAFolder(t *testing.T) {
	t.Parallel()
	index, err := filepath.Abs(filepath.Join(finished(t), "index.html"))
	if err != nil {
		t.Fatal(err)
	}
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		p := &page{t, session, nil}
		if err := p.Navigate("file://" + index); err != nil {
			t.Fatal(err)
		}
		p.until(`document.getElementById('sentence').textContent.includes('saltbite.html') || arguments[0] && !document.querySelector('.waiting')`, session.Name == browser.Firefox)
	})
}

// TestStuck opens the page where it can't work: a plain sentence says so and
// what to do, and nothing looks as if an answer would come.
func TestStuck(t *testing.T) {
	t.Parallel()
	const old, program, lost = "too old", "WebAssembly is switched off", "could not be loaded whole"
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		s := serve(t)
		for _, c := range []struct {
			what, address, says string
			form                bool // what was typed stays in view
		}{
			{"an old engine", "/?with=old", old, false},
			{"no WebAssembly", "/?with=nowasm", program, false},
			{"a policy without WebAssembly", "/host/program%20forbidden/", program, false},
			{"no page.js", "/host/no%20page.js/", lost, false},
			{"half of page.js", "/host/half%20of%20page.js/", lost, false},
			{"no head.js", "/host/no%20head.js/", lost, true},
			{"no program", "/host/no%20program/", lost, true},
			{"half a program", "/host/half%20a%20program/", lost, true},
			{"a login page", "/host/a%20login%20page/", lost, true},
		} {
			t.Run(c.what, func(t *testing.T) {
				p := &page{t, session, s}
				p.loadOnly(c.address)
				p.until(`document.getElementById('sentence').textContent.includes(arguments[0])`, c.says)
				time.Sleep(300 * time.Millisecond) // for what comes late and would say something else
				if said := p.sentence(); !strings.Contains(said, c.says) {
					t.Errorf("it says %q", said)
				}
				p.until(`document.querySelector('.safety').open && document.getElementById('spoken').textContent.includes(arguments[0])`, c.says)
				if seen := p.ask(`return document.querySelector('.waiting')?.checkVisibility() ?? false`); seen != false {
					t.Error("it goes on saying that the calculator is on its way")
				}
				if seen := p.ask(`return document.querySelector('.part:not(.safety)').checkVisibility()`); seen != c.form {
					t.Errorf("the form is in view: %v", seen)
				}
			})
		}
		for _, host := range []string{"scripts%20forbidden", "no%20answer"} {
			t.Run(host, func(t *testing.T) {
				p := &page{t, session, s}
				p.loadOnly("/host/" + host + "/")
				if p.ask(`return getComputedStyle(document.querySelector('.waiting')).visibility`) != "hidden" {
					t.Error("it speaks of waiting at once")
				}
				p.until(`getComputedStyle(document.querySelector('.waiting')).visibility === 'visible'`)
			})
		}
	})
}
