package site

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

// codings stand in order, best first.
var codings = []coding{
	{"br", ".br", Brotli, func(packed []byte) ([]byte, error) {
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

// Brotli compresses at its best.
func Brotli(body []byte) []byte {
	var packed bytes.Buffer
	w := brotli.NewWriterLevel(&packed, brotli.BestCompression)
	w.Write(body) // writing to a bytes.Buffer never fails
	w.Close()
	return packed.Bytes()
}

// gzipBest writes no file name and no time, so that the same body gives the same bytes.
func gzipBest(body []byte) []byte {
	var packed bytes.Buffer
	w, _ := gzip.NewWriterLevel(&packed, gzip.BestCompression) // this level exists, so there is no error
	w.Write(body)
	w.Close()
	return packed.Bytes()
}

// compress puts a compressed twin of each coding beside every file that gains by
// it. Brotli at its best level needs seconds for the program, so the twins of files
// that have not changed are reused if the same tools made them.
func (s Files) compress(before Files) {
	if madeWith(before["versions.txt"]) != madeWith(s["versions.txt"]) {
		before = nil
	}
	var mu sync.Mutex
	var work sync.WaitGroup
	twins := Files{}
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

// again reuses the twin from before if it still matches, or makes a new one.
func (c coding) again(name string, body []byte, before Files) []byte {
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

// WithoutTwins is a copy without compressed twins. Code that changes a file of a
// site starts from it, or else the old twin would be served.
func (s Files) WithoutTwins() Files {
	plain := maps.Clone(s)
	for name := range s {
		for _, c := range codings {
			delete(plain, name+c.suffix)
		}
	}
	return plain
}

// twinFor is the best twin of a file that a browser accepts, and its coding, or the
// file itself and "" if there is no such twin. accepted is the header
// Accept-Encoding (RFC 9110, 12.5.3).
func (s Files) twinFor(name, accepted string) (body []byte, coding string) {
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
