/**
 * Keeps the screen awake where the browser can. It lets go by itself when the
 * page is out of sight, so it is asked anew when the page is back.
 */

let wanted = false
let can = true

/** @type {WakeLockSentinel | undefined} */
let lock

/** @param {boolean} awake */
export function stayAwake(awake) {
  if (wanted === awake) return
  wanted = awake
  void ask()
}

/** Whether it could when it was last asked. */
export const canStayAwake = () => can

async function ask() {
  if (wanted && document.visibilityState !== 'visible') return
  try {
    await lock?.release()
    lock = wanted ? await navigator.wakeLock.request('screen') : undefined
    can = true
    if (!wanted) await lock?.release() // it ended meanwhile
  } catch {
    can = false
  }
}

document.addEventListener('visibilitychange', ask)
