/**
 * Whether the supply can do the job: one line with a word and a mark, which opens in
 * place to what to do about it and what it assumes.
 */
import { byId, mark, put } from '../element.js'
import { stopsOf } from './words.js'

/** @typedef {import('../../engine/client.js').Reply} Reply */

const words = { yes: 'Fits.', limit: 'Hold it back.', no: 'Doesn’t fit.' }
const marks = { yes: 'fits', limit: 'warn', no: 'stop' }

/** Cautions that say the same as the verdict that is shown. */
const judged = { yes: [], limit: ['supply-strong'], no: ['supply-weak', 'supply-volts'] }

const place = byId('verdict')

/** Whether the verdict is shown: beside a stop, only one that stops as well. @param {Reply} reply */
const hasVerdict = (reply) => reply.supply !== undefined && (reply.supply.fits === 'no' || stopsOf(reply).length === 0)

/**
 * Whether the verdict says already what a caution says.
 *
 * @param {Reply} reply
 * @param {import('../../engine/client.js').Caution} caution
 */
export function isSaid(reply, { code, level }) {
  /** @type {string[]} */
  const codes = reply.supply && hasVerdict(reply) ? judged[reply.supply.fits] : []
  return level !== 'stop' && codes.includes(code)
}

/** @param {Reply} reply */
export function showVerdict(reply) {
  const { supply, cautions } = reply
  place.hidden = !hasVerdict(reply)
  if (!supply || place.hidden) return
  const { fits, text } = supply
  const never = cautions.some(({ level, field }) => level === 'stop' && field === 'volts')
  const said = leadsSentence(reply) ? parted(text)[1] : text.replace(/^Fits[:,] /, '')
  const [first, rest] = said ? parted(said) : ['', '']
  mark(place, 'data-fits', fits)
  mark(/** @type {Element} */ (place.querySelector('use')), 'href', `#mark-${marks[fits]}`)
  put(place.querySelector('strong'), never ? 'Never.' : words[fits])
  put(place.querySelector('.line span'), first)
  put(place.querySelector('.text'), rest)
  place.classList.toggle('used', rest !== '') // so that paper shows it in full
}

/** Whether the sentence begins with the verdict. @param {Reply} [reply] */
export const leadsSentence = (reply) => reply?.supply !== undefined && reply.sentence.startsWith(reply.supply.text)

/**
 * The sentence as it stands in large type: where it begins with the verdict, that goes
 * on in its line below.
 *
 * @param {Reply} reply
 */
export function inLarge(reply) {
  const { sentence, supply } = reply
  if (!supply || !leadsSentence(reply)) return sentence
  return parted(supply.text)[0] + sentence.slice(supply.text.length)
}

/** What is said at once, and what once the line is opened. @param {string} text */
function parted(text) {
  const end = /[;.] /.exec(text)
  return end ? [`${capital(text.slice(0, end.index))}.`, capital(text.slice(end.index + 2))] : [capital(text), '']
}

/** @param {string} text */
const capital = (text) => text.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase())
