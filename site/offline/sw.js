/**
 * Keeps the page on the device for use without internet, one version at a time
 * and whole. A version is fetched at its install, and every body is compared with
 * its hash before it is stored; if one file is wrong, nothing of the version
 * stays and the version before goes on. A new version waits until it is asked to
 * take over or until no page is open.
 *
 * Storage can damage a file later. The small files are compared with their hashes
 * each time they are given. The program is not, because that would delay every
 * answer: its reader compares it, and a page that could not load asks for 'mend'.
 *
 *     in:   'check' with a port     out:  Said, after missing files are fetched again
 *     in:   'mend' with a port      out:  Mended, after damaged files are fetched again too
 *     in:   'take over'
 */
import { content, files } from 'build:kept'
import { cacheFor, folder, ownCaches, removeCaches, worker } from './own.js'

/**
 * @typedef {{content: string, whole: boolean}} Said which version, and whether each of its files is kept
 * @typedef {{again: boolean}} Mended whether the page that asked should be loaded once more
 *
 * @typedef {'kept' | 'fetched' | 'wrong' | 'failed'} Outcome
 *   of keeping a file: it was there, it was fetched, the server has another body for
 *   it, or it could not be fetched or stored
 */

const own = cacheFor(content)
const hashes = new Map(Object.entries(files))

/** The page itself, which stands at the folder's own address. */
const page = 'index.html'

/** The one file that is given without being compared with its hash. */
const program = 'saltbite.wasm'

/** How long a file may take to arrive, in milliseconds. */
const patience = 300_000

worker.addEventListener('install', (event) => event.waitUntil(install()))
worker.addEventListener('activate', (event) => event.waitUntil(removeCaches(own)))

worker.addEventListener('message', (event) => {
  const [port] = event.ports
  if (event.data === 'take over') event.waitUntil(worker.skipWaiting())
  if (event.data === 'check' && port) event.waitUntil(check().then((said) => port.postMessage(said)))
  if (event.data === 'mend' && port) event.waitUntil(mend().then((mended) => port.postMessage(mended)))
})

worker.addEventListener('fetch', (event) => {
  const name = keptFor(event.request)
  if (name !== undefined) event.respondWith(reply(name, event.request))
})

async function install() {
  // Rolled back to, this version may still be the one in use.
  const inUse = await isComplete(await caches.open(own))
  if ((await keepAll()).every(isKept)) return
  if (!inUse) await caches.delete(own)
  throw new Error('a file did not arrive whole')
}

/**
 * Every body was compared with its hash when it was stored, so that it is enough
 * to see that none has been lost.
 *
 * @returns {Promise<Said>}
 */
async function check() {
  if (isReplaced()) return { content, whole: false }
  const whole = await isComplete(await caches.open(own)) || (await keepAll()).every(isKept)
  return { content, whole }
}

/**
 * For a page that could not load. If the server has another version by now, the
 * kept page is removed, so that the page comes from the server with all its files.
 *
 * @returns {Promise<Mended>}
 */
async function mend() {
  if (isReplaced()) return { again: false }
  const outcomes = await keepAll()
  if (outcomes.every(isKept)) return { again: outcomes.includes('fetched') }
  if (!outcomes.includes('wrong')) return { again: false }
  const cache = await caches.open(own)
  return { again: await cache.delete(page) }
}

/**
 * Whether another worker has taken this one's place, and removed its cache. A page may
 * have asked this one just before; what it then fetched again would stay on the device
 * for good.
 */
function isReplaced() {
  return worker.serviceWorker?.state === 'redundant'
}

/** @param {Outcome} outcome */
function isKept(outcome) {
  return outcome === 'kept' || outcome === 'fetched'
}

/** The work under way on all files. @type {Promise<Outcome[]> | undefined} */
let keeping

function keepAll() {
  keeping ??= Promise.all([...hashes.keys()].map(keep)).finally(() => { keeping = undefined })
  return keeping
}

/**
 * Fetches and stores a file unless it is there as it should be.
 *
 * @param {string} name
 * @returns {Promise<Outcome>}
 */
async function keep(name) {
  const cache = await caches.open(own)
  if (await isRight(name, await cache.match(name))) return 'kept'
  try {
    const found = await earlier(name) ?? await fetched(name)
    if (!await isRight(name, found)) return 'wrong'
    const headers = new Headers(found.headers)
    // They tell how the body travelled, which is over.
    for (const header of ['content-encoding', 'content-length', 'vary']) headers.delete(header)
    const body = await found.arrayBuffer()
    if (isReplaced()) return 'failed'
    await cache.put(name, new Response(body, { headers }))
    return 'fetched'
  } catch {
    return 'failed'
  }
}

/**
 * A file that did not change since an older version, which is still kept.
 *
 * @param {string} name
 */
async function earlier(name) {
  for (const older of await ownCaches()) {
    const kept = older === own ? undefined : await caches.match(name, { cacheName: older })
    if (await isRight(name, kept)) return kept
  }
  return undefined
}

/**
 * A file as the browser has it from loading the page, if that is the right one;
 * else from the server, past every cache.
 *
 * @param {string} name
 */
async function fetched(name) {
  const address = name === page ? './' : name
  const tagged = `${address}?v=${hashes.get(name)?.slice(0, 12)}`
  const loaded = await load(isTagged(name) ? tagged : address, 'force-cache').catch(() => undefined)
  return await isRight(name, loaded) ? /** @type {Response} */ (loaded) : load(tagged, 'no-store')
}

/** Whether the page loads a file with a tag in its address. @param {string} name */
function isTagged(name) {
  return /\.(js|css|wasm)$/.test(name)
}

/**
 * @param {string} address
 * @param {RequestCache} cache
 */
function load(address, cache) {
  return fetch(address, { cache, redirect: 'error', signal: AbortSignal.timeout(patience) })
}

/**
 * Whether a response is there and has the body that this version has under a
 * name. The response can still be read afterwards.
 *
 * @param {string} name
 * @param {Response | undefined} response
 */
async function isRight(name, response) {
  if (!response?.ok) return false
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', await response.clone().arrayBuffer()))
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
    if (kept && (name === program || await isRight(name, kept))) return kept
    if (kept && await keep(name) === 'fetched') return await cache.match(name) ?? fetch(request)
  } catch {
    // What is kept can't be read.
  }
  return fetch(request)
}
