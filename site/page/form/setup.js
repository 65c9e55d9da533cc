/** What the form has beside its rows. */
import { setUpCauses } from './causes.js'
import { setUpQuestions } from './questions.js'
import { setUpSteps } from './steps.js'

/** @param {import('../page.js').Desk} desk */
export function setUpForm(desk) {
  const { form } = desk
  setUpQuestions(desk)
  setUpCauses(desk)
  setUpSteps(desk)

  // What waits in templates is laid out before it is seen, or once the first answer
  // is painted.
  form.place.addEventListener('click', ({ target }) => {
    const summary = /** @type {Element} */ (target).closest('summary')
    if (summary?.parentElement) form.unpack(summary.parentElement)
  }, { capture: true })
  form.place.addEventListener('toggle', ({ target }) => {
    if (target instanceof HTMLDetailsElement && target.open) form.unpack(target)
  }, { capture: true })
  let laid = false
  desk.onReply(() => {
    if (laid) return
    laid = true
    requestAnimationFrame(() => setTimeout(() => form.unpack()))
    setTimeout(() => form.unpack(), 1000) // a tab in the background, or a frame out of sight, paints nothing
  })
}
