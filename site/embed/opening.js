/** The program where the page is one file: it stands at that file's end. */
import { open } from '../engine/client.js'
import { filesWithin } from './inlined.js'

export const opening = open(filesWithin())

opening.catch(() => {}) // the page says so
