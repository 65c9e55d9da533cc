/**
 * Prints the bench card on half a sheet of paper, labels for jars on a whole one, or
 * the whole form. While the dialog is open, its button and the browser's own print
 * command print what is chosen there and nothing else; otherwise the page itself is
 * printed.
 */
import { textOf } from '../../engine/fields.js'
import { dialogOf, openDialog } from '../dialog.js'
import { path, picture, show } from '../answer/svg.js'
import { byId, make, put } from '../element.js'
import { newestOnly } from '../answer/newest.js'
import { leaves, printAll, printOnly } from './leaf.js'

/**
 * @typedef {import('../../engine/client.js').Drawing} Drawing
 *
 * @typedef {'card' | 'labels' | 'form'} Choice
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

/** The free edge of a sheet of labels: printers do not reach it. */
const margin = 8
/** The length of a cut mark, and its distance from the label. */
const mark = 4
const off = 1

/** @param {import('../page.js').Desk} desk */
export function setUpPaper(desk) {
  const dialog = dialogOf('onpaper')
  const many = /** @type {HTMLSelectElement} */ (byId('many'))
  const preview = byId('preview')
  const card = byId('card')
  const back = /** @type {HTMLInputElement} */ (byId('on-back'))
  const print = /** @type {HTMLButtonElement} */ (dialog.querySelector('[data-act="print"]'))
  const marked = () => /** @type {HTMLInputElement} */ (dialog.querySelector('[name=leaf]:checked'))
  const chosen = () => /** @type {Choice} */ (marked().value)

  const lay = newestOnly(async () => {
    const { card, back: causes, label } = await desk.bench()?.draw(textOf(desk.form.fields())) ?? {}
    const paper = papers[desk.form.switch.value]
    const what = chosen()
    const drawing = { card, labels: label, form: undefined }[what]
    offer(many, label ? placesOn(paper.labels, label).length : 0)
    many.disabled = what !== 'labels' || !label
    byId('back-wanted').hidden = what !== 'card' || !card || !causes
    print.disabled = what === 'form' ? desk.form.empty : !drawing
    put(byId('leaf-says'), drawing ? saying(paper, what, drawing) : marked().dataset.wanted ?? '')
    const all = !drawing ? [] : what === 'labels' ? [sheetOf(drawing, paper.labels, Number(many.value))]
      : [drawing, ...causes && back.checked ? [causes] : []].map(single)
    preview.replaceChildren(...all)
    leaves.replaceChildren(...all.map((leaf) => make('div', leaf.cloneNode(true))))
    if (drawing && dialog.open) printOnly(what === 'labels' ? paper.labels : drawing)
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
  print.addEventListener('click', () => window.print())
  desk.onReply(() => { if (dialog.open) void lay() })
}

/**
 * Offers from one label, the default, to a full sheet.
 *
 * @param {HTMLSelectElement} select
 * @param {number} most
 */
function offer(select, most) {
  if (select.length === most) return
  select.replaceChildren(...Array.from({ length: most }, (_, i) => new Option(i === 0 ? 'one label' : `${i + 1} labels`, `${i + 1}`)))
}

/**
 * @param {{card: string, labels: Paper}} paper
 * @param {Choice} what
 * @param {Drawing} drawing
 */
function saying(paper, what, { width, height }) {
  const size = `${width} × ${height} mm`
  const each = what === 'labels' ? `Each label is ${size}, on one page of ${paper.labels.name}` : `One card, ${paper.card}, ${size}`
  return `${each}. Print at 100 %, not fitted to the page.`
}

/** @param {Drawing} drawing */
function single(drawing) {
  const svg = picture()
  show(svg, drawing)
  return svg
}

/**
 * The places of labels on a sheet: side by side in the middle, so that one cut
 * separates two.
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
 * Marks in the margin, at the ends of each cutting line.
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
