/**
 * Habits of a hand: what a person does without thinking does what was meant.
 */

/** @param {HTMLElement} place the sheet */
export function setUpHabits(place) {
  let byFinger = false
  addEventListener('pointerdown', () => { byFinger = true }, { capture: true })
  addEventListener('keydown', () => { byFinger = false }, { capture: true })

  // A unit that was chosen by a finger lets go of the keys: an arrow key, or the
  // wheel, that is to move the page would choose another unit unseen.
  place.addEventListener('change', ({ target }) => {
    if (byFinger && target instanceof HTMLSelectElement) target.blur()
  })

  // What the keys lead to is not under the answer or the strip. What a finger
  // leads to is under the finger, and nothing moves there.
  place.addEventListener('focusin', ({ target }) => {
    if (!byFinger && target instanceof HTMLElement && isCovered(target)) target.scrollIntoView({ block: 'end' })
  })

  // Enter moves on to the next field that is not folded away, Shift and Enter back.
  place.addEventListener('keydown', (event) => {
    const control = event.target
    if (event.key !== 'Enter' || event.isComposing || !(control instanceof HTMLInputElement)) return
    event.preventDefault()
    const fields = [...place.querySelectorAll('.row [name]')].filter((field) => !field.closest('details:not([open])'))
    const next = fields[fields.indexOf(control) + (event.shiftKey ? -1 : 1)]
    if (next instanceof HTMLElement) next.focus()
    if (next instanceof HTMLInputElement) next.select()
  })
}

/** How far within its edge an element is looked for, in pixels. */
const within = 6

/** @param {HTMLElement} element */
function isCovered(element) {
  const { left, top, bottom } = element.getBoundingClientRect()
  return [top + within, bottom - within].some((y) => !element.contains(document.elementFromPoint(left + within, y)))
}
