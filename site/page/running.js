/** The run under way: its clock. */

/** @param {import('./page.js').Desk} desk */
export function setUpRunning(desk) {
  void desk
}
