/**
 * Answers use what the log says of this bench: where the efficiency and its range are
 * blank, those of the metal and the salt are filled in, and marked. What is typed stays,
 * and a touch leaves them out.
 */
import { make } from '../element.js'
import { known, knownNow } from './bench.js'

const names = ['efficiency', 'efficiencyLow', 'efficiencyHigh']

/**
 * @param {import('../page.js').Desk} desk
 * @returns {() => void} to be called when what is known has changed
 */
export function setUpUse(desk) {
  const { form } = desk
  const inputs = names.map((name) => form.rows.get(name)?.input)
  const row = form.rows.get(names[0])?.element
  if (!row) return () => {}

  /** All that was filled in, now and before: Undo may bring it back. @type {Set<string>} */
  const wrote = new Set()
  /** Metals and salts whose runs are left out, until the page is loaded again. @type {Set<string>} */
  const left = new Set()
  const switching = button()

  const now = () => inputs.map((input) => input?.value.trim() ?? '')
  const textOf = (/** @type {string[]} */ texts) => texts.join(' ')

  function fitNow() {
    const reply = desk.reply()
    const id = reply?.rows.metal?.[0]?.id
    const { off, fits } = knownNow()
    const those = off ? [] : fits.filter(({ salt, fields }) => salt === reply?.salt && fields.efficiency)
    return those.find((fit) => fit.id === id) ?? (id ? those.find((fit) => fit.id === '') : undefined)
  }

  function apply() {
    const fit = fitNow()
    const key = fit ? `${fit.id} ${fit.salt}` : ''
    const texts = names.map((name) => fit?.fields[name]?.replace(' %', '') ?? '')
    if (fit) wrote.add(textOf(texts))
    const there = now()
    const isOurs = wrote.has(textOf(there))
    const isBlank = there.every((text) => text === '')
    const ends = [...wrote].some((text) => text.endsWith(` ${there[1]} ${there[2]}`))
    if (!isOurs && !isBlank && there[1] && ends) {
      if (!there[0] && fit) left.add(key) // what was filled in was blanked
      return write([there[0], '', ''])
    }
    const wanted = left.has(key) ? ['', '', ''] : texts
    if ((isOurs || isBlank) && textOf(wanted) !== textOf(there) && !busy()) return write(wanted)
    show(fit, fit !== undefined && !isBlank && isOurs)
  }

  /** Whether one of them is being typed in. */
  const busy = () => inputs.some((input) => input === document.activeElement)

  /** @param {string[]} texts */
  function write(texts) {
    for (const [at, name] of names.entries()) form.write(name, texts[at])
    desk.changed()
  }

  /**
   * @param {import('./bench.js').Fit | undefined} fit
   * @param {boolean} isUsed
   */
  function show(fit, isUsed) {
    const runs = isUsed && fit ? fit.from : ''
    const changed = (form.place.dataset.runs ?? '') !== runs
    form.place.dataset.runs = runs
    for (const name of names) markRow(form.rows.get(name)?.element, runs)
    switching.hidden = !fit || (!isUsed && !left.has(`${fit.id} ${fit.salt}`))
    switching.textContent = isUsed ? 'Leave out this bench’s runs' : `Use the ${fit?.runs} runs on this bench`
    if (changed && isUsed) desk.changed() // so that the range says which they are
  }

  switching.addEventListener('click', () => {
    const fit = fitNow()
    if (!fit) return
    const key = `${fit.id} ${fit.salt}`
    if (!left.delete(key)) left.add(key)
    apply()
  })

  row.after(switching)
  desk.onReply(apply)
  known.onChange(apply)
  apply()
  return apply
}

function button() {
  const made = /** @type {HTMLButtonElement} */ (make('button'))
  made.type = 'button'
  made.className = 'leave-out'
  made.hidden = true
  return made
}

/**
 * @param {HTMLElement | undefined} row
 * @param {string} text
 */
function markRow(row, text) {
  const says = row?.querySelector('.says')
  const there = says?.querySelector('.source')
  if (!text) return there?.remove()
  if (there) {
    there.textContent = text
    return
  }
  const source = make('span', text)
  source.className = 'source'
  says?.append(source)
}
