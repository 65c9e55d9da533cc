/** Jobs carried from one device to another: as a plain file, or pasted. */
import { give } from './download.js'
import { at, make, put } from './element.js'
import { nameFor, wordsOf } from './job.js'
import { read } from './keep.js'
import { jobsText, mostOfFile, readJobs } from './jobtext.js'
import { all, takeIn, why } from './shelf.js'

/** @typedef {import('./page.js').Desk} Desk */

const pasted = /** @type {HTMLTextAreaElement} */ (at('jobs-paste'))
const file = /** @type {HTMLInputElement} */ (at('jobs-file'))
const said = at('jobs-taken')
const faultList = at('jobs-faults')

/** How many faults are listed. */
const listed = 20

/**
 * @param {Desk} desk
 * @param {() => Promise<void>} refresh shows the list anew
 */
export function setUpCarry(desk, refresh) {
  const take = async (/** @type {string} */ text) => {
    await attempt(() => takeText(desk, text))
    await refresh()
  }
  at('jobs-save').addEventListener('click', () => void attempt(saveAll))
  at('jobs-take').addEventListener('click', () => void take(pasted.value))
  file.addEventListener('change', () => {
    const chosen = file.files?.[0]
    if (chosen) void attempt(async () => (chosen.size > mostOfFile ? tooLong() : take(await chosen.text())))
    file.value = '' // so that the same can be chosen again
  })
}

/** @param {() => unknown} work */
async function attempt(work) {
  faultList.replaceChildren()
  put(said, '')
  try {
    await work()
  } catch (reason) {
    put(said, why(reason))
  }
}

function tooLong() {
  put(said, 'That is more than 1 MB, far more than jobs need, so it was not read. Take in a shorter piece of it.')
}

async function saveAll() {
  give(new Blob([jobsText(await all())], { type: 'text/plain' }), 'saltbite-jobs.txt')
  put(said, 'The file is called saltbite-jobs.txt.')
}

/**
 * @param {Desk} desk
 * @param {string} text
 */
async function takeText(desk, text) {
  if (text.length > mostOfFile) return tooLong()
  const { jobs, faults } = readJobs(text, (name, value) => desk.sheet.objection(name, value), Date.now())
  for (const job of jobs) await complete(desk, job)
  const { taken, there } = await takeIn(jobs)
  put(said, [count(taken, 'taken in'), there > 0 && count(there, 'here already'), faults.length > 0 && 'What was damaged:'].filter(Boolean).join(' '))
  const rest = faults.length - listed
  faultList.append(...faults.slice(0, listed).map((fault) => make('li', fault)))
  if (rest > 0) faultList.append(make('li', `And ${rest} more.`))
}

/**
 * Gives a job the words that it comes to, and a name if it has none.
 *
 * @param {Desk} desk
 * @param {import('./shelf.js').Job} job
 */
async function complete(desk, job) {
  const fields = read(job.fields)
  job.name ||= nameFor(fields)
  job.sentence = await wordsOf(desk, fields)
}

/**
 * @param {number} jobs
 * @param {string} done
 */
function count(jobs, done) {
  return `${jobs === 0 ? 'No job was' : jobs === 1 ? '1 job was' : `${jobs} jobs were`} ${done}.`
}
