/**
 * Generates sounds. A browser allows them only after the page was touched. Tunes
 * are scheduled ahead on the audio clock: a browser slows the timers of a page that
 * is not seen, but not this clock.
 */
import { second } from './moment.js'

/**
 * @typedef {object} Tune
 * @property {number} at the moment at which it begins
 * @property {number[]} notes in hertz, one after the other
 */

/** @type {AudioContext | undefined} */
let context

/** To be called from a pointer or key event. */
export function allowSound() {
  try {
    context ??= new AudioContext()
    if (context.state !== 'running') context.resume().catch(() => {})
  } catch {
    // This browser can't make sounds.
  }
}

/** Whether a sound would be heard, needs a touch first, or is impossible. @returns {'heard' | 'waits' | 'none'} */
export function soundState() {
  if (typeof AudioContext !== 'function') return 'none'
  return context?.state === 'running' ? 'heard' : 'waits'
}

/** The length of a note, and the time from one to the next, in seconds. */
const [length, apart] = [0.22, 0.3]

/** By how much the audio clock may differ from the device's, in milliseconds: it stops while the device sleeps. */
const tolerance = second

/** The scheduled tunes as a text, their tones, and the moment at which the audio clock was 0. */
let plan = ''
/** @type {OscillatorNode[]} */
let tones = []
let zero = NaN

/** Whether what is scheduled sounds at its moment: the audio clock has run on. @param {number} now */
export function onTime(now) {
  return soundState() === 'heard' && context !== undefined && Math.abs(zero + context.currentTime * second - now) < tolerance
}

/**
 * Schedules tunes instead of those scheduled before. To be called repeatedly: it
 * schedules again only what has changed.
 *
 * @param {Tune[]} tunes
 * @param {number} now
 */
export function schedule(tunes, now) {
  if (!context || context.state !== 'running') return
  const wanted = JSON.stringify(tunes)
  if (wanted === plan && onTime(now)) return
  plan = wanted
  zero = now - context.currentTime * second
  for (const tone of tones) tone.stop()
  tones = tunes.filter(({ at }) => at > now - tolerance).flatMap(tonesOf)
}

/** @param {Tune} tune */
function tonesOf({ at, notes }) {
  const { currentTime, destination } = /** @type {AudioContext} */ (context)
  const begins = Math.max((at - zero) / second, currentTime)
  return notes.map((frequency, place) => {
    const from = begins + place * apart
    const tone = new OscillatorNode(/** @type {AudioContext} */ (context), { type: 'triangle', frequency })
    const loudness = new GainNode(/** @type {AudioContext} */ (context), { gain: 0 })
    loudness.gain.setValueAtTime(0, from)
    loudness.gain.linearRampToValueAtTime(0.8, from + 0.02)
    loudness.gain.linearRampToValueAtTime(0, from + length)
    tone.connect(loudness).connect(destination)
    tone.start(from)
    tone.stop(from + length)
    return tone
  })
}
