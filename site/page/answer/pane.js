/**
 * The answer's pane: the sentence, whether the supply will do, four figures, the
 * cautions, and all figures. The sentence comes first and is seen at once; it is
 * spoken after a pause, not at every key.
 */
import { byId, make, mark, put, renew } from '../element.js'
import { atOdds, levelWord, stopsOf } from './words.js'
import { showCautions } from './cautions.js'
import { showBar, showMain, speaksAgainst } from './core.js'
import { isFigure, labelOf, rangeOf, showFigures } from './figures.js'
import { inLarge, leadsSentence, showVerdict } from './verdict.js'

/**
 * @typedef {import('../../engine/client.js').Reply} Reply
 * @typedef {import('../form/form.js').Form} Form
 */

/** The text while nothing is typed; it is in the page from the start. */
const first = byId('sentence').textContent ?? ''

/** How long after the last change the sentence is spoken, in milliseconds. */
const pause = 1000

/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer

/**
 * What is painted first: the sentence and its range, and on a small page the core
 * of them.
 *
 * @param {Form} form
 * @param {Reply} reply
 * @param {Record<string, string>} asked
 */
export function showSentence(form, reply, asked) {
  const sentence = inLarge(reply) || instead(form, reply)
  const figures = [...Object.values(reply.answers), ...reply.rows.bites.map(({ amperes }) => amperes)].map(({ text }) => text).concat(Object.values(asked).filter((text) => /^\d.* \D/.test(text)))
  say(sentence, figures, reply)
  renew(byId('likely'), reply.sentence ? likely(reply) : fourth(form, reply))
  showBar(form.empty && !reply.sentence ? 'Type a metal, a size and a depth' : sentence, reply, asked.ask)
}

/**
 * What comes after the frame in which the sentence is painted.
 *
 * @param {Form} form
 * @param {Reply} reply
 * @param {Record<string, string>} asked
 */
export function showPane(form, reply, { ask }) {
  showWaysOut(form, reply)
  showStart(form, reply)
  showVerdict(reply)
  showMain(reply, ask)
  showFigures(form, reply)
  showAll(reply)
  showCautions(form, reply)
  speakSoon(reply.sentence || instead(form, reply), reply)
}

/**
 * Shows a sentence that is not an answer.
 *
 * @param {string} text
 */
export function sayPlainly(text) {
  say(text, [])
  showBar(text)
}

/**
 * Says that the calculator is not available, and opens the cautions, which apply
 * without it.
 *
 * @param {'lost' | 'folder'} why
 */
export function sayStuck(why) {
  const text = document.querySelector(`[data-stuck="${why}"]`)?.textContent ?? ''
  sayPlainly(text)
  renew(byId('likely'), '')
  put(byId('spoken'), text)
  document.querySelector('.safety')?.setAttribute('open', '')
  document.documentElement.dataset.why = why
}

/** All figures stand folded, with their number; beside a stop none. @param {Reply} reply */
function showAll(reply) {
  const all = byId('all')
  const count = byId('figures').querySelectorAll('dl > div').length
  all.hidden = count === 0 || speaksAgainst(reply)
  all.classList.toggle('used', !all.hidden) // so that paper shows them
  put(all.querySelector('summary span'), `(${count})`)
}

/**
 * A contradiction has a way out for each field in it that can be cleared.
 *
 * @param {Form} form
 * @param {Reply} reply
 */
function showWaysOut(form, reply) {
  const place = byId('ways-out')
  const names = stopsOf(reply).length > 0 ? [] : atOdds(reply).filter((name) => form.typedInto(name) && !form.locked.has(name))
  const key = names.join(' ')
  if (place.dataset.shown === key) return
  place.dataset.shown = key
  place.replaceChildren(...names.map((name) => {
    const button = make('button', `Clear the ${form.rows.get(name)?.label.toLowerCase()}`)
    button.setAttribute('type', 'button')
    button.addEventListener('click', () => {
      document.dispatchEvent(new CustomEvent('clear-field', { detail: name }))
      byId('say').focus()
    })
    return button
  }))
}

/**
 * The text in place of a sentence that is not there yet.
 *
 * @param {Form} form
 * @param {Reply} reply
 */
function instead(form, reply) {
  const { answers, errors, found } = reply
  if (form.empty) {
    return first
  }
  const wrong = labels(form, errors.filter(({ code }) => code !== 'missing'))
  if (wrong) return `Check: ${wrong}.`
  const missing = labels(form, errors.filter(({ code }) => code === 'missing'))
  if (missing) return `Still blank: ${missing}.`
  if (found.length > 0) return `${found.map((name) => `${labelOf(name)} ${answers[name]?.text}`).join(', ')}.`
  return Object.keys(answers).some(isFigure) ? 'The answers stand among the figures.' : 'Type more to get an answer.'
}

/**
 * @param {Form} form
 * @param {{field: string}[]} errors
 */
function labels(form, errors) {
  const names = new Set(errors.map(({ field }) => form.rows.get(field)?.label.toLowerCase()))
  names.delete(undefined)
  return [...names].join(', ')
}

/** What goes on about the piece is as large as what it goes on from. */
const end = /\. (?=\p{Lu})(?!Leave it|It is deep)/u

/**
 * The first sentence is set large; what follows it, smaller. A stop or a
 * contradiction in its place has a shape and, like a stop, a word.
 *
 * @param {string} text
 * @param {string[]} figures the parts of it to be shown in bold
 * @param {Reply} [reply]
 */
function say(text, figures, reply) {
  const place = byId('sentence')
  const level = stopsOf(reply).length > 0 ? 'stop' : reply && atOdds(reply).length > 0 ? 'warn' : ''
  const key = `${level} ${text}`
  if (place.dataset.said === key) return
  place.dataset.said = key
  place.classList.toggle('quiet', !reply?.sentence)
  mark(place, 'data-level', level)
  const first = text.slice(0, ((leadsSentence(reply) ? /\. /u : end).exec(text)?.index ?? text.length) + 2)
  const sign = level ? [shape(level), ...level === 'stop' ? [make('strong', levelWord.stop), ' '] : []] : []
  const strong = level ? [] : figures.filter((figure) => figure && text.includes(figure)).sort((a, b) => b.length - a.length)
  place.replaceChildren(...sign, ...bold(first, strong), make('span', ...bold(text.slice(first.length), strong)))
}

/** @param {string} level */
function shape(level) {
  const sign = /** @type {Element} */ (byId('bar').querySelector('.mark')).cloneNode(true)
  if (!(sign instanceof Element)) return ''
  sign.removeAttribute('hidden')
  sign.children[0].setAttribute('href', `#mark-${level}`)
  return sign
}

/**
 * The sentence with its figures in bold, none of them broken over two lines.
 *
 * @param {string} sentence
 * @param {string[]} figures the longest first, since a short one may be a part of it
 * @returns {(string | HTMLElement)[]}
 */
function bold(sentence, figures) {
  for (const figure of figures) {
    const from = wholeAt(sentence, figure)
    if (from < 0) continue
    const rest = sentence.slice(from + figure.length)
    return [...bold(sentence.slice(0, from), figures), make('b', figure), ...bold(rest, figures)]
  }
  return [sentence]
}

/**
 * The position of a figure in a sentence, as a whole: not as the end of a longer
 * number or the beginning of a longer unit.
 *
 * @param {string} sentence
 * @param {string} figure
 */
function wholeAt(sentence, figure) {
  for (let from = sentence.indexOf(figure); from >= 0; from = sentence.indexOf(figure, from + 1)) {
    const before = sentence[from - 1] ?? ' '
    const after = sentence[from + figure.length] ?? ' '
    if (!/[\d.,/-]/.test(before) && !/[\p{L}\d/]/u.test(after)) return from
  }
  return -1
}

/**
 * Help while it is not clear which of the four is sought. Beside a stop it would be
 * read as the reason for the stop.
 *
 * @param {Form} form
 * @param {Reply} reply
 */
function fourth(form, reply) {
  const { errors } = reply
  if (stopsOf(reply).length > 0) return ''
  const open = form.empty || errors.some(({ code }) => code === 'missing')
  return open ? 'Any three of depth, time, current and exposed area give the fourth.' : ''
}

/**
 * The likely range of the sought value, or of the time left of a run under way, and
 * when it is ready. Not beside a stop, where there is no room for it.
 *
 * @param {Reply} reply
 */
function likely(reply) {
  if (speaksAgainst(reply)) return ''
  const { answers } = reply
  const said = 'depthNow' in answers ? ['timeLeft'] : 'depthSoFar' in answers ? ['readyIn'] : reply.found
  const ranges = said.map((name) => rangeOf(name, reply)).filter(Boolean).join(', ')
  const ready = answers.readyAt?.text
  return [ranges && `Likely ${ranges}.`, ready && `Ready at ${ready}.`].filter(Boolean).join(' ')
}

/**
 * Where the sentence says what a suggested density comes to, one touch takes it;
 * where the form is empty, one fills in the example.
 *
 * @param {Form} form
 * @param {Reply} reply
 */
function showStart(form, { answers: { density, suggestedDensity, suggestedTime }, sentence }) {
  const says = suggestedTime ?? suggestedDensity // of steps the density alone
  const there = says !== undefined && !density && form.blank('density') && form.blank('current') && sentence.includes(says.text)
  byId('start-example').hidden = !form.empty
  const button = byId('start-with')
  button.hidden = !there
  if (!there) return
  mark(button, 'data-text', suggestedDensity.text.split(' ')[0])
  put(button, `Use ${suggestedDensity.text}`)
}

/**
 * @param {string} sentence
 * @param {Reply} reply
 */
function speakSoon(sentence, { cautions, errors }) {
  clearTimeout(timer)
  timer = setTimeout(() => {
    const focused = document.activeElement?.id
    const error = errors.find(({ field, code }) => field === focused && code !== 'missing')
    const stops = cautions.filter(({ level }) => level === 'stop').map(({ text }) => `${levelWord.stop} ${text}`)
    put(byId('spoken'), error ? error.text : stops.join(' ') || sentence)
  }, pause)
}
