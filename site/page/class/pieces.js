/**
 * The rows of pieces. A blank cell of a metal, a size, a share or a depth is as in the
 * row above, and shows that; a blank row stands at the end, and counts for nothing.
 *
 * Enter leads to the next row, Tab to the next cell; several cells that are pasted fill
 * several rows.
 */
import { byId, frameOf, put } from '../element.js'
import { sizeFields, sizeText } from './size.js'
import { columns, pastedRows } from './spreadsheet.js'

/**
 * @typedef {import('../../engine/client.js').Mistake} Mistake
 * @typedef {import('./text.js').Named} Named
 * @typedef {typeof columns[number]} Column
 *
 * @typedef {object} Row
 * @property {HTMLElement} element
 * @property {Record<Column, HTMLInputElement>} cells
 * @property {Record<string, string>} others fields that have no cell here and came with a kept job
 * @property {Column[]} laid the cells that came filled with the class, and may be locked
 */

/** The columns of which a blank cell is as in the row above. */
const alike = /** @type {const} */ (['metal', 'size', 'open', 'depth'])

/** The cell at which a mistake in a field is shown. @type {Record<string, Column>} */
const cellOf = { width: 'size', height: 'size', diameter: 'size', area: 'size', salt: 'metal' }

const list = byId('pieces')

/** @type {Row[]} */
const rows = []

/** @param {Row} row */
const isBlank = ({ cells, others }) => Object.keys(others).length === 0 && columns.every((column) => cells[column].value.trim() === '')

function add() {
  const element = frameOf('piece')
  const cells = /** @type {Row['cells']} */ (Object.fromEntries(columns.map((column) => [column, element.querySelector(`[data-cell=${column}]`)])))
  const wrong = /** @type {HTMLElement} */ (element.querySelector('.wrong'))
  wrong.id = `wrong-${made++}`
  for (const cell of Object.values(cells)) cell.setAttribute('aria-describedby', wrong.id)
  /** @type {Row} */
  const row = { element, cells, others: {}, laid: [] }
  rows.push(row)
  list.append(element)
  return row
}

/** The columns that a link locks. @type {string[]} */
let locked = []

/**
 * A cell of a locked column is locked if it came filled, or is as such a cell above it.
 * Where nothing stands the person who opens the link has to fill it.
 *
 * @param {Column} column
 * @param {number} place of the row
 */
const isLocked = (column, place) => locked.includes(column) &&
  (column === 'pieces' || rows.slice(0, place + 1).some(({ laid }) => laid.includes(column))) // blank is one piece

/** Says whether some cell is locked. */
export const someLocked = () => columns.some((column) => isLocked(column, rows.length))

/** @param {string[]} names of columns of which from now on can't be changed what stands there */
export function lockColumns(names) {
  locked = names
  tidy()
}

/** How many rows were made: each has an id of its own. */
let made = 0

/** A blank row stands at the end, and each row shows its number and what it takes from above. */
function tidy() {
  if (rows.length === 0 || !isBlank(rows[rows.length - 1])) add()
  /** @type {Partial<Record<Column, string>>} */
  const above = { pieces: '1' }
  for (const [place, { element, cells, laid }] of rows.entries()) {
    const remove = /** @type {HTMLButtonElement} */ (element.querySelector('.remove'))
    remove.disabled = laid.some((column) => locked.includes(column))
    put(element.querySelector('.number'), `${place + 1}`)
    cells.name.placeholder = `piece ${place + 1}`
    for (const column of columns) {
      const cell = cells[column]
      if (column !== 'name') cell.placeholder = above[column] ?? ''
      if (alike.includes(/** @type {typeof alike[number]} */ (column)) && cell.value.trim()) above[column] = cell.value.trim()
      cell.readOnly = isLocked(column, place)
      cell.setAttribute('aria-label', `${cell.dataset.label}, row ${place + 1}`)
    }
  }
}

/** The rows that hold something. */
const filled = () => rows.filter((row) => !isBlank(row))

/**
 * The rows as they are sent, or as they were typed.
 *
 * @param {{asTyped?: boolean}} [how]
 * @returns {Named[]}
 */
export function pieceRows({ asTyped = false } = {}) {
  return filled().map(({ cells, others, laid }) => {
    const text = (/** @type {Column} */ column) => {
      const { value, placeholder } = cells[column]
      return value.trim() || (asTyped || column === 'pieces' ? '' : placeholder)
    }
    const size = sizeFields(text('size'))
    const open = size.area ? cells.open.value.trim() : text('open') // an area needs no share
    const fields = { ...others, metal: text('metal'), ...size, open, depth: text('depth'), pieces: text('pieces') }
    const free = columns.filter((column) => locked.includes(column) && cells[column].value && !laid.includes(column))
    return { name: text('name'), fields: Object.fromEntries(Object.entries(fields).filter(([, value]) => value)), free }
  })
}

/** Puts rows in the place of those that are there. @param {Named[]} named */
export function layRows(named) {
  rows.length = 0
  list.replaceChildren()
  addRows(named)
  for (const [place, { free = [] }] of named.entries()) {
    const { cells } = rows[place]
    rows[place].laid = columns.filter((column) => cells[column].value && !free.includes(column))
  }
}

/** Adds rows after those that are there. @param {Named[]} named */
export function addRows(named) {
  if (rows.length > 0) rows.pop()?.element.remove() // the blank one
  for (const { name, fields } of named) {
    const { metal = '', open = '', depth = '', pieces = '', width, height, diameter, area, ...others } = fields
    const row = add()
    write(row, { name, metal, size: sizeText({ width, height, diameter, area }), open, depth, pieces })
    row.others = others
  }
  tidy()
}

/** @param {Row} row @param {Record<string, string>} texts */
function write(row, texts) {
  const place = rows.indexOf(row)
  for (const column of columns) if (texts[column] && !isLocked(column, place)) row.cells[column].value = texts[column]
}

/**
 * Shows mistakes under their rows, by their places among the rows that are sent.
 *
 * @param {(Mistake & {row?: number})[]} mistakes
 */
export function showMistakes(mistakes) {
  const sent = filled()
  for (const row of rows) {
    const own = mistakes.filter((mistake) => mistake.row !== undefined && sent[mistake.row] === row)
    const wrong = own.filter(({ code }) => code !== 'missing')
    const lacking = [...new Set(own.filter(({ code }) => code === 'missing').map(({ field }) => row.cells[cellAt(field)].dataset.label))]
    const said = wrong.length > 0 ? [...new Set(wrong.map(({ text }) => text))].join(' ') : lacking.length > 0 ? `Needed: ${lacking.join(', ')}` : ''
    const place = row.element.querySelector('.wrong')
    put(place, said)
    place?.classList.toggle('lacking', wrong.length === 0)
    for (const column of columns) {
      if (wrong.some(({ field }) => cellAt(field) === column)) row.cells[column].setAttribute('aria-invalid', 'true')
      else row.cells[column].removeAttribute('aria-invalid')
    }
  }
}

/** @param {string} field @returns {Column} */
const cellAt = (field) => cellOf[field] ?? columns.find((column) => column === field) ?? 'name'

/** The place of a control: its row, from 0, and its column. @param {EventTarget | null} control */
function placeOf(control) {
  const place = rows.findIndex(({ element }) => element.contains(/** @type {Node} */ (control)))
  const column = columns.find((name) => rows[place]?.cells[name] === control)
  return { place, column }
}

/** @param {() => void} changed is called after the rows have changed */
export function setUpPieces(changed) {
  const change = () => {
    tidy()
    changed()
  }
  list.addEventListener('input', change)

  list.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element) || !target.closest('.remove')) return
    const { place } = placeOf(target)
    rows.splice(place, 1)[0]?.element.remove()
    change()
    rows[Math.min(place, rows.length - 1)]?.cells.name.focus()
  })

  list.addEventListener('keydown', (event) => {
    const { place, column } = placeOf(event.target)
    if (!column || event.isComposing) return
    const step = { Enter: event.shiftKey ? -1 : 1, ArrowDown: 1, ArrowUp: -1 }[event.key]
    if (!step || event.key !== 'Enter' && column === 'metal') return // which has a list of its own
    event.preventDefault()
    event.stopPropagation() // among the fields beside the rows Enter leads elsewhere
    const next = rows[place + step]?.cells[event.key === 'Enter' ? 'name' : column]
    next?.focus()
    next?.select()
  })

  list.addEventListener('paste', (event) => {
    const text = event.clipboardData?.getData('text/plain') ?? ''
    const { place, column } = placeOf(event.target)
    if (!column || !/[\t\n\r]/.test(text.trim())) return
    event.preventDefault()
    for (const [below, cells] of lines(text, column).entries()) write(rows[place + below] ?? add(), cells)
    change()
  })

  tidy()
}

/**
 * What is pasted into a column. One column of a spreadsheet goes down that column.
 *
 * @param {string} text
 * @param {Column} column
 * @returns {Record<string, string>[]}
 */
function lines(text, column) {
  if (text.includes('\t')) return pastedRows(text)
  return text.trim().split(/[\r\n]+/).map((one) => ({ [column]: one.trim() }))
}
