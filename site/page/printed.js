/** What only paper says: the day, and the metal by its full name. */
import { put } from './element.js'

const place = /** @type {HTMLElement} */ (document.getElementById('printed'))

/** @type {import('../engine/client.js').MetalRow | undefined} */
let metal

/** @param {import('../engine/client.js').MetalRow | undefined} row what was read as the metal */
export function showPrinted(row) {
  metal = row
  date()
}

function date() {
  const day = new Date().toLocaleDateString('en-GB', { dateStyle: 'long' })
  put(place, [metal?.name, metal?.composition, `printed ${day}`].filter(Boolean).join(' · '))
}

addEventListener('beforeprint', date)
