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
  const taken = new Set(others.map((other) => other.name))
  let free = name
  for (let number = 2; taken.has(free); number++) free = `${base(name)} (${number})`
  return free
}

const thisYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' })
const otherYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' })

/**
 * When a job was saved: "25 Nov 14:05", or "25 Nov 2025".
 *
 * @param {number} time in milliseconds of the clock
 */
export function dateText(time) {
  const format = new Date(time).getFullYear() === new Date().getFullYear() ? thisYear : otherYear
  return format.format(time).replace(',', '')
}
