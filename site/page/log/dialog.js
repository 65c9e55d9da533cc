/** The dialog of the log: finishing a run, what the runs say, their list, CSV out and in. */
import { give } from '../answer/download.js'
import { picture, show } from '../answer/svg.js'
import { openDialog } from '../dialog.js'
import { make, put } from '../element.js'
import { fieldsOf, fieldsText } from '../form/text.js'
import { notify } from '../notice.js'
import { askOf, known, knownNow, remember, workOut } from './bench.js'
import { blank, finishForm, propose, runOn } from './finish.js'
import { button, piece } from './leaf.js'
import { isLeftOut, showMore, shownAtOnce, showRuns } from './list.js'
import { stripPlan } from './strip.js'
import { dress } from './style.js'
import { newRun, onLogChange, putIfUnchanged, putRuns, readLog, readRevision, removeRun } from './store.js'
import { fail, why } from './why.js'

/**
 * @typedef {import('../page.js').Desk} Desk
 * @typedef {import('./store.js').Run} Run
 */

/** How much of a file is read, in bytes. */
const mostOfFile = 8_000_000

/** How many faults of a file are listed. */
const listed = 20

/** How long a frame takes, in milliseconds. */
const aFrame = 20

/** How often a file is merged again if the log changes meanwhile. */
const tries = 3

/**
 * @param {Desk} desk
 * @param {() => void} used is told that what is known of the bench has changed
 */
export function setUpDialog(desk, used) {
  const finishing = finishForm()
  const strip = stripPlan()
  const said = piece('p', { class: 'said', role: 'status' })
  const fits = piece('ul', { class: 'fits', 'aria-label': 'What they say of this bench' })
  const use = /** @type {HTMLInputElement} */ (piece('input', { type: 'checkbox' }))
  const useLabel = piece('label', {}, use, 'Answers use them, from three runs of a metal and a salt on')
  const drawn = { found: picture(), aged: picture() }
  const figures = Object.values(drawn).map((svg) => piece('figure', { hidden: '' }, svg, piece('figcaption', { 'aria-hidden': 'true' })))
  const list = piece('ul', { class: 'stored', 'aria-label': 'Finished runs' })
  const none = piece('p', { class: 'none' }, 'No run is in the log yet. Three of a metal and a salt, and the answers carry this bench’s own range.')
  const taken = piece('p', { class: 'said', role: 'status' })
  const faults = piece('ul', { class: 'faults' })
  const file = /** @type {HTMLInputElement} */ (piece('input', { type: 'file', accept: '.csv,text/csv', id: 'log-file' }))
  const saving = button('Save the log as CSV', {})
  const carry = piece('details', { class: 'carry' }, piece('summary', {}, 'A spreadsheet: save the log, or read one'),
    piece('p', { class: 'hint' }, 'Runs that are here already are not added twice. A browser may delete what pages save when a device runs short of room; a file of your own stays.'),
    piece('p', { class: 'acts' }, saving), piece('p', { class: 'acts' }, piece('label', { for: 'log-file' }, 'From a CSV file'), file), taken, faults)
  const read = piece('div', { class: 'read' }, finishing, said, fits, piece('p', { class: 'ticks' }, useLabel), piece('div', { class: 'plots' }, ...figures), list, none, strip.place, carry)
  const dialog = /** @type {HTMLDialogElement} */ (piece('dialog', { class: 'over jobs log', id: 'log', 'aria-labelledby': 'log-title' },
    piece('div', { class: 'top' }, piece('h2', { id: 'log-title' }, 'Runs on this bench'), button('Close', { 'data-close': '' })), read))
  dress()
  document.body.append(dialog)

  /** The runs that were removed since the dialog opened. @type {Map<string, Run>} */
  const gone = new Map()

  /** @type {Awaited<ReturnType<typeof workOut>> | undefined} */
  let shown

  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let later

  /** Does work that may fail, and says why if it does. @param {() => unknown} work @param {HTMLElement} place */
  async function attempt(work, place = said) {
    put(place, '')
    try {
      await work()
    } catch (reason) {
      if (dialog.open) put(place, why(reason))
      else notify(why(reason))
    }
  }

  /** Works out what the log says, tells the answers, and shows it. */
  async function refresh() {
    shown = await workOut(desk, shownAtOnce())
    used()
    if (dialog.open) display()
  }

  function display() {
    if (!shown) return
    const { runs, reply } = shown
    none.hidden = runs.length + gone.size > 0
    fits.replaceChildren(...(reply.fits ?? []).map(fitRow))
    use.checked = !knownNow().off
    for (const [at, name] of /** @type {const} */ (['found', 'aged']).entries()) {
      const drawing = reply[name]
      figures[at].hidden = !drawing
      if (!drawing) continue
      show(drawn[name], drawing)
      put(figures[at].lastElementChild, drawing.title)
    }
    // The rows stand below, and come in a frame of their own: all at once would freeze a slow device.
    clearTimeout(later)
    later = setTimeout(() => showRuns(list, runs, reply.runs ?? [], gone), aFrame)
  }

  /** @param {import('../../engine/client.js').Fit} fit */
  function fitRow({ metal, salt, text, undercut, ratio }) {
    const touch = button('', { 'data-ratio': ratio })
    sayRatio(touch)
    return piece('li', {}, piece('strong', {}, `${metal} in ${salt}`), make('p', text), ...undercut ? [make('p', undercut)] : [], ...ratio ? [piece('p', { class: 'acts' }, touch)] : [])
  }

  /** Whether the undercut on the form is that of the runs. @param {HTMLElement} touch */
  const hasRatio = ({ dataset }) => desk.form.rows.get('undercut')?.input.value.trim() === dataset.ratio

  /** @param {HTMLElement} touch */
  const sayRatio = (touch) => put(touch, hasRatio(touch) ? `Take ${touch.dataset.ratio} out of Undercut ratio` : `Put ${touch.dataset.ratio} into Undercut ratio`)

  async function finish() {
    const run = await runOn(finishing, desk)
    await putRuns([run])
    blank(finishing)
    await refresh()
    put(said, 'The run is in the log.')
  }

  /** @param {string} act @param {string} id */
  async function perform(act, id) {
    const run = act === 'undo' ? gone.get(id) : shown?.runs.find((one) => one.run === id)
    if (!run) return
    if (act === 'undo') {
      await putRuns([run])
      gone.delete(id)
    } else if (act === 'use') {
      await putRuns([{ ...run, fields: fieldsText({ ...fieldsOf(run.fields), use: isLeftOut(run.fields) ? '' : 'no' }) }])
    } else {
      await removeRun(id)
      gone.set(id, run)
    }
    await refresh()
  }

  async function save() {
    const { runs } = await readLog()
    const { csv = '' } = await askOf(desk, { do: 'csv' }, runs)
    give(new Blob(['\ufeff', csv], { type: 'text/csv' }), 'saltbite-runs.csv') // by the mark a spreadsheet knows UTF-8
    put(taken, 'The file is called saltbite-runs.csv.')
  }

  /** @param {File} chosen */
  async function take(chosen) {
    faults.replaceChildren()
    if (chosen.size > mostOfFile) fail('LongFile')
    const csv = await chosen.text()
    for (let once = 0; once < tries; once++) {
      const { runs, revision } = await readLog()
      const merged = await askOf(desk, { do: 'merge', csv }, runs)
      const next = (merged.runs ?? []).map(({ run, ended, note, fields }) => ({ run: run || newRun(), ended, note, fields: fieldsText(fields) }))
      const before = new Map(runs.map((run) => [run.run, alike(run)]))
      if (!await putIfUnchanged(next.filter((run) => before.get(run.run) !== alike(run)), revision)) continue
      const { added = 0, changed = 0, faults: wrong = [] } = merged
      await refresh()
      put(taken, [`${added === 1 ? '1 run was' : `${added} runs were`} added.`, changed > 0 && `${changed} that ${changed === 1 ? 'was' : 'were'} here changed.`,
        wrong.length > 0 && 'What could not be read:'].filter(Boolean).join(' '))
      faults.replaceChildren(...wrong.slice(0, listed).map((fault) => make('li', fault)), ...wrong.length > listed ? [make('li', `And ${wrong.length - listed} more.`)] : [])
      return
    }
    fail('Busy')
  }

  const planStrip = () => strip.plan(desk, /** @type {HTMLInputElement} */ (finishing.elements.namedItem('resolution')).value.trim())

  document.addEventListener('click', ({ target }) => {
    const touched = /** @type {Element} */ (target).closest('[data-log]')
    if (!(touched instanceof HTMLButtonElement)) return
    const isFinish = touched.dataset.log === 'finish'
    gone.clear()
    put(said, '')
    strip.unfold(desk)
    propose(finishing, desk, touched.dataset.elapsed)
    openDialog(dialog, touched)
    read.scrollTop = isFinish ? 0 : finishing.offsetHeight
    display()
    void attempt(async () => { if (await readRevision() !== shown?.revision) await refresh() })
    void attempt(planStrip)
  })
  strip.take.addEventListener('click', () => {
    strip.lay(desk)
    dialog.close()
    notify('The test strip is on the page; Undo brings back what was there.')
  })
  finishing.addEventListener('change', ({ target }) => {
    if (/** @type {HTMLInputElement} */ (target).name === 'resolution') void attempt(planStrip)
  })
  finishing.addEventListener('submit', (event) => {
    event.preventDefault()
    void attempt(finish)
  })
  list.addEventListener('click', ({ target }) => {
    const { act, run = '', more } = /** @type {Element} */ (target).closest('button')?.dataset ?? {}
    if (act) void attempt(() => perform(act, run))
    if (more === undefined) return
    showMore()
    void attempt(refresh)
  })
  fits.addEventListener('click', ({ target }) => {
    const touch = /** @type {Element} */ (target).closest('button')
    if (!touch) return
    desk.undoably(() => desk.form.write('undercut', hasRatio(touch) ? '' : touch.dataset.ratio ?? ''))
    for (const each of fits.querySelectorAll('button')) sayRatio(each)
  })
  use.addEventListener('change', () => {
    remember({ ...knownNow(), off: !use.checked })
    used()
  })
  saving.addEventListener('click', () => void attempt(save, taken))
  file.addEventListener('change', () => {
    const chosen = file.files?.[0]
    if (chosen) void attempt(() => take(chosen), taken)
    file.value = '' // so that the same can be chosen again
  })
  onLogChange(() => { if (dialog.open) void attempt(refresh) })

  // A tab that was closed may have stored a run and not what follows from it.
  if (known.read()) void readRevision().then((revision) => { if (revision !== knownNow().revision) void refresh() }).catch(() => {})
}

/** What a run holds, to compare. @param {Run} run */
const alike = ({ ended, note, fields }) => [ended, note, ...fields.split('&').sort()].join('\n')
