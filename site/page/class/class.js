/**
 * The page for a class: rows of pieces, a supply and the time in, a timetable out, at
 * every keystroke. No quantity is calculated here.
 */
import { stored } from '../device/stored.js'
import { byId, put } from '../element.js'
import { newestOnly } from '../answer/newest.js'
import { setUpHabits } from '../form/habits.js'
import { copyField } from '../jobs/clipboard.js'
import { notify } from '../notice.js'
import { mend } from '../../offline/mend.js'
import { opening } from '../start/bench.js'
import { Beside } from './beside.js'
import { setUpClock, startOf } from './clock.js'
import { setUpKept } from './kept.js'
import { addRows, layRows, lockColumns, pieceRows, setUpPieces, showMistakes, someLocked } from './pieces.js'
import { showPlan } from './plan.js'
import { classText, readClass } from './text.js'

/**
 * @typedef {import('../../engine/client.js').Many} Many
 * @typedef {import('./text.js').Class} Class
 */

const place = /** @type {HTMLFieldSetElement} */ (byId('class'))
const clear = /** @type {HTMLButtonElement} */ (byId('clear'))
const beside = new Beside(place)
const kept = stored('saltbite-class', (text) => text, { ofTab: true })

/** @type {import('../../engine/client.js').Bench | undefined} */
let bench

/** @returns {Class} */
const taught = () => ({ fields: beside.fields(), rows: pieceRows() })

/** What a link set for good: fields beside the rows, and columns. @type {string[]} */
let locked = []

/**
 * The form in the one text form, with the cells that were typed only.
 *
 * @param {string[]} [also] columns and fields that are locked from now on, with what anyone has filled in there
 */
function typed(also = []) {
  const rows = pieceRows({ asTyped: true }).map((row) => ({ ...row, free: row.free?.filter((column) => !also.includes(column)) }))
  return classText({ fields: beside.fields(), rows, lock: [...locked, ...also] })
}

/** Asks for the plan of the form, or of the class under way. */
const plan = newestOnly(async () => {
  if (!bench) return
  const run = clock.run()
  const asked = run ? readClass(run.text) : taught()
  if (run) asked.fields = { ...asked.fields, start: startOf(run) }
  place.disabled = run !== undefined
  clear.disabled = run !== undefined
  byId('while-run').hidden = run === undefined
  if (!asked.rows[0]) return show(nothing, '')
  const first = await bench.batch(classText(asked), {})
  if (!run) showMistakes(first.errors)
  if (!run) beside.show(first.errors.filter(({ row }) => row === undefined))
  const wrong = new Set(first.errors.map(({ row }) => row).filter((row) => row !== undefined))
  const whole = asked.rows.filter((_, row) => !wrong.has(row))
  if (!wrong.size || !whole[0]) return show(first, '')
  const names = asked.rows.map(({ name }, row) => name || `piece ${row + 1}`).filter((_, row) => wrong.has(row))
  show(await bench.batch(classText({ ...asked, rows: whole }), {}), `Not in the plan yet: ${names.join(', ')}.`)
})

/** @type {Many} */
const nothing = { sentence: '', answers: {}, rows: { runs: [] }, plan: [], cautions: [], errors: [] }

/** @param {Many} reply @param {string} left */
function show(reply, left) {
  if (reply === nothing) {
    showMistakes([])
    beside.show([])
  }
  showPlan(reply, left)
  clock.take(reply.rows.steps ?? [])
  document.documentElement.dataset.answered = ''
}

/** How long after the last key the form is kept, in milliseconds. */
const rest = 300

/** @type {ReturnType<typeof setTimeout> | undefined} */
let resting

function changed() {
  void plan()
  clearTimeout(resting)
  resting = setTimeout(save, rest)
}

function save() {
  clearTimeout(resting)
  kept.write(typed())
}

/** @param {Class} next */
function lay({ fields, rows, lock = [] }) {
  locked = lock
  lockColumns([])
  beside.restore(fields)
  layRows(rows)
  beside.lock(lock)
  lockColumns(lock)
  byId('locked').hidden = !someLocked() && !lock.some((name) => beside.controls.has(name))
  changed()
}

/** The form with nothing on it but what is locked, which of each column is its first cell's. */
function lockedOnly() {
  const { fields, rows, lock } = readClass(typed())
  /** @param {Record<string, string>} all @param {string[]} names */
  const only = (all, names) => Object.fromEntries(Object.entries(all).filter(([name]) => names.includes(name)))
  const first = lock.map((column) => rows.filter(({ free }) => !free?.includes(column))
    .map(({ fields }) => only(fields, column === 'size' ? ['width', 'height', 'diameter', 'area'] : [column]))
    .find((own) => Object.keys(own)[0]))
  return { fields: only(fields, lock), rows: [{ name: '', fields: Object.assign({}, ...first) }], lock }
}

const clock = setUpClock({ text: () => classText(taught()), turned: () => void plan() })

place.addEventListener('submit', (event) => event.preventDefault())
for (const { input, unit } of beside.controls.values()) {
  for (const control of [input, unit]) control?.addEventListener('input', changed)
}
addEventListener('pagehide', save)
document.addEventListener('visibilitychange', save)

setUpHabits(place)
setUpPieces(changed)
setUpKept((rows) => {
  addRows(rows)
  changed()
})

clear.addEventListener('click', () => {
  const before = readClass(typed())
  lay(lockedOnly())
  notify('The class is cleared.', { word: 'Take back', work: () => lay(before) })
})
byId('print').addEventListener('click', () => window.print())

const address = /** @type {HTMLTextAreaElement} */ (byId('address'))
const copied = byId('copied')
const locks = /** @type {HTMLInputElement[]} */ ([...byId('locks').querySelectorAll('input')])

/** The link, with what it locks beside what is locked here. */
function showLink() {
  const names = locks.filter(({ checked }) => checked).map(({ value }) => value)
  address.value = `${location.href.replace(/#.*/, '')}#${encodeURIComponent(typed(names))}`
  copied.textContent = ''
}
byId('link').addEventListener('toggle', showLink)
byId('locks').addEventListener('change', showLink)
byId('copy').addEventListener('click', async () => { copied.textContent = await copyField(address) })

/** Opens the class in the address; what was on the form can be taken back. */
function openLink() {
  if (!location.hash.includes('%5B')) return
  const before = typed()
  const { faults, ...next } = readClass(decoded(location.hash.slice(1)))
  history.replaceState(null, '', location.pathname + location.search)
  if (!next.rows[0] && !next.lock[0]) return notify('The class in the link could not be read.')
  lay(next)
  const left = faults[0] ? ` Left out: ${faults.join('; ')}.` : ''
  if (readClass(before).rows[0]) notify(`The class in the link is opened.${left}`, { word: 'Take back', work: () => lay(readClass(before)) })
  else if (left) notify(left.trim())
}

/** @param {string} text */
function decoded(text) {
  try {
    return decodeURIComponent(text)
  } catch {
    return ''
  }
}

async function begin() {
  try {
    bench = await opening
  } catch {
    return mend(() => put(byId('sentence'), document.querySelector('[data-stuck=lost]')?.textContent ?? ''))
  }
  void plan()
}

lay(readClass(kept.read() ?? ''))
openLink()
addEventListener('hashchange', openLink)
document.documentElement.dataset.begun = ''
// In an engine that can't run the page, old.js has already said so.
if (!document.documentElement.dataset.why) void begin()
