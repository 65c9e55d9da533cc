/**
 * The log: finished runs, stored on this device beside the jobs. Each change is one
 * transaction, and counts as a revision: what was worked out of an older one is known
 * by its number.
 */
import { name, open, outcome, within } from '../device/database.js'
import { fail } from './why.js'

/**
 * @typedef {object} Run
 * @property {string} run its number, the same in each copy of the log
 * @property {string} ended when, such as 2026-11-27 14:05
 * @property {string} note
 * @property {string} fields in the one text form
 *
 * @typedef {{runs: Run[], revision: number}} Log the first run first
 */

/** @type {BroadcastChannel | undefined} */
let channel

/** @param {() => void} hear another tab has changed the log */
export function onLogChange(hear) {
  channel ??= new BroadcastChannel(`${name} log`)
  channel.onmessage = hear
}

/** How many runs are read at once: a page that reads thousands goes on painting. */
const atOnce = 500

/** @returns {Promise<Log>} */
export function readLog() {
  return transact('readonly', async (runs, revisions) => {
    const revision = await revisionIn(revisions)
    /** @type {Run[]} */
    const all = []
    for (;;) {
      const after = all.at(-1)
      const some = await outcome(runs.getAll(after && IDBKeyRange.lowerBound(after.run, true), atOnce))
      all.push(...some)
      if (some.length < atOnce) return { runs: all.sort(inOrder), revision }
    }
  })
}

/** The revision that the log is at. */
export const readRevision = () => transact('readonly', (_, revisions) => revisionIn(revisions))

/**
 * The first run first.
 *
 * @param {Run} a
 * @param {Run} b
 */
export const inOrder = (a, b) => (a.ended < b.ended ? -1 : a.ended > b.ended ? 1 : a.run < b.run ? -1 : 1)

/** Puts runs in, each in the place of the one of its number. @param {Run[]} runs */
export function putRuns(runs) {
  return change((store) => Promise.all(runs.map((run) => outcome(store.put(run)))))
}

/** @param {string} run */
export function removeRun(run) {
  return change((store) => outcome(store.delete(run)))
}

/**
 * Puts runs in if the log is still at that revision.
 *
 * @param {Run[]} runs
 * @param {number} revision
 * @returns {Promise<boolean>} whether it was
 */
export async function putIfUnchanged(runs, revision) {
  const same = await change(async (store, now) => {
    if (now !== revision) return false
    await Promise.all(runs.map((run) => outcome(store.put(run))))
    return true
  })
  return same
}

/** A number for a new run. */
export function newRun() {
  return [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}

/**
 * Changes the log and tells the other tabs. The browser is asked not to clear it on its
 * own; it may refuse.
 *
 * @template T
 * @param {(runs: IDBObjectStore, revision: number) => Promise<T>} work
 */
async function change(work) {
  navigator.storage?.persist?.().catch(() => {})
  const result = await transact('readwrite', async (runs, revisions) => {
    const revision = await revisionIn(revisions)
    const result = await work(runs, revision)
    await outcome(revisions.put(revision + 1, 'runs'))
    return result
  })
  channel ??= new BroadcastChannel(`${name} log`)
  channel.postMessage('')
  return result
}

/** @param {IDBObjectStore} revisions */
const revisionIn = async (revisions) => Number(await outcome(revisions.get('runs')) ?? 0)

/**
 * @template T
 * @param {IDBTransactionMode} mode
 * @param {(runs: IDBObjectStore, revisions: IDBObjectStore) => Promise<T>} work
 * @returns {Promise<T>}
 */
async function transact(mode, work) {
  const database = await open().catch((reason) => fail(reason?.name === 'VersionError' || reason?.name === 'TimeoutError' ? reason.name : 'NoLog'))
  return within(database.transaction(['runs', 'revisions'], mode), (transaction) => work(transaction.objectStore('runs'), transaction.objectStore('revisions')))
}
