/** The program, on its way since the head was read. */
const { saltbite } = /** @type {import('./early.js').Handed} */ (window)

export const opening = saltbite ?? Promise.reject(new Error('the head’s script did not arrive whole'))

opening.catch(() => {}) // the page says so, once it is there
