/**
 * Stopping out, a row for each step: its depth, the area that is exposed, and the
 * time, the current and the depth then reached that were found. Together they are one field, in its own text
 * form, "0.05 12; 0.10 9". A text from elsewhere that is no such list stands as it is.
 */
import { frameIn, mark, put } from '../element.js'
import { withUnit } from './units.js'

/** Stands for a cell that is blank beside one that is not. */
const blank = '?'

/** How many steps there are at first. */
const least = 2

/** @typedef {[string, string]} Step the texts of a depth and of an area */

/** @param {import('../page.js').Desk} desk */
export function setUpSteps(desk) {
  const row = /** @type {import('./form.js').Row} */ (desk.form.rows.get('bites'))
  const field = row.input
  const table = /** @type {HTMLElement} */ (row.element.querySelector('.steps'))
  const list = /** @type {HTMLElement} */ (table.querySelector('ol'))
  const units = [...table.querySelectorAll('select')]
  /** The text that the cells were last written from, or wrote. */
  let known = ''

  /** What stands in the cells of each step. @returns {Step[]} */
  const cells = () => [...list.children].map((item) => {
    const [depth, area] = item.querySelectorAll('input')
    return [depth.value.trim(), area.value.trim()]
  })

  /** Writes the cells into the field. */
  function write() {
    field.value = known = textOf(cells(), units.map(({ value }) => value))
  }

  /** Writes the field into the cells, if it was written elsewhere. */
  function read() {
    if (field.value === known) return
    known = field.value
    const steps = stepsIn(known)
    row.element.classList.toggle('as-text', steps === undefined)
    if (!steps) return
    for (const [place, unit] of units.entries()) unit.value = unitOf(steps, place, unit) ?? firstUnit(unit)
    while (list.children.length > Math.max(least, steps.length)) list.lastElementChild?.remove()
    while (list.children.length < Math.max(least, steps.length)) add()
    for (const [at, item] of [...list.children].entries()) {
      for (const [place, cell] of item.querySelectorAll('input').entries()) {
        const text = steps[at]?.[place] ?? ''
        cell.value = text.endsWith(` ${units[place].value}`) ? text.slice(0, -units[place].value.length - 1) : text
      }
    }
  }

  /** @param {HTMLSelectElement} unit */
  const firstUnit = (unit) => (desk.form.switch.value === 'us' && unit.dataset.us) || unit.options[0].value

  function add() {
    const item = frameIn(table)
    list.append(item)
    number()
    return item
  }

  /** Names what is in each step by its number. */
  function number() {
    for (const [at, item] of [...list.children].entries()) {
      put(item.querySelector('.number'), String(at + 1))
      for (const [place, cell] of item.querySelectorAll('input').entries()) {
        cell.id = `bites-${['depth', 'area'][place]}-${at + 1}`
        mark(cell, 'aria-label', `${['Depth', 'Exposed area'][place]} of step ${at + 1}`)
      }
      mark(/** @type {Element} */ (item.querySelector('button')), 'aria-label', `Remove step ${at + 1}`)
    }
  }

  /** @param {import('../../engine/client.js').Reply} reply */
  function show({ rows }) {
    read()
    const found = [...rows.bites ?? []]
    for (const [at, item] of [...list.children].entries()) {
      const one = cells()[at].some(Boolean) ? found.shift() : undefined
      put(item.querySelector('.time'), one?.minutes.text ?? '')
      put(item.querySelector('.amperes'), one?.amperes.text ?? '')
      put(item.querySelector('.reached'), one ? `to ${one.reached.text}` : '')
      const locked = desk.form.locked.has('bites')
      for (const cell of item.querySelectorAll('input')) cell.readOnly = locked
    }
    for (const button of table.querySelectorAll('button')) button.disabled = desk.form.locked.has('bites')
  }

  table.addEventListener('input', write) // before the form asks again
  table.addEventListener('click', ({ target }) => {
    const button = /** @type {Element} */ (target).closest('button')
    if (button?.matches('.add')) add().querySelector('input')?.focus()
    if (button?.matches('.remove')) {
      const item = /** @type {Element} */ (button.closest('li'))
      const next = item.nextElementSibling ?? item.previousElementSibling
      desk.undoably(() => {
        item.remove()
        while (list.children.length < least) add()
        number()
        write()
      })
      next?.querySelector('input')?.focus()
    }
  })

  while (list.children.length < least) add()
  known = ''
  desk.onReply(show)
}

/**
 * @param {Step[]} steps
 * @param {string[]} units
 */
function textOf(steps, units) {
  const texts = steps.filter((step) => step.some(Boolean)).map((step) => step.map((text, place) => {
    const bare = ['mm', 'cm2'].includes(units[place])
    return withUnit(text || blank, bare || !text ? '' : units[place])
  }).join(' '))
  return texts.join('; ')
}

/** A number as it stands in a list, or what stands for none. */
const number = /^[\d.,/?]+$/

/**
 * The steps in a text; undefined if it is no list of them.
 *
 * @param {string} text
 * @returns {Step[] | undefined}
 */
export function stepsIn(text) {
  const steps = text.split(';').map((entry) => entry.trim()).filter(Boolean).map(stepIn)
  return steps.every((step) => step !== undefined) ? steps : undefined
}

/**
 * @param {string} entry
 * @returns {Step | undefined}
 */
function stepIn(entry) {
  const words = entry.split(/\s+/)
  const second = words.findIndex((word, at) => at > 0 && /^[\d.,/?]/.test(word))
  if (second < 1 || second > 2 || words.length > second + 2) return undefined
  const step = [words.slice(0, second), words.slice(second)].map(([amount, ...unit]) => [amount === blank ? '' : amount, ...unit].join(' '))
  return [step[0], step[1]]
}

/**
 * The unit that all steps have in a place, if the unit control offers it.
 *
 * @param {Step[]} steps
 * @param {number} place
 * @param {HTMLSelectElement} unit
 */
function unitOf(steps, place, unit) {
  const texts = steps.map((step) => step[place]).filter(Boolean)
  if (texts.length === 0) return undefined
  const said = new Set(texts.map((text) => (number.test(text) ? unit.options[0].value : text.split(' ')[1] ?? '')))
  return said.size === 1 ? [...unit.options].find(({ value }) => said.has(value))?.value : unit.options[0].value
}

/**
 * What the first step lacks that has only a depth or only an area; '' if none does.
 *
 * @param {string} text
 */
export function lackOf(text) {
  const steps = stepsIn(text) ?? []
  const at = steps.findIndex(([depth, area]) => !depth || !area)
  return at < 0 ? '' : `Step ${at + 1} needs its ${steps[at][0] ? 'exposed area' : 'depth'}.`
}
