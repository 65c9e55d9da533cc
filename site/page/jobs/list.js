/**
 * The list of stored jobs, each with its buttons. A deleted job leaves an Undo button
 * in its place until the dialog closes.
 */
import { byId, frameOf, put } from '../element.js'
import { dateText } from './names.js'
import { newestFirst } from './shelf.js'

/** @typedef {import('./shelf.js').StoredJob} StoredJob */

const list = byId('jobs-list')
const search = /** @type {HTMLInputElement} */ (byId('jobs-search'))

/** A list of this length or less needs no search. */
const lookedOver = 8

/** @type {StoredJob[]} */
let shown = []

/** The row of each, by its id. @type {Map<number, HTMLElement>} */
const rows = new Map()

/** @param {(act: string, job: StoredJob, name: string) => void} act called with the action of the button, the job and the name in its field */
export function setUpList(act) {
  list.addEventListener('click', ({ target }) => {
    const button = /** @type {Element} */ (target).closest('button')
    if (!button) return
    const { act: wanted = '' } = button.dataset
    if (wanted === 'name') nameBeside(button).select()
    else perform(button, wanted)
  })
  list.addEventListener('change', ({ target }) => perform(/** @type {Element} */ (target), 'rename'))
  list.addEventListener('keydown', ({ key, target }) => {
    if (key === 'Enter' && target instanceof HTMLInputElement) target.blur()
  })
  search.addEventListener('input', filter)

  /**
   * @param {Element} control
   * @param {string} wanted
   */
  function perform(control, wanted) {
    const id = control.closest('li')?.dataset.id
    const job = shown.find((one) => String(one.id) === id)
    if (job) act(wanted, job, nameBeside(control)?.value)
  }
}

/**
 * @param {Element} control
 * @returns {HTMLInputElement}
 */
const nameBeside = (control) => /** @type {HTMLInputElement} */ (control.closest('li')?.querySelector('input'))

/**
 * Shows the jobs, newest first. The row of a job stays the same element, so that a
 * press on it or a name that is being typed is not lost.
 *
 * @param {StoredJob[]} jobs
 * @param {Map<number, StoredJob>} gone the deleted ones
 */
export function showList(jobs, gone) {
  const focused = document.activeElement
  shown = [...jobs, ...gone.values()].sort(newestFirst)
  const ids = new Set(shown.map(({ id }) => id))
  for (const [id, row] of rows) {
    if (ids.has(id)) continue
    row.remove()
    rows.delete(id)
  }
  for (const [place, job] of shown.entries()) {
    const row = rows.get(job.id) ?? newRow(job.id)
    fill(row, job, gone.has(job.id))
    if (list.children[place] !== row) list.insertBefore(row, list.children[place] ?? null)
  }
  byId('jobs-none').hidden = shown.length > 0
  const short = shown.length <= lookedOver
  byId('jobs-seek').hidden = short
  if (short) search.value = ''
  filter()
  const hidden = focused?.closest('[hidden]')
  if (hidden && list.contains(hidden)) buttonIn(hidden.parentElement)?.focus()
}

/** The first visible button. @param {HTMLElement | null} row */
const buttonIn = (row) => /** @type {HTMLElement | null | undefined} */ (row?.querySelector(':scope > :not([hidden]) button'))

function filter() {
  const words = search.value.toLowerCase().split(/\s+/)
  for (const [place, { name, sentence }] of shown.entries()) {
    const text = `${name} ${sentence}`.toLowerCase()
    const item = /** @type {HTMLElement} */ (list.children[place])
    item.hidden = !words.every((word) => text.includes(word))
  }
}

/** @param {number} id */
function newRow(id) {
  const row = frameOf('jobs-row')
  row.dataset.id = String(id)
  rows.set(id, row)
  return row
}

/**
 * @param {HTMLElement} row
 * @param {StoredJob} job
 * @param {boolean} isGone
 */
function fill(row, { name, sentence, saved }, isGone) {
  const [there, gone] = /** @type {HTMLCollectionOf<HTMLElement>} */ (row.children)
  there.hidden = isGone
  gone.hidden = !isGone
  const input = /** @type {HTMLInputElement} */ (there.querySelector('input'))
  if (input !== document.activeElement) input.value = name
  put(there.querySelector('time'), dateText(saved))
  put(there.querySelector('.gist'), sentence || 'No answer yet.')
  put(gone.querySelector('p'), goneWords(name))
  for (const of of row.querySelectorAll('.of')) put(of, ` “${name}”`)
}

/** @param {string} name */
export const goneWords = (name) => `“${name}” is deleted.`
