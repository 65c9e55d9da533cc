/**
 * Many jobs in a plain file that a person can read:
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
 * the other lines are the text form with a line break for each "&". Anything
 * else is reported with the number of its line and left out.
 */
import { fieldsText, oneLine, quote, takeFields } from '../form/text.js'
import { nameOf } from './names.js'

/**
 * @typedef {import('./shelf.js').Job} Job
 * @typedef {import('../form/text.js').Objection} Objection
 */

/** How much is read of a file, in characters. */
export const mostOfFile = 1_000_000

/** How many jobs are read of a file. */
const mostJobs = 1000

const first = 'Saltbite jobs'
const howToRead = `# Each job begins with its name in square brackets. Below it stand its fields as a
# link has them: + is a blank, and % with two signs stands for one other sign.`

/** @param {Job[]} jobs */
export function jobsText(jobs) {
  return `${[`${first}\n${howToRead}`, ...jobs.map(jobText)].join('\n\n')}\n`
}

/** @param {Job} job */
function jobText({ name, fields, sentence, saved }) {
  return [`[${oneLine(name)}]`, `# saved ${new Date(saved).toISOString()}`, `# ${oneLine(sentence)}`, ...fields.split('&')].join('\n')
}

/**
 * Reads such a file, or lines of one; an address counts as the fields in it.
 *
 * @param {string} text at most mostOfFile characters
 * @param {Objection} objection
 * @param {number} now when a job was saved if the file does not say so
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
 * The lines of each job, below the line that names it. The first job may have no
 * name.
 *
 * @param {string} text
 */
function blocksOf(text) {
  /** @type {Block[]} */
  const blocks = []
  for (const [place, whole] of text.split(/\r\n|[\n\r]/).entries()) {
    const line = { text: whole.trim(), at: place + 1 } // trim() removes a byte order mark as well
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
 * @param {number} now
 */
function readJob({ head, lines }, objection, now) {
  let saved = now
  /** @type {Record<string, string>} */
  const fields = {}
  /** @type {string[]} */
  const faults = []
  const fault = (/** @type {Line} */ { at }, /** @type {string} */ what) => faults.push(`Line ${at}: ${what}.`)
  const name = nameOf(head?.text.replace(/^\[|\]$/g, '') ?? '')
  if (head && !head.text.endsWith(']')) fault(head, `“${quote(head.text)}” does not end with ]`)
  for (const line of lines) {
    if (line.text[0] === '#') saved = savedIn(line.text, now) ?? saved
    else for (const what of takeFields(line.text.replace(/^https?:[^#]*#/, ''), objection, fields)) fault(line, what)
  }
  if (head && Object.keys(fields).length === 0) fault(head, `no field of “${quote(name)}” could be read`)
  return { job: { name, fields: fieldsText(fields), sentence: '', saved }, faults }
}

/**
 * When a job was saved, according to a remark; limited to the time from 1970 to now.
 *
 * @param {string} remark
 * @param {number} now
 */
function savedIn(remark, now) {
  const said = Date.parse(/^# saved (.+)/.exec(remark)?.[1] ?? '')
  return Number.isNaN(said) ? undefined : Math.min(Math.max(said, 0), now)
}
