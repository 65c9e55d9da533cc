/** What the two sides of a frame have in common when they read a message. */

/** The number of the protocol: it changes when an older side would misread a newer one. */
export const protocol = 1

/** The longest text that is taken as a field. */
const longest = 2000

/**
 * What something has as its own under a name: nothing that its prototype has.
 *
 * @param {unknown} thing
 * @param {string} name
 * @returns {unknown}
 */
export function own(thing, name) {
  if (typeof thing !== 'object' || thing === null) return undefined
  return Object.getOwnPropertyDescriptor(thing, name)?.value
}

/**
 * Those of the names under which something has a text, with their texts.
 *
 * @param {unknown} thing
 * @param {Iterable<string>} names
 */
export function textsOf(thing, names) {
  /** @type {Record<string, string>} */
  const texts = {}
  for (const name of names) {
    const value = own(thing, name)
    const text = typeof value === 'number' && Number.isFinite(value) ? String(value) : value
    if (typeof text === 'string' && text.length <= longest) texts[name] = text
  }
  return texts
}

/**
 * The names in a list that is parted by blanks or commas, in lower case.
 *
 * @param {string} list
 */
export function namesIn(list) {
  return new Set(list.toLowerCase().split(/[\s,]+/).filter(Boolean))
}
