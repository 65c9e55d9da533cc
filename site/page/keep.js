/**
 * Keeps the sheet over a reload, under one key: a line of what was typed, a line
 * of the unit controls and a line of the kept job it was opened from, each in the
 * text form of a set of fields. A tab keeps its own, which no other tab writes
 * over; a new tab begins with what was typed last in any. Storage may be missing,
 * full, or throw when it is looked at: then nothing is kept.
 */
const key = 'saltbite'

/** The tab's own, then that of all tabs. */
const stores = [() => sessionStorage, () => localStorage]

/**
 * @param {import('./sheet.js').Kept} kept
 * @returns {boolean} whether it would be there after a reload
 */
export function save({ typed, units, of }) {
  const from = of && { ...of, id: String(of.id), saved: String(of.saved) }
  const text = [typed, units, from].map((fields) => new URLSearchParams(fields)).join('\n')
  for (const store of stores) attempt(() => store().setItem(key, text))
  return there() === text
}

/** @returns {import('./sheet.js').Kept | undefined} */
export function load() {
  const text = there()
  if (!text) return undefined
  const [typed, units, { id, name, saved }] = text.split('\n').concat('').map(read)
  return { typed, units, of: id ? { id: Number(id), name, saved: Number(saved) } : undefined }
}

/** The text that is kept: the tab's own before that of all tabs. */
function there() {
  for (const store of stores) {
    const text = attempt(() => store().getItem(key))
    if (text) return text
  }
  return undefined
}

/**
 * @template T
 * @param {() => T} work
 * @returns {T | undefined} undefined where there is no storage: the page works with nothing kept
 */
function attempt(work) {
  try {
    return work()
  } catch {
    return undefined
  }
}

/** @param {string} text */
export function read(text) {
  return Object.fromEntries(new URLSearchParams(text))
}
