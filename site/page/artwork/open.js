/**
 * Opens a picture for the bench, which reads PNG and JPEG itself. What else the
 * browser can open goes through its own decoder to pixels.
 */

const million = 1_000_000

/**
 * How many bytes a file has at most. All that the bench reads may have has fewer; one of 226 MB
 * stopped a tab for minutes.
 */
const heaviest = 100 * million

/** @typedef {Blob | ImageData} Picture as the bench takes it */

/** Why a picture can't be opened, in a sentence. */
export class Unopened extends Error {}

/** What the files begin with that the bench reads. */
const read = [[0x89, 0x50, 0x4e, 0x47], [0xff, 0xd8]]

/** How many pixels a drawing without pixels of its own is given on its longer side. */
const fine = 2000

/**
 * @param {File} file
 * @returns {Promise<Picture>}
 */
export async function opened(file) {
  const head = new Uint8Array(await file.slice(0, 4).arrayBuffer())
  if (file.size > heaviest) throw new Unopened(`${called(file)} is over ${heaviest / million} MB. Save it smaller, or as JPEG.`)
  if (head.length === 0) throw new Unopened(`${called(file)} is empty. Choose a PNG or a JPEG.`)
  if (read.some((bytes) => bytes.every((byte, at) => head[at] === byte))) return file
  if (hidesPixels()) {
    throw new Unopened('This browser hides the pixels of pictures, as private windows do. Save the picture as PNG or JPEG, which are read without it.')
  }
  try {
    return file.type === 'image/svg+xml' ? await ofDrawing(await file.text()) : await ofPixels(file)
  } catch {
    throw new Unopened(`${called(file)} can’t be opened as a picture here. Save it as PNG or JPEG.`)
  }
}

/** @param {File} file */
const called = ({ name }) => name ? `“${name.slice(0, 40)}”` : 'What was given'

/** @param {Blob} file */
async function ofPixels(file) {
  const bitmap = await createImageBitmap(file)
  try {
    return pixels(bitmap, bitmap.width, bitmap.height)
  } finally {
    bitmap.close()
  }
}

/** @param {string} text of an SVG */
async function ofDrawing(text) {
  const image = new Image()
  image.src = `data:image/svg+xml,${encodeURIComponent(sized(text))}`
  await image.decode()
  const { naturalWidth: width, naturalHeight: height } = image
  const times = fine / Math.max(width, height)
  return pixels(image, Math.round(width * times), Math.round(height * times))
}

/**
 * A drawing that says how large it is: some browsers paint none that doesn't.
 *
 * @param {string} text
 */
function sized(text) {
  return text.replace(/<svg\b[^>]*>/, (root) => {
    const [, width, height] = /\bviewBox\s*=\s*["'][-\d.e]+[\s,]+[-\d.e]+[\s,]+([\d.e]+)[\s,]+([\d.e]+)/.exec(root) ?? []
    if (!width || /\swidth\s*=/.test(root)) return root
    return root.replace('<svg', `<svg width="${width}" height="${height}"`)
  })
}

/**
 * @param {CanvasImageSource} image
 * @param {number} width in pixels
 * @param {number} height
 */
export function pixels(image, width, height) {
  const context = contextOf(width, height)
  context.drawImage(image, 0, 0, width, height)
  return context.getImageData(0, 0, width, height)
}

/**
 * @param {number} width
 * @param {number} height
 */
function contextOf(width, height) {
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const context = canvas.getContext('2d', { willReadFrequently: true })
  if (!context) throw new Error('there is no canvas')
  return context
}

/** Whether a known pattern does not come back as it was painted. */
export function hidesPixels() {
  const side = 32
  const context = contextOf(side, side)
  const pattern = context.createImageData(side, side)
  // Any bytes do that aren't all the same; a pixel that is seen through would be rounded.
  for (const [at] of pattern.data.entries()) pattern.data[at] = at % 4 === 3 ? 255 : (at * 37) % 256
  context.putImageData(pattern, 0, 0)
  return context.getImageData(0, 0, side, side).data.some((byte, at) => byte !== pattern.data[at])
}
