/**
 * Dialogs over the page. A button with data-close in one closes it, and so does a
 * press beside it, but for one that asks; the focus goes back to where it was.
 */
import { at } from './element.js'

/**
 * @param {string} id
 * @returns {HTMLDialogElement}
 */
export function dialogOf(id) {
  return /** @type {HTMLDialogElement} */ (at(id))
}

/**
 * @param {HTMLDialogElement} dialog
 * @param {HTMLElement | null} [from] where the focus goes back to: not every engine focuses a button that is pressed
 */
export function openDialog(dialog, from) {
  if (dialog.open) return
  dialog.addEventListener('close', () => from?.focus(), { once: true })
  dialog.showModal()
}

document.addEventListener('click', ({ target }) => {
  const pressed = /** @type {Element} */ (target)
  if (pressed.closest('[data-close]')) pressed.closest('dialog')?.close()
  // Beside a dialog is its backdrop.
  else if (pressed instanceof HTMLDialogElement && !pressed.matches('.asks')) pressed.close()
})
