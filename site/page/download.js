/**
 * Saves a drawing as a file that stands by itself: the colours of paper written
 * into each shape, a white ground, its title and its words.
 */

/** Of the style, what a file has to say for itself. */
const painted = ['fill', 'fill-opacity', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-linejoin', 'stroke-linecap']
const set = ['fill', 'font-weight', 'font-style']

/**
 * @param {SVGSVGElement} svg
 * @param {string} name of the file, without its ending
 */
export function saveSVG(svg, name) {
  give(new Blob([alone(svg)], { type: 'image/svg+xml' }), `${name}.svg`)
}

/** How fine a saved picture is: dots in an inch, a usual printer's. */
const dots = 300

/** The chunk that tells a PNG's size on paper: 11811 dots in a metre, with its checksum. */
const onPaper = new Uint8Array([0, 0, 0, 9, 112, 72, 89, 115, 0, 0, 46, 35, 0, 0, 46, 35, 1, 120, 165, 63, 118])
/** Where it goes: after a PNG's first chunk, which is always as long. */
const afterHead = 33

/**
 * @param {SVGSVGElement} svg
 * @param {string} name of the file, without its ending
 */
export async function savePNG(svg, name) {
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
 * Writes into an element what the style says of it, and takes away what only the
 * style asks for.
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
 * Gives a file to whoever asked for it.
 *
 * @param {Blob} file
 * @param {string} name
 */
export function give(file, name) {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(file)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000) // a slow tablet still reads it meanwhile
}
