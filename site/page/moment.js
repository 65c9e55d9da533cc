/**
 * Moments of the clock, as milliseconds of the device's own, and how they are
 * said. Only clock times are reckoned here, nothing of the etch.
 */

export const second = 1000
export const minute = 60 * second
export const day = 24 * 60 * minute

/** The minutes of a moment after its midnight, as the clock on the wall shows them. @param {number} moment */
export function ofDay(moment) {
  const date = new Date(moment)
  return date.getHours() * 60 + date.getMinutes()
}

/**
 * The moment when the clock shows so many minutes after midnight, some days from
 * a moment's own day. Where the clock is put forward over it, the moment after.
 *
 * @param {number} moment
 * @param {number} minutes after midnight
 * @param {number} days
 */
export function at(moment, minutes, days = 0) {
  const date = new Date(moment)
  date.setDate(date.getDate() + days)
  date.setHours(0, minutes, 0, 0)
  return date.getTime()
}

/** A time of the clock as the start is written: "14:05". @param {number} moment */
export function hour(moment) {
  const minutes = ofDay(moment)
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
}

/**
 * A time of the clock with its day where that is not today.
 *
 * @param {number} moment
 * @param {number} now
 */
export function clock(moment, now) {
  const midnight = at(moment, 0)
  const near = ['yesterday', '', 'tomorrow'].find((_, place) => midnight === at(now, 0, place - 1))
  const named = near ?? `on ${new Date(moment).toLocaleDateString('en', { weekday: 'long', day: 'numeric', month: 'long' })}`
  return `${hour(moment)} ${named}`.trim()
}

/** How long something has been, in whole minutes. @param {number} time */
export function past(time) {
  const minutes = Math.floor(Math.max(time, 0) / minute)
  const hours = Math.floor(minutes / 60)
  return hours > 0 ? `${hours} h ${minutes % 60} min` : `${minutes} min`
}

/** Seconds are counted in the last minutes only. */
const last = 10 * minute

/** How long it is still, begun minutes and seconds counted whole. @param {number} time */
export function still(time) {
  if (time > last) return past(Math.ceil(time / minute) * minute)
  const seconds = Math.ceil(Math.max(time, 0) / second)
  return `${Math.floor(seconds / 60)} min ${String(seconds % 60).padStart(2, '0')} s`
}
