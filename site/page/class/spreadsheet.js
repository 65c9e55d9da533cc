/**
 * Rows copied from a spreadsheet: cells parted by tabs, a cell with a line break or a
 * tab in quotation marks. A first line of titles says which column is which;
 * without one the columns are those of the page, or with width and height apart.
 */
import { sizeText } from './size.js'

/** @typedef {Record<string, string>} Cells by the page's columns */

/** The page's columns. */
export const columns = /** @type {const} */ (['name', 'metal', 'size', 'open', 'depth', 'pieces'])

/** The same with width and height apart. */
const wider = ['name', 'metal', 'width', 'height', 'open', 'depth', 'pieces']

/** What a title says to be recognised, the first that fits. @type {[string, RegExp][]} */
const titles = [
  ['open', /exposed share|share|open|%/i],
  ['area', /area|cm2|cm²/i],
  ['width', /width|breadth/i],
  ['height', /height|length/i],
  ['diameter', /diameter/i],
  ['size', /size/i],
  ['depth', /depth|deep/i],
  ['pieces', /pieces|count|number|qty|quantity/i],
  ['metal', /metal|alloy|sheet/i],
  ['name', /name|student|piece|tag/i],
]

/**
 * The rows of a pasted text.
 *
 * @param {string} text
 * @returns {Cells[]}
 */
export function pastedRows(text) {
  const lines = linesOf(text).filter((cells) => cells.some((cell) => cell !== ''))
  const named = namesOf(lines[0] ?? [])
  const names = named ?? (lines.some((cells) => cells.length > columns.length) ? wider : columns)
  return lines.slice(named ? 1 : 0).map((cells) => rowOf(cells, names))
}

/**
 * @param {string[]} cells
 * @param {readonly string[]} names
 * @returns {Cells}
 */
function rowOf(cells, names) {
  const all = Object.fromEntries(names.map((name, place) => [name, cells[place] ?? '']))
  const { width, height, diameter, area, ...row } = all
  return { ...row, size: row.size || sizeText({ width, height, diameter, area }) }
}

/**
 * Which column is which by a line of titles; undefined if it is a row of values.
 *
 * @param {string[]} cells
 */
function namesOf(cells) {
  const names = cells.map((cell) => titles.find(([, says]) => says.test(cell))?.[0] ?? '')
  const unlike = new Set(names.filter(Boolean)).size
  return unlike > 1 && !cells.some((cell) => /^\d/.test(cell)) ? names : undefined
}

/**
 * The cells of each line.
 *
 * @param {string} text
 */
function linesOf(text) {
  const lines = [['']]
  let quoted = false
  for (const [sign] of text.replace(/\r\n?/g, '\n').matchAll(/""|[^]/g)) {
    const line = lines[lines.length - 1]
    const last = line.length - 1
    if (sign === '"' && (quoted || line[last] === '')) quoted = !quoted
    else if (sign === '""') line[last] += quoted ? '"' : ''
    else if (sign === '\t' && !quoted) line.push('')
    else if (sign === '\n' && !quoted) lines.push([''])
    else line[last] += sign === '\n' || sign === '\t' ? ' ' : sign
  }
  return lines.map((line) => line.map((cell) => cell.trim()))
}
