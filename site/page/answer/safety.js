/**
 * Marks the line about the bath's salt in the safety part, whether the salt was
 * typed or follows from the metal.
 */
import { byId, put } from '../element.js'

const lines = [...byId('safety').children].map((line) => /** @type {HTMLElement} */ (line))
const gist = byId('safety-gist')

/** @param {import('../../engine/client.js').Reply} reply */
export function showSafety({ salt = '' }) {
  const own = lines.find((line) => line.dataset.salt?.split('|').includes(salt))
  for (const line of lines) line.classList.toggle('own', line === own)
  put(gist, own?.dataset.brief ?? gist.dataset.hint ?? '')
  gist.classList.toggle('given', own !== undefined)
}
