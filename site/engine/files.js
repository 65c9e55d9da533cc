/** Where the program stands. */
import { long, short } from 'build:seal'
import { workerOfBlob } from './blob.js'
import { compiledFrom } from './program.js'

/**
 * @typedef {object} Files
 * @property {boolean} aside whether short calls run in a worker too, where one can be had
 * @property {(source: string) => import('./thread.js').Spoken} worker makes a worker of a script; throws NoWorker
 * @property {import('./program.js').Place} [place] where a worker can read it by itself
 * @property {() => Promise<WebAssembly.Module>} module reads the program on this thread
 * @property {Files} [long] those of the program that long calls need; none where it is not at hand
 */

/**
 * @param {string} base the address of a file beside the program
 * @returns {Files}
 */
export function filesBeside(base) {
  const of = (/** @type {string} */ name, /** @type {{tag: string, integrity: string}} */ { tag, integrity }) => {
    const place = { address: new URL(`./${name}?v=${tag}`, base).href, integrity }
    return { aside: true, worker: workerOfBlob, place, module: () => compiledFrom(place) }
  }
  return { ...of('saltbite.wasm', short), long: of('long.wasm', long) }
}
