/** The runs in the log, the newest first, each with what it tells. */
import { fieldsOf } from '../form/text.js'
import { piece, button, unseen } from './leaf.js'
import { inOrder } from './store.js'

/**
 * @typedef {import('./store.js').Run} Run
 * @typedef {import('../../engine/client.js').LoggedRun} LoggedRun
 */

/** How many runs are shown before a touch shows more: a long list is slow to lay out. */
const atOnce = 50

/** How many more a touch shows. */
const more = 200

/** How many are shown. */
let length = atOnce

export const shownAtOnce = () => length

/**
 * @param {HTMLElement} list
 * @param {Run[]} runs the first run first
 * @param {LoggedRun[]} told of the last of them
 * @param {Map<string, Run>} gone the removed ones
 */
export function showRuns(list, runs, told, gone) {
  const at = document.activeElement
  const focused = at instanceof HTMLElement && list.contains(at) ? at.dataset.run : undefined
  const all = [...runs.map((run, place) => ({ run, told: told[place - runs.length + told.length], isGone: false })), ...[...gone.values()].map((run) => ({ run, told: undefined, isGone: true }))]
  if (gone.size > 0) all.sort((a, b) => inOrder(a.run, b.run))
  const rest = Math.max(all.length - length, 0)
  const rows = all.slice(rest).reverse().map(({ run, told, isGone }) => (isGone ? goneRow(run) : rowOf(run, told)))
  list.replaceChildren(...rows, ...rest > 0 ? [piece('li', {}, button(`Show ${Math.min(rest, more)} more of ${rest}`, { 'data-more': '' }))] : [])
  const again = focused && [...list.querySelectorAll('button')].find(({ dataset }) => dataset.run === focused)
  if (again) again.focus()
}

/** Whether a run is not to count. @param {string} fields */
export const isLeftOut = (fields) => fieldsOf(fields).use?.toLowerCase() === 'no'

export function showMore() {
  length += more
}

/**
 * @param {Run} run
 * @param {LoggedRun | undefined} told
 */
function rowOf({ run, ended, note, fields }, told) {
  const counts = !isLeftOut(fields)
  const { metal = '', salt = '', found = '', wanted = '', efficiency = '', range = '', odd = '', wrong = '' } = told ?? {}
  const depths = found && `${found} found${wanted && `, ${wanted} wanted`}. `
  const said = wrong || `${depths}${efficiency && `${efficiency} of the current dissolved metal (by this run alone ${range}).`}`
  return piece('li', {},
    piece('p', { class: 'top' }, piece('strong', {}, [metal, salt && `in ${salt}`].filter(Boolean).join(' ')), piece('time', {}, ended)),
    piece('p', { class: 'gist' }, said),
    ...odd ? [piece('p', { class: 'odd' }, `Stands out: ${odd}.`)] : [],
    ...wrong ? [piece('p', { class: 'odd' }, 'It is not used.')] : [],
    ...counts ? [] : [piece('p', { class: 'odd' }, 'Left out: it is shown, and not used.')],
    ...note ? [piece('p', { class: 'hint' }, note)] : [],
    piece('p', { class: 'acts' }, button(counts ? 'Leave out' : 'Use again', { 'data-act': 'use', 'data-run': run }, unseen(` the run of ${ended}`)), button('Remove', { 'data-act': 'remove', 'data-run': run }, unseen(` the run of ${ended}`))))
}

/** @param {Run} run */
function goneRow({ run, ended }) {
  return piece('li', {}, piece('p', {}, `The run of ${ended} is removed.`),
    piece('p', { class: 'acts' }, button('Undo', { 'data-act': 'undo', 'data-run': run }, unseen(` the removal of the run of ${ended}`))))
}
