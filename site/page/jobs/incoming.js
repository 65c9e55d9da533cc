/**
 * A job from a link: its fields are in the fragment of the address, which no browser
 * sends to a server. It is read when the page opens and when the
 * fragment changes, then taken out of the address, so that a reload shows what
 * was changed since. A job that is stored nowhere is replaced only after a question.
 */
import { dialogOf, openDialog } from '../dialog.js'
import { byId, put } from '../element.js'
import { layBrought, setAside, textOn, isUnsaved, wordsOf } from './current.js'
import { mostOfLink, takeFields } from '../form/text.js'
import { dateText } from './names.js'
import { notify } from '../notice.js'
import { sentence, why } from './shelf.js'

/**
 * @typedef {import('../page.js').Desk} Desk
 * @typedef {import('../form/form.js').Entries} Entries
 * @typedef {{entries: Entries, faults: string[]}} Brought
 */

const dialog = dialogOf('brought')
const says = dialog.querySelector('.gist')
const trouble = dialog.querySelector('.trouble')

/** How many faults are named. */
const named = 3

/** The job of the open question, or of the last one. @type {Brought | undefined} */
let waiting

/** @param {Desk} desk */
export function setUpLink(desk) {
  addEventListener('hashchange', () => read(desk))
  byId('brought-open').addEventListener('click', () => void open(desk))
  desk.onReply(() => { if (dialog.open) void describe(desk) })
  read(desk)
}

/** @param {Desk} desk */
function read(desk) {
  const text = location.hash.slice(1).split(':~:')[0]
  if (/^[\w-]*$/.test(text)) return // a place on the page
  history.replaceState(null, '', location.href.split('#')[0])
  if (text.length > mostOfLink) return notify(sentence('LongLink'))
  /** @type {Record<string, string>} */
  const fields = {}
  const faults = takeFields(text, (name, value) => desk.form.objection(name, value), fields)
  if (Object.keys(fields).length === 0) return notify(`The link holds no job that can be read${but(faults)}. What is on the page stays.`)
  if (Object.keys(fields).join() === 'ask') return askOf(desk, fields.ask)
  void offer(desk, { entries: desk.form.placed(fields), faults })
}

/** A question alone, as of the icon's shortcuts, is asked of what is on the form. @param {Desk} desk @param {string} ask */
function askOf(desk, ask) {
  const entries = desk.form.entries()
  desk.lay({ ...entries, typed: { ...entries.typed, ask } })
}

/**
 * @param {Desk} desk
 * @param {Brought} brought
 */
async function offer(desk, brought) {
  const same = textOn(desk) === textOn(desk, brought.entries)
  if (same || !(await isUnsaved(desk))) return lay(desk, brought)
  waiting = brought
  put(trouble, '')
  await describe(desk) // before it opens: otherwise the question grows and its buttons move under a finger
  openDialog(dialog)
}

/** Shows the answer of the job in the link. @param {Desk} desk */
async function describe(desk) {
  if (waiting) put(says, await wordsOf(desk, desk.form.fields(waiting.entries)))
}

/** @param {Desk} desk */
async function open(desk) {
  if (!waiting) return
  const brought = waiting
  const tried = trouble?.textContent
  try {
    const name = await setAside(desk, `Before the link, ${dateText(Date.now())}`)
    lay(desk, brought, name && `The job that was on the page is saved as “${name}”.`)
  } catch (reason) {
    if (!tried) return put(trouble, `${why(reason)} Press again to open the link’s job all the same; Undo takes it back until something is typed.`)
    lay(desk, brought)
  }
  dialog.close()
}

/**
 * @param {Desk} desk
 * @param {Brought} brought
 * @param {string} [more]
 */
function lay(desk, { entries, faults }, more = '') {
  layBrought(desk, entries)
  const said = [faults.length > 0 && `The link’s job is open without what could not be read${but(faults)}.`, more]
  if (said.some(Boolean)) notify(said.filter(Boolean).join(' '))
}

/** @param {string[]} faults */
function but(faults) {
  const rest = faults.length - named
  return faults.length === 0 ? '' : `: ${faults.slice(0, named).join(', ')}${rest > 0 ? `, and ${rest} more` : ''}`
}
