/**
 * For a browser that can't run the page: says so in one plain sentence, and opens
 * the cautions. Therefore it is a separate script in ECMAScript 5 (2009) that needs
 * nothing newer.
 *
 * The sentences are in the page. The page's own script marks that it has started,
 * and does not start if this one has found that it can't run.
 */
import { mend } from '../../offline/mend.js'

(function () {
  /** The smallest program that compiles: the eight bytes that every program begins with. */
  var empty = [0, 97, 115, 109, 1, 0, 0, 0]

  /** @param {string} selector */
  function all(selector) {
    return /** @type {HTMLElement[]} */ ([].slice.call(document.querySelectorAll(selector)))
  }

  /** @param {string} why the sentence to say */
  function stuck(why) {
    var said = all('[data-stuck="' + why + '"]')[0].textContent
    all('#sentence, #spoken').forEach(function (place) { place.textContent = said })
    all('.safety').forEach(function (part) { part.setAttribute('open', '') })
    all('.head button, .head form, #likely, #cut, #figures, #cautions, .form > *, body > *:not(main):not(.head)').forEach(function (part) {
      if (!/\b(safety|version)\b/.test(part.className)) part.hidden = true
    })
    document.documentElement.setAttribute('data-why', why)
  }

  /** Whether the engine is older than the page needs, judged by the newest features it uses. */
  function tooOld() {
    return !('noModule' in document.createElement('script')) || !('DecompressionStream' in window) ||
      !('CSS' in window) || !CSS.supports('container-type', 'inline-size')
  }

  /** Whether WebAssembly is forbidden, by the user or by a policy of the host. */
  function noProgram() {
    try {
      return !new WebAssembly.Instance(new WebAssembly.Module(new Uint8Array(empty)))
    } catch (e) {
      return true
    }
  }

  if (tooOld()) return stuck('old')
  if (noProgram()) return stuck('program')
  // By then the page's script has run, unless it was not there or not whole, or
  // may not be loaded, as from a folder.
  window.addEventListener('load', function () {
    if (document.documentElement.hasAttribute('data-begun')) return
    mend(function () { stuck(location.protocol === 'file:' ? 'folder' : 'lost') })
  })
})()
