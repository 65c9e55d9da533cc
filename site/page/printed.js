/**
 * What only paper says: the day, and the metal by its full name. What is given
 * in a part that is folded away is printed as well.
 */
import { at, put } from './element.js'

const place = at('printed')

/** Made once: that takes an engine longer than the rest of a reply. */
const days = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' })

/** @type {import('../engine/client.js').MetalRow | undefined} */
let metal

/** @param {import('../engine/client.js').MetalRow | undefined} row what was read as the metal */
export function showPrinted(row) {
  if (place.textContent !== '' && row?.id === metal?.id && row?.composition === metal?.composition) return
  metal = row
  date()
}

function date() {
  put(place, [metal?.name, metal?.composition, `printed ${days.format(new Date())}`].filter(Boolean).join(' · '))
}

/** The parts that are unfolded for the print. @type {HTMLDetailsElement[]} */
let unfolded = []

addEventListener('beforeprint', () => {
  date()
  unfolded = [...document.querySelectorAll('details')].filter((part) => part.matches('.used:not([open])'))
  for (const part of unfolded) part.open = true
})

addEventListener('afterprint', () => {
  for (const part of unfolded) part.open = false
  unfolded = []
})
