/**
 * The page in a frame on somebody else's page: told by messages what to show and
 * which fields are set, and telling its answers and its height. The protocol is
 * described in embed.js. Without such a message it is the plain page.
 */
import { desk } from '../page/page.js'
import { lock } from './lock.js'
import { wear } from './look.js'
import { own, protocol, textsOf } from './message.js'
import { showParts, unlinkHidden } from './parts.js'

const { form } = desk
const root = document.documentElement
const { names } = form

/** What was told last, of what is one text. */
const texts = { lock: '', show: '' }
let told = 0
let height = 0

/** @param {object} message */
function say(message) {
  parent.postMessage({ saltbite: protocol, ...message }, '*') // the page around it may read what it shows
}

/** @param {MessageEvent<unknown>} event */
function hear({ source, data }) {
  if (source !== parent || own(data, 'saltbite') !== protocol) return
  const wearing = own(data, 'wear')
  if (wearing !== undefined) return wear(textsOf(wearing, ['theme']).theme ?? '', own(wearing, 'look'))
  const number = own(data, 'told')
  const tell = own(data, 'tell')
  if (typeof number !== 'number' || typeof tell !== 'object' || tell === null) return
  told = number
  root.classList.add('framed')
  take(tell)
  desk.changed()
  sayHeight()
}

/** @param {object} tell */
function take(tell) {
  Object.assign(texts, textsOf(tell, Object.keys(texts)))
  const fields = textsOf(own(tell, 'fields'), names)
  const whole = own(tell, 'whole') === true
  form.locked.clear()
  form.restore(whole ? form.placed(fields) : changed(form.entries(), fields))
  for (const { input } of form.rows.values()) {
    if (input instanceof HTMLSelectElement) input.selectedIndex = Math.max(input.selectedIndex, 0) // the usual one
  }
  lock(form, texts.lock)
  showParts(form, texts.show)
}

/**
 * What stands on the form with some fields changed.
 *
 * @param {import('../page/form/form.js').Entries} before
 * @param {Record<string, string>} fields a blank one is blanked
 */
function changed(before, fields) {
  const { typed, units } = form.placed(fields)
  const blanked = Object.fromEntries(Object.keys(fields).map((name) => [name, '']))
  if (!('units' in fields)) delete typed.units
  return { typed: { ...before.typed, ...blanked, ...typed }, units: { ...before.units, ...units } }
}

/** An answer is told once it is that of what stands on the form. */
desk.onReply((reply, asked) => {
  unlinkHidden()
  const fields = form.fields()
  const settled = new URLSearchParams(asked).toString() === new URLSearchParams(fields).toString()
  if (settled && told > 0) say({ fields, reply, told })
})

/** Tells the height of the page and of what hangs out of it below. */
function sayHeight() {
  if (!root.matches('.framed')) return
  const lowest = [document.body, ...lists].map((element) => element.getBoundingClientRect().bottom + scrollY)
  const now = Math.ceil(Math.max(...lowest))
  if (now === height) return
  height = now
  say({ height })
}

const lists = document.querySelectorAll('.list')

// A dialog stands in the middle of the window: that of a frame may be far from
// where the hand is.
document.addEventListener('click', ({ target }) => {
  const { top } = /** @type {Element} */ (target).getBoundingClientRect()
  root.style.setProperty('--touched', `${top}px`)
}, { capture: true })

if (parent !== window) {
  addEventListener('message', hear)
  const observer = new ResizeObserver(sayHeight)
  for (const element of [document.body, ...lists]) observer.observe(element)
  say({ hello: true })
}
