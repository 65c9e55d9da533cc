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
  const spare = [...place.children]
  for (const [at, shape] of shapes.entries()) {
    const element = shown(taken(spare, shape), shape)
    if (place.children[at] !== element) place.insertBefore(element, place.children[at] ?? null)
  }
  for (const element of spare) element.remove()
}

/**
 * Takes the first of the elements that is of the shape's kind and role.
 *
 * @param {Element[]} elements
 * @param {Shape} shape
 */
function taken(elements, shape) {
  const at = elements.findIndex((element) => element.localName === kindOf(shape) && element.getAttribute('data-role') === shape.role)
  return at < 0 ? undefined : elements.splice(at, 1)[0]
}

/** @param {Shape} shape */
const kindOf = (shape) => ('text' in shape ? 'text' : 'path')

/**
 * @param {Element | undefined} there the shape's element, if there is one
 * @param {Shape} shape
 */
function shown(there, shape) {
  const element = there ?? document.createElementNS(space, kindOf(shape))
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
