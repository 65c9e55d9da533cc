/**
 * The fields that a picture fills: those that are blank. Each is marked until
 * another text stands there. What has no row here goes along beside the rows.
 */
import { make } from '../element.js'

/** @typedef {{typed: string, unit: string}} Content */

export class Filling {
  /** All that the picture wrote, now and before, by field: Undo may bring it back. @type {Map<string, Set<string>>} */
  #wrote = new Map()
  /** Fields that were typed over. @type {Set<string>} */
  #left = new Set()
  #form

  /** @param {import('../form/form.js').Form} form */
  constructor(form) {
    this.#form = form
  }

  /** The fields of the form without what the picture filled in. */
  others() {
    const fields = this.#form.fields()
    for (const name of this.#wrote.keys()) if (this.#holds(name)) delete fields[name]
    return fields
  }

  /**
   * Writes what the picture gives in the place of what it, or the one before it, gave.
   *
   * @param {Record<string, string>} fields
   * @param {boolean} fresh whether it is a new picture
   */
  write(fields, fresh) {
    this.clear()
    if (fresh) this.#forget()
    const { typed, units } = this.#form.placed(fields)
    for (const name of Object.keys(fields)) this.#put(name, { typed: typed[name], unit: units[name] ?? '' })
    this.settle()
  }

  /** Blanks what the picture filled in. */
  clear() {
    for (const name of this.#wrote.keys()) {
      if (this.#holds(name)) this.#set(name, { typed: '', unit: this.#form.rows.get(name)?.unit?.value ?? '' })
    }
    this.settle()
  }

  /** What stands in these fields was written by the picture that comes. @param {string[]} names */
  adopt(names) {
    this.#forget()
    for (const name of names) {
      const now = this.#contentOf(name)
      if (now.typed.trim()) this.#wrote.set(name, new Set([textOf(now)]))
    }
    this.settle()
  }

  /** The fields that hold what the picture wrote. */
  held() {
    return [...this.#wrote.keys()].filter((name) => this.#holds(name))
  }

  /** Something was typed in a field. @param {string} name */
  leave(name) {
    if (this.#wrote.has(name)) this.#left.add(name)
  }

  /**
   * Marks what is the picture's now.
   *
   * @returns {boolean} whether nothing is, although nobody typed over it: another job stands there
   */
  settle() {
    for (const name of this.#wrote.keys()) this.#mark(name, this.#holds(name))
    return this.#wrote.size > 0 && this.held().length === 0 && this.#left.size === 0
  }

  /** What stands on the form is no picture's. */
  part() {
    for (const name of this.#wrote.keys()) this.#mark(name, false)
    this.#forget()
  }

  #forget() {
    this.#wrote.clear()
    this.#left.clear()
  }

  /**
   * @param {string} name
   * @param {Content} content
   */
  #put(name, content) {
    const { rows, others, locked } = this.#form
    const row = rows.get(name)
    if (locked.has(name) || row?.input === document.activeElement || (row ? row.input.value.trim() : others.get(name))) return
    this.#set(name, content)
    this.#wrote.set(name, (this.#wrote.get(name) ?? new Set()).add(textOf(content)))
  }

  /**
   * @param {string} name
   * @param {Content} content
   */
  #set(name, { typed, unit }) {
    const row = this.#form.rows.get(name)
    if (row) {
      row.input.value = typed
      if (row.unit) row.unit.value = unit
    } else if (typed) {
      this.#form.others.set(name, typed)
    } else {
      this.#form.others.delete(name)
    }
  }

  /** Whether what a field holds was written by the picture. @param {string} name */
  #holds(name) {
    return this.#wrote.get(name)?.has(textOf(this.#contentOf(name))) ?? false
  }

  /** @param {string} name @returns {Content} */
  #contentOf(name) {
    const row = this.#form.rows.get(name)
    return row ? { typed: row.input.value, unit: row.unit?.value ?? '' } : { typed: this.#form.others.get(name) ?? '', unit: '' }
  }

  /**
   * @param {string} name
   * @param {boolean} on
   */
  #mark(name, on) {
    const says = this.#form.rows.get(name)?.element.querySelector('.says')
    const there = says?.querySelector('.source')
    if (!on) there?.remove()
    if (!on || !says || there) return
    const source = make('span', 'from the picture')
    source.className = 'source'
    says.append(source)
  }
}

/** @param {Content} content */
const textOf = ({ typed, unit }) => `${typed} ${unit}`
