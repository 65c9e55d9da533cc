/**
 * Keeps the form's place when the layout turns: a tablet is turned, or a keyboard
 * opens. Then something else scrolls, the page or the form, and begins at its top.
 */
import { byId } from '../element.js'

const form = byId('job')
const bar = byId('bar')

/** How long after the last scrolling the place is noted, in milliseconds. */
const rest = 150

export function setUpPlace() {
  /** @type {Element | null} */
  let row = null
  /** How far it stands below the upper edge of what is seen, in pixels. */
  let offset = 0
  let turned = turn()
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting

  const later = () => {
    clearTimeout(resting)
    resting = setTimeout(note, rest)
  }

  /** Notes the row that has the focus, if it is seen, or else the one at the top. */
  function note() {
    const { left, width } = form.getBoundingClientRect()
    const own = document.activeElement?.closest('#job .row')
    row = own && isSeen(own) ? own : document.elementFromPoint(left + width / 2, edge() + 24)?.closest('#job .row, #job summary, .questions') ?? null
    offset = row ? row.getBoundingClientRect().top - edge() : 0
  }

  new ResizeObserver(() => {
    const now = turn()
    if (now === turned) return
    turned = now
    clearTimeout(resting) // what it would note has moved already
    if (!row) return later()
    for (let time = 1; time <= 2; time++) { // the first scrolls the head away, and the bar to where it stays
      const most = innerHeight - edge() - row.getBoundingClientRect().height
      scroller().scrollTop += row.getBoundingClientRect().top - edge() - Math.max(0, Math.min(offset, most))
    }
  }).observe(form)
  addEventListener('scroll', later, { capture: true, passive: true })
  form.addEventListener('focusin', later)
}

/** Whether the form scrolls by itself, beside the answer. */
const isBeside = () => getComputedStyle(form).overflowY === 'auto'

const turn = () => `${isBeside()} ${form.clientWidth}`

const scroller = () => (isBeside() ? form : document.scrollingElement ?? form)

/** The upper edge of what is seen of the form. */
const edge = () => (isBeside() ? form : bar).getBoundingClientRect()[isBeside() ? 'top' : 'bottom']

/** @param {Element} element */
function isSeen(element) {
  const { top, bottom } = element.getBoundingClientRect()
  return bottom > edge() && top < innerHeight
}
