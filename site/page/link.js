/**
 * A job that comes in a link: its fields stand in the fragment of the address,
 * which no browser sends to a server. It is read when the page opens and when the
 * fragment changes, then taken out of the address, so that a reload keeps what
 * was changed since. A job that is nowhere else is replaced only after a question.
 */
import { dialogOf, openDialog } from './dialog.js'
import { at, put } from './element.js'
import { layBrought, setAside, textOn, unkept, wordsOf } from './job.js'
import { mostOfLink, takeFields } from './jobtext.js'
import { dateText } from './names.js'
import { notify } from './notice.js'
import { why } from './shelf.js'

/**
 * @typedef {import('./page.js').Desk} Desk
 * @typedef {import('./sheet.js').Kept} Kept
 * @typedef {{kept: Kept, faults: string[]}} Brought
 */

const dialog = dialogOf('brought')
const says = dialog.querySelector('.gist')
const trouble = dialog.querySelector('.trouble')

/** How many faults are named. */
const named = 3

/** What is asked about, or was last. @type {Brought | undefined} */
let waiting

/** @param {Desk} desk */
export function setUpLink(desk) {
  addEventListener('hashchange', () => read(desk))
  at('brought-open').addEventListener('click', () => void open(desk))
  desk.onReply(() => { if (dialog.open) void describe(desk) })
  read(desk)
}

/** @param {Desk} desk */
function read(desk) {
  const text = location.hash.slice(1).split(':~:')[0]
  if (/^[\w-]*$/.test(text)) return // a place on the page
  history.replaceState(null, '', location.href.split('#')[0])
  if (text.length > mostOfLink) {
    return notify('The link holds more than 100 kB, far more than a job has, so it was not read. What is on the page stays.')
  }
  /** @type {Record<string, string>} */
  const fields = {}
  const faults = takeFields(text, (name, value) => desk.sheet.objection(name, value), fields)
  if (Object.keys(fields).length === 0) return notify(`The link holds no job that can be read${but(faults)}. What is on the page stays.`)
  void offer(desk, { kept: desk.sheet.placed(fields), faults })
}

/**
 * @param {Desk} desk
 * @param {Brought} brought
 */
async function offer(desk, brought) {
  const same = textOn(desk) === textOn(desk, brought.kept)
  if (same || !(await unkept(desk))) return lay(desk, brought)
  waiting = brought
  put(trouble, '')
  await describe(desk) // first: the question would grow, and its buttons move under a finger
  openDialog(dialog)
}

/** Says what the job in the link comes to. @param {Desk} desk */
async function describe(desk) {
  if (waiting) put(says, await wordsOf(desk, desk.sheet.fields(waiting.kept)))
}

/** @param {Desk} desk */
async function open(desk) {
  if (!waiting) return
  const brought = waiting
  const tried = trouble?.textContent
  try {
    const name = await setAside(desk, `Before the link, ${dateText(Date.now())}`)
    lay(desk, brought, name && `The job that was on the page is kept as “${name}”.`)
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
function lay(desk, { kept, faults }, more = '') {
  layBrought(desk, kept)
  const said = [faults.length > 0 && `The link’s job is open without what could not be read${but(faults)}.`, more]
  if (said.some(Boolean)) notify(said.filter(Boolean).join(' '))
}

/** @param {string[]} faults */
function but(faults) {
  const rest = faults.length - named
  return faults.length === 0 ? '' : `: ${faults.slice(0, named).join(', ')}${rest > 0 ? `, and ${rest} more` : ''}`
}
