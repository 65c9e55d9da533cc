/**
 * The page is a view of one function: fields in, answers out, one way, at every
 * keystroke. No quantity is reckoned here.
 */
import { open } from '../engine/client.js'
import { combobox } from './combobox.js'
import { showFigures } from './figures.js'
import { setUpHabits } from './habits.js'
import { load, read, save } from './keep.js'
import { sayPlainly, showPane } from './pane.js'
import { showPrinted } from './printed.js'
import { showRows } from './rows.js'
import { showSafety } from './safety.js'
import { given, seek } from './seek.js'
import { setUpJobs } from './jobs.js'
import { setUpPaper } from './paper.js'
import { setUpPicture } from './picture.js'
import { setUpRunning } from './running.js'
import { setUpShare } from './share.js'
import { Sheet } from './sheet.js'
import { setMetal } from './sources.js'

/**
 * @typedef {import('../engine/client.js').Bench} Bench
 * @typedef {import('../engine/client.js').Reply} Reply
 */

const place = /** @type {HTMLElement} */ (document.getElementById('job'))
const pane = /** @type {HTMLElement} */ (document.getElementById('answer'))
const example = /** @type {HTMLElement} */ (document.getElementById('example'))
const clear = /** @type {HTMLElement} */ (document.getElementById('clear'))
const undo = /** @type {HTMLButtonElement} */ (document.getElementById('undo'))
const sheet = new Sheet(place)

/** @type {Bench | undefined} */
let bench
/** @type {Reply | undefined} */
let reply
/** What to go back to. @type {import('./sheet.js').Kept | undefined} */
let before
let asking = false
let changed = false

/** The sheet has changed: ask anew first, so that the answer is on its way. */
function change() {
  changed = true
  if (!asking) void ask()
  sheet.showGiven()
  undo.disabled = before === undefined
  keepSoon()
}

/** How long the sheet rests before it is kept, in milliseconds. */
const rest = 300

/** @type {ReturnType<typeof setTimeout> | undefined} */
let resting

/** Keeps the sheet once no more is typed, or when the page is left. */
function keepSoon() {
  clearTimeout(resting)
  resting = setTimeout(keepNow, rest)
}

function keepNow() {
  if (resting === undefined) return
  clearTimeout(resting)
  resting = undefined
  save(sheet.keep())
}

addEventListener('pagehide', keepNow)
document.addEventListener('visibilitychange', keepNow)

/** Asks until the answer is that of what is on the sheet. */
async function ask() {
  if (!bench) return
  asking = true
  while (changed) {
    changed = false
    reply = await bench.answer(sheet.fields())
    showRows(sheet, reply)
    showPane(sheet, reply)
    showSafety(reply)
    setMetal(reply.rows.metal?.[0])
    showPrinted(reply.rows.metal?.[0])
    for (const hear of hearing) hear(reply)
  }
  asking = false
}

/** A change that one touch takes back. @param {() => void} work */
function undoably(work) {
  const kept = sheet.keep()
  work()
  before = kept
  change()
}

/**
 * What the page's other parts may see of it and do to it.
 *
 * @typedef {object} Desk
 * @property {Sheet} sheet
 * @property {() => Bench | undefined} bench there once the program is ready
 * @property {() => Reply | undefined} reply the newest
 * @property {(hear: (reply: Reply) => void) => void} onReply after each reply is shown
 * @property {() => void} changed to be called after the sheet's fields were written
 * @property {(work: () => void) => void} undoably does what replaces the job, so that Undo takes it back
 */

/** @type {((reply: Reply) => void)[]} */
const hearing = []

/** @type {Desk} */
const desk = {
  sheet,
  bench: () => bench,
  reply: () => reply,
  onReply: (hear) => { hearing.push(hear) },
  changed: change,
  undoably,
}

place.addEventListener('submit', (event) => event.preventDefault())

place.addEventListener('input', (event) => {
  const control = /** @type {Element} */ (event.target)
  if (!control.closest('.row')) return // the switch of colours stands on the sheet as well
  before = undefined
  if (control instanceof HTMLInputElement) given(sheet, control.name)
  change()
})

// A part that is opened brings its figures. The event of a fold doesn't bubble.
place.addEventListener('toggle', () => { if (reply) showFigures(sheet, reply) }, { capture: true })

// The switch stands in the page's head.
for (const choice of sheet.switch) {
  choice.addEventListener('change', () => {
    sheet.turnUnits()
    change()
  })
}

/** A touch that seeks another, or fills in what is suggested. @param {Event} event */
function press(event) {
  const button = /** @type {Element} */ (event.target).closest('button')
  if (!button) return
  const { seek: wanted, fill, text } = button.dataset
  if (wanted && !button.closest('.found')) {
    undoably(() => seek(sheet, wanted, reply))
  }
  if (fill && text) {
    undoably(() => {
      sheet.fill(fill, text)
      given(sheet, fill)
    })
    document.getElementById(pane.contains(button) ? 'say' : fill)?.focus()
  }
}

place.addEventListener('click', press)
pane.addEventListener('click', press)

example.addEventListener('click', () => undoably(() => {
  sheet.clear()
  const job = read(example.dataset.fields ?? '')
  for (const [name, text] of Object.entries(job)) sheet.fill(name, text)
  unfold()
}))

clear.addEventListener('click', () => {
  if (sheet.empty) return
  undoably(() => sheet.clear())
  place.scrollTop = 0
})

undo.addEventListener('click', () => {
  if (!before) return
  sheet.restore(before)
  before = undefined
  change()
  clear.focus()
})

// A caution leads to the field that it is about.
pane.addEventListener('click', (event) => {
  const link = /** @type {Element} */ (event.target).closest('a')
  const input = sheet.rows.get(link?.hash.slice(1) ?? '')?.input
  if (!input) return
  event.preventDefault()
  for (let part = input.closest('details'); part; part = part.parentElement?.closest('details') ?? null) part.open = true
  input.focus()
})

/** Opens the folded parts in which something is typed. */
function unfold() {
  for (const part of sheet.parts) {
    if (sheet.filled(part).length > 0) part.element.open = true
  }
}

for (const { name, input } of sheet.rows.values()) {
  if (input instanceof HTMLInputElement && input.getAttribute('role') === 'combobox') combobox(input, suggesting(name, input), change)
}

/** How many suggestions are offered. */
const offered = 8

/**
 * What a field suggests: for a metal what the bench finds by that name, then
 * the names that the field lists and that begin like what was typed.
 *
 * @param {string} name
 * @param {HTMLInputElement} input
 * @returns {(text: string) => Promise<import('./combobox.js').Suggestion[]>}
 */
function suggesting(name, input) {
  const listed = (input.dataset.suggest ?? '').split('|').map((text) => ({ text, why: '' }))
  return async (text) => {
    const hits = name === 'metal' && text !== '' ? await bench?.find(text) ?? [] : []
    const all = new Map(hits.map((hit) => [hit.name, { text: hit.name, why: hit.why }]))
    for (const one of listed.filter((one) => beginsLike(one.text, text))) {
      if (!all.has(one.text)) all.set(one.text, one)
    }
    const suggestions = [...all.values()].slice(0, offered)
    return suggestions.length === 1 && suggestions[0].text === text ? [] : suggestions
  }
}

/**
 * Whether each word that was typed begins a word of a name.
 *
 * @param {string} name
 * @param {string} typed
 */
function beginsLike(name, typed) {
  const words = name.toLowerCase().split(/[\s/,]+/)
  return typed.toLowerCase().split(/\s+/).every((part) => words.some((word) => word.startsWith(part)))
}

async function begin() {
  sayPlainly('') // the script runs, so what stands there for want of it goes
  const kept = load()
  if (kept) sheet.restore(kept)
  sheet.showGiven()
  unfold()
  try {
    bench = await open(import.meta.url)
  } catch {
    sayPlainly(typeof WebAssembly === 'object'
      ? 'The calculator could not be loaded. Is the connection there? Then load this page again.'
      : 'This browser has no WebAssembly, or it is switched off, and the calculator can’t run without it.')
    return
  }
  changed = true
  void ask()
}

setUpHabits(place)
for (const setUp of [setUpPicture, setUpPaper, setUpJobs, setUpShare, setUpRunning]) setUp(desk)
void begin()
