/** The program, on its way as soon as the form is painted. */
import { open } from '../engine/client.js'

/** How long the first painting is waited for, in milliseconds: a frame out of view has none. */
const unpainted = 500

/**
 * The form comes first: the program is most of what must come over the line, and
 * a weak tablet is busy with it.
 */
export const opening = (document.hidden ? Promise.resolve() : painted()).then(() => open(document.baseURI))

opening.catch(() => {}) // the page says so, once it is there

/** @returns {Promise<void>} */
function painted() {
  return new Promise((resolve) => {
    new PerformanceObserver(() => resolve()).observe({ type: 'paint', buffered: true })
    setTimeout(resolve, unpainted)
  })
}
