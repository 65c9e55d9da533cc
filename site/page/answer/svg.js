/**
 * Shows a drawing of the bench as SVG. The bench gives each shape a role; the style
 * sheet decides how a role looks. Existing elements are reused and written only
 * where they differ, so that a keystroke redraws only what changes.
 */
import { mark, put } from '../element.js'

/**
 * @typedef {import('../../engine/client.js').Drawing} Drawing
 * @typedef {import('../../engine/client.js').Shape} Shape
 */

const space = 'http://www.w3.org/2000/svg'

/**
 * An empty SVG for a drawing, like those in the page.
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
 * A path with a role.
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
  for (const [index, shape] of shapes.entries()) {
    const element = shown(taken(spare, shape), shape)
    if (place.children[index] !== element) place.insertBefore(element, place.children[index] ?? null)
  }
  for (const element of spare) element.remove()
}

/**
 * Removes and returns the first element of the shape's kind and role.
 *
 * @param {Element[]} elements
 * @param {Shape} shape
 */
function taken(elements, shape) {
  const index = elements.findIndex((element) => element.localName === kindOf(shape) && element.getAttribute('data-role') === shape.role)
  return index < 0 ? undefined : elements.splice(index, 1)[0]
}

/** @param {Shape} shape */
const kindOf = (shape) => ('text' in shape ? 'text' : 'path')

/**
 * @param {Element | undefined} there an element to reuse, if there is one
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
 * @param {import('../../engine/client.js').Path} shape
 */
function trace(element, { path, dash }) {
  mark(element, 'd', path)
  element.toggleAttribute('data-dash', dash === true)
}

/**
 * @param {Element} element
 * @param {import('../../engine/client.js').Lettering} shape
 */
function letter(element, { text, x, y, size, anchor, strong }) {
  mark(element, 'x', `${x}`)
  mark(element, 'y', `${y}`)
  mark(element, 'font-size', `${size}`)
  mark(element, 'text-anchor', anchor)
  element.toggleAttribute('data-strong', strong === true)
  put(element, text)
}
