/**
 * What the reply says at each row of the sheet: the value that was found, what
 * is wrong or needs care, what was understood. Its space is kept, so that no
 * control moves.
 *
 * In a blank control the found value stands as its placeholder: the control
 * stays blank, and typing into it just types.
 */
import { put } from './element.js'
import { labelOf } from './figures.js'
import { shown } from './sheet.js'

/**
 * @typedef {import('../engine/client.js').Reply} Reply
 * @typedef {import('./sheet.js').Row} Row
 * @typedef {import('./sheet.js').Sheet} Sheet
 * @typedef {{kind: string, text: string}} Word
 */

/**
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
export function showRows(sheet, reply) {
  for (const row of sheet.rows.values()) {
    showFound(row, sheet, reply)
    showWord(row, sheet, reply)
  }
  showGists(sheet, reply)
}

/**
 * @param {Row} row
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function showFound({ name, input, element }, sheet, { found, answers, errors }) {
  const isFound = sheet.blank(name) && found.includes(name)
  const missing = errors.some((error) => error.field === name && error.code === 'missing')
  element.classList.toggle('found', isFound)
  element.classList.toggle('needed', missing)
  element.classList.toggle('answered', name in answers)
  input.placeholder = answers[name]?.text ?? (missing ? 'needed' : input.dataset.default ?? '')
  put(element.querySelector('.seek .word'), isFound ? 'found' : 'find')
}

/**
 * @param {Row} row
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function showWord({ name, input, element }, sheet, reply) {
  const word = wordAt(name, sheet, reply)
  if (word?.kind === 'error') input.setAttribute('aria-invalid', 'true')
  else input.removeAttribute('aria-invalid')
  element.dataset.word = word?.kind ?? ''
  put(element.querySelector('.says .word'), word?.text ?? '')
}

/**
 * The one thing to be said at a row, the gravest first. Of a caution there is
 * room for its short form; its whole text stands in the answer's pane.
 *
 * @param {string} name
 * @param {Sheet} sheet
 * @param {Reply} reply
 * @returns {Word | undefined}
 */
function wordAt(name, sheet, { errors, cautions, rows }) {
  const error = errors.find((error) => error.field === name && error.code !== 'missing')
  if (error) return { kind: 'error', text: error.text }
  for (const level of ['stop', 'warn', 'note']) {
    const caution = cautions.find((caution) => caution.field === name && caution.level === level)
    if (caution) return { kind: level, text: caution.card || caution.text }
  }
  const [metal] = rows.metal ?? []
  if (name === 'metal' && metal && !sheet.blank(name)) {
    return { kind: 'understood', text: [metal.name, metal.composition].filter(Boolean).join(' · ') }
  }
  return undefined
}

/**
 * The folded line of a part says what was typed in it, then what came out.
 *
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function showGists(sheet, { answers }) {
  for (const part of sheet.form.querySelectorAll('details')) {
    const gist = /** @type {HTMLElement | null} */ (part.querySelector('summary .gist'))
    if (!gist) continue
    const typed = [...sheet.rows.values()].filter(({ name, element }) => part.contains(element) && !sheet.blank(name))
    const came = (part.dataset.shows ?? '').split(' ').filter((name) => name in answers && !typed.some((row) => row.name === name))
    const said = [
      ...typed.map((row) => (part.matches('.more') ? `${row.label} ` : '') + shown(row)),
      ...came.map((name) => `${labelOf(name)} ${answers[name].text}`),
    ]
    put(gist, said.join(' · ') || (gist.dataset.hint ?? ''))
    gist.classList.toggle('given', typed.length > 0)
  }
}
