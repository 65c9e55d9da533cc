/** What the head's script has begun: the program is on its way since then. */
const { saltbite } = /** @type {import('./early.js').Handed} */ (window)

export const opening = saltbite?.opening ?? Promise.reject(new Error('the head’s script did not arrive whole'))

opening.catch(() => {}) // the page says so, once it is there

/** The page's one policy for addresses of scripts. @param {string} url */
export const trusted = (url) => saltbite?.trusted(url) ?? url
