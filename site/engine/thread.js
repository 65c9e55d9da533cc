/**
 * Where the program runs: in a worker, or on this very thread. Both give the
 * same engine, whose call is rejected with a Death when the program has ended or
 * has fallen silent.
 */
import { work } from 'build:worker'

/** How long a worker may take to be ready, in milliseconds. */
const startLimit = 20_000

/** How long a worker may say nothing while it works on a call, in milliseconds. */
const silenceLimits = { answer: 3_000, find: 3_000, draw: 3_000, measure: 10_000, prepare: 10_000, evenness: 10_000, distances: 10_000, along: 10_000, trial: 10_000, batch: 60_000, log: 60_000 }

/** @typedef {import('./start.js').Parcel} Parcel */

/**
 * @typedef {object} Engine
 * @property {string} version
 * @property {(call: import('./start.js').Call, parcel: Parcel, hear: import('./start.js').Hear) => Promise<Parcel>} call
 * @property {() => void} end
 */

/** The program has ended under a call. */
export class Death extends Error {
  /** @param {boolean} under whether it was this call that was being worked on */
  constructor(under) {
    super('the program ended')
    this.under = under
  }
}

/** No worker can be had here. */
export class NoWorker extends Error {}

/**
 * The program on this thread, which is spoken with as with a worker.
 *
 * @param {() => Promise<WebAssembly.Module>} module
 */
export function startHere(module) {
  /** @type {import('./worker.js').Port} */
  const port = { postMessage: (data) => worker.onmessage?.(/** @type {MessageEvent} */ ({ data })), onmessage: null }
  /** @type {Spoken} */
  const worker = {
    postMessage: (data) => port.onmessage?.(/** @type {MessageEvent} */ ({ data })), onmessage: null, onerror: null, terminate() {},
  }
  work(port)
  return engineOf(worker, false, module, () => {})
}

/**
 * The program in a worker, which reads it by itself where it can: from its first
 * moment, since a message to it would wait for the page.
 *
 * @param {(source: string) => Spoken} worker makes a worker of its script
 * @param {import('./program.js').Place | undefined} place where to read it
 * @param {() => Promise<WebAssembly.Module>} module the program, for a worker that doesn't or can't
 * @param {(module: WebAssembly.Module) => void} keep is given what the worker has compiled
 */
export function startAside(worker, place, module, keep) {
  const reading = place ? `onmessage({data:${JSON.stringify({ place })}})` : ''
  return engineOf(worker(`'use strict';(${work})(self)\n${reading}`), place !== undefined, module, keep)
}

/**
 * @typedef {object} Spoken What is used of a worker.
 * @property {(message: import('./worker.js').Begin | import('./worker.js').Ask) => void} postMessage
 * @property {((event: MessageEvent<import('./worker.js').Said>) => void) | null} onmessage
 * @property {((event: ErrorEvent) => void) | null} onerror
 * @property {() => void} terminate
 */

/**
 * @param {Spoken} worker
 * @param {boolean} reads whether it reads the program by itself
 * @param {() => Promise<WebAssembly.Module>} module
 * @param {(module: WebAssembly.Module) => void} keep
 * @returns {Promise<Engine>}
 */
function engineOf(worker, reads, module, keep) {
  /** @type {Map<number, {limit: number, hear: import('./start.js').Hear, resolve: (reply: Parcel) => void, reject: (death: Death) => void}>} */
  const waiting = new Map()
  let last = 0
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer

  return new Promise((resolve, reject) => {
    /** @param {Error} [why] */
    const end = (why = new Death(true)) => {
      clearTimeout(timer)
      worker.terminate()
      reject(why)
      let under = true // calls are worked on in their order
      for (const call of waiting.values()) {
        call.reject(new Death(under))
        under = false
      }
      waiting.clear()
    }
    // A worker that is ended from outside, or that hangs, fires no event: only a
    // time limit notices.
    const listen = () => {
      clearTimeout(timer)
      const [first] = waiting.values()
      if (first) timer = setTimeout(end, first.limit)
    }
    const send = () => {
      module().then((module) => {
        timer = setTimeout(end, startLimit)
        worker.postMessage({ module })
      }).catch(end)
    }
    /** @param {MessageEvent<import('./worker.js').Said>} event */
    worker.onmessage = ({ data: said }) => {
      // Without a prototype: other people's pages may have added names to it.
      const data = /** @type {typeof said} */ (Object.assign(Object.create(null), said))
      if ('ended' in data) return end()
      if ('lost' in data) return send()
      if ('module' in data) {
        timer = setTimeout(end, startLimit)
        return keep(data.module)
      }
      if ('share' in data) {
        waiting.get(data.id)?.hear(data.share)
        return listen()
      }
      if ('id' in data) {
        waiting.get(data.id)?.resolve({ text: data.text, bytes: data.bytes })
        waiting.delete(data.id)
        return listen()
      }
      clearTimeout(timer)
      worker.onerror = (event) => {
        event.preventDefault()
        end()
      }
      resolve({
        version: data.ready,
        call: (call, { text, bytes }, hear) => new Promise((resolve, reject) => {
          waiting.set(++last, { limit: silenceLimits[call], hear, resolve, reject })
          if (waiting.size === 1) listen()
          worker.postMessage({ id: last, call, text, bytes })
        }),
        end,
      })
    }
    worker.onerror = (event) => {
      event.preventDefault()
      end(new NoWorker())
    }
    if (!reads) send()
  })
}
