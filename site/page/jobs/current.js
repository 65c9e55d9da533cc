/** The current job on the form, as it is stored or sent. */
import { textOf } from '../../engine/fields.js'
import { fieldsText } from '../form/text.js'
import { nameOf } from './names.js'
import { inWords } from '../answer/words.js'
import { all, store } from './shelf.js'

/**
 * @typedef {import('../page.js').Desk} Desk
 * @typedef {import('../form/form.js').Entries} Entries
 */

/** The job that a link brought; the form equals it until something is changed. */
let brought = ''

/**
 * The fields in the one text form, as they are sent.
 *
 * @param {Desk} desk
 * @param {Entries} [entries] instead of those on the form
 */
export function textOn({ form }, entries) {
  return fieldsText(form.fields(entries))
}

/**
 * The answer to a set of fields, in words; '' until the program is ready.
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
  const fields = desk.form.fields()
  return { name, fields: fieldsText(fields), sentence: await wordsOf(desk, fields), saved: Date.now() }
}

/**
 * A name for a job, from its metal and its depth.
 *
 * @param {Record<string, string>} fields
 * @param {import('../../engine/client.js').Reply} [reply]
 */
export function nameFor({ metal, depth }, reply) {
  return nameOf([metal?.trim() || 'Job', depth ?? reply?.answers.depth?.text].filter(Boolean).join(', '))
}

/**
 * Puts the job of a link on the form.
 *
 * @param {Desk} desk
 * @param {Entries} entries
 */
export function layBrought(desk, entries) {
  desk.lay(entries)
  brought = textOn(desk)
}

/**
 * Whether the job on the form exists only there: it is not the example, not the job
 * of a link, and not stored.
 *
 * @param {Desk} desk
 */
export async function isUnsaved(desk) {
  const text = textOn(desk)
  if (desk.form.empty || text === brought || text === textOn(desk, desk.exampleJob())) return false
  const stored = await all().catch(() => [])
  return !stored.some(({ fields }) => fields === text)
}

/**
 * Stores the job on the form, if it exists only there, before another replaces it.
 *
 * @param {Desk} desk
 * @param {string} name
 * @returns {Promise<string>} its name on the shelf; '' if there was no need
 */
export async function setAside(desk, name) {
  return (await isUnsaved(desk)) ? (await store(await jobOn(desk, name))).name : ''
}
