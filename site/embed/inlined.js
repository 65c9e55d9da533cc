/**
 * Where the program stands when the page is one file: in it as text, in a script
 * that does not run. The text is removed as it is read.
 */
import { workerOfBlob } from '../engine/blob.js'

/** @returns {import('../engine/files.js').Files} */
export function filesWithin() {
  return { aside: true, worker: workerOfBlob, module }
}

/** @type {Promise<WebAssembly.Module> | undefined} */
let read

/** Short calls and long ones may want it each. */
const module = () => read ??= compiled()

async function compiled() {
  const place = document.getElementById('saltbite.wasm')
  if (!place) throw new Error('the program is missing in this file')
  place.remove()
  const packed = new Blob([bytesOf(place.textContent ?? '')])
  const program = new Response(packed.stream().pipeThrough(new DecompressionStream('gzip')))
  return WebAssembly.compile(await program.arrayBuffer())
}

/** @param {string} base64 */
function bytesOf(base64) {
  const text = atob(base64)
  const bytes = new Uint8Array(text.length)
  for (let at = 0; at < text.length; at++) bytes[at] = text.charCodeAt(at)
  return bytes
}
