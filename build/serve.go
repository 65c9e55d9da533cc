package main

import (
	"bytes"
	"flag"
	"fmt"
	"html"
	"io/fs"
	"net"
	"net/http"
	"os"
	"path"
	"path/filepath"
	"strings"
	"sync"
	"time"
)

const (
	firstAddr = "127.0.0.1:8080"
	pollEvery = 500 * time.Millisecond
)

// serve makes the site, serves it on the loopback address, and makes it again
// whenever a source changes. A mistake in a source is printed, and the last
// good site goes on being served.
func serve(root string, args []string) error {
	var addr string
	if err := flags("serve", args, func(set *flag.FlagSet) { set.StringVar(&addr, "addr", "", "") }); err != nil {
		return err
	}
	before := sources(root)
	made, err := publish(root)
	if err != nil {
		return err
	}
	if err := made.writeTo(filepath.Join(root, "dist")); err != nil {
		return err
	}
	listener, err := listen(addr)
	if err != nil {
		return err
	}
	fmt.Printf("http://%s/\n", listener.Addr())
	shop := &shop{site: made}
	go shop.rebuild(root, before)
	return (&http.Server{Handler: shop, ReadHeaderTimeout: 10 * time.Second}).Serve(listener)
}

// listen opens addr; without one, the usual port or a free one.
func listen(addr string) (net.Listener, error) {
	if addr != "" {
		return net.Listen("tcp", addr)
	}
	if listener, err := net.Listen("tcp", firstAddr); err == nil {
		return listener, nil
	}
	return net.Listen("tcp", "127.0.0.1:0")
}

// shop serves a site that may be replaced.
type shop struct {
	mu   sync.RWMutex
	site site
}

// types are set here and not asked of the system, whose lists differ.
var types = map[string]string{
	".html": "text/html; charset=utf-8",
	".css":  "text/css; charset=utf-8",
	".js":   "text/javascript; charset=utf-8",
	".mjs":  "text/javascript; charset=utf-8",
	".mts":  "text/plain; charset=utf-8",
	".wasm": "application/wasm",
	".json": "application/json",
	".txt":  "text/plain; charset=utf-8",
	".svg":  "image/svg+xml",
	".png":  "image/png",

	".webmanifest": "application/manifest+json",
}

func (s *shop) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	s.mu.RLock()
	made := s.site
	s.mu.RUnlock()
	name := fileAt(r.URL.Path)
	if _, found := made[name]; !found {
		http.NotFound(w, r)
		return
	}
	header := w.Header()
	for _, h := range made.headers() {
		if h.isFor(name) {
			header.Set(h.Name, h.Value)
		}
	}
	header.Set("Content-Type", types[path.Ext(name)])
	page := made["index.html"]
	if path.Ext(name) == ".html" {
		page = made[name]
	}
	if policy := policyOf(page); policy != "" {
		header.Set("Content-Security-Policy", policy)
	}
	body, coding := made.twinFor(name, r.Header.Get("Accept-Encoding"))
	if coding != "" {
		header.Set("Content-Encoding", coding)
	}
	http.ServeContent(w, r, "", time.Time{}, bytes.NewReader(body))
}

// fileAt is the name of the file at an address: that of a folder, which ends in
// a slash, is its index.html.
func fileAt(address string) string {
	name := strings.TrimPrefix(path.Clean(address), "/")
	if name == "" || strings.HasSuffix(address, "/") {
		return path.Join(name, "index.html")
	}
	return name
}

// policyOf is the content security policy that the page itself states.
func policyOf(page []byte) string {
	_, after, found := strings.Cut(string(page), `http-equiv="Content-Security-Policy"`)
	if !found {
		return ""
	}
	tag, _, _ := strings.Cut(after, ">")
	_, after, found = strings.Cut(tag, `content="`)
	policy, _, closed := strings.Cut(after, `"`)
	if !found || !closed {
		return ""
	}
	return strings.Join(strings.Fields(html.UnescapeString(policy)), " ")
}

// rebuild looks for changed sources for ever. The build itself is Go too: a
// change in it or in the tables it is compiled with is built by a new run of it.
func (s *shop) rebuild(root string, before map[string]time.Time) {
	for {
		time.Sleep(pollEvery)
		now := sources(root)
		if same(before, now) {
			continue
		}
		before = now
		made, err := packAnew(root)
		if err != nil {
			fmt.Fprintln(os.Stderr, "build:", err)
			continue
		}
		s.mu.Lock()
		s.site = made
		s.mu.Unlock()
		fmt.Println("made again", time.Now().Format("15:04:05"))
	}
}

// packAnew runs the build as its sources are now and reads what it made.
func packAnew(root string) (site, error) {
	if err := runIn(root, nil, "go", "run", "./build"); err != nil {
		return nil, err
	}
	return readSite(filepath.Join(root, "dist"))
}

// readSite reads the files of dir and of its folders.
func readSite(dir string) (site, error) {
	made := site{}
	err := filepath.WalkDir(dir, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		name, err := filepath.Rel(dir, path)
		if err == nil {
			made[filepath.ToSlash(name)], err = os.ReadFile(path)
		}
		return err
	})
	return made, err
}

// sources is when each file that the site may be made of was last changed.
func sources(root string) map[string]time.Time {
	times := map[string]time.Time{}
	for _, top := range []string{"calc", "wasm", "site", "build", "go.mod"} {
		filepath.WalkDir(filepath.Join(root, top), func(path string, entry fs.DirEntry, err error) error {
			if err != nil {
				return nil // gone since it was listed
			}
			if entry.IsDir() && entry.Name() == "node_modules" {
				return filepath.SkipDir
			}
			if info, err := entry.Info(); err == nil && !entry.IsDir() {
				times[path] = info.ModTime()
			}
			return nil
		})
	}
	return times
}

func same(a, b map[string]time.Time) bool {
	if len(a) != len(b) {
		return false
	}
	for path, when := range a {
		if !b[path].Equal(when) {
			return false
		}
	}
	return true
}
