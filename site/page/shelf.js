/**
 * The shelf: jobs that are kept on this device, in the browser's own database.
 * Each change is one transaction, which reads what is there before it writes, so
 * that two tabs lose nothing of each other's. A name is on the shelf once: who
 * comes second with it is numbered.
 */
import { sentenceOf } from './element.js'
import { apart, base } from './names.js'

/**
 * @typedef {{name: string, fields: string, sentence: string, saved: number}} Job
 * its fields in the one text form; saved in milliseconds of the clock
 *
 * @typedef {Job & {id: number}} Kept
 * @typedef {import('./sheet.js').Origin} Origin
 */

const database = 'saltbite'
const version = 1
const store = 'jobs'

/** How long a database may take to open: one that never does is known of. */
const patience = 5000

/** @type {Promise<IDBDatabase> | undefined} */
let opening

/** Tells the other tabs. Made when it is first needed. @type {BroadcastChannel | undefined} */
let channel

/** @param {() => void} hear another tab has changed what is on the shelf */
export function onChange(hear) {
  channel ??= new BroadcastChannel(database)
  channel.onmessage = hear
}

/** All jobs, the newest first. @returns {Promise<Kept[]>} */
export async function all() {
  const jobs = await within('readonly', (shelf) => outcome(shelf.getAll()))
  return jobs.sort(newestFirst)
}

/**
 * The order of a list: of two saved at once, as a job and its copy, too.
 *
 * @param {Kept} a
 * @param {Kept} b
 */
export const newestFirst = (a, b) => b.saved - a.saved || b.id - a.id

/**
 * Keeps a job: in the place of the one it was opened from, if that has its name
 * and is as it was then; else as a new one.
 *
 * @param {Job} job
 * @param {Origin} [of]
 * @returns {Promise<Kept>}
 */
export function keep(job, of) {
  return change(async (shelf, there) => {
    const own = there.find(({ id, name, saved }) => id === of?.id && saved === of.saved && name === of.name && name === job.name)
    if (own) return put(shelf, { ...job, id: own.id, saved: Math.max(job.saved, own.saved + 1) })
    return put(shelf, { ...job, name: apart(job.name, there) })
  })
}

/**
 * Takes jobs in that are not there yet.
 *
 * @param {Job[]} jobs
 */
export function takeIn(jobs) {
  return change(async (shelf, there) => {
    const same = (/** @type {Job} */ a, /** @type {Job} */ b) => a.fields === b.fields && base(a.name) === base(b.name)
    let taken = 0
    for (const job of jobs) {
      if (there.some((kept) => same(kept, job))) continue
      there.push(await put(shelf, { ...job, name: apart(job.name, there) }))
      taken++
    }
    return { taken, there: jobs.length - taken }
  })
}

/**
 * @param {number} id
 * @param {string} name
 */
export function rename(id, name) {
  return change(async (shelf, there) => {
    const job = there.find((kept) => kept.id === id)
    return job && put(shelf, { ...job, name: apart(name, there.filter((kept) => kept !== job)) })
  })
}

/** @param {number} id */
export function copy(id) {
  return change(async (shelf, there) => {
    const job = there.find((kept) => kept.id === id)
    if (!job) return undefined
    const { id: _, ...rest } = job
    return put(shelf, { ...rest, name: apart(job.name, there) })
  })
}

/** @param {number} id */
export function remove(id) {
  return change((shelf) => outcome(shelf.delete(id)))
}

/** Puts back what was removed. @param {Kept} job */
export function putBack(job) {
  return change((shelf, there) => put(shelf, { ...job, name: apart(job.name, there.filter(({ id }) => id !== job.id)) }))
}

/**
 * @param {IDBObjectStore} shelf
 * @param {Job & {id?: number}} job
 * @returns {Promise<Kept>}
 */
async function put(shelf, job) {
  return { ...job, id: Number(await outcome(shelf.put(job))) }
}

/**
 * Does work that changes the shelf, and tells the other tabs. At the first job the
 * browser is asked not to clear the shelf by itself; whether it grants that is its own.
 *
 * @template T
 * @param {(shelf: IDBObjectStore, there: Kept[]) => Promise<T>} work
 */
async function change(work) {
  const result = await within('readwrite', async (shelf) => {
    const there = await outcome(shelf.getAll())
    if (there.length === 0) navigator.storage?.persist?.().catch(() => {})
    return work(shelf, there)
  })
  channel ??= new BroadcastChannel(database)
  channel.postMessage('')
  return result
}

/**
 * Does work in one transaction: all of it is done, or nothing.
 *
 * @template T
 * @param {IDBTransactionMode} mode
 * @param {(shelf: IDBObjectStore) => Promise<T>} work it may wait for nothing but the shelf
 * @returns {Promise<T>}
 */
async function within(mode, work) {
  const transaction = (await open()).transaction(store, mode)
  /** @type {Promise<void>} */
  const done = new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve()
    transaction.onabort = () => reject(transaction.error)
  })
  const working = work(transaction.objectStore(store)).catch((reason) => {
    undo(transaction)
    throw reason
  })
  const [result] = await Promise.all([working, done])
  return result
}

/** @param {IDBTransaction} transaction */
function undo(transaction) {
  try {
    transaction.abort()
  } catch {
    // A request that failed has undone it already.
  }
}

/** @returns {Promise<IDBDatabase>} */
function open() {
  opening ??= opened().catch((reason) => {
    opening = undefined
    throw reason
  })
  return opening
}

/** @returns {Promise<IDBDatabase>} */
function opened() {
  return new Promise((resolve, reject) => {
    const blocked = () => reject(new DOMException('the database does not open', 'TimeoutError'))
    const request = indexedDB.open(database, version)
    request.onupgradeneeded = () => request.result.createObjectStore(store, { keyPath: 'id', autoIncrement: true })
    request.onblocked = blocked
    request.onerror = () => reject(request.error)
    request.onsuccess = () => {
      resolve(request.result)
      request.result.onclose = () => { opening = undefined }
      request.result.onversionchange = () => {
        request.result.close() // another tab has a newer page, which waits for this one
        opening = undefined
      }
    }
    setTimeout(blocked, patience)
  })
}

/**
 * @template T
 * @param {IDBRequest<T>} request
 * @returns {Promise<T>}
 */
function outcome(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
}

/**
 * Says in a sentence why the shelf can't be had.
 *
 * @param {unknown} reason
 */
export function why(reason) {
  const name = reason instanceof Error ? reason.name : ''
  return sentenceOf('jobs-why', name) ?? sentenceOf('jobs-why', '') ?? ''
}
