/** Where the page is one file, what comes later on the site is in it from the start. */
export { setUp as setUpLater } from '../page/later.js'
