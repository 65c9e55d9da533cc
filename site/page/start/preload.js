/**
 * Starts the program while the form is still being parsed, laid out and painted:
 * that takes longer than starting a worker.
 */
import { open } from '../../engine/client.js'
import { filesBeside } from '../../engine/files.js'
import { trusted } from '../../engine/policy.js'

/**
 * @typedef {object} Handed What the head hands to the page's script.
 * @property {{opening: Promise<import('../../engine/client.js').Bench>, trusted: typeof trusted}} [saltbite]
 */

const opening = open(filesBeside(document.baseURI))

opening.catch(() => {}) // the page shows the error once it has loaded

const handed = /** @type {Handed} */ (window)
handed.saltbite = { opening, trusted }
