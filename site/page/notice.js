/** A line at the foot of the page that says what happened, until it is closed. */
import { byId, make } from './element.js'

const place = byId('notice')

/**
 * @param {string} text
 * @param {{word: string, work: () => void}} [offer] the button that reacts to it
 */
export function notify(text, offer) {
  place.replaceChildren(make('p', text), ...(offer ? [button(offer.word, offer.work)] : []), button('Close'))
}

/** @param {string} [text] closes it only if it says this */
export function putAway(text) {
  if (text === undefined || place.firstChild?.textContent === text) place.replaceChildren()
}

/**
 * @param {string} word
 * @param {() => void} [work]
 */
function button(word, work) {
  const made = make('button', word)
  made.setAttribute('type', 'button')
  made.addEventListener('click', () => {
    putAway()
    work?.()
  })
  return made
}
