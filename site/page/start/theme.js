/**
 * The colours that a person chose: the system's, light or dark. This runs before
 * the page is painted, so that nothing is painted in the other colours first.
 */
import { stored } from '../device/stored.js'

const themes = ['light', 'dark']
const theme = stored('saltbite-theme', (text) => (themes.includes(text) ? text : undefined))

/** Shows a theme, the browser's own bar included. @param {string} [chosen] undefined is the system's */
function show(chosen) {
  if (chosen) document.documentElement.dataset.theme = chosen
  else delete document.documentElement.dataset.theme
  for (const bar of document.querySelectorAll('meta[name=theme-color]')) {
    const own = bar.getAttribute('data-theme') ?? ''
    bar.setAttribute('media', chosen ? (own === chosen ? 'all' : 'not all') : `(prefers-color-scheme: ${own})`)
  }
}

show(theme.read())

theme.onChange((chosen) => {
  show(chosen)
  check()
})

/** Marks the choice in the switch. */
function check() {
  for (const choice of document.getElementsByName('theme')) {
    if (choice instanceof HTMLInputElement) choice.checked = choice.value === (document.documentElement.dataset.theme ?? '')
  }
}

document.addEventListener('DOMContentLoaded', check)

document.addEventListener('change', ({ target: choice }) => {
  if (choice instanceof HTMLInputElement && choice.name === 'theme') {
    theme.write(choice.value)
    show(choice.value)
  }
})
