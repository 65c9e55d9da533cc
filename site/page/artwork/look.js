/**
 * A closer look at what was measured: it is zoomed by two fingers, by keys and by
 * buttons, and what lies under the finger or the pointer is said below it.
 */
import { make, mark, put } from '../element.js'

/** @typedef {import('../../engine/client.js').Measured} Measured */

/** What one key or touch zooms by, and the most. */
const step = 1.5
const most = 10

/** How near to a mark, in pixels of the page, a finger means it. */
const near = 24

/** How far an arrow key moves the picture, as a share of what is seen of it. */
const pan = 0.2

/** What is said of a cell from half exposed on. */
const half = 128

/** @type {Record<string, [number, number]>} */
const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

/** @param {Element} place */
export function setUpLook(place) {
  const view = /** @type {HTMLElement} */ (place.querySelector('.shown .view'))
  const canvas = /** @type {HTMLCanvasElement} */ (view.querySelector('canvas'))
  const lens = make('div')
  lens.className = 'lens'
  lens.tabIndex = 0
  mark(lens, 'role', 'group')
  mark(lens, 'aria-label', 'The picture: + and - zoom it, arrow keys move it')
  view.before(lens)
  lens.append(view)
  const smaller = button('−', 'Zoom out')
  const larger = button('+', 'Zoom in')
  const said = make('p')
  said.className = 'under'
  mark(said, 'role', 'status')
  const row = make('div', smaller, larger, said)
  row.className = 'look'
  place.querySelector('.shown figure')?.after(row)

  let zoom = 1
  /** The picture's width and height on the page as they are unzoomed. */
  let fitted = { width: 0, height: 0 }
  /** @type {Measured | undefined} */
  let measured

  /**
   * @param {number} to
   * @param {{x: number, y: number}} [about] a place of the window that stays where it is; blank: the middle
   */
  function zoomTo(to, about) {
    const next = Math.min(Math.max(to, 1), most)
    if (zoom === 1) fitted = { width: canvas.clientWidth, height: canvas.clientHeight }
    if (next === zoom || fitted.width === 0) return
    const box = lens.getBoundingClientRect()
    const { x, y } = about ?? { x: box.left + box.width / 2, y: box.top + box.height / 2 }
    const before = canvas.getBoundingClientRect()
    const [u, v] = [(x - before.left) / before.width, (y - before.top) / before.height]
    zoom = next
    const zoomed = zoom > 1
    lens.classList.toggle('near', zoomed)
    lens.style.blockSize = zoomed ? `${fitted.height}px` : ''
    canvas.style.inlineSize = zoomed ? `${fitted.width * zoom}px` : ''
    const after = canvas.getBoundingClientRect()
    lens.scrollLeft += after.left + u * after.width - x
    lens.scrollTop += after.top + v * after.height - y
    smaller.disabled = !zoomed
    larger.disabled = zoom === most
  }

  smaller.disabled = true
  smaller.addEventListener('click', () => zoomTo(zoom / step))
  larger.addEventListener('click', () => zoomTo(zoom * step))
  addEventListener('resize', () => zoomTo(1))

  lens.addEventListener('keydown', (event) => {
    const { key } = event
    const way = arrows[key]
    if (event.ctrlKey || event.metaKey || event.altKey) return // the browser's own
    if (key === '+' || key === '=') zoomTo(zoom * step)
    else if (key === '-') zoomTo(zoom / step)
    else if (key === '0') zoomTo(1)
    else if (way && zoom > 1) lens.scrollBy(way[0] * pan * lens.clientWidth, way[1] * pan * lens.clientHeight)
    else return
    event.preventDefault()
  })

  // Two fingers on a touchpad come as a wheel with the control key.
  lens.addEventListener('wheel', (event) => {
    if (!event.ctrlKey) return
    event.preventDefault()
    zoomTo(zoom * Math.exp(-event.deltaY / 100), { x: event.clientX, y: event.clientY })
  }, { passive: false })

  /** The distance of two fingers and the zoom when they came down. @type {{apart: number, zoom: number} | undefined} */
  let pinch
  lens.addEventListener('touchstart', ({ touches }) => {
    pinch = touches.length === 2 ? { apart: apart(touches), zoom } : undefined
  }, { passive: true })
  lens.addEventListener('touchmove', (event) => {
    const { touches } = event
    if (!pinch || touches.length !== 2) return
    event.preventDefault()
    const middle = { x: (touches[0].clientX + touches[1].clientX) / 2, y: (touches[0].clientY + touches[1].clientY) / 2 }
    zoomTo(pinch.zoom * apart(touches) / pinch.apart, middle)
  }, { passive: false })

  for (const kind of /** @type {const} */ (['pointerdown', 'pointermove'])) {
    view.addEventListener(kind, ({ clientX, clientY }) => put(said, under(clientX, clientY)))
  }

  /**
   * What lies at a place of the window: a narrow line or gap close to it, else what the cell is.
   *
   * @param {number} x
   * @param {number} y
   */
  function under(x, y) {
    if (!measured?.map?.values) return ''
    const { map: { values, ...map }, rows, answers: { width, height } } = measured
    const box = canvas.getBoundingClientRect()
    const away = (/** @type {import('../../engine/client.js').NarrowRow} */ row) =>
      Math.hypot(box.left + row.x.value / width.value * box.width - x, box.top + row.y.value / height.value * box.height - y)
    const [closest] = width && height ? [...rows.narrow].sort((a, b) => away(a) - away(b)) : []
    if (closest && away(closest) <= near) {
      return `${closest.kind === 'line' ? 'Line' : 'Gap'} of ${closest.width.text}${closest.lost ? ', lost at this depth' : ''}: ${closest.x.text} from the left, ${closest.y.text} from the top.`
    }
    const cell = (/** @type {number} */ share, /** @type {number} */ count) => Math.min(Math.max(Math.floor(share * count), 0), count - 1)
    const open = values[cell((y - box.top) / box.height, map.height) * map.width + cell((x - box.left) / box.width, map.width)]
    return open >= half ? 'Exposed metal.' : 'Resist.'
  }

  return {
    /** @param {Measured} of */
    measured(of) {
      measured = of
      zoomTo(1)
      put(said, 'Touch the picture: what lies there is said here.')
    },
  }
}

/** @param {TouchList} touches */
const apart = ([a, b]) => Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY)

/** @param {string} sign @param {string} name */
function button(sign, name) {
  const made = /** @type {HTMLButtonElement} */ (make('button', sign))
  made.type = 'button'
  mark(made, 'aria-label', name)
  return made
}
