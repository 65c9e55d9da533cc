/** The program, on its way as soon as the page's script has come: it takes longer than all else. */
import { open } from '../engine/client.js'

export const opening = open(document.baseURI)

opening.catch(() => {}) // the page says so, once it is there
