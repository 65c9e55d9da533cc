/**
 * The run under way: its clock, which counts down to half time and to the end,
 * keeps the screen awake and sounds. It starts when a button is pressed or a start
 * is typed. It only reminds, and switches nothing off.
 */
import { textOf } from '../../engine/fields.js'
import { stayAwake } from './awake.js'
import { hour, minute, ofDay, past, second } from './moment.js'
import { begin, begunAt, done, follow, halfway, loadRun, news, nextStop, onRunChange, ran, resume, saveRun, stage, stopAtStep, takeSteps } from './record.js'
import { allowSound, onTime, schedule, soundState } from './sound.js'
import { button, place, said, showStrip } from './strip.js'
import { askToNotify, notifyHidden, vibrate } from './tell.js'
import { everySecond } from './ticking.js'

/** How long after the last change the clock follows the form: a half-typed number must not move it. */
const rest = second

/** How long it rings when a run is ready, and how often. */
const [ringing, ringEvery] = [minute, 3 * second]

/** In hertz. */
const [halfTune, readyTune] = [[660, 660], [880, 880, 1175]]

/** @param {import('../page.js').Desk} desk */
export function setUpRun(desk) {
  const { form } = desk
  let run = loadRun(Date.now())

  /** Whether a start was typed that the clock does not count from yet. */
  let startTyped = false

  /** The run that ended last: a weighing may still ask how long the current was on. @type {import('./record.js').Run | undefined} */
  let ended

  /** When the tune of half time and the ringing began; 0 once the strip was touched. */
  let [halfFrom, ringsFrom] = [0, 0]

  /** Whether the strip asks if the clock is to stop. */
  let asks = false

  const ticks = everySecond(tick)

  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting

  /** @param {string} name */
  const typed = (name) => form.typed()[name] ?? ''
  const answers = () => desk.reply()?.answers ?? {}
  const isOfThisJob = () => run?.start === typed('start')

  function show() {
    saveRun(run)
    stayAwake(run !== undefined)
    ticks(run !== undefined)
    schedule(run?.sound ? tunes(run) : [], Date.now())
    showStrip({ run, ended, asks, typed: form.typed(), reply: desk.reply() })
  }

  /** What is to sound: half time, and the ringing at the next stop, or those that sound now. @param {import('./record.js').Run} run */
  function tunes(run) {
    const half = run.told > 0 ? halfFrom : run.since ? 0 : run.half
    const stop = run.waits === 1 || run.told === done ? ringsFrom : run.since ? 0 : nextStop(run)
    const rings = stop ? Array.from({ length: ringing / ringEvery }, (_, place) => ({ at: stop + place * ringEvery, notes: readyTune })) : []
    return half ? [{ at: half, notes: halfTune }, ...rings] : rings
  }

  function tick() {
    if (!run) return
    const now = Date.now()
    const stop = nextStop(run)
    if (stopAtStep(run, now)) tell(done, stop, now)
    const stage = news(run, now)
    if (stage) tell(stage, stage === done ? run.ready : run.half, now)
    show()
  }

  /**
   * Announces a stage. If the audio clock did not run on, its tune begins now.
   *
   * @param {1 | 2} reached half time or the end
   * @param {number} at its moment
   * @param {number} now
   */
  function tell(reached, at, now) {
    if (!run) return
    const from = onTime(now) ? at : now
    if (reached === done) ringsFrom = from
    else halfFrom = from
    vibrate()
    if (run.notify) void notifyHidden(said(run, now, desk.reply()))
  }

  /** @param {number} now */
  const rings = (now) => run?.sound && ringsFrom > 0 && now - ringsFrom < ringing

  function switchedOn() {
    const { time } = answers()
    if (!time) return
    const now = Date.now()
    run = begin(hour(now), ofDay(now), now, time.value)
    takeSteps(run, desk.reply()?.rows.bites ?? [])
    const { start } = run
    const write = () => {
      form.write('start', start)
      form.write('paused', '')
    }
    if (typed('start') || typed('paused')) desk.undoably(write)
    else {
      write()
      desk.changed()
    }
  }

  /** Counts from the start on the form. */
  async function countFromTyped() {
    const start = typed('start')
    const minutes = await minutesIn('start')
    const { readyAt } = answers()
    if (minutes === undefined || !readyAt || start !== typed('start')) return
    const now = Date.now()
    run = begin(start, minutes, begunAt(minutes, readyAt.value - minutes, now), 0)
    run.typed = true
    startTyped = false
    await followForm()
    run.told = stage(run, now)
    show()
  }

  /** Moves the end of the run to the time that the form gives. */
  async function followForm() {
    if (!run || !isOfThisJob()) return
    await readPause()
    takeSteps(run, desk.reply()?.rows.bites ?? [])
    follow(run, answers(), form.typed(), Date.now())
  }

  /** A typed pause replaces the counted one. */
  async function readPause() {
    const text = typed('paused')
    if (!run || run.wrote === text) return
    const minutes = await minutesIn('paused') ?? 0
    if (!run) return // it was ended meanwhile
    run.wrote = text
    run.paused = minutes
    run.off = minutes * minute
  }

  /**
   * The minutes that the bench reads in a field: after midnight, or of a pause.
   *
   * @param {'start' | 'paused'} name
   */
  async function minutesIn(name) {
    const reply = await desk.bench()?.answer(textOf({ start: '0:00', time: '1 min', [name]: form.fields()[name] }))
    return reply?.answers.readyAt && reply.answers.readyAt.value - 1
  }

  /**
   * Another tab has started, changed or ended the run. A stage that it announced is
   * announced here as well, because that tab may not be allowed to sound.
   *
   * @param {import('./record.js').Run | undefined} next
   */
  function takeOver(next) {
    const before = run
    run = next
    if (run && run.on === before?.on) {
      if (run.step > before.step) tell(done, run.since, Date.now())
      if (run.told > before.told) tell(run.told === done ? done : halfway, run.told === done ? run.ready : run.half, Date.now())
    }
    takePause(before?.wrote)
    show()
  }

  /** Writes the pause that another tab counted, unless a different one was typed here. */
  function takePause(before = '') {
    if (!run || !isOfThisJob() || run.wrote === before || typed('paused') !== before) return
    form.write('paused', run.wrote)
    desk.changed()
  }

  async function onAgain() {
    if (isOfThisJob()) await readPause()
    if (!run?.since) return
    resume(run, Date.now())
    if (isOfThisJob()) {
      run.wrote = `${run.paused} min`
      form.write('paused', run.wrote)
      desk.changed()
    }
    show()
  }

  /** Writes for how long the current has been on, unless something else was typed there. */
  function writeElapsed() {
    const of = run ?? ended
    const input = form.rows.get('elapsed')?.input
    if (!of || !input || of.start !== typed('start')) return
    const time = ran(of, Date.now())
    const soFar = past(time)
    if (time < minute) return // a weighing judges nothing yet
    if (input.value === soFar || (input.value && input.value !== of.elapsed)) return
    of.elapsed = soFar
    form.write('elapsed', soFar)
    input.dispatchEvent(new Event('input', { bubbles: true }))
  }

  /** @param {import('./record.js').Run} of @param {number} now */
  function end(of, now) {
    of.since ||= now
    ended = of
    run = undefined
  }

  async function switchNotify() {
    if (run?.notify) run.notify = false
    else if (await askToNotify() && run) run.notify = true
    show()
  }

  place.addEventListener('click', ({ target }) => {
    const touched = /** @type {Element} */ (target).closest('button')
    if (!touched) return
    const now = Date.now()
    const rang = rings(now)
    halfFrom = ringsFrom = 0
    allowSound()
    asks = touched === button.done
    if (touched === button.on) switchedOn()
    if (touched === button.from) void countFromTyped()
    if (touched === button.stop && run) end(run, now)
    if (touched === button.over && run) {
      if (run.waits) run.waits = 2
      else end(run, now)
    }
    if (touched === button.off && run?.since) void onAgain()
    else if (touched === button.off && run) run.since = now
    if (touched === button.sound && run && !rang) run.sound = !run.sound
    if (touched === button.tell) void switchNotify()
    show()
  })

  // A weighing counts from when it is typed.
  const course = form.parts.find(({ element }) => element.dataset.part === 'course')?.element
  course?.addEventListener('toggle', () => { if (course.open && form.blank('after')) writeElapsed() })
  form.rows.get('after')?.input.addEventListener('input', writeElapsed)
  let asked = ''
  desk.onReply((_, { ask = '' }) => {
    if (ask === 'check' && asked !== ask && form.blank('after')) writeElapsed()
    asked = ask
  })

  form.rows.get('start')?.input.addEventListener('input', () => { startTyped = typed('start') !== '' })

  desk.onReply(() => {
    clearTimeout(resting)
    resting = setTimeout(async () => {
      if (startTyped && !isOfThisJob()) await countFromTyped()
      else await followForm()
      show()
    }, rest)
  })

  // After a reload a browser is silent until the page is touched again.
  for (const touch of ['click', 'keydown']) {
    document.addEventListener(touch, () => { if (run && soundState() === 'waits') allowSound() })
  }

  onRunChange(takeOver)
  takePause()
  show()
}
