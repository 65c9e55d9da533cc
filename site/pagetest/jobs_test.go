package pagetest

import (
	"fmt"
	"strings"
	"testing"
	"time"
)

func TestJobs(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{
		{"keeping and opening", keepsAndOpens},
		{"naming, copying, deleting", namesCopiesDeletes},
		{"two tabs", tabsKeepTheirOwn},
		{"where nothing is kept", keepsNothing},
		{"no room", noRoom},
		{"a newer page's jobs", newerJobs},
		{"a file and back", fileAndBack},
		{"a damaged file", damagedFile},
		{"hostile texts", hostileTexts},
		{"a date beyond all dates", dateBeyondAll},
		{"an unknown error", unknownError},
		{"a thousand of one name", thousandOfOneName},
		{"search", searches},
		{"undo of clear", undoOfClear},
	})
}

// noJobs starts with an empty shelf.
func (p *page) noJobs() {
	p.Helper()
	p.loadOnly("/scripts") // a page that has no database open
	if err := p.ExecuteAsync(nil, `const done = arguments[0], gone = indexedDB.deleteDatabase('saltbite')
		gone.onsuccess = gone.onerror = gone.onblocked = () => done(true)`); err != nil {
		p.Fatal(err)
	}
	p.load("/?with=filing")
}

// keeps stores the job on the page under a name; the dialog stays open.
func (p *page) keeps(name, said string) {
	p.Helper()
	p.click("#to-jobs")
	p.ask(`document.getElementById('jobs-name').value = arguments[0]`, name)
	p.click("#jobs-store button")
	p.says("jobs-said", said)
}

// says waits until an element contains some words.
func (p *page) says(id, words string) {
	p.Helper()
	p.until(`document.getElementById(arguments[0]).textContent.includes(arguments[1])`, id, words)
}

// listed waits until these are the jobs in the list, deleted ones in brackets.
func (p *page) listed(names ...string) {
	p.Helper()
	p.until(`[...document.querySelectorAll('#jobs-list li:not([hidden])')].map((row) => row.children[0].hidden ? '(' + row.querySelector('.gone p').textContent + ')'
		: row.querySelector('input').value).join(' | ') === arguments[0]`, strings.Join(names, " | "))
}

// act presses a button of a job in the list, counted from the top.
func (p *page) act(place int, what string) {
	p.Helper()
	p.until(`document.querySelectorAll('#jobs-list li').length > arguments[0]`, place)
	p.ask(`const button = document.querySelectorAll('#jobs-list li')[arguments[0]].querySelector('[data-act=' + arguments[1] + ']'); button.focus(); button.click()`, place, what)
}

func (p *page) closes() {
	p.Helper()
	p.click("#jobs [data-close]")
}

func keepsAndOpens(t *testing.T, p *page) {
	p.noJobs()
	p.click("#to-jobs")
	p.click("#jobs-store button")
	p.says("jobs-said", "Nothing to save yet")
	p.closes()
	p.fill(copperJob)
	p.answers(copperTime)
	p.server.requests()
	p.click("#to-jobs")
	if got := p.value("jobs-name"); got != "copper, 0.1 mm" {
		t.Errorf("the name that is proposed is %q", got)
	}
	p.closes()
	p.keeps("First", "“First” is saved.")
	p.listed("First")
	p.until(`document.querySelector('#jobs-list .gist').textContent.includes(arguments[0])`, copperTime)
	p.closes()
	p.fill(map[string]string{"depth": "0.2"})
	p.keeps("Second", "“Second” is saved.")
	p.listed("Second", "First")
	p.closes()
	p.fill(map[string]string{"depth": "0.3"})
	p.keeps("Second", "“Second” is saved.") // replaces the job of that name
	p.listed("Second", "First")
	p.closes()
	p.fill(map[string]string{"depth": "0.4"}) // not stored
	p.click("#to-jobs")
	p.listed("Second", "First")
	p.act(1, "open")
	p.answers(copperTime)
	p.noticed("is saved as “Before “First”, ")
	if got := p.value("depth"); got != "0.1" {
		t.Errorf("the job was stored with the depth 0.1 and is opened with %q", got)
	}
	p.load("/") // after which the page still knows which job it is
	p.answers(copperTime)
	p.click("#to-jobs")
	p.says("jobs-hint", "Takes the place of the one of")
	if got := p.value("jobs-name"); got != "First" {
		t.Errorf("the job is called %q after a reload", got)
	}
	p.until(`document.querySelector('#jobs-list input').value.startsWith('Before “First”')`)
	p.closes()
	p.click("#clear")
	p.click("#to-jobs")
	p.says("jobs-hint", "Nothing is typed")
	p.closes()
}

func namesCopiesDeletes(t *testing.T, p *page) {
	p.noJobs()
	p.fill(copperJob)
	p.answers(copperTime)
	p.keeps("One", "“One” is saved.")
	p.act(0, "copy")
	p.says("jobs-said", "“One (2)”")
	p.until(`document.querySelectorAll('#jobs-list li').length === 2`)
	p.rename(0, "Salt cellar")
	p.rename(1, "Salt cellar") // is told apart
	p.until(`[...document.querySelectorAll('#jobs-list input')].map((i) => i.value).sort().join() === 'Salt cellar,Salt cellar (2)'`)
	p.act(0, "remove")
	p.until(`document.querySelector('#jobs-list .gone:not([hidden]) p').textContent.includes('is deleted.')`)
	p.until(`document.activeElement.dataset.act === 'undo'`)
	p.act(0, "undo")
	p.until(`!document.querySelector('#jobs-list .gone:not([hidden])')`)
	p.act(0, "remove")
	p.until(`document.querySelector('#jobs-list .gone:not([hidden])')`)
	p.closes()
	p.noticed("is deleted.") // and for a while after the dialog is closed
	p.click("#notice button")
	p.click("#to-jobs")
	p.until(`document.querySelectorAll('#jobs-list li').length === 2`)
	p.act(1, "remove")
	p.until(`document.querySelector('#jobs-list .gone:not([hidden])')`)
	p.closes()
	p.click("#to-jobs")
	p.until(`document.querySelectorAll('#jobs-list li').length === 1`)
	p.closes()
}

func (p *page) rename(place int, name string) {
	p.Helper()
	p.ask(`const input = document.querySelectorAll('#jobs-list input')[arguments[0]]
		input.focus(); input.value = arguments[1]; input.dispatchEvent(new Event('change', { bubbles: true })); input.blur()`, place, name)
	p.until(`document.querySelectorAll('#jobs-list input')[arguments[0]].labels[0].textContent.includes(arguments[1])`, place, name)
}

// tabsKeepTheirOwn: each restores its own form at a reload and sees the jobs that the
// other stores, and neither overwrites a version that it has not seen.
func tabsKeepTheirOwn(t *testing.T, p *page) {
	p.noJobs()
	p.fill(copperJob)
	p.answers(copperTime)
	p.keeps("Shared", "“Shared” is saved.")
	p.closes()
	first, second, to := twoTabs(t, p.Session)
	defer func() {
		to(second)
		p.CloseTab()
		to(first)
	}()
	to(second)
	p.loadOnly("/scripts") // which only looks: a tab's storage is another's a moment later
	p.until(`localStorage.getItem('saltbite')?.includes('name=Shared')`)
	p.load("/")
	p.answers(copperTime) // a new tab begins with what was typed last
	p.click("#to-jobs")
	p.listed("Shared")
	p.act(0, "open")
	p.noticed("is open")
	p.fill(map[string]string{"area": "20"})
	p.answers("0.600 A")
	p.keeps("Shared", "“Shared” is saved.")
	to(first)
	p.fill(map[string]string{"area": "30"})
	p.answers("0.900 A")
	p.keeps("Shared", "Both are saved; this one is “Shared (2)”.")
	p.listed("Shared (2)", "Shared")
	to(second) // in which the dialog is open
	p.listed("Shared (2)", "Shared")
	p.act(0, "open")
	p.answers("0.900 A")
	p.fill(map[string]string{"area": "40"})
	p.answers("1.20 A")
	p.load("/")
	p.answers("1.20 A")
	to(first)
	p.load("/")
	p.answers("0.900 A")
}

func keepsNothing(t *testing.T, p *page) {
	p.load("/?with=nostorage")
	p.fill(copperJob)
	p.answers(copperTime)
	p.keeps("Mine", "saves no jobs for this page")
	if got := p.value("jobs-name"); got != "Mine" {
		t.Errorf("the name that was typed is %q now", got)
	}
	p.closes()
	p.answers(copperTime)
}

func noRoom(t *testing.T, p *page) {
	p.noJobs()
	p.load("/?with=noroom")
	p.fill(copperJob)
	p.answers(copperTime)
	p.keeps("Mine", "has no room for another job")
	p.listed()
	p.closes()
	p.answers(copperTime)
}

func newerJobs(t *testing.T, p *page) {
	p.noJobs()
	p.loadOnly("/scripts")
	if err := p.ExecuteAsync(nil, `const done = arguments[0], newer = indexedDB.open('saltbite', 9)
		newer.onsuccess = () => { newer.result.close(); done(true) }`); err != nil {
		t.Fatal(err)
	}
	p.load("/")
	p.fill(copperJob)
	p.answers(copperTime)
	p.keeps("Mine", "A newer Saltbite has saved jobs here")
	p.closes()
	p.noJobs()
}

func fileAndBack(t *testing.T, p *page) {
	p.noJobs()
	p.fill(copperJob)
	p.answers(copperTime)
	p.keeps("With ] and\u00a0[ & =", "is saved.")
	p.ask(`document.getElementById('jobs-carry').open = true`)
	p.click("#jobs-save")
	p.until(`document.documentElement.dataset.filed === 'saltbite-jobs.txt' && document.documentElement.dataset.file`)
	text := p.say(`return document.documentElement.dataset.file`)
	for _, part := range []string{"Saltbite jobs\n", "\n[With ] and [ & =]\n# saved 20", copperTime, "\nmetal=copper\n", "\ndensity=30+mA%2Fcm2\n"} {
		if !strings.Contains(text, part) {
			t.Errorf("the file does not hold %q:\n%s", part, text)
		}
	}
	p.takes(text)
	p.says("jobs-taken", "1 job was here already.")
	p.takes(strings.Replace(text, "depth=0.1", "depth=0.2", 1))
	p.says("jobs-taken", "1 job was taken in.")
	p.until(`[...document.querySelectorAll('#jobs-list input')].map((i) => i.value).sort().join('|') === 'With ] and [ & =|With ] and [ & = (2)'`)
	p.takes(p.server.URL + "/#metal=copper&depth=0.3+mm")
	p.says("jobs-taken", "1 job was taken in.")
	p.until(`[...document.querySelectorAll('#jobs-list input')].some((i) => i.value === 'copper, 0.3 mm')`)
	p.closes()
}

// takes imports pasted text.
func (p *page) takes(text string) {
	p.Helper()
	p.ask(`document.getElementById('jobs-carry').open = true; document.getElementById('jobs-taken').textContent = ''; document.getElementById('jobs-paste').value = arguments[0]; document.getElementById('jobs-take').click()`, text)
}

// takesFile imports a chosen file.
func (p *page) takesFile(text string) {
	p.Helper()
	p.ask(`document.getElementById('jobs-taken').textContent = ''
		const file = document.getElementById('jobs-file'), chosen = new DataTransfer()
		chosen.items.add(new File([arguments[0]], 'jobs.txt', { type: 'text/plain' }))
		file.files = chosen.files
		file.dispatchEvent(new Event('change', { bubbles: true }))`, text)
}

func damagedFile(t *testing.T, p *page) {
	p.noJobs()
	p.server.requests()
	p.click("#to-jobs")
	p.takes("\ufeffSaltbite jobs\r\n[Whole]\r\nmetal=copper\r\narea=10+cm2\r\ndepth=0.1+mm\r\ndensity=30\r\n\r\n[Damaged\r\nmetal=brass\r\ndep\r\ndepth=%zz\r\ndepht=1\r\nstir=shaken\r\nmetal=tin\r\n[Lost]\r\nx\r\n")
	p.says("jobs-taken", "2 jobs were taken in.")
	p.until(`document.getElementById('jobs-faults').children.length > 0`)
	got := p.say(`return [...document.getElementById('jobs-faults').children].map((f) => f.textContent).join('\n')`)
	want := strings.Join([]string{
		"Line 8: “[Damaged” does not end with ].",
		"Line 10: “dep” is no field with its text.",
		"Line 11: “depth=%zz” is damaged.",
		"Line 12: “depht” is no field here.",
		"Line 13: “shaken” is no choice for “stir”.",
		"Line 14: “metal” is there twice.",
		"Line 16: “x” is no field with its text.",
		"Line 15: no field of “Lost” could be read.",
	}, "\n")
	if got != want {
		t.Errorf("of the damaged file is said\n%s\nand not\n%s", got, want)
	}
	p.until(`[...document.querySelectorAll('#jobs-list input')].map((i) => i.value).sort().join() === 'Damaged,Whole'`)
	p.until(`[...document.querySelectorAll('#jobs-list .gist')].some((s) => s.textContent.startsWith('Leave it 2 h 3'))`)
	if late := p.server.late(); len(late) > 0 {
		t.Errorf("storing jobs asked the server for %q", late)
	}
	p.closes()
}

func hostileTexts(t *testing.T, p *page) {
	p.noJobs()
	p.click("#to-jobs")
	for _, c := range []struct{ text, said string }{
		{strings.Repeat("x", 1_000_001), "more than 1 MB"},
		{strings.Repeat("\x00\xff[<img src=x onerror=alert(1)>=&%", 20_000)[:600_000], "No job was taken in."},
		{strings.Repeat("x\n", 50_000), "No job was taken in."},
		{"[__proto__]\n__proto__=1\nconstructor=1\n", "No job was taken in."},
		{"", "No job was taken in."},
	} {
		p.takesFile(c.text)
		p.says("jobs-taken", c.said)
		if n := p.ask(`return document.getElementById('jobs-faults').children.length`).(float64); n > 21 {
			t.Errorf("%v faults are listed", n)
		}
	}
	p.takesFile(strings.Repeat("[<b>many</b>]\nmetal=copper\n", 1_100))
	p.until(`document.getElementById('jobs-faults').textContent.includes('Line 2001 and what follows')`)
	p.says("jobs-taken", "1 job was taken in. 999 jobs were here already.")
	p.listed("<b>many</b>")
	p.closes()
}

// dateBeyondAll: a job of an older page has the last possible date (ECMA-262); it can
// be stored again and written to a file.
func dateBeyondAll(t *testing.T, p *page) {
	p.noJobs()
	p.fill(copperJob)
	p.answers(copperTime)
	p.keeps("Mine", "“Mine” is saved.")
	p.closes()
	if err := p.ExecuteAsync(nil, `const done = arguments[0], open = indexedDB.open('saltbite')
		open.onsuccess = () => {
			const change = open.result.transaction('jobs', 'readwrite'), jobs = change.objectStore('jobs'), all = jobs.getAll()
			all.onsuccess = () => jobs.put({ ...all.result[0], saved: 8.64e15 })
			change.oncomplete = () => { open.result.close(); done(true) }
		}`); err != nil {
		t.Fatal(err)
	}
	p.click("#to-jobs")
	p.until(`document.querySelector('#jobs-list time').textContent.includes('275760')`)
	p.act(0, "open")
	p.noticed("is open")
	p.fill(map[string]string{"depth": "0.2"})
	p.keeps("Mine", "“Mine” is saved.")
	p.ask(`document.getElementById('jobs-carry').open = true; delete document.documentElement.dataset.file`)
	p.click("#jobs-save")
	p.until(`document.documentElement.dataset.file?.includes('# saved 20')`)
	p.closes()
}

// unknownError: an error without a sentence is shown in the browser's words.
func unknownError(t *testing.T, p *page) {
	p.noJobs()
	p.fill(copperJob)
	p.answers(copperTime)
	p.ask(`IDBObjectStore.prototype.put = () => { throw new RangeError('thrown by a test') }`)
	p.keeps("Mine", "RangeError: thrown by a test.")
	p.closes()
}

// thousandOfOneName: each has different fields; at a second import none is new.
func thousandOfOneName(t *testing.T, p *page) {
	p.noJobs()
	p.click("#to-jobs")
	var text strings.Builder
	for i := range 1000 {
		fmt.Fprintf(&text, "[Plate]\nmetal=copper\ndepth=0.%04d+mm\n", i+1)
	}
	for _, said := range []string{"1000 jobs were taken in.", "No job was taken in. 1000 jobs were here already."} {
		begun := time.Now()
		p.takes(text.String())
		p.says("jobs-taken", said)
		t.Logf("%s %v", said, time.Since(begun).Round(time.Millisecond))
	}
	p.until(`document.querySelectorAll('#jobs-list li').length === 1000`)
	names := p.ask(`return new Set([...document.querySelectorAll('#jobs-list input')].map((i) => i.value)).size`)
	if names != 1000.0 {
		t.Errorf("a thousand jobs have %v names", names)
	}
	p.until(`[...document.querySelectorAll('#jobs-list .gist')].every((gist) => gist.textContent !== 'No answer yet.')`) // they come after
	p.closes()
	p.noJobs()
}

func searches(t *testing.T, p *page) {
	p.noJobs()
	p.click("#to-jobs")
	var text strings.Builder
	for _, name := range strings.Fields("ash birch cedar elm fir hazel larch maple oak") {
		text.WriteString("[" + name + "]\nmetal=copper\n")
	}
	p.takes(text.String())
	p.until(`document.querySelectorAll('#jobs-list li').length === 9`)
	p.ask(`const s = document.getElementById('jobs-search'); s.value = 'AR'; s.dispatchEvent(new Event('input', { bubbles: true }))`)
	p.until(`[...document.querySelectorAll('#jobs-list li:not([hidden]) input')].map((i) => i.value).sort().join() === 'cedar,larch'`)
	visible := p.ask(`return document.getElementById('jobs-search').checkVisibility()`)
	if visible != true {
		t.Error("nine jobs can't be searched")
	}
	p.act(0, "remove")
	p.until(`document.querySelector('#jobs-list .gone:not([hidden])')`)
	p.closes()
	p.click("#to-jobs")
	p.until(`!document.getElementById('jobs-search').checkVisibility() && document.querySelectorAll('#jobs-list li:not([hidden])').length === 8`)
	p.closes()
}

// undoOfClear restores everything that was cleared, with the job that it belongs to.
func undoOfClear(t *testing.T, p *page) {
	p.noJobs()
	p.fill(copperJob)
	p.ask(`const s = document.querySelector('[data-unit=volume]'); s.value = 'gal'; s.dispatchEvent(new Event('input', { bubbles: true }))`)
	p.answers(copperTime)
	p.keeps("Mine", "“Mine” is saved.")
	p.closes()
	p.click("#clear")
	p.until(`document.getElementById('metal').value === ''`)
	time.Sleep(500 * time.Millisecond) // until the blank form is saved
	p.typeIn("metal", "x")
	p.click("#undo") // of what was typed since
	p.until(`document.getElementById('metal').value === ''`)
	p.click("#undo")
	p.answers(copperTime)
	if got := p.say(`return document.querySelector('[data-unit=volume]').value`); got != "gal" {
		t.Errorf("the volume's unit came back as %s", got)
	}
	p.click("#to-jobs")
	p.says("jobs-hint", "Takes the place of")
	p.closes()
	p.load("/")
	p.answers(copperTime)
}
