package pagetest

import (
	"strings"
	"testing"
)

func TestLog(t *testing.T) {
	t.Parallel()
	holdAll(t, []check{
		{"three runs and the range follows", threeRuns},
		{"two tabs of a log", tabsLog},
		{"a table out and in again", tableAndBack},
		{"no room for a run", noRoomForRun},
		{"a shelf from before the log", shelfBeforeLog},
	})
}

// noLog starts with an empty log, of which no page knows anything.
func (p *page) noLog(with string) {
	p.Helper()
	p.noJobs() // the log is in the same database
	p.ask(`localStorage.clear(); sessionStorage.clear()`)
	p.load("/?with=" + with)
}

// finishes puts a run into the log; the dialog stays open.
func (p *page) finishes(after, note, said string) {
	p.Helper()
	p.ask(`document.querySelector('.part [data-log=finish]').click()`)
	p.until(`document.getElementById('log')?.open`)
	p.ask(`for (const [name, text] of Object.entries({ before: '20', after: arguments[0], resolution: '0.001', note: arguments[1] })) document.getElementById('log-' + name).value = text
		document.querySelector('#log form button').click()`, after, note)
	p.until(`document.querySelector('#log .said').textContent.includes(arguments[0])`, said)
}

// runs waits until so many are in the list.
func (p *page) runs(n int) {
	p.Helper()
	p.until(`document.querySelectorAll('#log .stored > li').length === arguments[0]`, n)
}

func (p *page) closesLog() {
	p.Helper()
	p.click("#log [data-close]")
}

// inLog is what a finished run is said to be.
const inLog = "The run is in the log."

// The range of the time is common practice's, then that of this bench's runs, until
// they are left out by a touch or an efficiency is typed.
func threeRuns(t *testing.T, p *page) {
	p.noLog("")
	p.fill(copperJob)
	p.answers(copperTime)
	p.until(`document.getElementById('likely').textContent.includes('common practice')`)
	p.plansStrip()
	p.fill(map[string]string{"line": "0.5"})
	const found = `document.getElementById('log-lineFound').value = '0.44'`
	p.finishes("", "", "Type the weights before and after")
	p.ask(found)
	p.finishes("19.120", "", inLog)
	p.ask(found)
	p.finishes("19.110", "", inLog)
	p.closesLog()
	if got := p.value("efficiency"); got != "" {
		t.Errorf("two runs fill in an efficiency of %q", got)
	}
	p.ask(found)
	p.finishes("19.100", "", inLog)
	p.runs(3)
	p.until(`document.querySelector('#log .fits').textContent.includes('by 3 runs')`)
	p.until(`document.querySelectorAll('#log figure:not([hidden]) svg [data-role=reading]').length === 6`)
	// By hand: 0.06 mm less at 0.0982, 0.0993 and 0.1004 mm deep are 0.3055, 0.3020 and 0.2987 of twice that.
	p.ask(`document.querySelector('#log .fits [data-ratio="0.302"]').click()`)
	p.until(`document.getElementById('undercut').value === '0.302' && document.querySelector('#log .fits button').textContent.startsWith('Take')`)
	p.ask(`document.querySelector('#log .fits button').click()`)
	p.until(`document.getElementById('undercut').value === ''`)
	for _, violation := range p.violations(axe(t)) {
		t.Errorf("in the log: %s", violation)
	}
	p.closesLog()
	p.until(`document.getElementById('likely').textContent.includes('from 3 runs on this bench')`)
	if fields := p.say(`return ['efficiency', 'efficiencyLow', 'efficiencyHigh'].map((name) => document.getElementById(name).value).join()`); strings.Contains(fields, ",,") || fields[0] != '9' {
		t.Errorf("the fields hold %q", fields)
	}
	p.load("/") // another opening has the range at once, and the log with it
	p.until(`document.getElementById('likely').textContent.includes('from 3 runs on this bench')`)
	p.ask(`document.querySelector('.leave-out').click()`)
	p.until(`document.getElementById('likely').textContent.includes('common practice')`)
	p.ask(`document.querySelector('.leave-out').click()`)
	p.until(`document.getElementById('likely').textContent.includes('from 3 runs on this bench')`)
	p.fill(map[string]string{"efficiency": "80"})
	p.until(`document.getElementById('efficiencyLow').value === '' && !document.getElementById('likely').textContent.includes('bench')`)
	if got := p.value("efficiency"); got != "80" {
		t.Errorf("an efficiency of 80 was typed, and is %q", got)
	}
	p.ask(`document.querySelector('.part [data-log=runs]').click()`)
	p.runs(3)
	p.ask(`document.querySelector('#log [data-act=remove]').click()`)
	p.until(`document.querySelector('#log [data-act=undo]') && document.querySelector('#log .fits').textContent.includes('by 2 runs')`)
	p.ask(`document.querySelector('#log [data-act=undo]').click()`)
	p.until(`document.querySelector('#log .fits').textContent.includes('by 3 runs')`)
	p.closesLog()
}

// plansStrip puts the strip that stands open where there are no runs on the page, and
// takes it back.
func (p *page) plansStrip() {
	p.Helper()
	p.ask(`document.querySelector('.part [data-log=runs]').click()`)
	p.until(`document.querySelector('#log .strip').open && document.querySelector('#log .strip .plan').textContent.includes('reads to 0.01 g')`)
	p.ask(`document.getElementById('log-resolution').value = '0.001'
		document.getElementById('log-resolution').dispatchEvent(new Event('change', { bubbles: true }))`)
	p.until(`document.querySelector('#log .strip .plan').textContent.includes('reads to 0.001 g')`)
	p.ask(`document.querySelector('#log .strip .acts button').click()`)
	p.until(`document.getElementById('current').value === '0.100' && document.getElementById('depth').value === ''`)
	if got := p.value("resolution"); got != "0.001" {
		p.Errorf("the strip's balance reads to %q", got)
	}
	p.click("#undo")
	p.answers(copperTime)
}

// Both tabs' runs stay, and each sees the other's.
func tabsLog(t *testing.T, p *page) {
	p.noLog("")
	p.fill(copperJob)
	p.answers(copperTime)
	p.finishes("19.120", "", inLog)
	first, second, to := twoTabs(t, p.Session)
	defer func() {
		to(second)
		p.CloseTab()
		to(first)
	}()
	to(second)
	p.load("/")
	p.fill(copperJob)
	p.answers(copperTime)
	p.finishes("19.110", "", inLog)
	p.runs(2)
	to(first)
	p.runs(2)
	p.closesLog()
	p.finishes("19.100", "", inLog)
	p.runs(3)
	to(second)
	p.runs(3)
	p.closesLog()
	p.until(`document.getElementById('likely').textContent.includes('from 3 runs on this bench')`)
}

// A table that is read again adds nothing; a run that was removed comes back from it,
// and a damaged line is named.
func tableAndBack(t *testing.T, p *page) {
	p.noLog("filing")
	p.fill(copperJob)
	p.answers(copperTime)
	p.finishes("19.120", "=1+1", inLog)
	p.finishes("19.110", "", inLog)
	p.runs(2)
	p.ask(`document.querySelector('#log .carry:not(.strip)').open = true; document.querySelector('#log .carry:not(.strip) .acts button').click()`)
	p.until(`document.documentElement.dataset.filed === 'saltbite-runs.csv' && document.documentElement.dataset.file`)
	table := p.say(`return document.documentElement.dataset.file`)
	if !strings.HasPrefix(table, "run,ended,note,metal,") || !strings.Contains(table, ",'=1+1,copper,") {
		t.Errorf("the table is %q", table)
	}
	takes := func(text, said string) {
		t.Helper()
		p.ask(`const file = document.getElementById('log-file'), chosen = new DataTransfer()
			chosen.items.add(new File([arguments[0]], 'runs.csv', { type: 'text/csv' }))
			file.files = chosen.files
			file.dispatchEvent(new Event('change', { bubbles: true }))`, text)
		p.until(`document.querySelector('#log .carry .said').textContent.includes(arguments[0])`, said)
	}
	takes(table, "0 runs were added.")
	p.runs(2)
	p.ask(`document.querySelector('#log [data-act=remove]').click()`)
	p.until(`document.querySelector('#log .fits').textContent.includes('by 1 run;')`)
	takes(table+"half,a,line\r\n", "1 run was added. What could not be read:")
	p.until(`document.querySelector('#log .faults').textContent.startsWith('Line 4, “half,a,line”')`)
	p.until(`document.querySelector('#log .fits').textContent.includes('by 2 runs;')`)
	p.closesLog()
}

// A run that can't be stored stays in its form.
func noRoomForRun(t *testing.T, p *page) {
	p.noLog("noroom")
	p.fill(copperJob)
	p.answers(copperTime)
	p.finishes("19.120", "a note", "has no room for another run")
	p.runs(0)
	if got := p.value("log-after") + " " + p.value("log-note"); got != "19.120 a note" {
		t.Errorf("what was typed is %q", got)
	}
	p.closesLog()
	p.answers(copperTime)
}

// A database of the first version, as the page wrote it that only kept jobs: its jobs
// stay, and beside them the log and the pictures have their places.
func shelfBeforeLog(t *testing.T, p *page) {
	p.noLog("")
	p.loadOnly("/scripts") // a page that has no database open
	p.run(`const done = arguments[0], gone = indexedDB.deleteDatabase('saltbite')
		gone.onsuccess = () => {
			const asked = indexedDB.open('saltbite', 1)
			asked.onupgradeneeded = () => asked.result.createObjectStore('jobs', { keyPath: 'id', autoIncrement: true })
			asked.onsuccess = () => {
				const writing = asked.result.transaction('jobs', 'readwrite')
				writing.objectStore('jobs').put({ name: 'Tag for the gate', fields: 'metal=brass&area=12+cm2&depth=0.2+mm', sentence: 'Kept long ago.', saved: 1764000000000 })
				writing.oncomplete = () => {
					asked.result.close()
					done(true)
				}
			}
		}`)
	p.load("/")
	p.fill(copperJob)
	p.answers(copperTime)
	p.finishes("19.120", "", inLog)
	p.runs(1)
	p.closesLog()
	p.click("#to-jobs")
	p.listed("Tag for the gate")
	p.closes()
	p.run(`const done = arguments[0], asked = indexedDB.open('saltbite')
		asked.onsuccess = () => {
			document.documentElement.dataset.stores = [...asked.result.objectStoreNames].join()
			asked.result.close()
			done(true)
		}`)
	if got := p.say(`return document.documentElement.dataset.stores`); got != "jobs,pictures,revisions,runs" {
		t.Errorf("the database has %q", got)
	}
}

// run waits until a script calls its first argument.
func (p *page) run(script string) {
	p.Helper()
	if err := p.ExecuteAsync(nil, script); err != nil {
		p.Fatal(err)
	}
}
