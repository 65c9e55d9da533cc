package check

import (
	"slices"
	"testing"
)

// TestAlone: of what failed, the tests without a failing test below them are run
// again; those above have passed once all of theirs have.
func TestAlone(t *testing.T) {
	var said []failure
	for _, name := range []string{"TestA/Chromium/moves", "TestA/Chromium/is_cut_(1)", "TestA/Chromium", "TestA", "TestAB", "TestC/x"} {
		said = append(said, failure{event{Test: name}, ""})
	}
	leaves := leavesOf(said)
	var names []string
	for _, leaf := range leaves {
		names = append(names, leaf.Test)
	}
	if want := []string{"TestA/Chromium/moves", "TestA/Chromium/is_cut_(1)", "TestAB", "TestC/x"}; !slices.Equal(names, want) {
		t.Errorf("run again are %q, not %q", names, want)
	}
	passed := map[string]bool{"TestA/Chromium/moves": true, "TestC/x": true}
	for name, want := range map[string]bool{"TestA/Chromium/moves": true, "TestA/Chromium/is_cut_(1)": false, "TestA/Chromium": false, "TestA": false, "TestAB": false, "TestC/x": true} {
		if got := allPassed(name, leaves, passed); got != want {
			t.Errorf("%s: passed %v, not %v", name, got, want)
		}
	}
	if got, want := patternOf("TestA/Chromium/is_cut_(1)"), `^TestA$/^Chromium$/^is_cut_\(1\)$`; got != want {
		t.Errorf("-run is %q, not %q", got, want)
	}
}
