/**
 * The files of the engine where the page is one file: they stand in it as text,
 * each in a script that is none, and are taken out as they are read.
 */

/** @returns {Promise<import('../engine/files.js').Files>} */
export async function load() {
  if (typeof WebAssembly !== 'object') throw new Error('there is no WebAssembly here')
  const worker = taken('engine.js')
  const packed = new Blob([bytesOf(taken('saltbite.wasm'))])
  const program = new Response(packed.stream().pipeThrough(new DecompressionStream('gzip')))
  return { module: program.arrayBuffer().then((bytes) => WebAssembly.compile(bytes)), worker }
}

/** @param {string} id */
function taken(id) {
  const place = document.getElementById(id)
  if (!place) throw new Error(`${id} is missing in this file`)
  place.remove()
  return place.textContent ?? ''
}

/** @param {string} base64 */
function bytesOf(base64) {
  const text = atob(base64)
  const bytes = new Uint8Array(text.length)
  for (let at = 0; at < text.length; at++) bytes[at] = text.charCodeAt(at)
  return bytes
}
