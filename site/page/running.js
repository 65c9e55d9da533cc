/**
 * The run under way: its clock, which counts down to half time and to the end,
 * keeps the screen awake and sounds. It begins by a touch, or by a start that was
 * typed. It reminds, and switches nothing off.
 */
import { textOf } from '../engine/fields.js'
import { stayAwake } from './awake.js'
import { hour, minute, ofDay, past, second } from './moment.js'
import { begin, begunAt, done, follow, halfway, loadRun, news, ran, resume, saveRun, stage } from './run.js'
import { allowSound, play, soundState } from './sound.js'
import { button, place, showStrip } from './strip.js'

/** How long the sheet rests before the clock follows it: half a number is no change of plan. */
const rest = second

/** For how long it sounds when a run is ready, and how often. */
const [ringing, ringEvery] = [minute, 3 * second]

/** In hertz. */
const [halfTune, readyTune] = [[660, 660], [880, 880, 1175]]

/** @param {import('./page.js').Desk} desk */
export function setUpRunning(desk) {
  const { sheet } = desk
  let run = loadRun(Date.now())

  /** Whether a start was typed that is not counted from yet. */
  let startTyped = false

  /** When it began to ring, and when it rang last. */
  let [ringsFrom, rang] = [0, 0]

  /** @type {ReturnType<typeof setInterval> | undefined} */
  let ticking

  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting

  /** @param {string} name */
  const typed = (name) => sheet.typed()[name] ?? ''
  const answers = () => desk.reply()?.answers ?? {}
  const isOfThisJob = () => run?.start === typed('start')

  function show() {
    saveRun(run)
    stayAwake(run !== undefined)
    if (run) ticking ??= setInterval(tick, second)
    else {
      clearInterval(ticking)
      ticking = undefined
    }
    showStrip({ run, typed: sheet.typed(), reply: desk.reply() })
  }

  function tick() {
    if (!run) return
    const now = Date.now()
    const told = news(run, now)
    if (told === done) ringsFrom = now
    if (told === halfway && run.sound) play(halfTune)
    if (rings(now) && now - rang >= ringEvery) {
      rang = now
      play(readyTune)
    }
    show()
  }

  /** @param {number} now */
  const rings = (now) => run?.sound && now - ringsFrom < ringing

  function switchedOn() {
    const { time } = answers()
    if (!time) return
    const now = Date.now()
    run = begin(hour(now), ofDay(now), now, time.value)
    const { start } = run
    const write = () => {
      sheet.write('start', start)
      sheet.write('paused', '')
    }
    if (typed('start') || typed('paused')) desk.undoably(write)
    else {
      write()
      desk.changed()
    }
  }

  /** Counts from the start that stands on the sheet. */
  async function countFromTyped() {
    const start = typed('start')
    const minutes = await minutesIn('start')
    const { readyAt } = answers()
    if (minutes === undefined || !readyAt || start !== typed('start')) return
    const now = Date.now()
    run = begin(start, minutes, begunAt(minutes, readyAt.value - minutes, now), 0)
    run.typed = true
    startTyped = false
    await followSheet()
    run.told = stage(run, now)
    show()
  }

  /** Moves the end of the run to where the sheet has it. */
  async function followSheet() {
    if (!run || !isOfThisJob()) return
    await readPause()
    follow(run, answers(), sheet.typed(), Date.now())
  }

  /** A pause that was typed replaces what was counted. */
  async function readPause() {
    const text = typed('paused')
    if (!run || run.wrote === text) return
    const minutes = await minutesIn('paused') ?? 0
    run.wrote = text
    run.paused = minutes
    run.off = minutes * minute
  }

  /**
   * The minutes that the bench reads in a field: a clock's after midnight, or a
   * pause's.
   *
   * @param {'start' | 'paused'} name
   */
  async function minutesIn(name) {
    const reply = await desk.bench()?.answer(textOf({ start: '0:00', time: '1 min', [name]: sheet.fields()[name] }))
    return reply?.answers.readyAt && reply.answers.readyAt.value - 1
  }

  async function onAgain() {
    if (isOfThisJob()) await readPause()
    if (!run?.since) return
    resume(run, Date.now())
    if (isOfThisJob()) {
      run.wrote = `${run.paused} min`
      sheet.write('paused', run.wrote)
      desk.changed()
    }
    show()
  }

  /** The time so far is what a weighing is judged by. */
  function writeTimeSoFar() {
    if (!run) return
    run.weighed = typed('after')
    const soFar = past(ran(run, Date.now()))
    desk.undoably(() => sheet.write('time', soFar))
  }

  place.addEventListener('click', ({ target }) => {
    const touched = /** @type {Element} */ (target).closest('button')
    if (!touched) return
    const now = Date.now()
    const rang = rings(now)
    ringsFrom = 0
    allowSound()
    if (touched === button.on) switchedOn()
    if (touched === button.from) void countFromTyped()
    if (touched === button.far) writeTimeSoFar()
    if (touched === button.done) run = undefined
    if (touched === button.off && run?.since) void onAgain()
    else if (touched === button.off && run) run.since = now
    if (touched === button.sound && run && !rang) run.sound = !run.sound
    show()
  })

  sheet.rows.get('start')?.input.addEventListener('input', () => { startTyped = typed('start') !== '' })

  desk.onReply(() => {
    clearTimeout(resting)
    resting = setTimeout(async () => {
      if (startTyped && !isOfThisJob()) await countFromTyped()
      else await followSheet()
      show()
    }, rest)
  })

  // After a reload a browser is silent until the page is touched anew.
  for (const touch of ['click', 'keydown']) {
    document.addEventListener(touch, () => { if (run && soundState() === 'waits') allowSound() })
  }

  show()
}
