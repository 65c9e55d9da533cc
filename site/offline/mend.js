/**
 * For a page that could not load: asks the worker that keeps its files to compare
 * them with their hashes and to fetch the damaged ones, and then loads the page
 * once more. It is in ECMAScript 5, since the script for old browsers uses it.
 */

/** How long the worker may take, in milliseconds. */
var patience = 60000

/**
 * A page that still can't load after that finds nothing more to mend, so it is
 * not loaded again and again.
 *
 * @param {() => void} stuck is called if there is nothing to mend
 */
export function mend(stuck) {
  var worker = keeper()
  if (!worker) return stuck()
  var channel = new MessageChannel()
  var timer = setTimeout(stuck, patience)
  channel.port1.onmessage = function (event) {
    clearTimeout(timer)
    if (event.data.again) location.reload()
    else stuck()
  }
  worker.postMessage('mend', [channel.port2])
}

/** The worker that gave the page, if one did. In a sandbox looking for it throws. */
function keeper() {
  try {
    return navigator.serviceWorker.controller
  } catch (e) {
    return null
  }
}
