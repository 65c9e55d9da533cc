// The least page: it sends the bare program what is typed, by the site's own
// engine, and writes down the answer, once at its start and again at each key.
import { open } from '../../site/engine/client.js'
import { filesBeside } from '../../site/engine/files.js'

const bench = await open(filesBeside(import.meta.url))
const depth = document.getElementById('depth')
const sentence = document.getElementById('sentence')

async function answer() {
  sentence.textContent = (await bench.answer('metal=brass&depth=' + depth.value)).sentence
}

depth.addEventListener('input', answer)
await answer()
await navigator.serviceWorker?.register('sw.js')
