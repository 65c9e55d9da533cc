/**
 * The Go program, started in a scope of its own. The same code runs in a worker,
 * on the main thread in Node, and on a page where no worker can be had.
 */
import { installGo } from 'go:wasm_exec'

/**
 * @typedef {'answer' | 'find' | 'draw'} Call
 *
 * @typedef {object} Program
 * @property {string} version
 * @property {(call: Call, text: string) => string | undefined} call
 *   Text in, JSON out; undefined when the program has ended.
 * @property {Promise<void>} ended Settles when the program has ended, as it never should.
 */

// What the program may see of the global object: what wasm_exec.js, syscall/js
// and the Go runtime ask for. What they put there stays in the scope as well.
const lent = /** @type {const} */ ([
  'crypto', 'performance', 'TextEncoder', 'TextDecoder',
  'Object', 'Array', 'Uint8Array', 'Uint8ClampedArray', 'Date', 'Error',
])

/**
 * @typedef {object} Scope What the Go program puts on its scope.
 * @property {(text: string) => unknown} [saltbiteAnswer]
 * @property {(text: string) => unknown} [saltbiteFind]
 * @property {(text: string) => unknown} [saltbiteDraw]
 * @property {string} [saltbiteVersion]
 * @property {() => void} [saltbiteReady]
 */

/** @type {Record<Call, 'saltbiteAnswer' | 'saltbiteFind' | 'saltbiteDraw'>} */
const names = { answer: 'saltbiteAnswer', find: 'saltbiteFind', draw: 'saltbiteDraw' }

/**
 * @param {WebAssembly.Module} module
 * @returns {Promise<Program>}
 */
export async function start(module) {
  /** @type {Scope} */
  const scope = Object.fromEntries(lent.map((name) => [name, globalThis[name]]))
  const Go = installGo(scope)
  const go = new Go()
  go.exit = () => {}
  const instance = await WebAssembly.instantiate(module, go.importObject)
  const ready = new Promise((resolve) => { scope.saltbiteReady = () => resolve(undefined) })
  const ended = go.run(instance).catch(() => {})
  await Promise.race([ready, ended.then(() => { throw new Error('the program ended before it was ready') })])
  return {
    version: scope.saltbiteVersion ?? '',
    call: (call, text) => run(scope[names[call]], text),
    ended,
  }
}

/**
 * A call of a program that has ended throws, or gives undefined.
 *
 * @param {((text: string) => unknown) | undefined} call
 * @param {string} text
 */
function run(call, text) {
  try {
    const reply = call?.(text)
    return typeof reply === 'string' ? reply : undefined
  } catch {
    return undefined
  }
}
