/**
 * The worker: it is sent the compiled program once, or where to read it, and then
 * calls, which it answers in their order.
 *
 *     in:   {module}                    out:  {ready: version}
 *     in:   {place}                     out:  {module}, and then as with a module
 *                                       out:  {lost: true} if it can't be had there: a module is waited for then
 *     in:   {id, call, text, bytes?}    out:  {id, share}, now and then while a long call is worked on
 *                                       out:  {id, text, bytes?}
 *                                       out:  {ended: true}, after which it answers no more
 */
import { compiledFrom } from './program.js'
import { start } from './start.js'

/**
 * @typedef {{module: WebAssembly.Module}} Compiled
 * @typedef {Compiled | {place: import('./program.js').Place}} Begin
 * @typedef {{id: number, call: import('./start.js').Call} & import('./start.js').Parcel} Ask
 * @typedef {{id: number, share: number}} Progress
 * @typedef {{id: number} & import('./start.js').Parcel} Answered
 * @typedef {Compiled | {ready: string} | {lost: true} | Progress | Answered | {ended: true}} Said
 */

/**
 * @typedef {object} Port What speaks with the page: a worker's self, or what stands in for it on the page's own thread.
 * @property {(said: Said, transfer?: Transferable[]) => void} postMessage
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

/** How often the progress of a call is told at most, in milliseconds. */
const pace = 50

/** @param {Ask} ask */
function answer({ id, call, text, bytes }) {
  let told = performance.now()
  const reply = program?.call(call, { text, bytes }, (share) => {
    const now = performance.now()
    if (now - told < pace) return
    told = now
    port.postMessage({ id, share })
  })
  if (reply === undefined) return end()
  const { bytes: made } = reply
  if (made) port.postMessage({ id, text: reply.text, bytes: made }, [made.buffer])
  else port.postMessage({ id, text: reply.text })
}

function end() {
  port.postMessage({ ended: true })
}
