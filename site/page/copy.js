/** Copying what a field holds. */

const byHand = 'Press Ctrl and C, or hold a finger on it and choose Copy.'

/**
 * Copies a field's text, or else marks it, to be copied by hand; says which.
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
