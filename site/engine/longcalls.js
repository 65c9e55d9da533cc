/**
 * Calls that may take seconds. They run in a worker of their own, made of the
 * same compiled program, so that no answer waits for them; one after the other,
 * since each may need much memory.
 */
import { Keeper } from './keeper.js'

/**
 * @typedef {object} Options
 * @property {AbortSignal} [signal] ends the worker, whatever it works on
 * @property {import('./start.js').Hear} [progress]
 */

export class LongCalls {
  #keeper
  /** Settles when the last call that was asked for is over. @type {Promise<unknown>} */
  #last = Promise.resolve()

  /** @param {import('./keeper.js').Source} source */
  constructor(source) {
    this.#keeper = new Keeper(source, true)
  }

  /**
   * The reply to a call; undefined when the program has ended under it, or the
   * signal says to stop. It is not tried again: what ends a program once, such as
   * too little memory, mostly does so again.
   *
   * @param {import('./start.js').LongCall} call
   * @param {import('./start.js').Parcel} parcel
   * @param {Options} options
   * @returns {Promise<import('./start.js').Parcel | undefined>}
   */
  call(call, parcel, options) {
    const reply = this.#last.then(() => this.#work(call, parcel, options))
    this.#last = reply.catch(() => {})
    return reply
  }

  close() {
    this.#keeper.close()
  }

  /**
   * @param {import('./start.js').LongCall} call
   * @param {import('./start.js').Parcel} parcel
   * @param {Options} options
   */
  async #work(call, parcel, { signal, progress }) {
    const stop = () => this.#keeper.restart()
    signal?.addEventListener('abort', stop)
    try {
      return await this.#keeper.call(call, parcel, { tries: 1, signal, hear: progress })
    } finally {
      signal?.removeEventListener('abort', stop)
    }
  }
}
