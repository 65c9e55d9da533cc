/**
 * A text field with suggestions, after the WAI-ARIA combobox pattern with list
 * autocomplete: the list opens as one types or presses the down arrow, arrows
 * move through it while the focus stays in the field, Enter takes what is
 * marked, Escape closes the list.
 *
 * While a list is open it lies over other fields, and a veil over the rest of the
 * page: the first touch beside the list closes it and does nothing else. Where a
 * keyboard leaves little room, the list is moved into what there is.
 */
import { make } from '../element.js'

/**
 * @typedef {{text: string, why: string}} Suggestion
 */

const veil = make('div')
veil.className = 'veil'
veil.hidden = true
document.body.append(veil)

/** Closes the list that is open. */
let closeOpen = () => {}
/** A press has begun on the veil: it stays until that has become a click, which would else go to what lies below. */
let pressed = false

veil.addEventListener('pointerdown', () => {
  pressed = true
  closeOpen()
})
veil.addEventListener('mousedown', (event) => event.preventDefault()) // the focus stays in the field
for (const over of ['click', 'pointercancel']) veil.addEventListener(over, lift)
/** How long after a touch its click may come, in milliseconds. */
const late = 400
addEventListener('pointerup', () => { if (pressed) setTimeout(lift, late) })

function lift() {
  pressed = false
  veil.hidden = true
}

/**
 * @param {HTMLInputElement} input
 * @param {(text: string) => Promise<Suggestion[]>} suggest
 * @param {() => void} taken called after a suggestion was written into the field
 */
export function combobox(input, suggest, taken) {
  const row = /** @type {HTMLElement} */ (input.closest('.row'))
  const list = /** @type {HTMLElement} */ (row.querySelector('.list'))
  /** The suggestion that a press has begun on. @type {Element | null} */
  let touched = null
  let marked = -1
  let asked = 0

  async function open() {
    if (input.readOnly) return
    const ask = ++asked
    const found = await suggest(input.value.trim())
    if (ask !== asked || document.activeElement !== input) return
    list.replaceChildren(...found.map((one, index) => option(list.id, one, index)))
    mark(-1)
    show(found.length > 0)
  }

  function close() {
    asked++
    show(false)
    mark(-1)
  }

  /** @param {boolean} visible */
  function show(visible) {
    list.hidden = !visible
    row.classList.toggle('listing', visible)
    if (visible) {
      closeOpen = close
      veil.hidden = false
      if (document.documentElement.matches('[data-low]')) list.scrollIntoView({ block: 'nearest' })
    } else if (closeOpen === close && !pressed) veil.hidden = true
    input.setAttribute('aria-expanded', String(visible))
  }

  /** @param {number} index */
  function mark(index) {
    marked = index
    input.removeAttribute('aria-activedescendant')
    for (const [place, item] of [...list.children].entries()) {
      item.setAttribute('aria-selected', String(place === index))
      if (place !== index) continue
      input.setAttribute('aria-activedescendant', item.id)
      item.scrollIntoView({ block: 'nearest' })
    }
  }

  /** @param {number} step */
  function move(step) {
    const count = list.children.length
    if (list.hidden || count === 0) return
    // One more position than there are suggestions: nothing marked.
    mark((marked + 1 + step + count + 1) % (count + 1) - 1)
  }

  /** @param {Element | undefined} item */
  function take(item) {
    if (!(item instanceof HTMLElement)) return
    input.value = item.dataset.text ?? ''
    close()
    taken()
  }

  input.addEventListener('input', open)
  input.addEventListener('blur', close)
  input.addEventListener('click', () => { if (list.hidden && input.value === '') void open() })
  input.addEventListener('keydown', (event) => {
    if (event.isComposing) return
    if (event.key === 'ArrowDown' && list.hidden) void open()
    else if (event.key === 'ArrowDown') move(1)
    else if (event.key === 'ArrowUp' && !list.hidden) move(-1)
    else if (event.key === 'Escape' && !list.hidden) close()
    else if (event.key === 'Enter' && marked >= 0) take(list.children[marked])
    else return
    event.preventDefault()
    event.stopPropagation()
  })
  // The focus stays in the field, so that its blur doesn't close the list first.
  list.addEventListener('mousedown', (event) => event.preventDefault())
  // A press that began elsewhere, before the list was there, chooses nothing.
  list.addEventListener('pointerdown', ({ target }) => { touched = optionAt(target) })
  list.addEventListener('click', ({ target }) => {
    const option = optionAt(target)
    if (option && option === touched) take(option)
    touched = null
  })
}

/** @param {EventTarget | null} target */
const optionAt = (target) => /** @type {Element} */ (target).closest('[role=option]')

/**
 * @param {string} list
 * @param {Suggestion} one
 * @param {number} index
 */
function option(list, { text, why }, index) {
  const item = document.createElement('li')
  item.id = `${list}-${index}`
  item.setAttribute('role', 'option')
  item.dataset.text = text
  item.append(text)
  if (why) {
    const small = document.createElement('small')
    small.append(why)
    item.append(' ', small)
  }
  return item
}
