package main

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"slices"
	"time"

	"github.com/evanw/esbuild/pkg/api"

	"saltbite/build/engine"
)

// How much longer the page may take than a bare one, from its opening to the
// first answer.
var coldLimits = map[string]float64{engine.Chromium: 1.6, engine.Firefox: 1.6, engine.WebKit: 2.2}

const openings = 9 // of each page, turn about

// answering notes when the first answer stands on a page.
const answering = `addEventListener('DOMContentLoaded', () => {
	const place = document.getElementById('sentence')
	new MutationObserver((_, observer) => {
		if (!place.textContent.includes('brass')) return
		window.answered = performance.now()
		observer.disconnect()
	}).observe(place, { childList: true, characterData: true, subtree: true })
})`

// Deferred, so that the page's own files don't wait for it.
const answeringTag = `</title><script src="answering.js" defer></script>`

const bareHTML = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>bare</title>` +
	`<script type="module" src="page.js"></script></head><body><p id="sentence"></p></body></html>`

// coldOpen measures how long the page takes from its opening to the first answer,
// against a bare page in the same run: from a server, and from what the device
// keeps once the server is gone.
func (m *measure) coldOpen(root string, made site) error {
	full, err := watchedAnswer(root, made, offlineFiles)
	if err != nil {
		return err
	}
	least, err := bareSite(root)
	if err != nil {
		return err
	}
	for _, name := range engine.Names {
		served, kept, err := openingsIn(name, full, least)
		if errors.Is(err, engine.ErrMissing) {
			m.past = append(m.past, "cold open: "+err.Error())
			continue
		}
		if err != nil {
			return fmt.Errorf("cold open in %s: %w", name, err)
		}
		fmt.Printf("cold open in %s: %v from a server, %v from the device\n", name, served, kept)
		m.hold("cold open to first answer, to a bare page's, "+name, served.ratio(), coldLimits[name], "")
		m.hold("the same from the device without a server, "+name, kept.ratio(), coldLimits[name], "")
	}
	return nil
}

// bareSite is a page that asks the bare program one thing.
func bareSite(root string) (site, error) {
	program, err := buildProgram(root, "./build/bare", "dev")
	if err != nil {
		return nil, err
	}
	least := site{"saltbite.wasm": program, "index.html": []byte(bareHTML)}
	page := bundle{entry: "build/bare/page.js", out: "page.js", format: api.FormatESModule}
	if least[page.out], err = page.make(root, least); err != nil {
		return nil, err
	}
	return watchedAnswer(root, least, []string{"index.html", "page.js", "saltbite.wasm"})
}

// watchedAnswer is a site that notes its first answer, and what keeps it.
func watchedAnswer(root string, made site, names []string) (site, error) {
	watched := made.withoutTwins()
	watched["answering.js"] = []byte(answering)
	html := bytes.Replace(made["index.html"], []byte("</title>"), []byte(answeringTag), 1)
	err := keepOffline(root, watched, append(slices.Clone(names), "answering.js"), func(string) ([]byte, error) { return html, nil })
	return watched, err
}

// opened is how long two pages took to their first answers, in milliseconds.
type opened struct{ full, bare []float64 }

func (o opened) ratio() float64 { return quantile(o.full, 0.5) / quantile(o.bare, 0.5) }

func (o opened) String() string {
	return fmt.Sprintf("%.0f ms to a bare page's %.0f", quantile(o.full, 0.5), quantile(o.bare, 0.5))
}

func openingsIn(name string, full, least site) (served, kept opened, err error) {
	s, err := engine.Start(name, engine.Options{})
	if err != nil {
		return served, kept, err
	}
	defer s.Close()
	if served, err = turnAbout(s, withoutKeeper(full), withoutKeeper(least), false); err != nil {
		return served, kept, err
	}
	kept, err = turnAbout(s, full, least, true)
	return served, kept, err
}

// withoutKeeper is a site of which a device keeps nothing.
func withoutKeeper(made site) site {
	without := maps.Clone(made)
	delete(without, keeper.out)
	return without
}

// turnAbout opens two sites turn about; from the device, once it keeps both and
// their servers are gone.
func turnAbout(s *engine.Session, full, least site, fromDevice bool) (o opened, err error) {
	fullAddress, stopFull, err := serveOnce(full)
	if err != nil {
		return o, err
	}
	defer stopFull()
	leastAddress, stopLeast, err := serveOnce(least)
	if err != nil {
		return o, err
	}
	defer stopLeast()
	if err := s.Navigate(fullAddress); err != nil {
		return o, err
	}
	if err := s.Wait(30*time.Second, `document.getElementById('sentence').textContent && !document.querySelector('.waiting')`); err != nil {
		return o, err
	}
	if _, err := s.Execute(`document.getElementById('example').click()`); err != nil {
		return o, err
	}
	if _, err := firstAnswer(s, ""); err != nil {
		return o, err
	}
	time.Sleep(time.Second) // it keeps the example, which the next opening answers
	if fromDevice {
		if err := keptOnDevice(s, ""); err != nil {
			return o, err
		}
		if err := keptOnDevice(s, leastAddress); err != nil {
			return o, err
		}
		stopFull()
		stopLeast()
	}
	for range openings {
		for address, times := range map[string]*[]float64{fullAddress: &o.full, leastAddress: &o.bare} {
			ms, err := firstAnswer(s, address)
			if err != nil {
				return o, err
			}
			*times = append(*times, ms)
		}
	}
	return o, nil
}

// firstAnswer opens a page, or takes the one that is open, and says how long its
// first answer took.
func firstAnswer(s *engine.Session, address string) (ms float64, err error) {
	if address != "" {
		if err := s.Navigate(address); err != nil {
			return 0, err
		}
	}
	if err := s.Wait(30*time.Second, "window.answered"); err != nil {
		return 0, err
	}
	return ms, s.ExecuteTo(&ms, "return window.answered")
}

// keptOnDevice opens a page, or takes the one that is open, and waits until the
// device keeps it.
func keptOnDevice(s *engine.Session, address string) error {
	if address != "" {
		if err := s.Navigate(address); err != nil {
			return err
		}
	}
	var kept bool
	return s.ExecuteAsync(&kept, `const done = arguments[0]
		navigator.serviceWorker.ready.then(({ active }) => {
			const activated = () => { if (active.state === 'activated') done(true) }
			active.addEventListener('statechange', activated)
			activated()
		})`)
}
