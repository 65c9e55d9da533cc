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
import { open as openWith } from './engine/client.js'
import { textOf, valueText } from './engine/fields.js'
import { filesBeside } from './engine/files.js'
import { filesOfNode } from './engine/node.js'
import { within } from './engine/within.js'

/** @typedef {import('./engine/within.js').Options} Options */

/** A call that its own signal cuts short is rejected, with the signal's reason. */
export async function open() {
  const base = import.meta.url
  const bench = await openWith(filesOfNode(base) ?? filesBeside(base))
  return {
    ...bench,
    /** @param {unknown} fields @param {Options} [options] */
    answer: (fields, options) => within(options, () => bench.answer(textOf(fields))),
    /** @param {unknown} text @param {Options} [options] */
    find: (text, options) => within(options, () => bench.find(valueText(() => text))),
    /** @param {unknown} fields @param {Options} [options] */
    draw: (fields, options) => within(options, () => bench.draw(textOf(fields))),
  }
}
