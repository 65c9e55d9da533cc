/**
 * The Go program, started in a scope of its own. The same code runs in a worker,
 * on the main thread in Node, and on a page where no worker can be had.
 */
import { installGo } from 'go:wasm_exec'

/**
 * @typedef {'answer' | 'find' | 'draw'} ShortCall text in, JSON out, within milliseconds
 * @typedef {'measure' | 'prepare' | 'evenness' | 'distances' | 'along' | 'trial' | 'batch' | 'log'} LongCall bytes beside the text, or many rows, for up to some seconds
 * @typedef {ShortCall | LongCall} Call
 *
 * @typedef {object} Parcel What crosses the border, either way.
 * @property {string} text
 * @property {Uint8Array<ArrayBuffer>} [bytes]
 *
 * @typedef {(share: number) => void} Hear hears the share of a call's work that is done, from 0 to 1
 *
 * @typedef {object} Program
 * @property {string} version
 * @property {(call: Call, parcel: Parcel, hear: Hear) => Parcel | undefined} call
 *   undefined when the program has ended
 * @property {Promise<void>} ended Settles when the program has ended, as it never should.
 */

// What the program may see of the global object: what wasm_exec.js, syscall/js
// and the Go runtime ask for. What they put there stays in the scope as well.
const lent = /** @type {const} */ ([
  'crypto', 'performance', 'TextEncoder', 'TextDecoder',
  'Object', 'Array', 'Uint8Array', 'Uint8ClampedArray', 'Date', 'Error',
])

/**
 * @typedef {(text: string, bytes: Uint8Array | undefined, hear: Hear) => unknown} Exposed
 *
 * @typedef {object} Added What the Go program puts on its scope beside its calls.
 * @property {string} [saltbiteVersion]
 * @property {() => void} [saltbiteReady]
 *
 * @typedef {Added & Partial<Record<typeof names[Call], Exposed>>} Scope
 */

const names = /** @type {const} */ ({
  answer: 'saltbiteAnswer', find: 'saltbiteFind', draw: 'saltbiteDraw', measure: 'saltbiteMeasure', prepare: 'saltbitePrepare', evenness: 'saltbiteEvenness', distances: 'saltbiteDistances', along: 'saltbiteAlong', trial: 'saltbiteTrial', batch: 'saltbiteBatch', log: 'saltbiteLog',
})

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
    call: (call, parcel, hear) => run(scope[names[call]], parcel, hear),
    ended,
  }
}

/**
 * A call of a program that has ended throws, or gives undefined.
 *
 * @param {Exposed | undefined} call
 * @param {Parcel} parcel
 * @param {Hear} hear
 * @returns {Parcel | undefined}
 */
function run(call, { text, bytes }, hear) {
  try {
    const reply = call?.(text, bytes, hear)
    if (typeof reply === 'string') return { text: reply }
    return typeof reply === 'object' && reply !== null ? /** @type {Parcel} */ (reply) : undefined
  } catch {
    return undefined
  }
}
