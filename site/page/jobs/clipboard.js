/** Copies the content of a field. */

const byHand = 'Press Ctrl and C, or hold a finger on it and choose Copy.'

/**
 * Copies the text of a field, or selects it to be copied by hand. Says which of the two.
 *
 * @param {HTMLTextAreaElement} field
 */
export async function copyField(field) {
  const { what } = field.dataset
  try {
    await navigator.clipboard.writeText(field.value)
    return `${what} is copied.`
  } catch {
    field.select()
    return `${what} is marked, for ${isSecureContext ? 'this browser lets no page copy' : 'a page at an http: address may not copy'} by itself. ${byHand}`
  }
}
