/** Announces what a run has reached beside its sound: by vibration, and by a notification where it was asked for. */

const pattern = [400, 200, 400, 200, 800]

/** Vibrates where the device can; a browser refuses while the page is hidden. */
export function vibrate() {
  navigator.vibrate?.(pattern)
}

/** Whether this browser can show notifications for this page, or has been told not to. */
export const canNotify = () => isSecureContext && typeof Notification === 'function' && Notification.permission !== 'denied'

/** Asks the user, to be called from a touch. True if notifications may be shown. */
export async function askToNotify() {
  try {
    return await Notification.requestPermission() === 'granted'
  } catch {
    return false
  }
}

/** Shows a notification if the page is not seen. @param {string} text */
export async function notifyHidden(text) {
  if (!document.hidden || !canNotify() || Notification.permission !== 'granted') return
  const options = { body: text, tag: 'run', requireInteraction: true }
  try {
    const shown = new Notification('Saltbite', options)
    shown.onclick = () => {
      window.focus()
      shown.close()
    }
  } catch { // on Android only a service worker may
    await navigator.serviceWorker?.getRegistration().then((registration) => registration?.showNotification('Saltbite', options)).catch(() => {})
  }
}
