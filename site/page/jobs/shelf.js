/**
 * The shelf: jobs that are stored on this device, in the browser's own database.
 * Each change is one transaction, which reads what is there before it writes, so
 * that two tabs never lose each other's changes. A name is unique: a second job of the
 * same name gets a number.
 */
import { name, open, outcome, within } from '../device/database.js'
import { sentenceOf } from '../element.js'
import { fieldsOf } from '../form/text.js'
import { base, namesBeside } from './names.js'

/**
 * @typedef {{name: string, fields: string, sentence: string, saved: number, picture?: WithPicture}} Job
 * its fields in the one text form; saved in milliseconds of the clock
 *
 * @typedef {{hash: string, fields: string[]}} WithPicture the picture that is kept with a job, and the fields that it filled
 *
 * @typedef {{name: string, type: string, bytes: ArrayBuffer}} KeptPicture a file, as any engine can keep it
 *
 * @typedef {Job & {id: number}} StoredJob
 * @typedef {import('../form/form.js').OpenedFrom} OpenedFrom
 */

const objectStore = 'jobs'
const pictureStore = 'pictures'

/** Notifies the other tabs. Created when it is first needed. @type {BroadcastChannel | undefined} */
let channel

/** @param {() => void} hear another tab has changed what is on the shelf */
export function onChange(hear) {
  channel ??= new BroadcastChannel(name)
  channel.onmessage = hear
}

/** All jobs, the newest first. @returns {Promise<StoredJob[]>} */
export async function all() {
  const jobs = await transact('readonly', (shelf) => outcome(shelf.getAll()))
  return jobs.sort(newestFirst)
}

/**
 * The order of the list. Two jobs saved at the same time, such as a job and its
 * copy, have an order too.
 *
 * @param {StoredJob} a
 * @param {StoredJob} b
 */
export const newestFirst = (a, b) => b.saved - a.saved || b.id - a.id

/**
 * Stores a job: in the place of the one it was opened from, if that has its name
 * and is as it was then; else as a new one.
 *
 * @param {Job} job
 * @param {OpenedFrom} [from]
 * @param {KeptPicture} [picture] that is kept with it; the job of which nothing is said of one keeps its own
 * @returns {Promise<StoredJob>}
 */
export function store(job, from, picture) {
  return change(async (shelf, there, pictures) => {
    if (job.picture && picture) await outcome(pictures.put(picture, job.picture.hash))
    const own = there.find(({ id, name, saved }) => id === from?.id && saved === from.saved && name === from.name && name === job.name)
    if (own) return put(shelf, { picture: stillWith(own, job), ...job, id: own.id, saved: later(own.saved, job.saved) })
    return put(shelf, { ...job, name: namesBeside(there)(job.name) })
  })
}

/**
 * The picture of a job that takes the place of another: what was typed over since, it
 * did not fill.
 *
 * @param {Job} before
 * @param {Job} now
 * @returns {WithPicture | undefined}
 */
function stillWith({ picture, fields }, now) {
  if (!picture) return undefined
  const [then, since] = [fieldsOf(fields), fieldsOf(now.fields)]
  return { ...picture, fields: picture.fields.filter((name) => then[name] === since[name]) }
}

/**
 * The time at which a job is saved again. It is always later than the time before,
 * even if the clock was set back: another tab sees by it that the job has changed.
 *
 * @param {number} before
 * @param {number} now
 */
const later = (before, now) => (before < now || before >= lastDate ? now : before + 1)

/** The last moment that a date can be, in milliseconds (ECMA-262, time values). */
const lastDate = 8.64e15

/**
 * The jobs that are not on the shelf yet, each of them once.
 *
 * @param {Job[]} jobs
 * @param {Job[]} there
 */
function newAmong(jobs, there) {
  const known = new Set(there.map(identity))
  return jobs.filter((job) => !known.has(identity(job)) && known.add(identity(job)))
}

/**
 * Adds the jobs that are not on the shelf yet.
 *
 * @param {Job[]} jobs
 */
export function takeIn(jobs) {
  return change(async (shelf, there) => {
    const free = namesBeside(there)
    const taken = newAmong(jobs, there)
    await Promise.all(taken.map((job) => put(shelf, { ...job, name: free(job.name) })))
    return taken.length
  })
}

/**
 * Gives jobs without a sentence theirs, unless they were changed or removed meanwhile.
 *
 * @param {StoredJob[]} jobs
 */
export function describe(jobs) {
  const described = new Map(jobs.map((job) => [job.id, job]))
  return change((shelf, there) => Promise.all(there.map((stored) => {
    const { fields, sentence = '' } = described.get(stored.id) ?? {}
    return fields === stored.fields && !stored.sentence && put(shelf, { ...stored, sentence })
  })))
}

/** A picture that is kept with a job; undefined if it is gone. @param {string} hash @returns {Promise<KeptPicture | undefined>} */
export function pictureOf(hash) {
  return transact('readonly', (_, pictures) => outcome(pictures.get(hash)))
}

/** Removes the pictures that no job has any more. */
export function sweepPictures() {
  return transact('readwrite', async (shelf, pictures) => {
    /** @type {StoredJob[]} */
    const there = await outcome(shelf.getAll())
    const used = new Set(there.map(({ picture }) => picture?.hash))
    const hashes = await outcome(pictures.getAllKeys())
    await Promise.all(hashes.filter((hash) => !used.has(String(hash))).map((hash) => outcome(pictures.delete(hash))))
  })
}

/** Two jobs with the same fields and the same name, numbers aside, are the same job. @param {Job} job */
const identity = ({ name, fields }) => `${base(name)}\n${fields}`

/**
 * @param {number} id
 * @param {string} name
 */
export function rename(id, name) {
  return change(async (shelf, there) => {
    const job = there.find((stored) => stored.id === id)
    return job && put(shelf, { ...job, name: namesBeside(there.filter((stored) => stored !== job))(name) })
  })
}

/** @param {number} id */
export function copy(id) {
  return change(async (shelf, there) => {
    const job = there.find((stored) => stored.id === id)
    if (!job) return undefined
    const { id: _, ...rest } = job
    return put(shelf, { ...rest, name: namesBeside(there)(job.name) })
  })
}

/** @param {number} id */
export function remove(id) {
  return change((shelf) => outcome(shelf.delete(id)))
}

/** Puts back what was removed. @param {StoredJob} job */
export function putBack(job) {
  return change((shelf, there) => put(shelf, { ...job, name: namesBeside(there.filter(({ id }) => id !== job.id))(job.name) }))
}

/**
 * @param {IDBObjectStore} shelf
 * @param {Job & {id?: number}} job
 * @returns {Promise<StoredJob>}
 */
async function put(shelf, job) {
  return { ...job, id: Number(await outcome(shelf.put(job))) }
}

/**
 * Changes the shelf and tells the other tabs. At the first job the browser is asked
 * not to clear the shelf on its own; it may refuse.
 *
 * @template T
 * @param {(shelf: IDBObjectStore, there: StoredJob[], pictures: IDBObjectStore) => Promise<T>} work
 */
async function change(work) {
  const result = await transact('readwrite', async (shelf, pictures) => {
    const there = await outcome(shelf.getAll())
    if (there.length === 0) navigator.storage?.persist?.().catch(() => {})
    return work(shelf, there, pictures)
  })
  channel ??= new BroadcastChannel(name)
  channel.postMessage('')
  return result
}

/**
 * @template T
 * @param {IDBTransactionMode} mode
 * @param {(shelf: IDBObjectStore, pictures: IDBObjectStore) => Promise<T>} work
 * @returns {Promise<T>}
 */
async function transact(mode, work) {
  const database = await open().catch((reason) => fail(sentence(reason?.name) ? reason.name : 'NoShelf')) // without a database for this page
  return within(database.transaction([objectStore, pictureStore], mode),
    (transaction) => work(transaction.objectStore(objectStore), transaction.objectStore(pictureStore)))
}

/** The sentence of the page about a failure, by its name. @param {string} name */
export const sentence = (name) => sentenceOf('jobs-why', name) ?? ''

/**
 * Fails with one of those sentences.
 *
 * @param {string} name
 * @returns {never}
 */
export function fail(name) {
  throw Object.assign(new Error(), { name })
}

/**
 * Says in a sentence why something failed. An unknown error is shown in the
 * browser's own words.
 *
 * @param {unknown} reason
 */
export function why(reason) {
  return sentence(reason instanceof Error ? reason.name : '') || `That failed, and the browser says why: ${String(reason).replace(/\.$/, '')}.`
}
