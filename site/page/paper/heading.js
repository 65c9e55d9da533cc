/**
 * What only the printed page shows: the date, and the metal by its full name.
 * Folded parts that hold something are opened for printing.
 */
import { byId, put } from '../element.js'

const place = byId('printed')

/** @type {import('../../engine/client.js').MetalRow | undefined} */
let metal

/** @param {import('../../engine/client.js').MetalRow | undefined} row what was read as the metal */
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
