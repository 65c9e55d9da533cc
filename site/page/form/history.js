/**
 * What can be taken back: each deed, the last first, and never more than that one.
 * Typing in one field is one deed, until the focus leaves it.
 */

/** How many deeds are remembered. */
const most = 100

export class History {
  /** @type {import('./form.js').Entries[]} what stood on the form before each deed */
  #past = []
  /** What stood there when the last deed was over. @type {import('./form.js').Entries} */
  #settled
  /** The field that is being typed in. */
  #typing = ''
  #form

  /** @param {import('./form.js').Form} form */
  constructor(form) {
    this.#form = form
    this.#settled = form.entries()
  }

  get empty() {
    return this.#past.length === 0
  }

  /** What is on the form now is what the next deed changes. */
  settle() {
    this.#settled = this.#form.entries()
  }

  /** The focus has left what was typed in. */
  leave() {
    this.#typing = ''
    this.settle()
  }

  /** Something was typed in a field, or chosen. @param {string} name */
  typed(name) {
    if (name !== this.#typing) this.#remember(this.#settled)
    this.#typing = name
  }

  /** @param {() => void} work that changes the form */
  deed(work) {
    this.#remember(this.#form.entries())
    work()
    this.leave()
  }

  back() {
    const entries = this.#past.pop()
    if (entries) this.#form.restore(entries)
    this.leave()
  }

  /** @param {import('./form.js').Entries} entries */
  #remember(entries) {
    this.#past.push(entries)
    if (this.#past.length > most) this.#past.shift()
  }
}
