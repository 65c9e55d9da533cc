/**
 * Fields that whoever frames the page has set: they are read like any other and
 * can't be changed, nor are they cleared.
 */
import { make } from '../page/element.js'
import { aside } from '../page/seek.js'
import { namesIn } from './message.js'

/**
 * @typedef {import('../page/sheet.js').Row} Row
 * @typedef {import('../page/sheet.js').Sheet} Sheet
 */

/**
 * Locks the fields that a list names, in upper or lower case, and no others.
 *
 * @param {Sheet} sheet with the fields as they are to stay
 * @param {string} list parted by blanks or commas; "all" names every field
 */
export function lock(sheet, list) {
  const wanted = namesIn(list)
  const locked = [...sheet.rows.keys(), 'find', 'units'].filter((name) => wanted.has('all') || wanted.has(name.toLowerCase()))
  const sought = locked.includes('find') ? aside[sheet.sought.value] ?? [] : [] // what is found can't be typed
  for (const name of [...locked, ...sought]) sheet.locked.add(name)
  for (const row of sheet.rows.values()) show(row, sheet)
  for (const choice of /** @type {Iterable<HTMLInputElement>} */ (sheet.switch)) {
    choice.disabled = sheet.locked.has('units') && !choice.checked
  }
}

/**
 * A locked control can be read and reached, not changed; the touches that would
 * change it are gone.
 *
 * @param {Row} row
 * @param {Sheet} sheet
 */
function show({ name, element, input, unit, fill }, sheet) {
  const locked = sheet.locked.has(name)
  element.classList.toggle('locked', locked)
  if (input instanceof HTMLInputElement) input.readOnly = locked
  else onlyChosen(input, locked)
  if (unit) onlyChosen(unit, locked)
  if (fill instanceof HTMLButtonElement) fill.disabled = locked
  const seek = element.querySelector('.seek')
  if (seek instanceof HTMLButtonElement) seek.disabled = sheet.locked.has('find') || blanksLocked(name, sheet)
  element.querySelector('.set')?.remove()
  if (!locked) return
  const word = make('span', sheet.blank(name) ? 'Can’t be typed here. ' : 'Set by this page. ')
  word.className = 'set'
  element.querySelector('.says')?.prepend(word)
}

/**
 * @param {HTMLSelectElement} select
 * @param {boolean} locked
 */
function onlyChosen(select, locked) {
  for (const option of select.options) option.disabled = locked && !option.selected
}

/**
 * Whether seeking a field would blank one that is locked.
 *
 * @param {string} name
 * @param {Sheet} sheet
 */
function blanksLocked(name, sheet) {
  return aside[name]?.some((other) => sheet.locked.has(other) && !sheet.blank(other)) ?? false
}
