package browser

import (
	"bytes"
	"errors"
	"image/png"
	"net/http"
	"net/http/httptest"
	"os"
	"slices"
	"strings"
	"testing"
	"time"
)

const testPage = `<!doctype html><title>t</title><script>` + ConsoleHook + `</script><style>body { margin: 0; background: white }
@media (prefers-color-scheme: dark) { body { background: black } }</style>
<input id=a><button id=b onclick="document.title = document.getElementById('a').value">b</button>
<button id=c onclick="console.warn('heard', 1); throw new Error('thrown')">c</button>`

// TestSession puts each engine through every method on a page of its own.
func TestSession(t *testing.T) {
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/html")
		w.Write([]byte(testPage))
	}))
	t.Cleanup(server.Close)
	for _, name := range Names {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			s := ForTest(t, name, Options{Dark: true, Pictures: true})
			if err := s.Navigate(server.URL); err != nil {
				t.Fatal(err)
			}
			presses(t, s) // first: in WebKitGTK, Shift Tab stays where it is once a mouse was used
			typesAndClicks(t, s)
			awaits(t, s)
			resizes(t, s)
			if !isDark(t, s) {
				t.Error("started dark, and the page is not")
			}
			if err := s.Dark(false); err == nil && isDark(t, s) {
				t.Error("made light, and the page is not")
			} else if err != nil && !errors.Is(err, ErrNotHere) {
				t.Error(err)
			}
			hearsConsole(t, s)
			prints(t, s)
		})
	}
}

func typesAndClicks(t *testing.T, s *Session) {
	t.Helper()
	field, err := s.Find("#a")
	if err != nil {
		t.Fatal(err)
	}
	button, err := s.Find("#b")
	if err != nil {
		t.Fatal(err)
	}
	if err := errors.Join(field.Type("½ mm"), button.Click()); err != nil {
		t.Fatal(err)
	}
	if title, err := s.Execute("return document.title"); title != "½ mm" {
		t.Errorf("typed ½ mm, title %v, %v", title, err)
	}
	if tag, err := s.Execute("return arguments[0].localName", field.Argument()); tag != "input" {
		t.Errorf("element as an argument: %v, %v", tag, err)
	}
	if _, err := s.Find("#none"); err == nil {
		t.Error("found what is not there")
	}
	if _, err := s.Execute("throw new Error('own')"); err == nil || !strings.Contains(err.Error(), "own") {
		t.Errorf("a thrown error came back as %v", err)
	}
}

func presses(t *testing.T, s *Session) {
	t.Helper()
	if _, err := s.Execute("document.getElementById('b').focus()"); err != nil {
		t.Fatal(err)
	}
	if err := s.Press(Shift + Tab); err != nil {
		t.Fatal(err)
	}
	if id, err := s.Execute("return document.activeElement.id"); id != "a" {
		t.Errorf("Shift Tab from the button led to %v, %v", id, err)
	}
	if err := s.Press(Tab); err != nil {
		t.Fatal(err)
	}
	if id, err := s.Execute("return document.activeElement.id"); id != "b" {
		t.Errorf("Tab led on to %v, %v", id, err)
	}
}

func awaits(t *testing.T, s *Session) {
	t.Helper()
	var sum int
	if err := s.ExecuteAsync(&sum, "const [a, b, done] = arguments; setTimeout(() => done(a + b), 10)", 1, 2); err != nil || sum != 3 {
		t.Errorf("1 + 2 = %d, %v", sum, err)
	}
	if err := s.Wait(5*time.Second, "(window.count = (window.count || 0) + 1) > 3"); err != nil {
		t.Error(err)
	}
	if err := s.Wait(0, "false"); err == nil {
		t.Error("waited for nothing")
	}
}

func resizes(t *testing.T, s *Session) {
	t.Helper()
	for _, size := range [][2]int{{1024, 768}, {768, 1024}} {
		if err := s.SetWindow(size[0], size[1]); err != nil {
			t.Error(err)
			continue
		}
		shot, err := s.Screenshot()
		if err != nil {
			t.Fatal(err)
		}
		picture, err := png.DecodeConfig(bytes.NewReader(shot))
		if err != nil || picture.Width != size[0] || picture.Height != size[1] {
			t.Errorf("a window of %v gave a picture of %d by %d, %v", size, picture.Width, picture.Height, err)
		}
	}
}

func isDark(t *testing.T, s *Session) bool {
	t.Helper()
	dark, err := s.Execute("return matchMedia('(prefers-color-scheme: dark)').matches")
	if err != nil {
		t.Fatal(err)
	}
	return dark == true
}

func hearsConsole(t *testing.T, s *Session) {
	t.Helper()
	if before, err := s.Console(); err != nil || len(before) > 0 {
		t.Errorf("a silent page wrote %q, %v", before, err)
	}
	button, err := s.Find("#c")
	if err != nil {
		t.Fatal(err)
	}
	if err := button.Click(); err != nil {
		t.Fatal(err)
	}
	time.Sleep(300 * time.Millisecond)
	said, err := s.Console()
	holds := func(word string) bool {
		return slices.ContainsFunc(said, func(m string) bool { return strings.Contains(m, word) })
	}
	if err != nil || !holds("heard") || !holds("thrown") {
		t.Errorf("the console held %q, %v", said, err)
	}
	if again, err := s.Console(); err != nil || len(again) > 0 {
		t.Errorf("the console was not emptied: %q, %v", again, err)
	}
}

func prints(t *testing.T, s *Session) {
	t.Helper()
	document, err := s.Print()
	if errors.Is(err, ErrNotHere) {
		return
	}
	if err != nil || !bytes.HasPrefix(document, []byte("%PDF")) {
		t.Errorf("a print of %d bytes, %v", len(document), err)
	}
}

// A session that was closed has left no file behind.
func TestNothingIsLeft(t *testing.T) {
	for _, name := range Names {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			t.Setenv("TMPDIR", dir)
			s, err := Start(name, Options{Sparing: true})
			if errors.Is(err, ErrMissing) && os.Getenv("SALTBITE_SETUP") == "" {
				t.Skip(err)
			}
			if err != nil {
				t.Fatal(err)
			}
			s.Close()
			left, err := os.ReadDir(dir)
			if err != nil || len(left) > 0 {
				t.Errorf("left are %v, %v", left, err)
			}
		})
	}
}
