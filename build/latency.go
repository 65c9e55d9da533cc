package main

import (
	"errors"
	"fmt"
	"net"
	"net/http"
	"slices"
	"strings"
	"time"

	"saltbite/build/engine"
	"saltbite/build/seal"
)

const (
	keysMeasured = 200
	// Before the page is asked whether it has painted, which takes its time too.
	restBetweenKeys = 80 * time.Millisecond
	slowdown        = 4 // a tablet's processor beside a workshop's computer, roughly
)

// watching notes on the page how long it takes from a key to the painted answer,
// and from the post of a call to its reply. What is painted is known one task
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
			this.addEventListener('message', () => { if (this.#posted) replied.push(performance.now() - this.#posted) })
		}
		postMessage(message) {
			this.#posted = 'call' in message ? performance.now() : 0
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

// page measures the page in Chromium: unslowed the replies of the worker, and
// slowed the time from a key to the painted answer.
func (m *measure) page(root string, made site) error {
	fast, err := latencies(root, made, 1)
	if errors.Is(err, engine.ErrMissing) {
		m.past = append(m.past, "latency on the page: "+err.Error())
		return nil
	}
	if err != nil {
		return err
	}
	slow, err := latencies(root, made, slowdown)
	if err != nil {
		return err
	}
	m.hold("reply after post on the page, median", quantile(fast.Replied, 0.5), replyLimit, " ms")
	fmt.Printf("from key to painted answer: median %.1f ms, slowed %d times %.1f ms\n",
		quantile(fast.Painted, 0.5), slowdown, quantile(slow.Painted, 0.5))
	m.hold(fmt.Sprintf("key to painted answer, slowed %d times, 95th percentile", slowdown),
		quantile(slow.Painted, 0.95), paintLimit, " ms")
	return nil
}

// noted is what was measured, in milliseconds.
type noted struct{ Painted, Replied []float64 }

// latencies types on the page and notes each key.
func latencies(root string, made site, slow int) (noted, error) {
	variant, err := watched(root, made, slow)
	if err != nil {
		return noted{}, err
	}
	s, err := engine.Start(engine.Chromium, engine.Options{})
	if err != nil {
		return noted{}, err
	}
	defer s.Close()
	address, stop, err := serveOnce(variant)
	if err != nil {
		return noted{}, err
	}
	defer stop()
	if err := errors.Join(s.SetWindow(1024, 768), s.Navigate(address)); err != nil {
		return noted{}, err
	}
	err = s.Wait(20*time.Second, `!document.querySelector('.waiting') && document.getElementById('sentence').textContent`)
	if err != nil {
		return noted{}, err
	}
	_, err = s.Execute(`document.getElementById('example').click()`)
	if err != nil {
		return noted{}, err
	}
	if err := s.Wait(5*time.Second, `document.getElementById('sentence').textContent.includes('brass')`); err != nil {
		return noted{}, err
	}
	if slow > 1 {
		if err := s.DevTools("Emulation.setCPUThrottlingRate", map[string]any{"rate": slow}); err != nil {
			return noted{}, err
		}
	}
	return typeKeys(s)
}

// watched is the site with the watch on its page and, slowed, a worker that
// repeats itself.
func watched(root string, made site, slow int) (site, error) {
	variant := made.withoutTwins()
	variant["watch.js"] = []byte(watching)
	delete(variant, keeper.out) // what keeps the page would work meanwhile
	slowed, err := headBundle.makeAdding(root, made, fmt.Sprintf(repeating, slow))
	if err != nil {
		return nil, err
	}
	seal.Replace(variant, headBundle.out, slowed)
	variant["index.html"] = []byte(strings.Replace(string(variant["index.html"]), "<head>", `<head><script src="watch.js"></script>`, 1))
	return variant, nil
}

func serveOnce(made site) (address string, stop func(), err error) {
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return "", nil, err
	}
	server := &http.Server{Handler: &shop{site: made}, ReadHeaderTimeout: 10 * time.Second}
	go server.Serve(listener)
	return "http://" + listener.Addr().String() + "/", func() { server.Close() }, nil
}

// typeKeys types one more digit of the depth and takes it back, over and over:
// each key has another answer.
func typeKeys(s *engine.Session) (noted, error) {
	var n noted
	_, err := s.Execute(`const d = document.getElementById('depth'); d.focus(); d.setSelectionRange(d.value.length, d.value.length); window.painted.length = 0; window.replied.length = 0`)
	if err != nil {
		return n, err
	}
	for i := range keysMeasured {
		key := string(rune('1' + i/2%9))
		if i%2 == 1 {
			key = engine.Backspace
		}
		if err := s.Press(key); err != nil {
			return n, err
		}
		time.Sleep(restBetweenKeys)
		if err := s.Wait(5*time.Second, "window.painted.length > arguments[0]", i); err != nil {
			return n, err
		}
	}
	return n, s.ExecuteTo(&n, "return { painted: window.painted, replied: window.replied }")
}

// quantile is the value that a share of the sample does not exceed.
func quantile(sample []float64, share float64) float64 {
	sorted := slices.Sorted(slices.Values(sample))
	if len(sorted) == 0 {
		return 0
	}
	return sorted[min(len(sorted)-1, int(share*float64(len(sorted))))]
}
