/**
 * What is done before the page is read to its end: the colours that were chosen
 * are shown, the room for them is known, and a worker begins to read the program.
 */
import './room.js'
import './theme.js'
import './preload.js'
