/**
 * Moments in milliseconds of the device's clock, and how they are written. Only
 * clock times are calculated here, nothing of the etch.
 */

export const second = 1000
export const minute = 60 * second
export const day = 24 * 60 * minute

/** The minutes after midnight of a moment, in local time. @param {number} moment */
export function ofDay(moment) {
  const date = new Date(moment)
  return date.getHours() * 60 + date.getMinutes()
}

/**
 * The moment that is so many minutes after midnight in local time, some days from
 * the day of a given moment. If the clock skips that time, the moment after the skip.
 *
 * @param {number} moment
 * @param {number} minutes after midnight
 * @param {number} days
 */
export function momentAt(moment, minutes, days = 0) {
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
  const midnight = momentAt(moment, 0)
  const near = ['yesterday', '', 'tomorrow'].find((_, place) => midnight === momentAt(now, 0, place - 1))
  const named = near ?? `on ${new Date(moment).toLocaleDateString('en', { weekday: 'long', day: 'numeric', month: 'long' })}`
  return `${hour(moment)} ${named}`.trim()
}

/** A time that has passed, in whole minutes. @param {number} time */
export function past(time) {
  const minutes = Math.floor(Math.max(time, 0) / minute)
  const hours = Math.floor(minutes / 60)
  return hours > 0 ? `${hours} h ${minutes % 60} min` : `${minutes} min`
}

/** Seconds are shown in the last minutes only. */
const last = 10 * minute

/** A time that remains, rounded up to whole minutes or seconds. @param {number} time */
export function still(time) {
  if (time > last) return past(Math.ceil(time / minute) * minute)
  const seconds = Math.ceil(Math.max(time, 0) / second)
  return `${Math.floor(seconds / 60)} min ${String(seconds % 60).padStart(2, '0')} s`
}
