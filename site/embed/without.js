/**
 * What a page that is one file goes without: it is kept as a file, not by a
 * worker. In a frame it keeps nothing at all, and has no address to share.
 */

export function setUpJobs() {}
export function setUpOffline() {}
export function setUpRunning() {}
export function setUpShare() {}
