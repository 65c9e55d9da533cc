/**
 * The page kept on this device for use without internet, and its new versions:
 * what the worker that keeps it says, at the sheet's foot and by the page's name.
 */
import { at, put, sentenceOf } from './element.js'
import { trusted } from './opening.js'

/**
 * @typedef {import('../offline/sw.js').Said} Said
 */

const place = at('on-device')
const state = at('state')
const [word, offer] = place.querySelectorAll('p')
const button = /** @type {HTMLElement} */ (place.querySelector('button'))

/** What is said of the page being kept. @param {string} of */
const words = (of) => sentenceOf('device-words', of) ?? ''

/** How long a worker may take to answer, in milliseconds. */
const patience = 20_000

/** How often a new version is asked after, in milliseconds. */
const hour = 3_600_000

/** @param {import('./page.js').Desk} desk */
export function setUpOffline(desk) {
  const why = whyNot()
  if (why) return put(word, words(why))
  let begun = false
  desk.onReply(() => { // the page's own files first, then their copies
    if (begun) return
    begun = true
    begin(desk).catch(() => put(word, words('failed')))
  })
}

/** Why the page can't be kept here; '' if it can. */
function whyNot() {
  if (location.protocol === 'file:') return 'file'
  if (!isSecureContext) return 'plain'
  return workers() ? '' : 'none'
}

/** A browser may lack them, and in a sandbox looking at them throws. */
function workers() {
  try {
    return navigator.serviceWorker
  } catch {
    return undefined
  }
}

/** @param {import('./page.js').Desk} desk */
async function begin(desk) {
  const registration = await navigator.serviceWorker.register(trusted('sw.js'), { updateViaCache: 'none' })
  const first = registration.active
  const show = () => showState(registration, first)
  const watch = () => {
    registration.installing?.addEventListener('statechange', show)
    void show()
  }
  registration.addEventListener('updatefound', watch)
  navigator.serviceWorker.addEventListener('controllerchange', show)
  watch()
  button.addEventListener('click', () => useNew(registration, desk))
  state.addEventListener('click', () => {
    place.scrollIntoView({ block: 'end' })
    button.focus()
  })
  if (first) askAfterNew(registration)
  if (matchMedia('(display-mode: standalone)').matches) void navigator.storage?.persist?.()
}

let turns = 0

/**
 * Says what is kept. A tab that was left open while another took over a new
 * version goes on with its own: it fetches nothing after its start.
 *
 * @param {ServiceWorkerRegistration} registration
 * @param {ServiceWorker | null} first the worker that there was when the page opened
 */
async function showState({ active, waiting, installing }, first) {
  const turn = ++turns
  const [kept, next] = await Promise.all([active, waiting].map(ask))
  if (turn !== turns) return // it has changed meanwhile, and is asked again
  // On a first visit no worker has the page, so that one after the other may become active.
  const newest = [next, active === first ? undefined : kept].find((one) => one?.whole)
  const isNew = newest !== undefined && newest.content !== place.dataset.content
  const ready = kept?.whole ?? false
  put(word, words(ready ? 'whole' : installing ? 'coming' : 'torn'))
  put(offer, isNew ? words('new') : '')
  put(state, isNew ? 'New version ready' : 'Ready without internet')
  state.classList.toggle('new', isNew)
  button.hidden = !isNew
  state.hidden = !isNew && !ready
}

/**
 * Has a worker check every file that it keeps.
 *
 * @param {ServiceWorker | null} worker
 * @returns {Promise<Said | undefined>}
 */
function ask(worker) {
  return new Promise((resolve) => {
    if (!worker) return resolve(undefined)
    const { port1, port2 } = new MessageChannel()
    port1.onmessage = ({ data }) => resolve(data)
    setTimeout(resolve, patience)
    worker.postMessage('check', [port2])
  })
}

/**
 * Loads the page anew in its new version, once what is typed is safe.
 *
 * @param {ServiceWorkerRegistration} registration
 * @param {import('./page.js').Desk} desk
 */
async function useNew({ waiting }, desk) {
  if (!desk.keep()) return put(offer, words('unsafe'))
  if (waiting?.state === 'installed') {
    const taken = new Promise((resolve) => waiting.addEventListener('statechange', resolve, { once: true }))
    waiting.postMessage('take over')
    await taken
  }
  location.reload()
}

/**
 * Asks now, and from now on at most once an hour while the page is seen.
 *
 * @param {ServiceWorkerRegistration} registration
 */
function askAfterNew(registration) {
  let asked = 0
  const update = () => {
    if (document.hidden || Date.now() - asked < hour) return
    asked = Date.now()
    registration.update().catch(() => {}) // no server, or nothing new that is whole
  }
  document.addEventListener('visibilitychange', update)
  setInterval(update, hour)
  update()
}
