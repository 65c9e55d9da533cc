/**
 * Which parts are shown: of the form, of the figures and of the pictures. What is set
 * in the others counts all the same.
 */
import { namesIn } from './message.js'

/**
 * @param {import('../page/form/form.js').Form} form
 * @param {string} list names of parts, parted by blanks or commas; without a known one all are shown
 */
export function showParts(form, list) {
  const wanted = namesIn(list)
  const parts = form.parts.filter(({ element }) => element.dataset.part)
  const listed = parts.filter(({ element }) => wanted.has(element.dataset.part ?? ''))
  for (const part of parts) {
    const { element } = part
    element.hidden = listed.length > 0 && !listed.includes(part)
    if (element.hidden) element.open = false
    else if (listed.includes(part) || form.filled(part).length > 0) element.open = true
  }
  showPictures(new Set(parts.filter(({ element }) => !element.hidden).map(({ element }) => element.dataset.part ?? '')))
}

/** The parts whose work the pictures show. */
const drawn = ['design', 'bite', 'sheet']

/** @param {Set<string>} shown names of parts */
function showPictures(shown) {
  const cut = document.getElementById('cut')
  const section = cut?.querySelector('[value=section]')
  const curve = cut?.querySelector('[value=curve]')
  cut?.classList.toggle('unlisted', !drawn.some((part) => shown.has(part)))
  curve?.closest('label')?.classList.toggle('unlisted', !shown.has('bite'))
  if (!shown.has('bite') && curve instanceof HTMLInputElement && curve.checked && section instanceof HTMLElement) section.click()
}

/** A caution does not lead to a field that is not shown. */
export function unlinkHidden() {
  for (const link of document.querySelectorAll('.cautions a')) {
    if (document.getElementById(/** @type {HTMLAnchorElement} */ (link).hash.slice(1))?.closest('[hidden]')) link.remove()
  }
}
