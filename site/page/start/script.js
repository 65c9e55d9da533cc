/** Fetches a further script of the page, known by its hash. */
import { trusted } from './bench.js'

/**
 * @param {'later' | 'log' | 'closer' | 'along'} name of its file, and of what it hands to the page
 * @param {{tag: string, integrity: string}} seal
 * @returns {Promise<unknown>} what it hands over
 */
export function scriptOf(name, { tag, integrity }) {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script')
    script.src = trusted(`${name}.js?v=${tag}`)
    script.integrity = integrity
    script.onerror = reject
    script.onload = () => {
      const { saltbite } = /** @type {{saltbite?: Record<string, unknown>}} */ (/** @type {unknown} */ (window))
      if (saltbite?.[name]) resolve(saltbite[name])
      else reject(new Error(`${name}.js did not run`))
    }
    document.head.append(script)
  })
}
