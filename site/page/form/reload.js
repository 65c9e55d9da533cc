/**
 * The form over a reload, under one key: a line of what was typed, a line of the
 * unit controls and a line of the stored job it was opened from, each in the text
 * form of a set of fields. A tab has its own; a new tab begins with what was typed
 * last in any.
 */
import { stored } from '../device/stored.js'
import { fieldsOf } from './text.js'

/** @typedef {import('./form.js').Entries} Entries */

const form = stored('saltbite', entriesOf, { ofTab: true })

/**
 * @param {Entries} entries
 * @returns {boolean} whether they would be there after a reload
 */
export function saveForm({ typed, units, openedFrom }) {
  const from = openedFrom && { ...openedFrom, id: String(openedFrom.id), saved: String(openedFrom.saved) }
  return form.write([typed, units, from].map((fields) => new URLSearchParams(fields)).join('\n'))
}

export const loadForm = form.read

/**
 * What a saved text says; it may be damaged, or another program's.
 *
 * @param {string} text
 * @returns {Entries}
 */
function entriesOf(text) {
  const [typed, units = {}, from = {}] = text.split('\n').map(fieldsOf)
  const openedFrom = { id: Number(from.id), name: from.name ?? '', saved: Number(from.saved) }
  return { typed, units, openedFrom: Number.isFinite(openedFrom.id + openedFrom.saved) ? openedFrom : undefined }
}
