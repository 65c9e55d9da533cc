/**
 * A class in the one text form of many sets of fields: what stands beside the rows,
 * then a block for each row, under its name. A link, and what is kept over a reload,
 * hold the same text.
 */
import { fields as vocabulary } from 'go:vocabulary'
import { rowsText } from '../../engine/fields.js'
import { quote, takeFields } from '../form/text.js'

/**
 * @typedef {Record<string, string>} Fields
 * @typedef {{name: string, fields: Fields, free?: string[]}} Named free: the locked columns whose cells were left to the row's own person
 * @typedef {{fields: Fields, rows: Named[], lock?: string[]}} Class lock: fields and columns that a link sets for good
 */

/** How many rows are read. */
const mostRows = 1000

/** @param {Class} taught */
export function classText({ fields, rows, lock = [] }) {
  const own = rows.map(({ name, fields, free = [] }) => ({ name, ...fields, free: lock.filter((column) => free.includes(column)).join(' ') }))
  return rowsText(own, { ...fields, lock: lock.join(' ') })
}

/** @param {string} name */
const objection = (name) => (name === 'lock' || name === 'free' || vocabulary.includes(name) ? '' : `“${quote(name)}” is no field here`)

/**
 * Reads such a text; it may be damaged, or anybody's.
 *
 * @param {string} text
 * @returns {Class & {lock: string[], faults: string[]}}
 */
export function readClass(text) {
  /** @type {Named[]} */
  const blocks = []
  /** @type {string[]} */
  const faults = []
  for (const line of text.split(/[\r\n]+/).map((one) => one.trim())) {
    if (line[0] === '[') blocks.push({ name: line.replace(/^\[|\]$/g, '').trim(), fields: {} })
    else if (line && line[0] !== '#' && blocks.length > 0) faults.push(...takeFields(line, objection, blocks[blocks.length - 1].fields))
  }
  const [beside, ...rows] = blocks
  const { lock = '', ...fields } = beside?.fields ?? {}
  for (const row of rows) {
    row.free = listed(row.fields.free)
    delete row.fields.free
    delete row.fields.lock
  }
  return { fields, lock: listed(lock), rows: rows.slice(0, mostRows), faults }
}

/** The names in a list of them. @param {string} [text] */
const listed = (text = '') => text.split(/[\s,]+/).filter(Boolean)
