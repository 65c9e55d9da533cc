package pagetest

import (
	"testing"

	"saltbite/build/browser"
)

// check is one test, on a page that was just opened with nothing stored.
type check struct {
	name string
	hold func(*testing.T, *page)
}

// holdAll runs all checks in each engine.
func holdAll(t *testing.T, checks []check) {
	t.Helper()
	hold(t, browser.Names, (*page).fresh, checks)
}

// hold runs all checks in some engines; the page is opened again for each check.
func hold(t *testing.T, engines []string, open func(*page), checks []check) {
	t.Helper()
	startEach(t, engines, browser.Options{Sparing: true}, func(t *testing.T, session *browser.Session) {
		s := serve(t)
		for _, c := range checks {
			t.Run(c.name, func(t *testing.T) {
				p := &page{t, session, s}
				open(p)
				c.hold(t, p)
			})
		}
	})
}

// inEngines runs a test in each of some engines, in a session of its own.
func inEngines(t *testing.T, engines []string, test func(*testing.T, *browser.Session)) {
	t.Helper()
	startEach(t, engines, browser.Options{Sparing: true}, test)
}

func startEach(t *testing.T, engines []string, o browser.Options, test func(*testing.T, *browser.Session)) {
	t.Helper()
	eachOf(t, engines, func(t *testing.T, name string) {
		session := browser.ForTest(t, name, o)
		if err := session.SetWindow(1024, 768); err != nil { // with room for the answer beside the form
			t.Fatal(err)
		}
		test(t, session)
	})
}

// eachOf runs a test for each of some engines, in parallel: most of the time a
// browser waits.
func eachOf(t *testing.T, engines []string, test func(t *testing.T, name string)) {
	t.Helper()
	for _, name := range engines {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			test(t, name)
		})
	}
}

// shareOf is an engine's share of the cases of a check whose outcome hardly depends on
// the engine: each case is tried in one of them.
func shareOf[T any](engine string, cases []T) (share []T) {
	for n, c := range cases {
		if browser.Names[n%len(browser.Names)] == engine {
			share = append(share, c)
		}
	}
	return share
}

// twoTabs opens a second tab, and returns both and a function that directs commands
// to one of them.
func twoTabs(t *testing.T, s *browser.Session) (first, second string, to func(tab string)) {
	t.Helper()
	first, err := s.Tab()
	if err == nil {
		second, err = s.NewTab()
	}
	if err != nil {
		t.Fatal(err)
	}
	return first, second, func(tab string) {
		t.Helper()
		if err := s.SwitchTo(tab); err != nil {
			t.Fatal(err)
		}
	}
}
