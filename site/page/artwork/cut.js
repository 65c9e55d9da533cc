/**
 * The cut through the sheet along a line across the picture: who wants one asks for it,
 * and the line with its ends comes then, as a script of its own.
 */
import { along } from 'build:seal'
import { make, mark, put } from '../element.js'
import { scriptOf } from '../start/script.js'

/** @typedef {typeof import('./along.js')} Along what that script hands to the page */
/** @typedef {import('../../engine/client.js').PictureMap} PictureMap */
/** @typedef {import('../../engine/client.js').EvenMap} EvenMap */

const lost = 'What draws the cut could not be loaded. With the internet, ask again.'

/**
 * @param {import('../page.js').Desk} desk
 * @param {Element} place of the part
 */
export function setUpCut(desk, place) {
  const ask = /** @type {HTMLButtonElement} */ (make('button', 'Cut through the sheet'))
  ask.type = 'button'
  const said = make('p')
  said.className = 'told'
  mark(said, 'role', 'status')
  const section = make('section', ask, said)
  section.className = 'cutting'
  place.querySelector('.shown .look')?.after(section)

  /** @type {{map?: PictureMap, solved?: EvenMap}} */
  const maps = {}
  /** The line, once it was asked for. @type {ReturnType<Along['setUp']> | undefined} */
  let line
  let on = false

  /** @param {boolean} to */
  function turn(to) {
    on = to
    mark(ask, 'aria-pressed', `${on}`)
    line?.show(on)
  }
  turn(false)

  ask.addEventListener('click', async () => {
    turn(!on)
    if (line) return
    try {
      const { setUp } = /** @type {Along} */ (await scriptOf('along', along))
      line ??= setUp(desk, { view: /** @type {HTMLElement} */ (place.querySelector('.shown .view')), section, maps })
      put(said, '')
      turn(on)
    } catch {
      turn(false)
      put(said, lost)
    }
  })

  return {
    /** @param {{map?: PictureMap}} measured */
    measured: ({ map }) => {
      maps.map = map
      line?.follow()
    },
    /** @param {EvenMap | undefined} map */
    solved: (map) => {
      maps.solved = map
      line?.follow()
    },
  }
}
