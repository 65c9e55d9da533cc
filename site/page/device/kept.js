/**
 * Says for how long the browser keeps what is saved on this device, and how the page
 * is installed in this browser. It claims no more than the browser has said.
 */
import { byId, put } from '../element.js'

/**
 * A browser's offer to install the page (Web Application Manifest, incubations: beforeinstallprompt).
 *
 * @typedef {Event & {prompt: () => Promise<unknown>}} InstallOffer
 */

const place = /** @type {HTMLDetailsElement} */ (byId('kept'))
const long = byId('kept-long')
const ask = byId('kept-ask')
const how = byId('kept-install')
const install = byId('install')

/** @param {(of: string) => string} words a sentence by its name */
export function setUpKept(words) {
  const installed = matchMedia('(display-mode: standalone)').matches
  byId('kept-apple').hidden = installed || !isApple()
  put(how, words(installed ? 'installed' : howToInstall()))
  // An installed page asks at once: no browser disturbs the user for it then.
  if (installed) void storage()?.persist?.().catch(() => {})
  place.addEventListener('toggle', () => { if (place.open) void showLong() })

  /** @param {boolean} [refused] whether the browser has just refused */
  async function showLong(refused = false) {
    const lasting = await storage()?.persisted?.().catch(() => undefined)
    put(long, words(lasting ? 'lasting' : refused ? 'refused' : lasting === false ? 'passing' : 'unsaid'))
    ask.hidden = lasting !== false || refused
  }

  ask.addEventListener('click', async () => {
    const given = await storage()?.persist().catch(() => false)
    await showLong(!given)
  })

  addEventListener('beforeinstallprompt', (event) => {
    const offer = /** @type {InstallOffer} */ (event)
    offer.preventDefault()
    put(how, words('prompt'))
    install.hidden = false
    install.onclick = () => void offer.prompt()
  })
  addEventListener('appinstalled', () => {
    put(how, words('installed'))
    install.hidden = true
  })
}

/** A page over plain http has none, and in a sandbox the property may throw. @returns {StorageManager | undefined} */
function storage() {
  try {
    return navigator.storage
  } catch {
    return undefined
  }
}

const isApple = () => navigator.vendor.startsWith('Apple')

/** Which words say how this browser installs a page: browsers offer no other way to tell. */
function howToInstall() {
  const { userAgent, maxTouchPoints } = navigator
  const isMobileApple = /iP(hone|ad|od)/.test(userAgent) || (isApple() && maxTouchPoints > 1)
  if (isMobileApple) return 'ios'
  if (/Android/.test(userAgent)) return 'android'
  if (isApple()) return 'safari'
  return /Firefox/.test(userAgent) ? 'firefox' : 'other'
}
