/**
 * Keeps the page on the device for use without internet, one version at a time
 * and whole. A version is fetched at its install, every body held to its hash
 * before it is stored; if one file is wrong, nothing of it stays and the version
 * before goes on. A new version waits until it is asked to take over or until no
 * page is open.
 *
 *     in:   'check' with a port     out:  Said, after what was lost is fetched again
 *     in:   'take over'
 */
import { content, files } from 'build:kept'
import { cacheFor, folder, removeCaches, worker } from './own.js'

/**
 * @typedef {{content: string, whole: boolean}} Said which version, and whether each of its files is kept
 */

const own = cacheFor(content)
const hashes = new Map(Object.entries(files))

/** The page itself, which stands at the folder's own address. */
const page = 'index.html'

/** How long a file may take to arrive, in milliseconds. */
const patience = 300_000

worker.addEventListener('install', (event) => event.waitUntil(install()))
worker.addEventListener('activate', (event) => event.waitUntil(removeCaches(own)))

worker.addEventListener('message', (event) => {
  const [port] = event.ports
  if (event.data === 'take over') event.waitUntil(worker.skipWaiting())
  if (event.data === 'check' && port) event.waitUntil(check().then((whole) => port.postMessage({ content, whole })))
})

worker.addEventListener('fetch', (event) => {
  const name = keptFor(event.request)
  if (name !== undefined) event.respondWith(reply(name, event.request))
})

async function install() {
  // Rolled back to, this version may still be the one in use.
  const inUse = await isComplete(await caches.open(own))
  if (await check()) return
  if (!inUse) await caches.delete(own)
  throw new Error('a file did not arrive whole')
}

/** The check under way. @type {Promise<boolean> | undefined} */
let checking

/** Whether every file is kept, once what is missing has been fetched. */
function check() {
  checking ??= Promise.allSettled([...hashes.keys()].map(keep))
    .then((all) => all.every(({ status }) => status === 'fulfilled'))
    .finally(() => { checking = undefined })
  return checking
}

/**
 * Fetches and stores a file unless it is there as it should be.
 *
 * @param {string} name
 */
async function keep(name) {
  const cache = await caches.open(own)
  const kept = await cache.match(name)
  if (kept && await isRight(name, await kept.arrayBuffer())) return
  const tag = hashes.get(name)?.slice(0, 12)
  const arrived = await fetch(`./${name === page ? '' : name}?v=${tag}`, {
    cache: 'no-store', redirect: 'error', signal: AbortSignal.timeout(patience),
  })
  const body = await arrived.arrayBuffer()
  if (!arrived.ok || !await isRight(name, body)) throw new Error(`${name} did not arrive whole`)
  const headers = new Headers(arrived.headers)
  // Of how it travelled, which is over.
  for (const header of ['content-encoding', 'content-length', 'vary']) headers.delete(header)
  await cache.put(name, new Response(body, { headers }))
}

/**
 * @param {string} name
 * @param {ArrayBuffer} body
 */
async function isRight(name, body) {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', body))
  return hashes.get(name) === Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('')
}

/** @param {Cache} cache */
async function isComplete(cache) {
  return (await cache.keys()).length === hashes.size
}

/**
 * The name of the kept file that a request is for, if it is for one of this
 * version. A page says by the tag in an address which body it was built with.
 *
 * @param {Request} request
 */
function keptFor({ method, url }) {
  const { origin, pathname, searchParams } = new URL(url)
  if (method !== 'GET' || origin !== location.origin || !pathname.startsWith(folder)) return undefined
  const name = pathname.slice(folder.length) || page
  const tag = searchParams.get('v') ?? ''
  return hashes.get(name)?.startsWith(name === page ? '' : tag) ? name : undefined
}

/**
 * A kept file, or what the network has of it. The page is given only while all
 * that it is made of is there.
 *
 * @param {string} name
 * @param {Request} request
 */
async function reply(name, request) {
  try {
    const cache = await caches.open(own)
    const kept = name !== page || await isComplete(cache) ? await cache.match(name) : undefined
    if (kept) return kept
  } catch {
    // What is kept can't be read.
  }
  return fetch(request)
}
