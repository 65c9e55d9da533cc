/** Two pictures to learn from, without a picture of one's own. */
import { make } from '../element.js'

/** @typedef {'line' | 'frame'} Classic */

/** @type {[Classic, string][]} */
const classics = [['line', 'A lone line beside a field'], ['frame', 'A field in a frame']]

/**
 * @param {Element} place of the part
 * @param {(classic: Classic) => void} take
 */
export function setUpClassics(place, take) {
  const buttons = classics.map(([name, text]) => {
    const button = /** @type {HTMLButtonElement} */ (make('button', text))
    button.type = 'button'
    button.addEventListener('click', () => take(name))
    return button
  })
  const row = make('div', make('p', 'See where the current goes:'), ...buttons)
  row.className = 'like'
  place.querySelector('.like')?.after(row)
}
