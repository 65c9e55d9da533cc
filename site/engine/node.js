/**
 * The program in Node, which reads it from a folder. Short calls run on the
 * caller's thread, long ones in a thread of their own.
 */
import { NoWorker } from './thread.js'

/**
 * @typedef {object} FileSystem What is used of node:fs.
 * @property {{readFile: (url: URL) => Promise<Uint8Array<ArrayBuffer>>}} promises
 *
 * @typedef {object} Thread What is used of a worker of node:worker_threads.
 * @property {(message: unknown) => void} postMessage
 * @property {(event: 'message' | 'error' | 'exit', hear: (data: any) => void) => void} on
 * @property {() => void} ref
 * @property {() => void} unref
 * @property {() => void} terminate
 *
 * @typedef {{Worker: new (source: string, options: {eval: true}) => Thread}} Threads
 *
 * @typedef {(name: string) => unknown} Builtin
 */

/**
 * @param {string} base the address of a file beside the program
 * @returns {import('./files.js').Files | undefined} undefined where this is not Node, or the address is no folder's
 */
export function filesOfNode(base) {
  const { process } = /** @type {{process?: {getBuiltinModule?: Builtin}}} */ (globalThis)
  if (!process?.getBuiltinModule || new URL(base).protocol !== 'file:') return undefined
  const { promises } = /** @type {FileSystem} */ (process.getBuiltinModule('node:fs'))
  const threads = /** @type {Threads} */ (process.getBuiltinModule('node:worker_threads'))
  const of = (/** @type {string} */ name) => ({
    aside: false,
    worker: (/** @type {string} */ source) => workerOfThread(threads, source),
    module: async () => WebAssembly.compile(await promises.readFile(new URL(name, base))),
  })
  return { ...of('./saltbite.wasm'), long: of('./long.wasm') }
}

/** Stands in a thread for what a worker of a browser has. */
const scope = `const { parentPort } = require('node:worker_threads')
const self = { onmessage: null, postMessage: (data, transfer) => parentPort.postMessage(data, transfer) }
parentPort.on('message', (data) => self.onmessage({ data }))
`

/**
 * While it has nothing to do it does not keep Node from ending.
 *
 * @param {Threads} threads
 * @param {string} source
 * @returns {import('./thread.js').Spoken}
 */
function workerOfThread({ Worker }, source) {
  const thread = startThread(Worker, scope + source)
  /** @type {import('./thread.js').Spoken} */
  const spoken = {
    postMessage(message) {
      thread.ref()
      thread.postMessage(message)
    },
    onmessage: null,
    onerror: null,
    terminate: () => thread.terminate(),
  }
  thread.on('message', (data) => {
    if (!('share' in data)) thread.unref()
    spoken.onmessage?.(/** @type {MessageEvent} */ ({ data }))
  })
  const failed = () => spoken.onerror?.(/** @type {ErrorEvent} */ ({ preventDefault() {} }))
  thread.on('error', failed)
  thread.on('exit', failed)
  return spoken
}

/**
 * @param {Threads['Worker']} Worker
 * @param {string} source
 */
function startThread(Worker, source) {
  try {
    return new Worker(source, { eval: true })
  } catch {
    throw new NoWorker() // Node may be told to allow none
  }
}
