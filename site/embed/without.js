/**
 * Stands in for the parts that a page in one file does not have: it is kept as a
 * file, not by a worker, and has no program that reads pictures. In a frame it keeps nothing, and has no address to share.
 */

export function bringPicture() {}
export function setUpArtwork() {}
export function standingPicture() {}
export function setUpJobs() {}
export function setUpOffline() {}
export function setUpRun() {}
export function setUpShare() {}
