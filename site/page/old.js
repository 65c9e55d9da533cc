/**
 * For a browser that can't run the page: it is told so in one plain sentence,
 * and the cautions are opened. So this is a script of its own, in the language of
 * 2009 (ECMAScript 5), that asks for nothing newer.
 *
 * The sentences stand in the page. The page's own script says when it has begun,
 * and begins nothing where this one has found it can't.
 */
(function () {
  /** The least that compiles: a program's first eight bytes, and nothing after. */
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
    all('.head button, .head form, #likely, #cut, #figures, #cautions, .sheet > *, body > *:not(main):not(.head)').forEach(function (part) {
      if (!/\b(safety|version)\b/.test(part.className)) part.hidden = true
    })
    document.documentElement.setAttribute('data-why', why)
  }

  /** Whether the engine is older than the least that the page is made for, by what came in last with that. */
  function tooOld() {
    return !('noModule' in document.createElement('script')) || !('DecompressionStream' in window) ||
      !('CSS' in window) || !CSS.supports('container-type', 'inline-size')
  }

  /** Whether programs are forbidden: switched off by the person, or by a policy of the host. */
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
    if (!document.documentElement.hasAttribute('data-begun')) stuck(location.protocol === 'file:' ? 'folder' : 'lost')
  })
})()
