/**
 * The browser's own database of this page: the shelf of jobs, the log of runs, and the
 * pictures that are kept with jobs. Each script that uses it has a connection of its own.
 */

export const name = 'saltbite'

/**
 * What each version added; what was kept before stays. A page of an older version can't
 * open a newer database, and says so.
 *
 * @type {((database: IDBDatabase) => void)[]}
 */
const steps = [
  (database) => { database.createObjectStore('jobs', { keyPath: 'id', autoIncrement: true }) },
  (database) => {
    database.createObjectStore('runs', { keyPath: 'run' })
    database.createObjectStore('revisions') // how often the runs were changed
  },
  (database) => { database.createObjectStore('pictures') }, // by their hashes
]

/** How long it may take to open, in milliseconds. Some browsers never open it. */
const patience = 5000

/** @type {Promise<IDBDatabase> | undefined} */
let opening

/** @returns {Promise<IDBDatabase>} */
export function open() {
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
    const request = indexedDB.open(name, steps.length)
    request.onupgradeneeded = ({ oldVersion }) => { for (const step of steps.slice(oldVersion)) step(request.result) }
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
 * Does work in one transaction: all of it is done, or none of it.
 *
 * @template T
 * @param {IDBTransaction} transaction
 * @param {(transaction: IDBTransaction) => Promise<T>} work it may await only requests to the transaction
 * @returns {Promise<T>}
 */
export async function within(transaction, work) {
  /** @type {Promise<void>} */
  const done = new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve()
    transaction.onabort = () => reject(transaction.error)
  })
  const working = work(transaction).catch((reason) => {
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

/**
 * @template T
 * @param {IDBRequest<T>} request
 * @returns {Promise<T>}
 */
export function outcome(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
}
