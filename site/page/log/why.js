/** Why something of the log failed, in sentences. */

/** @type {Record<string, string>} */
const sentences = {
  NoLog: 'This browser keeps no log for this page, as in a private window, in a frame, or with storage switched off. What you typed stays here.',
  QuotaExceededError: 'This device has no room for another run. Save the log as CSV, make room, and try again. What you typed stays here.',
  VersionError: 'A newer Saltbite keeps a log here, which this one can’t read. Load the page again to have the newer one.',
  TimeoutError: 'The log can’t be opened: perhaps another tab of this page holds it. Close the other tabs and try again.',
  NotReadableError: 'The file can’t be read. Choose it again.',
  LongFile: 'That is more than 8 MB, far more than a log needs, so it was not read.',
  Busy: 'The log was changed in another tab meanwhile. Choose the file again.',
  Lost: 'What reads the log could not be loaded, or ran out of memory. The runs are safe; with the internet, open this again.',
  NoMetal: 'Type the metal and its exposed area or size on the page first: a run without them teaches nothing.',
  NoTime: 'Type how long the current was on, such as 2 h 30.',
  NoResult: 'Type the weights before and after, or a depth that you measured.',
}

/**
 * Fails with one of those sentences.
 *
 * @param {string} name
 * @returns {never}
 */
export function fail(name) {
  throw Object.assign(new Error(), { name })
}

/** @param {unknown} reason */
export function why(reason) {
  const said = reason instanceof Error ? sentences[reason.name] : ''
  return said || `That failed, and the browser says why: ${String(reason).replace(/\.$/, '')}.`
}
