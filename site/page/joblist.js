/**
 * The list of kept jobs, each with what can be done with it. One that was deleted
 * leaves its place to an Undo until the dialog closes.
 */
import { make, put } from './element.js'
import { dateText } from './names.js'

/** @typedef {import('./shelf.js').Kept} Kept */

const list = /** @type {HTMLElement} */ (document.getElementById('jobs-list'))
const none = /** @type {HTMLElement} */ (document.getElementById('jobs-none'))
const search = /** @type {HTMLInputElement} */ (document.getElementById('jobs-search'))
const seek = /** @type {HTMLElement} */ (document.getElementById('jobs-seek'))
const rowFrame = /** @type {HTMLTemplateElement} */ (document.getElementById('jobs-row'))
const goneFrame = /** @type {HTMLTemplateElement} */ (document.getElementById('jobs-gone'))

/** A list that can be looked over needs no search. */
const lookedOver = 8

/** @type {Kept[]} */
let shown = []

/**
 * @param {(act: string, job: Kept, item: HTMLElement) => void} act what a touch asks for
 */
export function setUpList(act) {
  list.addEventListener('click', ({ target }) => {
    const button = /** @type {Element} */ (target).closest('button')
    const item = /** @type {HTMLElement | null} */ (button?.closest('li') ?? null)
    const job = shown.find(({ id }) => String(id) === item?.dataset.id)
    if (item && job && button?.dataset.act) act(button.dataset.act, job, item)
  })
  list.addEventListener('submit', (event) => event.preventDefault())
  list.addEventListener('keydown', (event) => {
    const item = /** @type {Element} */ (event.target).closest('li')
    if (event.key !== 'Escape' || !item || !renaming(item)) return
    event.preventDefault() // it leaves the name, not the dialog
    endRenaming(item)
  })
  search.addEventListener('input', filter)
}

/**
 * Shows the jobs, the newest first. A name that is being typed is left alone.
 *
 * @param {Kept[]} jobs
 * @param {Map<number, Kept>} gone those that were deleted
 */
export function showList(jobs, gone) {
  if ([...list.children].some(renaming)) return
  shown = [...jobs, ...gone.values()].sort((a, b) => b.saved - a.saved)
  const focused = /** @type {HTMLElement | null} */ (document.activeElement)
  const place = focused?.closest('li')?.dataset.id
  list.replaceChildren(...shown.map((job) => (gone.has(job.id) ? goneOf(job) : rowOf(job))))
  none.hidden = shown.length > 0
  seek.hidden = shown.length <= lookedOver
  if (seek.hidden) search.value = ''
  filter()
  if (place) focusOn(place, focused?.dataset.act)
}

/**
 * Puts the focus back to where it was in a list that was made anew.
 *
 * @param {string} id
 * @param {string} [act]
 */
function focusOn(id, act) {
  const item = list.querySelector(`[data-id="${id}"]`)
  const button = item?.querySelector(`[data-act="${act}"]`) ?? item?.querySelector('.acts button')
  if (button instanceof HTMLElement) button.focus()
}

function filter() {
  const words = search.value.toLowerCase().split(/\s+/)
  for (const [place, { name, sentence }] of shown.entries()) {
    const text = `${name} ${sentence}`.toLowerCase()
    const item = /** @type {HTMLElement} */ (list.children[place])
    item.hidden = !words.every((word) => text.includes(word))
  }
}

/** @param {Kept} job */
function rowOf({ id, name, sentence, saved }) {
  const item = itemOf(rowFrame, id)
  put(item.querySelector('strong'), name)
  put(item.querySelector('time'), dateText(saved))
  put(item.querySelector('.gist'), sentence || 'No answer yet.')
  for (const button of item.querySelectorAll('.acts button')) {
    const of = make('span', ` ${name}`)
    of.className = 'unseen'
    button.append(of)
  }
  return item
}

/** @param {Kept} job */
function goneOf({ id, name }) {
  const item = itemOf(goneFrame, id)
  put(item.querySelector('.name'), `“${name}” is deleted.`)
  return item
}

/**
 * @param {HTMLTemplateElement} frame
 * @param {number} id
 */
function itemOf(frame, id) {
  const item = /** @type {HTMLElement} */ (/** @type {Element} */ (frame.content.firstElementChild).cloneNode(true))
  item.dataset.id = String(id)
  return item
}

/** @param {Element} item */
const naming = (item) => /** @type {HTMLFormElement | null} */ (item.querySelector('.naming'))

/** @param {Element} item */
const renaming = (item) => naming(item)?.hidden === false

/**
 * Lets a name be typed in its place.
 *
 * @param {HTMLElement} item
 * @param {string} name
 */
export function beginRenaming(item, name) {
  const input = nameIn(item)
  turn(item, true)
  input.value = name
  input.select()
  input.focus()
}

/** @param {Element} item */
export function endRenaming(item) {
  turn(item, false)
  const button = item.querySelector('[data-act="rename"]')
  if (button instanceof HTMLElement) button.focus()
}

/** @param {Element} item */
export const nameIn = (item) => /** @type {HTMLInputElement} */ (item.querySelector('.naming input'))

/**
 * @param {Element} item
 * @param {boolean} on
 */
function turn(item, on) {
  const form = naming(item)
  if (form) form.hidden = !on
  const name = /** @type {HTMLElement} */ (item.querySelector('.name'))
  name.hidden = on
}
