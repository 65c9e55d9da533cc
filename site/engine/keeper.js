/**
 * Keeps the program running: starts it again when it has died or fallen silent,
 * and repeats the call that was being worked on.
 */
import { Death, NoWorker, startAside, startHere } from './thread.js'

/**
 * @typedef {import('./thread.js').Engine} Engine
 * @typedef {import('./start.js').Parcel} Parcel
 */

/**
 * The program, read and compiled once and kept, so that a tab which stays open
 * while the site is replaced goes on with what it has.
 */
export class Source {
  /** @type {Promise<WebAssembly.Module> | undefined} */
  #module
  #files
  #noWorker = false

  /** @param {import('./files.js').Files} files */
  constructor(files) {
    this.#files = files
  }

  /**
   * Starts the program.
   *
   * @param {boolean} aside whether in a worker, where one can be had
   * @returns {Promise<Engine>}
   */
  async start(aside) {
    const module = () => this.#compiled()
    if (!aside || this.#noWorker) return startHere(module)
    const { worker, place } = this.#files
    try {
      return await startAside(worker, this.#module ? undefined : place, module, (module) => { this.#module = Promise.resolve(module) })
    } catch (reason) {
      if (!(reason instanceof NoWorker)) throw reason
      this.#noWorker = true
      return startHere(module)
    }
  }

  #compiled() {
    return this.#module ??= this.#files.module()
  }
}

/** One running program. */
export class Keeper {
  /** @type {Promise<Engine> | undefined} */
  #running
  #source
  #aside
  #closed = false

  /**
   * @param {Source} source
   * @param {boolean} aside whether it runs in a worker, where one can be had
   */
  constructor(source, aside) {
    this.#source = source
    this.#aside = aside
  }

  /** @returns {Promise<Engine>} */
  engine() {
    this.#running ??= this.#source.start(this.#aside)
    return this.#running
  }

  /**
   * The reply to a call; undefined when the program has ended under it each time,
   * or the signal says to stop.
   *
   * @param {import('./start.js').Call} call
   * @param {Parcel} parcel
   * @param {{tries: number, signal?: AbortSignal, hear?: import('./start.js').Hear}} how
   */
  async call(call, parcel, { tries, signal, hear = () => {} }) {
    for (let tried = 0; tried < tries && !this.#closed && !signal?.aborted;) {
      const running = this.engine()
      try {
        return await (await running).call(call, parcel, hear)
      } catch (reason) {
        if (this.#running === running) this.#running = undefined
        if (!(reason instanceof Death) || reason.under) tried++
      }
    }
    return undefined
  }

  /** Ends the program, whatever it works on, and starts it again for the next call. */
  restart() {
    this.#end()
    if (!this.#closed) this.engine().catch(() => {}) // the next call tries again
  }

  close() {
    this.#closed = true
    this.#end()
  }

  #end() {
    this.#running?.then((engine) => engine.end(), () => {})
    this.#running = undefined
  }
}
