/**
 * The page's third script: the log of finished runs. It is loaded when it is first
 * touched, or once the page is idle if this device has a log. What it shows it makes itself,
 * so that no first visit waits for it.
 */
import { setUpDialog } from './dialog.js'
import { setUpUse } from './use.js'

/** @param {import('../page.js').Desk} desk */
export function setUp(desk) {
  setUpDialog(desk, setUpUse(desk))
}
