/**
 * Starts the program while the form is still being read, laid out and painted:
 * that takes the page longer than a worker takes to be ready.
 */
import { open } from '../engine/client.js'

/** @typedef {{saltbite?: Promise<import('../engine/client.js').Bench>}} Handed what the head hands to the page's script */

const handed = /** @type {Handed} */ (window)
handed.saltbite = open(document.baseURI)
handed.saltbite.catch(() => {}) // the page says so, once it is there
