/**
 * To withdraw the site's keeping: publish this file as sw.js. It comes to every
 * device at its next visit, removes what was kept there, and then itself. Pages
 * that are open go on; from then on they come from the server.
 */
import { removeCaches, worker } from './own.js'

worker.addEventListener('install', () => void worker.skipWaiting())
worker.addEventListener('activate', (event) => event.waitUntil(withdraw()))

// A page that asks may do so after the worker before has fetched anew what was
// missing, or have brought this one back, whose file has not changed since.
worker.addEventListener('message', (event) => event.waitUntil(withdraw().then(() => {
  event.ports[0]?.postMessage({ content: '', whole: false })
})))

async function withdraw() {
  await removeCaches()
  await worker.registration.unregister()
}
