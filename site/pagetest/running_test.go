package pagetest

import (
	"slices"
	"strings"
	"testing"
	"time"

	"saltbite/build/browser"
)

// runningScripts shorten a day to a minute: a clock that stops until a test moves it,
// also over a reload; faster ticks; sound that is not heard but counted by the audio
// clock, which a test stops for as long as the device sleeps; and a screen lock that
// only counts its calls.
var runningScripts = map[string]string{
	"clock": `{ const Own = Date
		const now = () => Number(sessionStorage.getItem('now') ?? Own.parse('2026-03-10T21:30:20'))
		sessionStorage.setItem('now', now())
		window.Date = class extends Own { constructor(...when) { super(...(when.length ? when : [now()])) } static now() { return now() } }
		addEventListener('pass', () => sessionStorage.setItem('now', now() + Number(document.documentElement.dataset.pass)))
		const every = setInterval
		window.setInterval = (work, time) => every(() => { if (!document.documentElement.dataset.throttled) work() }, time === 1000 ? 50 : time) }`,
	"sounds": `{ const said = document.documentElement.dataset
		const tones = [], loudness = { setValueAtTime() {}, linearRampToValueAtTime() {} }
		const born = Date.now()
		const now = () => (Date.now() - born - Number(said.slept ?? 0)) / 1000
		window.heard = () => tones.filter(({ from, cut }) => from <= now() && from < cut).length
		window.AudioContext = class { state = 'suspended'; get currentTime() { return now() } async resume() { this.state = 'running' } }
		window.OscillatorNode = class { connect(node) { return node }
			start(from) { this.tone = { from, cut: Infinity }; tones.push(this.tone) }
			stop(at) { if (at === undefined) this.tone.cut = now() } }
		window.GainNode = class { gain = loudness; connect(node) { return node } } }`,
	"vibrating": `Object.defineProperty(navigator, 'vibrate', { value() { document.documentElement.dataset.vibrated = 'yes' } })`,
	"hidden": `{ const said = document.documentElement.dataset
		Object.defineProperty(document, 'hidden', { get: () => said.hidden === 'yes' })
		window.Notification = class { static permission = 'default'
			static async requestPermission() { return Notification.permission = 'granted' }
			constructor(title, { body }) { said.notified = body } close() {} } }`,
	"lock": `{ const said = document.documentElement.dataset
		said.locks = said.asked = 0
		Object.defineProperty(navigator, 'wakeLock', { value: { async request() {
			said.locks++
			said.asked++
			const lock = { released: false, async release() { if (!lock.released) { lock.released = true; said.locks-- } } }
			addEventListener('end-lock', lock.release)
			return lock
		} } }) }`,
	"nolock":  `Object.defineProperty(navigator, 'wakeLock', { value: undefined })`,
	"nosound": `delete window.AudioContext`,
}

func init() {
	for name, script := range runningScripts {
		scripts[name] = script
	}
}

// clocked is the page with the clock that a test moves. It starts at 21:30:20 on a day
// without a change of clocks.
const clocked = "/?with=clock,sounds,lock"

var runChecks = []check{
	{"keyboard alone", runsByKeyboard}, // first: in WebKitGTK a used mouse changes where Tab leads
	{"a touch begins", touchBegins},
	{"a lock that the system ends", takesTheLockAgain},
	{"half time and ready", tellsHalfAndReady},
	{"silenced", canBeSilenced},
	{"two pauses", addsPauses},
	{"a typed pause", keepsATypedPause},
	{"reload", survivesReload},
	{"two tabs", isOneForAllTabs},
	{"sleep", survivesSleep},
	{"asked once", asksBeforeItStops},
	{"an alarm ahead", alarmNeedsNoTimer},
	{"vibration and notification", tellsWhoIsElsewhere},
	{"steps of stopping out", stopsAtEachStep},
	{"how long it was on", writesElapsed},
	{"a notice beside the strip", noticeLeavesTheStrip},
	{"weighing", followsAWeighing},
	{"reading", followsAReading},
	{"half a number", ignoresHalfANumber},
	{"typed start", countsFromATypedStart},
	{"another job", goesOnUnderAnotherJob},
	{"stop", offersNothingAtAStop},
	{"done", endsAndBeginsAgain},
	{"without lock or sound", saysWhatIsMissing},
	{"no storage", runsWithoutStorage},
	{"nothing moves", stripMovesNothing},
	{"no violation", stripHasNoViolation},
}

func TestRunning(t *testing.T) {
	t.Parallel()
	hold(t, browser.Names, func(p *page) { p.freshAt(clocked) }, runChecks)
}

// switchOn types copperJob, which takes 151.2 min, and starts it.
func (p *page) switchOn() {
	p.Helper()
	p.fill(copperJob)
	p.answers(copperTime)
	p.until(state + ` === 'before'`)
	p.click("#run-on")
	p.until(state + ` === 'on'`)
}

func (p *page) pass(d time.Duration) {
	p.Helper()
	p.ask(`document.documentElement.dataset.pass = arguments[0]; dispatchEvent(new Event('pass'))`, d.Milliseconds())
}

// sleep passes while the device sleeps: the audio clock stops, and no timer runs.
func (p *page) sleep(d time.Duration) {
	p.Helper()
	p.ask(`const said = document.documentElement.dataset
		said.slept = Number(said.slept ?? 0) + arguments[0]
		said.pass = arguments[0]
		dispatchEvent(new Event('pass'))`, d.Milliseconds())
}

// stops ends the clock before its time, which asks once.
func (p *page) stops() {
	p.Helper()
	p.click("#run-done")
	p.click("#run-stop")
}

// What the strip shows.
const (
	state = `document.getElementById('run').dataset.state`
	left  = `document.querySelector('#run .left b').textContent`
	half  = `document.querySelector('#run .half').textContent`
	said  = `document.querySelector('#run .said').textContent`
	how   = `document.querySelector('#run .how').textContent`
	notes = `window.heard()`
)

// shows waits until a part of the strip contains a text.
func (p *page) shows(what, text string) {
	p.Helper()
	if err := p.Wait(patience, what+`.includes(arguments[0])`, text); err != nil {
		p.Fatalf("it does not show %q: the strip is %q, the console %s", text, p.say(`return document.getElementById('run').innerText`), p.consoleNow())
	}
}

// 21:30:20 and 151.2 min is 0:01:32 on the next day; half of it 75.6 min, 22:45:56.
func touchBegins(t *testing.T, p *page) {
	p.switchOn()
	if start := p.value("start"); start != "21:30" {
		t.Errorf("switched on at 21:30:20, and the start is %q", start)
	}
	p.shows(left, "2 h 32 min")
	p.shows(half, "1 h 16 min to half time")
	p.shows(said, "Half time at 22:45, ready at 0:01 tomorrow")
	p.shows(how, "Counted from the touch at 21:30.")
	p.shows(how, "switches nothing off")
	p.shows(`document.title`, "2 h 32 min · ")
	p.shows(`document.getElementById('likely').textContent`, "Ready at 0:01 next day") // the answer says the same
	p.until(`document.documentElement.dataset.locks === '1'`)
	p.pass(time.Hour)
	p.shows(left, "1 h 32 min")
	p.pass(82 * time.Minute)
	p.shows(left, "9 min 0") // of 151.1 min, as sheet copper is not all copper
	if role := p.say(`return document.querySelector('#run .said').getAttribute('role')`); role != "status" {
		t.Errorf("what happens is said in a %q", role)
	}
	if printed := p.printedText(); strings.Contains(printed, "Pause") || strings.Contains(printed, "Counted from") {
		t.Errorf("the clock is printed: %s", printed)
	}
}

// printedText is the text of the printed page, where an engine prints.
func (p *page) printedText() string {
	p.Helper()
	document, err := p.Print()
	if err == browser.ErrNotHere {
		return ""
	}
	if err != nil {
		p.Fatal(err)
	}
	return textOf(p.T, document)
}

// takesTheLockAgain: a system may end a lock that the page still wants.
func takesTheLockAgain(t *testing.T, p *page) {
	p.switchOn()
	p.until(`document.documentElement.dataset.locks === '1'`)
	p.ask(`dispatchEvent(new Event('end-lock'))`)
	p.until(`document.documentElement.dataset.locks === '1' && document.documentElement.dataset.asked === '2'`)
	p.stops()
	p.until(`document.documentElement.dataset.locks === '0'`)
}

func tellsHalfAndReady(t *testing.T, p *page) {
	p.switchOn()
	p.fill(map[string]string{"before": "24.6"})
	p.pass(75 * time.Minute)
	p.shows(said, "Half time at")
	if n := p.ask(`return ` + notes); n != 0.0 {
		t.Errorf("before half time %v notes were played", n)
	}
	p.pass(time.Minute)
	p.shows(said, "Half time is past, ready at 0:01 tomorrow")
	p.shows(said, "should weigh 24.2 g at half time") // 24.6 g less half of 0.896 g
	p.until(notes + ` === 2`)
	p.pass(75 * time.Minute)
	if n := p.ask(`return ` + notes); n != 2.0 {
		t.Errorf("shortly before it is ready %v notes were played", n)
	}
	p.pass(8 * time.Second) // 2 s after 151.1 min
	p.until(state + ` === 'ready'`)
	p.shows(said, "Time is up, at 0:01. Switch off. It should weigh 23.7 g.")
	p.shows(`document.querySelector('#run .left').textContent`, "Ready now")
	p.shows(`document.title`, "Ready · ")
	p.until(notes + ` === 5`)
	p.pass(3 * time.Second)
	p.until(notes + ` === 8`) // again
	p.pass(time.Minute)
	if n := p.ask(`return ` + notes); n != 62.0 { // 20 times three, in a minute
		t.Errorf("a minute after it was ready %v notes were played", n)
	}
	p.pass(time.Minute)
	if n := p.ask(`return ` + notes); n != 62.0 {
		t.Errorf("two minutes after it was ready it still sounds: %v notes", n)
	}
	buttons := p.say(`return [...document.querySelectorAll('#run button')].filter((b) => b.getClientRects().length).map((b) => b.textContent).join()`)
	if buttons != "Switched off" {
		t.Errorf("when the time is up there are the buttons %q", buttons)
	}
	if err := p.SetWindow(1024, 768); err != nil {
		t.Fatal(err)
	}
	wide := p.ask(`const r = document.getElementById('run').getBoundingClientRect(); return r.width === document.documentElement.clientWidth`)
	if wide != true {
		t.Error("when the time is up the strip is not as wide as the page")
	}
	p.shows(`document.querySelector('#run .left').textContent`, "Ready 2 min ago")
}

func canBeSilenced(t *testing.T, p *page) {
	p.switchOn()
	p.click("#run-sound")
	p.until(`document.getElementById('run-sound').getAttribute('aria-checked') === 'false'`)
	p.shows(how, "The sound is off.")
	p.click("#run-sound")
	p.sleep(3 * time.Hour)
	p.until(notes + ` === 1`) // the others follow in half a second of the clock
	p.pass(time.Second)
	p.until(notes + ` === 3`)
	p.click("#run-over") // silences the ringing and ends the run
	p.until(state + ` === 'before'`)
	p.shows(`document.querySelector('#run .before p').textContent`, "It was on for 3 h 0 min.")
	p.pass(5 * time.Second)
	time.Sleep(200 * time.Millisecond)
	if n := p.ask(`return ` + notes); n != 3.0 {
		t.Errorf("it was silenced and played on: %v notes", n)
	}
	p.click("#run-on")
	p.click("#run-sound")
	p.pass(3 * time.Hour)
	p.until(state + ` === 'ready'`)
	time.Sleep(200 * time.Millisecond)
	if n := p.ask(`return ` + notes); n != 3.0 {
		t.Errorf("with the sound off it sounded: %v notes", n)
	}
}

func (p *page) pauseFor(d time.Duration) {
	p.Helper()
	p.click("#run-off")
	p.until(state + ` === 'off'`)
	p.pass(d)
	p.click("#run-off")
	p.until(state + ` === 'on'`)
}

func addsPauses(t *testing.T, p *page) {
	p.switchOn()
	p.pass(10 * time.Minute)
	p.pauseFor(70 * time.Second)
	if paused := p.value("paused"); paused != "2 min" {
		t.Errorf("off for 70 s, and off meanwhile is %q", paused)
	}
	p.shows(said, "ready at 0:03 tomorrow")
	p.shows(`document.getElementById('likely').textContent`, "Ready at 0:03 next day")
	p.pass(10 * time.Minute)
	p.click("#run-off")
	p.shows(said, "Off since 21:51")
	before := p.say(`return ` + left)
	p.pass(90 * time.Second)
	time.Sleep(200 * time.Millisecond)
	if after := p.say(`return ` + left); after != before {
		t.Errorf("while the current is off the time runs from %s to %s", before, after)
	}
	p.click("#run-off")
	p.until(`document.getElementById('paused').value === '3 min'`) // 160 s in all, not 2 and 2 min
	p.shows(said, "ready at 0:04 tomorrow")
}

func keepsATypedPause(t *testing.T, p *page) {
	p.switchOn()
	p.fill(map[string]string{"paused": "0.5 h"})
	p.shows(said, "ready at 0:31 tomorrow")
	p.pauseFor(90 * time.Second)
	p.until(`document.getElementById('paused').value === '32 min'`)
	p.shows(said, "ready at 0:33 tomorrow")
}

func survivesReload(t *testing.T, p *page) {
	p.switchOn()
	p.pass(30 * time.Minute)
	p.shows(left, "2 h 2 min")
	p.pass(30 * time.Minute)
	p.load(clocked)
	p.shows(left, "1 h 32 min")
	p.shows(how, "The sound waits for a touch")
	p.click("h1")
	p.until(`!` + how + `.includes('waits')`)
	p.click("#run-off")
	p.pass(time.Hour)
	p.load(clocked)
	p.shows(said, "Off since 22:30")
	p.shows(left, "1 h 32 min")
	p.click("#run-off")
	p.shows(said, "ready at 1:01 tomorrow")
}

// isOneForAllTabs: a change of the run in one tab is seen in the other, and a run that
// was ended in one does not come back in either.
func isOneForAllTabs(t *testing.T, p *page) {
	p.switchOn()
	first, second, to := twoTabs(t, p.Session)
	defer func() {
		to(second)
		p.CloseTab()
		to(first)
	}()
	to(second)
	p.loadOnly("/scripts") // only reads: storage reaches another tab a moment later
	p.until(`localStorage.getItem('saltbite')?.includes('start=21') && localStorage.getItem('saltbite run')`)
	p.load(clocked)
	p.until(state + ` === 'on'`)
	p.click("#run-off")
	p.until(state + ` === 'off'`)
	to(first)
	p.until(state + ` === 'off'`)
	p.pass(2 * time.Minute)
	p.click("#run-off")
	p.until(state + ` === 'on'`)
	if paused := p.value("paused"); paused != "2 min" {
		t.Errorf("off for 2 min, and off meanwhile is %q", paused)
	}
	to(second)
	p.until(state + ` === 'on' && document.getElementById('paused').value === '2 min'`)
	p.shows(said, "ready at 0:03 tomorrow") // 0:01:32 and two minutes
	p.stops()
	p.until(state + ` === 'before'`)
	to(first)
	p.until(state + ` === 'before'`)
	p.load(clocked)
	p.until(state + ` === 'before'`)
}

func survivesSleep(t *testing.T, p *page) {
	p.switchOn()
	p.sleep(3 * time.Hour)
	p.until(state + ` === 'ready'`)
	p.shows(`document.querySelector('#run .left').textContent`, "Ready 28 min ago")
	p.shows(said, "Time is up, at 0:01")
	p.pass(time.Second)
	if n := p.ask(`return ` + notes); n != 3.0 {
		t.Errorf("over half time and the end in one sleep, and %v notes were played", n)
	}
}

func followsAWeighing(t *testing.T, p *page) {
	p.switchOn()
	p.pass(time.Hour)
	p.click("#run-off")
	p.pass(5 * time.Minute)
	p.fill(map[string]string{"before": "24.60", "after": "24.25"})
	p.until(`document.getElementById('elapsed').value === '1 h 0 min'`) // the current was on for an hour, then off
	p.shows(how, "Counted from the weighing typed at 22:35.")
	// 0.896 g over 0.35 g in 60 min is 153.6 min in all, 93.6 min more: 1 h 33 min 36 s
	p.shows(left, "1 h 34 min")
	p.click("#run-off")
	p.shows(said, "Ready at 0:08 tomorrow") // 22:35:20 and 1 h 33 min 36 s
	p.pass(time.Hour)
	p.shows(left, "34 min")
	p.fill(map[string]string{"after": "23.60"}) // deeper than was asked: 1 g is gone
	p.until(state + ` === 'ready'`)
}

func asksBeforeItStops(t *testing.T, p *page) {
	p.switchOn()
	p.click("#run-done")
	p.until(`document.getElementById('run').dataset.asks === 'yes'`)
	p.click("#run-go-on")
	p.until(`document.getElementById('run').dataset.asks === ''`)
	p.pass(time.Hour)
	p.shows(left, "1 h 32 min")
	p.stops()
	p.until(state + ` === 'before'`)
}

// alarmNeedsNoTimer: a browser may stop the timers of a page that is not seen; the
// tunes are on the audio clock by then.
func alarmNeedsNoTimer(t *testing.T, p *page) {
	p.switchOn()
	time.Sleep(300 * time.Millisecond) // for the ticks
	p.ask(`document.documentElement.dataset.throttled = 'yes'`)
	p.pass(76 * time.Minute)
	if n := p.ask(`return ` + notes); n != 2.0 {
		t.Errorf("at half time, without a timer, %v notes sounded", n)
	}
	p.pass(76 * time.Minute)
	if n := p.ask(`return ` + notes); n.(float64) < 5 {
		t.Errorf("at the end, without a timer, %v notes sounded", n)
	}
}

func tellsWhoIsElsewhere(t *testing.T, p *page) {
	p.freshAt("/?with=clock,sounds,lock,hidden,vibrating")
	p.switchOn()
	p.click("#run-tell")
	p.until(`document.getElementById('run-tell').getAttribute('aria-checked') === 'true'`)
	p.ask(`document.documentElement.dataset.hidden = 'yes'`)
	p.pass(3 * time.Hour)
	p.until(`document.documentElement.dataset.notified?.startsWith('Time is up, at 0:01')`)
	p.until(`document.documentElement.dataset.vibrated === 'yes'`)
}

// stopsAtEachStep: 0.06 mm into 20 cm2, then 0.04 mm more into half of it, at
// 30 mA/cm2: 0.6 A, then 0.3 A. 0.1 mm takes 151.2 min (copperJob), so the first
// step takes 90.7 min and the second 60.4 min; sheet copper is not all copper.
func stopsAtEachStep(t *testing.T, p *page) {
	p.fill(map[string]string{"metal": "copper", "metalDensity": "8.96", "bites": "0.06 20; 0.04 10", "density": "30"})
	p.until(state + ` === 'before'`)
	p.click("#run-on")
	p.shows(said, "Step 1 of 2 at 0.600 A, until 23:00.")
	p.shows(left, "1 h 31 min")
	p.pass(95 * time.Minute)
	p.until(state + ` === 'ready'`)
	p.shows(said, "Step 1 done. Switch off, stop out, set 0.300 A, switch on again.")
	p.click("#run-over")
	p.until(state + ` === 'off'`)
	p.pass(20 * time.Minute)
	p.load(clocked)
	p.shows(said, "Step 1 done. Stop out, set 0.300 A, switch on again.")
	p.shows(`document.getElementById('run-off').textContent`, "On again at 0.300 A")
	p.click("#run-off")
	p.until(state + ` === 'on'`)
	// Stopping out took 24 min 20 s, which count as a pause of 25 whole minutes.
	p.shows(left, "1 h 2 min")
	p.pass(62 * time.Minute)
	p.until(state + ` === 'ready'`)
	p.shows(said, "Time is up")
}

// writesElapsed: when the part is opened, unless something else was typed there.
func writesElapsed(t *testing.T, p *page) {
	p.switchOn()
	p.pass(70 * time.Minute)
	const open = `document.querySelector('[data-part=course]').open = true`
	p.ask(open)
	p.until(`document.getElementById('elapsed').value === '1 h 10 min'`)
	p.ask(`document.querySelector('[data-part=course]').open = false`)
	p.pass(5 * time.Minute)
	p.ask(open)
	p.until(`document.getElementById('elapsed').value === '1 h 15 min'`)
	p.fill(map[string]string{"elapsed": "60"})
	p.pass(5 * time.Minute)
	p.fill(map[string]string{"after": "24.2"})
	if elapsed := p.value("elapsed"); elapsed != "60" {
		t.Errorf("60 was typed, and then %q was written over it", elapsed)
	}
}

func noticeLeavesTheStrip(t *testing.T, p *page) {
	p.switchOn()
	p.bring("colour=red")
	p.noticed("is no field here")
	p.settle()
	if covered := p.ask(`const run = document.getElementById('run').getBoundingClientRect(), notice = document.getElementById('notice').getBoundingClientRect()
		return notice.bottom > run.top + 1`); covered != false {
		t.Error("the notice covers the strip of the run")
	}
}

// followsAReading: 0.756 A.h are needed (2721 C); an hour at 0.3 A is 0.3 A.h,
// and what is left takes 91.2 min at 0.3 A.
func followsAReading(t *testing.T, p *page) {
	p.switchOn()
	p.pass(time.Hour)
	p.fill(map[string]string{"readings": "0:00 0.3; 1:00 0.3"})
	p.shows(how, "Counted from the ammeter’s reading typed at 22:30.")
	p.shows(left, "1 h 32 min")
}

func ignoresHalfANumber(t *testing.T, p *page) {
	p.switchOn()
	p.pass(time.Hour)
	p.fill(map[string]string{"depth": "0.01"}) // on the way to 0.012: over long ago
	time.Sleep(400 * time.Millisecond)
	p.fill(map[string]string{"depth": "0.12"})
	p.shows(left, "2 h 2 min") // 181.4 min less an hour
	if n := p.ask(`return ` + notes); n != 0.0 {
		t.Errorf("half a number rang: %v notes", n)
	}
}

func countsFromATypedStart(t *testing.T, p *page) {
	p.fill(copperJob)
	p.answers(copperTime)
	p.typeIn("start", "8.30 pm")
	p.typeIn("start", browser.Enter)
	p.until(state + ` === 'on'`)
	p.shows(how, "Counted from the start typed, 20:30.")
	p.shows(left, "1 h 31 min") // 20:30 and 151.2 min is 23:01:12
	p.fill(map[string]string{"start": "19:30", "paused": ""})
	p.shows(how, "Counted from the start typed, 19:30.")
	p.shows(said, "ready at 22:01")
	if n := p.ask(`return ` + notes); n != 0.0 {
		t.Errorf("a half time that was past when its start was typed rang: %v notes", n)
	}
}

func goesOnUnderAnotherJob(t *testing.T, p *page) {
	p.switchOn()
	p.pass(time.Hour)
	p.click("#example")
	p.shows(how, "another start now")
	p.shows(left, "1 h 32 min")
	p.pauseFor(2 * time.Minute)
	if paused := p.value("paused"); paused != "" {
		t.Errorf("the pause of one run was written into another job: %q", paused)
	}
}

func offersNothingAtAStop(t *testing.T, p *page) {
	p.fill(copperJob)
	p.until(state + ` === 'before'`)
	p.fill(map[string]string{"metal": "sterling", "salt": "copper sulfate", "depth": "0.1"})
	p.until(`document.querySelector('#cautions [data-level=stop]')`)
	p.until(state + ` === 'none'`)
}

func endsAndBeginsAgain(t *testing.T, p *page) {
	p.switchOn()
	p.pass(time.Hour)
	p.stops()
	p.until(state + ` === 'before' && document.documentElement.dataset.locks === '0'`)
	p.load(clocked)
	p.until(state + ` === 'before'`)
	if lines := p.ask(`const b = document.getElementById('run-from'), narrow = b.cloneNode(true)
		narrow.style.inlineSize = 'min-content'
		b.after(narrow)
		const high = narrow.getBoundingClientRect().height
		narrow.remove()
		return high > 49`); lines != false { // of two lines at most, however little room a phone leaves
		t.Error("the button to count from the start breaks into three lines")
	}
	p.click("#run-from") // a touch on Done is taken back
	p.shows(left, "1 h 31 min")
	p.stops()
	p.click("#run-on")
	p.until(`document.getElementById('start').value === '22:30'`)
	p.click("#undo") // takes back what was written over the start
	p.until(`document.getElementById('start').value === '21:30'`)
}

func saysWhatIsMissing(t *testing.T, p *page) {
	p.freshAt("/?with=clock,nosound,nolock")
	p.switchOn()
	p.shows(how, "can’t be kept awake here")
	p.shows(how, "can’t sound")
	p.pass(3 * time.Hour)
	p.until(state + ` === 'ready'`)
}

func runsWithoutStorage(t *testing.T, p *page) {
	p.load("/?with=clock,sounds,lock,nostorage")
	p.switchOn()
	p.shows(left, "2 h 32 min")
}

// stripMovesNothing: no control moves when the strip appears, grows and disappears,
// also at the end of the page.
func stripMovesNothing(t *testing.T, p *page) {
	for _, size := range sizes[:2] {
		if err := p.SetWindow(size[0], size[1]); err != nil {
			t.Fatal(err)
		}
		p.freshAt(clocked)
		p.ask(`document.querySelector('.form').scrollTop = 1e6; scrollTo(0, 1e6)`)
		before := p.lines(rectangles, `.form input, .form select, .form button, .form summary, .head button`)
		for _, step := range []func(){
			func() { p.fill(copperJob); p.until(state + ` === 'before'`) },
			func() { p.click("#run-on"); p.until(state + ` === 'on'`) },
			func() { p.stops(); p.until(state + ` === 'before'`) },
			func() { p.fill(map[string]string{"metal": "cop"}); p.until(state + ` === 'none'`) },
		} {
			step()
			p.settle()
			after := p.lines(rectangles, `.form input, .form select, .form button, .form summary, .head button`)
			if moved := difference(visibleBoth(before, after)); moved != "" {
				t.Errorf("at %d by %d in state %s moved %s", size[0], size[1], p.say(`return `+state), moved)
			}
		}
	}
	if err := p.SetWindow(1024, 768); err != nil {
		t.Fatal(err)
	}
}

// visibleBoth leaves out lines that only one of the lists has: the button that fills a
// blank field disappears when it is filled.
func visibleBoth(before, after []string) (a, b []string) {
	names := func(lines []string) (list []string) {
		for _, line := range lines {
			list = append(list, strings.Join(strings.Fields(line)[:2], " "))
		}
		return list
	}
	keep := func(lines, others []string) (list []string) {
		for _, line := range lines {
			if slices.Contains(names(others), strings.Join(strings.Fields(line)[:2], " ")) {
				list = append(list, line)
			}
		}
		return list
	}
	return keep(before, after), keep(after, before)
}

func runsByKeyboard(t *testing.T, p *page) {
	press := func(keys string) {
		t.Helper()
		if err := p.Press(keys); err != nil {
			t.Fatal(err)
		}
	}
	to := func(id string) {
		t.Helper()
		for range 90 {
			if p.say(`return document.activeElement.id`) == id {
				return
			}
			press(browser.Tab)
		}
		t.Fatalf("Tab never reached %s", id)
	}
	p.fill(copperJob)
	p.until(state + ` === 'before'`)
	to("run-on")
	press(browser.Space)
	p.until(state + ` === 'on' && document.activeElement.id === 'run-off'`) // the focus is not lost
	press(browser.Space)
	p.until(state + ` === 'off'`)
	press(browser.Space)
	p.until(state + ` === 'on'`)
	to("run-sound")
	press(browser.Space)
	p.until(`document.activeElement.getAttribute('aria-checked') === 'false'`)
	to("run-done")
	press(browser.Enter)
	p.until(`document.getElementById('run').contains(document.activeElement)`)
	to("run-stop")
	press(browser.Enter)
	p.until(state + ` === 'before' && document.getElementById('run').contains(document.activeElement)`)
}

func stripHasNoViolation(t *testing.T, p *page) {
	source, looks := axe(t), 0
	look := func() { // each engine at its share, as in noViolation
		t.Helper()
		p.settle()
		if looks++; browser.Names[looks%len(browser.Names)] != p.Name {
			return
		}
		for _, violation := range p.violations(source) {
			t.Errorf("in state %s: %s", p.say(`return `+state), strings.TrimSpace(violation))
		}
	}
	p.fill(copperJob)
	p.until(state + ` === 'before'`)
	look()
	p.click("#run-on")
	p.until(state + ` === 'on'`)
	look()
	p.pass(75 * time.Minute)
	p.click("#run-off")
	p.fill(map[string]string{"before": "24.6", "after": "24.3"})
	look()
	p.click("#run-done")
	p.until(`document.getElementById('run').dataset.asks === 'yes'`)
	look()
	p.click("#run-go-on")
	p.click("#run-off")
	p.pass(9 * time.Hour)
	p.until(state + ` === 'ready'`)
	look()
}
