/** What a reply says in words: what stops the job, what contradicts, its answer. */

/** @typedef {import('../../engine/client.js').Reply} Reply */

/** What stops the job, the gravest first; its text stands in the place of the sentence. @param {Reply} [reply] */
export const stopsOf = (reply) => reply?.cautions.filter(({ level }) => level === 'stop') ?? []

/** The fields that contradict each other. @param {Reply} reply */
export const atOdds = ({ errors }) => [...new Set(errors.filter(({ code }) => code === 'contradiction').map(({ field }) => field))]

export const levelWord = { stop: 'Stop.', warn: 'Take care.', note: 'Note.' }

/**
 * A reply in words alone: what stops the job, or its answer; '' if there is neither.
 *
 * @param {Reply} [reply]
 */
export function inWords(reply) {
  const stops = stopsOf(reply).map(({ text }) => `Stop: ${text}`)
  return stops.length > 0 ? stops.join(' ') : reply?.sentence ?? ''
}
