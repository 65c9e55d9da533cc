/**
 * Shows the reply at each row of the form: the value that was found, errors and
 * cautions, what was understood or follows from it, and below it what one touch
 * fills in. The space for it is reserved, so that no control moves.
 *
 * In a blank control the found value is the placeholder: the control stays blank
 * and can be typed into.
 */
import { make, mark, put } from '../element.js'
import { about } from '../answer/about.js'
import { labelOf } from '../answer/figures.js'
import { lackOf } from './steps.js'
import { shown } from './units.js'

/**
 * @typedef {import('../../engine/client.js').Reply} Reply
 * @typedef {import('./form.js').Part} Part
 * @typedef {import('./form.js').Row} Row
 * @typedef {import('./form.js').Form} Form
 * @typedef {import('../../engine/client.js').Mistake} Mistake
 *
 * @typedef {object} Word
 * @property {string} kind
 * @property {string} text
 * @property {string} [readings] what the text may mean, each in a line
 */

/**
 * What a row shows of a reply.
 *
 * @typedef {object} View
 * @property {boolean} found
 * @property {boolean} needed
 * @property {boolean} answered
 * @property {boolean} first whether it is the first row to fill in on an empty form
 * @property {string} instead the placeholder of the control
 * @property {string} kind of what is said
 * @property {string} text what is said
 * @property {string} fill what one touch fills in
 * @property {string} offer the words of that touch
 * @property {string} readings what the text may mean, each in a line
 */

/** What each row shows. Most rows do not change at a keystroke and are left alone. @type {WeakMap<Row, View>} */
const views = new WeakMap()

/**
 * @param {Form} form
 * @param {Reply} reply
 */
export function showRows(form, reply) {
  for (const row of form.rows.values()) {
    const view = viewOf(row, form, reply)
    if (alike(views.get(row), view)) continue
    showRow(row, view)
    views.set(row, view)
  }
  for (const part of form.parts) showGist(part, form, reply)
}

/**
 * @param {View | undefined} a
 * @param {View} b
 */
function alike(a, b) {
  return a !== undefined && Object.entries(b).every(([name, value]) => a[/** @type {keyof View} */ (name)] === value)
}

/**
 * @param {Row} row
 * @param {Form} form
 * @param {Reply} reply
 * @returns {View}
 */
function viewOf({ name, input, unit, fill, makes }, form, reply) {
  const { found, answers } = reply
  const needed = about(reply, name).missing
  const first = name === 'metal' && form.empty
  const usual = input instanceof HTMLInputElement ? input.dataset.default ?? '' : ''
  return {
    found: form.blank(name) && found.includes(name),
    needed,
    answered: name in answers,
    first,
    instead: answers[name]?.text ?? (first ? 'begin here' : needed ? 'needed' : usual),
    readings: '',
    ...wordAt(name, makes, form, reply) ?? { kind: '', text: '' },
    ...fill ? filling(name, fill, unit?.options[0].label ?? '', form, reply) : { fill: '', offer: '' },
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
  word?.replaceChildren(...view.kind === 'error' ? brief(view.text) : [view.text])
  showReadings(element, view.readings)
  if (!fill) return
  mark(fill, 'data-text', view.fill)
  put(fill.querySelector('.word'), view.offer)
}

/** A mistake as the engine words it: what was typed, what is wrong, what is wanted, an example. */
const mistake = /^(“.*?” (?:can't be read: )?)?(.*)(\. Type [^.]*), such as (.*)\.$/su

/**
 * A mistake at its row, where what was typed and the field's name stand already: a
 * screen reader hears all of it.
 *
 * @param {string} text
 * @returns {(Node | string)[]}
 */
function brief(text) {
  const [, typed = '', wrong, wanted, example] = mistake.exec(text) ?? []
  if (!wrong) return [text]
  return [unseen(typed), capital(wrong), unseen(wanted), `. Try ${example}.`]
}

/** @param {string} text */
const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1)

/** @param {string} text */
function unseen(text) {
  const span = make('span', text)
  span.className = 'unseen'
  return span
}

/**
 * What a text may mean: a touch says which.
 *
 * @param {HTMLElement} element
 * @param {string} readings
 */
function showReadings(element, readings) {
  element.classList.toggle('asking', readings !== '')
  const there = element.querySelector('.readings')
  if (!readings) return there?.remove()
  const place = there ?? make('div')
  place.className = 'readings'
  mark(place, 'role', 'group')
  mark(place, 'aria-label', 'Which is meant?')
  place.replaceChildren(...readings.split('\n').map((reading) => {
    const button = make('button', reading)
    mark(button, 'type', 'button')
    mark(button, 'data-reading', reading)
    return button
  }))
  if (!there) element.append(place)
}

/**
 * The most serious message at a row. A caution is shown in its short form; the whole
 * text is in the answer's pane.
 *
 * @param {string} name
 * @param {string[]} makes
 * @param {Form} form
 * @param {Reply} reply
 * @returns {Word | undefined}
 */
function wordAt(name, makes, form, reply) {
  const { answers, rows } = reply
  const { mistake, cautions: { stop, warn, note } } = about(reply, name)
  const lack = mistake && name === 'bites' ? lackOf(form.typed().bites ?? '') : ''
  if (lack) return { kind: 'asks', text: lack }
  if (mistake) return mistakeAt(mistake)
  for (const [level, word, caution] of /** @type {const} */ ([['stop', 'Stop. ', stop], ['warn', 'Take care. ', warn]])) {
    if (caution) return { kind: level, text: word + (caution.card || caution.text) }
  }
  if (name === 'after' && form.typedInto(name) && !form.typedInto('elapsed') && !form.typedInto('readings')) {
    return { kind: 'asks', text: 'How long has the current been on? Type it under “On for”.' }
  }
  const [metal] = rows.metal ?? []
  if (name === 'metal' && metal && !form.blank(name)) {
    const rivals = (rows.metal?.length ?? 0) > 1 ? ' · or another: see the note' : ''
    const parts = metal.composition.replace(/ (?=\D)/g, '\u00a0') // a non-breaking space between element and share
    return { kind: 'understood', text: [metal.name, parts].filter(Boolean).join(' · ') + rivals }
  }
  const made = form.typedInto(name) ? makes.filter((made) => made in answers && !form.typedInto(made)).slice(0, 2) : []
  if (made.length > 0) return { kind: 'made', text: made.map((made) => `${labelOf(made)} ${answers[made].text}`).join(' · ') }
  return note && { kind: 'note', text: note.card || note.text }
}

/**
 * A contradiction is told once, in the place of the sentence; its rows say that they
 * are part of it.
 *
 * @param {Mistake} error
 * @returns {Word}
 */
function mistakeAt({ code, text, readings = [] }) {
  if (code === 'contradiction') return { kind: 'error', text: 'Doesn’t fit the rest. Clear one of them.' }
  return { kind: 'error', text, readings: readings.join('\n') }
}

/**
 * A button fills in the suggestion, or else the usual value. It writes the
 * number, in the unit that the field's first unit is.
 *
 * @param {string} name
 * @param {HTMLElement} button
 * @param {string} unit the field's first
 * @param {Form} form
 * @param {Reply} reply
 */
function filling(name, { dataset: { by = '', usual = '' } }, unit, form, { answers }) {
  if (name === 'bites' && !(form.typedInto(name) && isOpen(form, answers))) return { fill: '', offer: '' }
  const text = answers[by]?.text ?? (usual && `${usual} ${unit}`)
  const rest = name === 'density' && isOpen(form, answers) ? [answers.suggestedCurrent, answers.suggestedTime] : []
  const offer = [text, ...rest.filter(Boolean).map(({ text }) => text)].join(' · ')
  return { fill: text.split(' ')[0], offer: text && `Use ${offer}` }
}

/**
 * Whether no current was chosen yet, and one can be suggested.
 *
 * @param {Form} form
 * @param {Reply['answers']} answers
 */
const isOpen = (form, { density, suggestedDensity }) => !density && suggestedDensity && form.blank('density') && form.blank('current')

/**
 * The foot of a part says what is missing when something was typed into the part
 * and its answers can't be calculated. What the verdict on the supply assumes is not
 * missing. There is room for one line.
 *
 * @param {Part} part
 * @param {Form} form
 * @param {Reply} reply
 * @returns {string[]} what is missing
 */
function showLacks({ lacks, rows: of }, form, { answers, rows, supply }) {
  const wrong = of.some((row) => views.get(row)?.kind === 'error') // which is said there
  const lacking = wrong ? undefined : lacks.find(({ typed, answers: wanted }) => typed.some((name) => form.typedInto(name))
    && !wanted.some((name) => name in answers || (name === 'bites' && rows.bites?.length)))
  const fields = lacking?.needs.map((any) => any.split('|')).filter((any) => !any.some((name) => name in answers || form.typedInto(name) || supply?.assumed?.includes(name)))
  const text = fields?.length ? `Still blank: ${fields.map((any) => any.map((name) => form.rows.get(name)?.label).join(' or ')).join(' · ')}` : ''
  for (const { element } of lacks) {
    const own = element === lacking?.element ? text : ''
    put(element, own)
    if (element.hidden === (own !== '')) element.hidden = own === ''
  }
  return text ? [text] : []
}

/**
 * The summary line of a folded part shows its answers, or what is missing, then
 * what was typed into it, and whether it holds an error or a caution.
 *
 * @param {Part} part
 * @param {Form} form
 * @param {Reply} reply
 */
function showGist(part, form, reply) {
  const { element, gist, rows, shows } = part
  const { answers } = reply
  const typed = form.filled(part)
  const came = shows.filter((name) => name in answers && !form.typedInto(name))
  const said = [
    ...came.map((name) => `${labelOf(name)} ${answers[name].text}`),
    ...showLacks(part, form, reply),
    ...typed.map((row) => (element.dataset.part ? '' : `${row.label} `) + shown(row)),
  ]
  put(gist, said.join(' · ') || (gist.dataset.hint ?? ''))
  gist.classList.toggle('given', typed.length > 0)
  element.classList.toggle('used', typed.length > 0 || rows.some((row) => views.get(row)?.found))
  const gravest = ['error', 'stop', 'warn'].find((kind) => rows.some((row) => views.get(row)?.kind === kind))
  mark(element, 'data-level', gravest ?? '')
}
