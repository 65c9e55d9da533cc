package site

import (
	"bytes"
	"html"
	"net"
	"net/http"
	"path"
	"strings"
	"time"
)

// types are listed here because the lists of operating systems differ.
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

// Serve serves the site on a free port of this machine, until it is stopped.
func (s Files) Serve() (address string, stop func(), err error) {
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return "", nil, err
	}
	server := &http.Server{Handler: s, ReadHeaderTimeout: 10 * time.Second}
	go server.Serve(listener)
	return "http://" + listener.Addr().String() + "/", func() { server.Close() }, nil
}

// ServeHTTP serves the site with the headers that hosts are asked to send.
func (s Files) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	name := fileAt(r.URL.Path)
	if _, found := s[name]; !found {
		http.NotFound(w, r)
		return
	}
	header := w.Header()
	for _, h := range s.headers() {
		if h.isFor(name) {
			header.Set(h.Name, h.Value)
		}
	}
	header.Set("Content-Type", types[path.Ext(name)])
	page := s["index.html"]
	if path.Ext(name) == ".html" {
		page = s[name]
	}
	if policy := policyOf(page); policy != "" {
		header.Set("Content-Security-Policy", policy)
	}
	body, coding := s.twinFor(name, r.Header.Get("Accept-Encoding"))
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
