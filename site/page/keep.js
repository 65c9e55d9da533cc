/**
 * Keeps the sheet over a reload, under one key: a line of what was typed and a
 * line of the unit controls, each in the text form of a set of fields. Storage
 * may be missing, full, or throw when it is looked at: then nothing is kept.
 */
const key = 'saltbite'

/** @param {import('./sheet.js').Kept} kept */
export function save({ typed, units }) {
  try {
    localStorage.setItem(key, `${new URLSearchParams(typed)}\n${new URLSearchParams(units)}`)
  } catch {
    // The page works with nothing kept.
  }
}

/** @returns {import('./sheet.js').Kept | undefined} */
export function load() {
  try {
    const text = localStorage.getItem(key)
    if (text === null) return undefined
    const [typed = '', units = ''] = text.split('\n')
    return { typed: read(typed), units: read(units) }
  } catch {
    return undefined
  }
}

/** @param {string} text */
export function read(text) {
  return Object.fromEntries(new URLSearchParams(text))
}
