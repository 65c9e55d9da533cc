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
export const quote = (text) => text.replace(/^(.{40}).+/su, '$1…')

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
 * @param {Record<string, string>} fields to which those that are read are added
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

/** @param {Job[]} jobs */
export function jobsText(jobs) {
  return `${[`${first}\n${howToRead}`, ...jobs.map(jobText)].join('\n\n')}\n`
}

/** @param {Job} job */
function jobText({ name, fields, sentence, saved }) {
  return [`[${oneLine(name)}]`, `# saved ${new Date(saved).toISOString()}`, `# ${oneLine(sentence)}`, ...fields.split('&')].join('\n')
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
  const blocks = blocksOf(text)
  const read = blocks.slice(0, mostJobs).map((block) => readJob(block, objection, now))
  const faults = read.flatMap((one) => one.faults)
  const more = blocks[mostJobs]?.head
  if (more) faults.push(`Line ${more.at} and what follows: more than ${mostJobs} jobs are not read at once.`)
  return { jobs: read.map(({ job }) => job).filter(({ fields }) => fields), faults }
}

/**
 * @typedef {{text: string, at: number}} Line
 * @typedef {{head?: Line, lines: Line[]}} Block
 */

/**
 * The lines of each job, below the one that names it. Before the first of those
 * there may be lines of a job without a name.
 *
 * @param {string} text
 */
function blocksOf(text) {
  /** @type {Block[]} */
  const blocks = []
  for (const [place, whole] of text.split(/\r\n|[\n\r]/).entries()) {
    const line = { text: whole.trim(), at: place + 1 } // a byte order mark counts as a blank
    if (line.text === first) continue
    if (line.text[0] === '[') blocks.push({ head: line, lines: [] })
    else if (blocks.length > 0) blocks.at(-1)?.lines.push(line)
    else if (line.text && line.text[0] !== '#') blocks.push({ lines: [line] })
  }
  return blocks
}

/**
 * @param {Block} block
 * @param {Objection} objection
 * @param {number} saved
 */
function readJob({ head, lines }, objection, saved) {
  /** @type {Record<string, string>} */
  const fields = {}
  /** @type {string[]} */
  const faults = []
  const fault = (/** @type {Line} */ { at }, /** @type {string} */ what) => faults.push(`Line ${at}: ${what}.`)
  const name = oneLine(head?.text.replace(/^\[|\]$/g, '') ?? '')
  if (head && !head.text.endsWith(']')) fault(head, `“${quote(head.text)}” does not end with ]`)
  for (const line of lines) {
    if (line.text[0] === '#') saved = Date.parse(/^# saved (.+)/.exec(line.text)?.[1] ?? '') || saved
    else for (const what of takeFields(line.text.replace(/^https?:[^#]*#/, ''), objection, fields)) fault(line, what)
  }
  if (head && Object.keys(fields).length === 0) fault(head, `no field of “${quote(name)}” could be read`)
  return { job: { name, fields: fieldsText(fields), sentence: '', saved }, faults }
}
