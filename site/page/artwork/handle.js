/** @typedef {{x: number, y: number}} Place on a picture, in steps of which its size counts so many */

/**
 * @typedef {object} Moving how a handle is moved
 * @property {HTMLElement} view the frame of the picture
 * @property {() => {width: number, height: number}} size of the picture, in steps
 * @property {() => Place} at where the handle is
 * @property {(to: Place) => void} move it may be told a place beside the picture
 * @property {number} stride how many steps a key moves it with Shift
 * @property {() => void} [taken] a finger took it
 * @property {() => void} [left] the finger was lifted
 * @property {() => void} [keyed] a key moved it
 */

/** @type {Record<string, [number, number]>} */
const keys = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

/**
 * Lets a finger or the arrow keys move a handle over a picture.
 *
 * @param {HTMLElement} handle
 * @param {Moving} how
 */
export function movable(handle, { view, size, at, move, stride, taken, left, keyed }) {
  /** From the finger to the place, so that it does not jump under it. @type {Place | undefined} */
  let off

  /** The part hears that nothing may move under the finger. @param {'hold' | 'release'} what */
  const tell = (what) => handle.dispatchEvent(new Event(what, { bubbles: true }))

  /** @param {PointerEvent} event @returns {Place} */
  const under = ({ clientX, clientY }) => {
    const frame = view.getBoundingClientRect(), { width, height } = size()
    return { x: width * (clientX - frame.left) / frame.width, y: height * (clientY - frame.top) / frame.height }
  }

  handle.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return
    event.stopPropagation() // what lies under it is not asked
    handle.setPointerCapture(event.pointerId)
    const now = under(event), { x, y } = at()
    off = { x: x - now.x, y: y - now.y }
    tell('hold')
    taken?.()
  })
  handle.addEventListener('pointermove', (event) => {
    if (!off) return
    event.stopPropagation()
    const { x, y } = under(event)
    move({ x: x + off.x, y: y + off.y })
  })
  for (const end of ['pointerup', 'pointercancel']) {
    handle.addEventListener(end, () => {
      if (!off) return
      off = undefined
      left?.()
      tell('release')
    })
  }
  handle.addEventListener('keydown', (event) => {
    const way = keys[event.key]
    if (!way || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault() // the page would scroll
    event.stopPropagation() // the lens would move
    const by = event.shiftKey ? stride : 1, { x, y } = at()
    move({ x: x + by * way[0], y: y + by * way[1] })
    keyed?.()
  })
}
