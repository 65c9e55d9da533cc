/**
 * What only paper says: the day, and the metal by its full name. What is given
 * in a part that is folded away is printed as well.
 */
import { at, put } from './element.js'

const place = at('printed')

/** @type {import('../engine/client.js').MetalRow | undefined} */
let metal

/** @param {import('../engine/client.js').MetalRow | undefined} row what was read as the metal */
export function setPrinted(row) {
  metal = row
}

/** The parts that are unfolded for the print. @type {HTMLDetailsElement[]} */
let unfolded = []

addEventListener('beforeprint', () => {
  const day = new Date().toLocaleDateString('en-GB', { dateStyle: 'long' })
  put(place, [metal?.name, metal?.composition, `printed ${day}`].filter(Boolean).join(' · '))
  unfolded = [...document.querySelectorAll('details')].filter((part) => part.matches('.used:not([open])'))
  for (const part of unfolded) part.open = true
})

addEventListener('afterprint', () => {
  for (const part of unfolded) part.open = false
  unfolded = []
})
