package pagetest

import (
	"encoding/json"
	"fmt"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"saltbite/site/words"
)

func init() {
	for name, script := range map[string]string{
		"lasting": `Object.defineProperty(navigator, 'storage', { value: { async persisted() { return window.given ?? false }, async persist() { return window.given = true } } })`,
		"passing": `Object.defineProperty(navigator, 'storage', { value: { async persisted() { return false }, async persist() { return false } } })`,
		"unsaid":  `Object.defineProperty(navigator, 'storage', { value: undefined })`,
		"ipad": `Object.defineProperty(navigator, 'vendor', { value: 'Apple Computer, Inc.' })
			Object.defineProperty(navigator, 'userAgent', { value: 'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.5 Safari/605.1.15' })
			Object.defineProperty(navigator, 'maxTouchPoints', { value: 5 })` + ownOffersOff,
		"installable": ownOffersOff + `;addEventListener('DOMContentLoaded', () => setTimeout(() => {
			const offer = new Event('beforeinstallprompt', { cancelable: true })
			offer.prompt = () => { document.documentElement.dataset.prompted = 'yes' }
			dispatchEvent(offer)
		}))`,
	} {
		scripts[name] = script
	}
}

// ownOffersOff: a browser's own offer to install the page does not arrive.
const ownOffersOff = `;addEventListener('beforeinstallprompt', (event) => { if (event.isTrusted) event.stopImmediatePropagation() })`

func TestKept(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{
		{"how long", saysHowLongItKeeps},
		{"on an iPad", saysWhatSafariDeletes},
		{"installing", offersToInstall},
	})
}

// openKept opens what is said of the device, and waits for a text in it.
func (p *page) openKept(path, wanted string) {
	p.Helper()
	p.load(path)
	p.click("#kept > summary")
	p.until(`document.getElementById('kept-long').textContent.includes(arguments[0])`, wanted)
}

func saysHowLongItKeeps(t *testing.T, p *page) {
	p.openKept("/?with=lasting", "may delete what is saved here")
	p.click("#kept-ask")
	p.until(`document.getElementById('kept-long').textContent.includes('has promised to keep') && document.getElementById('kept-ask').hidden`)
	p.openKept("/?with=passing", "may delete what is saved here")
	p.click("#kept-ask")
	p.until(`document.getElementById('kept-long').textContent.startsWith('The browser refused')`)
	p.openKept("/?with=unsaid", "doesn’t say")
}

func saysWhatSafariDeletes(t *testing.T, p *page) {
	p.openKept("/?with=ipad,passing", "may delete")
	text := p.say(`return document.getElementById('kept').innerText`)
	for _, wanted := range []string{"seven days of use without a visit", "Add to Home Screen"} {
		if !strings.Contains(text, wanted) {
			t.Errorf("on an iPad it does not say %q: %s", wanted, text)
		}
	}
}

func offersToInstall(t *testing.T, p *page) {
	p.openKept("/?with=installable", "")
	p.until(`!document.getElementById('install').hidden`)
	p.click("#install")
	p.until(`document.documentElement.dataset.prompted === 'yes'`)
}

// TestManifest: a shortcut for each question, and screenshots of the size that is
// said (Web Application Manifest, "shortcuts", "screenshots").
func TestManifest(t *testing.T) {
	dist := finished(t)
	text, err := os.ReadFile(filepath.Join(dist, "manifest.webmanifest"))
	if err != nil {
		t.Fatal(err)
	}
	var m struct {
		Shortcuts   []struct{ Name, URL string }
		Screenshots []struct{ Src, Sizes string }
	}
	if err := json.Unmarshal(text, &m); err != nil {
		t.Fatal(err)
	}
	choices := words.Fields["ask"].Choices
	if len(m.Shortcuts) != len(choices) {
		t.Errorf("%d shortcuts for %d questions", len(m.Shortcuts), len(choices))
	}
	for _, s := range m.Shortcuts {
		value, found := strings.CutPrefix(s.URL, "./#ask=")
		if !found || choices[value] != s.Name {
			t.Errorf("the shortcut %q leads to %s", s.Name, s.URL)
		}
	}
	for _, s := range m.Screenshots {
		if size := sizeOf(t, filepath.Join(dist, s.Src)); size != s.Sizes {
			t.Errorf("%s is %s, and the manifest says %s", s.Src, size, s.Sizes)
		}
	}
	if len(m.Screenshots) < 2 {
		t.Error("there are no screenshots")
	}
}

func sizeOf(t *testing.T, picture string) string {
	t.Helper()
	file, err := os.Open(picture)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	config, err := png.DecodeConfig(file)
	if err != nil {
		t.Fatal(err)
	}
	return fmt.Sprintf("%dx%d", config.Width, config.Height)
}
