package metal

import "testing"

func TestWithoutThousand(t *testing.T) {
	for text, want := range map[string]string{
		"silber 925/1000": "silber 925", "925/1000 silber": "925 silber", "925/000": "925", "5/1000": "5", "silber9/1000": "silber9", "95a/1000": "95a/1000", "925/1000": "925",
		"925/10000": "925/10000", "925/0001": "925/0001", "silber /1000": "silber /1000", "/1000": "/1000", "silber/1000": "silber/1000", "925": "925",
	} {
		if got := withoutThousand(text); got != want {
			t.Errorf("%q becomes %q, want %q", text, got, want)
		}
	}
}

// One word for a shape is kept in turn; without such words the text stays alone.
func TestWithoutShapes(t *testing.T) {
	for _, c := range []struct {
		list []string
		want int
	}{{[]string{"red", "brass"}, 1}, {[]string{"red", "brass", "sheet"}, 2}, {[]string{"etching", "brass", "sheet"}, 4}, {[]string{"messingband"}, 2}, {[]string{"18", "ga", "brass"}, 2}} {
		if got := withoutShapes(c.list); len(got) != c.want {
			t.Errorf("%v has the forms %v, want %d", c.list, got, c.want)
		}
	}
}
