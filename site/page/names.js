/** Names of kept jobs, and dates as they stand in one. */

/** How long a name may be, in characters. */
export const longest = 80

/**
 * A name without the number that told it apart.
 *
 * @param {string} name
 */
export const base = (name) => name.replace(/ \(\d+\)$/, '')

/**
 * A name as it may stand among others: if it is taken, with the next number.
 *
 * @param {string} name
 * @param {{name: string}[]} others
 */
export function apart(name, others) {
  let free = name
  for (let number = 2; others.some((other) => other.name === free); number++) free = `${base(name)} (${number})`
  return free
}

/**
 * When a job was saved: "25 Nov 14:05", or "25 Nov 2025".
 *
 * @param {number} time in milliseconds of the clock
 */
export function dateText(time) {
  const date = new Date(time)
  const old = date.getFullYear() !== new Date().getFullYear()
  const clock = old ? undefined : '2-digit'
  const year = old ? 'numeric' : undefined
  return date.toLocaleString('en-GB', { day: 'numeric', month: 'short', year, hour: clock, minute: clock }).replace(',', '')
}
