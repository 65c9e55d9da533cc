package main

import (
	"bytes"
	"compress/gzip"
	"io"
	"maps"
	"path"
	"slices"
	"strings"
	"sync"

	"github.com/andybalholm/brotli"
)

// leastCompressed is the size from which a file has compressed twins. A smaller
// one travels in a single packet either way.
const leastCompressed = 1000

// coding is a way to compress that a browser may accept, and how a twin's name ends.
type coding struct {
	name, suffix string
	compress     func(body []byte) []byte
	read         func(packed []byte) ([]byte, error)
}

// codings are the best first.
var codings = []coding{
	{"br", ".br", brotliBest, func(packed []byte) ([]byte, error) {
		return io.ReadAll(brotli.NewReader(bytes.NewReader(packed)))
	}},
	{"gzip", ".gz", gzipBest, func(packed []byte) ([]byte, error) {
		r, err := gzip.NewReader(bytes.NewReader(packed))
		if err != nil {
			return nil, err
		}
		return io.ReadAll(r)
	}},
}

func brotliBest(body []byte) []byte {
	var packed bytes.Buffer
	w := brotli.NewWriterLevel(&packed, brotli.BestCompression)
	w.Write(body) // a bytes.Buffer takes all
	w.Close()
	return packed.Bytes()
}

// gzipBest names no file and no time, so that the same body gives the same bytes.
func gzipBest(body []byte) []byte {
	var packed bytes.Buffer
	w, _ := gzip.NewWriterLevel(&packed, gzip.BestCompression) // there is such a level
	w.Write(body)
	w.Close()
	return packed.Bytes()
}

// compress puts a compressed twin of each coding beside every file that gains by
// it. Brotli at its best takes seconds over the program: what has not changed
// since before, and was made with the same tools, is taken from there.
func (s site) compress(before site) {
	if madeWith(before["versions.txt"]) != madeWith(s["versions.txt"]) {
		before = nil
	}
	var mu sync.Mutex
	var work sync.WaitGroup
	twins := site{}
	for name, body := range s {
		if !gains(name, body) {
			continue
		}
		for _, c := range codings {
			work.Go(func() {
				packed := c.again(name, body, before)
				mu.Lock()
				defer mu.Unlock()
				twins[name+c.suffix] = packed
			})
		}
	}
	work.Wait()
	maps.Copy(s, twins)
}

// again is the twin from before, if it still is one, or a new one.
func (c coding) again(name string, body []byte, before site) []byte {
	if packed, found := before[name+c.suffix]; found && bytes.Equal(before[name], body) {
		if read, err := c.read(packed); err == nil && bytes.Equal(read, body) {
			return packed
		}
	}
	return c.compress(body)
}

// gains says whether a file is worth a twin: text and the program are, pictures
// are compressed already.
func gains(name string, body []byte) bool {
	kind := types[path.Ext(name)]
	return len(body) >= leastCompressed &&
		(strings.HasPrefix(kind, "text/") || slices.Contains([]string{"application/wasm", "application/json",
			"application/manifest+json", "image/svg+xml"}, kind))
}

// withoutTwins is a copy that has no compressed twin: what changes a file of a
// site starts from it, or the twin would be served instead.
func (s site) withoutTwins() site {
	plain := maps.Clone(s)
	for name := range s {
		for _, c := range codings {
			delete(plain, name+c.suffix)
		}
	}
	return plain
}

// twinFor is the twin of a file that is best of those a browser accepts, and its
// coding; the file itself and "" where there is none. accepted is the header
// Accept-Encoding (RFC 9110, 12.5.3).
func (s site) twinFor(name, accepted string) (body []byte, coding string) {
	takes := map[string]bool{}
	for _, one := range strings.Split(accepted, ",") {
		coding, weight, _ := strings.Cut(strings.ReplaceAll(one, " ", ""), ";")
		takes[coding] = strings.Trim(strings.TrimPrefix(weight, "q="), "0.") != "" || weight == ""
	}
	for _, c := range codings {
		if packed, found := s[name+c.suffix]; found && takes[c.name] {
			return packed, c.name
		}
	}
	return s[name], ""
}
