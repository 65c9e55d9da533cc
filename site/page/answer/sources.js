/**
 * The dialog that says where each figure comes from: one figure or caution with its
 * sources, or all of them. Its texts become elements when the dialog is first opened.
 */
import { sourced } from 'build:sourced'
import { dialogOf, openDialog } from '../dialog.js'
import { byId, make, put } from '../element.js'

/** @typedef {import('build:sourced').Origin} Origin */

const dialog = dialogOf('sources')
const read = /** @type {HTMLElement} */ (dialog.querySelector('.read'))
const metalRow = byId('metal-row')

const uses = new Map([...sourced.origins, ...sourced.cautions].map(({ name, uses }) => [name, uses]))

/** @param {import('../page.js').Desk} desk */
export function setUpSources({ reply }) {
  document.addEventListener('click', ({ target }) => {
    const button = /** @type {Element} */ (target).closest('button')
    if (button?.dataset.origin) show(button.dataset.origin, button, reply()?.rows.metal?.[0])
  })
}

/**
 * @param {string} name an answer, "caution-" and its code, or all
 * @param {HTMLElement} button
 * @param {import('../../engine/client.js').MetalRow} [metal] what was read as the metal
 */
function show(name, button, metal) {
  if (!read.querySelector('article')) layOut()
  const one = document.getElementById(`from-${name}`)
  const keys = uses.get(name) ?? []
  dialog.classList.toggle('one', one !== null)
  for (const article of read.querySelectorAll('article')) article.hidden = one !== null && article !== one
  for (const source of /** @type {NodeListOf<HTMLElement>} */ (read.querySelectorAll('[data-source]'))) {
    source.hidden = one !== null && !keys.includes(source.dataset.source ?? '')
  }
  showMetal(one === null || keys.some((key) => /^(composition|density)-/.test(key)) ? metal : undefined)
  openDialog(dialog, button)
  const heading = /** @type {HTMLElement} */ (one ? one.querySelector('h3') : read)
  heading.focus()
  read.scrollTop = 0
}

function layOut() {
  byId('origins').append(...sourced.origins.map(article))
  byId('cautions-rest').append(...sourced.cautions.map(article))
  byId('all-sources').append(...sourced.sources.map(({ key, title, text, confidence }) => {
    const row = make('div', make('dt', title, ' ', make('em', confidence)), make('dd', text))
    row.dataset.source = key
    return row
  }))
}

/** @param {Origin} origin */
function article({ name, label, formula, assumes, uses }) {
  const title = make('h3', label)
  title.tabIndex = -1
  const whole = make('article', title, ...formula ? [classed('formula', make('p', formula))] : [], make('p', assumes))
  whole.id = `from-${name}`
  if (uses.length > 0) {
    const button = make('button', 'its sources', classed('unseen', make('span', `: ${label}`)))
    button.dataset.origin = name
    whole.append(button)
  }
  return whole
}

/**
 * @param {string} name
 * @param {HTMLElement} element
 */
function classed(name, element) {
  element.className = name
  return element
}

/** @param {import('../../engine/client.js').MetalRow} [metal] */
function showMetal(metal) {
  metalRow.hidden = !metal
  if (!metal) return
  const { id, name, composition, density } = metal
  const row = sourced.metals[id]
  const [first, second] = metalRow.querySelectorAll('p')
  put(first, [name, composition, `${density} g/cm³`].filter(Boolean).join(' · '))
  second.replaceChildren(...(row ? [row.text, ' ', make('em', row.confidence)] : []))
}
