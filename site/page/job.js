/** The job on the sheet, as it is kept or sent. */
import { textOf } from '../engine/fields.js'
import { fieldsText } from './jobtext.js'
import { longest } from './names.js'
import { inWords } from './pane.js'
import { all, keep } from './shelf.js'

/**
 * @typedef {import('./page.js').Desk} Desk
 * @typedef {import('./sheet.js').Kept} Kept
 */

/** What a link brought, as long as nothing in it is changed. */
let brought = ''

/**
 * The fields in the one text form, as they are sent.
 *
 * @param {Desk} desk
 * @param {Kept} [kept] what would be on the sheet
 */
export function textOn({ sheet }, kept) {
  return fieldsText(sheet.fields(kept))
}

/**
 * What a set of fields comes to, in words; '' while the program is not there yet.
 *
 * @param {Desk} desk
 * @param {Record<string, string>} fields
 */
export async function wordsOf(desk, fields) {
  return inWords(await desk.bench()?.answer(textOf(fields)))
}

/**
 * @param {Desk} desk
 * @param {string} name
 * @returns {Promise<import('./shelf.js').Job>}
 */
export async function jobOn(desk, name) {
  const fields = desk.sheet.fields()
  return { name, fields: fieldsText(fields), sentence: await wordsOf(desk, fields), saved: Date.now() }
}

/**
 * A name for a job, from its metal and its depth.
 *
 * @param {Record<string, string>} fields
 * @param {import('../engine/client.js').Reply} [reply]
 */
export function nameFor({ metal, depth }, reply) {
  return [metal?.trim() || 'Job', depth ?? reply?.answers.depth?.text].filter(Boolean).join(', ').slice(0, longest)
}

/**
 * Puts what a link brought on the sheet.
 *
 * @param {Desk} desk
 * @param {Kept} kept
 */
export function layBrought(desk, kept) {
  desk.lay(kept)
  brought = textOn(desk)
}

/**
 * Whether what is on the sheet is nowhere else: neither the example, nor as a link
 * brought it, nor kept as it is.
 *
 * @param {Desk} desk
 */
export async function unkept(desk) {
  const text = textOn(desk)
  if (desk.sheet.empty || text === brought || text === textOn(desk, desk.exampleJob())) return false
  const kept = await all().catch(() => [])
  return !kept.some(({ fields }) => fields === text)
}

/**
 * Keeps what is on the sheet and nowhere else, before another job takes its place.
 *
 * @param {Desk} desk
 * @param {string} name
 * @returns {Promise<string>} the name that it is kept by; '' if there was no need
 */
export async function setAside(desk, name) {
  return (await unkept(desk)) ? (await keep(await jobOn(desk, name))).name : ''
}
