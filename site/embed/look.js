/**
 * The colours and the type that the page around a frame asks for. The
 * colours are used only if everything can be read in all of them together;
 * otherwise the page keeps its own.
 */
import { namesIn, textsOf } from './message.js'

/** What must stand out from the ground, and by how much, after WCAG 2.2 (1.4.3, 1.4.6, 1.4.11). */
const contrasts = { ink: 7, soft: 4.5, accent: 4.5, care: 4.5, stop: 4.5, edge: 3 }

const sheet = new CSSStyleSheet()
document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet]

const root = document.documentElement

/**
 * @param {string} theme light, dark, or anything else for the system's
 * @param {unknown} look
 */
export function wear(theme, look) {
  const { font = '', ...wanted } = textsOf(look, ['paper', 'ink', 'accent', 'font'])
  const colours = Object.fromEntries(Object.entries(wanted).flatMap(([name, text]) => plain(name, text)))
  const [chosen = ''] = [...namesIn(theme)].filter((name) => ['light', 'dark'].includes(name))
  sheet.replaceSync('')
  // A ground of the page around it may fit the other of the two themes.
  const fit = (chosen ? [chosen] : ['', 'light', 'dark']).find((tried) => {
    setTheme(tried)
    return readable(colours)
  })
  if (fit === undefined) setTheme(chosen)
  const { paper } = colours
  const worn = fit === undefined ? {} : { ...colours, ...(paper && { leaf: paper }) }
  const rules = Object.entries(worn).map(([name, colour]) => `--${name}:${colour}`)
  if (/^[\w\s,'"-]+$/.test(font) && CSS.supports('font-family', font)) rules.push(`--sans:${font}`)
  sheet.replaceSync(`@media screen{:root{${rules.join(';')}}}`)
}

/** @param {string} theme */
function setTheme(theme) {
  if (theme) root.dataset.theme = theme
  else delete root.dataset.theme
}

/**
 * Whether all that is written can be read in these colours.
 *
 * @param {Record<string, string>} colours
 */
function readable(colours) {
  const own = getComputedStyle(root)
  /** @param {string} name */
  const colour = (name) => colours[name] ?? own.getPropertyValue(`--${name}`).trim()
  const grounds = colours.paper ? ['paper'] : ['paper', 'leaf']
  return contrast(colour('ink'), colour('tint')) >= contrasts.ink
    && Object.entries(contrasts).every(([name, least]) => grounds.every((ground) => contrast(colour(name), colour(ground)) >= least))
}

/**
 * A colour as six hexadecimal digits, with its name; nothing if the text is
 * not a colour, or a transparent one.
 *
 * @param {string} name
 * @param {string} text
 * @returns {[string, string][]}
 */
function plain(name, text) {
  const canvas = document.createElement('canvas').getContext('2d')
  if (!canvas || !CSS.supports('color', text)) return []
  canvas.fillStyle = text
  const colour = String(canvas.fillStyle)
  return /^#[0-9a-f]{6}$/.test(colour) ? [[name, colour]] : []
}

/**
 * The contrast of two colours of six hexadecimal digits, from 1 to 21.
 *
 * @param {string} a
 * @param {string} b
 */
function contrast(a, b) {
  const [dark, light] = [luminance(a), luminance(b)].sort((one, other) => one - other)
  return (light + 0.05) / (dark + 0.05)
}

/** The relative luminance, from 0 to 1. @param {string} colour */
function luminance(colour) {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = parseInt(colour.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}
