/**
 * The page kept on this device for use without internet, and its new versions:
 * what the worker that keeps it says, at the sheet's foot and by the page's name.
 */
import { at, put } from './element.js'
import { trusted } from './opening.js'

/**
 * @typedef {import('../offline/sw.js').Said} Said
 */

const place = at('on-device')
const state = at('state')
const [word, offer] = place.querySelectorAll('p')
const button = /** @type {HTMLElement} */ (place.querySelector('button'))

/** How long a worker may take to answer, in milliseconds. */
const patience = 20_000

/** How often a new version is asked after, in milliseconds. */
const hour = 3_600_000

/** @param {import('./page.js').Desk} desk */
export function setUpOffline(desk) {
  const why = whyNot()
  if (why !== '') {
    put(word, why)
    return
  }
  let begun = false
  desk.onReply(() => { // the page's own files first, then their copies
    if (begun) return
    begun = true
    begin(desk).catch(() => put(word, 'This page could not be kept for use without internet. It is tried again when the page is next opened.'))
  })
}

/** Why the page can't be kept here; '' if it can. */
function whyNot() {
  if (location.protocol === 'file:') return 'Opened from a file: it needs no internet, and never updates itself.'
  if (!isSecureContext) return 'Opened over plain http, this page can’t be kept for use without internet. Over https it can.'
  return workers() ? '' : 'This browser keeps no page for use without internet here.'
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
  put(word, ready ? 'Ready without internet: every file is kept on this device, and checked.'
    : installing ? 'Being kept for use without internet …'
    : 'Not ready without internet: a file did not arrive whole. It is tried again when the page is next opened.')
  put(offer, isNew ? 'A new version is ready. What is typed stays.' : '')
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
  if (!desk.keep()) {
    put(offer, 'This browser can’t keep what is typed while the page is loaded anew, so it stays as it is. Close the page when it is no longer needed: the new version opens then.')
    return
  }
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
