/**
 * The part Artwork: a picture of the resist is measured, stands there, and fills in
 * what is blank on the form. It is measured again when a field changes that it is
 * read by. It never leaves the device: what the answer needs of it travels as fields.
 */
import { textOf } from '../../engine/fields.js'
import { put } from '../element.js'
import { setUpCut } from './cut.js'
import { setUpEven } from './even.js'
import { Filling } from './fill.js'
import { setUpLook } from './look.js'
import { opened, Unopened } from './open.js'
import { setUpPhotograph } from './photograph.js'
import { setUpPrint } from './print.js'
import { asUnread, rulers } from './read.js'
import { showMeasured } from './show.js'

/** The fields that a picture is read by, and those that decide what it fills in. */
const readBy = ['width', 'height', 'diameter', 'black', 'threshold', 'corners', ...rulers, 'depth', 'undercut', 'sides', 'pieces', 'density', 'area', 'units']

/** The fields whose mistakes are told here: '' is the picture itself. */
const tells = ['', 'width', 'height', 'black', 'threshold', 'corners', ...rulers]

/** How long reading goes on before its progress is shown, in milliseconds. */
const patience = 300
/** How long after the last change it is read again. */
const rest = 400

/** How many bytes a file has from which it may have more pixels than the bench reads. */
const heavy = 400_000

const lost = 'What reads pictures could not be loaded, or ran out of memory. With the internet, choose the picture again; if it is large, save it smaller.'

/** @typedef {{camera?: boolean, fields?: string[]}} How a picture comes: just taken, a photograph then; or kept with a job, with the fields that it filled */
/** @typedef {import('./classic.js').Classic} Classic */

/**
 * @param {import('../page.js').Desk} desk
 * @param {HTMLDetailsElement} part
 * @param {HTMLElement} place what the part holds
 */
export function setUpArtwork(desk, part, place) {
  const { form } = desk
  const filling = new Filling(form)
  const gist = /** @type {HTMLElement} */ (part.querySelector('.gist'))
  const { hint = '' } = gist.dataset
  const asks = /** @type {HTMLElement} */ (place.querySelector('.asks'))
  const shown = /** @type {HTMLElement} */ (place.querySelector('.shown'))
  const busy = /** @type {HTMLElement} */ (place.querySelector('.busy'))
  const black = [.../** @type {NodeListOf<HTMLInputElement>} */ (place.querySelectorAll('[data-field=black]'))]

  /** @type {import('./open.js').Picture | {classic: Classic} | undefined} */
  let picture
  /** The file that it was opened from, and whether it is kept with a job. @type {{file: File, kept: boolean} | undefined} */
  let source
  /** The fields that it was last measured by. */
  let measuredBy = ''
  /** @type {AbortController | undefined} */
  let reading
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting

  const key = () => {
    const fields = filling.others()
    return textOf(Object.fromEntries(readBy.map((name) => [name, fields[name]])))
  }

  const still = stillness(place)
  const photograph = setUpPhotograph(desk, place)
  const look = setUpLook(place)
  const cut = setUpCut(desk, place)
  const even = setUpEven(desk, place, { picture: () => picture, solved: (map) => cut.solved(map), still })
  setUpPrint(desk, /** @type {Element} */ (place.querySelector('.make')), { picture: () => picture, fields: asked, busy: whileBusy })

  /**
   * @param {File} file
   * @param {How} [how]
   */
  async function take(file, { camera = false, fields } = {}) {
    asks.dataset.code = ''
    put(asks, '')
    try {
      let of = await opened(file)
      if (fields) filling.adopt(fields)
      else asUnread(form.others)
      source = { file, kept: fields !== undefined }
      const standing = photograph.stand(of, camera).catch(() => undefined) // the bench says why it can't be read
      if (camera || file.size > heavy) of = await standing ?? of
      await measure(of, !fields, async () => {
        await standing
        return photograph.less(camera)
      })
    } catch (reason) {
      if (!(reason instanceof Unopened)) throw reason
      put(asks, reason.message)
    }
  }

  /** One to learn from, and how even it will be. @param {Classic} classic */
  async function learn(classic) {
    asUnread(form.others)
    source = undefined
    photograph.gone()
    await measure({ classic }, true)
    await even.ask()
  }

  /**
   * @param {import('./open.js').Picture | {classic: Classic}} of
   * @param {boolean} fresh whether it is a new one: what it fills in, Undo takes back
   * @param {() => Promise<import('./open.js').Picture | undefined>} [less] fewer pixels of it, if it has too many
   */
  async function measure(of, fresh, less) {
    const bench = desk.bench()
    if (!bench) return
    measuredBy = key()
    /** @type {import('./open.js').Picture | undefined} */
    let next
    await whileBusy(async (options) => {
      const measured = await bench.measure(of, textOf(asked()), options)
      await still()
      if (options.signal?.aborted) return
      const fewer = measured.errors.some(({ field, code }) => field === '' && code === 'range') && await less?.()
      if (!fewer) tell(of, measured, fresh)
      else if (!options.signal?.aborted) next = fewer
    })
    if (next) await measure(next, fresh)
  }

  /** What the picture is read by: all but what a picture gave. */
  function asked() {
    const fields = filling.others()
    delete fields.islands
    delete fields.holes
    return fields
  }

  /**
   * Does work in the place of what is under way; its progress is shown if it takes long.
   *
   * @param {(options: import('../../engine/client.js').Options) => Promise<void>} work
   */
  async function whileBusy(work) {
    reading?.abort()
    const own = reading = new AbortController()
    const bar = /** @type {HTMLProgressElement} */ (busy.querySelector('progress'))
    bar.removeAttribute('value')
    const timer = setTimeout(async () => {
      await still()
      busy.hidden = reading !== own
    }, patience)
    own.signal.addEventListener('abort', () => clearTimeout(timer))
    await work({ signal: own.signal, progress: (share) => { bar.value = share } })
    clearTimeout(timer)
    if (reading === own) stop()
  }

  /** Ends what is under way. */
  function stop() {
    reading?.abort()
    reading = undefined
    busy.hidden = true
  }

  /**
   * @param {import('./open.js').Picture | {classic: Classic}} of
   * @param {import('../../engine/client.js').Measured} measured
   * @param {boolean} fresh
   */
  function tell(of, measured, fresh) {
    const wrong = measured.errors.find(({ field }) => tells.includes(field))
    asks.dataset.code = wrong?.code ?? ''
    put(asks, wrong?.code === 'internal' ? lost : wrong?.text ?? '')
    if (measured.map || wrong?.field) picture = of // with a field put right it is read once more
    if (!measured.map) return
    const write = () => filling.write(measured.fields ?? {}, fresh)
    if (fresh) desk.undoably(write)
    else {
      write()
      desk.changed()
    }
    shown.hidden = false
    const choice = black[0].closest('fieldset')
    if (choice) choice.hidden = 'classic' in of // it is as it is
    showMeasured(shown, measured)
    photograph.measured(measured)
    look.measured(measured)
    cut.measured(measured)
    say(measured.sentence)
  }

  /** Says in the part's own line what it holds. @param {string} text */
  function say(text) {
    gist.dataset.hint = text
    put(gist, text)
  }

  /** The picture goes, and what it filled in stays as the form has it. */
  function drop() {
    stop()
    picture = undefined
    even.drop()
    photograph.gone()
    filling.part()
    clearTimeout(resting)
    shown.hidden = true
    say(hint)
  }

  place.querySelector('[data-cancel]')?.addEventListener('click', stop)

  place.querySelector('[data-remove]')?.addEventListener('click', () => {
    put(asks, '')
    desk.undoably(() => {
      filling.clear()
      even.clear()
      asUnread(form.others)
      form.others.delete('along')
    })
    drop()
  })

  for (const choice of black) {
    choice.addEventListener('change', () => {
      desk.undoably(() => {
        if (choice.value) form.others.set('black', choice.value)
        else form.others.delete('black')
      })
      if (picture) void measure(picture, false)
    })
  }

  // What is typed over is no longer the picture's.
  form.place.addEventListener('input', ({ target }) => {
    const row = /** @type {Element} */ (target).closest('.row')
    if (row instanceof HTMLElement) filling.leave(row.dataset.field ?? '')
  })

  desk.onReply(({ rows }) => {
    shown.dataset.metal = rows.metal?.[0]?.family ?? ''
    const etches = form.others.get('black') ?? ''
    for (const choice of black) choice.checked = choice.value === etches
    if (!picture) return
    if (filling.settle()) return drop() // another job stands on the form, or none
    if (key() === measuredBy) return
    clearTimeout(resting)
    resting = setTimeout(() => { if (picture && key() !== measuredBy) void measure(picture, shown.hidden) }, rest)
  })

  return {
    take,
    learn,
    /** The picture that stands here, and the fields that it filled. */
    standing: () => picture && source && { ...source, fields: filling.held() },
  }
}

/**
 * Waits until no finger holds a handle in the part: nothing may move under it.
 *
 * @param {Element} place
 * @returns {() => Promise<void>}
 */
function stillness(place) {
  let held = false
  /** @type {(() => void)[]} */
  const waiting = []
  place.addEventListener('hold', () => { held = true })
  place.addEventListener('release', () => {
    held = false
    for (const go of waiting.splice(0)) go()
  })
  return () => new Promise((resolve) => {
    if (held) waiting.push(resolve)
    else resolve()
  })
}
