/** The bench that the head's script has started to open. */
const { saltbite } = /** @type {import('./preload.js').Handed} */ (window)

export const opening = saltbite?.opening ?? Promise.reject(new Error('the head’s script did not arrive whole'))

opening.catch(() => {}) // the page shows the error once it has loaded

/** The page's single Trusted Types policy for script addresses. @param {string} url */
export const trusted = (url) => saltbite?.trusted(url) ?? url
