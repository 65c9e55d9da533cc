/**
 * The program, on its way before the document is all read: it takes longer than
 * all else.
 */
import { open } from '../engine/client.js'

/** How long the first painting is waited for, in milliseconds: a frame out of view has none. */
const unpainted = 500

/**
 * What the device keeps is there at once. On a first visit the form is painted
 * first: the program is most of what must come over the line, and a weak tablet
 * would be busy with it.
 */
const free = navigator.serviceWorker?.controller || document.hidden ? Promise.resolve() : painted()

export const opening = free.then(() => open(document.baseURI))

opening.catch(() => {}) // the page says so, once it is there

/** @returns {Promise<void>} */
function painted() {
  return new Promise((resolve) => {
    new PerformanceObserver(() => resolve()).observe({ type: 'paint', buffered: true })
    setTimeout(resolve, unpainted)
  })
}
