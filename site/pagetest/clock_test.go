package pagetest

import (
	"strings"
	"testing"
)

// The clock of a run is tested without a page: each script says what it shows of a
// run; the expected text was worked out by hand.
func TestRunsClock(t *testing.T) {
	for _, c := range []struct{ name, zone, script, says string }{
		{"half time and the end follow from the start", "UTC",
			`run(at('2026-03-10 21:30:20'), 150)
			[clock(r.half), clock(r.ready)]`,
			"22:45, 0:00 tomorrow"},
		{"seconds of the touch count", "UTC",
			`run(at('2026-03-10 21:30:20'), 10)
			[still(r.ready - at('2026-03-10 21:31:00'))]`,
			"9 min 20 s"},
		{"minutes are counted whole until the last ten", "UTC",
			`[still(90 * minute + 1), still(10 * minute + 1), still(10 * minute), still(1), still(-5)]`,
			"1 h 31 min, 11 min, 10 min 00 s, 0 min 01 s, 0 min 00 s"},
		{"two pauses of 90 s are three minutes, not four", "UTC",
			`run(at('2026-03-10 12:00:00'), 60)
			r.since = at('2026-03-10 12:10:00'); resume(r, at('2026-03-10 12:11:30')); const once = r.paused
			r.since = at('2026-03-10 12:20:00'); resume(r, at('2026-03-10 12:21:30'))
			[once, r.paused, clock(r.ready)]`,
			"2, 3, 13:03"},
		{"forty pauses of 61 s drift by less than a minute", "UTC",
			`run(at('2026-03-10 12:00:00'), 60)
			for (let i = 0; i < 40; i++) { r.since = r.on + i * 2 * minute; resume(r, r.since + 61000) }
			[r.paused, r.off / 1000]`,
			"41, 2440"}, // 40 x 61 s is 40 min 40 s
		{"while it is off nothing runs", "UTC",
			`run(at('2026-03-10 12:00:00'), 60)
			r.since = at('2026-03-10 12:10:00')
			[still(r.ready - reached(r, at('2026-03-10 15:00:00'))), past(ran(r, at('2026-03-10 15:00:00')))]`,
			"50 min, 10 min"},
		{"a pause after half time does not tell it again", "UTC",
			`run(at('2026-03-10 12:00:00'), 60)
			const first = news(r, at('2026-03-10 12:30:00'))
			r.since = at('2026-03-10 12:31:10'); resume(r, at('2026-03-10 12:33:00'))
			follow(r, { halfAt: { value: 752 }, readyAt: { value: 782 } }, {}, at('2026-03-10 12:33:01')) // 12:32 and 13:02
			[first, news(r, at('2026-03-10 12:33:01')), news(r, at('2026-03-10 13:02:00'))]`,
			"1, , 2"},
		{"a later end is told again", "UTC",
			`run(at('2026-03-10 12:00:00'), 60)
			const told = [news(r, at('2026-03-10 13:00:00')), news(r, at('2026-03-10 13:00:01'))]
			follow(r, { timeLeft: { value: 20 } }, { after: '24', elapsed: '60' }, at('2026-03-10 13:05:00'))
			[...told, news(r, at('2026-03-10 13:06:00')), news(r, at('2026-03-10 13:25:00'))]`,
			"2, , , 2"},
		{"a weighing counts from when it was typed", "UTC",
			`run(at('2026-03-10 12:00:00'), 180)
			follow(r, { timeLeft: { value: 90 } }, { after: '24.1', elapsed: '60' }, at('2026-03-10 13:00:00'))
			const first = clock(r.ready)
			follow(r, { timeLeft: { value: 100 } }, { after: '24.1', elapsed: '60' }, at('2026-03-10 14:00:00')) // the depth was typed again
			const deeper = clock(r.ready)
			follow(r, { timeLeft: { value: 30 } }, { after: '23.8', elapsed: '120' }, at('2026-03-10 14:10:00'))
			[first, deeper, clock(r.ready), r.by, r.half]`,
			"14:30, 14:40, 14:40, weighing, 0"},
		{"a weighing while it is off counts from the switching off", "UTC",
			`run(at('2026-03-10 12:00:00'), 180)
			r.since = at('2026-03-10 13:00:00')
			follow(r, { timeLeft: { value: 90 } }, { after: '24.1' }, at('2026-03-10 13:20:00'))
			const left = still(r.ready - reached(r, at('2026-03-10 13:25:00')))
			resume(r, at('2026-03-10 13:30:00'))
			[left, clock(r.ready)]`,
			"1 h 30 min, 15:00"},
		{"of readings the last counts", "UTC",
			`run(at('2026-03-10 12:00:00'), 180)
			follow(r, { readyIn: { value: 60 } }, { readings: '0:00 0.3; 1:00 0.28' }, at('2026-03-10 13:00:00'))
			follow(r, { readyIn: { value: 50 } }, { readings: '0:00 0.32; 1:00 0.28;' }, at('2026-03-10 13:30:00')) // the first one mended
			[r.by, clock(r.ready)]`,
			"reading, 13:50"},
		{"the clock stops at the end of a step, and the next one has its whole time", "UTC",
			`run(at('2026-03-10 12:00:00'), 90)
			takeSteps(r, [{ minutes: { value: 60 }, amperes: { text: '1.2 A' } }, { minutes: { value: 30 }, amperes: { text: '0.9 A' } }])
			const early = stopAtStep(r, at('2026-03-10 12:59:59')), stopped = stopAtStep(r, at('2026-03-10 13:04:00'))
			const [left, on] = [still(r.ready - reached(r, at('2026-03-10 13:09:00'))), past(ran(r, at('2026-03-10 13:09:00')))]
			resume(r, at('2026-03-10 13:10:00'))
			const again = stopAtStep(r, at('2026-03-10 15:00:00'))
			[early, stopped, left, on, clock(nextStop(r)), again]`,
			"false, true, 30 min, 1 h 0 min, 13:40, false"},
		{"a step that is done is not changed", "UTC",
			`run(at('2026-03-10 12:00:00'), 90)
			const rows = (...minutes) => minutes.map((value) => ({ minutes: { value }, amperes: { text: '1 A' } }))
			takeSteps(r, rows(60, 30)); stopAtStep(r, at('2026-03-10 13:00:00')); resume(r, at('2026-03-10 13:00:00'))
			takeSteps(r, rows(50, 20, 10)); const first = r.steps.length
			takeSteps(r, rows(60, 20, 10))
			[first, r.steps.length, clock(nextStop(r))]`,
			"2, 3, 13:20"},
		{"where the sheet says nothing the end stands", "UTC",
			`run(at('2026-03-10 12:00:00'), 180)
			follow(r, {}, { depth: '0,' }, at('2026-03-10 13:00:00'))
			[clock(r.ready), r.by]`,
			"15:00, clock"},
		{"a start before midnight is yesterday's while its run goes on", "UTC",
			`const now = at('2026-03-11 00:10:00')
			[begunAt(23 * 60 + 30, 120, now), begunAt(23 * 60 + 30, 30, now), begunAt(10, 30, now)].map((moment) => clock(moment, now))`,
			"23:30 yesterday, 23:30, 0:10"},
		// Europe/Berlin: 2026-03-29 2:00 becomes 3:00, 2026-10-25 3:00 becomes 2:00.
		{"clocks put forward in the night", "Europe/Berlin",
			`run(at('2026-03-29 00:30:00'), 180)
			[hour(r.ready), r.ready - r.on === 180 * minute]`,
			"4:30, true"},
		{"clocks put back in the night", "Europe/Berlin",
			`run(at('2026-10-25 00:30:00'), 180)
			[hour(r.ready), r.ready - r.on === 180 * minute]`,
			"2:30, true"},
		{"yesterday is a calendar's day, though it had 23 hours", "Europe/Berlin",
			`const now = at('2026-03-30 00:10:00')
			[clock(begunAt(23 * 60, 120, now), now), clock(at('2026-03-29 01:00:00'), now), clock(at('2026-03-31 01:00:00'), now)]`,
			"23:00 yesterday, 1:00 yesterday, 1:00 tomorrow"},
		{"a day further off has its name", "UTC",
			`[clock(at('2026-03-13 08:05:00'), at('2026-03-10 12:00:00'))]`,
			"8:05 on Friday, March 13"},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Setenv("TZ", c.zone)
			var says string
			inNode(t, `import * as moments from './page/run/moment.js'
				import * as runs from './page/run/record.js'
				const { hour, minute, past, still } = moments
				const { begunAt, follow, news, nextStop, ran, reached, resume, stopAtStep, takeSteps } = runs
				const at = (text) => new Date(text).getTime()
				let r
				const clock = (moment, now = r?.on) => moments.clock(moment, now ?? moment)
				const run = (on, needed) => { r = runs.begin(hour(on), moments.ofDay(on), on, needed) }
				const said = (() => { `+returning(c.script)+` })()
				console.log(JSON.stringify(said.join(', ')))`, &says)
			if says != c.says {
				t.Errorf("it says %q, not %q", says, c.says)
			}
		})
	}
}

// returning makes a script return its last line.
func returning(script string) string {
	last := strings.LastIndex(script, "\n") + 1
	return script[:last] + "return " + script[last:]
}

// A saved run may be damaged, old or forged: then no run is shown.
func TestSavedRunIsRead(t *testing.T) {
	for _, c := range []struct {
		name, saved string
		there       bool
	}{
		{"a run", `{ on: now - hour, ready: now + hour, half: now }`, true},
		{"ready yesterday", `{ on: now - 50 * hour, ready: now - 25 * hour, half: 0 }`, false},
		{"ready this morning", `{ on: now - 9 * hour, ready: now - 5 * hour, half: 0 }`, true},
		{"off since an hour, ready long ago", `{ on: now - 50 * hour, ready: now - 25 * hour, half: 0, since: now - hour }`, true},
		{"a moment that is none", `{ on: now, ready: 'soon', half: 0 }`, false},
		{"nothing in it", `{}`, false},
		{"no object", `null`, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			var there bool
			inNode(t, `import { loadRun } from './page/run/record.js'
				const now = Date.now(), hour = 36e5
				globalThis.localStorage = { getItem: () => JSON.stringify(`+c.saved+`) }
				Object.defineProperty(globalThis, 'sessionStorage', { get() { throw new Error('refused') } })
				console.log(JSON.stringify(loadRun(now) !== undefined))`, &there)
			if there != c.there {
				t.Errorf("a run is found: %v", there)
			}
		})
	}
}
