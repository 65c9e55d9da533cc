package main

import (
	"flag"
	"fmt"
	"io/fs"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"sync"
	"time"

	"saltbite/build/site"
	"saltbite/build/tool"
)

const (
	firstAddr = "127.0.0.1:8080"
	pollEvery = 500 * time.Millisecond
)

// serve makes the site, serves it on the loopback address, and makes it again
// whenever a source changes. A mistake in a source is printed, and the last
// good site is still served.
func serve(root string, args []string) error {
	var addr string
	if err := flags("serve", args, func(set *flag.FlagSet) { set.StringVar(&addr, "addr", "", "") }); err != nil {
		return err
	}
	before := sources(root)
	made, err := published(root)
	if err != nil {
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
	site site.Files
}

func (s *shop) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	s.mu.RLock()
	made := s.site
	s.mu.RUnlock()
	made.ServeHTTP(w, r)
}

// rebuild looks for changed sources until the program ends. The build itself is
// Go too, and so are the tables compiled into it, so each change needs a new run.
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
func packAnew(root string) (site.Files, error) {
	if err := tool.Run(root, nil, "go", "run", "./build"); err != nil {
		return nil, err
	}
	return site.Read(filepath.Join(root, "dist"))
}

// sources lists when each file that the site is made from was last changed.
func sources(root string) map[string]time.Time {
	times := map[string]time.Time{}
	for _, top := range []string{"calc", "wasm", "site", "build", "go.mod"} {
		filepath.WalkDir(filepath.Join(root, top), func(path string, entry fs.DirEntry, err error) error {
			if err != nil {
				return nil // it was removed after it was listed
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
