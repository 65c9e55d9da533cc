package measure

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"slices"
	"time"

	"saltbite/build/browser"
	"saltbite/build/site"
)

// How much longer the page may take than a bare one, from its opening to the
// first answer.
var coldLimits = map[string]float64{browser.Chromium: 1.6, browser.Firefox: 1.6, browser.WebKit: 2.2}

const openings = 9 // of each page, alternating

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

// coldOpen measures how long the page takes from its opening to the first answer,
// against a bare page in the same run: from a server, and from what the device
// keeps once the server is gone.
func (m *measure) coldOpen(root string, made site.Files) error {
	full, err := watchedAnswer(root, made, site.OfflineFiles)
	if err != nil {
		return err
	}
	bare, err := site.Bare(root)
	if err != nil {
		return err
	}
	least, err := watchedAnswer(root, bare, bare.Names())
	if err != nil {
		return err
	}
	for _, name := range browser.Names {
		served, kept, err := openingsIn(name, full, least)
		if errors.Is(err, browser.ErrMissing) {
			m.past = append(m.past, "cold open: "+err.Error())
			continue
		}
		if err != nil {
			return fmt.Errorf("cold open in %s: %w", name, err)
		}
		m.beside("cold open to first answer, "+name, served, 0.5, coldLimits[name])
		m.beside("the same from the device without a server, "+name, kept, 0.5, coldLimits[name])
	}
	return nil
}

// watchedAnswer is a site that notes its first answer, and what keeps it.
func watchedAnswer(root string, made site.Files, names []string) (site.Files, error) {
	watched := made.WithoutTwins()
	watched["answering.js"] = []byte(answering)
	html := bytes.Replace(made["index.html"], []byte("</title>"), []byte(answeringTag), 1)
	err := site.KeepOffline(root, watched, append(slices.Clone(names), "answering.js"), func(string) ([]byte, error) { return html, nil })
	return watched, err
}

// taken is how long the page and the bare page took, in milliseconds.
type taken struct{ full, bare []float64 }

func openingsIn(name string, full, least site.Files) (served, kept taken, err error) {
	s, err := browser.Start(name, browser.Options{})
	if err != nil {
		return served, kept, err
	}
	defer s.Close()
	if served, err = alternate(s, withoutKeeper(full), withoutKeeper(least), false); err != nil {
		return served, kept, err
	}
	kept, err = alternate(s, full, least, true)
	return served, kept, err
}

// withoutKeeper is a site of which a device keeps nothing.
func withoutKeeper(made site.Files) site.Files {
	without := maps.Clone(made)
	delete(without, site.Keeper)
	return without
}

// alternate opens two sites by turns: from their servers, or from the device once it
// keeps both and the servers are gone.
func alternate(s *browser.Session, full, least site.Files, fromDevice bool) (o taken, err error) {
	fullAddress, stopFull, err := full.Serve()
	if err != nil {
		return o, err
	}
	defer stopFull()
	leastAddress, stopLeast, err := least.Serve()
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
func firstAnswer(s *browser.Session, address string) (ms float64, err error) {
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
func keptOnDevice(s *browser.Session, address string) error {
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
