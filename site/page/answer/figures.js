/**
 * The figures behind the sentence, by parts, each with its label. Parts that are
 * not in use show none. The list is rebuilt when other figures appear; otherwise
 * only the texts are written.
 */
import { byId, make, mark, put } from '../element.js'
import { about } from './about.js'

/**
 * @typedef {import('../../engine/client.js').Reply} Reply
 * @typedef {import('../form/form.js').Form} Form
 *
 * @typedef {{part: string, section: HTMLElement, figures: {name: string, label: string, item: HTMLElement}[]}} Group
 */

const place = byId('figures')

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

/** These are shown at the rows that they belong to. */
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
 * An answer's range with its basis; '' if it has no range.
 *
 * @param {string} name
 * @param {Reply} reply
 */
export function rangeOf(name, { answers }) {
  const { range = '', by = byName.get(name)?.item.dataset.range } = answers[name] ?? {}
  return range && `${range}, ${counted(by ?? '')}`
}

/** Says which runs of this bench a range is from, where the form is told. @param {string} by */
const counted = (by) => by.replace('from runs on this bench', (said) => byId('job').dataset.runs || said)

/** Whether an answer is shown among the figures. @param {string} name */
export function isFigure(name) {
  return !aside.includes(name)
}

/**
 * The answers of a part that were not simply typed.
 *
 * @param {Group} group
 * @param {Form} form
 * @param {Reply} reply
 */
function there({ figures }, form, { answers, found }) {
  return figures.map(({ name }) => name).filter((name) => name in answers && !form.typedInto(name) && isFigure(name))
    .sort((a, b) => Number(found.includes(b)) - Number(found.includes(a)))
}

/**
 * @param {Form} form
 * @param {Reply} reply
 */
export function showFigures(form, reply) {
  const used = groups.filter(({ part }) => form.uses(part))
  const shown = used.map((group) => ({ group, names: there(group, form, reply) }))
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
  const { answers, found } = reply
  const name = figure.dataset.answer ?? ''
  const { cautions } = about(reply, name)
  const level = ['stop', 'warn', 'note'].find((level) => level in cautions) ?? ''
  const [, main, word, span] = figure.children
  put(main, answers[name]?.text ?? '')
  put(span, rangeOf(name, reply))
  put(word, { stop: 'stop', warn: 'take care' }[level] ?? '')
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
