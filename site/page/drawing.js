/**
 * A drawing, as the bench gives it, shown as SVG. The bench says what each shape
 * is; how that looks is the style's. What is there already is changed where it
 * differs and else let be, so that a key redraws no more than it moves.
 */
import { mark, put } from './element.js'

/**
 * @typedef {import('../engine/client.js').Drawing} Drawing
 * @typedef {import('../engine/client.js').Shape} Shape
 */

const space = 'http://www.w3.org/2000/svg'

/**
 * An SVG that a drawing can be shown in, as those are that the page is served with.
 *
 * @returns {SVGSVGElement}
 */
export function picture() {
  const svg = document.createElementNS(space, 'svg')
  svg.classList.add('drawing')
  svg.setAttribute('role', 'img')
  svg.append(...['title', 'desc', 'g'].map((name) => document.createElementNS(space, name)))
  return svg
}

/**
 * A path in the words of a drawing.
 *
 * @param {string} role
 * @param {string} d
 */
export function path(role, d) {
  return shown(undefined, { role, path: d })
}

/**
 * @param {SVGSVGElement} svg
 * @param {Drawing} drawing
 */
export function show(svg, { width, height, title, words, metal = '', shapes }) {
  const [name, description, place] = svg.children
  mark(svg, 'viewBox', `0 0 ${width} ${height}`)
  mark(svg, 'data-metal', metal)
  put(name, title)
  put(description, words)
  for (const [at, shape] of shapes.entries()) {
    const there = place.children[at]
    const element = shown(there, shape)
    if (!there) place.append(element)
    else if (there !== element) there.replaceWith(element)
  }
  while (place.children.length > shapes.length) place.lastElementChild?.remove()
}

/**
 * The element of a shape: the one that is there, if it is of that kind.
 *
 * @param {Element | undefined} there
 * @param {Shape} shape
 */
function shown(there, shape) {
  const kind = shape.path === undefined ? 'text' : 'path'
  const element = there?.localName === kind ? there : document.createElementNS(space, kind)
  mark(element, 'data-role', shape.role)
  if (shape.path !== undefined) {
    mark(element, 'd', shape.path)
    element.toggleAttribute('data-dash', shape.dash === true)
    return element
  }
  const { x, y, size, anchor, turn, strong, text } = shape
  mark(element, 'x', `${x}`)
  mark(element, 'y', `${y}`)
  mark(element, 'font-size', `${size}`)
  mark(element, 'text-anchor', anchor)
  if (turn) mark(element, 'transform', `rotate(${turn} ${x} ${y})`)
  else element.removeAttribute('transform')
  element.toggleAttribute('data-strong', strong === true)
  put(element, text)
  return element
}
