/** Moves jobs from one device to another: as a plain file, or as pasted text. */
import { give } from '../answer/download.js'
import { byId, make, put } from '../element.js'
import { nameFor } from './current.js'
import { fieldsOf } from '../form/text.js'
import { jobsText, mostOfFile, readJobs } from './file.js'
import { all, fail, takeIn, why } from './shelf.js'

/** @typedef {import('../page.js').Desk} Desk */

const pasted = /** @type {HTMLTextAreaElement} */ (byId('jobs-paste'))
const file = /** @type {HTMLInputElement} */ (byId('jobs-file'))
const said = byId('jobs-taken')
const faultList = byId('jobs-faults')

/** How many faults are listed. */
const listed = 20

/**
 * @param {Desk} desk
 * @param {() => Promise<void>} refresh updates the list, and gives new jobs their sentences
 */
export function setUpCarry(desk, refresh) {
  const take = async (/** @type {string} */ text) => {
    await attempt(() => takeText(desk, text))
    await refresh()
  }
  byId('jobs-save').addEventListener('click', () => void attempt(saveAll))
  byId('jobs-take').addEventListener('click', () => void take(pasted.value))
  file.addEventListener('change', () => {
    const chosen = file.files?.[0]
    if (chosen) void attempt(async () => take(chosen.size > mostOfFile ? fail('LongFile') : await chosen.text()))
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

async function saveAll() {
  give(new Blob([jobsText(await all())], { type: 'text/plain' }), 'saltbite-jobs.txt')
  put(said, 'The file is called saltbite-jobs.txt.')
}

/**
 * Takes in the jobs of a text. Their sentences come later: a thousand take long.
 *
 * @param {Desk} desk
 * @param {string} text
 */
async function takeText(desk, text) {
  if (text.length > mostOfFile) fail('LongFile')
  const { jobs, faults } = readJobs(text, (name, value) => desk.form.objection(name, value), Date.now())
  for (const job of jobs) job.name ||= nameFor(fieldsOf(job.fields))
  const taken = await takeIn(jobs)
  const there = jobs.length - taken
  put(said, [count(taken, 'taken in'), there > 0 && count(there, 'here already'), faults.length > 0 && 'What was damaged:'].filter(Boolean).join(' '))
  const rest = faults.length - listed
  faultList.append(...faults.slice(0, listed).map((fault) => make('li', fault)))
  if (rest > 0) faultList.append(make('li', `And ${rest} more.`))
}

/**
 * @param {number} jobs
 * @param {string} done
 */
function count(jobs, done) {
  return `${jobs === 0 ? 'No job was' : jobs === 1 ? '1 job was' : `${jobs} jobs were`} ${done}.`
}
