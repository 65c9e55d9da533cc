/**
 * Where each figure comes from: one dialog that shows what is said of one figure
 * or caution and the sources it rests on, or all of it. Its words come with the
 * page as data, and are laid out when it is first opened.
 */
import { dialogOf, openDialog } from './dialog.js'
import { at, make, put } from './element.js'

/**
 * @typedef {{name: string, label: string, formula?: string, assumes: string, uses: string[]}} Origin
 * @typedef {{key: string, title: string, text: string, confidence: string}} Source
 * @typedef {object} Sourced
 * @property {Origin[]} origins
 * @property {Origin[]} cautions
 * @property {Source[]} sources
 * @property {Record<string, Source>} metals where a row of the catalogue was read, by its id
 */

const dialog = dialogOf('sources')
const read = /** @type {HTMLElement} */ (dialog.querySelector('.read'))
const metalRow = at('metal-row')

/** @type {Sourced} */
const sourced = JSON.parse(at('sourced').textContent ?? '')
const uses = new Map([...sourced.origins, ...sourced.cautions].map(({ name, uses }) => [name, uses]))

/** Whether the dialog says what a figure or a caution rests on. @param {string} name */
export function isSourced(name) {
  return uses.has(name)
}

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
  if (!read.querySelector('article')) layOut()
  const one = document.getElementById(`from-${name}`)
  const keys = uses.get(name) ?? []
  dialog.classList.toggle('one', one !== null)
  for (const article of read.querySelectorAll('article')) article.hidden = one !== null && article !== one
  for (const source of /** @type {NodeListOf<HTMLElement>} */ (read.querySelectorAll('[data-source]'))) {
    source.hidden = one !== null && !keys.includes(source.dataset.source ?? '')
  }
  showMetal(one === null || keys.some((key) => /^(composition|density)-/.test(key)))
  openDialog(dialog, button)
  const heading = /** @type {HTMLElement} */ (one ? one.querySelector('h3') : read)
  heading.focus()
  read.scrollTop = 0
}

function layOut() {
  at('origins').append(...sourced.origins.map(article))
  at('cautions-rest').append(...sourced.cautions.map(article))
  at('all-sources').append(...sourced.sources.map(({ key, title, text, confidence }) => {
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

/** @param {boolean} wanted */
function showMetal(wanted) {
  metalRow.hidden = !wanted || !metal
  if (!metal) return
  const { id, name, composition, density } = metal
  const row = sourced.metals[id]
  const [first, second] = metalRow.querySelectorAll('p')
  put(first, [name, composition, `${density} g/cm³`].filter(Boolean).join(' · '))
  second.replaceChildren(...(row ? [row.text, ' ', make('em', row.confidence)] : []))
}
