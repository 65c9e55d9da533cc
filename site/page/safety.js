/**
 * The safety part points at the line of the bath's own salt, whether that was
 * typed or is the metal's own.
 */
import { put } from './element.js'

const lines = [.../** @type {HTMLElement} */ (document.getElementById('safety')).children].map((line) => /** @type {HTMLElement} */ (line))
const gist = /** @type {HTMLElement} */ (document.getElementById('safety-gist'))

/** @param {import('../engine/client.js').Reply} reply */
export function showSafety({ salt = '' }) {
  const own = lines.find((line) => line.dataset.salt?.split('|').includes(salt))
  for (const line of lines) line.classList.toggle('own', line === own)
  put(gist, own?.dataset.brief ?? gist.dataset.hint ?? '')
  gist.classList.toggle('given', own !== undefined)
}
