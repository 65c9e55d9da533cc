/**
 * Values that outlast a reload, each under a key of its own. All tabs of the page
 * share a value; a tab may also have its own, which then takes precedence; a new
 * tab begins with the shared one.
 *
 * Storage may be missing, full, or throw when it is looked at, and what is in it
 * may be damaged: then there is no value, and the page works without.
 */

/**
 * @template T
 * @typedef {object} Stored
 * @property {() => T | undefined} read undefined if there is no valid value
 * @property {(text: string) => boolean} write '' removes it; false if it would not be read after a reload
 * @property {(hear: (value: T | undefined) => void) => void} onChange calls with what another tab has written
 */

/**
 * @template T
 * @param {string} key
 * @param {(text: string) => T | undefined} parse undefined, or a throw, for a damaged text
 * @param {{ofTab?: boolean}} [scope] whether a tab has its own
 * @returns {Stored<T>}
 */
export function stored(key, parse, { ofTab = false } = {}) {
  const places = ofTab ? [() => sessionStorage, () => localStorage] : [() => localStorage]

  /** @param {() => Storage} place */
  const valueIn = (place) => attempt(() => {
    const text = place().getItem(key)
    return text ? parse(text) : undefined
  })

  const read = () => places.map(valueIn).find((value) => value !== undefined)

  return {
    read,
    write(text) {
      for (const place of places) attempt(() => (text ? place().setItem(key, text) : place().removeItem(key)))
      return places.map((place) => attempt(() => place().getItem(key))).find(Boolean) === text
    },
    onChange(hear) {
      addEventListener('storage', ({ key: changed }) => {
        if (changed === key || changed === null) hear(read()) // null: all of it was cleared
      })
    },
  }
}

/**
 * @template T
 * @param {() => T} work
 * @returns {T | undefined} undefined where the work throws
 */
function attempt(work) {
  try {
    return work()
  } catch {
    return undefined
  }
}
