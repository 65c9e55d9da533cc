/**
 * The colours that a person chose: the system's, light or dark. This is a script
 * of its own that the page waits for, so that nothing is painted in the other
 * colours first. Storage may throw when it is looked at: then the choice holds
 * until the page is left.
 */
const key = 'saltbite-theme'
const themes = ['light', 'dark']

/** @returns {string} one of the themes, or '' for the system's */
function kept() {
  try {
    return localStorage.getItem(key) ?? ''
  } catch {
    return ''
  }
}

/** @param {string} theme */
function keep(theme) {
  try {
    localStorage.setItem(key, theme)
  } catch {
    // It is shown all the same.
  }
}

/** Shows a theme, the browser's own bar included. @param {string} theme */
function show(theme) {
  const known = themes.includes(theme)
  if (known) document.documentElement.dataset.theme = theme
  else delete document.documentElement.dataset.theme
  for (const bar of document.querySelectorAll('meta[name=theme-color]')) {
    const own = bar.getAttribute('data-theme') ?? ''
    bar.setAttribute('media', known ? (own === theme ? 'all' : 'not all') : `(prefers-color-scheme: ${own})`)
  }
}

show(kept())

// Another window of the page follows.
addEventListener('storage', ({ key: changed }) => {
  if (changed === key) {
    show(kept())
    check()
  }
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
    keep(choice.value)
    show(choice.value)
  }
})

export {}
