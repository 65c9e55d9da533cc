/**
 * Jobs as text: the fields of one in the text form of a set of fields, and many
 * in a plain file that a person can read:
 *
 *     Saltbite jobs
 *
 *     [Garden shed nameplate]
 *     # saved 2026-11-25T14:05:00.000Z
 *     # Leave it 7 h at 0.347 A …
 *     metal=brass
 *     depth=0.25+mm
 *
 * A line in square brackets begins a job and names it, "#" begins a remark, and
 * the other lines are the text form with a line break for each "&". Whatever
 * else is read is told by the number of its line and left out.
 */
import { textOf } from '../engine/fields.js'

/**
 * @typedef {import('./shelf.js').Job} Job
 * @typedef {(name: string, text: string) => string} Objection why a field has no place; '' if it has
 */

/** What is read of a link, and of a file, in characters. */
export const mostOfLink = 100_000
export const mostOfFile = 1_000_000

/** How many jobs are read of a file. */
const mostJobs = 1000

const first = 'Saltbite jobs'
const howToRead = `# Each job begins with its name in square brackets. Below it stand its fields as a
# link has them: + is a blank, and % with two signs stands for one other sign.`

/** How much of what is wrong is quoted. @param {string} text */
export const quote = (text) => (text.length > 40 ? `${text.slice(0, 40)}…` : text)

/** @param {Record<string, string>} fields */
export const inUS = ({ units = '' }) => units.trim().toLowerCase() === 'us'

/**
 * A set of fields in the one text form; metric units go without saying.
 *
 * @param {Record<string, string>} fields
 */
export function fieldsText(fields) {
  return textOf({ ...fields, units: inUS(fields) ? 'us' : '' })
}

/**
 * Reads the text form from elsewhere. Of a field given twice the first stands.
 *
 * @param {string} text
 * @param {Objection} objection
 * @param {Record<string, string>} [fields] what was read before
 */
export function takeFields(text, objection, fields = {}) {
  /** @type {string[]} */
  const faults = []
  for (const pair of text.split('&').filter(Boolean)) {
    const [name, value] = [...new URLSearchParams(pair)][0] ?? ['', '']
    const fault = damage(pair, name + value) || objection(name, value) || (Object.hasOwn(fields, name) ? `“${name}” is there twice` : '')
    if (fault) faults.push(fault)
    else if (value.trim() !== '') fields[name] = value
  }
  return { fields, faults }
}

/**
 * @param {string} pair
 * @param {string} read what was read of it
 */
function damage(pair, read) {
  if (!pair.includes('=')) return `“${quote(pair)}” is no field with its text`
  return /%(?![\da-f]{2}|$)/i.test(pair) || read.includes('\ufffd') ? `“${quote(pair)}” is damaged` : ''
}

/** @param {Job[]} jobs */
export function jobsText(jobs) {
  return `${[`${first}\n${howToRead}`, ...jobs.map(jobText)].join('\n\n')}\n`
}

/** @param {Job} job */
function jobText({ name, fields, sentence, saved }) {
  const lines = [`[${oneLine(name)}]`, `# saved ${new Date(saved).toISOString()}`]
  if (sentence) lines.push(`# ${oneLine(sentence)}`)
  return [...lines, ...fields.split('&')].join('\n')
}

/** @param {string} text */
export const oneLine = (text) => text.replace(/\s+/g, ' ').trim()

/**
 * Reads such a file, or lines of one; an address counts as the fields in it.
 *
 * @param {string} text at most mostOfFile characters
 * @param {Objection} objection
 * @param {number} now when a job was saved of which that is not said
 * @returns {{jobs: Job[], faults: string[]}}
 */
export function readJobs(text, objection, now) {
  const reader = new Reader(objection, now)
  for (const [at, line] of text.replace(/^\ufeff/, '').split(/\r\n|\n|\r/).entries()) reader.take(line.trim(), at + 1)
  return reader.end()
}

/** Reads line by line. */
class Reader {
  /** @type {{name: string, fields: Record<string, string>, saved: number, line: number}[]} */
  #jobs = []
  /** @type {string[]} */
  #faults = []
  #full = false
  #objection
  #now

  /**
   * @param {Objection} objection
   * @param {number} now
   */
  constructor(objection, now) {
    this.#objection = objection
    this.#now = now
  }

  /**
   * @param {string} line
   * @param {number} number
   */
  take(line, number) {
    if (line === '' || line === first || this.#full) return
    if (line[0] === '#') this.#remark(line)
    else if (line[0] === '[') this.#begin(line, number)
    else this.#fields(line, number)
  }

  /** @param {string} line */
  #remark(line) {
    const job = this.#jobs.at(-1)
    const saved = Date.parse(/^# saved (.+)/.exec(line)?.[1] ?? '')
    if (job && saved) job.saved = saved
  }

  /**
   * @param {string} line in square brackets, or '' where lines begin without
   * @param {number} number
   */
  #begin(line, number) {
    this.#full = this.#jobs.length === mostJobs
    if (this.#full) return this.#fault(number, `more than ${mostJobs} jobs are not read at once, so the rest is left out`)
    if (line && !line.endsWith(']')) this.#fault(number, `the name “${quote(line)}” does not end with ]`)
    this.#jobs.push({ name: oneLine(line.replace(/^\[|\]$/g, '')), fields: {}, saved: this.#now, line: number })
  }

  /**
   * @param {string} line
   * @param {number} number
   */
  #fields(line, number) {
    if (this.#jobs.length === 0) this.#begin('', number)
    const { faults } = takeFields(line.replace(/^https?:[^#]*#/, ''), this.#objection, this.#jobs.at(-1)?.fields)
    for (const fault of faults) this.#fault(number, fault)
  }

  /**
   * @param {number} number
   * @param {string} what
   */
  #fault(number, what) {
    this.#faults.push(`Line ${number}: ${what}.`)
  }

  end() {
    const [whole, blank] = [true, false].map((some) => this.#jobs.filter(({ fields }) => Object.keys(fields).length > 0 === some))
    for (const { name, line } of blank) if (name) this.#fault(line, `no field of “${quote(name)}” could be read`)
    const jobs = whole.map(({ name, fields, saved }) => ({ name, fields: fieldsText(fields), sentence: '', saved }))
    return { jobs, faults: this.#faults }
  }
}
