package browser

import (
	"errors"
	"os"
	"slices"
	"sync"
	"testing"
)

// ForTest starts an engine that ends with the test, or gives it one that another test
// has left as if it were new. Where the engine is not installed the test is skipped,
// or, in a run that was to install everything, failed.
func ForTest(t testing.TB, name string, o Options) *Session {
	t.Helper()
	if s := takeIdle(name, o); s != nil {
		t.Cleanup(func() { s.leave(o, t.Failed()) })
		return s
	}
	s, err := Start(name, o)
	switch {
	case errors.Is(err, ErrMissing) && os.Getenv("SALTBITE_SETUP") == "":
		t.Skip(err)
	case err != nil:
		t.Fatal(err)
	}
	t.Cleanup(func() { s.leave(o, t.Failed()) })
	return s
}

// idle are sessions that tests have left as if they were new. To start Firefox costs
// 3 s of a processor; a page from another port knows nothing of those before it.
var idle struct {
	sync.Mutex
	sessions []idleSession
}

type idleSession struct {
	*Session
	options Options
}

// takeIdle takes an idle session of an engine that was started so, or returns nil.
func takeIdle(name string, o Options) *Session {
	idle.Lock()
	defer idle.Unlock()
	for i, s := range idle.sessions {
		if s.Name == name && s.options == o {
			idle.sessions = slices.Delete(idle.sessions, i, i+1)
			return s.Session
		}
	}
	return nil
}

// leave lets another test have the session if it can be made as if it were new, and
// ends it otherwise.
func (s *Session) leave(o Options, spoilt bool) {
	if spoilt || o.Profile != "" || o.Dark || s.renew == nil || s.renew() != nil {
		s.Close()
		return
	}
	idle.Lock()
	defer idle.Unlock()
	idle.sessions = append(idle.sessions, idleSession{s, o})
}

// CloseIdle ends the sessions that no test has any more. A package's TestMain calls it
// after all tests.
func CloseIdle() {
	idle.Lock()
	defer idle.Unlock()
	for _, s := range idle.sessions {
		s.Close()
	}
	idle.sessions = nil
}
