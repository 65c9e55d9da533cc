/** Elements, made and written without innerHTML. */

/**
 * @param {string} tag
 * @param {(Node | string)[]} children
 */
export function make(tag, ...children) {
  const element = document.createElement(tag)
  element.append(...children)
  return element
}

/**
 * The page's element of an id.
 *
 * @param {string} id
 */
export function at(id) {
  return /** @type {HTMLElement} */ (document.getElementById(id))
}

/**
 * A new element of a frame that the page has for it.
 *
 * @param {string} id
 */
export function frameOf(id) {
  const frame = /** @type {HTMLTemplateElement} */ (at(id))
  return /** @type {HTMLElement} */ (/** @type {Element} */ (frame.content.firstElementChild).cloneNode(true))
}

/**
 * A sentence that stands in a frame of the page, by what it is said of.
 *
 * @param {string} id of the frame
 * @param {string} of
 * @returns {string | undefined} undefined where the frame says nothing of it
 */
export function sentenceOf(id, of) {
  return [...frameOf(id).children].find((sentence) => sentence.getAttribute('data-of') === of)?.textContent ?? undefined
}

/**
 * Writes an attribute where it is not there yet: a browser lays out anew what is
 * written, even if it was the same.
 *
 * @param {Element} element
 * @param {string} name
 * @param {string} text
 */
export function mark(element, name, text) {
  if (element.getAttribute(name) !== text) element.setAttribute(name, text)
}

/**
 * Writes a text where it is not there yet.
 *
 * @param {Element | null} element
 * @param {string} text
 */
export function put(element, text) {
  if (element && element.textContent !== text) element.textContent = text
}

/**
 * Writes a text into a new element where it is not there yet: what is new can't
 * be seen to move.
 *
 * @param {Element} place
 * @param {string} text
 */
export function renew(place, text) {
  if (place.textContent !== text) place.replaceChildren(make('span', text))
}
