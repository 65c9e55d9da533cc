/** Jobs that are stored on this device: storing, opening, naming, deleting them. */
import { setUpCarry } from './transfer.js'
import { dialogOf, openDialog } from '../dialog.js'
import { byId, put } from '../element.js'
import { jobOn, nameFor, setAside, wordsOf } from './current.js'
import { goneWords, setUpList, showList } from './list.js'
import { fieldsOf } from '../form/text.js'
import { dateText, nameOf } from './names.js'
import { notify, putAway } from '../notice.js'
import { all, copy, describe, fail, onChange, putBack, remove, rename, store, sweepPictures, why } from './shelf.js'
import { layPicture, offerPicture, pictureToKeep, setUpWithPicture } from './withpicture.js'

/**
 * @typedef {import('../page.js').Desk} Desk
 * @typedef {import('./shelf.js').StoredJob} StoredJob
 */

/** The minimum time for which a deleted job can be restored, in milliseconds. */
const grace = 10_000

const dialog = dialogOf('jobs')
const button = byId('to-jobs')
const name = /** @type {HTMLInputElement} */ (byId('jobs-name'))
const said = byId('jobs-said')

/** The jobs that were deleted since the dialog opened. @type {Map<number, StoredJob>} */
const gone = new Map()

/** The job that was deleted last, and when. @type {{job: StoredJob, time: number} | undefined} */
let last

/** The proposed name; valid until another is typed. */
let proposed = ''

/** @param {Desk} desk */
export function setUpJobs(desk) {
  setUpWithPicture()
  button.addEventListener('click', () => {
    propose(desk)
    offerPicture()
    put(said, '')
    openDialog(dialog, button)
    void refreshWithWords(desk)
    if (!last) void sweepPictures().catch(() => {}) // the list says why it can't be opened
    void attempt(() => onChange(refreshIfOpen))
  })
  byId('jobs-store').addEventListener('submit', (event) => {
    event.preventDefault()
    void attempt(() => storeCurrent(desk))
  })
  name.addEventListener('input', () => hint(desk))
  setUpList((act, job, written) => void attempt(() => acts[act](desk, job, written)))
  setUpCarry(desk, () => refreshWithWords(desk))
  dialog.addEventListener('close', offerLast)
  addEventListener('focus', refreshIfOpen)
}

function refreshIfOpen() {
  if (dialog.open) void refresh()
}

async function refresh() {
  await attempt(async () => showList(await all(), gone))
}

/** The jobs whose answers were asked for, by their ids. @type {Set<number>} */
const asked = new Set()

/**
 * Shows the list, and gives jobs without a sentence theirs: those that were just taken
 * in, or were before the program was ready. One is asked after the other, so that the
 * form need not wait for its answer.
 *
 * @param {Desk} desk
 */
async function refreshWithWords(desk) {
  await refresh()
  if (desk.bench()) await attempt(() => giveWords(desk))
}

/** @param {Desk} desk */
async function giveWords(desk) {
  const blank = (await all()).filter(({ id, sentence }) => !sentence && !asked.has(id))
  for (const { id } of blank) asked.add(id)
  for (const job of blank) job.sentence = await wordsOf(desk, fieldsOf(job.fields))
  const described = blank.filter(({ sentence }) => sentence)
  if (described.length === 0) return
  await describe(described)
  await refresh()
}

/** Does work that may fail, and says why if it does. @param {() => unknown} work */
async function attempt(work) {
  try {
    await work()
  } catch (reason) {
    if (dialog.open) put(said, why(reason))
    else notify(why(reason))
  }
}

/** @param {Desk} desk */
function propose({ form, reply }) {
  const proposal = form.openedFrom?.name ?? nameFor(form.fields(), reply())
  if (name.value === proposed || name.value.trim() === '') name.value = proposal
  proposed = proposal
  hint({ form })
}

/** Says what storing would do. @param {Pick<Desk, 'form'>} desk */
function hint({ form: { openedFrom, empty } }) {
  const over = openedFrom && nameOf(name.value) === openedFrom.name
  put(byId('jobs-hint'), empty ? 'Nothing is typed on the page yet.'
    : over ? `Takes the place of the one of ${dateText(openedFrom.saved)}. With another name both stay.` : 'As a new job.')
}

/** @param {Desk} desk */
async function storeCurrent(desk) {
  const { form } = desk
  if (form.empty) fail('Blank')
  const wanted = nameOf(name.value) || nameFor(form.fields(), desk.reply())
  const { openedFrom } = form
  const { kept, ...picture } = await pictureToKeep()
  const stored = await store({ ...await jobOn(desk, wanted), ...picture }, openedFrom, kept)
  form.openedFrom = originOf(stored)
  desk.changed()
  name.value = proposed = stored.name
  hint(desk)
  put(said, storedWords(stored, wanted, openedFrom))
  await refresh()
}

/**
 * @param {StoredJob} stored
 * @param {string} wanted
 * @param {import('../form/form.js').OpenedFrom} [from]
 */
function storedWords(stored, wanted, from) {
  if (stored.name === wanted) return `“${wanted}” is saved.`
  return from?.name === wanted ? `“${wanted}” was changed meanwhile, perhaps in another tab. Both are saved; this one is “${stored.name}”.`
    : `There is a “${wanted}” already. Both are saved; this one is “${stored.name}”.`
}

/** @param {StoredJob} job */
const originOf = ({ id, name, saved }) => ({ id, name, saved })

/** @type {Record<string, (desk: Desk, job: StoredJob, name: string) => unknown>} */
const acts = {
  async open(desk, job) {
    const aside = await setAside(desk, `Before “${job.name}”, ${dateText(Date.now())}`)
    desk.lay({ ...desk.form.placed(fieldsOf(job.fields)), openedFrom: originOf(job) })
    dialog.close()
    const lost = await layPicture(job)
    notify(`“${job.name}” is open.${aside && ` What was on the page is saved as “${aside}”.`}${lost}`)
  },
  async rename({ form }, job, written) {
    const wanted = nameOf(written)
    const named = wanted && wanted !== job.name ? await rename(job.id, wanted) : undefined
    if (named && form.openedFrom?.id === job.id && form.openedFrom.name === job.name) form.openedFrom.name = named.name
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

/** @param {StoredJob} job */
async function takeBack(job) {
  await putBack(job)
  gone.delete(job.id)
  if (last?.job === job) last = undefined
  await refresh()
}

/** Offers an Undo for a while for a job that was deleted just before the dialog closed. */
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
