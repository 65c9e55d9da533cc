/**
 * Saves a drawing as a file that needs no style sheet: the colours for paper are
 * written into each shape, with a white background, the title and the description.
 */
import { byId } from '../element.js'

/** The name of each picture in a file name. @type {Record<string, string>} */
const named = { section: 'cut', curve: 'depth in time' }

/** The buttons that save the picture in the answer's pane. @param {import('../page.js').Desk} desk */
export function setUpSaving(desk) {
  const figure = byId('cut')
  figure.addEventListener('click', ({ target }) => {
    const kind = /** @type {Element} */ (target).closest('button')?.dataset.save
    if (!kind) return
    figure.querySelector('.save')?.removeAttribute('open')
    const svg = /** @type {SVGSVGElement} */ (figure.querySelector('[role="img"]'))
    const sort = /** @type {HTMLInputElement} */ (figure.querySelector(':checked')).value
    const name = nameOf(sort, desk.reply())
    if (kind === 'svg') saveSVG(svg, name)
    else void savePNG(svg, name)
  })
}

/**
 * The name of a picture's file: which picture, which metal, how deep.
 *
 * @param {string} sort
 * @param {import('../../engine/client.js').Reply} [reply]
 */
function nameOf(sort, reply) {
  const parts = ['saltbite', named[sort], reply?.rows.metal[0]?.family, reply?.answers.depth?.text.replace(/(?<=\d) /g, '')]
  return parts.filter(Boolean).join('-').toLowerCase().replace(/[^a-z0-9.]+/g, '-')
}

/** The style properties that are written into the file. */
const painted = ['fill', 'fill-opacity', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-linejoin', 'stroke-linecap']
const set = ['fill', 'font-weight', 'font-style']

/**
 * @param {SVGSVGElement} svg
 * @param {string} name of the file, without its ending
 */
function saveSVG(svg, name) {
  give(new Blob([alone(svg)], { type: 'image/svg+xml' }), `${name}.svg`)
}

/** The resolution of a saved picture, in dots per inch: that of usual printers. */
const dots = 300

/** The chunk with the size on paper of a PNG: 11811 dots in a metre, with its checksum. */
const onPaper = new Uint8Array([0, 0, 0, 9, 112, 72, 89, 115, 0, 0, 46, 35, 0, 0, 46, 35, 1, 120, 165, 63, 118])
/** Its position: after the first chunk of a PNG, whose length is fixed. */
const afterHead = 33

/**
 * @param {SVGSVGElement} svg
 * @param {string} name of the file, without its ending
 */
async function savePNG(svg, name) {
  const image = new Image()
  image.src = `data:image/svg+xml,${encodeURIComponent(alone(svg))}`
  await image.decode()
  const { width, height } = svg.viewBox.baseVal
  const canvas = document.createElement('canvas')
  canvas.width = Math.round(width / 25.4 * dots)
  canvas.height = Math.round(height / 25.4 * dots)
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height)
  canvas.toBlob((png) => {
    if (png) give(new Blob([png.slice(0, afterHead), onPaper, png.slice(afterHead)], { type: 'image/png' }), `${name}.png`)
  })
}

/**
 * The text of a drawing that needs no style sheet.
 *
 * @param {SVGSVGElement} svg
 */
function alone(svg) {
  const copy = /** @type {SVGSVGElement} */ (svg.cloneNode(true))
  const place = document.createElement('div')
  place.className = 'unseen on-paper'
  place.append(copy)
  document.body.append(place)
  for (const shape of copy.querySelectorAll('path')) settle(shape, painted)
  for (const text of copy.querySelectorAll('text')) settle(text, set)
  settle(copy, ['font-family'])
  place.remove()
  const { width, height } = copy.viewBox.baseVal
  copy.setAttribute('width', `${width}mm`)
  copy.setAttribute('height', `${height}mm`)
  copy.querySelector('g')?.before(ground(width, height))
  return new XMLSerializer().serializeToString(copy)
}

/**
 * Writes the computed style into an element, and removes the attributes that only
 * the style sheet uses.
 *
 * @param {Element} element
 * @param {string[]} properties
 */
function settle(element, properties) {
  const style = getComputedStyle(element)
  for (const property of properties) element.setAttribute(property, style.getPropertyValue(property))
  for (const name of ['class', ...Object.keys(/** @type {SVGElement} */ (element).dataset).map((key) => `data-${key}`)]) {
    element.removeAttribute(name)
  }
}

/**
 * @param {number} width
 * @param {number} height
 */
function ground(width, height) {
  const rect = document.createElementNS('http://www.w3.org/2000/svg', 'rect')
  for (const [name, value] of Object.entries({ width, height, fill: '#fff' })) rect.setAttribute(name, `${value}`)
  return rect
}

/**
 * Offers a file for download.
 *
 * @param {Blob} file
 * @param {string} name
 */
export function give(file, name) {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(file)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000) // a slow tablet may still be reading it
}
