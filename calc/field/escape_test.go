package field

import (
	"net/url"
	"testing"
	"unicode/utf8"
)

func TestUnescape(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		// WHATWG URL Standard, percent-decode and the parser of the form; computed by it
		{"0%2C2+mm", "0,2 mm"},
		{"%e2%82%AC", "€"},
		{"%2B%25", "+%"},
		{"100%", "100%"},
		{"100%+Cu", "100% Cu"},
		{"%4", "%4"},
		{"%zz%41", "%zzA"},
		{"%%41", "%A"},
		{"%00", "\x00"},
		{"%FFmm", "\uFFFDmm"},
		{"a\xffb", "a\uFFFDb"},
		{"Kupfer", "Kupfer"},
		{"", ""},
	} {
		if got := unescape(c.text); got != c.want {
			t.Errorf("%q is %q, want %q", c.text, got, c.want)
		}
	}
}

// Where the standard library can read an escaped text, this reads the same; and
// what the library escapes comes back.
func FuzzUnescape(f *testing.F) {
	for _, text := range []string{"0%2C2+mm", "%zz", "%", "é+%E9", "½ in"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got := unescape(text)
		if !utf8.ValidString(got) {
			t.Errorf("%q gives %q, which can't be shown", text, got)
		}
		if want, err := url.QueryUnescape(text); err == nil && utf8.ValidString(want) && got != want {
			t.Errorf("%q is %q, want %q", text, got, want)
		}
		if back := unescape(url.QueryEscape(text)); utf8.ValidString(text) && back != text {
			t.Errorf("%q comes back as %q", text, back)
		}
	})
}
