/**
 * What is sent of a control: what was typed, a blank and the unit control's
 * unit, unless the text says its own unit.
 *
 * A text says its own unit when it holds a letter, a percent or degree sign, a
 * prime, or the colon of h:min. Else it is a bare number, in any way of writing
 * one: "12", "0,3", "1 1/2", "1½", "1e-3".
 *
 * @param {string} text
 * @param {string} unit
 * @returns {string}
 */
export function withUnit(text, unit) {
  const typed = text.trim()
  if (typed === '' || unit === '' || saysUnit(typed)) return typed
  return `${typed} ${unit}`
}

const exponent = /(?<=\d\s*)e(?=[+−-]?\d)/giu
const unitSign = /[\p{L}%°'"′″’”:]/u

/** Whether a text says its own unit. @param {string} text */
export function saysUnit(text) {
  return unitSign.test(text.replace(exponent, ''))
}
