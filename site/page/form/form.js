/**
 * The form: the controls of a job by the names of their fields. It knows what was
 * typed and in which unit, and never rewrites it.
 *
 * The rows of a part that begins folded wait in a template, out of the page, and can
 * be read and written there.
 */
import { fields as vocabulary } from 'go:vocabulary'
import { byId, mark } from '../element.js'
import { inUS, quote } from './text.js'
import { isMetric, saysUnit, withoutUnit, withUnit } from './units.js'

/**
 * @typedef {object} Row
 * @property {HTMLElement} element
 * @property {string} name
 * @property {string} label
 * @property {HTMLInputElement | HTMLSelectElement} input
 * @property {HTMLSelectElement | null} unit
 * @property {string} bare the unit of a bare number if there is no unit control
 * @property {Element | null} word where messages about it are shown
 * @property {Element | null} seek the word in the button that seeks it
 * @property {HTMLElement | null} fill the button that fills it in
 * @property {string[]} makes answers that are shown at it
 *
 * @typedef {object} Part a part, or what is folded in one
 * @property {HTMLDetailsElement} element
 * @property {HTMLElement} gist
 * @property {Row[]} rows
 * @property {string[]} shows answers shown in its summary line
 * @property {{element: HTMLElement, typed: string[], answers: string[], needs: string[]}[]} lacks
 *
 * @typedef {{typed: Record<string, string>, units: Record<string, string>, openedFrom?: OpenedFrom}} Entries the content of the form
 *
 * @typedef {{id: number, name: string, saved: number}} OpenedFrom the stored job that was opened, as it was then
 */

export class Form {
  /** @param {HTMLElement} place */
  constructor(place) {
    this.place = place
    /** @type {Map<string, Row>} */
    this.rows = new Map()
    /** Fields that have no row here and came with a job: they are sent along. @type {Map<string, string>} */
    this.others = new Map()
    /** @type {Part[]} */
    this.parts = []
    this.#read(place)
    const head = /** @type {HTMLFormElement} */ (document.querySelector('.units'))
    this.switch = /** @type {RadioNodeList} */ (head.elements.namedItem('units'))
    this.sought = /** @type {HTMLInputElement} */ (byId('find'))
    const questions = /** @type {HTMLFormElement} */ (place.querySelector('.questions'))
    this.question = /** @type {RadioNodeList} */ (questions.elements.namedItem('ask'))
    /** @type {OpenedFrom | undefined} */
    this.openedFrom = undefined
    /** Fields that can't be changed. @type {Set<string>} */
    this.locked = new Set()
  }

  /**
   * Finds the rows and the parts in a place, in their order, those in templates too.
   *
   * @param {ParentNode} place
   * @param {Part[]} around
   */
  #read(place, around = []) {
    for (const child of place.children) {
      if (child.matches('.row')) {
        const row = rowOf(/** @type {HTMLElement} */ (child))
        this.rows.set(row.name, row)
        for (const part of around) part.rows.push(row)
      } else if (child instanceof HTMLDetailsElement) {
        const part = partOf(child)
        this.parts.push(part)
        this.#read(child, [...around, part])
      } else if (child instanceof HTMLTemplateElement) {
        this.#read(child.content, around)
      } else {
        this.#read(child, around)
      }
    }
  }

  /** Names of all that the form takes. */
  get names() {
    return vocabulary
  }

  /** Lays out what waits in the templates of a part, or of all. @param {HTMLElement} [part] */
  unpack(part = this.place) {
    for (const template of part.querySelectorAll('template')) {
      if (template.content.querySelector('.row')) template.replaceWith(template.content)
    }
  }

  /** Leads to a field, wherever it is folded away. @param {string} name */
  lead(name) {
    const row = this.rows.get(name)
    if (!row) return
    this.unpack()
    for (const { element, rows } of this.parts) if (rows.includes(row)) element.open = true
    row.element.scrollIntoView({ block: 'center' })
    row.input.focus({ preventScroll: true })
  }

  /**
   * The fields as they are sent.
   *
   * @param {Entries} [entries] instead of those on the form
   */
  fields({ typed, units } = this.#given()) {
    const fields = { ...typed }
    for (const [name, unit] of Object.entries(units)) {
      if (name in fields) fields[name] = withUnit(fields[name], unit)
    }
    return fields
  }

  /** What was typed and chosen, with the units of the unit controls beside it. @returns {Entries} */
  #given() {
    const typed = this.typed()
    return { typed, units: this.#units((name) => name in typed) }
  }

  /**
   * Why the form can't take a field from outside; '' if it can.
   *
   * @param {string} name
   * @param {string} text
   */
  objection(name, text) {
    if (!vocabulary.includes(name)) return `“${quote(name)}” is no field here`
    const row = this.rows.get(name)
    const choices = { units: this.switch, ask: this.question }[name]
    const fits = row ? chosen(row, text) !== undefined : !choices || choiceOf(choices, text)
    return fits ? '' : `“${quote(text)}” is no choice for “${name}”`
  }

  /**
   * The entries that are sent as these fields. A bare number gets the unit that bare
   * numbers are in, or no unit if the field has none.
   *
   * @param {Record<string, string>} fields that the form can take
   * @returns {Entries}
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
    for (const name of vocabulary) {
      if (!this.rows.has(name) && fields[name]?.trim()) typed[name] = fields[name].trim()
    }
    if (typed.find) typed.find = typed.find.toLowerCase()
    if (typed.ask) typed.ask = choiceOf(this.question, typed.ask)?.value ?? ''
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
    for (const [name, text] of this.others) typed[name] = text
    if (this.sought.value !== '') typed.find = this.sought.value
    if (this.question.value !== '') typed.ask = this.question.value
    typed.units = this.switch.value
    return typed
  }

  get empty() {
    return this.others.size === 0 && [...this.rows.keys()].every((name) => this.blank(name))
  }

  /** @param {string} name */
  blank(name) {
    return this.rows.get(name)?.input.value.trim() === ''
  }

  /**
   * Marks the filled rows, the rows whose text has its own unit, and the units of the
   * help texts.
   *
   * @param {string} [only] the field that changed; without a row of its name, all are marked
   */
  showGiven(only = '') {
    const row = this.rows.get(only)
    this.place.classList.toggle('in-us', this.switch.value === 'us')
    for (const { name, element, input, unit } of row ? [row] : this.rows.values()) {
      element.classList.toggle('given', !this.blank(name))
      element.classList.toggle('with-unit', saysUnit(input.value))
      if (unit && input.dataset.keys === 'metric') mark(input, 'inputmode', isMetric(unit.value) ? 'decimal' : 'text')
    }
  }

  /** Whether a field is filled; false for an unknown name. @param {string} name */
  typedInto(name) {
    return this.blank(name) === false && this.rows.has(name)
  }

  /** The filled rows of a part. @param {Part} part */
  filled({ rows }) {
    return rows.filter(({ name }) => !this.blank(name))
  }

  /** Whether a part is open or filled, and not hidden. @param {string} name */
  uses(name) {
    const part = this.parts.find(({ element }) => element.dataset.part === name)
    return part !== undefined && !part.element.hidden && (part.element.open || this.filled(part).length > 0)
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

  /** Sets the unit controls of blank fields to the system of units that is chosen. */
  turnUnits() {
    for (const { name, unit } of this.rows.values()) {
      if (unit && this.blank(name)) unit.value = this.#firstUnit(unit)
    }
  }

  /** @returns {Entries} */
  entries() {
    return { typed: this.typed(), units: this.#units(() => true), openedFrom: this.openedFrom }
  }

  /** The choices of the unit controls. @param {(name: string) => boolean} of which rows */
  #units(of) {
    /** @type {Record<string, string>} */
    const units = {}
    for (const { name, unit } of this.rows.values()) if (unit && of(name)) units[name] = unit.value
    return units
  }

  /**
   * Puts entries on the form; all other fields become blank.
   *
   * @param {Entries} entries
   */
  restore({ typed, units, openedFrom }) {
    this.openedFrom = openedFrom
    if (!this.locked.has('units')) this.switch.value = typed.units === 'us' ? 'us' : 'metric'
    if (!this.locked.has('find')) this.sought.value = typed.find ?? ''
    if (!this.locked.has('ask')) this.ask(typed.ask ?? '')
    const here = new Set([...this.rows.keys(), 'find', 'ask', 'units'])
    this.others = new Map(vocabulary.filter((name) => !here.has(name) && typed[name]).map((name) => [name, typed[name]]))
    for (const { name, input, unit } of this.rows.values()) {
      if (this.locked.has(name)) continue
      input.value = typed[name] ?? ''
      if (!unit) continue
      const known = units[name] === '' || unitsOf(unit).includes(units[name])
      unit.value = known ? units[name] : this.#firstUnit(unit)
    }
  }

  /** Chooses a question, or none. @param {string} which */
  ask(which) {
    for (const choice of /** @type {Iterable<HTMLInputElement>} */ (this.question)) choice.checked = choice.value === which
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
    makes: list(element.dataset.makes),
  }
}

/**
 * @param {HTMLDetailsElement} element
 * @returns {Part} without its rows
 */
function partOf(element) {
  const lacks = [...element.querySelectorAll(':scope > .lacks span')].map((span) => /** @type {HTMLElement} */ (span))
  return {
    element,
    gist: /** @type {HTMLElement} */ (element.querySelector('summary .gist')),
    rows: [],
    shows: list(element.dataset.shows),
    lacks: lacks.map((lack) => ({ element: lack, typed: list(lack.dataset.typed), answers: list(lack.dataset.for), needs: list(lack.dataset.needs) })),
  }
}

/** @param {string} [names] separated by spaces */
const list = (names = '') => names.split(' ').filter(Boolean)

/** @param {HTMLSelectElement} unit */
const unitsOf = (unit) => [...unit.options].map(({ value }) => value)

/**
 * What a text chooses in a row: the value of an option, found by its own or another
 * word. A row without options takes any text.
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
 * @param {RadioNodeList} choices
 * @param {string} text
 */
function choiceOf(choices, text) {
  const word = text.trim().toLowerCase()
  return [.../** @type {Iterable<HTMLInputElement>} */ (choices)].find(({ value }) => value === word)
}
