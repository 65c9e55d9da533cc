/**
 * The figures behind the sentence: those that there are, by parts, each with its
 * label. Those of a part that nobody uses stay away, so that the pane is calm.
 * The list is made anew when other figures come; else only their texts change.
 */
import { at, make, mark, put } from './element.js'

/**
 * @typedef {import('../engine/client.js').Reply} Reply
 * @typedef {import('./sheet.js').Sheet} Sheet
 *
 * @typedef {{part: string, section: HTMLElement, figures: {name: string, label: string, item: HTMLElement}[]}} Group
 */

const place = at('figures')

/** The figures by parts, as the page has them. @type {Group[]} */
const groups = [...place.querySelectorAll('section')].map((section) => ({
  part: section.dataset.part ?? '',
  section,
  figures: [...section.querySelectorAll('div')].map((item) => ({
    name: item.dataset.answer ?? '',
    label: item.querySelector('dt')?.textContent ?? '',
    item,
  })),
}))

/** These stand at the row that they are for. */
const aside = ['suggestedDensity', 'suggestedCurrent', 'suggestedTime', 'suggestedStrength']

const byName = new Map(groups.flatMap(({ figures }) => figures).map((figure) => [figure.name, figure]))

/**
 * A figure's label.
 *
 * @param {string} name
 */
export function labelOf(name) {
  return byName.get(name)?.label ?? name
}

/**
 * An answer's range with what it rests on; blank where there is none.
 *
 * @param {string} name
 * @param {Reply} reply
 */
export function rangeOf(name, { answers }) {
  const { range = '', by = byName.get(name)?.item.dataset.range } = answers[name] ?? {}
  return range && `${range}, ${by}`
}

/** Whether an answer has a place among the figures. @param {string} name */
export function isFigure(name) {
  return !aside.includes(name)
}

/**
 * The answers of a part that are more than what was typed.
 *
 * @param {Group} group
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function there({ figures }, sheet, { answers, found }) {
  return figures.map(({ name }) => name).filter((name) => name in answers && !sheet.typedInto(name) && isFigure(name))
    .sort((a, b) => Number(found.includes(b)) - Number(found.includes(a)))
}

/**
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
export function showFigures(sheet, reply) {
  const used = groups.filter(({ part }) => sheet.uses(part))
  const shown = used.map((group) => ({ group, names: there(group, sheet, reply) }))
    .filter(({ group, names }) => names.length > 0 || rowsOf(group, reply).length > 0)
    .sort((a, b) => Number(asked(b.names, reply)) - Number(asked(a.names, reply)))
  const key = JSON.stringify(shown.map(({ group, names }) => [group.part, names, rowsOf(group, reply).length]))
  if (place.dataset.shown !== key) {
    place.dataset.shown = key
    place.replaceChildren(...shown.map(({ group, names }) => groupOf(group, names)))
  }
  for (const figure of place.querySelectorAll('div')) fillFigure(figure, reply)
  for (const table of place.querySelectorAll('table')) fillBites(table, reply)
}

/**
 * @param {string[]} names
 * @param {Reply} reply
 */
function asked(names, { found }) {
  return names.some((name) => found.includes(name))
}

/**
 * @param {Group} group
 * @param {Reply} reply
 */
function rowsOf({ section }, { rows }) {
  return section.querySelector('table') ? rows.bites ?? [] : []
}

/**
 * @param {Group} group
 * @param {string[]} names
 */
function groupOf({ section, figures }, names) {
  const copy = /** @type {HTMLElement} */ (section.cloneNode(true))
  const items = names.flatMap((name) => figures.find((figure) => figure.name === name)?.item.cloneNode(true) ?? [])
  copy.querySelector('dl')?.replaceChildren(...items)
  copy.hidden = false
  return copy
}

/**
 * @param {HTMLElement} figure
 * @param {Reply} reply
 */
function fillFigure(figure, reply) {
  const { answers, found, cautions } = reply
  const name = figure.dataset.answer ?? ''
  const level = cautions.find(({ field }) => field === name)?.level ?? ''
  const [, main, word, span] = figure.children
  put(main, answers[name]?.text ?? '')
  put(span, rangeOf(name, reply))
  put(word, { stop: 'stop', warn: 'take care', note: '', '': '' }[level])
  figure.classList.toggle('found', found.includes(name))
  mark(figure, 'data-level', level)
}

/**
 * @param {HTMLTableElement} table
 * @param {Reply} reply
 */
function fillBites(table, { rows }) {
  const bites = rows.bites ?? []
  const said = JSON.stringify(bites)
  table.hidden = bites.length === 0
  if (table.dataset.said === said) return
  table.dataset.said = said
  table.tBodies[0].replaceChildren(...bites.map(({ depth, area, minutes, amperes }) =>
    make('tr', ...[depth, area, minutes, amperes].map(({ text }) => make('td', text)))))
}
