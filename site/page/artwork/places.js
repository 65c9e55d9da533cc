/** Places on a picture in the text form of their field, "12 30; 980 44": across and down, in whole numbers. */

/** @typedef {import('./handle.js').Place} Place */

/** @param {Place[]} places */
export const textOf = (places) => places.map(({ x, y }) => `${Math.round(x)} ${Math.round(y)}`).join('; ')

/** @param {string} text @param {number} count @returns {Place[] | undefined} */
export function placesOf(text, count) {
  const numbers = text.match(/-?\d+/g)?.map(Number) ?? []
  if (numbers.length !== 2 * count) return undefined
  return Array.from({ length: count }, (_, at) => ({ x: numbers[2 * at], y: numbers[2 * at + 1] }))
}
