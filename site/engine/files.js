/**
 * What the engine is made of: the worker's script, which this one holds, and the
 * program, which a worker reads by itself while the page is still being painted.
 */
import { seals } from 'build:seals'
import { source } from 'build:worker'
import { compiledFrom } from './program.js'

/**
 * @typedef {object} Files
 * @property {string} [worker] the worker's script; absent where there is no worker
 * @property {string} [reader] the same of a worker that reads the program by itself, from its first moment:
 *   a message to it would wait for the page
 * @property {() => Promise<WebAssembly.Module>} module reads the program on this thread
 */

/**
 * @typedef {object} NodeFiles What is used of Node's file system.
 * @property {{readFile: (url: URL) => Promise<Uint8Array<ArrayBuffer>>}} promises
 */

/**
 * @param {string} base The address of a file beside the engine's.
 * @returns {Files}
 */
export function load(base) {
  const node = nodeFiles()
  if (node && new URL(base).protocol === 'file:') {
    return { module: async () => WebAssembly.compile(await node.promises.readFile(new URL('./saltbite.wasm', base))) }
  }
  const { tag, integrity } = seals['saltbite.wasm']
  const place = { address: new URL(`./saltbite.wasm?v=${tag}`, base).href, integrity }
  const reader = `${source}\nonmessage({data:${JSON.stringify({ place })}})`
  return { worker: source, reader, module: () => compiledFrom(place) }
}

/** @returns {NodeFiles | undefined} */
function nodeFiles() {
  const { process } = /** @type {{process?: {getBuiltinModule?: (name: string) => NodeFiles}}} */ (globalThis)
  return process?.getBuiltinModule?.('node:fs')
}
