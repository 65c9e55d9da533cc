/** What the dialog of the log is made of. */
import { make } from '../element.js'

/**
 * @param {string} tag
 * @param {Record<string, string>} attributes
 * @param {(Node | string)[]} children
 */
export function piece(tag, attributes, ...children) {
  const element = make(tag, ...children)
  for (const [name, text] of Object.entries(attributes)) element.setAttribute(name, text)
  return element
}

/**
 * @param {string} word
 * @param {Record<string, string>} attributes
 * @param {(Node | string)[]} more
 */
export const button = (word, attributes, ...more) => piece('button', { type: 'button', ...attributes }, word, ...more)

/** What only a screen reader hears. @param {string} text */
export const unseen = (text) => piece('span', { class: 'unseen' }, text)
