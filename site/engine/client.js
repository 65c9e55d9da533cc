/**
 * The bench: fields in, in their text form, answers out. It keeps the program
 * running, starts it again when it has died or fallen silent, and repeats the
 * call that was being worked on, once. No call throws or hangs, whatever it is
 * given.
 */
import { Death, NoWorker, startAside, startHere } from './thread.js'

/**
 * @typedef {{value: number, unit: string, text: string, low?: number, high?: number, range?: string, by?: string}} Answer
 * @typedef {{id: string, name: string, composition: string, density: number, family: string, why: string, remark?: string}} MetalRow
 * @typedef {{value: number, unit: string, text: string}} Cell
 * @typedef {{depth: Cell, area: Cell, minutes: Cell, amperes: Cell}} BiteRow
 * @typedef {{code: string, level: 'note' | 'warn' | 'stop', field?: string, text: string, card?: string}} Caution
 * @typedef {{field: string, code: string, text: string}} Mistake
 *
 * @typedef {object} Reply
 * @property {string} sentence
 * @property {string[]} found
 * @property {Record<string, Answer>} answers
 * @property {string} [salt] of the bath; absent while it is not known
 * @property {{metal: MetalRow[], bites?: BiteRow[]}} rows
 * @property {Caution[]} cautions
 * @property {Mistake[]} errors
 *
 * @typedef {object} Path A path of a drawing.
 * @property {string} role
 * @property {string} path SVG path data, in mm of the frame
 * @property {true} [dash]
 *
 * @typedef {object} Lettering A text of a drawing, on its baseline.
 * @property {string} role
 * @property {string} text
 * @property {number} x
 * @property {number} y
 * @property {number} size of the font, in mm
 * @property {'start' | 'middle' | 'end'} anchor
 * @property {true} [strong]
 *
 * @typedef {Path | Lettering} Shape
 *
 * @typedef {object} Drawing
 * @property {number} width of the frame, in mm
 * @property {number} height
 * @property {string} title
 * @property {string} words which say the same as the picture
 * @property {string} [metal] the family of the metal
 * @property {Shape[]} shapes in painting order
 *
 * @typedef {{section?: Drawing, curve?: Drawing, card?: Drawing, label?: Drawing}} Drawings
 *
 * @typedef {{id: string, name: string, why: string}} Hit
 * @typedef {object} Bench
 * @property {(text: string) => Promise<Reply>} answer
 * @property {(text: string) => Promise<Hit[]>} find
 * @property {(text: string) => Promise<Drawings>} draw
 * @property {string} version
 * @property {() => void} close
 *
 * @typedef {import('./thread.js').Engine} Engine
 */

/** How often a call is tried, the program started anew each time. */
const tries = 2

/**
 * @param {import('./files.js').Files} files
 * @returns {Promise<Bench>}
 */
export async function open(files) {
  if (typeof WebAssembly !== 'object') throw new Error('there is no WebAssembly here')
  const keeper = new Keeper(files)
  const { version } = await keeper.engine()
  return {
    answer: async (text) => read(await keeper.call('answer', text), faulty),
    find: async (text) => read(await keeper.call('find', text), () => []),
    draw: async (text) => read(await keeper.call('draw', text), () => ({})),
    version,
    close: () => keeper.close(),
  }
}

/**
 * Keeps one engine running. The program is read once and kept, so that a tab
 * which stays open while the site is replaced goes on with what it has.
 */
class Keeper {
  /** @type {Promise<Engine> | undefined} */
  #running
  /** @type {Promise<WebAssembly.Module> | undefined} */
  #module
  #files
  #aside
  #closed = false

  /** @param {import('./files.js').Files} files */
  constructor(files) {
    this.#files = files
    this.#aside = files.aside
  }

  /** @returns {Promise<Engine>} */
  engine() {
    this.#running ??= this.#start()
    return this.#running
  }

  /** @returns {Promise<Engine>} */
  async #start() {
    const module = () => this.#compiled()
    if (!this.#aside) return startHere(module)
    try {
      const place = this.#module ? undefined : this.#files.place
      return await startAside(place, module, (module) => { this.#module = Promise.resolve(module) })
    } catch (reason) {
      if (!(reason instanceof NoWorker)) throw reason
      this.#aside = false
      return startHere(module)
    }
  }

  #compiled() {
    return this.#module ??= this.#files.module()
  }

  /**
   * The reply to a call; undefined when the program has ended under it each time.
   *
   * @param {import('./start.js').Call} call
   * @param {string} text
   */
  async call(call, text) {
    for (let tried = 0; tried < tries && !this.#closed;) {
      const running = this.engine()
      try {
        return await (await running).call(call, text)
      } catch (reason) {
        if (this.#running === running) this.#running = undefined
        if (!(reason instanceof Death) || reason.under) tried++
      }
    }
    return undefined
  }

  close() {
    this.#closed = true
    this.#running?.then((engine) => engine.end(), () => {})
  }
}

/**
 * @template T
 * @param {string | undefined} json
 * @param {() => T} fallback
 * @returns {T}
 */
function read(json, fallback) {
  try {
    return json === undefined ? fallback() : JSON.parse(json)
  } catch {
    return fallback()
  }
}

/** @returns {Reply} */
function faulty() {
  return {
    sentence: '', found: [], answers: {}, rows: { metal: [] }, cautions: [],
    errors: [{
      field: '', code: 'internal',
      text: 'This could not be worked out because of a fault in the program. What was typed is kept, and the next answer works.',
    }],
  }
}
