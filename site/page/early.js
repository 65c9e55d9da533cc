/**
 * Starts the program while the form is still being read, laid out and painted:
 * that takes the page longer than a worker takes to be ready.
 */
import { open } from '../engine/client.js'
import { filesBeside } from '../engine/files.js'
import { trusted } from '../engine/policy.js'

/**
 * @typedef {object} Handed What the head hands to the page's script.
 * @property {{opening: Promise<import('../engine/client.js').Bench>, trusted: typeof trusted}} [saltbite]
 */

const opening = open(filesBeside(document.baseURI))

opening.catch(() => {}) // the page says so, once it is there

const handed = /** @type {Handed} */ (window)
handed.saltbite = { opening, trusted }
