/**
 * The one text form of a set of fields, as URLSearchParams writes it:
 * "metal=sterling&depth=0.25+mm".
 *
 * Values are made text before they cross to the worker: text stands as it is, a
 * finite number is written out, anything else counts as not given. So a DOM node
 * or a function in a request can't stop the message from being posted, and no
 * value, whatever its type, makes this throw.
 *
 * @param {unknown} fields
 * @returns {string}
 */
export function textOf(fields) {
  const form = new URLSearchParams()
  for (const name of namesOf(fields)) {
    const text = valueText(() => /** @type {Record<string, unknown>} */ (fields)[name])
    if (text !== '') form.append(name, text)
  }
  return form.toString()
}

/**
 * Many sets of fields in one text: first those that stand beside the rows, then a
 * block for each row, under its name.
 *
 * @param {unknown} rows
 * @param {unknown} fields
 */
export function rowsText(rows, fields) {
  const blocks = [block('fields', textOf(fields))]
  for (const row of Array.isArray(rows) ? rows : []) {
    const own = typeof row === 'object' && row !== null ? row : {}
    const name = valueText(() => own.name).replace(/[\s[\]]+/g, ' ').trim()
    blocks.push(block(name, textOf(without(own, 'name'))))
  }
  return blocks.join('\n')
}

/** @param {string} name @param {string} text */
const block = (name, text) => `[${name}]\n${text.replaceAll('&', '\n')}`

/** @param {object} fields @param {string} left */
function without(fields, left) {
  try {
    return { ...fields, [left]: '' }
  } catch {
    return {} // a getter may throw
  }
}

/**
 * @param {unknown} fields
 * @returns {string[]}
 */
function namesOf(fields) {
  if (typeof fields !== 'object' || fields === null) return []
  try {
    return Object.keys(fields)
  } catch {
    return [] // a proxy may refuse
  }
}

/**
 * @param {() => unknown} get a getter may throw
 * @returns {string}
 */
export function valueText(get) {
  try {
    const value = get()
    if (typeof value === 'string') return value
    return typeof value === 'number' && Number.isFinite(value) ? String(value) : ''
  } catch {
    return ''
  }
}
