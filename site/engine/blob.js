/** Workers in a browser. */
import { trusted } from './policy.js'
import { NoWorker } from './thread.js'

/**
 * A worker made from a file would not be covered by the page's own security
 * policy, and could not be made from another origin's: it is made from a Blob.
 *
 * @param {string} source
 * @returns {import('./thread.js').Spoken}
 */
export function workerOfBlob(source) {
  const url = URL.createObjectURL(new Blob([source], { type: 'text/javascript' }))
  try {
    return new Worker(trusted(url))
  } catch {
    throw new NoWorker()
  } finally {
    URL.revokeObjectURL(url)
  }
}
