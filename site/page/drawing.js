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
  const kind = 'text' in shape ? 'text' : 'path'
  const element = there?.localName === kind ? there : document.createElementNS(space, kind)
  mark(element, 'data-role', shape.role)
  if ('text' in shape) letter(element, shape)
  else trace(element, shape)
  return element
}

/**
 * @param {Element} element
 * @param {import('../engine/client.js').Path} shape
 */
function trace(element, { path, dash }) {
  mark(element, 'd', path)
  element.toggleAttribute('data-dash', dash === true)
}

/**
 * @param {Element} element
 * @param {import('../engine/client.js').Lettering} shape
 */
function letter(element, { text, x, y, size, anchor, strong }) {
  mark(element, 'x', `${x}`)
  mark(element, 'y', `${y}`)
  mark(element, 'font-size', `${size}`)
  mark(element, 'text-anchor', anchor)
  element.toggleAttribute('data-strong', strong === true)
  put(element, text)
}
