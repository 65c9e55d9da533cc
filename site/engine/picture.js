/** A picture as it crosses to the program, beside the fields. */

/**
 * The bytes are copied, so that the caller's own stay. If there is no picture, no
 * bytes are sent, and the program says that it can't be read.
 *
 * @param {unknown} picture the bytes of a PNG or JPEG, or {width, height, data} as ImageData has it, or {classic: 'line'} or 'frame'
 * @param {string} fields
 * @returns {Promise<import('./start.js').Parcel>}
 */
export async function parcelOf(picture, fields) {
  try {
    if (picture instanceof Blob) return { text: `\n${fields}`, bytes: new Uint8Array(await picture.arrayBuffer()) }
    const file = bytesOf(picture)
    if (file) return { text: `\n${fields}`, bytes: file }
    const { width, height, data, classic } = /** @type {{width: number, height: number, data: unknown, classic: unknown}} */ (picture)
    if (classic === 'line' || classic === 'frame') return { text: `${classic}\n${fields}` }
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

/**
 * @typedef {object} Laid A line across a picture.
 * @property {import('./client.js').PictureMap} map what was measured
 * @property {import('./client.js').EvenMap} [solved] how deep it will be
 * @property {number[]} line its ends, across and down, as shares of the picture
 */

/**
 * The maps of a picture with a line across it, as they cross to the program.
 *
 * @param {Laid} laid
 * @param {string} fields
 * @returns {import('./start.js').Parcel}
 */
export function laidParcel({ map, solved, line }, fields) {
  const parts = [map.values, solved?.values].map((part) => bytesOf(part) ?? new Uint8Array())
  const bytes = new Uint8Array(parts[0].length + parts[1].length)
  bytes.set(parts[0])
  bytes.set(parts[1], parts[0].length)
  return { text: `${[map.width, map.height, solved?.width ?? 0, solved?.height ?? 0, ...line].join(' ')}\n${fields}`, bytes }
}
