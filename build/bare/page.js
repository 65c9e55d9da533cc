// The least page: it asks the bare program once, by the site's own engine, and
// writes down the answer.
import { open } from '../../site/engine/client.js'
import { filesBeside } from '../../site/engine/files.js'

const bench = await open(filesBeside(import.meta.url))
const { sentence } = await bench.answer('metal=brass&depth=0.2')
document.getElementById('sentence').textContent = sentence
await navigator.serviceWorker?.register('sw.js')
