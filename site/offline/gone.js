/**
 * To withdraw the site's keeping: publish this file as sw.js. It comes to every
 * device at its next visit, removes what was kept there, and then itself. Pages
 * that are open go on; from then on they come from the server.
 */
import { removeCaches, worker } from './own.js'

worker.addEventListener('install', () => void worker.skipWaiting())
worker.addEventListener('activate', (event) => event.waitUntil(withdraw()))

async function withdraw() {
  await removeCaches()
  await worker.registration.unregister()
}
