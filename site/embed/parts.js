/** Which parts of the job sheet are shown. What stands in the others counts all the same. */
import { namesIn } from './message.js'

/**
 * @param {import('../page/sheet.js').Sheet} sheet
 * @param {string} list names of parts, parted by blanks or commas; without a known one all are shown
 */
export function showParts(sheet, list) {
  const wanted = namesIn(list)
  const parts = sheet.parts.filter(({ element }) => element.dataset.part)
  const listed = parts.filter(({ element }) => wanted.has(element.dataset.part ?? ''))
  for (const part of parts) {
    const { element } = part
    element.hidden = listed.length > 0 && !listed.includes(part)
    if (element.hidden) element.open = false
    else if (listed.includes(part) || sheet.filled(part).length > 0) element.open = true
  }
}

/** A caution does not lead to a field that is not shown. */
export function unlinkHidden() {
  for (const link of document.querySelectorAll('.cautions a')) {
    if (document.getElementById(/** @type {HTMLAnchorElement} */ (link).hash.slice(1))?.closest('[hidden]')) link.remove()
  }
}
