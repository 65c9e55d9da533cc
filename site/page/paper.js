/** What is printed: the bench card and the jar label. */

/** @param {import('./page.js').Desk} desk */
export function setUpPaper(desk) {
  void desk
}
