/** Creates and writes elements without innerHTML. */

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
export function byId(id) {
  return /** @type {HTMLElement} */ (document.getElementById(id))
}

/**
 * A new element from a template of the page.
 *
 * @param {string} id
 */
export function frameOf(id) {
  return copyOf(/** @type {HTMLTemplateElement} */ (byId(id)))
}

/**
 * A new element of the frame that a place has for it.
 *
 * @param {Element} place
 */
export function frameIn(place) {
  return copyOf(/** @type {HTMLTemplateElement} */ (place.querySelector('template')))
}

/** @param {HTMLTemplateElement} frame */
function copyOf(frame) {
  return /** @type {HTMLElement} */ (/** @type {Element} */ (frame.content.firstElementChild).cloneNode(true))
}

/**
 * A sentence from a template of the page, by its subject.
 *
 * @param {string} id of the template
 * @param {string} of
 * @returns {string | undefined} undefined if the template has none
 */
export function sentenceOf(id, of) {
  return [...frameOf(id).children].find((sentence) => sentence.getAttribute('data-of') === of)?.textContent ?? undefined
}

/**
 * Writes an attribute if it differs: a browser does its layout again for a write,
 * even of the same text.
 *
 * @param {Element} element
 * @param {string} name
 * @param {string} text
 */
export function mark(element, name, text) {
  if (element.getAttribute(name) !== text) element.setAttribute(name, text)
}

/**
 * Writes a text if it differs.
 *
 * @param {Element | null} element
 * @param {string} text
 */
export function put(element, text) {
  if (element && element.textContent !== text) element.textContent = text
}

/**
 * Writes a text into a new element if it differs: a new element does not count as
 * one that moved.
 *
 * @param {Element} place
 * @param {string} text
 */
export function renew(place, text) {
  if (place.textContent !== text) place.replaceChildren(make('span', text))
}
