/**
 * The run under way as a record: when the current came on, when half time and
 * the end are, and for how long it was off. All its times are moments, so that a
 * reload, a night and a sleeping device change nothing.
 */
import { stored } from '../device/stored.js'
import { day, minute, momentAt } from './moment.js'

/**
 * @typedef {import('../../engine/client.js').Reply['answers']} Answers
 *
 * @typedef {object} Run
 * @property {string} start the text of the start field when the run began: while the field holds it, the form belongs to this run
 * @property {boolean} typed the start was typed, not set by the button
 * @property {number} minutes the start, in minutes after its midnight
 * @property {number} on the moment of switching on
 * @property {number} half the moment of half time; 0 if it has none
 * @property {number} ready the moment at which it is ready
 * @property {'clock' | 'weighing' | 'reading'} by what the end is calculated from
 * @property {string} seen the weighing or the reading, as it was typed
 * @property {number} seenAt the moment at which that was typed
 * @property {number} from the moment from which the time left counts
 * @property {number} since the moment of switching off; 0 while it is on
 * @property {number} off the total time off before, in milliseconds
 * @property {number} paused the same in whole minutes, as on the form
 * @property {string} wrote the text on the form for that
 * @property {0 | 1 | 2} told the last stage that was announced
 * @property {boolean} sound
 * @property {boolean} notify a notification was asked for
 * @property {string} elapsed the text that the clock wrote as the time the current has been on
 * @property {Step[]} steps of stopping out; none without it
 * @property {number} step how many of them are done
 * @property {0 | 1 | 2} waits at the end of a step: 1 until the current is switched off, then 2
 *
 * @typedef {object} Step
 * @property {number} until for how long the current has been on at its end, in milliseconds
 * @property {string} amperes its current, as it is shown
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
    by: 'clock', seen: '', seenAt: on, from: on, since: 0, off: 0, paused: 0, wrote: '', told: begun,
    sound: true, notify: false, elapsed: '', steps: [], step: 0, waits: 0,
  }
}

/**
 * The moment of a typed start: today, unless that time is still to come and a run
 * started yesterday would not have ended yet.
 *
 * @param {number} minutes the start, in minutes after midnight
 * @param {number} needed how long until it is ready, in minutes
 * @param {number} now
 */
export function begunAt(minutes, needed, now) {
  const today = momentAt(now, minutes)
  const yesterday = momentAt(now, minutes, -1)
  return today > now && yesterday + needed * minute > now ? yesterday : today
}

/**
 * Moves the end of a run to the time that the answers give; without one it stays.
 * A weighing or a reading counts from when it was typed, or from when the current
 * was switched off for it.
 *
 * @param {Run} run
 * @param {Answers} answers
 * @param {Record<string, string>} typed
 * @param {number} now
 */
export function follow(run, { halfAt, readyAt, timeLeft, readyIn }, { after = '', elapsed = '', readings = '' }, now) {
  const left = timeLeft ?? readyIn
  if (left) {
    const seen = timeLeft ? [after, elapsed, lastOf(readings)].join(' ') : lastOf(readings)
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
    run.half = halfAt && run.steps.length === 0 ? run.on + (halfAt.value - run.minutes) * minute : 0
    run.ready = run.on + (readyAt.value - run.minutes) * minute
  }
}

/**
 * Takes over the steps of stopping out, unless one that is done would change: what
 * was etched stays etched.
 *
 * @param {Run} run
 * @param {import('../../engine/client.js').BiteRow[]} rows
 */
export function takeSteps(run, rows) {
  let until = 0
  const steps = rows.map(({ minutes, amperes }) => ({ until: until += minutes.value * minute, amperes: amperes.text }))
  const same = run.steps.slice(0, run.step).every((step, place) => steps[place]?.until === step.until)
  if (!same || (run.step > 0 && run.step >= steps.length)) return
  run.steps = steps
  if (steps.length > 0) run.half = 0
}

/** The step that comes to its end next; the end of the last is that of the run. @param {Run} run */
const stepNow = ({ steps, step }) => (step < steps.length - 1 ? steps[step] : undefined)

/** The moment at which the current must be switched off next. @param {Run} run */
export function nextStop(run) {
  const step = stepNow(run)
  return step ? run.on + run.off + step.until : run.ready
}

/**
 * Stops the clock at the end of a step: the time of the next one begins when the
 * current is on again. True if it was stopped.
 *
 * @param {Run} run
 * @param {number} now
 */
export function stopAtStep(run, now) {
  const step = stepNow(run)
  if (run.since || !step || now < nextStop(run)) return false
  run.since = nextStop(run)
  run.step++
  run.waits = 1
  return true
}

/** @param {string} readings */
const lastOf = (readings) => readings.split(/[;\n]/).map((reading) => reading.trim()).filter(Boolean).at(-1) ?? ''

/**
 * The current is on again: the pause is added in whole minutes. The sum of all
 * pauses is rounded up to whole minutes, not each pause.
 *
 * @param {Run} run
 * @param {number} now
 */
export function resume(run, now) {
  run.off += now - run.since
  run.since = 0
  run.waits = 0
  const paused = Math.max(run.paused, Math.ceil(run.off / minute))
  const later = (paused - run.paused) * minute
  run.paused = paused
  run.ready += later
  run.from += later
  if (run.half && run.told === begun) run.half += later
}

/** The moment that a run has reached: it does not advance while the current is off. @param {Run} run @param {number} now */
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
 * The stage that was reached since the last call. A later end is announced again;
 * half time only if it moved by more than the rounding of a pause.
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

/** All tabs share one run: a pause in one tab is a pause in all. */
const shared = stored('saltbite run', runOf)

/** The run as it was last written or read, so that only a change is written. */
let last = ''

/** Saves a run, or removes the saved one. @param {Run | undefined} run */
export function saveRun(run) {
  const text = textOf(run)
  if (text === last) return
  last = text
  shared.write(text)
}

/**
 * The saved run, unless it was ready, or off, more than a day ago.
 *
 * @param {number} now
 * @returns {Run | undefined}
 */
export function loadRun(now) {
  const read = shared.read()
  const run = read && now - Math.max(read.ready, read.since) < day ? read : undefined
  last = textOf(run)
  return run
}

/** @param {(run: Run | undefined) => void} hear called when another tab has started, changed or ended the run */
export function onRunChange(hear) {
  shared.onChange(() => hear(loadRun(Date.now())))
}

/** @param {Run | undefined} run */
const textOf = (run) => (run ? JSON.stringify(run) : '')

/** @param {string} text */
function runOf(text) {
  /** @type {Run} */
  const run = { ...begin('', 0, 0, NaN), ...JSON.parse(text) }
  return Object.entries(begin('', 0, 0, 0)).every(([name, usual]) => {
    const value = run[/** @type {keyof Run} */ (name)]
    if (name === 'steps') return Array.isArray(value) && value.every((step) => Number.isFinite(step?.until) && typeof step.amperes === 'string')
    return typeof value === typeof usual && !(typeof value === 'number' && !Number.isFinite(value))
  }) && (run.step === 0 || run.step < run.steps.length) ? run : undefined
}
