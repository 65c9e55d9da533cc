/**
 * The files of the engine, read once at the start and kept, so that a tab which
 * stays open while the site is replaced goes on with what it has.
 */

/**
 * @typedef {object} Files
 * @property {WebAssembly.Module} module
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
  const program = new URL('./saltbite.wasm', base)
  const node = nodeFiles()
  if (node && program.protocol === 'file:') {
    return { module: await WebAssembly.compile(await node.promises.readFile(program)) }
  }
  const [bytes, worker] = await Promise.all([
    fetched(program).then((reply) => reply.arrayBuffer()),
    fetched(new URL('./engine.js', base)).then((reply) => reply.text()),
  ])
  // Not compiled while it streams in: that needs the server to say what it is,
  // and some say octet-stream.
  return { module: await WebAssembly.compile(bytes), worker }
}

/** @returns {NodeFiles | undefined} */
function nodeFiles() {
  const { process } = /** @type {{process?: {getBuiltinModule?: (name: string) => NodeFiles}}} */ (globalThis)
  return process?.getBuiltinModule?.('node:fs')
}

/** @param {URL} url */
async function fetched(url) {
  const reply = await fetch(url)
  if (!reply.ok) throw new Error(`${url.pathname} could not be read: ${reply.status}`)
  return reply
}
