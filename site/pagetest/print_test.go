package pagetest

import (
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"saltbite/build/browser"
)

// TestPrint reads the printed page: it has the sentence and the filled fields, also
// those in a folded part.
func TestPrint(t *testing.T) {
	t.Parallel()
	printing := []string{browser.Chromium, browser.Firefox} // the third has no print command
	inEngines(t, printing, func(t *testing.T, session *browser.Session) {
		p := &page{t, session, serve(t)}
		p.fresh()
		p.fill(copperJob)
		p.fill(map[string]string{"line": "0.3", "seen": "pink"})
		p.answers(copperTime)
		document, err := p.Print()
		if err != nil {
			t.Fatal(err)
		}
		words := strings.Join(strings.Fields(textOf(t, document)), " ")
		printed := strings.Join(strings.Fields(p.say(`return document.getElementById('printed').textContent`)), " ")
		if today := "printed " + time.Now().Format("2 January 2006"); !strings.Contains(printed, " Cu ") || !strings.HasSuffix(printed, today) {
			t.Errorf("the metal's composition and the day are %q", printed)
		}
		for _, wanted := range []string{copperTime, "copper", "Current density", "Narrowest line", printed} {
			if !strings.Contains(words, wanted) {
				t.Errorf("%q is not printed: %s", wanted, words)
			}
		}
		for _, never := range []string{"How long?", "Go to "} { // what leads about the page leads nowhere on paper
			if strings.Contains(words, never) {
				t.Errorf("%q is printed: %s", never, words)
			}
		}
	})
}

// textOf is the text of a PDF.
func textOf(t *testing.T, document []byte) string {
	t.Helper()
	return string(readPDF(t, document, "-layout"))
}

// readPDF is the output of poppler's pdftotext for a PDF, in the format of an option.
func readPDF(t *testing.T, document []byte, form string) []byte {
	t.Helper()
	path := filepath.Join(t.TempDir(), "page.pdf")
	if err := os.WriteFile(path, document, 0o644); err != nil {
		t.Fatal(err)
	}
	read, err := exec.Command("pdftotext", form, path, "-").Output()
	if errors.Is(err, exec.ErrNotFound) && os.Getenv("SALTBITE_SETUP") == "" {
		t.Skip("there is no pdftotext here")
	}
	if err != nil {
		t.Fatal(err)
	}
	return read
}
