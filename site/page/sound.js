/**
 * Sounds, made here and allowed by a touch: a browser keeps a page silent until
 * it was touched.
 */

/** @type {AudioContext | undefined} */
let context

/** Called in a touch or a key's own event. */
export function allowSound() {
  try {
    context ??= new AudioContext()
    if (context.state !== 'running') context.resume().catch(() => {})
  } catch {
    // This browser has no sound to give.
  }
}

/** Whether a sound would be heard, waits for a touch, or can't be. @returns {'heard' | 'waits' | 'none'} */
export function soundState() {
  if (typeof AudioContext !== 'function') return 'none'
  return context?.state === 'running' ? 'heard' : 'waits'
}

/** How long a note lasts, and from one to the next, in seconds. */
const [length, apart] = [0.22, 0.3]

/** @param {number[]} notes in hertz, one after the other */
export function play(notes) {
  if (!context) return
  for (const [place, note] of notes.entries()) {
    const from = context.currentTime + place * apart
    const tone = new OscillatorNode(context, { type: 'triangle', frequency: note })
    const loudness = new GainNode(context, { gain: 0 })
    loudness.gain.setValueAtTime(0, from)
    loudness.gain.linearRampToValueAtTime(0.8, from + 0.02)
    loudness.gain.linearRampToValueAtTime(0, from + length)
    tone.connect(loudness).connect(context.destination)
    tone.start(from)
    tone.stop(from + length)
  }
}
