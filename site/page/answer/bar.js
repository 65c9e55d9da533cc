/**
 * Where there is no room for the answer beside the sheet, a bar stays with the core
 * of it, and a touch opens the whole answer over the sheet. What has the focus is
 * kept in sight above an on-screen keyboard.
 */
import { byId } from '../element.js'

const root = document.documentElement
const bar = byId('bar')
const shut = byId('shut')
const answer = byId('answer')
const sheet = byId('job')
const strip = document.getElementById('run')
/** What can't be reached while the answer lies over it. */
const under = [document.querySelector('.head'), bar, sheet]

export function setUpBar() {
  bar.addEventListener('click', open)
  shut.addEventListener('click', () => close(bar))
  answer.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && isOpen()) close(bar)
  })
  // With room beside the sheet it stands there, and lies over nothing.
  new ResizeObserver(() => { if (isOpen() && !isSeen(shut)) close() }).observe(bar.parentElement ?? root)
  sheet.addEventListener('focusin', keepInSight)
  window.visualViewport?.addEventListener('resize', () => requestAnimationFrame(keepInSight))
  clearOfTheStrip()
}

const isOpen = () => 'open' in root.dataset

/** @param {Element} element */
const isSeen = (element) => element.getClientRects().length > 0

function open() {
  root.dataset.open = ''
  bar.setAttribute('aria-expanded', 'true')
  for (const part of under) part?.toggleAttribute('inert', true)
  answer.scrollTop = 0
  shut.focus()
}

/** Lays the sheet open again. @param {HTMLElement} [then] what has the focus then */
export function close(then) {
  if (!isOpen()) return
  delete root.dataset.open
  bar.setAttribute('aria-expanded', 'false')
  for (const part of under) part?.toggleAttribute('inert', false)
  then?.focus()
}

/** A row that has the focus is in sight, with what is said of it, however little a keyboard leaves. */
function keepInSight() {
  const row = document.activeElement?.closest('.row')
  if (!row || !root.matches('[data-low]')) return
  row.scrollIntoView({ block: 'nearest' })
}

/** How high a run's strip stands over the foot of the page: a notice stands on it. */
function clearOfTheStrip() {
  const notice = document.getElementById('notice')
  if (!strip || !notice) return
  const measure = () => {
    const { top } = strip.getBoundingClientRect()
    const shown = strip.checkVisibility({ visibilityProperty: true })
    notice.style.setProperty('--strip', `${shown ? Math.max(0, root.clientHeight - top) : 0}px`)
  }
  new ResizeObserver(measure).observe(strip)
  new MutationObserver(measure).observe(strip, { attributeFilter: ['data-state'] })
  new MutationObserver(measure).observe(notice, { childList: true })
  addEventListener('scroll', () => { if (notice.firstChild) measure() }, { passive: true })
  addEventListener('resize', measure)
}
