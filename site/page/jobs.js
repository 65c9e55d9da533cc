/** Jobs that are kept on this device. */

/** @param {import('./page.js').Desk} desk */
export function setUpJobs(desk) {
  void desk
}
