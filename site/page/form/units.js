/**
 * The text that is sent for a control: what was typed, a space and the unit of the
 * unit control, unless the text has its own unit.
 *
 * A bare number consists of characters of numbers only: "12", "0,3", "1 1/2", "1½",
 * "1e-3". With any other character the text has its own unit, which is read like
 * all texts in calc/quantity: "18 ga", "#18", "20 ℃", "1:40".
 *
 * @param {string} text
 * @param {string} unit
 * @returns {string}
 */
export function withUnit(text, unit) {
  const typed = text.trim()
  if (typed === '' || unit === '' || saysUnit(typed)) return typed
  return unit === hoursMinutes ? withColon(typed) : `${typed} ${unit}`
}

/** What the unit control of a time offers for hours and minutes. */
const hoursMinutes = 'h:min'

/** Hours and minutes as they are read everywhere, also where no key has a colon: "2 30", "2.30", "2". @param {string} typed */
function withColon(typed) {
  const parts = /^(\d+)(?:[.,\s]+(\d\d))?$/.exec(typed)
  return parts ? `${parts[1]}:${parts[2] ?? '00'}` : typed
}

/** Whether nobody types a fraction of a unit. @param {string} unit */
export const isMetric = (unit) => ['mm', 'cm', 'm', 'mm2', 'cm2', 'L', 'mL'].includes(unit)

/**
 * The reverse: the text of a control and the choice of its unit control that give
 * this text when they are sent. A text is split only if its unit is one of the
 * control's own and joining them gives the text again; a bare number has no unit.
 *
 * @param {string} text
 * @param {string[]} units
 * @returns {{typed: string, unit?: string}} without a unit if the text has its own
 */
export function withoutUnit(text, units) {
  for (const unit of units) {
    const typed = text.slice(0, -unit.length - 1)
    if (typed !== '' && unit !== hoursMinutes && withUnit(typed, unit) === text) return { typed, unit }
  }
  return saysUnit(text) ? { typed: text } : { typed: text, unit: '' }
}

/** The e of an exponent, between digits. Every kind of dash is read as a minus. */
const exponent = /(?<=\d[.,]?)e(?=[+\u2212\u2010-\u2014-]?\d)/giu

/** A text of number characters: digits, decimal marks, strokes, signs, one-character fractions, white space. */
const ofNumber = /^[\d.,，·⋅∙•/\u2044\u2215+\u2212\u2010-\u2014¼-¾\u2150-\u215e\s\p{Cc}\p{Cf}\u2800-]*$/u

/** Whether a text has its own unit. @param {string} text */
export function saysUnit(text) {
  return !ofNumber.test(text.replace(exponent, ''))
}

/**
 * The text of a row with its unit, as the summary line of a part shows it.
 *
 * @param {import('./form.js').Row} row
 */
export function shown({ input, unit, bare }) {
  if (input instanceof HTMLSelectElement) return input.selectedOptions[0].label
  return withUnit(input.value, unit ? unit.selectedOptions[0]?.label ?? '' : bare)
}
