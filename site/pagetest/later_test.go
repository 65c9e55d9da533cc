package pagetest

import (
	"net/http"
	"sync"
	"testing"
	"time"

	"saltbite/build/browser"
)

func init() {
	servings["later.js late"] = lateLater
	servings["no later.js"] = lacking("later.js")
	servings["half of later.js"] = halving("later.js")
	servings["later.js after saltbite.mjs"] = onceAsked()
}

// lateness is how long lateLater keeps a page waiting: longer than the page waits in silence.
const lateness = 3 * time.Second

func lateLater(_ *server, _ http.ResponseWriter, r *http.Request, name string, body []byte) []byte {
	if name == "later.js" {
		select {
		case <-r.Context().Done():
		case <-time.After(lateness):
		}
	}
	return body
}

// onceAsked has the second script once another file was asked for, by which a test
// says when.
func onceAsked() serving {
	var asked sync.Map
	return func(s *server, w http.ResponseWriter, r *http.Request, name string, body []byte) []byte {
		if name == "saltbite.mjs" {
			asked.Store(s, true)
		}
		if _, there := asked.Load(s); name == "later.js" && !there {
			http.NotFound(w, r)
			return nil
		}
		return body
	}
}

// TestLater opens the page where its second script comes late or not at all: the
// page answers, no touch is lost, and what can't work is said.
func TestLater(t *testing.T) {
	t.Parallel()
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		p := &page{t, session, serve(t)}
		open := func(host string) {
			t.Helper()
			p.loadOnly("/host/" + host + "/")
			p.until(answering)
			p.ask(`localStorage.clear(); sessionStorage.clear()`)
		}

		open("later.js%20late")
		p.click("#card")
		p.click("#to-jobs")
		if p.ask(`return document.querySelector('dialog[open]') === null`) != true {
			t.Error("a dialog opened before its script was there")
		}
		p.noticed("on its way")
		p.fill(copperJob)
		p.answers(copperTime)
		p.until(`document.getElementById('jobs').open`)
		p.until(`document.getElementById('notice').textContent === ''`)
		if p.ask(`return document.getElementById('onpaper').open`) != false {
			t.Error("a touch that another followed opened its dialog too")
		}
		p.closes()

		for _, host := range []string{"no%20later.js", "half%20of%20later.js"} {
			open(host)
			p.fill(copperJob)
			p.answers(copperTime)
			p.click("#to-share")
			p.noticed("could not be loaded")
			p.bring("metal=silver")
			p.noticed("The job in the link could not be opened")
			p.fill(map[string]string{"depth": "0.2"})
			p.until(`/\d h/.test(document.getElementById('sentence').textContent) && !document.getElementById('sentence').textContent.includes(arguments[0])`, copperTime)
		}

		open("later.js%20after%20saltbite.mjs")
		p.click("#to-share")
		p.noticed("could not be loaded")
		p.ask(`return fetch('saltbite.mjs').then(() => true)`)
		// Touched again until it comes: what the page fetches while it is idle may fail just then.
		p.until(`document.getElementById('share').open || document.getElementById('to-share').click()`)
	})
}
