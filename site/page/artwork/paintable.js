/** A picture as a canvas can paint it, turned as it is to be seen. */
import { address } from './address.js'

/**
 * @param {import('./open.js').Picture} picture
 * @returns {Promise<import('./corners.js').Photograph>}
 */
export async function paintable(picture) {
  if (picture instanceof Blob) {
    const image = new Image() // not a bitmap: some engines make one without the turn that a camera notes
    image.src = await address(picture)
    await image.decode()
    return { image, width: image.naturalWidth, height: image.naturalHeight }
  }
  const { width, height } = picture
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  canvas.getContext('2d')?.putImageData(picture, 0, 0)
  return { image: canvas, width, height }
}
