/**
 * The cut through the sheet along a line across the picture: who wants one asks for it,
 * and the line with its ends comes then, as a script of its own. It is there while the
 * form has a line, so that a job that was kept, and Undo, bring it back.
 */
import { along } from 'build:seal'
import { make, mark, put } from '../element.js'
import { scriptOf } from '../start/script.js'

/** @typedef {typeof import('./along.js')} Along what that script hands to the page */
/** @typedef {import('../../engine/client.js').PictureMap} PictureMap */
/** @typedef {import('../../engine/client.js').EvenMap} EvenMap */

/** Where the line begins. */
const first = '100 500; 900 500'

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
  /** Whether the line was asked for, and could not be had. */
  let missing = false

  async function follow() {
    const laid = desk.form.others.get('along')
    mark(ask, 'aria-pressed', `${!!laid && !missing}`)
    if (line) line.follow(laid)
    else if (laid && maps.map && !missing) await bring()
  }

  async function bring() {
    missing = true // until it is there
    try {
      const { setUp } = /** @type {Along} */ (await scriptOf('along', along))
      const views = /** @type {HTMLElement[]} */ (['.lens .view', '.even .view'].map((view) => place.querySelector(view)))
      line ??= setUp(desk, { views, section, maps })
      missing = false
      put(said, '')
    } catch {
      put(said, lost)
    }
    await follow()
  }

  ask.addEventListener('click', () => {
    if (missing) return void bring()
    desk.undoably(() => {
      const { others } = desk.form
      if (others.has('along')) others.delete('along')
      else others.set('along', first)
    })
  })
  desk.onReply(() => void follow())

  return {
    /** @param {{map?: PictureMap}} measured */
    measured: ({ map }) => {
      maps.map = map
      void follow()
    },
    /** @param {EvenMap | undefined} map */
    solved: (map) => {
      maps.solved = map
      void follow()
    },
  }
}
