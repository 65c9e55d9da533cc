/**
 * What the reply says at each row of the sheet: the value that was found, what
 * is wrong or needs care, what was understood. Its space is kept, so that no
 * control moves.
 *
 * In a blank control the found value stands as its placeholder: the control
 * stays blank, and typing into it just types.
 */
import { mark, put } from './element.js'
import { labelOf } from './figures.js'
import { shown } from './sheet.js'

/**
 * @typedef {import('../engine/client.js').Reply} Reply
 * @typedef {import('./sheet.js').Part} Part
 * @typedef {import('./sheet.js').Row} Row
 * @typedef {import('./sheet.js').Sheet} Sheet
 * @typedef {{kind: string, text: string}} Word
 */

/**
 * What a row shows of a reply.
 *
 * @typedef {object} View
 * @property {boolean} found
 * @property {boolean} needed
 * @property {boolean} answered
 * @property {boolean} first whether it is where an empty sheet begins
 * @property {string} instead what stands in the control while it is blank
 * @property {string} kind of what is said
 * @property {string} text what is said
 * @property {string} fill what one touch fills in
 * @property {string} offer the words of that touch
 */

/** What each row shows: most rows stay as they are at a key, and are let be. @type {WeakMap<Row, View>} */
const views = new WeakMap()

/**
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
export function showRows(sheet, reply) {
  let said = false
  for (const row of sheet.rows.values()) {
    const view = viewOf(row, sheet, reply)
    const last = views.get(row)
    if (alike(last, view)) continue
    showRow(row, view)
    views.set(row, view)
    said ||= last?.text !== view.text
  }
  for (const part of sheet.parts) showGist(part, sheet, reply)
  // After the frame in which the answer is painted, which does not wait for it.
  if (said) requestAnimationFrame(() => setTimeout(markCropped, 0, sheet))
}

/**
 * @param {View | undefined} a
 * @param {View} b
 */
function alike(a, b) {
  return a !== undefined && Object.entries(b).every(([name, value]) => a[/** @type {keyof View} */ (name)] === value)
}

/**
 * What runs over its row's space is cut, and marked so: it stands there in full
 * while the row has the focus.
 *
 * @param {Sheet} sheet
 */
export function markCropped(sheet) {
  const rows = [...sheet.rows.values()].map(({ element, word }) => ({
    element,
    cropped: element.dataset.word !== '' && word !== null
      && word.getBoundingClientRect().bottom > element.getBoundingClientRect().bottom + 1,
  }))
  for (const { element, cropped } of rows) element.classList.toggle('cropped', cropped)
}

/**
 * @param {Row} row
 * @param {Sheet} sheet
 * @param {Reply} reply
 * @returns {View}
 */
function viewOf({ name, input, fill }, sheet, reply) {
  const { found, answers, errors } = reply
  const needed = errors.some((error) => error.field === name && error.code === 'missing')
  const first = name === 'metal' && sheet.empty
  const usual = input instanceof HTMLInputElement ? input.dataset.default ?? '' : ''
  return {
    found: sheet.blank(name) && found.includes(name),
    needed,
    answered: name in answers,
    first,
    instead: answers[name]?.text ?? (first ? 'begin here' : needed && !fill ? 'needed' : usual),
    ...wordAt(name, sheet, reply) ?? { kind: '', text: '' },
    ...fill ? filling(name, fill, sheet, reply) : { fill: '', offer: '' },
  }
}

/**
 * @param {Row} row
 * @param {View} view
 */
function showRow({ input, element, seek, word, fill }, view) {
  for (const state of /** @type {const} */ (['found', 'needed', 'answered', 'first'])) element.classList.toggle(state, view[state])
  if (input instanceof HTMLInputElement) mark(input, 'placeholder', view.instead)
  if (view.kind === 'error') mark(input, 'aria-invalid', 'true')
  else input.removeAttribute('aria-invalid')
  put(seek, view.found ? 'found' : 'find')
  mark(element, 'data-word', view.kind)
  put(word, view.text)
  if (!fill) return
  mark(fill, 'data-text', view.fill)
  put(fill.querySelector('.word'), view.offer)
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
function wordAt(name, sheet, { answers, errors, cautions, rows }) {
  const error = errors.find((error) => error.field === name && error.code !== 'missing')
  if (error) return { kind: 'error', text: error.text }
  for (const [level, word] of [['stop', 'Stop. '], ['warn', 'Take care. ']]) {
    const caution = cautions.find((caution) => caution.field === name && caution.level === level)
    if (caution) return { kind: level, text: word + (caution.card || caution.text) }
  }
  const suggested = name === 'density' && suggestion(sheet, answers)
  if (suggested) return { kind: 'suggested', text: suggested.text }
  const [metal] = rows.metal ?? []
  if (name === 'metal' && metal && !sheet.blank(name)) {
    const rivals = (rows.metal?.length ?? 0) > 1 ? ' · other readings, see the note' : ''
    const parts = metal.composition.replace(/ (?=\D)/g, '\u00a0') // a share stays by its element
    return { kind: 'understood', text: [metal.name, parts].filter(Boolean).join(' · ') + rivals }
  }
  const note = cautions.find((caution) => caution.field === name && caution.level === 'note')
  return note && { kind: 'note', text: note.card || note.text }
}

/**
 * What to begin with for someone who has no current in mind.
 *
 * @param {Sheet} sheet
 * @param {Reply['answers']} answers
 * @returns {{density: string, text: string, sentence: string} | undefined} the sentence is blank while the time is not known
 */
export function suggestion(sheet, { density, suggestedDensity, suggestedCurrent, suggestedTime }) {
  if (density || !suggestedDensity || !sheet.blank('density') || !sheet.blank('current')) return undefined
  const start = suggestedDensity.text
  const rest = [suggestedCurrent, suggestedTime].filter(Boolean).map(({ text }) => text).join(' for ')
  const at = suggestedCurrent ? ` at ${suggestedCurrent.text}` : ''
  return {
    density: start,
    text: `suggested: ${start}${rest && `, ${rest}`}`,
    sentence: suggestedTime ? `At ${start}, to start with, it takes ${suggestedTime.text}${at}.` : '',
  }
}

/**
 * One touch fills in what is suggested, or else what is usual. It writes the
 * number, in the unit that the field's first unit is.
 *
 * @param {string} name
 * @param {HTMLElement} button
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function filling(name, { dataset: { by = '', usual = '' } }, sheet, { answers }) {
  const number = answers[by]?.text.split(' ')[0] ?? usual
  return { fill: number, offer: name === 'density' && suggestion(sheet, answers) ? 'use these' : `use ${number}` }
}

/**
 * What a part lacks stands at its foot when something is typed in it and what it
 * was typed for can't be answered. There is room for one line.
 *
 * @param {Part} part
 * @param {Sheet} sheet
 * @param {Reply} reply
 * @returns {string[]} what it lacks
 */
function showLacks({ lacks }, sheet, { answers, rows }) {
  const lacking = lacks.find(({ typed, answers: wanted }) => typed.some((name) => sheet.typedInto(name))
    && !wanted.some((name) => name in answers || (name === 'bites' && rows.bites?.length)))
  for (const lack of lacks) {
    if (lack.element.hidden !== (lack !== lacking)) lack.element.hidden = lack !== lacking
  }
  return lacking ? [lacking.element.textContent ?? ''] : []
}

/**
 * The folded line of a part says what came out, or what is lacking, then what
 * was typed in it, and whether something in it is wrong or needs care.
 *
 * @param {Part} part
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function showGist(part, sheet, reply) {
  const { element, gist, rows, shows } = part
  const { answers } = reply
  const typed = sheet.filled(part)
  const came = shows.filter((name) => name in answers && !sheet.typedInto(name))
  const said = [
    ...came.map((name) => `${labelOf(name)} ${answers[name].text}`),
    ...showLacks(part, sheet, reply),
    ...typed.map((row) => (element.dataset.part ? '' : `${row.label} `) + shown(row)),
  ]
  put(gist, said.join(' · ') || (gist.dataset.hint ?? ''))
  gist.classList.toggle('given', typed.length > 0)
  element.classList.toggle('used', typed.length > 0 || rows.some((row) => views.get(row)?.found))
  const gravest = ['error', 'stop', 'warn'].find((kind) => rows.some((row) => views.get(row)?.kind === kind))
  mark(element, 'data-level', gravest ?? '')
}
