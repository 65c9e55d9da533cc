/**
 * Addresses of scripts as trusted types have them: the one policy that a page
 * must allow. It lets through a Blob, the page's own keeper of files, and its
 * other scripts.
 */

/**
 * @typedef {{createScriptURL: (url: string) => string}} Policy
 * @typedef {{createPolicy: (name: string, rules: Policy) => Policy}} TrustedTypes
 */

const key = Symbol.for('saltbite.policy')

/**
 * A page allows a policy of one name only once, and may hold two copies of this
 * script: the first one's policy is shared.
 *
 * @param {string} url
 */
export function trusted(url) {
  const page = /** @type {{trustedTypes?: TrustedTypes, [key]?: Policy}} */ (globalThis)
  if (!page.trustedTypes) return url
  try {
    if (!page[key]) {
      const value = page.trustedTypes.createPolicy('saltbite', { createScriptURL: known })
      Object.defineProperty(page, key, { value })
    }
    return page[key]?.createScriptURL(url) ?? url
  } catch {
    return url // the page allows no such policy; it may not demand one either
  }
}

/** @param {string} url */
function known(url) {
  if (!/^(blob:|sw\.js$|(later|log|closer|along)\.js\?v=\w+$)/.test(url)) throw new TypeError('scripts are a Blob or of this page')
  return url
}
