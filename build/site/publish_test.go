package site

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"saltbite/build/tool"
)

// small is a site that is complete and takes no time to make.
func small(t *testing.T) Files {
	t.Helper()
	page := `<meta http-equiv="Content-Security-Policy" content="default-src 'none'">` + strings.Repeat("<p>word</p>", 200)
	s := Files{"index.html": []byte(page), "page.js": []byte("1"), "saltbite.mjs": []byte("2"), "embed/index.html": []byte(page)}
	if err := s.complete("../..", "v1.2.3", "abc", nil); err != nil {
		t.Fatal(err)
	}
	return s
}

func TestSumsAreCheckedByTheSystem(t *testing.T) {
	if _, err := exec.LookPath("sha256sum"); err != nil {
		t.Skip("there is no sha256sum here")
	}
	dir := t.TempDir()
	s := small(t)
	if err := s.WriteTo(dir); err != nil {
		t.Fatal(err)
	}
	check := func() ([]byte, error) {
		cmd := exec.Command("sha256sum", "-c", "--strict", sumsName)
		cmd.Dir = dir
		return cmd.CombinedOutput()
	}
	said, err := check()
	if err != nil || bytes.Count(said, []byte(": OK\n")) != len(s)-1 {
		t.Errorf("%v: of %d files it says\n%s", err, len(s), said)
	}
	if err := os.WriteFile(filepath.Join(dir, "page.js"), []byte("3"), 0o644); err != nil {
		t.Fatal(err)
	}
	if said, err = check(); err == nil {
		t.Errorf("a changed file passes\n%s", said)
	}
}

func TestTwinsAreReadBack(t *testing.T) {
	s := small(t)
	for _, c := range codings {
		read, err := c.read(s["index.html"+c.suffix])
		if err != nil || !bytes.Equal(read, s["index.html"]) {
			t.Errorf("index.html%s reads as %d bytes, %v", c.suffix, len(read), err)
		}
		if _, found := s["page.js"+c.suffix]; found {
			t.Errorf("page.js has one byte and a twin %s", c.suffix)
		}
	}
	if gzip, err := exec.LookPath("gzip"); err == nil {
		cmd := exec.Command(gzip, "-dc")
		cmd.Stdin = bytes.NewReader(s["index.html.gz"])
		if read, err := cmd.Output(); err != nil || !bytes.Equal(read, s["index.html"]) {
			t.Errorf("gzip reads %d bytes, %v", len(read), err)
		}
	}
}

func TestASiteWithoutTwins(t *testing.T) {
	s := Files{"a.js": []byte("1"), "a.js.br": []byte("2"), "b.gz": []byte("no twin")}
	if plain := s.WithoutTwins(); strings.Join(plain.Names(), " ") != "a.js b.gz" || len(s) != 3 {
		t.Errorf("without twins are %v, and with them %v", plain.Names(), s.Names())
	}
}

func TestTwinsFromBeforeAreTakenOnlyIfTheyAreRight(t *testing.T) {
	s := small(t)
	before := Files{}
	for name, body := range s {
		before[name] = body
	}
	// Another valid twin, so that it shows which one was taken.
	loose := Brotli(append(bytes.Clone(s["index.html"]), ' '))
	tight := s["index.html.br"]
	for _, c := range []struct {
		name   string
		change func()
		taken  bool
	}{
		{"the same", func() {}, true},
		{"a twin of something else", func() { before["index.html.br"] = loose }, false},
		{"a twin that can't be read", func() { before["index.html.br"] = []byte("x") }, false},
		{"an older file", func() { before["index.html"] = []byte("x") }, false},
	} {
		for name, body := range s {
			before[name] = body
		}
		c.change()
		packed := codings[0].again("index.html", s["index.html"], before)
		if !bytes.Equal(packed, tight) {
			t.Errorf("%s: the twin is wrong", c.name)
		}
		if same := &packed[0] == &before["index.html.br"][0]; same != c.taken {
			t.Errorf("%s: taken from before is %v", c.name, same)
		}
	}
}

func TestABrowserGetsTheTwinThatItAccepts(t *testing.T) {
	s := Files{"a.js": []byte("plain"), "a.js.br": []byte("by brotli"), "a.js.gz": []byte("by gzip"), "b.js": []byte("alone")}
	for _, c := range []struct{ name, accepted, body, coding string }{
		{"a.js", "gzip, deflate, br", "by brotli", "br"},
		{"a.js", "gzip, deflate", "by gzip", "gzip"},
		{"a.js", "gzip;q=1.0, br;q=0", "by gzip", "gzip"},
		{"a.js", "br; q=0.5", "by brotli", "br"},
		{"a.js", "br;q=0.000", "plain", ""},
		{"a.js", "identity", "plain", ""},
		{"a.js", "", "plain", ""},
		{"b.js", "gzip, br", "alone", ""},
	} {
		if body, coding := s.twinFor(c.name, c.accepted); string(body) != c.body || coding != c.coding {
			t.Errorf("%s for %q is %q, %q", c.name, c.accepted, body, coding)
		}
	}
}

// TestEveryPartHasItsLicence reads the modules that the go command lists, and
// their texts where it keeps them.
func TestEveryPartHasItsLicence(t *testing.T) {
	of, err := materialsOf("../..")
	if err != nil {
		t.Fatal(err)
	}
	text, err := of.licences("../..")
	if err != nil {
		t.Fatal(err)
	}
	paths := map[string]bool{}
	for _, m := range append(of.shipped, of.tools...) {
		paths[m.Path] = true
		if _, err := m.licence(); err != nil {
			t.Error(err)
		}
	}
	for _, path := range []string{goModule, "github.com/hack-pad/safejs", "github.com/agnivade/levenshtein"} {
		if !paths[path] {
			t.Errorf("%s is part of the program and not among its modules", path)
		}
	}
	for _, words := range []string{"The Go Authors", "Agniva De Sarker", "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION", "Saltbite: BSD-3-Clause"} {
		if !bytes.Contains(text, []byte(words)) {
			t.Errorf("licences.txt has nothing of %q", words)
		}
	}
	if _, err := (module{"example.org/stranger", "v1", t.TempDir()}).licence(); err == nil {
		t.Error("a module that nobody has looked at has a licence")
	}
	if _, err := (module{goModule, "1", t.TempDir()}).licence(); err == nil {
		t.Error("a module without a text has a licence")
	}
}

func TestVersionsSayWhatItIsMadeOf(t *testing.T) {
	said := string(small(t)["versions.txt"])
	for _, line := range []string{"Saltbite v1.2.3\n", "commit abc\n", "  github.com/hack-pad/safejs v0.1.1, Apache-2.0\n", "  github.com/evanw/esbuild "} {
		if !strings.Contains(said, line) {
			t.Errorf("versions.txt has no line %q:\n%s", line, said)
		}
	}
	if shipped, _, _ := strings.Cut(said, toolsTitle); strings.Contains(shipped, "esbuild") {
		t.Error("a tool stands among what is shipped")
	}
	if !strings.Contains(madeWith([]byte(said)), "brotli") || madeWith(nil) != "" {
		t.Errorf("made with %q", madeWith([]byte(said)))
	}
}

func TestCommitIsOnlyThatOfCleanSources(t *testing.T) {
	dir := t.TempDir()
	if got := commitOf(dir); got != notKnown {
		t.Errorf("outside a repository the commit is %q", got)
	}
	git := func(args ...string) {
		t.Helper()
		if err := tool.Run(dir, nil, "git", append([]string{"-c", "user.name=x", "-c", "user.email=x@example.org"}, args...)...); err != nil {
			t.Fatal(err)
		}
	}
	git("init", "-q")
	git("commit", "-q", "--allow-empty", "-m", "first")
	if got := commitOf(dir); len(got) != 40 {
		t.Errorf("the commit is %q", got)
	}
	if err := os.WriteFile(filepath.Join(dir, "new"), nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if got := commitOf(dir); got != notKnown {
		t.Errorf("with a file that is not committed the commit is %q", got)
	}
}

func TestVersionOfThePackage(t *testing.T) {
	for version, want := range map[string]string{ // semver.org 2.0.0, its own examples among them
		"v1.2.3": "1.2.3", "1.0.0": "1.0.0", "v1.0.0-alpha.1": "1.0.0-alpha.1",
		"dev": "0.0.0-dev", "v1.2": "0.0.0-dev", "v01.2.3": "0.0.0-dev", "": "0.0.0-dev",
	} {
		if got := npmVersion(version); got != want {
			t.Errorf("%q is %q for a package manager, want %q", version, got, want)
		}
	}
	var m manifest
	if err := json.Unmarshal(npmPackage("v1.2.3"), &m); err != nil || m.Version != "1.2.3" || !m.Private || m.Engines["node"] != ">=20.16" {
		t.Errorf("package.json is %+v, %v", m, err)
	}
}

// TestTheNoteNamesWhatIsThere holds the note for hosts to the files that it
// names and to the width of a terminal.
func TestTheNoteNamesWhatIsThere(t *testing.T) {
	s := small(t)
	note := string(s["hosting.txt"])
	for _, line := range strings.Split(note, "\n") {
		if len(line) > 80 && !strings.Contains(line, "Content-Security-Policy: ") {
			t.Errorf("a line of %d characters: %s", len(line), line)
		}
	}
	if strings.Contains(note, "sw.js") {
		t.Error("the note tells of a file that is not there")
	}
	for _, h := range s.headers() {
		if !strings.Contains(note, "    "+h.Name+": "+h.Value+"\n") || h.Why == "" {
			t.Errorf("the note lacks the header %s or its reason", h.Name)
		}
	}
	if !strings.Contains(note, "    .mjs            text/javascript") {
		t.Error("the note lacks the type of .mjs")
	}
}
