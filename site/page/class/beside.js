/**
 * The fields that stand beside the rows: the supply, the time, the prices. Their
 * controls are made of the same table as those of the first page.
 */
import { onlyChosen } from '../../embed/lock.js'
import { put } from '../element.js'
import { withoutUnit, withUnit } from '../form/units.js'

/**
 * @typedef {import('../../engine/client.js').Mistake} Mistake
 * @typedef {{input: HTMLInputElement, unit: HTMLSelectElement | null, element: HTMLElement}} Control
 */

export class Beside {
  /** @param {HTMLElement} place */
  constructor(place) {
    /** @type {Map<string, Control>} */
    this.controls = new Map()
    for (const element of place.querySelectorAll('.row')) {
      const input = /** @type {HTMLInputElement} */ (element.querySelector('[name]'))
      const unit = /** @type {HTMLSelectElement | null} */ (element.querySelector('[data-unit]'))
      this.controls.set(input.name, { input, unit, element: /** @type {HTMLElement} */ (element) })
    }
  }

  /** The fields as they are sent. @returns {Record<string, string>} */
  fields() {
    const all = [...this.controls].map(([name, { input, unit }]) => [name, withUnit(input.value, unit?.value ?? '')])
    return Object.fromEntries(all.filter(([, text]) => text !== ''))
  }

  /** Shows what is sent as these fields. @param {Record<string, string>} fields */
  restore(fields) {
    for (const [name, { input, unit }] of this.controls) {
      const text = fields[name] ?? ''
      const parted = unit ? withoutUnit(text, [...unit.options].map(({ value }) => value)) : { typed: text }
      input.value = parted.typed
      if (unit && parted.unit !== undefined) unit.value = parted.unit || unit.dataset.bare || ''
    }
  }

  /** A locked control can be read and reached, not changed. @param {string[]} names */
  lock(names) {
    for (const [name, { input, unit, element }] of this.controls) {
      const locked = names.includes(name)
      element.classList.toggle('locked', locked)
      input.readOnly = locked
      if (unit) onlyChosen(unit, locked)
    }
  }

  /** Shows mistakes at their controls. @param {Mistake[]} mistakes */
  show(mistakes) {
    for (const [name, { input, element }] of this.controls) {
      const mistake = mistakes.find(({ field }) => field === name)
      const wrong = mistake !== undefined && mistake.code !== 'missing'
      element.dataset.word = wrong ? 'error' : ''
      put(element.querySelector('.says .word'), wrong ? mistake.text : '')
      input.placeholder = mistake?.code === 'missing' ? 'needed' : input.dataset.default ?? ''
      if (wrong) input.setAttribute('aria-invalid', 'true')
      else input.removeAttribute('aria-invalid')
    }
  }
}
