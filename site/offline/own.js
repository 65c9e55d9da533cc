/**
 * The caches of this site. Others may stand beside them: an origin is shared by
 * all that is served from it, other copies of this page in other folders too.
 */

/** This very worker. */
export const worker = /** @type {WorkerScope} */ (/** @type {unknown} */ (self))

/** The folder that is kept, with its slash. */
export const folder = new URL(worker.registration.scope).pathname

/** The name of the cache for what a version holds. @param {string} content */
export function cacheFor(content) {
  return `saltbite ${folder} ${content}`
}

/** The names of this site's caches, of every version. */
export async function ownCaches() {
  return (await caches.keys()).filter((name) => name.startsWith(cacheFor('')))
}

/**
 * Removes this site's caches but one.
 *
 * @param {string} [spared] its name
 */
export async function removeCaches(spared) {
  const others = (await ownCaches()).filter((name) => name !== spared)
  await Promise.all(others.map((name) => caches.delete(name)))
}
