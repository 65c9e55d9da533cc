/** The program where the page is one file: it stands at that file's end. */
import { open } from '../engine/client.js'

export const opening = open(document.baseURI)

opening.catch(() => {}) // the page says so
