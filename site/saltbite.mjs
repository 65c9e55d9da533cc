/**
 * Saltbite for scripts and for other people's pages: in a browser, and in Node
 * 20.16 or newer, from any folder, with nothing else running.
 *
 *     import { open } from './saltbite.mjs'
 *     const bench = await open()
 *     await bench.answer({ metal: 'sterling', area: '11.6 cm2', depth: '0.25 mm', density: '20 mA/cm2' })
 *     await bench.find('yelow bras')
 *     await bench.draw({ depth: '0.25 mm', sheet: '18 ga', line: '0.5 mm' })  // shapes in millimetres, with their words
 *     bench.close()
 */
import { open as openBeside } from './engine/client.js'

/** @returns {Promise<import('./engine/client.js').Bench>} */
export function open() {
  return openBeside(import.meta.url)
}
