/**
 * A picture that is a photograph: it stands there with the corners of its sheet, and
 * the darkness that parts black from white can be moved. It stands there too while a
 * ruler in it gives the scale. All are fields, by which the bench turns it flat and
 * reads it; what stands here follows the fields.
 */
import { make, mark, put } from '../element.js'
import * as places from './corners.js'
import { hidesPixels, pixels } from './open.js'
import { paintable } from './paintable.js'
import { asDrawing, isPhotograph, rulers } from './read.js'

/** The most pixels that the bench reads, and those of kinds that take more memory, such as a progressive JPEG. */
const most = 24_000_000
const mostDeep = 10_000_000
/** How many a larger picture is given instead. */
const fewer = 10_000_000

const shrunk = 'This picture has more pixels than are read here. The browser made it smaller first.'

/** How many pixels of a photograph are shown at most on its longer side. */
const fine = 1600

/** What the corners are for without a ruler, and with one. */
const alone = 'Put the four rings on the corners of the sheet; arrow keys move one too. Type its width or height below for the scale, or use a ruler.'
const besideRuler = 'Where you look straight down, the four rings may stay at the edges; else put them on the corners of the sheet.'

const drawn = 'http://www.w3.org/2000/svg'

/** @param {import('../page.js').Desk} desk @param {Element} place */
export function setUpPhotograph(desk, place) {
  const { form } = desk
  const kind = kinds()
  const { box, view, canvas, hints } = frame()
  const { row, slider, told, found } = darkness()
  const note = make('p')
  note.className = 'shrunk'
  const { byRuler, length, known } = ruled()
  box.append(known, row)
  kind.hidden = byRuler.hidden = box.hidden = true
  place.querySelector('.shown')?.before(kind, byRuler, note, box)
  const choices = [...kind.querySelectorAll('input')]
  const corners = places.setUpHandles(view, places.corners, (text) => choose('corners', text))
  const ruler = places.setUpHandles(view, places.ruler, (text) => choose('ruler', text))

  /** @type {import('./corners.js').Photograph | undefined} */
  let photograph

  /** Undo takes it back. @param {string} name @param {string} [text] */
  function choose(name, text) {
    desk.undoably(() => {
      if (text) form.others.set(name, text)
      else form.others.delete(name)
    })
  }

  for (const choice of choices) {
    choice.addEventListener('change', () => {
      if (!photograph) return
      // With a ruler the corners may stay where they are, at those of the picture.
      if (choice.value) choose('corners', form.others.has('ruler') ? places.cornersOfAll(photograph) : places.cornersAtFirst(photograph))
      else desk.undoably(() => asDrawing(form.others))
    })
  }
  slider.addEventListener('input', () => put(told, `${slider.value} %`))
  slider.addEventListener('change', () => choose('threshold', `${slider.value} %`))
  found.addEventListener('click', () => choose('threshold'))
  length.addEventListener('change', () => choose('rulerLength', length.value.trim()))
  byRuler.addEventListener('click', () => {
    const of = photograph
    if (!of) return
    desk.undoably(() => {
      const { others } = form
      const [untouched, next] = others.has('ruler') ? [places.cornersOfAll(of), places.cornersAtFirst(of)] : [places.cornersAtFirst(of), places.cornersOfAll(of)]
      if (others.get('corners') === untouched) others.set('corners', next)
      if (others.has('ruler')) for (const name of rulers) others.delete(name)
      else others.set('ruler', places.rulerAtFirst(of))
    })
    follow()
    length.focus()
  })

  /** What stands here is what the fields say. */
  function follow() {
    const is = isPhotograph(form.others)
    for (const choice of choices) choice.checked = (choice.value !== '') === is
    const ruling = form.others.has('ruler')
    box.hidden = !(is || ruling) || !photograph
    row.hidden = hints.corners.hidden = !is
    put(hints.corners, ruling ? besideRuler : alone)
    known.hidden = hints.ruler.hidden = !ruling
    mark(byRuler, 'aria-pressed', String(ruling))
    if (length !== document.activeElement) length.value = form.others.get('rulerLength') ?? ''
    found.disabled = !form.others.has('threshold')
    corners.lay(form.others.get('corners'))
    ruler.lay(form.others.get('ruler'))
  }
  desk.onReply(follow)

  /** @param {import('./corners.js').Photograph} painted @param {boolean} taken */
  function show(painted, taken) {
    const { image, width, height } = painted
    const scale = Math.min(1, fine / Math.max(width, height))
    canvas.width = Math.round(width * scale)
    canvas.height = Math.round(height * scale)
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height)
    photograph = painted
    corners.show(painted)
    ruler.show(painted)
    if (taken) form.others.set('corners', places.cornersAtFirst(painted))
    kind.hidden = byRuler.hidden = false
    follow()
  }

  return {
    /**
     * A picture stands there now.
     *
     * @param {import('./open.js').Picture} picture
     * @param {boolean} taken whether it is from the camera
     * @returns {Promise<import('./open.js').Picture>} it, made smaller if the bench reads none so large
     */
    async stand(picture, taken) {
      const whole = await paintable(picture)
      const less = smaller(whole, most)
      put(note, less ? shrunk : '')
      show(less ? await paintable(less) : whole, taken)
      return less ?? picture
    },
    /**
     * Fewer pixels of a picture that has too many for its kind.
     *
     * @param {boolean} taken
     */
    async less(taken) {
      const less = photograph && smaller(photograph, mostDeep)
      if (!less) return undefined
      put(note, shrunk)
      show(await paintable(less), taken)
      return less
    },
    /** It was measured. @param {import('../../engine/client.js').Measured} measured */
    measured({ answers: { threshold } }) {
      if (!threshold) return
      slider.value = String(threshold.value)
      put(told, threshold.text)
    },
    gone() {
      photograph = undefined
      corners.show(undefined)
      ruler.show(undefined)
      kind.hidden = byRuler.hidden = box.hidden = true
      put(note, '')
    },
  }
}

/**
 * Fewer pixels of a picture that has too many, as those of many telephones have.
 *
 * @param {import('./corners.js').Photograph} of
 * @param {number} limit
 */
function smaller({ image, width, height }, limit) {
  if (width * height <= limit || hidesPixels()) return undefined
  const scale = Math.sqrt(fewer / (width * height))
  return pixels(image, Math.round(width * scale), Math.round(height * scale))
}

/** What the picture is: the two choices. */
function kinds() {
  const legend = make('legend', 'What the picture is')
  legend.className = 'unseen'
  const kind = make('fieldset', legend, ...[['', 'A drawing'], ['yes', 'A photograph']].map(([value, word]) => {
    const choice = /** @type {HTMLInputElement} */ (make('input'))
    choice.type = 'radio'
    choice.name = 'art-kind'
    choice.value = value
    return make('label', choice, make('span', word))
  }))
  kind.className = 'switch kind'
  return kind
}

/** The frame of the photograph, with the lines between the handles and the magnifier. */
function frame() {
  const canvas = /** @type {HTMLCanvasElement} */ (make('canvas'))
  mark(canvas, 'role', 'img')
  mark(canvas, 'aria-label', 'The photograph')
  const svg = document.createElementNS(drawn, 'svg')
  mark(svg, 'aria-hidden', 'true')
  mark(svg, 'preserveAspectRatio', 'none')
  for (const { role } of [places.corners, places.ruler]) {
    const line = document.createElementNS(drawn, 'path')
    mark(line, 'class', role)
    svg.append(line)
  }
  const glass = make('div', make('canvas'))
  glass.className = 'glass'
  glass.hidden = true
  mark(glass, 'aria-hidden', 'true')
  const view = make('div', canvas, svg, glass)
  view.className = 'sheet'
  const hints = {
    corners: hintOf(places.corners),
    ruler: hintOf(places.ruler, 'Put the two squares on two marks of a ruler, or on any length that you know, and type how long it is. Arrow keys move one too.'),
  }
  const box = make('div', hints.corners, hints.ruler, view)
  box.className = 'photograph'
  return { box, view, canvas, hints }
}

/** @param {import('./corners.js').Kind} kind @param {string} [text] */
function hintOf({ role }, text = '') {
  const hint = make('p', text)
  hint.id = `art-${role}`
  return hint
}

/** The button that lays a ruler, and what is asked of one. */
function ruled() {
  const byRuler = /** @type {HTMLButtonElement} */ (make('button', 'Scale by a ruler'))
  byRuler.type = 'button'
  byRuler.className = 'by-ruler'
  const length = /** @type {HTMLInputElement} */ (make('input'))
  length.type = 'text'
  length.autocomplete = 'off'
  length.placeholder = '50 mm'
  const known = make('div', make('label', 'Length between them (mm) ', length))
  known.className = 'known'
  return { byRuler, length, known }
}

/** The slider of the threshold, what it stands at, and the way back to what was found. */
function darkness() {
  const slider = /** @type {HTMLInputElement} */ (make('input'))
  slider.type = 'range'
  slider.min = '1'
  slider.max = '99'
  const told = make('output')
  const found = /** @type {HTMLButtonElement} */ (make('button', 'As found'))
  found.type = 'button'
  const row = make('div', make('label', make('span', 'Darkness that counts'), slider), told, found)
  row.className = 'darkness'
  return { row, slider, told, found }
}
