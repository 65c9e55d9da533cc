/**
 * The answer's pane: the sentence, the figures behind it, the cautions. The
 * sentence is seen at once and spoken after a pause, not at every key.
 */
import { at, frameOf, make, mark, put, renew } from './element.js'
import { isFigure, labelOf, rangeOf, showFigures } from './figures.js'
import { suggestion } from './rows.js'
import { isSourced } from './sources.js'

/**
 * @typedef {import('../engine/client.js').Reply} Reply
 * @typedef {import('../engine/client.js').Caution} Caution
 * @typedef {import('./sheet.js').Sheet} Sheet
 */

/** What the page says while nothing is typed: it stands there from the start. */
const first = at('sentence').textContent ?? ''

/** How long the sheet rests before the sentence is spoken, in milliseconds. */
const pause = 1000

/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer

/**
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
export function showPane(sheet, reply) {
  const sentence = reply.sentence || instead(sheet, reply)
  say(sentence, Object.values(reply.answers).map(({ text }) => text), reply)
  renew(at('likely'), reply.sentence ? likely(reply) : fourth(sheet, reply))
  showStart(sheet, reply)
  showFigures(sheet, reply)
  showCautions(sheet, reply)
  speakSoon(sentence, reply)
}

/**
 * Says something that is no answer.
 *
 * @param {string} text
 */
export function sayPlainly(text) {
  say(text, [])
}

/**
 * Says that the calculator is not there, and opens the cautions, which hold
 * without it.
 *
 * @param {'lost' | 'folder'} why
 */
export function sayStuck(why) {
  const text = document.querySelector(`[data-stuck="${why}"]`)?.textContent ?? ''
  sayPlainly(text)
  renew(at('likely'), '')
  put(at('spoken'), text)
  document.querySelector('.safety')?.setAttribute('open', '')
}

/**
 * What stands in the sentence's place while there is none.
 *
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function instead(sheet, reply) {
  const { answers, errors, found } = reply
  if (sheet.empty) {
    return first
  }
  if (stopsOf(reply).length > 0) return ''
  const wrong = labels(sheet, errors.filter(({ code }) => code !== 'missing'))
  if (wrong) return `To look at again: ${wrong}.`
  const start = suggestion(sheet, answers)?.sentence
  if (start) return start
  const missing = labels(sheet, errors.filter(({ code }) => code === 'missing'))
  if (missing) return `Still blank: ${missing}.`
  if (found.length > 0) return `${found.map((name) => `${labelOf(name)} ${answers[name]?.text}`).join(', ')}.`
  return Object.keys(answers).some(isFigure) ? 'What follows from that stands among the figures.' : 'Nothing to work out yet.'
}

/**
 * @param {Sheet} sheet
 * @param {{field: string}[]} errors
 */
function labels(sheet, errors) {
  const names = new Set(errors.map(({ field }) => sheet.rows.get(field)?.label.toLowerCase()))
  names.delete(undefined)
  return [...names].join(', ')
}

/**
 * The first sentence is set large; what follows it, smaller. What stops the job
 * comes before its answer.
 *
 * @param {string} text
 * @param {string[]} figures what in it is set bold
 * @param {Reply} [reply]
 */
function say(text, figures, reply) {
  const place = at('sentence')
  const stops = stopsOf(reply).map((stop) => make('strong', stop))
  const key = [...stops.map(({ textContent }) => textContent), text].join(' ')
  if (place.dataset.said === key) return
  place.dataset.said = key
  place.classList.toggle('quiet', !reply?.found.length && !reply?.sentence && !reply?.answers.suggestedTime)
  const end = /\. (?=\p{Lu})/u.exec(text)
  const first = stops.length > 0 ? '' : text.slice(0, end ? end.index + 2 : undefined)
  place.replaceChildren(...stops, ...bold(first, figures), make('span', ...bold(text.slice(first.length), figures)))
}

/** @param {Reply} [reply] */
function stopsOf(reply) {
  const stops = reply?.cautions.filter(({ level }) => level === 'stop') ?? []
  return stops.map(({ text, card }) => `Stop: ${card ? `${card}.` : text}`)
}

/**
 * A reply in words alone: what stops the job, then its answer; '' if there is neither.
 *
 * @param {Reply} [reply]
 */
export function inWords(reply) {
  return [...stopsOf(reply), reply?.sentence].filter(Boolean).join(' ')
}

/**
 * The sentence with its figures in bold, none of them broken over two lines.
 *
 * @param {string} sentence
 * @param {string[]} figures
 * @returns {(string | HTMLElement)[]}
 */
function bold(sentence, figures) {
  const longestFirst = figures.filter(Boolean).sort((a, b) => b.length - a.length)
  for (const figure of longestFirst) {
    const from = wholeAt(sentence, figure)
    if (from < 0) continue
    const rest = sentence.slice(from + figure.length)
    return [...bold(sentence.slice(0, from), figures), make('b', figure), ...bold(rest, figures)]
  }
  return [sentence]
}

/**
 * Where a figure stands in a sentence as a whole, not as the end of a longer
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
 * What helps where it is not clear yet which of the four is sought. Beside a stop
 * it would be read as what is wrong.
 *
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function fourth(sheet, reply) {
  const { answers, errors } = reply
  if (stopsOf(reply).length > 0 || suggestion(sheet, answers)?.sentence) return ''
  const open = sheet.empty || errors.some(({ code }) => code === 'missing')
  return open ? 'Any three of depth, time, current and open area make the fourth.' : ''
}

/**
 * How far the sought one may be off, and when it is ready. Beside a stop there
 * is no room for it, and no use.
 *
 * @param {Reply} reply
 */
function likely(reply) {
  if (stopsOf(reply).length > 0) return ''
  const ranges = reply.found.map((name) => rangeOf(name, reply)).filter(Boolean).join(', ')
  const ready = reply.answers.readyAt?.text
  return [ranges && `Likely ${ranges}.`, ready && `Ready at ${ready}.`].filter(Boolean).join(' ')
}

/**
 * Where the sentence is a suggestion, one touch takes it; where the sheet is
 * empty, one fills in the example.
 *
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function showStart(sheet, reply) {
  const start = reply.sentence ? undefined : suggestion(sheet, reply.answers)
  const there = start !== undefined && at('sentence').textContent === start.sentence
  at('start-example').hidden = !sheet.empty
  const button = at('start-with')
  button.hidden = !there
  if (!there) return
  mark(button, 'data-text', start.density.split(' ')[0])
  put(button, `Use ${start.density}`)
}

const grave = { stop: 0, warn: 1, note: 2 }
const levelWord = { stop: 'Stop.', warn: 'Take care.', note: 'Note.' }

/**
 * The list is made anew when other cautions come; else only their texts change.
 *
 * @param {Sheet} sheet
 * @param {Reply} reply
 */
function showCautions(sheet, { cautions, errors }) {
  /** @type {Caution[]} */
  const astray = errors.filter(({ field }) => !sheet.rows.has(field) && field !== 'find')
    .map(({ field, code, text }) => ({ code, level: 'warn', field, text }))
  const all = [...astray, ...cautions].sort((a, b) => grave[a.level] - grave[b.level])
  const shown = JSON.stringify(all.map(({ code, level, field }) => [code, level, field]))
  const list = at('cautions')
  if (list.dataset.shown === shown) {
    for (const [place, caution] of all.entries()) sayCaution(list.children[place], caution)
    return
  }
  const next = /** @type {HTMLElement} */ (list.cloneNode(false))
  next.dataset.shown = shown
  next.append(...all.map((caution) => cautionItem(sheet, caution)))
  list.replaceWith(next)
  showMore(all.length)
}

/**
 * A caution in full, and as the line of it that a narrow page has room for.
 *
 * @param {Element} item
 * @param {Caution} caution
 */
function sayCaution(item, { text, card }) {
  put(item.querySelector('.text'), text)
  put(item.querySelector('.brief'), card || text)
}

/** On a narrow page the first caution stands in brief, and a touch unrolls them all. */
const unroll = at('unroll')
let cautions = 0
let unrolled = false

/** @param {number} count */
function showMore(count) {
  cautions = count
  unrolled &&= count > 0
  showUnrolled()
}

function showUnrolled() {
  unroll.hidden = cautions === 0
  unroll.setAttribute('aria-expanded', String(unrolled))
  unroll.parentElement?.classList.toggle('unrolled', unrolled)
  put(unroll.querySelector('.word'), unrolled ? 'close' : cautions > 1 ? `${cautions - 1} more` : 'more')
}

unroll.addEventListener('click', () => {
  unrolled = !unrolled
  showUnrolled()
})

/**
 * @param {Sheet} sheet
 * @param {Caution} caution
 */
function cautionItem(sheet, caution) {
  const { code, level, field } = caution
  const item = frameOf('caution')
  item.setAttribute('data-level', level)
  item.querySelector('use')?.setAttribute('href', `#mark-${level}`)
  put(item.querySelector('strong'), levelWord[level])
  sayCaution(item, caution)
  const link = /** @type {HTMLAnchorElement} */ (item.querySelector('a'))
  const row = sheet.rows.get(field ?? '')
  if (row) {
    link.href = `#${row.name}`
    link.textContent = row.label
  } else {
    link.remove()
  }
  const why = /** @type {HTMLButtonElement} */ (item.querySelector('.why'))
  why.dataset.origin = `caution-${code}`
  why.disabled = !isSourced(`caution-${code}`)
  return item
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
    put(at('spoken'), error ? error.text : [sentence, ...stops].join(' '))
  }, pause)
}
