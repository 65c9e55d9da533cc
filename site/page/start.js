/**
 * What the page's script begins with: the program is on its way while the
 * document is still read, and the page itself comes to life once all of it is
 * there.
 */
import './opening.js'

if (document.readyState === 'loading') {
  addEventListener('DOMContentLoaded', () => void import('./page.js'), { once: true })
} else {
  void import('./page.js')
}
