/** A picture as it crosses to the program, beside the fields. */

/**
 * The bytes are copied, so that the caller's own stay. If there is no picture, no
 * bytes are sent, and the program says that it can't be read.
 *
 * @param {unknown} picture the bytes of a PNG or JPEG, or {width, height, data} as ImageData has it
 * @param {string} fields
 * @returns {Promise<import('./start.js').Parcel>}
 */
export async function parcelOf(picture, fields) {
  try {
    if (picture instanceof Blob) return { text: `\n${fields}`, bytes: new Uint8Array(await picture.arrayBuffer()) }
    const file = bytesOf(picture)
    if (file) return { text: `\n${fields}`, bytes: file }
    const { width, height, data } = /** @type {{width: number, height: number, data: unknown}} */ (picture)
    return { text: `${Number(width)} ${Number(height)}\n${fields}`, bytes: bytesOf(data) }
  } catch {
    return { text: `\n${fields}` }
  }
}

/**
 * A copy of bytes; undefined for what has none.
 *
 * @param {unknown} given
 */
function bytesOf(given) {
  if (ArrayBuffer.isView(given)) return new Uint8Array(new Uint8Array(given.buffer, given.byteOffset, given.byteLength))
  return given instanceof ArrayBuffer ? new Uint8Array(given.slice(0)) : undefined
}
