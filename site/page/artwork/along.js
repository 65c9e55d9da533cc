/**
 * A line across the picture, whose ends a finger or the arrow keys move, and the cut
 * through the sheet along it, which the bench draws.
 */
import { textOf } from '../../engine/fields.js'
import { newestOnly } from '../answer/newest.js'
import { picture, show } from '../answer/svg.js'
import { make, mark, put } from '../element.js'
import { movable } from './handle.js'

/** Places are in per cent of the picture. */
const whole = { width: 100, height: 100 }

/** Where the line begins, and how far a key moves an end with Shift. */
const first = [{ x: 10, y: 50 }, { x: 90, y: 50 }]
const stride = 5

const failed = 'It could not be drawn here. Ask again.'

/** @typedef {{map?: import('../../engine/client.js').PictureMap, solved?: import('../../engine/client.js').EvenMap}} Maps of the picture that stands there */

/**
 * @param {import('../page.js').Desk} desk
 * @param {{view: HTMLElement, section: Element, maps: Maps}} place the picture's frame, what the cut stands in, and what is known of the picture
 */
export function setUp(desk, { view, section, maps }) {
  const ends = first.map((end) => ({ ...end }))
  const { lines, across } = overlay()
  const handles = ['A', 'B'].map((name, at) => handleOf(name, at))
  view.append(across, ...handles)
  const svg = picture(), words = make('p')
  mark(words, 'role', 'status')
  const figure = make('figure', svg, words)
  section.append(figure)
  let on = false

  const draw = newestOnly(async () => {
    const { map, solved } = maps, bench = desk.bench()
    if (!on || !map?.values || !bench) return
    const { drawing, errors: [wrong] } = await bench.along({ map, solved, line: ends.flatMap(({ x, y }) => [x / 100, y / 100]) }, textOf(desk.form.fields()), {})
    mark(svg, 'class', drawing ? 'drawing' : 'unseen')
    if (drawing) show(svg, drawing)
    put(words, drawing?.words ?? (wrong?.code === 'internal' ? failed : wrong ? `${labelOf(wrong.field)}: ${wrong.text}` : ''))
  })
  desk.onReply(() => void draw())

  /** @param {string} field */
  const labelOf = (field) => desk.form.rows.get(field)?.element.querySelector('label')?.textContent?.trim() ?? ''

  function lay() {
    for (const [at, { x, y }] of ends.entries()) {
      handles[at].style.insetInlineStart = `${x}%`
      handles[at].style.insetBlockStart = `${y}%`
    }
    for (const line of lines) mark(line, 'd', `M${ends.map(({ x, y }) => `${x} ${y}`).join('L')}`)
    void draw()
  }

  /** @param {number} at @param {{x: number, y: number}} to */
  function move(at, { x, y }) {
    ends[at] = { x: Math.min(Math.max(x, 0), 100), y: Math.min(Math.max(y, 0), 100) }
    lay()
  }

  /** @param {string} name @param {number} at */
  function handleOf(name, at) {
    const handle = /** @type {HTMLButtonElement} */ (make('button', make('span', name)))
    handle.type = 'button'
    handle.className = 'end'
    mark(handle, 'aria-label', `End ${name} of the cut. Arrow keys move it.`)
    movable(handle, { view, size: () => whole, at: () => ends[at], move: (to) => move(at, to), stride })
    return handle
  }

  return {
    /** @param {boolean} to */
    show(to) {
      on = to
      for (const element of [...handles, figure]) element.hidden = !on
      across.toggleAttribute('hidden', !on)
      if (on) lay()
    },
    /** What is known of the picture has changed. */
    follow: () => void draw(),
  }
}

/** The line itself, light under dark, over the picture. */
function overlay() {
  const space = 'http://www.w3.org/2000/svg'
  const across = document.createElementNS(space, 'svg')
  mark(across, 'class', 'across')
  mark(across, 'aria-hidden', 'true')
  mark(across, 'viewBox', '0 0 100 100')
  mark(across, 'preserveAspectRatio', 'none')
  const lines = ['halo', 'line'].map((role) => {
    const line = document.createElementNS(space, 'path')
    mark(line, 'data-mark', role)
    return line
  })
  across.append(...lines)
  return { lines, across }
}
