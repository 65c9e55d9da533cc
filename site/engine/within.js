/** Calls that their caller may cut short. */

/** @typedef {{signal?: AbortSignal, progress?: (share: number) => void}} Options */

/**
 * Does the work unless and until the options' signal says to stop.
 *
 * @template T
 * @param {unknown} options
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export function within(options, work) {
  const signal = signalOf(options)
  if (!signal) return work()
  if (signal.aborted) return Promise.reject(signal.reason)
  return new Promise((resolve, reject) => {
    const stop = () => reject(signal.reason)
    signal.addEventListener('abort', stop, { once: true })
    work().then(resolve, reject).finally(() => signal.removeEventListener('abort', stop))
  })
}

/** @param {unknown} options */
function signalOf(options) {
  try {
    const { signal } = /** @type {{signal?: unknown}} */ (options ?? {})
    return signal instanceof AbortSignal ? signal : undefined
  } catch {
    return undefined
  }
}
