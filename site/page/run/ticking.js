import { second } from './moment.js'

/**
 * Does something once a second, while it is told to.
 *
 * @param {() => void} tick
 * @returns {(on: boolean) => void} which tells it
 */
export function everySecond(tick) {
  /** @type {ReturnType<typeof setInterval> | undefined} */
  let ticking
  return (on) => {
    if (on) ticking ??= setInterval(tick, second)
    else {
      clearInterval(ticking)
      ticking = undefined
    }
  }
}
