/**
 * The page's second script: what no first answer needs and only a touch or a link
 * reaches. A further part stands in the list below; what only it answers to, in that
 * of start/later.js.
 *
 * It is a script of its own, and what it imports it has for itself: no module in it
 * may be one that page.js has as well and that remembers something. What the page
 * knows it is handed as the desk.
 */
import { setUpSaving } from './answer/download.js'
import { setUpSources } from './answer/sources.js'
import { setUpArtwork } from './artwork/begin.js'
import { setUpPlace } from './form/place.js'
import { setUpJobs } from './jobs/manage.js'
import { setUpShare } from './jobs/share.js'
import { setUpPaper } from './paper/printout.js'

const parts = [setUpSaving, setUpSources, setUpPaper, setUpJobs, setUpShare, setUpArtwork, setUpPlace]

/** @param {import('./page.js').Desk} desk */
export function setUp(desk) {
  for (const part of parts) part(desk)
}
