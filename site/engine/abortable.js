/** Calls that their caller may cut short, and that say how far they have come. */

/**
 * @typedef {object} Options
 * @property {AbortSignal} [signal]
 * @property {import('./start.js').Hear} [progress]
 */

/**
 * Does the work unless and until the options' signal says to stop: then it
 * rejects at once, with the signal's reason. The work is told by the same signal.
 * A short call goes on to its end all the same, which is milliseconds away, and
 * its reply is ignored; a long one is ended (longcalls.js).
 *
 * @template T
 * @param {unknown} options of any type, as a caller may give it
 * @param {(options: Options) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function abortable(options, work) {
  const signal = optionOf(options, 'signal', (value) => value instanceof AbortSignal ? value : undefined)
  const progress = optionOf(options, 'progress', (value) => typeof value === 'function' ? hearing(/** @type {Function} */ (value)) : undefined)
  signal?.throwIfAborted()
  /** @type {() => void} */
  let stop = () => {}
  const stopped = new Promise((_, reject) => {
    stop = () => reject(signal?.reason)
    signal?.addEventListener('abort', stop)
  })
  try {
    const reply = await Promise.race([work({ signal, progress }), stopped])
    progress?.(1)
    return /** @type {T} */ (reply)
  } finally {
    signal?.removeEventListener('abort', stop)
  }
}

/**
 * An option, read so that no getter's mistake is the call's own.
 *
 * @template T
 * @param {unknown} options
 * @param {string} name
 * @param {(value: unknown) => T} read
 */
function optionOf(options, name, read) {
  try {
    return read(/** @type {Record<string, unknown>} */ (options ?? {})[name])
  } catch {
    return undefined
  }
}

/**
 * Tells a function of the caller's how far the work has come: from 0 to 1, never
 * backwards. What the function throws is ignored, so that it can't end the call.
 *
 * @param {Function} progress
 * @returns {import('./start.js').Hear}
 */
function hearing(progress) {
  let told = 0
  return (share) => {
    if (!(share > told)) return
    told = Math.min(share, 1)
    try {
      progress(told)
    } catch {}
  }
}
