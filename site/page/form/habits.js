/**
 * Input habits: what people do without thinking does what they meant.
 */

/** Whether the last press was on a screen, which would answer a focused field with its keyboard. */
export let onScreen = false

/** @param {HTMLElement} place the form */
export function setUpHabits(place) {
  let byFinger = false
  addEventListener('pointerdown', ({ pointerType }) => {
    byFinger = true
    onScreen = pointerType === 'touch'
  }, { capture: true })
  addEventListener('keydown', () => { byFinger = onScreen = false }, { capture: true })

  // A unit control loses the focus after a choice by finger: otherwise an arrow key
  // or the wheel, meant to scroll the page, would choose another unit unseen.
  place.addEventListener('change', ({ target }) => {
    if (byFinger && target instanceof HTMLSelectElement) target.blur()
  })

  // An element focused by keyboard must not be under the answer or the strip. One
  // focused by finger is under the finger and must not move.
  place.addEventListener('focusin', ({ target }) => {
    if (!byFinger && target instanceof HTMLElement && isCovered(target)) target.scrollIntoView({ block: 'end' })
  })

  // Enter moves to the next visible field, Shift and Enter to the previous one.
  place.addEventListener('keydown', (event) => {
    const control = event.target
    if (event.key !== 'Enter' || event.isComposing || !(control instanceof HTMLInputElement)) return
    event.preventDefault()
    const fields = [...place.querySelectorAll('.row [name], .steps input')].filter((field) => field.checkVisibility())
    const next = fields[fields.indexOf(control) + (event.shiftKey ? -1 : 1)]
    if (next instanceof HTMLElement) next.focus()
    if (next instanceof HTMLInputElement) next.select()
  })
}

/** How far inside its edge an element is tested, in pixels. */
const inset = 6

/** @param {HTMLElement} element */
function isCovered(element) {
  const { left, top, bottom } = element.getBoundingClientRect()
  return [top + inset, bottom - inset].some((y) => !element.contains(document.elementFromPoint(left + inset, y)))
}
