/**
 * What is printed: the bench card on half a sheet, or labels for jars on a whole
 * one. While the dialog is open the printer gets what it shows and nothing else
 * of the page, whether by its own touch or by the browser's; else the job sheet.
 */
import { textOf } from '../engine/fields.js'
import { dialogOf, openDialog } from './dialog.js'
import { path, picture, show } from './drawing.js'
import { at, put } from './element.js'
import { newestOnly } from './picture.js'

/**
 * @typedef {import('../engine/client.js').Drawing} Drawing
 *
 * @typedef {object} Paper sizes in millimetres
 * @property {string} name
 * @property {number} width
 * @property {number} height
 */

/** @type {Record<string, {card: string, labels: Paper}>} */
const papers = {
  metric: { card: 'A5', labels: { name: 'A4', width: 210, height: 297 } },
  us: { card: 'half letter', labels: { name: 'letter', width: 215.9, height: 279.4 } },
}

/** What is kept free at the edge of a sheet of labels: no printer reaches it. */
const margin = 8
/** How long a cut mark is, and how far it stays off the label. */
const mark = 4
const off = 1

/** @param {import('./page.js').Desk} desk */
export function setUpPaper(desk) {
  const dialog = dialogOf('onpaper')
  const many = /** @type {HTMLSelectElement} */ (at('many'))
  const preview = at('preview')
  const leaves = at('leaves')
  const card = at('card')
  const labelsChosen = () => dialog.querySelector(':checked[value="labels"]') !== null

  const lay = newestOnly(async () => {
    const { card, label } = await desk.bench()?.draw(textOf(desk.sheet.fields())) ?? {}
    const paper = papers[desk.sheet.switch.value]
    const drawing = labelsChosen() ? label : card
    offer(many, label ? placesOn(paper.labels, label).length : 0)
    many.disabled = !labelsChosen() || !label
    put(at('leaf-says'), saying(paper, labelsChosen(), drawing))
    const leaf = drawing && (labelsChosen() ? sheetOf(drawing, paper.labels, Number(many.value)) : single(drawing))
    preview.replaceChildren(...leaf ? [leaf] : [])
    leaves.replaceChildren(...leaf ? [leaf.cloneNode(true)] : [])
    if (drawing && dialog.open) printOnly(labelsChosen() ? paper.labels : drawing)
    else printAll()
  })

  card.addEventListener('click', () => {
    openDialog(dialog, card)
    void lay()
  })
  dialog.addEventListener('close', () => {
    printAll()
    leaves.replaceChildren()
  })
  dialog.addEventListener('change', lay)
  dialog.querySelector('[data-act="print"]')?.addEventListener('click', () => print())
  desk.onReply(() => { if (dialog.open) void lay() })
}

const root = document.documentElement

/** The sheet of paper that the printer is asked for. */
const sheet = new CSSStyleSheet()

/** How much lower than the paper the leaf ends, in mm, so that rounding makes no second sheet. */
const hair = 0.3

/**
 * Has nothing printed but the leaf, on a sheet of its size.
 *
 * @param {{width: number, height: number}} size in mm
 */
function printOnly({ width, height }) {
  sheet.replaceSync(`@media print {
    @page { size: ${width}mm ${height}mm; margin: 0 }
    .leaves { inline-size: ${width}mm; block-size: ${height - hair}mm }
    .leaves > svg { inline-size: ${width}mm; block-size: ${height}mm }
  }`)
  document.adoptedStyleSheets = [sheet]
  root.classList.add('prints-leaf')
}

function printAll() {
  document.adoptedStyleSheets = []
  root.classList.remove('prints-leaf')
}

/**
 * Offers one label to as many as a sheet has places for, at first a full sheet.
 *
 * @param {HTMLSelectElement} select
 * @param {number} most
 */
function offer(select, most) {
  if (select.length === most) return
  select.replaceChildren(...Array.from({ length: most }, (_, i) => new Option(i === 0 ? 'one label' : `${i + 1} labels`, `${i + 1}`)))
  select.selectedIndex = most - 1
}

/**
 * @param {{card: string, labels: Paper}} paper
 * @param {boolean} labels
 * @param {Drawing | undefined} drawing
 */
function saying(paper, labels, drawing) {
  if (!drawing) return labels
    ? 'A label needs a bath: name its salt, or say what has been etched in it so far.'
    : 'A card needs an answer: a metal, and three of depth, time, current and open area.'
  const size = `${drawing.width} × ${drawing.height} mm`
  return labels
    ? `Each label is ${size}, on one sheet of ${paper.labels.name}. Print at 100 %, not fitted to the page.`
    : `One half sheet, ${paper.card}, ${size}. Print at 100 %, not fitted to the page.`
}

/** @param {Drawing} drawing */
function single(drawing) {
  const svg = picture()
  show(svg, drawing)
  return svg
}

/**
 * Where labels stand on a sheet: close together in its middle, so that one cut
 * parts two.
 *
 * @param {Paper} paper
 * @param {Drawing} label
 */
function placesOn({ width, height }, label) {
  const across = Math.floor((width - 2 * margin) / label.width)
  const down = Math.floor((height - 2 * margin) / label.height)
  const left = (width - across * label.width) / 2
  const top = (height - down * label.height) / 2
  return Array.from({ length: across * down }, (_, i) => ({
    x: left + i % across * label.width,
    y: top + Math.floor(i / across) * label.height,
  }))
}

/**
 * @param {Drawing} label
 * @param {Paper} paper
 * @param {number} count
 */
function sheetOf(label, paper, count) {
  const { width, height } = label
  const places = placesOn(paper, label).slice(0, count)
  const svg = single({ ...label, width: paper.width, height: paper.height, shapes: [] })
  for (const { x, y } of places) {
    const one = single(label)
    one.removeAttribute('role')
    for (const [name, value] of Object.entries({ x, y, width, height })) one.setAttribute(name, `${value}`)
    svg.append(one)
  }
  svg.append(path('label-edge', cutMarks(
    [...new Set(places.flatMap(({ x }) => [x, x + width]))],
    [...new Set(places.flatMap(({ y }) => [y, y + height]))])))
  return svg
}

/**
 * Marks in the margin, at the ends of each line that is cut along.
 *
 * @param {number[]} across where the upright cuts are
 * @param {number[]} down where the level cuts are
 */
function cutMarks(across, down) {
  const [left, right] = [Math.min(...across) - off, Math.max(...across) + off]
  const [top, bottom] = [Math.min(...down) - off, Math.max(...down) + off]
  return [
    ...across.map((x) => `M ${x} ${top - mark} L ${x} ${top} M ${x} ${bottom} L ${x} ${bottom + mark}`),
    ...down.map((y) => `M ${left - mark} ${y} L ${left} ${y} M ${right} ${y} L ${right + mark} ${y}`),
  ].join(' ')
}
