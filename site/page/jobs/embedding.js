/**
 * Writes the code that puts the job on a web page of somebody's own: which fields
 * are locked there, which parts are shown, and a preview of it.
 */
import { own, protocol } from '../../embed/message.js'
import { byId, make, put } from '../element.js'

/** @typedef {import('../page.js').Desk} Desk */

/** The tallest that the preview's frame is made, in pixels. */
const tallest = 20_000

/** @param {Desk} desk */
export function setUpEmbedding({ form }) {
  const place = document.getElementById('embed-make')
  if (!(place instanceof HTMLDetailsElement)) return // in a file there is nothing beside the page to embed
  const lock = byId('embed-lock')
  const show = byId('embed-show')
  const code = /** @type {HTMLTextAreaElement} */ (byId('embed-code'))
  const preview = byId('embed-preview')
  const button = byId('embed-try')
  /** @type {HTMLIFrameElement | undefined} */
  let frame
  let told = 0

  const job = () => {
    const { units, ...fields } = form.fields()
    return units === 'us' ? { ...fields, units } : fields
  }
  const chosen = () => ({
    fields: job(),
    lock: ticked(lock).join(', '),
    show: ticked(show).length === boxes(show).length ? '' : ticked(show).join(', '),
  })

  place.addEventListener('toggle', () => {
    if (!place.open) return endPreview()
    const before = ticked(lock)
    const names = [...form.rows.values()].filter(({ name }) => !form.blank(name))
    lock.replaceChildren(lock.children[0], ...names.map(({ name, label }) => tick(name.toLowerCase(), label, before.includes(name.toLowerCase()))))
    write()
    place.scrollIntoView() // the code stands first, with its button
  })
  place.addEventListener('change', write)
  place.closest('dialog')?.addEventListener('close', () => { place.open = false })
  button.addEventListener('click', () => {
    if (frame) endPreview()
    else beginPreview()
  })

  function write() {
    code.value = codeOf(chosen())
    tell()
  }

  function beginPreview() {
    frame = document.createElement('iframe')
    frame.title = 'Preview'
    frame.setAttribute('sandbox', 'allow-scripts')
    frame.src = besides('embed.html')
    preview.replaceChildren(frame)
    addEventListener('message', hear)
    showButton()
  }

  function endPreview() {
    frame = undefined
    preview.replaceChildren()
    removeEventListener('message', hear)
    showButton()
  }

  function showButton() {
    button.setAttribute('aria-expanded', String(frame !== undefined))
    put(button, frame ? 'Close the preview' : 'Show a preview')
  }

  /** @param {MessageEvent<unknown>} event */
  function hear({ source, data }) {
    if (!frame || source !== frame.contentWindow || own(data, 'saltbite') !== protocol) return
    const height = own(data, 'height')
    if (own(data, 'hello') === true) tell()
    else if (typeof height === 'number' && height > 0 && height <= tallest) frame.style.blockSize = `${height}px`
  }

  function tell() {
    frame?.contentWindow?.postMessage({ saltbite: protocol, told: ++told, tell: { ...chosen(), whole: true } }, '*') // it has no origin, and is told only what stands on this page
  }
}

/** The address of a file beside the page. @param {string} name */
const besides = (name) => new URL(name, location.href.split(/[?#]/)[0]).href

/**
 * The element with its script, as it is pasted into a page.
 *
 * @param {{fields: Record<string, string>, lock: string, show: string}} chosen
 */
function codeOf({ fields, lock, show }) {
  const attributes = Object.entries({ ...fields, lock, show }).filter(([, text]) => text)
    .map(([name, text]) => `${name.toLowerCase()}="${escaped(text)}"`)
  return `<script src="${escaped(besides('embed.js'))}" defer></script>

<saltbite-bench ${attributes.join('\n                ')}>
  <a href="${escaped(besides('.'))}">Open the etching calculator</a>
</saltbite-bench>`
}

/** A text as an attribute of HTML has it. @param {string} text */
const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;')

/**
 * @param {string} value
 * @param {string} label
 * @param {boolean} checked
 */
function tick(value, label, checked) {
  const box = document.createElement('input')
  Object.assign(box, { type: 'checkbox', value, checked })
  return make('label', box, label)
}

/** @param {Element} place */
const boxes = (place) => [...place.querySelectorAll('input')]

/** @param {Element} place */
const ticked = (place) => boxes(place).filter(({ checked }) => checked).map(({ value }) => value)
