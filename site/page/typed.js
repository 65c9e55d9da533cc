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

/**
 * The reverse: what stands in a control and in its unit control, so that the
 * same is sent of them. A text is parted only where its unit is one of the
 * control's own and putting them together again gives the text; a bare number
 * has no unit.
 *
 * @param {string} text
 * @param {string[]} units
 * @returns {{typed: string, unit?: string}} without a unit where the text says its own
 */
export function withoutUnit(text, units) {
  for (const unit of units) {
    const typed = text.slice(0, -unit.length - 1)
    if (typed !== '' && withUnit(typed, unit) === text) return { typed, unit }
  }
  return saysUnit(text) ? { typed: text } : { typed: text, unit: '' }
}

const exponent = /(?<=\d\s*)e(?=[+−-]?\d)/giu
const unitSign = /[\p{L}%°'"′″’”:]/u

/** Whether a text says its own unit. @param {string} text */
export function saysUnit(text) {
  return unitSign.test(text.replace(exponent, ''))
}
