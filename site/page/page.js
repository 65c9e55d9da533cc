/**
 * The page is a view of one function: fields in, answers out, at every keystroke.
 * No quantity is calculated here.
 */
import { textOf } from '../engine/fields.js'
import { mend } from '../offline/mend.js'
import { combobox } from './form/combobox.js'
import { byId } from './element.js'
import { showFigures } from './answer/figures.js'
import { onScreen, setUpHabits } from './form/habits.js'
import { loadForm, saveForm } from './form/reload.js'
import { History } from './form/history.js'
import { setUpForm } from './form/setup.js'
import { fieldsOf } from './form/text.js'
import { close, setUpBar } from './answer/bar.js'
import { setUpFold } from './answer/fold.js'
import { sayPlainly, sayStuck, showPane, showSentence } from './answer/pane.js'
import { setUpClearing } from './form/clearing.js'
import { setPrinted } from './paper/heading.js'
import { showRows } from './form/rows.js'
import { opening } from './start/bench.js'
import { showSafety } from './answer/safety.js'
import { given, seek } from './form/seek.js'
import { setUpOffline } from './device/offline.js'
import { setUpPicture } from './answer/picture.js'
import { setUpRun } from './run/control.js'
import { setUpLater } from './start/later.js'
import { Form } from './form/form.js'

/**
 * @typedef {import('../engine/client.js').Bench} Bench
 * @typedef {import('../engine/client.js').Reply} Reply
 */

const place = byId('job')
const pane = byId('answer')
const example = byId('example')
const clear = byId('clear')
const undo = /** @type {HTMLButtonElement} */ (byId('undo'))
const form = new Form(place)

/** @type {Bench | undefined} */
let bench
/** @type {Reply | undefined} */
let reply
const history = new History(form)
let asking = false
let changed = false

/**
 * The form has changed: ask at once, so that the answer is on its way.
 *
 * @param {string} [name] of the one field that did, where it is only one
 */
function change(name) {
  changed = true
  pane.setAttribute('aria-busy', 'true')
  if (!asking) void ask()
  form.showGiven(name)
  undo.disabled = history.empty
  saveSoon()
}

/** How long after the last change the form is saved, in milliseconds. */
const rest = 300

/** @type {ReturnType<typeof setTimeout> | undefined} */
let resting
/** Whether the content of the form would be there after a reload. */
let saved = true

/** Saves the form after a pause in typing, or when the page is left. */
function saveSoon() {
  clearTimeout(resting)
  resting = setTimeout(saveNow, rest)
}

function saveNow() {
  if (resting === undefined) return
  clearTimeout(resting)
  resting = undefined
  history.settle()
  saved = saveForm(form.entries())
}

addEventListener('pagehide', saveNow)
document.addEventListener('visibilitychange', saveNow)

/** Asks until the answer belongs to the current content of the form. */
async function ask() {
  if (!bench) return
  asking = true
  while (changed) {
    changed = false
    const asked = form.fields()
    reply = await bench.answer(textOf(asked))
    tell((reply, asked) => showSentence(form, reply, asked), reply, asked)
    document.documentElement.dataset.answered ??= ''
    tellAll(reply, asked)
  }
  asking = false
}

/** What the other parts of the page are still to be told of. @type {[Reply, Record<string, string>] | undefined} */
let untold

/**
 * Tells the other parts of a reply once its sentence is painted, or of the next one
 * if that comes sooner.
 *
 * @param {Reply} reply
 * @param {Record<string, string>} asked
 */
function tellAll(reply, asked) {
  const waiting = untold !== undefined
  untold = [reply, asked]
  if (!waiting) afterFrame(() => {
    if (!untold) return
    const [reply, asked] = untold
    untold = undefined
    for (const hear of hearing) tell(hear, reply, asked)
    pane.setAttribute('aria-busy', String(asking || changed))
  })
}

/** How long a frame is waited for, in milliseconds: a page that nobody sees paints none. */
const patience = 200

/**
 * The work begins with the frame after the next: a browser paints the sentence, and
 * takes the next key, before it has to lay out all the rest.
 *
 * @param {() => void} work it may be called twice
 */
function afterFrame(work) {
  setTimeout(work, document.hidden ? 0 : patience)
  requestAnimationFrame(() => requestAnimationFrame(work))
}

/**
 * Tells one part of the page of a reply. If that part fails, the others and the
 * next key still get their answers.
 *
 * @param {Hear} hear
 * @param {Reply} reply
 * @param {Record<string, string>} asked
 */
function tell(hear, reply, asked) {
  try {
    hear(reply, asked)
  } catch (reason) {
    reportError(reason)
  }
}

/** A change that one touch takes back. @param {() => void} work */
function undoably(work) {
  history.deed(work)
  change()
}

/**
 * What other parts of the page may read and do.
 *
 * @typedef {object} Desk
 * @property {Form} form
 * @property {() => Bench | undefined} bench undefined until the program is ready
 * @property {() => Reply | undefined} reply the newest
 * @property {(hear: Hear) => void} onReply after each reply is shown
 * @property {() => void} changed to be called after fields of the form were written
 * @property {() => boolean} save saves the form now; false if it would not be there after a reload
 * @property {(work: () => void) => void} undoably does work that Undo takes back
 * @property {(entries: import('./form/form.js').Entries) => void} lay replaces the job on the form; Undo takes it back
 * @property {() => import('./form/form.js').Entries} exampleJob
 */

/**
 * @callback Hear
 * @param {Reply} reply
 * @param {Record<string, string>} asked the fields that it answers
 */

/** The parts of the page that show a reply after its sentence, in their order. @type {Hear[]} */
const hearing = [
  (reply) => showRows(form, reply),
  (reply, asked) => showPane(form, reply, asked),
  showSafety,
  ({ rows }) => setPrinted(rows.metal?.[0]),
]

/** @type {Desk} */
export const desk = {
  form,
  bench: () => bench,
  reply: () => reply,
  onReply: (hear) => { hearing.push(hear) },
  changed: () => {
    history.settle()
    change()
  },
  save: () => {
    saveNow()
    return saved
  },
  undoably,
  lay,
  exampleJob,
}

place.addEventListener('submit', (event) => event.preventDefault())

place.addEventListener('input', (event) => {
  const control = /** @type {Element} */ (event.target)
  const of = control.closest('.row, .questions') // the switch of colours stands on the form as well
  if (!of) return
  const name = (of instanceof HTMLElement && of.dataset.field) || 'ask'
  history.typed(name)
  if (control instanceof HTMLInputElement) given(form, control.name)
  change(name)
})
place.addEventListener('focusin', () => history.leave())

// An opened part shows its figures. The toggle event does not bubble.
place.addEventListener('toggle', () => {
  if (reply) showFigures(form, reply)
}, { capture: true })

// The switch is in the page's head.
for (const choice of form.switch) {
  choice.addEventListener('change', () => {
    history.typed('units')
    form.turnUnits()
    change()
    history.leave()
  })
}

/** A button that seeks another field, or fills in a suggestion. @param {Event} event */
function press(event) {
  const button = /** @type {Element} */ (event.target).closest('button')
  if (!button) return
  const { seek: wanted, fill, text, reading } = button.dataset
  if (wanted && !button.closest('.found')) {
    undoably(() => seek(form, wanted, reply))
  }
  const asks = button.closest('.row')
  if (reading && asks instanceof HTMLElement) {
    const { field = '' } = asks.dataset
    undoably(() => form.write(field, reading))
    document.getElementById(field)?.focus()
  }
  if (fill && text) {
    undoably(() => {
      form.fill(fill, text)
      given(form, fill)
    })
    if (pane.contains(button)) byId('say').focus()
    else if (!onScreen) document.getElementById(fill)?.focus()
  }
}

place.addEventListener('click', press)
pane.addEventListener('click', press)

/** Replaces the job on the form. @param {import('./form/form.js').Entries} entries */
function lay(entries) {
  undoably(() => {
    form.restore(entries)
    unfold()
  })
}

function exampleJob() {
  return form.placed({ ...fieldsOf(example.dataset.fields ?? ''), units: form.switch.value })
}

for (const button of [example, document.getElementById('start-example')]) {
  button?.addEventListener('click', () => lay(exampleJob()))
}

clear.addEventListener('click', () => {
  if (form.empty && form.question.value === '') return
  undoably(() => form.clear())
  place.scrollTop = 0
})

undo.addEventListener('click', () => {
  history.back()
  change()
})

// The link of a caution leads to the field that it is about.
pane.addEventListener('click', (event) => {
  const link = /** @type {Element} */ (event.target).closest('a')
  const name = link?.hash.slice(1) ?? ''
  if (!form.rows.has(name)) return
  event.preventDefault()
  close()
  form.lead(name)
})

/** Opens the folded parts that hold something typed. */
function unfold() {
  for (const part of form.parts) {
    if (form.filled(part).length > 0) part.element.open = true
  }
}

for (const { name, input } of form.rows.values()) {
  if (input instanceof HTMLInputElement && input.getAttribute('role') === 'combobox') combobox(input, suggesting(name, input), () => {
    history.typed(name)
    change()
  })
}

/** How many suggestions are offered. */
const offered = 8

/**
 * The suggestions of a field: for a metal what the bench finds by that name, then
 * the names listed for the field that begin like what was typed.
 *
 * @param {string} name
 * @param {HTMLInputElement} input
 * @returns {(text: string) => Promise<import('./form/combobox.js').Suggestion[]>}
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

/** Restores the form as it was when the page was left. */
function putBack() {
  const saved = loadForm()
  if (saved) form.restore(saved)
  history.settle()
  if (!form.empty) sayPlainly('')
  form.showGiven()
  unfold()
}

async function begin() {
  try {
    bench = await opening
  } catch {
    return mend(() => sayStuck(location.protocol === 'file:' ? 'folder' : 'lost'))
  }
  changed = true
  void ask()
}

putBack()
setUpHabits(place)
for (const setUp of [setUpBar, setUpFold, setUpClearing, setUpForm, setUpPicture, setUpRun, setUpOffline, setUpLater]) setUp(desk)
document.documentElement.dataset.begun = ''
// In an engine that can't run the page, old.js has already said so.
if (!document.documentElement.dataset.why) void begin()
