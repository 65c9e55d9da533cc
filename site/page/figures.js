/**
 * The figures behind the sentence: those that there are, by parts, each with its
 * label. The list is made anew when other figures come; else only their texts
 * change.
 */
import { make, put } from './element.js'

/** @typedef {import('../engine/client.js').Reply} Reply */

const place = /** @type {HTMLElement} */ (document.getElementById('figures'))

/**
 * The figures' names and labels, by parts, as the page has them.
 *
 * @type {{title: string, figures: {name: string, label: string}[]}[]}
 */
const groups = [...place.querySelectorAll('section')].map((section) => ({
  title: section.querySelector('h2')?.textContent ?? '',
  figures: [...section.querySelectorAll('div')].map((item) => ({
    name: item.dataset.answer ?? '',
    label: item.querySelector('dt')?.textContent ?? '',
  })),
}))

/**
 * A figure's label.
 *
 * @param {string} name
 */
export function labelOf(name) {
  return groups.flatMap(({ figures }) => figures).find((figure) => figure.name === name)?.label ?? name
}

/** @param {Reply} reply */
export function showFigures(reply) {
  const names = Object.keys(reply.answers).join()
  if (place.dataset.names !== names) {
    place.dataset.names = names
    place.replaceChildren(...groups.flatMap(({ title, figures }) => {
      const there = figures.filter(({ name }) => name in reply.answers)
      return there.length > 0 ? [groupOf(title, there)] : []
    }))
  }
  for (const figure of place.querySelectorAll('div')) fillFigure(figure, reply)
}

/**
 * @param {string} title
 * @param {{name: string, label: string}[]} figures
 */
function groupOf(title, figures) {
  const list = make('dl')
  for (const { name, label } of figures) {
    const item = make('div', make('dt', label), make('dd'))
    item.dataset.answer = name
    list.append(item)
  }
  return make('section', make('h2', title), list)
}

/**
 * @param {HTMLElement} figure
 * @param {Reply} reply
 */
function fillFigure(figure, { answers, found, cautions }) {
  const name = figure.dataset.answer ?? ''
  put(figure.querySelector('dd'), answers[name]?.text ?? '')
  figure.classList.toggle('found', found.includes(name))
  figure.dataset.level = cautions.find(({ field }) => field === name)?.level ?? ''
}
