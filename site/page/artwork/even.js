/**
 * How even it will be: the bench works out where the current goes over the picture, and
 * the depths stand over it in colours. What the answer needs of it travels as fields. Once
 * asked for, it is worked out again when a field changes that it rests on.
 */
import { textOf } from '../../engine/fields.js'
import { make, mark, put } from '../element.js'
import { Filling } from './fill.js'
import { stripOf } from './show.js'

/** The fields that it rests on, and those that decide what it says and fills in. */
const restsOn = [
  'width', 'height', 'diameter', 'black', 'threshold', 'corners', 'depth', 'until', 'gap', 'density', 'current', 'time', 'open', 'area', 'metal',
  'salt', 'strength', 'temperature', 'vesselWidth', 'fill', 'position', 'sheet', 'line', 'undercut', 'sides', 'pieces', 'units',
]

/** How long it goes on before its progress is shown, and how long after the last change it begins again, in milliseconds. */
const patience = 300, rest = 1000

/** How far a key moves the place that is read, as a share of the picture. */
const keyStep = 0.02
/** @type {Record<string, [number, number]>} */
const keys = { ArrowLeft: [-keyStep, 0], ArrowRight: [keyStep, 0], ArrowUp: [0, -keyStep], ArrowDown: [0, keyStep] }

const failed = 'It could not be calculated here: the program ran out of memory, or was stopped. The answers go on without it.'

const noLeast = 'How shallow the shallowest part is isn’t known: choose a picture and see how even it will be, or clear this.'

const names = { least: 'Shallowest part', most: 'Deepest part', spread: 'Spread', bathResistance: 'Bath resistance' }

/** @typedef {import('../../engine/client.js').Even} Even */
/** What is told of each distance, and of each border. */
const columns = /** @type {const} */ ([['least', 'Shallowest'], ['most', 'Deepest'], ['volts', 'Volts in the bath'], ['longer', 'Takes longer']])

/** @typedef {NonNullable<Even['map']>} EvenMap */
/** @typedef {import('../../engine/client.js').Spot} Spot */

/**
 * @param {import('../page.js').Desk} desk
 * @param {Element} place of the part
 * @param {{picture: () => object | undefined, solved: (map: EvenMap | undefined) => void, still: () => Promise<void>}} source its picture, who hears of the depths, and when no finger holds a handle
 */
export function setUpEven(desk, place, source) {
  const { form } = desk
  const filling = new Filling(form)
  const { ask, lines, cancel, bar, busy, said, figure, view, figures, strips, section, compare, compared, tables } = frame()
  const { kept, sums, clear, choices } = keptFrame()
  place.querySelector('.make')?.before(section)
  place.append(kept)

  /** @type {EvenMap | undefined} */
  let map
  /** The fields of the last time, once it was asked for. @type {string | undefined} */
  let solvedBy
  /** @type {AbortController | undefined} */
  let solving
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting

  const key = () => {
    const fields = filling.others()
    return textOf(Object.fromEntries(restsOn.map((name) => [name, fields[name]])))
  }

  /** @param {boolean} fresh whether it was asked for: what it fills in, Undo takes back */
  async function solve(fresh) {
    const picture = source.picture(), bench = desk.bench()
    if (!picture || !bench) return
    solvedBy = key()
    await working(async (options) => {
      const even = await bench.evenness(picture, textOf(filling.others()), options)
      await source.still()
      if (!options.signal?.aborted) tell(even, fresh)
    })
  }

  /** Solves it at other distances too, and with a border of scrap. */
  async function compareDistances() {
    const picture = source.picture(), bench = desk.bench()
    if (!picture || !bench) return
    await working(async (options) => {
      const { sentence, rows, errors } = await bench.distances(picture, textOf(filling.others()), options)
      if (options.signal?.aborted) return
      const [wrong] = errors
      put(compared, wrong?.code === 'internal' ? failed : sentence || wrong?.text || '')
      const told = [rows.distances.map((row) => ({ at: row.distance, ...row })), rows.scrap.map((row) => ({ at: row.border, ...row }))]
      for (const [index, list] of told.entries()) {
        tables[index].hidden = list.length === 0
        tables[index].tBodies[0].replaceChildren(...list.map((row) => make('tr', heading(row.at.text), ...columns.map(([name]) => make('td', row[name].text)))))
      }
    })
  }

  /**
   * Does work in the place of what is under way, and shows its progress if it takes long.
   *
   * @param {(options: import('../../engine/client.js').Options) => Promise<void>} work
   */
  async function working(work) {
    stop()
    const { signal } = solving = new AbortController()
    bar.removeAttribute('value')
    const timer = setTimeout(() => { busy.hidden = false }, patience)
    signal.addEventListener('abort', () => clearTimeout(timer))
    await work({ signal, progress: (share) => { bar.value = share } })
    if (!signal.aborted) stop()
  }

  /** What was said of other distances goes. */
  function forget() {
    put(compared, '')
    for (const table of tables) table.hidden = true
  }

  /** Ends what is under way. */
  function stop() {
    clearTimeout(resting)
    solving?.abort()
    solving = undefined
    busy.hidden = true
  }

  /**
   * @param {Even} even
   * @param {boolean} fresh
   */
  function tell(even, fresh) {
    const [wrong] = even.errors
    put(said, wrong?.code === 'internal' ? failed : even.sentence || wrong?.text || '')
    map = even.map
    source.solved(map)
    figure.hidden = compare.hidden = lines.hidden = !map
    forget()
    strips.replaceChildren(...even.cautions.map(stripOf))
    figures.replaceChildren(...Object.entries(names).flatMap(([name, label]) => {
      const answer = even.answers[name]
      return answer ? [make('div', make('dt', label), make('dd', answer.text))] : []
    }))
    const write = () => filling.write(even.fields ?? {}, fresh)
    if (fresh) desk.undoably(write)
    else {
      write()
      desk.changed()
    }
    if (!map) return
    paint(view.canvas, map)
    mark(view.canvas, 'aria-label', even.sentence)
    view.spots.replaceChildren(...apart(even.rows.spots).flatMap(spotOf))
    view.contours.replaceChildren(...map.contours.flatMap(contourOf))
    view.scale.replaceChildren(...map.scale.map(({ colour }) => swatch(colour)))
    const { scale } = map
    view.ends.replaceChildren(...[0, (scale.length - 1) / 2, scale.length - 1].map((at) => make('span', scale[at].text)))
    put(view.here, 'Touch the picture to read the depth there.')
    view.cross.setAttribute('hidden', '')
  }

  /** It goes with the picture. */
  function drop() {
    stop()
    solvedBy = undefined
    map = undefined
    source.solved(map)
    figure.hidden = compare.hidden = lines.hidden = true
    forget()
    put(said, '')
    strips.replaceChildren()
    figures.replaceChildren()
    filling.part()
  }

  /** The place that is read, as shares of the picture. */
  let x = 0.5, y = 0.5

  function readHere() {
    if (!map?.levels) return
    x = Math.min(Math.max(x, 0), 1)
    y = Math.min(Math.max(y, 0), 1)
    const column = Math.min(Math.floor(x * map.width), map.width - 1), row = Math.min(Math.floor(y * map.height), map.height - 1)
    const level = map.levels[row * map.width + column]
    put(view.here, level ? map.shades[level - map.first].text : 'Resist')
    view.cross.removeAttribute('hidden')
    for (const ring of view.cross.children) {
      mark(ring, 'cx', `${100 * x}%`)
      mark(ring, 'cy', `${100 * y}%`)
    }
  }

  for (const kind of /** @type {const} */ (['pointerdown', 'pointermove'])) {
    view.place.addEventListener(kind, ({ clientX, clientY }) => {
      const { left, top, width, height } = view.canvas.getBoundingClientRect()
      x = (clientX - left) / width
      y = (clientY - top) / height
      readHere()
    })
  }
  view.place.addEventListener('keydown', (event) => {
    const step = keys[event.key]
    if (!step) return
    event.preventDefault()
    x += step[0]
    y += step[1]
    readHere()
  })

  ask.addEventListener('click', () => void solve(true))
  lines.addEventListener('click', () => mark(lines, 'aria-pressed', `${section.classList.toggle('lined')}`))
  compare.addEventListener('click', () => void compareDistances())
  cancel.addEventListener('click', stop)

  clear.addEventListener('click', () => {
    desk.undoably(() => { for (const name of ['least', 'resistance', 'until']) form.others.delete(name) })
    if (map) drop()
  })
  for (const choice of choices) {
    choice.addEventListener('change', () => {
      desk.undoably(() => {
        if (choice.value) form.others.set('until', choice.value)
        else form.others.delete('until')
      })
    })
  }

  function settle() {
    const { others } = form
    const until = others.get('until') ?? ''
    for (const choice of choices) choice.checked = choice.value === (until === 'mean' ? '' : until)
    const least = others.get('least'), resistance = others.get('resistance')
    kept.hidden = !(least || resistance || until)
    put(sums, [!least && until === 'least' && noLeast, least && `Shallowest part: ${least} of the mean.`, resistance && `Bath resistance: ${resistance}.`].filter(Boolean).join(' '))
    filling.settle()
    if (solvedBy === undefined || key() === solvedBy) return
    clearTimeout(resting)
    resting = setTimeout(() => { if (solvedBy !== undefined && key() !== solvedBy) void solve(false) }, rest)
  }
  desk.onReply(settle)
  settle() // what a link brought

  return {
    ask: () => solve(true),
    drop,
    /** What it filled in goes. */
    clear: () => filling.clear(),
  }
}

/** The section with the map, empty. */
function frame() {
  const ask = button('How even will it be?'), cancel = button('Cancel')
  const bar = /** @type {HTMLProgressElement} */ (make('progress'))
  bar.max = 1
  bar.setAttribute('aria-label', 'Working out how even it will be')
  const busy = classed('busy', make('div', bar, cancel))
  busy.hidden = true
  const said = classed('told', make('p'))
  said.setAttribute('role', 'status')
  const view = viewFrame()
  const figure = make('figure', view.place, view.here, view.scale, view.ends)
  figure.hidden = true
  const figures = make('dl'), strips = classed('strips', make('ul'))
  const lines = button('Contour lines')
  lines.hidden = true
  mark(lines, 'aria-pressed', 'false')
  const compare = button('What would make it more even?'), compared = classed('told', make('p'))
  compare.hidden = true
  compared.setAttribute('role', 'status')
  const tables = ['Distance', 'Border of scrap'].map((first) => {
    const head = make('thead', make('tr', ...[first, ...columns.map(([, label]) => label)].map((label) => heading(label, 'col'))))
    const table = /** @type {HTMLTableElement} */ (make('table', head, make('tbody')))
    table.hidden = true
    return table
  })
  const section = classed('even', make('section', classed('acts', make('div', ask, lines, compare)), busy, said, figure, figures, strips, compared, ...tables))
  return { ask, lines, cancel, bar, busy, said, view, figure, figures, strips, section, compare, compared, tables }
}

/**
 * @param {string} text
 * @param {'row' | 'col'} [of]
 */
function heading(text, of = 'row') {
  const cell = make('th', text)
  cell.setAttribute('scope', of)
  return cell
}

/** The map's own frame: the canvas, the marks over it, what is read, and the scale. */
function viewFrame() {
  const canvas = /** @type {HTMLCanvasElement} */ (make('canvas'))
  canvas.setAttribute('role', 'img')
  const contours = svg('g'), spots = svg('g'), cross = svg('g')
  mark(contours, 'class', 'contours')
  for (const role of ['halo', 'ring']) {
    const ring = svg('circle')
    mark(ring, 'class', role)
    mark(ring, 'r', '9')
    cross.append(ring)
  }
  const marks = svg('svg')
  mark(marks, 'aria-hidden', 'true')
  marks.append(contours, spots, cross)
  const place = classed('view', make('div', canvas, marks))
  place.tabIndex = 0
  place.setAttribute('role', 'application')
  place.setAttribute('aria-label', 'Depth map. Arrow keys move the place whose depth is read.')
  const here = classed('here', make('p'))
  here.setAttribute('role', 'status')
  return { place, canvas, contours, spots, cross, here, scale: classed('scale', make('div')), ends: classed('ends', make('div')) }
}

/** What a picture gave, with or without the picture: its figures, and what the depth is reached by. */
function keptFrame() {
  const sums = make('p'), clear = button('Clear')
  const choices = [choiceOf('', 'the mean is'), choiceOf('least', 'the shallowest part is')]
  const which = classed('switch', make('fieldset', make('legend', 'Deep enough when'), ...choices.map(({ label }) => label)))
  const kept = classed('kept', make('section', make('h3', 'From the picture'), sums, classed('acts', make('div', which, clear))))
  kept.hidden = true
  return { kept, sums, clear, choices: choices.map(({ input }) => input) }
}

/**
 * @param {string} value
 * @param {string} text
 */
function choiceOf(value, text) {
  const input = /** @type {HTMLInputElement} */ (make('input'))
  Object.assign(input, { type: 'radio', name: 'art-until', value })
  return { input, label: make('label', input, make('span', text)) }
}

/** @param {string} text */
function button(text) {
  const made = /** @type {HTMLButtonElement} */ (make('button', text))
  made.type = 'button'
  return made
}

/**
 * @param {string} names
 * @param {HTMLElement} element
 */
function classed(names, element) {
  element.className = names
  return element
}

/** @param {string} tag */
const svg = (tag) => document.createElementNS('http://www.w3.org/2000/svg', tag)

/** How many pixels a map has at least on its longer side: a small one in a large bath has few cells. */
const fine = 320

/**
 * Paints each level in the colour of its shade; resist stays the canvas's ground.
 *
 * @param {HTMLCanvasElement} canvas
 * @param {EvenMap} map
 */
function paint(canvas, { width, height, levels, first, shades }) {
  const context = canvas.getContext('2d')
  if (!levels || !context) return
  const times = Math.ceil(fine / Math.max(width, height))
  canvas.width = width * times
  canvas.height = height * times
  const image = context.createImageData(canvas.width, canvas.height)
  const colours = shades.map(({ colour }) => [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16)))
  for (let y = 0; y < canvas.height; y++) {
    for (let x = 0; x < canvas.width; x++) {
      const level = levels[Math.floor(y / times) * width + Math.floor(x / times)]
      if (level) image.data.set([...colours[level - first], 255], 4 * (y * canvas.width + x))
    }
  }
  context.putImageData(image, 0, 0)
}

/** What the words beside a hot spot take, as shares of the picture. */
const wide = 0.35, tall = 0.15

/**
 * The deepest of the hot spots whose words don't cover each other.
 *
 * @param {Spot[]} spots the deepest first
 */
function apart(spots) {
  /** @type {Spot[]} */
  const shown = []
  for (const spot of spots) {
    if (shown.every(({ across, down }) => Math.abs(across - spot.across) > wide || Math.abs(down - spot.down) > tall)) shown.push(spot)
  }
  return shown
}

/** A hot spot: a ring, and its depth beside it on the side where there is room. @param {Spot} spot */
function spotOf({ across, down, depth }) {
  const right = across > 0.5
  return ['halo', 'ring'].map((role) => {
    const ring = svg('circle'), text = svg('text'), both = svg('g')
    mark(ring, 'r', '5')
    mark(ring, 'cx', `${100 * across}%`)
    mark(ring, 'cy', `${100 * down}%`)
    mark(text, 'x', `${100 * across}%`)
    mark(text, 'y', `${100 * down}%`)
    mark(text, 'dx', right ? '-10' : '10')
    mark(text, 'dy', down < 0.1 ? '14' : down > 0.9 ? '-4' : '5')
    mark(text, 'text-anchor', right ? 'end' : 'start')
    text.textContent = depth.text
    mark(both, 'class', role)
    both.append(ring, text)
    return both
  })
}

/** A line of one depth, and the depth on it. @param {EvenMap['contours'][number]} contour */
function contourOf({ path, across, down, text }) {
  const frame = svg('svg')
  mark(frame, 'viewBox', '0 0 100 100')
  mark(frame, 'preserveAspectRatio', 'none')
  const line = svg('path')
  mark(line, 'd', path)
  frame.append(line)
  return [frame, ...['halo', 'ring'].map((role) => {
    const label = svg('text')
    mark(label, 'class', role)
    mark(label, 'x', `${100 * across}%`)
    mark(label, 'y', `${100 * down}%`)
    mark(label, 'text-anchor', across > 0.8 ? 'end' : across < 0.2 ? 'start' : 'middle')
    label.textContent = text
    return label
  })]
}

/** @param {string} colour */
function swatch(colour) {
  const made = make('span')
  made.style.background = colour
  return made
}
