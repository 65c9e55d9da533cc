/** Names of stored jobs, and dates as a name shows them. */
import { oneLine } from '../form/text.js'

/** How long a name may be, in characters; the fields that it is typed in say the same. */
const longest = 200

/**
 * A name in one line, and no longer than a name may be.
 *
 * @param {string} text
 */
export const nameOf = (text) => cut(oneLine(text), longest)

/**
 * The beginning of a text. A character of two code units is never split.
 *
 * @param {string} text
 * @param {number} length
 */
const cut = (text, length) => [...text.slice(0, 2 * length)].slice(0, length).join('').trim()

/**
 * A name without the number that made it unique.
 *
 * @param {string} name
 */
export const base = (name) => name.replace(/ \(\d+\)$/, '')

/**
 * Makes names unique among others: the result leaves a name as it is if it is free,
 * or adds the next free number, and remembers it as taken.
 *
 * @param {{name: string}[]} others
 */
export function namesBeside(others) {
  const taken = new Set(others.map(({ name }) => name))
  /** The next number to try, by the name that it is added to. @type {Map<string, number>} */
  const next = new Map()
  return (/** @type {string} */ name) => {
    const first = base(name)
    let free = name
    for (let number = next.get(first) ?? 2; taken.has(free); next.set(first, ++number)) {
      const end = ` (${number})`
      free = cut(first, longest - end.length) + end
    }
    taken.add(free)
    return free
  }
}

/**
 * When a job was saved: "25 Nov 14:05", or "25 Nov 2025".
 *
 * @param {number} time in milliseconds of the clock
 */
export function dateText(time) {
  const date = new Date(time)
  const old = date.getFullYear() !== new Date().getFullYear()
  return (old ? longAgo : thisYear)(date).replace(',', '')
}

/**
 * Formats dates. The format is made at the first of them, and once: a browser takes
 * long to make one.
 *
 * @param {Intl.DateTimeFormatOptions} options
 */
function dateFormat(options) {
  /** @type {Intl.DateTimeFormat | undefined} */
  let format
  return (/** @type {Date} */ date) => (format ??= new Intl.DateTimeFormat('en-GB', options)).format(date)
}

const thisYear = dateFormat({ day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' })
const longAgo = dateFormat({ day: 'numeric', month: 'short', year: 'numeric' })
