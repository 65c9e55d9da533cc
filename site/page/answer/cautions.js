/**
 * The cautions of a reply as strips of one line, the gravest first, each with a
 * shape, a word and a colour. A strip opens in place, to the whole text, the field
 * that it is about, and what it rests on.
 */
import { byId, frameOf, make, mark, put } from '../element.js'
import { levelWord, stopsOf } from './words.js'
import { isSaid } from './verdict.js'

/**
 * @typedef {import('../../engine/client.js').Reply} Reply
 * @typedef {import('../../engine/client.js').Caution} Caution
 * @typedef {import('../form/form.js').Form} Form
 */

const grave = { stop: 0, warn: 1, note: 2 }

const list = byId('cautions')

/** The strip of each caution that is or was there: one that is open stays so. @type {Map<string, HTMLElement>} */
const strips = new Map()

/**
 * @param {Form} form
 * @param {Reply} reply
 */
export function showCautions(form, reply) {
  const { cautions, errors } = reply
  /** @type {Caution[]} */
  const astray = errors.filter(({ field }) => !form.rows.has(field) && field !== 'find')
    .map(({ field, code, text }) => ({ code, level: 'warn', field, text }))
  const all = [...astray, ...cautions.filter((caution) => !isSaid(reply, caution))].sort((a, b) => grave[a.level] - grave[b.level])
  const open = gravest(reply)
  const shown = all.map((caution) => {
    const key = `${caution.code} ${caution.level} ${caution.field}`
    const strip = strips.get(key) ?? strips.set(key, stripOf(form, caution, caution === open, astray.includes(caution))).get(key)
    if (strip) say(strip, caution)
    return strip ?? make('li')
  })
  const notes = shown.filter((strip) => strip.dataset.level === 'note')
  if (notes.length < 2) return fill(list, shown)
  const [{ card, text }] = all.slice(-notes.length)
  put(noted.querySelector('strong'), `${notes.length} notes.`)
  put(noted.querySelector('.brief'), card || text)
  fill(/** @type {Element} */ (noted.querySelector('ul')), notes)
  fill(list, [...shown.slice(0, -notes.length), noted])
}

/** Several notes stand in one strip, which opens to them: they leave the picture in view. */
const noted = frameOf('notes')

/**
 * Puts elements into a place where they are not there yet.
 *
 * @param {Element} place
 * @param {Element[]} elements
 */
function fill(place, elements) {
  if (elements.length !== place.children.length || elements.some((element, at) => element !== place.children[at])) place.replaceChildren(...elements)
}

/**
 * The one that is open at first: the gravest stop that does not stand above in full.
 *
 * @param {Reply} reply
 */
function gravest(reply) {
  return stopsOf(reply).find(({ text }) => text !== reply.sentence)
}

/**
 * @param {HTMLElement} strip
 * @param {Caution} caution
 */
function say(strip, { text, card }) {
  put(strip.querySelector('.text'), text)
  put(strip.querySelector('.brief'), card || text)
}

/**
 * @param {Form} form
 * @param {Caution} caution
 * @param {boolean} open
 * @param {boolean} astray whether it is a mistake, which rests on nothing
 */
function stripOf(form, { code, level, field }, open, astray) {
  const strip = frameOf('caution')
  mark(strip, 'data-level', level)
  strip.querySelector('use')?.setAttribute('href', `#mark-${level}`)
  put(strip.querySelector('strong'), levelWord[level])
  const details = /** @type {HTMLDetailsElement} */ (strip.querySelector('details'))
  details.open = open
  details.className = 'used' // so that paper shows it in full
  const link = /** @type {HTMLAnchorElement} */ (strip.querySelector('a'))
  const row = form.rows.get(field ?? '')
  if (row) {
    link.href = `#${row.name}`
    link.textContent = row.label
  } else {
    link.remove()
  }
  const why = /** @type {HTMLButtonElement} */ (strip.querySelector('.why'))
  why.dataset.origin = `caution-${code}`
  if (astray) why.remove()
  return strip
}
