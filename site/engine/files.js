/** Where the program stands. */
import { integrity, tag } from 'build:seal'
import { compiledFrom } from './program.js'

/**
 * @typedef {object} Files
 * @property {boolean} aside whether it may run in a worker
 * @property {import('./program.js').Place} [place] where a worker can read it by itself
 * @property {() => Promise<WebAssembly.Module>} module reads the program on this thread
 */

/**
 * @param {string} base the address of a file beside the program
 * @returns {Files}
 */
export function filesBeside(base) {
  const place = { address: new URL(`./saltbite.wasm?v=${tag}`, base).href, integrity }
  return { aside: true, place, module: () => compiledFrom(place) }
}
