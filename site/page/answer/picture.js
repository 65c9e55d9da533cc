/**
 * The picture in the answer's pane: the cut through the sheet, or depth in time.
 * It is drawn after the answer is shown, which never waits for it, and only while
 * it is in sight. Where nothing can be drawn, a picture of what will come stands in
 * its place, with a line that says what is needed.
 */
import { textOf } from '../../engine/fields.js'
import { newestOnly } from './newest.js'
import { show } from './svg.js'
import { byId, put } from '../element.js'
import { stopsOf } from './words.js'

/**
 * @typedef {'section' | 'curve'} Sort
 */

/** The line shown if nothing can be drawn. */
const wanted = {
  section: 'A cut through your sheet is drawn here once a depth is known.',
  curve: 'Depth is drawn here against time once a metal and a current density are known.',
}

/** @param {import('../page.js').Desk} desk */
export function setUpPicture(desk) {
  const figure = byId('cut')
  const svg = /** @type {SVGSVGElement} */ (figure.querySelector('[role="img"]'))
  const caption = figure.querySelector('figcaption')
  const buttons = [...figure.querySelectorAll('button')]
  let inSight = false
  /** The fields of the newest answer. @type {Record<string, string> | undefined} */
  let asked

  const sort = () => /** @type {Sort} */ (/** @type {HTMLInputElement} */ (figure.querySelector(':checked')).value)

  const draw = newestOnly(async () => {
    const chosen = sort()
    const drawing = asked && (await desk.bench()?.draw(textOf(asked)))?.[chosen]
    if (drawing) show(svg, drawing)
    figure.classList.toggle('drawn', drawing !== undefined)
    put(caption, drawing?.title ?? wanted[sort()])
    for (const button of buttons) button.disabled = !drawing
  })

  new IntersectionObserver((seen) => {
    inSight = seen.some(({ isIntersecting }) => isIntersecting)
    if (inSight) draw()
  }).observe(figure)
  desk.onReply((reply, fields) => {
    asked = fields
    figure.hidden = stopsOf(reply).length > 0 // which leaves no picture that says otherwise
    if (inSight && !figure.hidden) draw()
  })
  figure.addEventListener('change', draw)
}
