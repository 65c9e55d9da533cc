/**
 * Dialogs over the page. A button with data-close closes one, and so does a press
 * outside it, except for a question. The focus returns to where it was.
 */
import { byId } from './element.js'

/**
 * @param {string} id
 * @returns {HTMLDialogElement}
 */
export function dialogOf(id) {
  return /** @type {HTMLDialogElement} */ (byId(id))
}

/**
 * @param {HTMLDialogElement} dialog
 * @param {HTMLElement | null} [from] where the focus returns to: not every engine focuses a pressed button
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
