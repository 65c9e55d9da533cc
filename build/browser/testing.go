package browser

import (
	"errors"
	"os"
	"testing"
)

// ForTest starts an engine that ends with the test. Where the engine is not
// installed the test is skipped, or, in a run that was to install everything,
// failed.
func ForTest(t testing.TB, name string, o Options) *Session {
	t.Helper()
	s, err := Start(name, o)
	switch {
	case errors.Is(err, ErrMissing) && os.Getenv("SALTBITE_SETUP") == "":
		t.Skip(err)
	case err != nil:
		t.Fatal(err)
	}
	t.Cleanup(s.Close)
	return s
}
