/**
 * What is done before the page is read to its end: the colours that were chosen
 * are shown, and a worker begins to read the program.
 */
import './theme.js'
import './early.js'
