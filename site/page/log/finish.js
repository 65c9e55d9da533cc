/**
 * Finishing a run: what the form holds of it, what is still to be typed, and the record
 * that goes into the log.
 */
import { textOf } from '../../engine/fields.js'
import { fieldsText } from '../form/text.js'
import { piece } from './leaf.js'
import { newRun } from './store.js'
import { fail } from './why.js'

/** @typedef {import('../page.js').Desk} Desk */

/** What is asked of a finished run, with its label and an example. */
const asked = [
  ['elapsed', 'On for', 'such as 2 h 30'],
  ['before', 'Weight before', 'in g, one piece'],
  ['after', 'Weight now', 'in g, rinsed and dry'],
  ['resolution', 'Balance reads to', '0.01 g if blank'],
  ['depthFound', 'Depth measured', 'in mm, instead of weights'],
  ['lineFound', 'Line measured', 'in mm, if you like'],
  ['spaceFound', 'Gap measured', 'in mm, if you like'],
  ['note', 'Note', 'if you like'],
]

/** What a run does not take along: what was asked, and what the log itself fills in. */
const leftOut = ['ask', 'find', 'efficiency', 'efficiencyLow', 'efficiencyHigh', 'start', 'paused', 'seen']

/** The form of what is asked. */
export function finishForm() {
  const fields = asked.map(([name, label, hint]) => piece('p', {},
    piece('label', { for: `log-${name}` }, label),
    piece('input', { type: 'text', id: `log-${name}`, name, placeholder: hint, maxlength: '500', autocomplete: 'off', autocapitalize: name === 'note' ? 'sentences' : 'off', spellcheck: String(name === 'note'), enterkeyhint: 'next' })))
  return /** @type {HTMLFormElement} */ (piece('form', { class: 'keeping finishing', autocomplete: 'off', novalidate: '' },
    piece('h3', {}, 'Finish this run'), piece('div', { class: 'asked' }, ...fields),
    piece('div', { class: 'acts' }, piece('button', { class: 'main' }, 'Put it in the log'))))
}

/**
 * Fills in what the page knows of the run, where nothing was typed.
 *
 * @param {HTMLFormElement} place
 * @param {Desk} desk
 * @param {string} [elapsed] what the clock counted
 */
export function propose(place, desk, elapsed) {
  const fields = desk.form.fields()
  const proposed = { ...fields, elapsed: elapsed ?? fields.elapsed ?? (fields.readings ? '' : fields.time ?? desk.reply()?.answers.time?.text) }
  for (const input of inputsOf(place)) {
    const text = /** @type {Record<string, string | undefined>} */ (proposed)[input.name]
    if (text && (input.value === '' || input.dataset.proposed === input.value)) input.value = input.dataset.proposed = text
  }
}

/** Blanks what belongs to one run alone. @param {HTMLFormElement} place */
export function blank(place) {
  for (const input of inputsOf(place)) if (input.name !== 'resolution') input.value = ''
}

/** @param {HTMLFormElement} place */
const inputsOf = (place) => /** @type {NodeListOf<HTMLInputElement>} */ (place.querySelectorAll('input'))

/**
 * The record of the run. What the answer found of the job, such as its current, is
 * written into it as if it had been typed.
 *
 * @param {HTMLFormElement} place
 * @param {Desk} desk
 * @returns {Promise<import('./store.js').Run>}
 */
export async function runOn(place, desk) {
  const { note, ...measured } = Object.fromEntries([...inputsOf(place)].map(({ name, value }) => [name, value.trim()]))
  const fields = { ...desk.form.fields(), ...measured }
  const reply = await desk.bench()?.answer(textOf(desk.form.fields()))
  for (const name of reply?.found ?? []) {
    if (name === 'current' || name === 'area') fields[name] ||= reply?.answers[name]?.text ?? ''
  }
  for (const name of leftOut) delete fields[name]
  if (!fields.metal || !(fields.area || fields.open)) fail('NoMetal')
  if (!fields.elapsed && !fields.readings) fail('NoTime')
  if (!(fields.before && fields.after) && !fields.depthFound) fail('NoResult')
  return { run: newRun(), ended: timeText(new Date()), note, fields: fieldsText(fields) }
}

/** A moment as the log holds it, in local time. @param {Date} date */
function timeText(date) {
  const two = (/** @type {number} */ number) => String(number).padStart(2, '0')
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())} ${two(date.getHours())}:${two(date.getMinutes())}`
}
