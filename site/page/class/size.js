/**
 * The size of a piece as one text: "60 x 40 mm", "30 mm round", or its exposed area,
 * "12 cm2". Nothing is calculated here: the text is parted into those of the fields.
 */
import { saysUnit } from '../form/units.js'

/** @typedef {Record<string, string>} Fields */

const cross = /\s*[x×*]\s*/i
const round = /^(?:ø|⌀|dia(?:meter)?\.?)\s*|\s*(?:round|ø|⌀|dia(?:meter)?\.?)$/i

/**
 * The fields of a size. A unit that stands only at the end is that of both lengths.
 *
 * @param {string} text
 * @returns {Fields}
 */
export function sizeFields(text) {
  const size = text.trim()
  if (size === '') return {}
  if (round.test(size)) return { diameter: size.replace(round, '') }
  const [width, ...rest] = size.split(cross)
  if (rest.length === 0) return { area: size }
  const height = rest.join(' x ') // more than two are a mistake, which the answer names
  return { width: saysUnit(width) || !saysUnit(height) ? width : `${width} ${unitOf(height)}`, height }
}

/** The unit that a text ends in. @param {string} text */
const unitOf = (text) => /[^\d.,/½¼¾\s].*$/u.exec(text)?.[0] ?? ''

/**
 * The text of a size, of which sizeFields gives the same fields.
 *
 * @param {Fields} fields
 */
export function sizeText({ width = '', height = '', diameter = '', area = '' }) {
  if (diameter) return `${diameter} round`
  if (!width && !height) return area
  const unit = saysUnit(height) ? ` ${unitOf(height)}` : ''
  return `${unit && width.endsWith(unit) ? width.slice(0, -unit.length) : width} x ${height}`
}
