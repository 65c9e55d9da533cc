/**
 * The page's third script: the part Artwork once there is a picture. It comes with the
 * first one, and brings the style of what it makes.
 */
import { style } from 'build:closer.css'
import { setUpArtwork } from './artwork.js'

/**
 * @param {import('../page.js').Desk} desk
 * @param {HTMLDetailsElement} part
 * @param {HTMLElement} place what the part holds
 */
export function setUp(desk, part, place) {
  const sheet = new CSSStyleSheet()
  sheet.replaceSync(style)
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet]
  return setUpArtwork(desk, part, place)
}
