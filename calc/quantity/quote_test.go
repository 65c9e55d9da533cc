package quantity

import (
	"strings"
	"testing"
)

// The first 40 characters, not bytes, and a sign only where there are more.
func TestQuote(t *testing.T) {
	forty := strings.Repeat("é", 40)
	for _, c := range []struct{ text, want string }{
		{"", "“”"}, {"0,4", "“0,4”"}, {forty, "“" + forty + "”"}, {forty + "x", "“" + forty + "…”"}, {"\xff", "“\xff”"},
	} {
		if got := Quote(c.text); got != c.want {
			t.Errorf("%q is quoted as %s", c.text, got)
		}
	}
}
