/**
 * A line across the picture, whose ends a finger or the arrow keys move, and the cut
 * through the sheet along it, which the bench draws.
 */
import { textOf } from '../../engine/fields.js'
import { newestOnly } from '../answer/newest.js'
import { picture, show } from '../answer/svg.js'
import { make, mark, put } from '../element.js'
import { movable } from './handle.js'
import { placesOf, textOf as textOfPlaces } from './places.js'

/** Places are in per cent of the picture, and on the form in thousandths. */
const whole = { width: 100, height: 100 }

/** How far a key moves an end with Shift. */
const stride = 5

/** How long the keys rest before the line counts as moved, in milliseconds. */
const rest = 500

/** @typedef {import('./handle.js').Place} Place */

const failed = 'It could not be drawn here. Ask again.'

/** @typedef {{map?: import('../../engine/client.js').PictureMap, solved?: import('../../engine/client.js').EvenMap}} Maps of the picture that stands there */

/**
 * @param {import('../page.js').Desk} desk
 * @param {{views: HTMLElement[], section: Element, maps: Maps}} place the frames of the picture and of the depths over it, what the cut stands in, and what is known of the picture
 */
export function setUp(desk, { views, section, maps }) {
  /** @type {Place[]} */
  let ends = []
  /** Whether an end was moved, and the form does not know it. */
  let moving = false
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting
  const overlays = views.map(overlay), [view] = views
  const handles = ['A', 'B'].map((name, at) => handleOf(name, at))
  view.append(...handles)
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

  /** @param {string} field */
  const labelOf = (field) => desk.form.rows.get(field)?.element.querySelector('label')?.textContent?.trim() ?? ''

  function lay() {
    for (const [at, { x, y }] of ends.entries()) {
      handles[at].style.insetInlineStart = `${x}%`
      handles[at].style.insetBlockStart = `${y}%`
    }
    for (const over of overlays) over.lay(ends)
    void draw()
  }

  /** Undo takes it back. */
  function tell() {
    clearTimeout(resting)
    if (!moving) return
    moving = false
    desk.undoably(() => desk.form.others.set('along', inThousandths(ends)))
  }

  /** @param {number} at @param {Place} to */
  function move(at, to) {
    ends[at] = within(to)
    moving = true
    lay()
  }

  /** @param {string} name @param {number} at */
  function handleOf(name, at) {
    const handle = /** @type {HTMLButtonElement} */ (make('button', make('span', name)))
    handle.type = 'button'
    handle.className = 'end'
    mark(handle, 'aria-label', `End ${name} of the cut. Arrow keys move it.`)
    movable(handle, { view, size: () => whole, at: () => ends[at], move: (to) => move(at, to), stride, left: tell,
      keyed: () => {
        clearTimeout(resting)
        resting = setTimeout(tell, rest)
      },
    })
    handle.addEventListener('blur', tell)
    return handle
  }

  return {
    /** What is known of the picture has changed, or where the line is; without one it goes. @param {string} [laid] */
    follow(laid) {
      const said = laid && endsOf(laid)
      on = !!said
      for (const element of [...handles, figure]) element.hidden = !on
      for (const { across } of overlays) across.toggleAttribute('hidden', !on)
      if (!said) return
      if (!moving) ends = said
      lay()
    },
  }
}

/** @param {Place[]} ends */
const inThousandths = (ends) => textOfPlaces(ends.map(({ x, y }) => ({ x: 10 * x, y: 10 * y })))

/** @param {string} text in thousandths */
const endsOf = (text) => placesOf(text, 2)?.map(({ x, y }) => within({ x: x / 10, y: y / 10 }))

/** The nearest place on the picture. @param {Place} place */
const within = ({ x, y }) => ({ x: Math.min(Math.max(x, 0), 100), y: Math.min(Math.max(y, 0), 100) })

/**
 * The line itself, light under dark, over a picture; over the depths with the names of its ends.
 *
 * @param {HTMLElement} view
 */
function overlay(view) {
  /** @param {string} tag */
  const svg = (tag) => document.createElementNS('http://www.w3.org/2000/svg', tag)
  const across = svg('svg')
  mark(across, 'class', 'across')
  mark(across, 'aria-hidden', 'true')
  const lines = ['halo', 'line'].map((role) => {
    const line = svg('line')
    mark(line, 'data-mark', role)
    return line
  })
  const names = ['A', 'B'].map((name) => ['halo', 'ring'].map((role) => {
    const text = svg('text')
    mark(text, 'class', role)
    text.textContent = name
    return text
  }))
  across.append(...lines, ...names.flat())
  view.append(across)

  /** @param {Place[]} ends */
  function lay(ends) {
    for (const line of lines) {
      for (const [at, { x, y }] of ends.entries()) {
        mark(line, `x${at + 1}`, `${x}%`)
        mark(line, `y${at + 1}`, `${y}%`)
      }
    }
    for (const [at, { x, y }] of ends.entries()) {
      for (const text of names[at]) {
        mark(text, 'x', `${x}%`)
        mark(text, 'y', `${y}%`)
      }
    }
  }
  return { across, lay }
}
