/**
 * What of a reply is read from a metre away: four figures, and on a page with no
 * room for them a bar with the first two.
 */
import { byId, mark, put } from '../element.js'
import { atOdds, stopsOf } from './words.js'
import { labelOf } from './figures.js'

/** @typedef {import('../../engine/client.js').Reply} Reply */

/** The answers to each question, the first first. What is not there makes room for the next. */
const asked = {
  time: ['time', 'suggestedTime', 'current', 'suggestedCurrent', 'totalArea', 'removedEach'],
  supply: ['cellVolts', 'currentAtVolts', 'ballast', 'ballastWatts'],
  bath: ['partA', 'partB', 'addSalt', 'addWater', 'waterToAdd', 'strengthNow', 'saltMass', 'waterVolume', 'volume', 'saturation'],
  check: ['depthNow', 'depthSoFar', 'timeLeft', 'readyIn', 'efficiencyNow', 'weightAtTarget'],
}

/** Of two that say the same by different means, or of which one only stands in, the better one stands alone. What a used bath was mixed from does not stand beside what it needs. */
const better = [['depthNow', 'depthSoFar'], ['timeLeft', 'readyIn'], ['time', 'suggestedTime'], ['current', 'suggestedCurrent'],
  ['strengthNow', 'saltMass'], ['strengthNow', 'waterVolume']]

const most = 4

/**
 * The names of the figures that answer what is asked. Where nothing is asked, those
 * of a run under way, of the piece, or of the bath.
 *
 * @param {Reply} reply
 * @param {string} [ask]
 */
function leading({ answers, sentence }, ask = '') {
  if (ask === 'bath' && !sentence) return [] // what was mixed would stand there as what is to be added
  const questions = ask in asked ? [ask] : 'depthNow' in answers || 'depthSoFar' in answers ? ['check', 'time'] : ['time', 'bath']
  const worse = better.filter(([one]) => one in answers).map(([, other]) => other)
  const all = questions.map((question) => asked[/** @type {keyof typeof asked} */ (question)].filter((name) => name in answers && !worse.includes(name)))
  return (all.find((names) => names.length > 1) ?? all.find((names) => names.length > 0) ?? []).slice(0, most)
}

/** Whether figures would say otherwise than what stands in the sentence's place. @param {Reply} reply */
export const speaksAgainst = (reply) => stopsOf(reply).length > 0 || atOdds(reply).length > 0

/** An answer as it is read from afar: minutes go without their word beside hours. @param {string} text */
const short = (text) => text.replace(/(\d h \d+) min$/, '$1')

const place = byId('main')

/**
 * @param {Reply} reply
 * @param {string} [ask]
 */
export function showMain(reply, ask) {
  const names = speaksAgainst(reply) ? [] : leading(reply, ask)
  place.hidden = names.length === 0
  for (const [index, item] of [...place.children].entries()) {
    const name = names[index] ?? ''
    item.toggleAttribute('hidden', !name)
    mark(item, 'data-main', name)
    put(item.children[0], name && labelOf(name))
    put(item.children[1], name && short(reply.answers[name].text))
  }
}

const bar = byId('bar')
const core = bar.querySelector('.core')
const sign = /** @type {SVGElement} */ (bar.querySelector('.mark'))

/** Whether the supply can do it, as the bar says it. */
const supplied = { yes: 'Fits', limit: 'Hold it back', no: 'Doesn’t fit' }

/**
 * @param {string} sentence what stands in the sentence's place
 * @param {Reply} [reply] where it is one
 * @param {string} [ask]
 */
export function showBar(sentence, reply, ask) {
  const [stop] = stopsOf(reply)
  const odd = reply !== undefined && atOdds(reply).length > 0
  const figures = reply && !stop && !odd ? leading(reply, ask).slice(0, 2).map((name) => reply.answers[name].text) : []
  // Figures that the sentence does not name are not its core: they are of half a job.
  if (!figures.some((figure) => reply?.sentence.includes(figure))) figures.length = 0
  if (ask === 'supply' && reply?.supply && !stop && !odd) figures.splice(0, 2, supplied[reply.supply.fits], (reply.answers.current ?? reply.answers.suggestedCurrent)?.text ?? '')
  const level = odd ? 'warn' : reply?.cautions[0]?.level
  put(core, stop ? `Stop. ${stop.card || stop.text}` : odd ? 'What is filled in doesn’t fit together' : figures.filter(Boolean).join(' · ') || sentence.replace(/\. .*/su, '.'))
  bar.classList.toggle('figure', figures.length > 0)
  mark(bar, 'data-level', level ?? '')
  sign.toggleAttribute('hidden', !level)
  if (level) mark(sign.children[0], 'href', `#mark-${level}`)
}
