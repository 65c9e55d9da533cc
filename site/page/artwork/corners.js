/**
 * The four corners of the sheet in a photograph, and the two ends of a ruler: handles
 * that a finger or the arrow keys move. While one moves, a magnifier shows what the
 * finger hides.
 */
import { make, mark } from '../element.js'
import { movable } from './handle.js'
import { placesOf, textOf } from './places.js'

/** @typedef {{x: number, y: number}} Place in pixels of the photograph */
/** @typedef {{image: CanvasImageSource, width: number, height: number}} Photograph */

/** @typedef {{names: string[], role: string}} Kind what the handles are called, and the class of theirs and of their line; their hint has the id art- and that */

/** @type {Kind} */
export const corners = { names: ['Top left', 'Top right', 'Bottom right', 'Bottom left'].map((name) => `${name} corner of the sheet`), role: 'corners' }

/** @type {Kind} */
export const ruler = { names: ['One end of the ruler', 'Other end of the ruler'], role: 'ruler' }

/** How far from the picture's edges they begin, as a share of it. */
const margin = 0.06

/** How many pixels a key moves one with Shift. */
const stride = 10

/** How much larger than on the page the magnifier shows. */
const times = 3

/** How long the keys rest before the places count as moved, in milliseconds. */
const rest = 500

/** @typedef {{width: number, height: number}} Size */

/** Where the corners of a photograph begin. @param {Size} size */
export const cornersAtFirst = (size) => cornersIn(size, margin)

/** The corners of the whole picture. @param {Size} size */
export const cornersOfAll = (size) => cornersIn(size, 0)

/** Where the ends of a ruler begin. @param {Size} size */
export const rulerAtFirst = (size) => textOf([at(size, 1 / 4, 1 / 2), at(size, 3 / 4, 1 / 2)])

/** @param {Size} size @param {number} near */
function cornersIn(size, near) {
  const far = 1 - near
  return textOf([at(size, near, near), at(size, far, near), at(size, far, far), at(size, near, far)])
}

/** @param {Size} size @param {number} u @param {number} v */
const at = ({ width, height }, u, v) => ({ x: Math.round(u * width), y: Math.round(v * height) })

/**
 * @param {HTMLElement} view the photograph's frame, which the handles are laid on
 * @param {Kind} kind
 * @param {(text: string) => void} moved hears the places once they rest
 */
export function setUpHandles(view, { names, role }, moved) {
  const outline = /** @type {SVGPathElement} */ (view.querySelector(`path.${role}`))
  const glass = /** @type {HTMLElement} */ (view.querySelector('.glass'))
  const seen = /** @type {HTMLCanvasElement} */ (glass.querySelector('canvas'))
  const handles = names.map((name, at) => handleOf(name, at))
  view.append(...handles)

  /** @type {Photograph | undefined} */
  let photograph
  /** @type {Place[]} */
  let places = []
  /** The handle that is being moved, and not yet told. */
  let moving = -1
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting

  /** @param {string} name @param {number} at */
  function handleOf(name, at) {
    const handle = /** @type {HTMLButtonElement} */ (make('button'))
    handle.type = 'button'
    handle.className = `handle ${role}`
    mark(handle, 'aria-label', name)
    mark(handle, 'aria-describedby', `art-${role}`)
    const leave = () => {
      glass.hidden = true
      tell()
    }
    movable(handle, {
      view,
      size: () => photograph ?? { width: 1, height: 1 },
      at: () => places[at] ?? { x: 0, y: 0 },
      move: (to) => move(at, to),
      stride,
      taken: () => magnify(at),
      left: leave,
      keyed: () => {
        clearTimeout(resting)
        resting = setTimeout(tell, rest)
      },
    })
    handle.addEventListener('focus', () => { if (handle.matches(':focus-visible')) magnify(at) })
    handle.addEventListener('blur', leave)
    return handle
  }

  /** @param {number} at @param {Place} to */
  function move(at, { x, y }) {
    if (!photograph) return
    const within = (/** @type {number} */ v, /** @type {number} */ most) => Math.round(Math.min(Math.max(v, 0), most))
    const to = { x: within(x, photograph.width), y: within(y, photograph.height) }
    if (to.x === places[at].x && to.y === places[at].y) return
    places[at] = to
    moving = at
    lay()
    magnify(at)
  }

  /** Tells where the places are, if one was moved. */
  function tell() {
    clearTimeout(resting)
    if (moving < 0) return
    moving = -1
    moved(textOf(places))
  }

  function lay() {
    if (!photograph) return
    const { width, height } = photograph
    for (const [at, { x, y }] of places.entries()) {
      handles[at].style.insetInlineStart = `${100 * x / width}%`
      handles[at].style.insetBlockStart = `${100 * y / height}%`
    }
    mark(outline, 'd', `M${places.map(({ x, y }) => `${x} ${y}`).join('L')}${places.length > 2 ? 'Z' : ''}`)
  }

  /** Shows what lies round a place, on the other half of the picture. @param {number} at */
  function magnify(at) {
    const context = seen.getContext('2d')
    if (!photograph || !context) return
    const { image, width } = photograph
    const { x, y } = places[at]
    glass.classList.toggle('right', x < width / 2)
    glass.hidden = false
    const side = glass.clientWidth
    const shown = side / times * width / view.clientWidth
    seen.width = seen.height = side * Math.min(devicePixelRatio, 2)
    context.drawImage(image, x - shown / 2, y - shown / 2, shown, shown, 0, 0, seen.width, seen.height)
  }

  return {
    /** @param {Photograph | undefined} of */
    show(of) {
      photograph = of
      moving = -1
      glass.hidden = true
      if (of) mark(/** @type {Element} */ (outline.parentElement), 'viewBox', `0 0 ${of.width} ${of.height}`)
    },
    /** Puts the handles where a text says, unless one is being dragged; without a text there are no handles. @param {string} [text] */
    lay(text = '') {
      const said = placesOf(text, names.length)
      if (!photograph || moving >= 0) return
      for (const handle of handles) handle.hidden = !said
      outline.toggleAttribute('hidden', !said)
      if (!said) return
      places = said
      lay()
    },
  }
}
