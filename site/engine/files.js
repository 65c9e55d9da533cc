/**
 * The files of the engine, read once at the start and kept, so that a tab which
 * stays open while the site is replaced goes on with what it has. What the
 * network gives is held to the hash that it was built with: on a server that is
 * being replaced, files of two versions stand side by side.
 */
import { seals } from 'build:seals'

/**
 * @typedef {object} Files
 * @property {Promise<WebAssembly.Module>} module
 * @property {string} [worker] The worker's script; absent where there is no worker.
 */

/**
 * @typedef {object} NodeFiles What is used of Node's file system.
 * @property {{readFile: (url: URL) => Promise<Uint8Array<ArrayBuffer>>}} promises
 */

/**
 * @param {string} base The address of a file beside the engine's.
 * @returns {Promise<Files>}
 */
export async function load(base) {
  if (typeof WebAssembly !== 'object') throw new Error('there is no WebAssembly here')
  const node = nodeFiles()
  if (node && new URL(base).protocol === 'file:') {
    return { module: node.promises.readFile(new URL('./saltbite.wasm', base)).then(compiled) }
  }
  const module = fetched('saltbite.wasm', base).then((reply) => reply.arrayBuffer()).then(compiled)
  module.catch(() => {}) // whoever waits for it is told, if the worker's script is there
  return { module, worker: await fetched('engine.js', base).then((reply) => reply.text()) }
}

/**
 * Not compiled while it streams in: that needs the server to say what it is, and
 * some say octet-stream.
 *
 * @param {BufferSource} bytes
 */
function compiled(bytes) {
  return WebAssembly.compile(bytes)
}

/** @returns {NodeFiles | undefined} */
function nodeFiles() {
  const { process } = /** @type {{process?: {getBuiltinModule?: (name: string) => NodeFiles}}} */ (globalThis)
  return process?.getBuiltinModule?.('node:fs')
}

/**
 * @param {keyof seals} name
 * @param {string} base
 */
async function fetched(name, base) {
  const { tag, integrity } = seals[name]
  const reply = await fetch(new URL(`./${name}?v=${tag}`, base), { integrity })
  if (!reply.ok) throw new Error(`${name} could not be read: ${reply.status}`)
  return reply
}
