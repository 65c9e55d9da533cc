/**
 * How much room an on-screen keyboard leaves. It changes only what is seen of the
 * page, not the window's own height, by which a style could go. This runs before the
 * page is painted, so that nothing is painted in the other layout first.
 */

/** Less than this is no room for an answer beside the sheet, in pixels. */
const low = 600

const root = document.documentElement

function look() {
  const seen = window.visualViewport
  // Zooming in with two fingers shows less of the page, and leaves it its room.
  root.toggleAttribute('data-low', (seen ? seen.height * seen.scale : innerHeight) < low)
  const zoomed = !seen || seen.scale > 1.01
  const pan = zoomed ? 0 : Math.max(0, seen.offsetTop)
  root.style.setProperty('--pan', `${pan}px`)
  root.style.setProperty('--under', `${zoomed ? 0 : Math.max(0, root.clientHeight - pan - seen.height)}px`)
}

// What is seen can't be asked for before there is a style without a layout for nothing.
root.toggleAttribute('data-low', innerHeight < low)
document.addEventListener('DOMContentLoaded', look)
addEventListener('resize', look)
window.visualViewport?.addEventListener('resize', look)
window.visualViewport?.addEventListener('scroll', look)
