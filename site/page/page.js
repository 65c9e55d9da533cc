/**
 * The page is a view of one function: fields in, answers out, one way, at every
 * keystroke. No quantity is reckoned here.
 */
import { textOf } from '../engine/fields.js'
import { combobox } from './combobox.js'
import { at } from './element.js'
import { showFigures } from './figures.js'
import { setUpHabits } from './habits.js'
import { load, read, save } from './keep.js'
import { sayPlainly, sayStuck, showPane } from './pane.js'
import { setPrinted } from './printed.js'
import { markCropped, showRows } from './rows.js'
import { opening } from './opening.js'
import { showSafety } from './safety.js'
import { given, seek } from './seek.js'
import { setUpJobs } from './jobs.js'
import { setUpOffline } from './offline.js'
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

const place = at('job')
const pane = at('answer')
const example = at('example')
const clear = at('clear')
const undo = /** @type {HTMLButtonElement} */ (at('undo'))
const sheet = new Sheet(place)

/** @type {Bench | undefined} */
let bench
/** @type {Reply | undefined} */
let reply
/** What to go back to. @type {import('./sheet.js').Kept | undefined} */
let before
/** Whether that is another job: typing into this one doesn't put it out of reach. */
let other = false
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
/** Whether what is on the sheet would be there after a reload. */
let saved = true

/** Keeps the sheet once no more is typed, or when the page is left. */
function keepSoon() {
  clearTimeout(resting)
  resting = setTimeout(keepNow, rest)
}

function keepNow() {
  if (resting === undefined) return
  clearTimeout(resting)
  resting = undefined
  saved = save(sheet.keep())
}

addEventListener('pagehide', keepNow)
document.addEventListener('visibilitychange', keepNow)

/** Asks until the answer is that of what is on the sheet. */
async function ask() {
  if (!bench) return
  asking = true
  while (changed) {
    changed = false
    const asked = sheet.fields()
    reply = await bench.answer(textOf(asked))
    showRows(sheet, reply)
    showPane(sheet, reply)
    showSafety(reply)
    setMetal(reply.rows.metal?.[0])
    setPrinted(reply.rows.metal?.[0])
    for (const hear of hearing) hear(reply, asked)
  }
  document.documentElement.dataset.answered ??= ''
  asking = false
}

/**
 * A change that one touch takes back; a second one brings it about again.
 *
 * @param {() => void} work
 * @param {boolean} [replaces] whether it puts another job in the place of this one
 */
function undoably(work, replaces = false) {
  const kept = sheet.keep()
  work()
  before = kept
  other = replaces
  change()
}

/**
 * What the page's other parts may see of it and do to it.
 *
 * @typedef {object} Desk
 * @property {Sheet} sheet
 * @property {() => Bench | undefined} bench there once the program is ready
 * @property {() => Reply | undefined} reply the newest
 * @property {(hear: Hear) => void} onReply after each reply is shown
 * @property {() => void} changed to be called after the sheet's fields were written
 * @property {() => boolean} keep keeps the sheet now; false if it can't be kept over a reload
 * @property {(work: () => void) => void} undoably does what replaces the job, so that Undo takes it back
 * @property {(kept: import('./sheet.js').Kept) => void} lay puts another job in the place of the one on the sheet, undoably
 * @property {() => import('./sheet.js').Kept} exampleJob
 */

/**
 * @callback Hear
 * @param {Reply} reply
 * @param {Record<string, string>} asked the fields that it answers
 */

/** @type {Hear[]} */
const hearing = []

/** @type {Desk} */
export const desk = {
  sheet,
  bench: () => bench,
  reply: () => reply,
  onReply: (hear) => { hearing.push(hear) },
  changed: change,
  keep: () => {
    keepNow()
    return saved
  },
  undoably,
  lay,
  exampleJob,
}

place.addEventListener('submit', (event) => event.preventDefault())

place.addEventListener('input', (event) => {
  const control = /** @type {Element} */ (event.target)
  if (!control.closest('.row')) return // the switch of colours stands on the sheet as well
  if (!other) before = undefined
  if (control instanceof HTMLInputElement) given(sheet, control.name)
  change()
})

// A part that is opened brings its figures. The event of a fold doesn't bubble.
place.addEventListener('toggle', () => {
  if (reply) showFigures(sheet, reply)
  markCropped(sheet)
}, { capture: true })
addEventListener('resize', () => markCropped(sheet))

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

/** Puts another job in the place of the one on the sheet. @param {import('./sheet.js').Kept} kept */
function lay(kept) {
  undoably(() => {
    sheet.restore(kept)
    unfold()
  }, true)
}

function exampleJob() {
  return sheet.placed({ ...read(example.dataset.fields ?? ''), units: sheet.switch.value })
}

for (const button of [example, document.getElementById('start-example')]) {
  button?.addEventListener('click', () => lay(exampleJob()))
}

clear.addEventListener('click', () => {
  if (sheet.empty) return
  undoably(() => sheet.clear(), true)
  place.scrollTop = 0
})

undo.addEventListener('click', () => {
  const kept = before
  if (kept) undoably(() => sheet.restore(kept), other)
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

/** Puts back what was on the sheet when the page was left. */
function putBack() {
  const kept = load()
  if (kept) sheet.restore(kept)
  if (!sheet.empty) sayPlainly('')
  sheet.showGiven()
  unfold()
}

async function begin() {
  try {
    bench = await opening
  } catch {
    sayStuck(location.protocol === 'file:' ? 'folder' : 'lost')
    return
  }
  changed = true
  void ask()
}

putBack()
setUpHabits(place)
for (const setUp of [setUpPicture, setUpPaper, setUpJobs, setUpShare, setUpRunning, setUpOffline]) setUp(desk)
document.documentElement.dataset.begun = ''
// An engine that can't run the page has been told so, by old.js.
if (!document.documentElement.dataset.why) void begin()
