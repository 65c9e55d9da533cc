/**
 * To withdraw the site's keeping: publish this file as sw.js. It comes to every
 * device at its next visit, removes what was kept there, and then itself. Pages
 * that are open go on; from then on they come from the server.
 */
import { removeCaches, worker } from './own.js'

worker.addEventListener('install', () => void worker.skipWaiting())
worker.addEventListener('activate', (event) => event.waitUntil(withdraw()))

// The worker before may have fetched missing files just now, for a page that asks.
// A page that asks may also have registered this worker again.
worker.addEventListener('message', (event) => event.waitUntil(withdraw().then(() => {
  event.ports[0]?.postMessage({ content: '', whole: false, again: true })
})))

async function withdraw() {
  await removeCaches()
  await worker.registration.unregister()
}
