/**
 * The safety part points at the line of the bath's own salt, whether that was
 * typed or is the metal's own.
 */
import { at, put } from './element.js'

const lines = [...at('safety').children].map((line) => /** @type {HTMLElement} */ (line))
const gist = at('safety-gist')

/** @param {import('../engine/client.js').Reply} reply */
export function showSafety({ salt = '' }) {
  const own = lines.find((line) => line.dataset.salt?.split('|').includes(salt))
  for (const line of lines) line.classList.toggle('own', line === own)
  put(gist, own?.dataset.brief ?? gist.dataset.hint ?? '')
  gist.classList.toggle('given', own !== undefined)
}
