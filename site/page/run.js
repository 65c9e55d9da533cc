/**
 * The run under way, as it is kept: when the current came on, when half time and
 * the end are, and for how long it was off. All its times are moments, so that a
 * reload, a night and a sleeping device change nothing.
 */
import { at, day, minute } from './moment.js'

/**
 * @typedef {import('../engine/client.js').Reply['answers']} Answers
 *
 * @typedef {object} Run
 * @property {string} start what stood in the field when the count began: while it stands there, the sheet is this run's
 * @property {boolean} typed the start was typed, not touched
 * @property {number} minutes the start, in minutes after its midnight
 * @property {number} on the moment of switching on
 * @property {number} half the moment of half time; 0 when there is none
 * @property {number} ready the moment at which it is ready
 * @property {'clock' | 'weighing' | 'reading'} by what the end is counted by
 * @property {string} seen the weighing or the reading, as it was typed
 * @property {number} seenAt the moment at which that was typed
 * @property {number} from the moment from which the time left then counts
 * @property {number} since the moment of switching off; 0 while it is on
 * @property {number} off how long it was off before, to the millisecond
 * @property {number} paused the same in whole minutes, as the sheet has it
 * @property {string} wrote what stands in the sheet for that
 * @property {0 | 1 | 2} told up to which stage it was told
 * @property {boolean} sound
 * @property {string} weighed the weighing for which the time so far was written
 */

/** Stages of a run: under way, past half time, ready. */
export const [begun, halfway, done] = /** @type {const} */ ([0, 1, 2])

/**
 * @param {string} start
 * @param {number} minutes the start, in minutes after midnight
 * @param {number} on
 * @param {number} needed how long the current is to be on, in minutes
 * @returns {Run}
 */
export function begin(start, minutes, on, needed) {
  return {
    start, minutes, on, typed: false, half: on + needed / 2 * minute, ready: on + needed * minute,
    by: 'clock', seen: '', seenAt: on, from: on, since: 0, off: 0, paused: 0, wrote: '', told: begun, sound: true, weighed: '',
  }
}

/**
 * The moment that a typed start means: today's, unless that is still to come and
 * a run begun yesterday would still be under way.
 *
 * @param {number} minutes the start, in minutes after midnight
 * @param {number} needed how long until it is ready, in minutes
 * @param {number} now
 */
export function begunAt(minutes, needed, now) {
  const today = at(now, minutes)
  const yesterday = at(now, minutes, -1)
  return today > now && yesterday + needed * minute > now ? yesterday : today
}

/**
 * Moves the end of a run to where the answers have it. Where they have none,
 * the end stands. A weighing or a reading counts from when it was typed, or from
 * when the current went off for it.
 *
 * @param {Run} run
 * @param {Answers} answers
 * @param {Record<string, string>} typed
 * @param {number} now
 */
export function follow(run, { halfAt, readyAt, timeLeft, readyIn }, { after = '', time = '', readings = '' }, now) {
  const left = timeLeft ?? readyIn
  if (left) {
    const seen = timeLeft ? [after, time, lastOf(readings)].join(' ') : lastOf(readings)
    if (seen !== run.seen) {
      run.seen = seen
      run.seenAt = now
      run.from = reached(run, now)
    }
    run.by = timeLeft ? 'weighing' : 'reading'
    run.half = 0
    run.ready = run.from + left.value * minute
  } else if (readyAt) {
    run.seen = ''
    run.by = 'clock'
    run.half = run.on + (halfAt.value - run.minutes) * minute
    run.ready = run.on + (readyAt.value - run.minutes) * minute
  }
}

/** @param {string} readings */
const lastOf = (readings) => readings.split(/[;\n]/).map((reading) => reading.trim()).filter(Boolean).at(-1) ?? ''

/**
 * The current is on again: what it was off adds whole minutes, in all never fewer
 * than it was off and never a minute more, however often it was off.
 *
 * @param {Run} run
 * @param {number} now
 */
export function resume(run, now) {
  run.off += now - run.since
  run.since = 0
  const paused = Math.max(run.paused, Math.ceil(run.off / minute))
  const later = (paused - run.paused) * minute
  run.paused = paused
  run.ready += later
  run.from += later
  if (run.half && run.told === begun) run.half += later
}

/** The moment that a run has come to: it stands still while the current is off. @param {Run} run @param {number} now */
export const reached = ({ since }, now) => since || now

/** How long the current has been on. @param {Run} run @param {number} now */
export const ran = (run, now) => Math.max(reached(run, now) - run.on - run.off, 0)

/** @param {Run} run @param {number} now */
export function stage(run, now) {
  const moment = reached(run, now)
  if (moment >= run.ready) return done
  return run.half && moment >= run.half ? halfway : begun
}

/**
 * What is new since it was last asked. A later end is told again when it comes;
 * half time only where it has moved by more than a pause is rounded.
 *
 * @param {Run} run
 * @param {number} now
 * @returns {typeof halfway | typeof done | undefined}
 */
export function news(run, now) {
  const was = run.told
  const is = stage(run, now)
  if (was === halfway && is === begun && run.half && run.half - reached(run, now) < minute) return undefined
  run.told = is
  return is > was && is !== begun ? is : undefined
}

const key = 'saltbite run'

/** The tab's own run before the one that was kept last; each may throw when it is looked at. */
const stores = [() => sessionStorage, () => localStorage]

/** What was saved last. @type {string | undefined} */
let saved

/**
 * Saves a run, or that there is none; each second, but only what has changed.
 *
 * @param {Run | undefined} run
 */
export function saveRun(run) {
  const text = JSON.stringify(run)
  if (text === saved) return
  saved = text
  for (const store of stores) {
    try {
      if (text) store().setItem(key, text)
      else store().removeItem(key)
    } catch {
      // The clock works with nothing kept.
    }
  }
}

/**
 * The run that was kept, unless it was ready, or off, more than a day ago.
 *
 * @param {number} now
 * @returns {Run | undefined}
 */
export function loadRun(now) {
  for (const store of stores) {
    try {
      const run = { ...begin('', 0, 0, NaN), ...JSON.parse(store().getItem(key) ?? '{}') }
      const whole = [run.on, run.half, run.ready, run.from, run.since, run.off, run.paused, run.minutes].every(Number.isFinite)
      if (whole && now - Math.max(run.ready, run.since) < day) return run
    } catch {
      // Damaged, or not to be had: then there is none.
    }
  }
  return undefined
}
