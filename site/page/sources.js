/**
 * Where each figure comes from: one dialog, made when the page was, that shows
 * what is said of one figure or caution and the sources it rests on, or all of
 * it. The one thing filled in is the row that was read as the metal.
 */
import { dialogOf, openDialog } from './dialog.js'
import { put } from './element.js'

const dialog = dialogOf('sources')
const read = /** @type {HTMLElement} */ (dialog.querySelector('.read'))
const metalRow = /** @type {HTMLElement} */ (document.getElementById('metal-row'))

/** @type {import('../engine/client.js').MetalRow | undefined} */
let metal

/** @param {import('../engine/client.js').MetalRow | undefined} row what was read as the metal */
export function setMetal(row) {
  metal = row
}

document.addEventListener('click', (event) => {
  const button = /** @type {Element} */ (event.target).closest('button')
  if (button?.dataset.origin) show(button.dataset.origin, button)
})

/**
 * @param {string} name an answer, "caution-" and its code, or all
 * @param {HTMLElement} button
 */
function show(name, button) {
  const one = document.getElementById(`from-${name}`)
  const uses = one?.dataset.uses?.split(' ') ?? []
  dialog.classList.toggle('one', one !== null)
  for (const article of read.querySelectorAll('article')) article.hidden = one !== null && article !== one
  for (const source of /** @type {NodeListOf<HTMLElement>} */ (read.querySelectorAll('[data-source]'))) {
    source.hidden = one !== null && !uses.includes(source.dataset.source ?? '')
  }
  showMetal(one === null || uses.some((key) => /^(composition|density)-/.test(key)))
  openDialog(dialog, button)
  const heading = /** @type {HTMLElement} */ (one ? one.querySelector('h3') : read)
  heading.focus()
  read.scrollTop = 0
}

/** @param {boolean} wanted */
function showMetal(wanted) {
  metalRow.hidden = !wanted || !metal
  if (!metal) return
  const { id, name, composition, density } = metal
  put(metalRow.querySelector('p'), [name, composition, `${density} g/cm³`].filter(Boolean).join(' · '))
  for (const row of /** @type {NodeListOf<HTMLElement>} */ (metalRow.querySelectorAll('[data-metal]'))) {
    row.hidden = row.dataset.metal !== id
  }
}
