/**
 * Saltbite for scripts and for other people's pages: in a browser, and in Node
 * 20.16 or newer, from any folder, with nothing else running.
 *
 *     import { open } from './saltbite.mjs'
 *     const bench = await open()
 *     await bench.answer({ metal: 'sterling', area: '11.6 cm2', depth: '0.25 mm', density: '20 mA/cm2' })
 *     await bench.find('yelow bras')
 *     await bench.draw({ depth: '0.25 mm', sheet: '18 ga', line: '0.5 mm' })  // shapes in millimetres, with their words
 *     await bench.measure(bytes, { width: '40 mm' }, { signal, progress })    // of a PNG or JPEG
 *     await bench.prepare(bytes, { width: '40 mm', mirror: 'yes' })           // art that is ready to print
 *     await bench.evenness(bytes, { width: '40 mm', gap: '10 mm' })           // how even it will be
 *     await bench.trial([{ metal: 'brass', area: '12', current: '0.3', time: '2 h', before: '24.6', after: '23.9' }], { resolution: '0.01' })
 *     await bench.batch([{ name: 'tag', metal: 'brass', area: '3', depth: '0.15', pieces: '14' }], { amps: '2 A', session: '3 h' })
 *     bench.close()
 */
import { open as openWith } from './engine/client.js'
import { rowsText, textOf, valueText } from './engine/fields.js'
import { filesBeside } from './engine/files.js'
import { filesOfNode } from './engine/node.js'
import { abortable } from './engine/abortable.js'

/** @typedef {import('./engine/abortable.js').Options} Options */

/** A call that its own signal cuts short is rejected, with the signal's reason. */
export async function open() {
  const base = import.meta.url
  const { log: _, along: __, ...bench } = await openWith(filesOfNode(base) ?? filesBeside(base)) // the page's own
  return {
    ...bench,
    /** @param {unknown} fields @param {Options} [options] */
    answer: (fields, options) => abortable(options, () => bench.answer(textOf(fields))),
    /** @param {unknown} text @param {Options} [options] */
    find: (text, options) => abortable(options, () => bench.find(valueText(() => text))),
    /** @param {unknown} fields @param {Options} [options] */
    draw: (fields, options) => abortable(options, () => bench.draw(textOf(fields))),
    /** @param {unknown} picture @param {unknown} fields @param {Options} [options] */
    measure: (picture, fields, options) => abortable(options, (own) => bench.measure(picture, textOf(fields), own)),
    /** @param {unknown} picture @param {unknown} fields @param {Options} [options] */
    prepare: (picture, fields, options) => abortable(options, (own) => bench.prepare(picture, textOf(fields), own)),
    /** @param {unknown} picture @param {unknown} fields @param {Options} [options] */
    evenness: (picture, fields, options) => abortable(options, (own) => bench.evenness(picture, textOf(fields), own)),
    /** @param {unknown} picture @param {unknown} fields @param {Options} [options] */
    distances: (picture, fields, options) => abortable(options, (own) => bench.distances(picture, textOf(fields), own)),
    /** @param {unknown} rows @param {unknown} fields @param {Options} [options] */
    trial: (rows, fields, options) => abortable(options, (own) => bench.trial(rowsText(rows, fields), own)),
    /** @param {unknown} rows @param {unknown} fields @param {Options} [options] */
    batch: (rows, fields, options) => abortable(options, (own) => bench.batch(rowsText(rows, fields), own)),
  }
}
