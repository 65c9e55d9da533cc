/**
 * The picture in the answer's pane: the cut through the sheet, or depth in time.
 * It is drawn after the answer is shown, which never waits for it, and only while
 * it is in sight. Where nothing can be drawn, a sheet that is not cut yet stands
 * in its place, with a line that says what is wanted.
 */
import { textOf } from '../engine/fields.js'
import { savePNG, saveSVG } from './download.js'
import { show } from './drawing.js'
import { at, put } from './element.js'

/**
 * @typedef {import('../engine/client.js').Reply} Reply
 * @typedef {'section' | 'curve'} Sort
 */

/** What a saved picture is called by. */
const named = { section: 'cut', curve: 'depth in time' }

/** What is said where nothing can be drawn. */
const wanted = {
  section: 'A cut through the sheet is drawn here once a depth is known.',
  curve: 'Depth is drawn here against time once a metal and a current density are known.',
}

/** @param {import('./page.js').Desk} desk */
export function setUpPicture(desk) {
  const figure = at('cut')
  const svg = /** @type {SVGSVGElement} */ (figure.querySelector('[role="img"]'))
  const caption = figure.querySelector('figcaption')
  const buttons = [...figure.querySelectorAll('button')]
  let inSight = false
  /** What the newest answer is that of. @type {Record<string, string> | undefined} */
  let asked

  /** @returns {Sort} */
  const sort = () => (figure.querySelector(':checked[value="curve"]') ? 'curve' : 'section')

  const draw = newestOnly(async () => {
    const chosen = sort()
    const drawing = asked && (await desk.bench()?.draw(textOf(asked)))?.[chosen]
    if (drawing) show(svg, drawing)
    figure.classList.toggle('drawn', drawing !== undefined)
    put(caption, drawing ? drawing.title : wanted[chosen])
    for (const button of buttons) button.disabled = !drawing
  })

  new IntersectionObserver((seen) => {
    inSight = seen.some(({ isIntersecting }) => isIntersecting)
    if (inSight) draw()
  }).observe(figure)
  desk.onReply((_, fields) => {
    asked = fields
    if (inSight) draw()
  })
  figure.addEventListener('change', draw)

  figure.addEventListener('click', (event) => {
    const kind = /** @type {Element} */ (event.target).closest('button')?.dataset.save
    const name = nameOf(sort(), desk.reply())
    if (kind === 'svg') saveSVG(svg, name)
    if (kind === 'png') void savePNG(svg, name)
  })
}

/**
 * Does a work again and again, as it is asked for: one at a time, and of what is
 * asked for meanwhile only the last.
 *
 * @param {() => Promise<void>} work
 */
export function newestOnly(work) {
  let busy = false
  let again = false
  return async () => {
    again = true
    if (busy) return
    busy = true
    while (again) {
      again = false
      await work().catch(() => {}) // a picture that fails is no picture
    }
    busy = false
  }
}

/**
 * What a picture's file is called: of what, into which metal, how deep.
 *
 * @param {Sort} sort
 * @param {Reply} [reply]
 */
function nameOf(sort, reply) {
  const parts = ['saltbite', named[sort], reply?.rows.metal[0]?.family, reply?.answers.depth?.text.replace(/(?<=\d) /g, '')]
  return parts.filter(Boolean).join('-').toLowerCase().replace(/[^a-z0-9.]+/g, '-')
}
