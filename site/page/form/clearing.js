/** A way out of a contradiction: another part of the page asks for a field to be cleared. */

/** @param {import('../page.js').Desk} desk */
export function setUpClearing({ form, undoably }) {
  document.addEventListener('clear-field', (event) => {
    const name = event instanceof CustomEvent ? String(event.detail) : ''
    if (form.typedInto(name) && !form.locked.has(name)) undoably(() => form.write(name, ''))
  })
}
