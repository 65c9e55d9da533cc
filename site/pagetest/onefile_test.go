package pagetest

import (
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"saltbite/build/browser"
)

// TestOneFile opens the page that is one file from a folder, as from a stick,
// with nothing else in it.
func TestOneFile(t *testing.T) {
	t.Parallel()
	stick := filepath.Join(t.TempDir(), "class hand-out, été")
	if err := os.Mkdir(stick, 0o755); err != nil {
		t.Fatal(err)
	}
	body, err := os.ReadFile(filepath.Join(finished(t), "saltbite.html"))
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(stick, "saltbite.html")
	if err := os.WriteFile(file, body, 0o644); err != nil {
		t.Fatal(err)
	}
	address := (&url.URL{Scheme: "file", Path: file}).String()
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		p := &page{t, session, serve(t)}
		open := func() {
			if err := p.Navigate(address); err != nil {
				t.Fatal(err)
			}
			p.until(loaded)
		}
		open()
		p.ask(`try { localStorage.clear() } catch {}`)
		open()
		p.fill(copperJob)
		p.answers(copperTime)
		p.typeIn("salt", "silver nit") // what a metal or a salt suggests comes from the program too
		p.until(`document.querySelector('#salt-list [role=option]')`)
		p.click("#example")
		p.answers("brass")
		version := p.say(`return document.querySelector('.version').textContent`)
		if !strings.Contains(version, "never updates itself") || !strings.HasPrefix(version, "Saltbite ") {
			t.Errorf("its foot says %q", version)
		}
		asked := p.ask(`return performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => !/^(blob|data):/.test(name)).join()`)
		if asked != "" {
			t.Errorf("one file asked for %v", asked)
		}
		for _, violation := range p.violations(axe(t)) {
			t.Error(violation)
		}
		if session.Name == browser.Chromium { // Firefox notes each directive that it does not know, the third needs a hook
			if said := p.consoleNow(); said != "" {
				t.Errorf("the console says %s", said)
			}
		}
		if p.ask(strangeStyle) != false {
			t.Error("a style of which the policy has no hash is applied")
		}
	})
}

// strangeStyle tries a style that is not the file's own.
const strangeStyle = `const style = document.createElement('style')
	style.textContent = 'body { outline: 7px solid }'
	document.head.append(style)
	return getComputedStyle(document.body).outlineWidth === '7px'`

// TestOneFileClass opens the page for a class that is one file from a folder with
// nothing else in it.
func TestOneFileClass(t *testing.T) {
	t.Parallel()
	body, err := os.ReadFile(filepath.Join(finished(t), "saltbite-class.html"))
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "saltbite-class.html")
	if err := os.WriteFile(file, body, 0o644); err != nil {
		t.Fatal(err)
	}
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		p := &page{t, session, serve(t)}
		if err := p.Navigate((&url.URL{Scheme: "file", Path: file}).String()); err != nil {
			t.Fatal(err)
		}
		p.until(begun)
		p.fill(weakSupply)
		p.pastes("[data-cell=name]", students())
		p.planned("Two loads in two rounds take 5 h 1")
		p.until(`document.getElementById('instead').textContent.includes('2 cells in series')`)
		asked := p.ask(`return performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => !/^(blob|data):/.test(name)).join()`)
		if asked != "" {
			t.Errorf("one file asked for %v", asked)
		}
		if session.Name == browser.Chromium {
			if said := p.consoleNow(); said != "" {
				t.Errorf("the console says %s", said)
			}
		}
	})
}
