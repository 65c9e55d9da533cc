/**
 * A text field with suggestions, after the WAI-ARIA combobox pattern with list
 * autocomplete: the list opens as one types or presses the down arrow, arrows
 * move through it while the focus stays in the field, Enter takes what is
 * marked, Escape closes the list.
 */

/**
 * @typedef {{text: string, why: string}} Suggestion
 */

/**
 * @param {HTMLInputElement} input
 * @param {(text: string) => Promise<Suggestion[]>} suggest
 * @param {() => void} taken called when a suggestion was written into the field
 */
export function combobox(input, suggest, taken) {
  const list = /** @type {HTMLElement} */ (document.getElementById(`${input.id}-list`))
  let marked = -1
  let asked = 0

  async function open() {
    if (input.readOnly) return
    const ask = ++asked
    const found = await suggest(input.value.trim())
    if (ask !== asked || document.activeElement !== input) return
    list.replaceChildren(...found.map((one, at) => option(list.id, one, at)))
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
    input.setAttribute('aria-expanded', String(visible))
  }

  /** @param {number} at */
  function mark(at) {
    marked = at
    input.removeAttribute('aria-activedescendant')
    for (const [place, item] of [...list.children].entries()) {
      item.setAttribute('aria-selected', String(place === at))
      if (place !== at) continue
      input.setAttribute('aria-activedescendant', item.id)
      item.scrollIntoView({ block: 'nearest' })
    }
  }

  /** @param {number} step */
  function move(step) {
    const count = list.children.length
    if (list.hidden || count === 0) return
    // One place more than there are suggestions: that of nothing marked.
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
  list.addEventListener('pointerdown', (event) => event.preventDefault())
  list.addEventListener('mousedown', (event) => event.preventDefault())
  list.addEventListener('click', (event) => {
    take(/** @type {Element} */ (event.target).closest('[role=option]') ?? undefined)
  })
}

/**
 * @param {string} list
 * @param {Suggestion} one
 * @param {number} at
 */
function option(list, { text, why }, at) {
  const item = document.createElement('li')
  item.id = `${list}-${at}`
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
