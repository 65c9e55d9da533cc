/**
 * Where the pane's foot would cut a line of text in half, the whole line waits below:
 * what covers it is as high as the part of it that could be seen.
 */
import { byId } from '../element.js'

const pane = byId('answer')
const cover = /** @type {HTMLElement} */ (pane.querySelector('.fold'))
const strip = document.getElementById('run')

export function setUpFold() {
  pane.addEventListener('scroll', coverIt, { passive: true })
  const observer = new ResizeObserver(coverIt)
  const inFigure = byId('cut').children // what moves in it need not make it higher
  for (const element of [pane, strip, ...pane.children, ...inFigure]) if (element && element !== cover) observer.observe(element)
}

function coverIt() {
  const { bottom, left, right, height } = pane.getBoundingClientRect()
  const foot = Math.min(bottom, stripTop(left, right))
  const scrolls = height > 0 && pane.scrollHeight > pane.clientHeight
  pane.style.setProperty('--over', `${bottom - foot}px`)
  cover.style.setProperty('--cut', `${scrolls ? foot - between(linesOf(pane), foot) : 0}px`)
  cover.classList.toggle('more', pane.scrollHeight - pane.scrollTop > pane.clientHeight + 1)
}

/**
 * The lowest place from a foot upward that cuts no line: lines beside each other may
 * stand at different heights.
 *
 * @param {{top: number, bottom: number}[]} lines
 * @param {number} foot
 * @returns {number}
 */
function between(lines, foot) {
  const cut = lines.filter(({ top, bottom }) => top < foot - 1 && bottom > foot + 1).map(({ top }) => top)
  return cut.length > 0 ? between(lines, Math.min(...cut)) : foot
}

/**
 * The top of a run's strip, if it lies over the pane.
 *
 * @param {number} left
 * @param {number} right
 */
function stripTop(left, right) {
  const lying = strip?.getBoundingClientRect()
  const over = lying && strip?.checkVisibility({ visibilityProperty: true }) && lying.left < right - 1 && lying.right > left + 1
  return over ? lying.top : Infinity
}

/** Of the height of a line, what is blank over its letters, and under them. */
const blank = 0.12

/** Where the letters of each line of text stand. @param {Element} place */
function linesOf(place) {
  const range = document.createRange()
  const texts = document.createTreeWalker(place, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT, (node) => {
    if (node instanceof Text) return NodeFilter.FILTER_ACCEPT
    return isFolded(node) ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_SKIP
  })
  const lines = []
  for (let text = texts.nextNode(); text; text = texts.nextNode()) {
    range.selectNodeContents(text)
    for (const { top, bottom, height } of range.getClientRects()) lines.push({ top: top + blank * height, bottom: bottom - blank * height })
  }
  return lines
}

/** An engine may lay out what is folded away. @param {Node} node */
function isFolded({ nodeName, parentNode }) {
  return parentNode instanceof HTMLDetailsElement && !parentNode.open && nodeName !== 'SUMMARY'
}
