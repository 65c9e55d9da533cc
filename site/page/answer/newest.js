/** Work of which only the newest counts. */

/**
 * Wraps work that is requested often: it runs one at a time, and requests during a
 * run lead to one further run.
 *
 * @param {() => Promise<void>} work
 */
export function newestOnly(work) {
  let busy = false
  let again = false
  return async () => {
    again = true
    if (busy) return
    busy = true
    while (again) {
      again = false
      await work().catch(() => {}) // without a picture the page still works
    }
    busy = false
  }
}
