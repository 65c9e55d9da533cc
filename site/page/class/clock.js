/**
 * The class under way: its timetable as a running clock. It counts from the moment
 * of switching on, tells each step with a sound, and keeps the screen awake. A load
 * that is hung later than planned moves what follows on its supply. It only reminds,
 * and switches nothing off.
 *
 * All its times are moments of the device's clock: a reload and a sleeping device
 * change nothing. Only clock times are calculated here.
 */
import { stored } from '../device/stored.js'
import { byId, frameOf, put } from '../element.js'
import { canStayAwake, stayAwake } from '../run/awake.js'
import { clock, hour, minute, second, still } from '../run/moment.js'
import { allowSound, onTime, schedule, soundState } from '../run/sound.js'
import { askToNotify, canNotify, notifyHidden, vibrate } from '../run/tell.js'
import { everySecond } from '../run/ticking.js'

/**
 * @typedef {import('../../engine/client.js').Step} Step
 *
 * @typedef {object} Run
 * @property {number} on the moment of switching on
 * @property {number} told the moment up to which all steps were told
 * @property {number} heard the moment up to which what rang was answered
 * @property {boolean} sound
 * @property {boolean} notify whether a step is told by a notification while the page is hidden
 * @property {Record<string, number>} late by load: how much later than planned it was hung, in milliseconds
 * @property {string} text the class that runs, in the one text form
 */

/** How long it rings at a step, and how often; and its notes, in hertz. */
const [ringing, ringEvery, notes] = [30 * second, 3 * second, [880, 880, 1175]]

const kept = stored('saltbite-class-run', runOf)

/** @param {string} text @returns {Run | undefined} */
function runOf(text) {
  const { on, told, heard, sound, notify, text: of = '', ...late } = Object.fromEntries(new URLSearchParams(text))
  const [from, until, answered] = [on, told, heard].map(Number)
  if (!Number.isFinite(from + until + answered) || !of) return undefined
  const delays = Object.entries(late).map(([load, time]) => [load, Number(time)]).filter(([, time]) => Number.isFinite(time))
  return { on: from, told: until, heard: answered, sound: sound === 'yes', notify: notify === 'yes', text: of, late: Object.fromEntries(delays) }
}

/** @param {Run | undefined} run */
function keep(run) {
  if (!run) return kept.write('')
  const { on, told, heard, sound, notify, text, late } = run
  return kept.write(`${new URLSearchParams({ on: `${on}`, told: `${told}`, heard: `${heard}`, sound: sound ? 'yes' : 'no', notify: notify ? 'yes' : 'no', text, ...Object.fromEntries(Object.entries(late).map(([load, time]) => [load, `${time}`])) })}`)
}

const strip = byId('class-run')
const steps = byId('steps')
const [begin, done, sound, tell, stop, stopIt, goOn] = ['begin', 'step-done', 'class-sound', 'class-tell', 'class-stop', 'class-stop-it', 'class-go-on'].map(byId)

/**
 * @typedef {object} Asked
 * @property {() => string} text the class on the form, in the one text form
 * @property {(run: Run | undefined) => void} turned the clock was started, stopped or taken over
 */

/** @param {Asked} asked */
export function setUpClock({ text, turned }) {
  let run = kept.read()
  /** @type {Step[]} */
  let plan = []
  let asks = false
  const ticks = everySecond(tick)

  /** The latest delay on the supply of a step, of the loads up to its own. @param {Step} step */
  const delay = (step) => {
    const before = plan.filter(({ supply, load }) => supply === step.supply && load <= step.load).map(({ load }) => run?.late[load])
    return before.filter((late) => late !== undefined).at(-1) ?? 0
  }
  /** @param {Step} step */
  const moment = (step) => (run?.on ?? 0) + step.at * minute + delay(step)
  /** When a step is due, as the timetable says it unless its supply is late. @param {Step} step @param {number} at */
  const time = (step, at) => (run && delay(step) ? clock(at, Date.now()) : step.time)
  const inOrder = () => plan.map((step) => ({ step, at: moment(step) })).sort((a, b) => a.at - b.at)

  function show() {
    keep(run)
    stayAwake(run !== undefined)
    ticks(run !== undefined)
    strip.dataset.state = run ? 'runs' : 'before'
    strip.dataset.asks = asks ? 'yes' : ''
    begin.hidden = run !== undefined || plan.length === 0
    strip.hidden = !run && plan.length === 0
    sound.setAttribute('aria-checked', `${run?.sound ?? true}`)
    tell.setAttribute('aria-checked', `${!!run?.notify}`)
    tell.hidden = !canNotify()
    showSteps()
    if (!run) return schedule([], Date.now())
    tick()
  }

  function tick() {
    if (!run) return
    const now = Date.now()
    const all = inOrder()
    const due = all.filter(({ at }) => at <= now && at > /** @type {Run} */ (run).told)
    if (due.length > 0) {
      run.told = now
      keep(run)
      vibrate()
      const said = `Now: ${due.map(({ step }) => step.text).join('. ')}.`
      put(byId('class-said'), said)
      if (run.notify) void notifyHidden(said)
    }
    const unheard = all.filter(({ at }) => at > /** @type {Run} */ (run).heard && now - at < ringing)
    schedule(run.sound ? unheard.flatMap(({ at }) => tunes(onTime(now) ? at : Math.max(at, now))) : [], now)
    const rings = unheard.filter(({ at }) => at <= now)
    const next = all.find(({ at }) => at > now)
    const [{ at, step }] = rings.length > 0 ? rings : next ? [next] : [all[all.length - 1] ?? { at: run.on, step: undefined }]
    strip.classList.toggle('rings', rings.length > 0)
    put(byId('class-next'), step ? `${time(step, at)} ${step.text}` : '')
    put(byId('class-left'), rings.length > 0 ? 'now' : next ? `in ${still(at - now)}` : 'All of it is done.')
    put(byId('class-how'), how())
    const [first, last] = [run.on, all[all.length - 1]?.at ?? run.on]
    byId('timetable').style.setProperty('--now', `${Math.min(Math.max((now - first) / (last - first || 1), 0), 1) * 100}%`)
    for (const element of steps.children) element.classList.toggle('past', Number(element.getAttribute('data-at')) <= now)
  }

  /** @param {number} at */
  const tunes = (at) => Array.from({ length: ringing / ringEvery }, (_, place) => ({ at: at + place * ringEvery, notes }))

  function how() {
    const { always = '', asleep = '', silent = '', waits = '', none = '' } = byId('class-how').dataset
    const heard = !run?.sound ? silent : { heard: '', waits, none }[soundState()]
    return [always, heard, canStayAwake() ? '' : asleep].filter(Boolean).join(' ')
  }

  /** The steps with their times, and what a load that comes later is hung by. */
  function showSteps() {
    const loads = new Set(plan.filter(({ at }) => at === 0).map(({ load }) => load))
    steps.replaceChildren(...inOrder().map(({ step, at }) => {
      const element = frameOf('step')
      const hangs = !loads.has(step.load)
      loads.add(step.load)
      element.dataset.at = run ? `${at}` : ''
      put(element.querySelector('b'), time(step, at))
      put(element.querySelector('.text'), step.text)
      const late = /** @type {HTMLElement} */ (element.querySelector('button'))
      late.hidden = !run || !hangs
      late.dataset.load = `${step.load}`
      return element
    }))
  }

  /** @param {string} load */
  function hungNow(load) {
    const step = plan.find((one) => `${one.load}` === load)
    if (run && step) run.late[load] = Date.now() - run.on - step.at * minute
  }

  begin.addEventListener('click', () => {
    allowSound()
    const now = Date.now()
    run = { on: now, told: now, heard: now, sound: true, notify: false, late: {}, text: text() }
    turned(run)
  })
  done.addEventListener('click', () => {
    if (run) run.heard = Date.now()
    show()
  })
  sound.addEventListener('click', () => {
    allowSound()
    if (run) run.sound = !run.sound
    show()
  })
  tell.addEventListener('click', async () => {
    if (run?.notify) run.notify = false
    else if (await askToNotify() && run) run.notify = true
    show()
  })
  for (const [button, asking] of /** @type {const} */ ([[stop, true], [goOn, false]])) {
    button.addEventListener('click', () => {
      asks = asking
      show()
      const next = asking ? goOn : stop
      next.focus()
    })
  }
  stopIt.addEventListener('click', () => {
    run = undefined
    asks = false
    turned(run)
  })
  steps.addEventListener('click', ({ target }) => {
    const button = /** @type {Element} */ (target).closest('button')
    if (!button) return
    hungNow(button.dataset.load ?? '')
    show()
  })
  // After a reload a browser is silent until the page is touched.
  for (const touch of ['click', 'keydown']) {
    document.addEventListener(touch, () => { if (run && soundState() === 'waits') allowSound() })
  }
  kept.onChange((other) => {
    run = other
    turned(run)
  })

  return {
    run: () => run,
    /** Takes the steps of the newest plan. @param {Step[]} next */
    take(next) {
      plan = next
      show()
    },
  }
}

/** When the class that runs was begun, to the nearest minute, as the start of its text. @param {Run} run */
export const startOf = ({ on }) => hour(on + minute / 2)
