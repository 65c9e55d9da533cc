/**
 * Shows what the bench measured of a picture: the picture with its exposed metal in
 * the metal's tone, what is narrow and grey marked on it, the figures, and what it
 * calls for. All words and figures are the bench's.
 */
import { levelWord } from '../answer/words.js'
import { make, mark, put } from '../element.js'

/** @typedef {import('../../engine/client.js').Measured} Measured */

const drawn = 'http://www.w3.org/2000/svg'

/** The marks that are rings. @type {string[]} */
const rings = ['lost', 'grey']

/** What the marks on the picture are called below it. */
const marks = { line: 'finest line', space: 'finest gap', lost: 'lost line', grey: 'grey' }

/**
 * @param {Element} place
 * @param {Measured} measured
 */
export function showMeasured(place, measured) {
  const canvas = /** @type {HTMLCanvasElement} */ (place.querySelector('canvas'))
  paint(canvas, measured)
  mark(canvas, 'aria-label', measured.sentence)
  const kinds = markPlaces(/** @type {SVGSVGElement} */ (place.querySelector('svg')), measured)
  place.querySelector('figcaption')?.replaceChildren(...kinds.map((kind) => {
    const key = make('span', marks[kind])
    key.dataset.mark = kind
    return key
  }))
  for (const row of place.querySelectorAll('dl [data-answer]')) {
    const { text = '–' } = measured.answers[row.getAttribute('data-answer') ?? ''] ?? {}
    put(row.querySelector('dd'), text)
  }
  place.querySelector('.strips')?.replaceChildren(...measured.cautions.map(stripOf))
}

/**
 * Paints the resist; the metal is the canvas's ground.
 *
 * @param {HTMLCanvasElement} canvas
 * @param {Measured} measured
 */
function paint(canvas, { map }) {
  const context = canvas.getContext('2d')
  if (!map?.values || !context) return
  canvas.width = map.width
  canvas.height = map.height
  const image = context.createImageData(map.width, map.height)
  for (const [at, open] of map.values.entries()) image.data[4 * at + 3] = 255 - open
  context.putImageData(image, 0, 0)
}

/**
 * Marks the narrowest line and gap, the lines that are lost, and the greys; the frame
 * of the marks is the picture's real size.
 *
 * @param {SVGSVGElement} svg
 * @param {Measured} measured
 */
function markPlaces(svg, { answers: { width, height }, rows }) {
  svg.replaceChildren()
  if (!width || !height) return []
  mark(svg, 'viewBox', `0 0 ${width.value} ${height.value}`)
  /** @type {Set<keyof typeof marks>} */
  const kinds = new Set()
  /** @param {keyof typeof marks} kind @param {{x: {value: number}, y: {value: number}}} at */
  const put = (kind, { x, y }) => {
    kinds.add(kind)
    for (const role of ['halo', kind, ...rings.includes(kind) ? ['core'] : []]) {
      const dot = document.createElementNS(drawn, 'path')
      mark(dot, 'data-mark', role)
      mark(dot, 'd', `M${x.value} ${y.value}h0`)
      svg.append(dot)
    }
  }
  for (const grey of rows.greys ?? []) put('grey', grey)
  for (const line of rows.narrow) if (line.lost) put('lost', line)
  for (const kind of /** @type {const} */ (['line', 'space'])) {
    const [first] = rows.narrow.filter((one) => one.kind === kind && !one.lost)
    if (first && !(kind === 'line' && kinds.has('lost'))) put(kind, first)
  }
  return [...kinds]
}

/** @param {import('../../engine/client.js').Caution} caution */
export function stripOf({ level, text }) {
  const sign = document.createElementNS(drawn, 'svg')
  mark(sign, 'class', 'mark')
  mark(sign, 'aria-hidden', 'true')
  const use = document.createElementNS(drawn, 'use')
  mark(use, 'href', `#mark-${level}`)
  sign.append(use)
  const strip = make('li', sign, make('p', make('strong', levelWord[level]), ` ${text}`))
  strip.dataset.level = level
  return strip
}
