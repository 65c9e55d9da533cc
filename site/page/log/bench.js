/**
 * What the log says of this bench. The program works it out when the log changes; what
 * an answer needs of it is stored, so that a page that opens has it at once. All tabs
 * share it.
 */
import { textOf } from '../../engine/fields.js'
import { stored } from '../device/stored.js'
import { fail } from './why.js'
import { readLog } from './store.js'

/**
 * @typedef {import('./store.js').Run} Run
 * @typedef {import('../../engine/client.js').Log} Log
 * @typedef {import('../../engine/client.js').Fit} Fit
 *
 * @typedef {object} Known
 * @property {number} revision of the log that it is from
 * @property {boolean} off answers don't use it
 * @property {Fit[]} fits
 */

export const known = stored('saltbite bench', (text) => {
  /** @type {Known} */
  const read = JSON.parse(text)
  return Number.isFinite(read.revision) && Array.isArray(read.fits) ? read : undefined
})

/** @returns {Known} */
export const knownNow = () => known.read() ?? { revision: -1, off: false, fits: [] }

/** @param {Known} of */
export const remember = (of) => known.write(JSON.stringify(of))

/**
 * Asks the program about the log.
 *
 * @param {import('../page.js').Desk} desk
 * @param {Record<string, string>} asked
 * @param {Run[]} runs
 * @returns {Promise<Log>}
 */
export async function askOf(desk, asked, runs) {
  const lines = [textOf(asked)]
  for (const run of runs) {
    if (lines.length % atOnce === 0) await new Promise((go) => { setTimeout(go) })
    lines.push(lineOf(run))
  }
  const reply = await desk.bench()?.log(lines.join('\n'), {})
  return reply && !reply.errors ? reply : fail('Lost')
}

/** How many runs are written at once: the page goes on painting meanwhile. */
const atOnce = 500

/** @param {Run} run */
const lineOf = ({ run, ended, note, fields }) => `${textOf({ run, ended, note })}&${fields}`

/**
 * Works out what the log says now.
 *
 * @param {import('../page.js').Desk} desk
 * @param {number} rows how many of the last runs are told one by one
 */
export async function workOut(desk, rows) {
  const { runs, revision } = await readLog()
  const reply = await askOf(desk, { do: 'fit', rows: String(rows) }, runs)
  const { revision: before, off } = knownNow()
  // A tab that read later may have written sooner; a log that was deleted begins again.
  if (revision >= before || runs.length === 0) remember({ revision, off, fits: reply.fits ?? [] })
  return { runs, reply, revision }
}
