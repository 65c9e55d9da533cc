/**
 * Where each figure comes from: one dialog that shows what is said of one figure
 * or caution and the sources it rests on, or all of it. Its words come with the
 * page as data, and are laid out when it is first opened.
 */
import { dialogOf, openDialog } from './dialog.js'
import { make, put } from './element.js'

/**
 * @typedef {{name: string, label: string, formula: string, assumes: string, uses: string[] | null}} Origin
 * @typedef {{code: string, rests: string, uses: string[] | null}} CautionOrigin
 * @typedef {{key: string, title: string, text: string, confidence: string}} Source
 * @typedef {object} Sourced
 * @property {Origin[]} origins
 * @property {CautionOrigin[]} cautions
 * @property {Source[]} sources
 * @property {Record<string, Source>} metals where a row of the catalogue was read, by its id
 */

const dialog = dialogOf('sources')
const read = /** @type {HTMLElement} */ (dialog.querySelector('.read'))
const metalRow = /** @type {HTMLElement} */ (document.getElementById('metal-row'))

/** @type {Sourced} */
const sourced = JSON.parse(document.getElementById('sourced')?.textContent ?? '')
const uses = new Map([
  ...sourced.origins.map(({ name, uses }) => entry(name, uses)),
  ...sourced.cautions.map(({ code, uses }) => entry(`caution-${code}`, uses)),
])

/**
 * @param {string} name
 * @param {string[] | null} keys
 * @returns {[string, string[]]}
 */
function entry(name, keys) {
  return [name, keys ?? []]
}

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
  const { origins, cautions, sources } = sourced
  fill('origins', origins.map(({ name, label, formula, assumes }) => {
    const first = make('p', formula)
    first.className = 'formula'
    return article(name, label, label, first, make('p', assumes))
  }))
  fill('cautions-rest', cautions.map(({ code, rests }) =>
    article(`caution-${code}`, `Caution “${code}”`, code, make('p', rests))))
  fill('all-sources', sources.map(({ key, title, text, confidence }) => {
    const row = make('div', make('dt', title, ' ', make('em', confidence)), make('dd', text))
    row.dataset.source = key
    return row
  }))
}

/**
 * @param {string} id
 * @param {HTMLElement[]} children
 */
function fill(id, children) {
  document.getElementById(id)?.append(...children)
}

/**
 * @param {string} name
 * @param {string} heading
 * @param {string} label what its button is of, to who can't see where it stands
 * @param {HTMLElement[]} says
 */
function article(name, heading, label, ...says) {
  const title = make('h3', heading)
  title.tabIndex = -1
  const whole = make('article', title, ...says)
  whole.id = `from-${name}`
  if (uses.get(name)?.length) whole.append(sourcesButton(name, label))
  return whole
}

/**
 * @param {string} name
 * @param {string} label
 */
function sourcesButton(name, label) {
  const rest = make('span', `: ${label}`)
  rest.className = 'unseen'
  const button = /** @type {HTMLButtonElement} */ (make('button', 'its sources', rest))
  button.type = 'button'
  button.dataset.origin = name
  return button
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
