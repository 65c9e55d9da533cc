/**
 * Shows the plan of a class: the sentence, what fits instead, the cautions, the
 * figures, the timetable drawn to scale, the steps, and the cards that are printed.
 * All of its texts, and where a bar begins and ends, come from the bench.
 */
import { levelWord } from '../answer/words.js'
import { byId, frameOf, make, put } from '../element.js'

/**
 * @typedef {import('../../engine/client.js').Many} Many
 * @typedef {import('../../engine/client.js').LoadRow} LoadRow
 */

const sentence = byId('sentence')
const spoken = byId('spoken')
const empty = sentence.dataset.empty ?? ''

/** How long after the last answer it is spoken, in milliseconds. */
const rest = 1200

/** @type {ReturnType<typeof setTimeout> | undefined} */
let resting

/**
 * @param {Many} reply
 * @param {string} left what the plan is without; '' if it holds all rows
 */
export function showPlan(reply, left) {
  const { answers, cautions, plan, rows } = reply
  const planned = plan.length > 0
  put(sentence, reply.sentence || empty)
  sentence.classList.toggle('quiet', !reply.sentence)
  put(byId('left-out'), left)
  fill('instead', (rows.instead ?? []).map((text) => make('li', text)))
  fill('cautions', cautions.map(strip))
  byId('planned').hidden = !planned
  for (const place of document.querySelectorAll('[data-answer]')) {
    const answer = answers[place.getAttribute('data-answer') ?? '']
    place.toggleAttribute('hidden', !answer)
    put(place.querySelector('dd'), answer?.text ?? '')
  }
  fill('ticks', (rows.ticks ?? []).map(({ at, text }) => {
    const tick = make('span', text)
    tick.style.setProperty('--at', `${at}%`)
    return tick
  }))
  fill('loads', plan.map(loadOf))
  fill('cards', (rows.cards ?? []).map(cardOf))
  clearTimeout(resting)
  resting = setTimeout(() => put(spoken, [sentence.textContent, left].join(' ').trim()), rest)
}

/** @param {string} id @param {Element[]} elements */
function fill(id, elements) {
  const place = byId(id)
  place.replaceChildren(...elements)
  place.hidden = elements.length === 0
}

/** @param {import('../../engine/client.js').Caution} caution */
function strip({ level, text, card }) {
  const made = frameOf('caution')
  made.dataset.level = level
  made.querySelector('use')?.setAttribute('href', `#mark-${level}`)
  put(made.querySelector('strong'), levelWord[level])
  put(made.querySelector('.brief'), card || text)
  put(made.querySelector('.text'), text)
  return made
}

/** A load: its name, and for each of its pieces a bar. @param {LoadRow} load */
function loadOf({ load, from, text, pieces }) {
  const made = frameOf('load')
  put(made.querySelector('h3'), `Load ${load}`)
  put(made.querySelector('.of'), text)
  made.querySelector('ul')?.append(...pieces.map(({ name, count, to, text }) => {
    const bar = frameOf('bar')
    put(bar.querySelector('.name'), count > 1 ? `${name} × ${count}` : name)
    put(bar.querySelector('.does'), text)
    bar.style.setProperty('--from', `${from}%`)
    bar.style.setProperty('--to', `${to}%`)
    return bar
  }))
  return made
}

/** @param {import('../../engine/client.js').ClassCard} card */
function cardOf({ name, lines }) {
  const made = frameOf('student')
  put(made.querySelector('h3'), name)
  made.querySelector('ul')?.prepend(...lines.map((line) => make('li', line)))
  return made
}
