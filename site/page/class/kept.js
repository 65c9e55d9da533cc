/** Takes pieces from the jobs that are kept on this device. */
import { dialogOf, openDialog } from '../dialog.js'
import { byId, frameOf, make, put } from '../element.js'
import { fieldsOf } from '../form/text.js'
import { all } from '../jobs/shelf.js'

/** @typedef {import('./text.js').Named} Named */

/** @param {(rows: Named[]) => void} take */
export function setUpKept(take) {
  const dialog = dialogOf('kept-jobs')
  const list = byId('kept-list')
  const opener = byId('from-kept')
  /** @type {import('../jobs/shelf.js').StoredJob[]} */
  let jobs = []

  opener.addEventListener('click', async () => {
    openDialog(dialog, opener)
    jobs = await all().catch(() => [])
    list.replaceChildren(...jobs.map(({ name, sentence }) => {
      const row = frameOf('kept-job')
      put(row.querySelector('b'), name)
      put(row.querySelector('small'), sentence)
      return row
    }), ...jobs.length > 0 ? [] : [make('li', list.dataset.none ?? '')])
  })

  byId('take-kept').addEventListener('click', () => {
    const ticks = [...list.querySelectorAll('input')]
    const chosen = jobs.filter((_, place) => ticks[place]?.checked)
    dialog.close()
    take(chosen.map(({ name, fields }) => ({ name, fields: without(fieldsOf(fields), ['units', 'ask', 'find']) })))
  })
}

/** @param {Record<string, string>} fields @param {string[]} names */
const without = (fields, names) => Object.fromEntries(Object.entries(fields).filter(([name]) => !names.includes(name)))
