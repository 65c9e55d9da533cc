/**
 * Makes a picture ready to print: pure black and white, at true size, its lines
 * widened by what the undercut takes. It is saved as PNG or printed.
 */
import { textOf } from '../../engine/fields.js'
import { give } from '../answer/download.js'
import { make, put } from '../element.js'
import { leaves, printAll, printOnly } from '../paper/leaf.js'
import { address } from './address.js'

/** The fields that say how it is printed, none of which has a row. */
const says = ['mirror', 'dpi', 'paper', 'copies']

/** @param {HTMLElement} control */
const nameOf = ({ dataset }) => dataset.field ?? ''

/**
 * @typedef {object} Source
 * @property {() => object | undefined} picture
 * @property {() => Record<string, string>} fields that it is read by
 * @property {(work: (options: import('../../engine/client.js').Options) => Promise<void>) => Promise<void>} busy shows the progress of work, and Cancel
 *
 * @param {import('../page.js').Desk} desk
 * @param {Element} place
 * @param {Source} source
 */
export function setUpPrint(desk, place, source) {
  const { form } = desk
  const controls = [.../** @type {NodeListOf<HTMLInputElement | HTMLSelectElement>} */ (place.querySelectorAll('[data-field]'))]
  const made = place.querySelector('.made')

  for (const control of controls) {
    control.addEventListener('change', () => {
      const text = control.value.trim()
      if (text) form.others.set(nameOf(control), text)
      else form.others.delete(nameOf(control))
      put(made, '')
      desk.changed()
    })
  }

  desk.onReply(() => {
    const { others } = form
    for (const control of controls) {
      const text = others.get(nameOf(control)) ?? ''
      if (control.type === 'radio') /** @type {HTMLInputElement} */ (control).checked = control.value === text
      else if (control !== document.activeElement) control.value = text
    }
    const way = others.get('mirror') ?? ''
    for (const line of place.querySelectorAll('.way')) line.toggleAttribute('hidden', (line.getAttribute('data-of') ?? '') !== way)
  })

  for (const button of place.querySelectorAll('button')) {
    button.addEventListener('click', () => void source.busy(async (options) => {
      const picture = source.picture()
      const prepared = picture && await desk.bench()?.prepare(picture, textOf(source.fields()), options)
      if (!prepared || options.signal?.aborted) return
      const wrong = prepared.errors.find(({ field }) => ['', 'width', 'height', ...says].includes(field))
      const { png, sheet } = prepared
      put(made, [wrong?.text ?? prepared.sentence, ...prepared.cautions.map(({ text }) => text)].join(' '))
      if (!png || !sheet) return
      const file = new Blob([png], { type: 'image/png' })
      if (button.dataset.make === 'save') give(file, 'saltbite-artwork.png')
      else await print(file, sheet, footer(prepared.sentence))
    }))
  }

  /** The job in a line, beside the rule; the art alone has no room for it. @param {string} printed */
  function footer(printed) {
    return form.others.get('paper') ? [printed, desk.reply()?.sentence].filter(Boolean).join(' ') : ''
  }
}

/**
 * @param {Blob} file
 * @param {{width: {value: number}, height: {value: number}}} sheet in mm
 * @param {string} footer
 */
async function print(file, sheet, footer) {
  const image = new Image()
  image.alt = ''
  image.src = await address(file)
  await image.decode()
  const leaf = make('div', image, make('p', footer))
  leaf.className = 'art'
  leaves.replaceChildren(leaf)
  printOnly({ width: sheet.width.value, height: sheet.height.value })
  // Until the next touch or key: in one engine afterprint comes before the leaf is printed.
  const over = new AbortController()
  for (const next of ['pointerdown', 'keydown']) {
    addEventListener(next, () => {
      over.abort()
      printAll()
      leaves.replaceChildren()
    }, { capture: true, signal: over.signal })
  }
  window.print()
}
