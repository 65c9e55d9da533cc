package measure

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"saltbite/build/browser"
	"saltbite/build/site"
)

const (
	keysMeasured = 200
	// Before the page is asked whether it has painted, which takes its time too.
	restBetweenKeys = 80 * time.Millisecond
	slowdown        = 4 // a tablet's processor beside a workshop's computer, roughly
)

// watching notes on a page how long it takes from a key to the painted answer, and
// from the post of the call to its reply. What is painted is known one task
// after the frame in which the answer was written.
const watching = `{
	const painted = window.painted = [], replied = window.replied = []
	let pressed = 0
	addEventListener('keydown', (event) => { pressed = event.timeStamp }, true)
	const afterPaint = (then) => requestAnimationFrame(() => {
		const channel = new MessageChannel()
		channel.port1.onmessage = then
		channel.port2.postMessage(0)
	})
	const Own = Worker
	window.Worker = class extends Own {
		#posted = 0
		constructor(url) {
			super(url)
			this.addEventListener('message', () => {
				if (this.#posted) replied.push(performance.now() - this.#posted)
				this.#posted = 0
			})
		}
		postMessage(message) {
			this.#posted = message.call === 'answer' ? performance.now() : 0
			super.postMessage(message)
		}
	}
	addEventListener('DOMContentLoaded', () => {
		new MutationObserver(() => {
			if (!pressed) return
			const from = pressed
			pressed = 0
			afterPaint(() => painted.push(performance.now() - from))
		}).observe(document.getElementById('sentence'), { childList: true, characterData: true, subtree: true })
	})
}`

// repeating makes a worker work on each call as often as the slowdown says: the
// browser's own slowdown does not reach a worker.
const repeating = `
;{
	const own = self.onmessage, post = self.postMessage
	self.onmessage = (event) => {
		if ('call' in event.data) {
			self.postMessage = () => {}
			for (let i = 1; i < %d; i++) own.call(self, event)
			self.postMessage = post
		}
		own.call(self, event)
	}
}`

// page measures the page in Chromium against the bare page of the same run:
// unslowed the reply of the worker, and slowed the time from a key to the painted
// answer.
func (m *measure) page(root string, made site.Files) error {
	bare, err := site.Bare(root)
	if err != nil {
		return err
	}
	fast, err := latencies(root, made, bare, 1)
	if errors.Is(err, browser.ErrMissing) {
		m.past = append(m.past, "latency on the page: "+err.Error())
		return nil
	}
	if err != nil {
		return err
	}
	slow, err := latencies(root, made, bare, slowdown)
	if err != nil {
		return err
	}
	m.beside("reply after post on the page, median", fast.replied, 0.5, replyToBare)
	m.beside(fmt.Sprintf("key to painted answer, slowed %d times, 95th percentile", slowdown), slow.painted, 0.95, paintToBare)
	return nil
}

// beside holds a quantile of what the page took to that of the bare page.
func (m *measure) beside(what string, took taken, share, limit float64) {
	full, bare := quantile(took.full, share), quantile(took.bare, share)
	fmt.Printf("%s: %.1f ms to a bare page's %.1f\n", what, full, bare)
	m.hold(what+", to a bare page's", full/bare, limit, "")
}

// noted is what was measured of two pages.
type noted struct{ painted, replied taken }

// latencies types on the page and on a bare one by turns, and notes each key.
func latencies(root string, made, bare site.Files, slow int) (n noted, err error) {
	var pages [2]*browser.Session
	for i, files := range []site.Files{made, bare} {
		s, stop, err := watched(root, files, slow)
		if err != nil {
			return n, err
		}
		defer stop()
		pages[i] = s
	}
	for i := range keysMeasured {
		for _, s := range pages {
			if err := typeKey(s, i); err != nil {
				return n, err
			}
		}
	}
	for i, to := range [][2]*[]float64{{&n.painted.full, &n.replied.full}, {&n.painted.bare, &n.replied.bare}} {
		if err := pages[i].ExecuteTo(&to, "return [window.painted, window.replied]"); err != nil {
			return n, err
		}
	}
	return n, nil
}

// watched opens a page with the watch on it and, slowed, a worker that repeats
// itself. It is ready to be typed on.
func watched(root string, files site.Files, slow int) (s *browser.Session, stop func(), err error) {
	variant, err := files.WithWorkerAdding(root, fmt.Sprintf(repeating, slow))
	if err != nil {
		return nil, nil, err
	}
	variant["watch.js"] = []byte(watching)
	variant["index.html"] = []byte(strings.Replace(string(variant["index.html"]), "<head>", `<head><script src="watch.js"></script>`, 1))
	address, stopServing, err := variant.Serve()
	if err != nil {
		return nil, nil, err
	}
	s, err = browser.Start(browser.Chromium, browser.Options{})
	if err != nil {
		stopServing()
		return nil, nil, err
	}
	stop = func() {
		s.Close()
		stopServing()
	}
	if err := open(s, address, slow); err != nil {
		stop()
		return nil, nil, err
	}
	return s, stop, nil
}

// open opens a page with its first answer and the cursor behind the depth.
func open(s *browser.Session, address string, slow int) error {
	if err := errors.Join(s.SetWindow(1024, 768), s.Navigate(address)); err != nil {
		return err
	}
	if err := s.Wait(20*time.Second, `!document.querySelector('.waiting') && document.getElementById('sentence').textContent`); err != nil {
		return err
	}
	if _, err := s.Execute(`document.getElementById('example')?.click()`); err != nil {
		return err
	}
	if err := s.Wait(5*time.Second, `document.getElementById('sentence').textContent.includes('brass')`); err != nil {
		return err
	}
	if err := s.DevTools("Emulation.setCPUThrottlingRate", map[string]any{"rate": slow}); err != nil {
		return err
	}
	_, err := s.Execute(`const d = document.getElementById('depth'); d.focus(); d.setSelectionRange(d.value.length, d.value.length)
		window.painted.length = window.replied.length = 0`)
	return err
}

// typeKey types one more digit of the depth or takes it back, so that each key has
// another answer, and waits until that is painted.
func typeKey(s *browser.Session, i int) error {
	key := string(rune('1' + i/2%9))
	if i%2 == 1 {
		key = browser.Backspace
	}
	if err := s.Press(key); err != nil {
		return err
	}
	time.Sleep(restBetweenKeys)
	return s.Wait(5*time.Second, "window.painted.length > arguments[0]", i)
}

// quantile is the value that a share of the sample does not exceed.
func quantile(sample []float64, share float64) float64 {
	sorted := slices.Sorted(slices.Values(sample))
	if len(sorted) == 0 {
		return 0
	}
	return sorted[min(len(sorted)-1, int(share*float64(len(sorted))))]
}
