/** What probably went wrong, likeliest first: what it is, what to do, where to type it. */
import { byId, frameOf, put } from '../element.js'

const list = byId('causes')

/** @typedef {import('../../engine/client.js').Cause} Cause */

/** @param {import('../page.js').Desk} desk */
export function setUpCauses(desk) {
  desk.onReply(({ rows }) => show(rows.causes ?? []))
  list.addEventListener('click', ({ target }) => {
    const { leads } = /** @type {Element} */ (target).closest('button')?.dataset ?? {}
    if (leads) desk.form.lead(leads)
  })

  let shown = ''

  /** @param {Cause[]} causes */
  function show(causes) {
    const key = JSON.stringify(causes)
    if (key === shown) return
    shown = key
    list.replaceChildren(...causes.map(itemOf))
  }

  /** @param {Cause} cause */
  function itemOf({ text, do: advice, field, source }) {
    const item = frameOf('cause')
    put(item.querySelector('strong'), text)
    put(item.querySelector('.do'), advice)
    put(item.querySelector('.from'), source && `Rests on ${source}.`)
    const button = /** @type {HTMLButtonElement} */ (item.querySelector('button'))
    const row = desk.form.rows.get(field)
    button.hidden = row === undefined
    button.dataset.leads = field
    put(button, `Go to ${row?.label.toLowerCase()}`)
    return item
  }
}
