/**
 * Keeps the screen awake where the browser can. The system may release the
 * lock at any time, and does so while the page is hidden: then it is requested again.
 */

let wanted = false
let can = true

/** @type {WakeLockSentinel | undefined} */
let lock

/** To be called repeatedly while it is wanted. @param {boolean} awake */
export function stayAwake(awake) {
  if (wanted === awake && !lock?.released) return
  wanted = awake
  ask()
}

/** Whether the last request succeeded. */
export const canStayAwake = () => can

/** The pending requests: one after the other, so that no lock is lost. */
let turn = Promise.resolve()

function ask() {
  turn = turn.then(askOnce)
}

async function askOnce() {
  if (wanted && (document.visibilityState !== 'visible' || lock?.released === false)) return
  try {
    await lock?.release()
    lock = wanted ? await navigator.wakeLock.request('screen') : undefined
    can = true
  } catch {
    can = false
  }
}

document.addEventListener('visibilitychange', ask)
