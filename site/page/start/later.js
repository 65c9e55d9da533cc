/**
 * Fetches the page's second script, later.js, once the first answer is painted and the
 * page is idle, or at the first touch that needs it: that waits for it and then works.
 * The third, log.js, comes in the same way; when the page is idle, only if this device has a log.
 */
import { later, log } from 'build:seal'
import { mend } from '../../offline/mend.js'
import { stored } from '../device/stored.js'
import { notify, putAway } from '../notice.js'
import { scriptOf } from './script.js'

/**
 * @typedef {import('../page.js').Desk} Desk
 * @typedef {{setUp: (desk: Desk) => void}} Script what a script hands to the page
 */

const seals = { later, log }

/** What only one of the scripts answers to. */
const touches = {
  later: '#card, #to-jobs, #to-share, [data-origin], [data-save], .artwork > summary',
  log: 'button[data-log]',
}

/** How long a touch waits in silence, in milliseconds. */
const patience = 1000

const coming = 'One moment: this part of the page is still on its way.'
const lost = 'This part of the page could not be loaded. The answers go on without it; with the internet it is loaded at the next touch.'
const lostLink = 'The job in the link could not be opened: a part of the page did not arrive. Load the page again.'

let tried = () => {}

/** Settled once the scripts have come, or were asked for in vain. @type {Promise<void>} */
export const asked = new Promise((resolve) => { tried = resolve })

/**
 * Fetches a script at the first touch that needs it.
 *
 * @param {Desk} desk
 * @param {'later' | 'log'} name
 * @returns {() => Promise<void>} which fetches it before
 */
function setUpScript(desk, name) {
  let there = false
  /** @type {Promise<void> | undefined} */
  let loading
  /** The touch that waits. @type {HTMLElement | undefined} */
  let touched

  async function load() {
    try {
      const { setUp } = /** @type {Script} */ (await scriptOf(name, seals[name]))
      there = true
      setUp(desk)
    } catch (reason) {
      loading = undefined
      throw reason
    }
  }

  const loaded = () => (loading ??= load())

  /** Does the touch that waits once the script is there. */
  async function wait() {
    const timer = setTimeout(notify, patience, coming)
    try {
      await loaded()
      touched?.click()
    } catch {
      if (!desk.save()) notify(lost) // loaded once more, the page would lose what is typed
      else mend(() => notify(lost))
    }
    touched = undefined
    clearTimeout(timer)
    putAway(coming)
  }

  document.addEventListener('click', (event) => {
    const control = /** @type {Element} */ (event.target).closest(touches[name])
    if (there || !(control instanceof HTMLElement)) return
    event.preventDefault()
    event.stopPropagation()
    const waits = touched !== undefined
    touched = control
    if (!waits) void wait()
  }, { capture: true })

  return loaded
}

/** @param {Desk} desk */
export function setUpLater(desk) {
  const loaded = setUpScript(desk, 'later')
  const logLoaded = setUpScript(desk, 'log')

  // A job in the address is opened by that script.
  const open = () => { if (location.hash.includes('=')) loaded().catch(() => notify(lostLink)) }
  open()
  addEventListener('hashchange', open)
  let begun = false
  desk.onReply(() => {
    if (begun) return
    begun = true
    const idle = window.requestIdleCallback ?? setTimeout // WebKit has only the latter
    idle(() => {
      const both = [loaded(), hasLog.read() && logLoaded()]
      void Promise.allSettled(both).then(tried) // a touch tries again
    })
  })
}

/** What the log says of this bench stands there. */
const hasLog = stored('saltbite bench', (text) => text)
