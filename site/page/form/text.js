/**
 * The one text form of a set of fields, as a link, a stored job and a file of jobs
 * hold it: "metal=brass&depth=0.25+mm". It is written here, and checked when it is
 * read from outside.
 */
import { textOf } from '../../engine/fields.js'

/** @typedef {(name: string, text: string) => string} Objection why the form can't take a field; '' if it can */

/** How much is read of a link, in characters. */
export const mostOfLink = 100_000

/** The beginning of a faulty text, to be quoted. @param {string} text */
export const quote = (text) => text.replace(/^(.{40}).+/su, '$1…')

/** @param {Record<string, string>} fields */
export const inUS = ({ units = '' }) => units.trim().toLowerCase() === 'us'

/**
 * A set of fields in the one text form; metric units are not written.
 *
 * @param {Record<string, string>} fields
 */
export function fieldsText(fields) {
  return textOf({ ...fields, units: inUS(fields) ? 'us' : '' })
}

/** The fields in a text that the page wrote itself. @param {string} text */
export function fieldsOf(text) {
  return Object.fromEntries(new URLSearchParams(text))
}

/**
 * Reads the text form from outside. If a field is given twice, the first counts.
 *
 * @param {string} text
 * @param {Objection} objection
 * @param {Record<string, string>} fields the fields that were read are added to these
 * @returns {string[]} what could not be read
 */
export function takeFields(text, objection, fields) {
  return text.split('&').filter(Boolean).flatMap((pair) => {
    const [name, value] = [...new URLSearchParams(pair)][0] ?? ['', '']
    const fault = damage(pair, name + value) || objection(name, value) || (Object.hasOwn(fields, name) ? `“${name}” is there twice` : '')
    if (fault) return fault
    if (value.trim() !== '') fields[name] = value
    return []
  })
}

/**
 * @param {string} pair
 * @param {string} read what was read of it
 */
function damage(pair, read) {
  if (!pair.includes('=')) return `“${quote(pair)}” is no field with its text`
  return /%(?![\da-f]{2}|$)/i.test(pair) || read.includes('\ufffd') ? `“${quote(pair)}” is damaged` : ''
}

/** @param {string} text */
export const oneLine = (text) => text.replace(/\s+/g, ' ').trim()
