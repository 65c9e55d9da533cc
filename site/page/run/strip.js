/** The strip at the foot of the page: starts a run and shows its clock. */
import { canStayAwake } from './awake.js'
import { canNotify } from './tell.js'
import { byId, mark, put } from '../element.js'
import { clock, hour, past, still } from './moment.js'
import { done, halfway, nextStop, ran, reached, stage } from './record.js'
import { soundState } from './sound.js'

/**
 * @typedef {import('./record.js').Run} Run
 * @typedef {import('../../engine/client.js').Reply} Reply
 *
 * @typedef {object} Seen
 * @property {Run | undefined} run
 * @property {Run | undefined} ended the run before
 * @property {boolean} asks whether the clock is to stop
 * @property {Record<string, string>} typed
 * @property {Reply | undefined} reply the newest
 */

export const place = byId('run')

/** @param {string} selector */
const part = (selector) => /** @type {HTMLElement} */ (place.querySelector(selector))

export const button = {
  on: part('#run-on'), from: part('#run-from'),
  off: part('#run-off'), sound: part('#run-sound'), tell: part('#run-tell'), done: part('#run-done'),
  finish: place.querySelector('#run-finish'), stop: part('#run-stop'), goOn: part('#run-go-on'), over: part('#run-over'),
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
 * Before a run: its button appears once there are a time and a current, and no
 * caution stops the job.
 *
 * @param {Seen} seen
 */
function showBefore({ ended, typed, reply }) {
  const { time, current, density, readyAt } = reply?.answers ?? {}
  const stopped = reply?.cautions.some(({ level }) => level === 'stop')
  const fit = time && (current || density) && !stopped && !typed.after && !typed.readings
  mark(place, 'data-state', fit ? 'before' : 'none')
  button.from.hidden = !typed.start || !readyAt
  put(button.from, `Count from\u00a0${typed.start}`)
  const wasOn = ended && ended.start === typed.start ? past(ran(ended, ended.since)) : ''
  put(part('.before p'), wasOn ? `It was on for ${wasOn}.` : typed.before || typed.start ? 'Once the current is on:' : 'Weigh it first, to check half-way.')
  if (button.finish instanceof HTMLElement) {
    button.finish.hidden = !wasOn
    mark(button.finish, 'data-elapsed', wasOn)
  }
  put(part('.said'), '')
  mark(place, 'data-asks', '')
  if (document.title !== pageTitle) document.title = pageTitle
}

/**
 * @param {Run} run
 * @param {Seen} seen
 * @param {number} now
 */
function showRun(run, { asks, typed, reply }, now) {
  const isDone = stage(run, now) === done
  const stops = isDone || run.waits === 1
  const left = still(nextStop(run) - reached(run, now))
  const isLast = nextStop(run) === run.ready
  const title = isDone ? 'Ready' : run.waits ? `Step ${run.step} done` : left
  mark(place, 'data-state', stops ? 'ready' : run.since ? 'off' : 'on')
  mark(place, 'data-asks', asks && !stops ? 'yes' : '')
  put(part('.left b'), title)
  put(part('.left span'), stops ? since(now - (isDone ? run.ready : run.since)) : run.waits ? '' : isLast ? 'to ready' : `to the end of step ${run.step + 1}`)
  put(part('.half'), toHalf(run, now))
  put(part('.said'), said(run, now, reply))
  put(part('.how'), how(run, typed, now))
  put(button.off, !run.since ? 'Pause' : run.waits ? `On again at ${run.steps[run.step].amperes}` : 'On again')
  mark(button.sound, 'aria-checked', String(run.sound))
  mark(button.tell, 'aria-checked', String(run.notify))
  button.tell.hidden = !canNotify()
  document.title = `${run.since && !stops ? 'Off' : title} · ${pageTitle}`
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
 * Also the words of a notification, and spoken by screen readers: it changes only when something happens.
 *
 * @param {Run} run
 * @param {number} now
 * @param {Reply} [reply]
 */
export function said(run, now, reply) {
  const ready = clock(run.ready, now)
  if (run.waits) return `Step ${run.step} done. ${run.waits === 1 ? 'Switch off, stop out' : 'Stop out'}, set ${run.steps[run.step].amperes}, switch on again.`
  if (run.since) return `Off since ${clock(run.since, now)}. The time waits until it is on again.`
  if (stage(run, now) === done) return `Time is up, at ${ready}. Switch off.${expected('weightAtTarget', reply)}`
  if (stage(run, now) === halfway) return `Half time is past, ready at ${ready}.${expected('weightAtHalf', reply)}`
  if (run.steps.length > 1) return `Step ${run.step + 1} of ${run.steps.length} at ${run.steps[run.step].amperes}, until ${clock(nextStop(run), now)}.`
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
 * What the time is calculated from, and what the clock can't do.
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
  const { other, always, asleep, ...sound } = part('.how').dataset
  return [
    `Counted from ${by}.`,
    run.start !== typed.start && other,
    always,
    !canStayAwake() && asleep,
    sound[run.sound ? soundState() : 'silent'],
  ].filter(Boolean).join(' ')
}
