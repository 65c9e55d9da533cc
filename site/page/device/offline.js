/**
 * Shows whether the page is stored on this device for use without internet, and
 * whether there is a new version: at the foot of the form and beside the page's
 * name. The service worker reports both.
 */
import { byId, put, sentenceOf } from '../element.js'
import { setUpKept } from './kept.js'
import { asked } from '../start/later.js'
import { trusted } from '../start/bench.js'

/**
 * @typedef {import('../../offline/sw.js').Said} Said
 */

const place = byId('on-device')
const state = byId('state')
const [word, offer] = place.querySelectorAll('p')
const button = byId('use-new')

/** A sentence about the page offline. @param {string} of */
const words = (of) => sentenceOf('device-words', of) ?? ''

/** How long a service worker may take to answer, in milliseconds. */
const patience = 20_000

/** How often the page asks for a new version, in milliseconds. */
const hour = 3_600_000

/** @param {import('../page.js').Desk} desk */
export function setUpOffline(desk) {
  setUpKept(words)
  const why = whyNot()
  if (why) return put(word, words(why))
  let begun = false
  desk.onReply(async () => { // the page's own files first, then the copies for offline use
    if (begun) return
    begun = true
    await asked
    begin(desk).catch(() => put(word, words('failed')))
  })
}

/** Why the page can't be stored here; '' if it can. */
function whyNot() {
  if (location.protocol === 'file:') return 'file'
  if (!isSecureContext) return 'plain'
  return workers() ? '' : 'none'
}

/** A browser may have none, and in a sandbox the property throws. */
function workers() {
  try {
    return navigator.serviceWorker
  } catch {
    return undefined
  }
}

/** @param {import('../page.js').Desk} desk */
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
  askAfterNew(registration, first ? 0 : Date.now())
}

let turns = 0

/**
 * Shows the state. A tab that stays open while another changes to a new version goes
 * on with its own: it fetches nothing after its start.
 *
 * @param {ServiceWorkerRegistration} registration
 * @param {ServiceWorker | null} first the active worker when the page opened
 */
async function showState({ active, waiting, installing }, first) {
  const turn = ++turns
  const [current, next] = await Promise.all([active, waiting].map(ask))
  if (turn !== turns) return // the state has changed, and a newer call shows it
  // On a first visit no worker controls the page, so several may become active in turn.
  const newest = [next, active === first ? undefined : current].find((one) => one?.whole)
  const isNew = newest !== undefined && newest.content !== place.dataset.content
  const ready = current?.whole ?? false
  put(word, words(ready ? 'whole' : installing ? 'coming' : 'torn'))
  put(offer, isNew ? words('new') : '')
  put(state, isNew ? 'New version ready' : 'Ready without internet')
  state.classList.toggle('new', isNew)
  button.hidden = !isNew
  state.hidden = !isNew && !ready
}

/**
 * Asks a worker to check every file that it stores.
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
 * Reloads the page in its new version, once what was typed is saved.
 *
 * @param {ServiceWorkerRegistration} registration
 * @param {import('../page.js').Desk} desk
 */
async function useNew({ waiting }, desk) {
  if (!desk.save()) return put(offer, words('unsafe'))
  if (waiting?.state === 'installed') {
    const taken = new Promise((resolve) => waiting.addEventListener('statechange', resolve, { once: true }))
    waiting.postMessage('take over')
    await taken
  }
  location.reload()
}

/**
 * Asks for a new version, at most once an hour and only while the page is seen.
 *
 * @param {ServiceWorkerRegistration} registration
 * @param {number} asked when it last asked; a first visit asks by registering the worker
 */
function askAfterNew(registration, asked) {
  const update = () => {
    if (document.hidden || Date.now() - asked < hour) return
    asked = Date.now()
    registration.update().catch(() => {}) // no server, or nothing new that is whole
  }
  document.addEventListener('visibilitychange', update)
  setInterval(update, hour)
  update()
}
