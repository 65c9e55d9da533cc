/** Jobs that are kept on this device: keeping, opening, naming, deleting them. */
import { setUpCarry } from './carry.js'
import { dialogOf, openDialog } from './dialog.js'
import { at, put } from './element.js'
import { jobOn, nameFor, setAside } from './job.js'
import { goneWords, setUpList, showList } from './joblist.js'
import { oneLine } from './jobtext.js'
import { read } from './keep.js'
import { dateText } from './names.js'
import { notify, putAway } from './notice.js'
import { all, copy, keep, onChange, putBack, remove, rename, why } from './shelf.js'

/**
 * @typedef {import('./page.js').Desk} Desk
 * @typedef {import('./shelf.js').Kept} Kept
 */

/** How long a job that was deleted can be put back at the least, in milliseconds. */
const grace = 10_000

const dialog = dialogOf('jobs')
const button = at('to-jobs')
const name = /** @type {HTMLInputElement} */ (at('jobs-name'))
const said = at('jobs-said')

/** What was deleted since the dialog opened. @type {Map<number, Kept>} */
const gone = new Map()

/** What was deleted last, and when. @type {{job: Kept, time: number} | undefined} */
let last

/** The name that was proposed, as long as no other is typed. */
let proposed = ''

/** @param {Desk} desk */
export function setUpJobs(desk) {
  button.addEventListener('click', () => {
    propose(desk)
    put(said, '')
    openDialog(dialog, button)
    void refresh()
    void attempt(() => onChange(refreshIfOpen))
  })
  at('jobs-keep').addEventListener('submit', (event) => {
    event.preventDefault()
    void attempt(() => keepNow(desk))
  })
  name.addEventListener('input', () => hint(desk))
  setUpList((act, job, written) => void attempt(() => acts[act](desk, job, written)))
  setUpCarry(desk, refresh)
  dialog.addEventListener('close', offerLast)
  addEventListener('focus', refreshIfOpen)
}

function refreshIfOpen() {
  if (dialog.open) void refresh()
}

async function refresh() {
  await attempt(async () => showList(await all(), gone))
}

/** Does what may be refused, and then says why. @param {() => unknown} work */
async function attempt(work) {
  try {
    await work()
  } catch (reason) {
    if (dialog.open) put(said, why(reason))
    else notify(why(reason))
  }
}

/** @param {Desk} desk */
function propose({ sheet, reply }) {
  const proposal = sheet.of?.name ?? nameFor(sheet.fields(), reply())
  if (name.value === proposed || name.value.trim() === '') name.value = proposal
  proposed = proposal
  hint({ sheet })
}

/** Says what keeping would do. @param {Pick<Desk, 'sheet'>} desk */
function hint({ sheet: { of, empty } }) {
  const over = of && oneLine(name.value) === of.name
  put(at('jobs-hint'), empty ? 'Nothing is typed on the page yet.'
    : over ? `Takes the place of the one of ${dateText(of.saved)}. Another name keeps both.` : 'As a new job.')
}

/** @param {Desk} desk */
async function keepNow(desk) {
  const { sheet } = desk
  if (sheet.empty) return put(said, 'There is nothing to keep yet. Type a metal or a size on the page first.')
  const wanted = oneLine(name.value) || nameFor(sheet.fields(), desk.reply())
  const { of } = sheet
  const kept = await keep(await jobOn(desk, wanted), of)
  sheet.of = originOf(kept)
  desk.changed()
  name.value = proposed = kept.name
  hint(desk)
  put(said, keptWords(kept, wanted, of))
  await refresh()
}

/**
 * @param {Kept} kept
 * @param {string} wanted
 * @param {import('./sheet.js').Origin} [of]
 */
function keptWords(kept, wanted, of) {
  if (kept.name === wanted) return `“${wanted}” is kept.`
  return of?.name === wanted ? `“${wanted}” was changed meanwhile, perhaps in another tab. Both are kept; this one is “${kept.name}”.`
    : `There is a “${wanted}” already. Both are kept; this one is “${kept.name}”.`
}

/** @param {Kept} job */
const originOf = ({ id, name, saved }) => ({ id, name, saved })

/** @type {Record<string, (desk: Desk, job: Kept, name: string) => unknown>} */
const acts = {
  async open(desk, job) {
    const aside = await setAside(desk, `Before “${job.name}”, ${dateText(Date.now())}`)
    desk.lay({ ...desk.sheet.placed(read(job.fields)), of: originOf(job) })
    dialog.close()
    notify(`“${job.name}” is open.${aside && ` What was on the page is kept as “${aside}”.`}`)
  },
  async rename({ sheet }, job, written) {
    const wanted = oneLine(written)
    const named = wanted && wanted !== job.name ? await rename(job.id, wanted) : undefined
    if (named && sheet.of?.id === job.id && sheet.of.name === job.name) sheet.of.name = named.name
    await refresh()
  },
  async copy(_, { id }) {
    const made = await copy(id)
    if (made) put(said, `The copy is “${made.name}”.`)
    await refresh()
  },
  async remove(_, job) {
    await remove(job.id)
    gone.set(job.id, job)
    last = { job, time: Date.now() }
    await refresh()
  },
  undo: (_, job) => takeBack(job),
}

/** @param {Kept} job */
async function takeBack(job) {
  await putBack(job)
  gone.delete(job.id)
  if (last?.job === job) last = undefined
  await refresh()
}

/** What was deleted just before the dialog closes can be put back for a while. */
function offerLast() {
  gone.clear()
  const rest = last ? last.time + grace - Date.now() : 0
  if (!last || rest <= 0) return
  const { job } = last
  last = undefined
  const text = goneWords(job.name)
  notify(text, { word: 'Undo', work: () => void attempt(() => takeBack(job)) })
  setTimeout(() => putAway(text), rest)
}
