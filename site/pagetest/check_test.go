package pagetest

import (
	"testing"

	"saltbite/build/engine"
)

// check is one promise, on a page that was just opened with nothing kept.
type check struct {
	name string
	hold func(*testing.T, *page)
}

// holdAll holds the page to all checks in each engine.
func holdAll(t *testing.T, checks []check) {
	t.Helper()
	hold(t, engine.Names, (*page).fresh, checks)
}

// hold holds the page, opened anew for each, to all checks in some engines.
func hold(t *testing.T, engines []string, open func(*page), checks []check) {
	t.Helper()
	inEngines(t, engines, func(t *testing.T, session *engine.Session) {
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
func inEngines(t *testing.T, engines []string, test func(*testing.T, *engine.Session)) {
	t.Helper()
	eachOf(t, engines, func(t *testing.T, name string) { test(t, engine.ForTest(t, name, engine.Options{})) })
}

// eachOf runs a test for each of some engines, side by side with each other and
// with other tests: for most of its time a browser waits.
func eachOf(t *testing.T, engines []string, test func(t *testing.T, name string)) {
	t.Helper()
	for _, name := range engines {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			test(t, name)
		})
	}
}

// twoTabs opens a tab beside the one there is, and returns what lets commands go
// to either.
func twoTabs(t *testing.T, s *engine.Session) (first, second string, to func(tab string)) {
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
