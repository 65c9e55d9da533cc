/**
 * A job sent to somebody: as a link that holds what was typed and nothing else, or
 * as a text for a notebook.
 */
import { copyField } from './copy.js'
import { dialogOf, openDialog } from './dialog.js'
import { at, put } from './element.js'
import { textOn } from './job.js'
import { setUpLink } from './link.js'
import { inWords } from './pane.js'
import { shown } from './sheet.js'

/** @typedef {import('./page.js').Desk} Desk */

const dialog = dialogOf('share')
const button = at('to-share')
const link = /** @type {HTMLTextAreaElement} */ (at('share-link'))
const text = /** @type {HTMLTextAreaElement} */ (at('share-text'))
const send = at('share-send')
const said = at('share-said')

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
    if (copies) void copyField(copies === link.id ? link : text).then((words) => put(said, words))
  })
  send.addEventListener('click', () => void sendOn(desk))
  setUpLink(desk)
}

/** @param {Desk} desk */
async function sendOn(desk) {
  try {
    await navigator.share({ title: 'Saltbite', text: inWords(desk.reply()), url: link.value })
  } catch (reason) {
    const given = reason instanceof DOMException && reason.name === 'AbortError'
    if (!given) put(said, 'This device could not send it. Copy the link instead.')
  }
}

/**
 * The job as a page of a notebook: the sentence, what was typed, what came of it,
 * the cautions, the link.
 *
 * @param {Desk} desk
 */
function notebook({ sheet, reply }) {
  const sentence = inWords(reply())
  const parts = [
    [sentence, sentence && at('likely').textContent],
    ['Given', ...[...sheet.rows.values()].filter(({ name }) => !sheet.blank(name)).map((row) => `${row.label}: ${shown(row)}`)],
    ['Worked out', ...linesOf('#figures dl > div', figure), ...linesOf('#figures tbody tr', bite)],
    ['Cautions', ...linesOf('#cautions li > p', ([level, words]) => `${level} ${words}`)],
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
const bite = (texts, place) => `Bite ${place + 1}: ${texts.join(', ')}`
