/**
 * Sends a job to someone: as a link that holds what was typed and nothing else, or
 * as a text for a notebook.
 */
import { copyField } from './clipboard.js'
import { dialogOf, openDialog } from '../dialog.js'
import { byId, put } from '../element.js'
import { textOn } from './current.js'
import { setUpEmbedding } from './embedding.js'
import { setUpLink } from './incoming.js'
import { sentence } from './shelf.js'
import { inWords, levelWord } from '../answer/words.js'
import { shown } from '../form/units.js'

/** @typedef {import('../page.js').Desk} Desk */

const dialog = dialogOf('share')
const button = byId('to-share')
const link = /** @type {HTMLTextAreaElement} */ (byId('share-link'))
const text = /** @type {HTMLTextAreaElement} */ (byId('share-text'))
const send = byId('share-send')
const said = byId('share-said')

/** @param {Desk} desk */
export function setUpShare(desk) {
  send.hidden = !('share' in navigator)
  button.addEventListener('click', () => {
    const base = location.href.split('#')[0]
    link.value = `${base}#${textOn(desk)}`
    text.value = notebook(desk)
    put(said, '')
    openDialog(dialog, button)
  })
  dialog.addEventListener('click', ({ target }) => {
    const copies = /** @type {HTMLElement} */ (target).closest('button')?.dataset.copies
    if (copies) void copyField(/** @type {HTMLTextAreaElement} */ (byId(copies))).then((words) => put(said, words))
  })
  send.addEventListener('click', () => void sendOn(desk))
  setUpEmbedding(desk)
  setUpLink(desk)
}

/** @param {Desk} desk */
async function sendOn(desk) {
  try {
    await navigator.share({ title: 'Saltbite', text: inWords(desk.reply()), url: link.value })
  } catch (reason) {
    const given = reason instanceof DOMException && reason.name === 'AbortError'
    if (!given) put(said, sentence('NotSent'))
  }
}

/**
 * The job as text for a notebook: the sentence, what was typed, the results, the
 * cautions, the link.
 *
 * @param {Desk} desk
 */
function notebook({ form, reply }) {
  const sentence = inWords(reply())
  const parts = [
    [sentence, sentence && byId('likely').textContent],
    ['Given', ...[...form.rows.values()].filter(({ name }) => !form.blank(name)).map((row) => `${row.label}: ${shown(row)}`)],
    ['Calculated', ...linesOf('#figures dl > div', figure), ...linesOf('#figures tbody tr', bite)],
    ['Cautions', ...(reply()?.cautions ?? []).map(({ level, text }) => `${levelWord[level]} ${text}`)],
  ]
  const whole = parts.filter(([head, ...lines], place) => (place === 0 ? head : lines.length > 0))
  return [...whole.map((lines) => lines.filter(Boolean).join('\n')), link.value].join('\n\n')
}

/**
 * A line of each element that the page shows, from the texts of what is in it.
 *
 * @param {string} selector
 * @param {(texts: string[], place: number) => string} line
 */
function linesOf(selector, line) {
  return [...document.querySelectorAll(selector)].map(({ children }, place) =>
    line([...children].map(({ textContent }) => textContent ?? ''), place))
}

/** @param {string[]} texts */
const figure = ([label, value, , range]) => `${label}: ${value}${range && `, ${range}`}`

/**
 * @param {string[]} texts
 * @param {number} place
 */
const bite = (texts, place) => `Step ${place + 1}: ${texts.join(', ')}`
