/**
 * The part Artwork as it begins: the ways in which a picture comes. What reads and
 * shows it is a script of its own, which comes with the first picture.
 */
import { closer } from 'build:seal'
import { frameOf, put } from '../element.js'
import { scriptOf } from '../start/script.js'
import { setUpClassics } from './classic.js'
import { setUpOffer } from './offer.js'

/** @typedef {typeof import('./closer.js')} Closer what that script hands to the page */

/** Fields that the map of the depths gives, and what rests on them. */
const gave = ['least', 'resistance', 'until']

const lost = 'What reads pictures could not be loaded. With the internet, choose the picture again.'

/** The rest of the part, once it is there. @type {ReturnType<Closer['setUp']> | undefined} */
let there

/** The picture that stands in the part. */
export const standingPicture = () => there?.standing()

/** Takes a picture once the rest of the part is there. @type {(file: File, how?: import('./artwork.js').How) => Promise<void>} */
let take = async () => {}

/**
 * Brings the picture that was kept with a job.
 *
 * @param {File} file
 * @param {string[]} fields that it filled
 */
export const bringPicture = (file, fields) => take(file, { fields })

/** @param {import('../page.js').Desk} desk */
export function setUpArtwork(desk) {
  const part = /** @type {HTMLDetailsElement | null} */ (document.querySelector('.artwork'))
  if (part) setUpPart(desk, part)
}

/**
 * @param {import('../page.js').Desk} desk
 * @param {HTMLDetailsElement} part
 */
function setUpPart(desk, part) {
  const place = frameOf('artwork')
  part.append(place)
  const asks = place.querySelector('.asks')
  /** @type {Promise<ReturnType<Closer['setUp']>> | undefined} */
  let coming

  async function rest() {
    coming ??= scriptOf('closer', closer).then((script) => /** @type {Closer} */ (script).setUp(desk, part, place))
    try {
      there = await coming
    } catch (reason) {
      coming = undefined // the next picture tries again
      throw reason
    }
    return there
  }

  /** Opens the part with all of it, and says so if it can't be had. */
  async function opened() {
    part.open = true
    try {
      return await rest()
    } catch {
      put(asks, lost)
      return undefined
    }
  }

  take = async (file, how) => (await opened())?.take(file, how)
  setUpClassics(place, async (classic) => (await opened())?.learn(classic))

  // What a picture gave is told by the rest of the part, without the picture too.
  const told = () => { if (!there && gave.some((name) => desk.form.others.has(name))) rest().catch(() => {}) }
  desk.onReply(told)
  told()

  setUpOffer(/** @type {Element} */ (place.querySelector('.offer')), (file, camera) => void take(file, { camera }))
}
