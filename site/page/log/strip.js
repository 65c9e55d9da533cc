/**
 * The planner of a trial on scrap: how small a strip tells what this bench does. The
 * program plans it for what the form holds; a touch makes it the job on the form.
 */
import { put } from '../element.js'
import { askOf, knownNow } from './bench.js'
import { button, piece } from './leaf.js'

/** @typedef {import('../page.js').Desk} Desk */

export function stripPlan() {
  const said = piece('p', { class: 'plan', role: 'status' })
  const take = button('Put the strip on the page', {})
  const place = /** @type {HTMLDetailsElement} */ (piece('details', { class: 'carry strip' }, piece('summary', {}, 'Test this bench on a strip of scrap'), said, piece('p', { class: 'acts' }, take)))

  /** @type {Record<string, string>} */
  let fields = {}

  return {
    place,
    take,

    /** Whether the runs of the metal on the form are still too few: then it is open. @param {Desk} desk */
    unfold(desk) {
      const id = desk.reply()?.rows.metal?.[0]?.id
      place.open = !knownNow().fits.some((fit) => fit.id === id && fit.salt === desk.reply()?.salt && fit.fields.efficiency)
    },

    /**
     * @param {Desk} desk
     * @param {string} resolution of the balance, where the dialog has it
     */
    async plan(desk, resolution) {
      const job = desk.form.fields()
      const { strip } = await askOf(desk, { ...job, resolution: resolution || job.resolution || '', do: 'strip' }, [])
      fields = strip?.fields ?? {}
      put(said, strip?.text ?? '')
      take.hidden = !fields.area
    },

    /** Puts the strip on the form; Undo takes it back. @param {Desk} desk */
    lay: (desk) => desk.lay(desk.form.placed(fields)),
  }
}
