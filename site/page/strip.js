/** The strip at the page's foot, in which a run is begun and its clock is read. */
import { canStayAwake } from './awake.js'
import { at, mark, put } from './element.js'
import { clock, hour, past, still } from './moment.js'
import { done, halfway, ran, reached, stage } from './run.js'
import { soundState } from './sound.js'

/**
 * @typedef {import('./run.js').Run} Run
 * @typedef {import('../engine/client.js').Reply} Reply
 *
 * @typedef {object} Seen
 * @property {Run | undefined} run
 * @property {Record<string, string>} typed
 * @property {Reply | undefined} reply the newest
 */

export const place = at('run')

/** @param {string} selector */
const part = (selector) => /** @type {HTMLElement} */ (place.querySelector(selector))

export const button = {
  on: part('#run-on'), from: part('#run-from'),
  off: part('#run-off'), sound: part('#run-sound'), done: part('#run-done'), far: part('#run-far'),
}

const pageTitle = document.title

/** @param {Seen} seen */
export function showStrip(seen) {
  const { run } = seen
  const now = Date.now()
  const focused = place.contains(document.activeElement)
  if (run) showRun(run, seen, now)
  else showBefore(seen)
  if (focused && !isSeen(document.activeElement)) [...place.querySelectorAll('button')].find(isSeen)?.focus()
}

/** @param {Element | null} element */
const isSeen = (element) => (element?.getClientRects().length ?? 0) > 0

/**
 * Before a run: what begins it is there once a time and a current are, and
 * nothing speaks against it.
 *
 * @param {Seen} seen
 */
function showBefore({ typed, reply }) {
  const { time, current, density, readyAt } = reply?.answers ?? {}
  const stopped = reply?.cautions.some(({ level }) => level === 'stop')
  const fit = time && (current || density) && !stopped && !typed.after && !typed.readings
  mark(place, 'data-state', fit ? 'before' : 'none')
  button.from.hidden = !typed.start || !readyAt
  put(button.from, `Count from ${typed.start}`)
  put(part('.said'), '')
  if (document.title !== pageTitle) document.title = pageTitle
}

/**
 * @param {Run} run
 * @param {Seen} seen
 * @param {number} now
 */
function showRun(run, { typed, reply }, now) {
  const isDone = stage(run, now) === done
  const left = still(run.ready - reached(run, now))
  mark(place, 'data-state', run.since ? 'off' : isDone ? 'ready' : 'on')
  put(part('.left b'), isDone ? 'Ready' : left)
  put(part('.left span'), isDone ? since(reached(run, now) - run.ready) : 'to ready')
  put(part('.half'), toHalf(run, now))
  put(part('.said'), said(run, now, reply))
  put(part('.how'), how(run, typed, now))
  put(button.off, run.since ? 'On again' : 'Pause')
  mark(button.sound, 'aria-checked', String(run.sound))
  button.far.hidden = run.start !== typed.start || !typed.after || Boolean(typed.readings) || run.weighed === typed.after
  put(button.far, `Write ${past(ran(run, now))} as the time so far`)
  document.title = `${run.since ? 'Off' : isDone ? 'Ready' : left} · ${pageTitle}`
}

/** @param {number} time */
const since = (time) => (past(time) === '0 min' ? 'now' : `${past(time)} ago`)

/**
 * @param {Run} run
 * @param {number} now
 */
function toHalf(run, now) {
  const half = run.half - reached(run, now)
  return half > 0 ? `${still(half)} to half time` : ''
}

/**
 * What is spoken as well: it changes only when something happens.
 *
 * @param {Run} run
 * @param {number} now
 * @param {Reply} [reply]
 */
function said(run, now, reply) {
  const ready = clock(run.ready, now)
  if (run.since) return `Off since ${clock(run.since, now)}. The time waits until it is on again.`
  if (stage(run, now) === done) return `Time is up, at ${ready}. Switch off.${expected('weightAtTarget', reply)}`
  if (stage(run, now) === halfway) return `Half time is past, ready at ${ready}.${expected('weightAtHalf', reply)}`
  return run.half ? `Half time at ${hour(run.half)}, ready at ${ready}.` : `Ready at ${ready}.`
}

/**
 * @param {'weightAtHalf' | 'weightAtTarget'} name
 * @param {Reply} [reply]
 */
function expected(name, reply) {
  const weight = reply?.answers[name]
  return weight ? ` It should weigh ${weight.text}${name === 'weightAtHalf' ? ' at half time' : ''}.` : ''
}

/**
 * What is counted by, and what the clock can't do.
 *
 * @param {Run} run
 * @param {Record<string, string>} typed
 * @param {number} now
 */
function how(run, typed, now) {
  const by = {
    clock: run.typed ? `the start typed, ${clock(run.on, now)}` : `the touch at ${clock(run.on, now)}`,
    weighing: `the weighing typed at ${clock(run.seenAt, now)}`,
    reading: `the ammeter’s reading typed at ${clock(run.seenAt, now)}`,
  }[run.by]
  return [
    `Counted from ${by}.`,
    run.start !== typed.start && 'The sheet has another start by now; this counts on as it was.',
    'It only reminds, and switches nothing off.',
    !canStayAwake() && 'The screen can’t be kept awake here: set the device not to sleep.',
    heard(run),
  ].filter(Boolean).join(' ')
}

/** @param {Run} run */
function heard({ sound }) {
  if (!sound) return 'The sound is off.'
  return {
    heard: 'A muted device makes no sound.',
    waits: 'The sound waits for a touch on this page.',
    none: 'This browser can’t sound: keep an eye on it.',
  }[soundState()]
}
