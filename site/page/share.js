/** A job sent to somebody: a link, or its text. */

/** @param {import('./page.js').Desk} desk */
export function setUpShare(desk) {
  void desk
}
