package pagetest

import (
	"strconv"
	"testing"
	"time"

	"saltbite/build/browser"
)

// TestUpdateFaults updates the site in each of the ways in which an update goes
// wrong. After each the page that was there works whole, nothing that was typed is
// lost, and no file of one version has met one of another. The tenth, a browser
// opened again with the server gone, is TestOpenedAgain.
func TestUpdateFaults(t *testing.T) {
	t.Parallel()
	a := asBuilt(t)
	inEngines(t, browser.Names, func(t *testing.T, s *browser.Session) {
		t.Run("damaged on the way", func(t *testing.T) { damagedOnTheWay(t, s, a) })
		t.Run("storage full", func(t *testing.T) { storageFull(t, s, a) })
		t.Run("damaged where it is kept", func(t *testing.T) { damagedWhereKept(t, s, a) })
		t.Run("damaged without a server", func(t *testing.T) { damagedWithoutServer(t, s, a) })
		t.Run("damaged and replaced", func(t *testing.T) { damagedAndReplaced(t, s, a) })
		t.Run("site data cleared", func(t *testing.T) { siteDataCleared(t, s, a) })
		t.Run("two tabs", func(t *testing.T) { tabsOverAnUpdate(t, s, a) })
		t.Run("rolled back", func(t *testing.T) { rolledBack(t, s, a) })
		t.Run("rolled back on the first visit", func(t *testing.T) { rolledBackAtFirst(t, s, a) })
	})
}

// withJob opens the page, kept, with a job on it.
func withJob(t *testing.T, s *browser.Session, a version) *visit {
	t.Helper()
	v := newVisit(t, s, a.files)
	v.opensWithJob()
	return v
}

func (v *visit) opensWithJob() {
	v.Helper()
	v.open("")
	v.ready()
	v.fill(copperJob)
	v.answers(copperTime)
	v.rests()
}

// uncached is withJob from a host that lets the browser keep nothing by itself.
func uncached(t *testing.T, s *browser.Session, a version) *visit {
	t.Helper()
	v := newVisit(t, s, a.files)
	v.host.caching = "no-store"
	v.opensWithJob()
	v.again() // given by the worker from now on
	v.ready()
	return v
}

// damagedOnTheWay: faults 1 to 4 and 9, one after the other on the same device, each
// in an update of its own: what came whole of one is not asked for again. In the
// end the update comes whole.
func damagedOnTheWay(t *testing.T, s *browser.Session, a version) {
	v := withJob(t, s, a)
	b := a.next("B")
	for i, c := range []struct {
		name   string
		faults map[string]fault
	}{
		{"the server stops half way", map[string]fault{"saltbite.wasm": stops}},
		{"a body cut short", map[string]fault{"page.js": truncates}},
		{"a byte changed in the program", map[string]fault{"saltbite.wasm": changesAByte}},
		{"a byte changed in a picture", map[string]fault{"icon-512.png": changesAByte}},
		{"a byte changed in the page", map[string]fault{"index.html": changesAByte}},
		{"a login page for the program", map[string]fault{"saltbite.wasm": asksForLogin}},
		{"a login page elsewhere for the program", map[string]fault{"saltbite.wasm": sendsElsewhere}},
		{"a login page for sw.js", map[string]fault{"sw.js": asksForLogin}},
		{"a login page for all", map[string]fault{"sw.js": asksForLogin, "index.html": asksForLogin}},
		{"no sw.js", map[string]fault{"sw.js": answersWith(404)}},
		{"a fault of the server at sw.js", map[string]fault{"sw.js": answersWith(500)}},
		{"a fault of the server at the style", map[string]fault{"style.css": answersWith(500)}},
		{"sw.js hangs", map[string]fault{"sw.js": hangs(v.host)}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := *v
			p.T = t
			p.host.publish(a.next("B"+strconv.Itoa(i)).files, c.faults)
			p.ask(`navigator.serviceWorker.getRegistration().then((r) => r.update()).catch(() => {}); return true`)
			p.untilMet()
			p.settled()
			p.isWhole(a)
			p.works()
			p.rests()
			p.again()
			p.isWhole(a)
			p.kept()
			if offers := p.ask(`return document.querySelector('#on-device button').checkVisibility()`); offers != false {
				t.Error("a version that is not whole is offered")
			}
			// What the page asked for when it was loaded again must not find the next fault.
			p.host.publish(a.files, nil)
			p.ask(`return Promise.race([navigator.serviceWorker.getRegistration().then((r) => r.update()).catch(() => {}),
				new Promise((resolve) => setTimeout(resolve, 2000))]).then(() => true)`) // one that hangs does so to the end
			p.settled()
		})
	}
	v.host.stop() // and with it what hangs
	v.again()
	v.isWhole(a)
	v.host.start()
	v.host.publish(b.files, nil)
	v.again()
	v.offered()
	v.isWhole(a, b)
	v.useNew()
	v.isWhole(b)
	v.kept()
	v.works()
}

// untilMet waits until a fault was met.
func (v *visit) untilMet() {
	v.Helper()
	for deadline := time.Now().Add(patience); !v.host.hasMet(); time.Sleep(20 * time.Millisecond) {
		if time.Now().After(deadline) {
			v.Fatal("the fault was never met")
		}
	}
}

// storageFull: Chromium is given no more room. The others can't be told so while
// they run: there the new worker finds a cache that refuses, as a full one does.
func storageFull(t *testing.T, s *browser.Session, a version) {
	v := withJob(t, s, a)
	b := a.next("B")
	files := b.files
	quota := map[string]any{"origin": "http://" + v.host.address, "quotaSize": 1 << 20}
	if s.Name == browser.Chromium {
		if err := s.DevTools("Storage.overrideQuotaForOrigin", quota); err != nil {
			t.Fatal(err)
		}
	} else {
		full := b.next("full")
		full.files["sw.js"] = append([]byte("Cache.prototype.put = async () => { throw new DOMException('full', 'QuotaExceededError') };\n"), b.files["sw.js"]...)
		files = full.files
	}
	v.host.publish(files, nil)
	v.ask(`return navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => true, () => true)`)
	v.settled()
	if waits := v.ask(`return navigator.serviceWorker.getRegistration().then((r) => r.waiting !== null)`); waits != false {
		t.Error("a version for which there is no room waits to take over")
	}
	v.isWhole(a)
	v.works()
	v.rests()
	v.again()
	v.isWhole(a)
	v.kept()
	if s.Name == browser.Chromium {
		delete(quota, "quotaSize")
		if err := s.DevTools("Storage.overrideQuotaForOrigin", quota); err != nil {
			t.Fatal(err)
		}
	}
	v.host.publish(b.files, nil)
	v.again()
	v.offered()
	v.useNew()
	v.isWhole(b)
	v.kept()
}

// halves cuts a kept file to its first half, as a fault of the storage does.
func (v *visit) halves(name string) {
	v.Helper()
	if got := v.say(`return (async () => {
		const [cache] = (await caches.keys()).filter((name) => name.startsWith('saltbite '))
		const store = await caches.open(cache)
		const kept = await store.match(arguments[0])
		const body = await kept.arrayBuffer()
		await store.put(arguments[0], new Response(body.slice(0, body.byteLength / 2), { headers: kept.headers }))
		return 'halved'
	})()`, name); got != "halved" {
		v.Fatalf("%s is not kept", name)
	}
}

// neededFiles are the files without which the page can't work or looks wrong.
var neededFiles = []string{"index.html", "head.js", "style.css", "old.js", "page.js", "later.js", "saltbite.wasm"}

// damagedWhereKept: each file in turn is damaged on the device. The next load mends
// it from a healthy server, and the load after that needs no server.
func damagedWhereKept(t *testing.T, s *browser.Session, a version) {
	v := withJob(t, s, a)
	v.again() // given by the worker from now on
	for _, name := range neededFiles {
		t.Run(name, func(t *testing.T) {
			p := *v
			p.T = t
			p.ready()
			p.halves(name)
			p.again()
			p.answers(copperTime)
			p.isWhole(a)
			p.kept()
			p.host.stop()
			p.again()
			p.answers(copperTime)
			p.isWhole(a)
			p.host.start()
		})
	}
}

// damagedWithoutServer: the page says that it is lost, and recovers once there is a
// server again.
func damagedWithoutServer(t *testing.T, s *browser.Session, a version) {
	v := uncached(t, s, a)
	v.halves("saltbite.wasm")
	v.host.stop()
	v.reload()
	v.until(`document.getElementById('sentence').textContent.includes('could not be loaded whole')`)
	v.host.start()
	v.again()
	v.answers(copperTime)
	v.isWhole(a)
}

// damagedAndReplaced: a file is damaged on the device, and the server has only the
// next version by now. The page then comes in that version, from the server.
func damagedAndReplaced(t *testing.T, s *browser.Session, a version) {
	b := a.next("B")
	for _, name := range []string{"page.js", "saltbite.wasm"} {
		v := uncached(t, s, a)
		v.halves(name)
		v.host.publish(b.files, nil)
		v.reload()
		v.until(`document.getElementById('on-device')?.dataset.content === arguments[0]`, b.content)
		v.answers(copperTime)
		v.kept()
	}
}

// siteDataCleared clears all that is kept while the page is open: in Chromium as
// its settings do, in the others piece by piece, once with the worker and once
// without, as engines differ in it.
func siteDataCleared(t *testing.T, s *browser.Session, a version) {
	v := withJob(t, s, a)
	clear := func(script string) {
		t.Helper()
		v.ask(`return (async () => { localStorage.clear(); sessionStorage.clear(); for (const name of await caches.keys()) await caches.delete(name); ` + script + ` })().then(() => true)`)
	}
	for _, how := range []string{"", `await (await navigator.serviceWorker.getRegistration()).unregister()`} {
		clear(how)
		if s.Name == browser.Chromium && how != "" {
			err := s.DevTools("Storage.clearDataForOrigin", map[string]any{"origin": "http://" + v.host.address, "storageTypes": "all"})
			if err != nil {
				t.Fatal(err)
			}
		}
		v.works()
		v.rests()
		v.again()
		v.ready()
		v.isWhole(a)
		v.kept()
	}
	// Cleared with no server there: the page that is open goes on.
	v.host.stop()
	clear("")
	v.works()
	v.kept()
	v.host.start()
	v.rests()
	v.again()
	v.ready()
	v.isWhole(a)
	v.kept()
}

// tabsOverAnUpdate: one tab takes a new version over; the other goes on with its own, and
// takes it over when asked to.
func tabsOverAnUpdate(t *testing.T, s *browser.Session, a version) {
	v := withJob(t, s, a)
	b := a.next("B")
	first, second, to := twoTabs(t, s)
	to(second)
	v.open("")
	v.ready()
	if err := v.update(b); err != nil {
		t.Fatal(err)
	}
	v.offered()
	v.useNew()
	v.isWhole(b)
	v.ready()
	to(first)
	v.ask(`window.stays = true`)
	v.works()
	v.isWhole(a, b)
	if stayed := v.ask(`return window.stays`); stayed != true {
		t.Error("a tab that asked for nothing was loaded again")
	}
	v.offered()
	v.rests()
	v.useNew()
	v.isWhole(b)
	v.kept()
	to(second)
	v.works()
	if err := s.CloseTab(); err != nil {
		t.Fatal(err)
	}
	to(first)
}

// rollsBack publishes a newer version, and the older one again while the newer is
// offered: then nothing is offered any more.
func (v *visit) rollsBack(newer, older version) {
	v.Helper()
	if err := v.update(newer); err != nil {
		v.Fatal(err)
	}
	v.offered()
	if err := v.update(older); err != nil {
		v.Fatal(err)
	}
	v.settled()
	v.until(`!document.querySelector('#on-device button').checkVisibility()`)
}

// rolledBack: the older version is published again, once while the newer waits
// and once after it has taken over.
func rolledBack(t *testing.T, s *browser.Session, a version) {
	v := withJob(t, s, a)
	v.again() // in the hands of the worker from now on, so that another waits
	b := a.next("B")
	v.rollsBack(b, a)
	v.isWhole(a, b)
	v.works()
	v.rests()
	v.again()
	v.isWhole(a, b)
	v.kept()

	if err := v.update(b); err != nil {
		t.Fatal(err)
	}
	v.offered()
	v.useNew()
	v.isWhole(b)
	v.ready()
	if err := v.update(a); err != nil {
		t.Fatal(err)
	}
	v.offered()
	v.useNew()
	v.isWhole(a)
	v.kept()
	v.works()
}

// rolledBackAtFirst: no worker has the page on a first visit, so that a newer
// version need not wait for it, and may be the one in use when the older comes back.
func rolledBackAtFirst(t *testing.T, s *browser.Session, a version) {
	v := withJob(t, s, a)
	b := a.next("B")
	for range 3 {
		v.rollsBack(b, a)
	}
	v.isWhole(a, b)
	v.works()
	v.kept()
}
