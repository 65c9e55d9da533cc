/**
 * The job sheet: its controls by the names of their fields. It knows what
 * was typed and in which unit; it never rewrites what was typed.
 */
import { at } from './element.js'
import { inUS, quote } from './jobtext.js'
import { saysUnit, withoutUnit, withUnit } from './typed.js'

/**
 * @typedef {object} Row
 * @property {HTMLElement} element
 * @property {string} name
 * @property {string} label
 * @property {HTMLInputElement | HTMLSelectElement} input
 * @property {HTMLSelectElement | null} unit
 * @property {string} bare the unit of a bare number where there is one control
 * @property {Element | null} word where what is to be said of it stands
 * @property {Element | null} seek the word of the touch that seeks it
 * @property {HTMLElement | null} fill the touch that fills it in
 *
 * @typedef {object} Part a part, or what is folded in one
 * @property {HTMLDetailsElement} element
 * @property {HTMLElement} gist
 * @property {Row[]} rows
 * @property {string[]} shows answers that its folded line tells
 * @property {{element: HTMLElement, typed: string[], answers: string[]}[]} lacks
 *
 * @typedef {{typed: Record<string, string>, units: Record<string, string>, of?: Origin}} Kept
 *
 * @typedef {{id: number, name: string, saved: number}} Origin the kept job that the sheet was opened from, as it was then
 */

export class Sheet {
  /** @param {HTMLElement} place */
  constructor(place) {
    this.place = place
    /** @type {Map<string, Row>} */
    this.rows = new Map()
    for (const element of place.querySelectorAll('.row')) {
      const row = rowOf(/** @type {HTMLElement} */ (element))
      this.rows.set(row.name, row)
    }
    /** @type {Part[]} */
    this.parts = [...place.querySelectorAll('details')].map((part) => partOf(part, [...this.rows.values()]))
    const head = /** @type {HTMLFormElement} */ (document.querySelector('.units'))
    this.switch = /** @type {RadioNodeList} */ (head.elements.namedItem('units'))
    this.sought = /** @type {HTMLInputElement} */ (at('find'))
    /** @type {Origin | undefined} */
    this.of = undefined
    /** Fields that nothing here changes. @type {Set<string>} */
    this.locked = new Set()
  }

  /**
   * The fields as they are sent.
   *
   * @param {Kept} [kept] what is on the sheet, or would be
   */
  fields({ typed, units } = this.#given()) {
    const fields = { ...typed }
    for (const [name, unit] of Object.entries(units)) {
      if (name in fields) fields[name] = withUnit(fields[name], unit)
    }
    return fields
  }

  /** What was typed and chosen, with the units of the unit controls beside it. @returns {Kept} */
  #given() {
    const typed = this.typed()
    return { typed, units: this.#units((name) => name in typed) }
  }

  /**
   * Why the sheet has no place for a field that comes from elsewhere; '' if it has.
   *
   * @param {string} name
   * @param {string} text
   */
  objection(name, text) {
    const row = this.rows.get(name)
    if (name === 'find' || (row ? chosen(row, text) !== undefined : name === 'units' && /^(metric|us)$/i.test(text))) return ''
    return row || name === 'units' ? `“${quote(text)}” is no choice for “${name}”` : `“${quote(name)}” is no field here`
  }

  /**
   * Where fields stand on the sheet so that the same is sent of them again. A bare
   * number stands in the unit that one is in, or without a unit where there is none.
   *
   * @param {Record<string, string>} fields such as the sheet has no objection to
   * @returns {Kept}
   */
  placed(fields) {
    /** @type {Record<string, string>} */
    const typed = {}
    /** @type {Record<string, string>} */
    const units = {}
    for (const row of this.rows.values()) {
      const text = fields[row.name]?.replace(/[\r\n]+/g, ' ').trim()
      if (!text) continue
      const parted = row.unit ? withoutUnit(text, unitsOf(row.unit)) : { typed: chosen(row, text) ?? '' }
      typed[row.name] = parted.typed
      if (row.unit && parted.unit !== undefined) units[row.name] = parted.unit || row.unit.dataset.bare || ''
    }
    if (fields.find) typed.find = fields.find.trim().toLowerCase()
    typed.units = inUS(fields) ? 'us' : 'metric'
    return { typed, units }
  }

  /** What was typed and chosen, without the units of the unit controls. */
  typed() {
    /** @type {Record<string, string>} */
    const typed = {}
    for (const { name, input } of this.rows.values()) {
      if (input.value.trim() !== '') typed[name] = input.value
    }
    if (this.sought.value !== '') typed.find = this.sought.value
    typed.units = this.switch.value
    return typed
  }

  get empty() {
    return [...this.rows.keys()].every((name) => this.blank(name))
  }

  /** @param {string} name */
  blank(name) {
    return this.rows.get(name)?.input.value.trim() === ''
  }

  /** Shows which rows something stands in, which say their own unit, and the units of the helps. */
  showGiven() {
    this.place.classList.toggle('in-us', this.switch.value === 'us')
    for (const { name, element, input } of this.rows.values()) {
      element.classList.toggle('given', !this.blank(name))
      element.classList.toggle('with-unit', saysUnit(input.value))
    }
  }

  /** Whether something stands in a field; not so of a name that is none. @param {string} name */
  typedInto(name) {
    return this.blank(name) === false && this.rows.has(name)
  }

  /** The rows of a part in which something stands. @param {Part} part */
  filled({ rows }) {
    return rows.filter(({ name }) => !this.blank(name))
  }

  /** Whether a part is open or something stands in it. @param {string} name */
  uses(name) {
    const part = this.parts.find(({ element }) => element.dataset.part === name)
    return part !== undefined && (part.element.open || this.filled(part).length > 0)
  }

  /**
   * @param {string} name
   * @param {string} text
   */
  write(name, text) {
    const row = this.rows.get(name)
    if (row && !this.locked.has(name)) row.input.value = text
  }

  /**
   * Fills a blank field with a bare number in its first unit.
   *
   * @param {string} name
   * @param {string} text
   */
  fill(name, text) {
    const row = this.rows.get(name)
    if (!row || !this.blank(name) || this.locked.has(name)) return
    row.input.value = text
    if (row.unit) row.unit.selectedIndex = 0
  }

  /** Sets the unit controls of blank fields to those that the switch names. */
  turnUnits() {
    for (const { name, unit } of this.rows.values()) {
      if (unit && this.blank(name)) unit.value = this.#firstUnit(unit)
    }
  }

  /** @returns {Kept} */
  keep() {
    return { typed: this.typed(), units: this.#units(() => true), of: this.of }
  }

  /** What stands in the unit controls. @param {(name: string) => boolean} of which rows */
  #units(of) {
    /** @type {Record<string, string>} */
    const units = {}
    for (const { name, unit } of this.rows.values()) if (unit && of(name)) units[name] = unit.value
    return units
  }

  /**
   * Puts back what was kept; fields that were not are blank.
   *
   * @param {Kept} kept
   */
  restore({ typed, units, of }) {
    this.of = of
    if (!this.locked.has('units')) this.switch.value = typed.units === 'us' ? 'us' : 'metric'
    if (!this.locked.has('find')) this.sought.value = typed.find ?? ''
    for (const { name, input, unit } of this.rows.values()) {
      if (this.locked.has(name)) continue
      input.value = typed[name] ?? ''
      if (!unit) continue
      const known = units[name] === '' || unitsOf(unit).includes(units[name])
      unit.value = known ? units[name] : this.#firstUnit(unit)
    }
  }

  /** Blanks all but the switch. */
  clear() {
    this.restore({ typed: { units: this.switch.value }, units: {} })
  }

  /** @param {HTMLSelectElement} unit */
  #firstUnit(unit) {
    return (this.switch.value === 'us' && unit.dataset.us) || unit.options[0].value
  }
}

/**
 * @param {HTMLElement} element
 * @returns {Row}
 */
function rowOf(element) {
  const input = /** @type {HTMLInputElement | HTMLSelectElement} */ (element.querySelector('[name]'))
  const unit = /** @type {HTMLSelectElement | null} */ (element.querySelector('[data-unit]'))
  return {
    element, input, unit,
    name: input.name,
    label: element.querySelector('label')?.textContent ?? '',
    bare: unit ? '' : element.querySelector('.unit')?.textContent ?? '',
    word: element.querySelector('.says .word'),
    seek: element.querySelector('.seek .word'),
    fill: element.querySelector('.fill'),
  }
}

/**
 * @param {HTMLDetailsElement} element
 * @param {Row[]} rows of the whole sheet
 * @returns {Part}
 */
function partOf(element, rows) {
  const lacks = [...element.querySelectorAll(':scope > .lacks span')].map((span) => /** @type {HTMLElement} */ (span))
  return {
    element,
    gist: /** @type {HTMLElement} */ (element.querySelector('summary .gist')),
    rows: rows.filter((row) => element.contains(row.element)),
    shows: list(element.dataset.shows),
    lacks: lacks.map((lack) => ({ element: lack, typed: list(lack.dataset.typed), answers: list(lack.dataset.for) })),
  }
}

/** @param {string} [names] parted by blanks */
const list = (names = '') => names.split(' ').filter(Boolean)

/** @param {HTMLSelectElement} unit */
const unitsOf = (unit) => [...unit.options].map(({ value }) => value)

/**
 * What a text chooses in a row: the value of a choice, by its own or another word;
 * any text where there is no choice.
 *
 * @param {Row} row
 * @param {string} text
 * @returns {string | undefined}
 */
function chosen({ input }, text) {
  if (input instanceof HTMLInputElement) return text
  const word = text.trim().toLowerCase()
  return [...input.options].find(({ value, dataset }) => value === word || dataset.also?.split('|').includes(word))?.value
}

/**
 * What stands in a row, with its unit, as the folded line of a part says it.
 *
 * @param {Row} row
 */
export function shown({ input, unit, bare }) {
  if (input instanceof HTMLSelectElement) return input.selectedOptions[0].label
  return withUnit(input.value, unit ? unit.selectedOptions[0]?.label ?? '' : bare)
}
