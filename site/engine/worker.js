/**
 * The worker: it is sent the compiled program once, or where to read it, and then
 * calls, which it answers in their order.
 *
 *     in:   {module}            out:  {ready: version}
 *     in:   {place}             out:  {module}, and then as with a module
 *                               out:  {lost: true} if it can't be had there: a module is waited for then
 *     in:   {id, call, text}    out:  {id, reply}
 *                               out:  {ended: true}, after which it answers no more
 */
import { compiledFrom } from './program.js'
import { start } from './start.js'

/**
 * @typedef {{module: WebAssembly.Module}} Compiled
 * @typedef {Compiled | {place: import('./program.js').Place}} Begin
 * @typedef {{id: number, call: import('./start.js').Call, text: string}} Ask
 * @typedef {Compiled | {ready: string} | {lost: true} | {id: number, reply: string} | {ended: true}} Said
 */

/**
 * @typedef {object} Port What speaks with the page: a worker's self, or what stands in for it on the page's own thread.
 * @property {(said: Said) => void} postMessage
 * @property {((event: MessageEvent<Begin | Ask>) => void) | null} onmessage
 */
const port = /** @type {Port} */ (/** @type {unknown} */ (self))

/** @type {import('./start.js').Program | undefined} */
let program

/** @param {MessageEvent<Begin | Ask>} event */
port.onmessage = ({ data }) => {
  if ('module' in data) void begin(data.module)
  else if ('place' in data) void read(data.place)
  else answer(data)
}

/** @param {import('./program.js').Place} place */
async function read(place) {
  try {
    const module = await compiledFrom(place)
    port.postMessage({ module })
    void begin(module)
  } catch {
    port.postMessage({ lost: true })
  }
}

/** @param {WebAssembly.Module} module */
async function begin(module) {
  try {
    program = await start(module)
    void program.ended.then(end)
    port.postMessage({ ready: program.version })
  } catch {
    end()
  }
}

/** @param {Ask} ask */
function answer({ id, call, text }) {
  const reply = program?.call(call, text)
  if (reply === undefined) end()
  else port.postMessage({ id, reply })
}

function end() {
  port.postMessage({ ended: true })
}
