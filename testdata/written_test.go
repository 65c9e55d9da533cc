package testdata

import (
	"strings"
	"testing"
)

func TestChanged(t *testing.T) {
	for _, c := range []struct{ written, now, says string }{
		{"a\nb\n", "a\nb\n", ""},
		{"a\nb\n", "a\nc\n", "line 2"},
		{"a\n", "a\nb\n", "line 2"},
		{"a\nb\n", "a\n", "line 2"},
	} {
		says, err := Changed("none.txt", c.written, c.now)
		if err != nil || !strings.HasPrefix(says, c.says) || c.says == "" && says != "" {
			t.Errorf("of %q and %q it says %q, %v", c.written, c.now, says, err)
		}
	}
}
