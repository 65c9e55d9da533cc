/**
 * The bench: fields in, in their text form, answers out. No call throws or hangs,
 * whatever it is given.
 */
import { Keeper, Source } from './keeper.js'
import { LongCalls } from './longcalls.js'
import { laidParcel, parcelOf } from './picture.js'

/**
 * @typedef {{value: number, unit: string, text: string, low?: number, high?: number, range?: string, by?: string}} Answer
 * @typedef {{id: string, name: string, composition: string, density: number, family: string, why: string, remark?: string}} MetalRow
 * @typedef {{value: number, unit: string, text: string}} Cell
 * @typedef {{depth: Cell, area: Cell, minutes: Cell, amperes: Cell, reached: Cell}} BiteRow
 * @typedef {{code: string, level: 'note' | 'warn' | 'stop', field?: string, text: string, card?: string}} Caution
 * @typedef {{field: string, code: string, text: string, readings?: string[]}} Mistake
 * @typedef {{code: string, text: string, do: string, field: string, source: string}} Cause
 *
 * @typedef {object} Reply
 * @property {string} sentence
 * @property {string[]} found
 * @property {Record<string, Answer>} answers
 * @property {string} [salt] of the bath; absent while it is not known
 * @property {{metal: MetalRow[], bites: BiteRow[], causes?: Cause[]}} rows
 * @property {{fits: 'yes' | 'limit' | 'no', text: string, assumed?: string[]}} [supply] whether it can do the job; absent while it is not given
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
 * @typedef {{section?: Drawing, curve?: Drawing, card?: Drawing, back?: Drawing, label?: Drawing}} Drawings
 *
 * @typedef {{id: string, name: string, why: string}} Hit
 *
 * @typedef {{kind: 'line' | 'space', x: Cell, y: Cell, width: Cell, lost?: true}} NarrowRow lost: a line that does not survive the depth
 *
 * @typedef {object} Measured
 * @property {string} sentence
 * @property {Record<string, Answer>} answers
 * @property {{narrow: NarrowRow[], greys?: {x: Cell, y: Cell}[]}} rows
 * @property {Record<string, string>} [fields] that were blank, with what the picture gives for them
 * @property {PictureMap} [map] what was measured; absent if nothing was
 * @property {Caution[]} cautions
 * @property {Mistake[]} errors
 *
 * @typedef {{width: number, height: number, values?: Uint8Array}} PictureMap how far each cell is exposed, from 0, resist, to 255
 *
 * @typedef {{row: number, efficiency: number, low: number, high: number, odd?: string}} RunRow
 * @typedef {{name: string, count: number, lift: number, down: number, to: number, text: string}} Lifted minutes after the beginning, amperes; to: where its bar ends, in % of the timetable's width
 * @typedef {{load: number, round: number, supply: number, start: number, minutes: number, amperes: number, from: number, to: number, text: string, pieces: Lifted[]}} LoadRow
 * @typedef {{at: number, time: string, load: number, supply: number, text: string}} Step minutes after the beginning, the same by the clock where the start is known
 * @typedef {{at: number, text: string}} Tick of the timetable's scale, at so many % of its width
 * @typedef {{name: string, lines: string[]}} ClassCard what a student takes to the bench
 *
 * @typedef {object} Many The reply to a call with many rows.
 * @property {string} sentence
 * @property {Record<string, Answer>} answers
 * @property {{runs: RunRow[], instead?: string[], steps?: Step[], ticks?: Tick[], cards?: ClassCard[]}} rows instead: what fits the session where the plan does not
 * @property {LoadRow[]} plan
 * @property {Caution[]} cautions
 * @property {(Mistake & {row?: number})[]} errors
 *
 * @typedef {{text: string, colour: string}} Shade a local depth, in words and in the colour of its place on the scale
 * @typedef {{x: Cell, y: Cell, depth: Cell, across: number, down: number, over: boolean}} Spot across and down: shares of the picture; over: it is deeper than that
 *
 * @typedef {object} EvenMap
 * @property {number} width
 * @property {number} height
 * @property {Float32Array} [values] local depths over the mean, 0 on resist
 * @property {Uint8Array} [levels] the same in whole per cent, at most 255
 * @property {number} first the least level, that of the first of the shades
 * @property {Shade[]} shades of the levels
 * @property {Shade[]} scale
 * @property {{text: string, path: string, across: number, down: number}[]} contours paths in per cent of the map's width and height, the label's place in shares
 *
 * @typedef {object} Even
 * @property {string} sentence
 * @property {Record<string, Answer>} answers
 * @property {{spots: Spot[]}} rows
 * @property {Record<string, string>} [fields] that were blank, with what the picture gives for them
 * @property {EvenMap} [map] absent if nothing was solved
 * @property {string[]} [assumed] fields that something stood for
 * @property {Caution[]} cautions
 * @property {Mistake[]} errors
 *
 * @typedef {{least: Cell, most: Cell, spread: Cell, volts: Cell, longer: Cell}} VariedRow longer: in % of the time that an even etch takes
 * @typedef {{sentence: string, rows: {distances: (VariedRow & {distance: Cell})[], scrap: (VariedRow & {border: Cell})[]}, errors: Mistake[]}} Distances
 *
 * @typedef {{metal: string, salt: string, found: string, wanted: string, efficiency: string, range: string, odd: string, wrong: string}} LoggedRun
 * @typedef {{run: string, ended: string, note: string, fields: Record<string, string>}} MergedRun
 * @typedef {{id: string, metal: string, salt: string, runs: number, from: string, text: string, undercut: string, ratio: string, fields: Record<string, string>}} Fit fields are those that carry it to an answer; none where the runs are too few. Without an id it is for metals with too few of their own. The ratio is the undercut as its field takes it
 *
 * @typedef {object} Log What is said of a log of runs; what was not asked for is absent.
 * @property {(LoggedRun & MergedRun)[]} [runs]
 * @property {Fit[]} [fits]
 * @property {Drawing} [found]
 * @property {Drawing} [aged]
 * @property {string} [csv]
 * @property {number} [added]
 * @property {number} [changed]
 * @property {string[]} [faults]
 * @property {{text: string, fields: Record<string, string>}} [strip] a trial on scrap, and the job that it is; no fields where it can't be run
 * @property {Mistake[]} [errors] the program has ended under the call
 *
 * @typedef {Measured & {png?: Uint8Array<ArrayBuffer>, sheet?: {width: Cell, height: Cell}}} Prepared
 * @typedef {import('./longcalls.js').Options} Options
 *
 * @typedef {object} Bench
 * @property {(text: string) => Promise<Reply>} answer
 * @property {(text: string) => Promise<Hit[]>} find
 * @property {(text: string) => Promise<Drawings>} draw
 * @property {(picture: unknown, text: string, options: Options) => Promise<Measured>} measure
 * @property {(picture: unknown, text: string, options: Options) => Promise<Prepared>} prepare
 * @property {(picture: unknown, text: string, options: Options) => Promise<Even>} evenness
 * @property {(picture: unknown, text: string, options: Options) => Promise<Distances>} distances
 * @property {(laid: import('./picture.js').Laid, text: string, options: Options) => Promise<{drawing?: Drawing, errors: Mistake[]}>} along
 * @property {(rows: string, options: Options) => Promise<Many>} trial
 * @property {(rows: string, options: Options) => Promise<Many>} batch
 * @property {(text: string, options: Options) => Promise<Log>} log
 * @property {string} version
 * @property {() => void} close
 */

/** How often a short call is tried, the program started again each time. */
const tries = 2

/**
 * @param {import('./files.js').Files} files
 * @returns {Promise<Bench>}
 */
export async function open(files) {
  if (typeof WebAssembly !== 'object') throw new Error('there is no WebAssembly here')
  const source = new Source(files)
  const keeper = new Keeper(source, files.aside)
  const { version } = await keeper.engine()
  const long = new LongCalls(new Source(files.long ?? files))
  /** @param {import('./start.js').ShortCall} call @param {string} text */
  const short = (call, text) => keeper.call(call, { text }, { tries }).then((reply) => reply?.text)
  return {
    answer: async (text) => read(await short('answer', text), faulty),
    find: async (text) => read(await short('find', text), () => []),
    draw: async (text) => read(await short('draw', text), () => ({})),
    measure: async (picture, text, options) => {
      const reply = await long.call('measure', await parcelOf(picture, text), options)
      const measured = read(reply?.text, unread)
      if (measured.map) measured.map.values = reply?.bytes
      return measured
    },
    prepare: async (picture, text, options) => {
      const reply = await long.call('prepare', await parcelOf(picture, text), options)
      return { ...read(reply?.text, unread), ...reply?.bytes && { png: reply.bytes } }
    },
    evenness: async (picture, text, options) => {
      const reply = await long.call('evenness', await parcelOf(picture, text), options)
      const even = read(reply?.text, uneven)
      if (even.map && reply?.bytes) {
        const floats = 4 * even.map.width * even.map.height
        even.map.values = new Float32Array(reply.bytes.slice(0, floats).buffer)
        even.map.levels = reply.bytes.slice(floats)
      }
      return even
    },
    distances: async (picture, text, options) => read((await long.call('distances', await parcelOf(picture, text), options))?.text, undistanced),
    along: async (laid, text, options) => read((await long.call('along', laidParcel(laid, text), options))?.text, () => ({ errors: [fault] })),
    trial: async (rows, options) => read((await long.call('trial', { text: rows }, options))?.text, undone),
    batch: async (rows, options) => read((await long.call('batch', { text: rows }, options))?.text, undone),
    log: async (text, options) => read((await long.call('log', { text }, options))?.text, undone),
    version,
    close: () => {
      keeper.close()
      long.close()
    },
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
  return { sentence: '', found: [], answers: {}, rows: { metal: [], bites: [] }, cautions: [], errors: [fault] }
}

/** @returns {Measured} */
function unread() {
  return { sentence: '', answers: {}, rows: { narrow: [] }, cautions: [], errors: [fault] }
}

/** @returns {Even} */
function uneven() {
  return { sentence: '', answers: {}, rows: { spots: [] }, cautions: [], errors: [fault] }
}

/** @returns {Distances} */
function undistanced() {
  return { sentence: '', rows: { distances: [], scrap: [] }, errors: [fault] }
}

/** @returns {Many} */
function undone() {
  return { sentence: '', answers: {}, rows: { runs: [] }, plan: [], cautions: [], errors: [fault] }
}

/** The program has ended under a call each time. */
const fault = {
  field: '', code: 'internal',
  text: 'This could not be worked out because of a fault in the program (it ended). What was typed is kept, and the next answer works.',
}
