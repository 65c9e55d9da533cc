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
 * Writes a text where it is not there yet.
 *
 * @param {Element | null} element
 * @param {string} text
 */
export function put(element, text) {
  if (element && element.textContent !== text) element.textContent = text
}
