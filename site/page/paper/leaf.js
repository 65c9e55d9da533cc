/**
 * What is printed in the place of the page: leaves in true size, each on paper of its
 * size.
 */
import { byId } from '../element.js'

/** The style of the printed leaves and the paper size, in addition to other adopted style sheets. */
const style = new CSSStyleSheet()
document.adoptedStyleSheets = [...document.adoptedStyleSheets, style]

/** How much shorter than the paper a leaf is, in mm, so that rounding does not add another sheet. */
const hair = 0.3

/** Where the leaves stand. */
export const leaves = byId('leaves')

/**
 * Prints only the leaves, each on paper of its size.
 *
 * @param {{width: number, height: number}} size in mm
 */
export function printOnly({ width, height }) {
  style.replaceSync(`@media print {
    @page { size: ${width}mm ${height}mm; margin: 0 }
    .leaves > div { inline-size: ${width}mm; block-size: ${height - hair}mm }
    .leaves :is(svg, img) { inline-size: ${width}mm; block-size: ${height}mm }
  }`)
  document.documentElement.classList.add('prints-leaf')
}

/** Prints the page again. */
export function printAll() {
  style.replaceSync('')
  document.documentElement.classList.remove('prints-leaf')
}
