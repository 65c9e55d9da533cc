/**
 * Fields that the page around the frame has set: they are read like any other,
 * and can't be changed or cleared.
 */
import { make } from '../page/element.js'
import { blankWhile } from '../page/form/seek.js'
import { namesIn } from './message.js'

/**
 * @typedef {import('../page/form/form.js').Row} Row
 * @typedef {import('../page/form/form.js').Form} Form
 */

/**
 * Locks the fields that a list names, in upper or lower case, and no others.
 *
 * @param {Form} form with the fields as they are to stay
 * @param {string} list parted by blanks or commas; "all" names every field
 */
export function lock(form, list) {
  const wanted = namesIn(list)
  const locked = [...form.rows.keys(), 'find', 'units'].filter((name) => wanted.has('all') || wanted.has(name.toLowerCase()))
  const sought = locked.includes('find') ? blankWhile[form.sought.value] ?? [] : [] // what is found can't be typed
  for (const name of [...locked, ...sought]) form.locked.add(name)
  for (const row of form.rows.values()) show(row, form)
  for (const choice of /** @type {Iterable<HTMLInputElement>} */ (form.switch)) {
    choice.disabled = form.locked.has('units') && !choice.checked
  }
}

/**
 * A locked control can be read and reached, not changed; the touches that would
 * change it are gone.
 *
 * @param {Row} row
 * @param {Form} form
 */
function show({ name, element, input, unit, fill }, form) {
  const locked = form.locked.has(name)
  element.classList.toggle('locked', locked)
  if (input instanceof HTMLInputElement) input.readOnly = locked
  else onlyChosen(input, locked)
  if (unit) onlyChosen(unit, locked)
  if (fill instanceof HTMLButtonElement) fill.disabled = locked
  const seek = element.querySelector('.seek')
  if (seek instanceof HTMLButtonElement) seek.disabled = form.locked.has('find') || blanksLocked(name, form)
  element.querySelector('.set')?.remove()
  if (!locked) return
  const word = make('span', form.blank(name) ? 'Can’t be typed here. ' : 'Set by this page. ')
  word.className = 'set'
  element.querySelector('.says')?.prepend(word)
}

/**
 * @param {HTMLSelectElement} select
 * @param {boolean} locked
 */
export function onlyChosen(select, locked) {
  for (const option of select.options) option.disabled = locked && !option.selected
}

/**
 * Whether seeking a field would blank one that is locked.
 *
 * @param {string} name
 * @param {Form} form
 */
function blanksLocked(name, form) {
  return blankWhile[name]?.some((other) => form.locked.has(other) && !form.blank(other)) ?? false
}
