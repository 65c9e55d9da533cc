package seal

import (
	"strings"
	"testing"
)

// The hash of "abc" is FIPS 180-4's example for SHA-256.
func TestSealIsSHA256(t *testing.T) {
	s := Of([]byte("abc"))
	if want := "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"; s.Hash != want {
		t.Errorf("the hash of abc is %s, not %s", s.Hash, want)
	}
	if want := "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="; s.Integrity != want {
		t.Errorf("the integrity of abc is %s, not %s", s.Integrity, want)
	}
	if !strings.HasPrefix(s.Hash, s.Tag()) || len(s.Tag()) != 12 {
		t.Errorf("the tag of abc is %q", s.Tag())
	}
}

func TestVersionIsOfNamesAndBodies(t *testing.T) {
	seen := map[string]string{}
	for name, files := range map[string]map[string][]byte{
		"two files":      {"a": []byte("1"), "b": []byte("2")},
		"a changed body": {"a": []byte("1"), "b": []byte("3")},
		"a changed name": {"a": []byte("1"), "c": []byte("2")},
		"swapped bodies": {"a": []byte("2"), "b": []byte("1")},
		"one file":       {"a": []byte("1")},
	} {
		version := Version(files)
		if other, twice := seen[version]; twice {
			t.Errorf("%s and %s have the same version", name, other)
		}
		seen[version] = name
		if again := Version(files); again != version {
			t.Errorf("%s: version %s, then %s", name, version, again)
		}
	}
}

// A page knows its script, which knows the program: another program makes all
// three new, and leaves alone what knows neither.
func TestReplaceGoesOn(t *testing.T) {
	program := []byte("program")
	script := []byte("load('p?v=" + Of(program).Tag() + "', '" + Of(program).Integrity + "')")
	files := map[string][]byte{
		"program": program, "script": script, "other": []byte("other"),
		"page": []byte("script " + Of(script).Hash),
	}
	next := []byte("another program")
	Replace(files, "program", next)
	if want := "load('p?v=" + Of(next).Tag() + "', '" + Of(next).Integrity + "')"; string(files["script"]) != want {
		t.Errorf("the script became %s, not %s", files["script"], want)
	}
	if want := "script " + Of(files["script"]).Hash; string(files["page"]) != want {
		t.Errorf("the page became %s, not %s", files["page"], want)
	}
	if string(files["other"]) != "other" {
		t.Errorf("what knew neither became %s", files["other"])
	}
}
