/**
 * One element for other people's pages: the calculator in a frame of its own.
 *
 *     <script src="https://bench.example/embed.js" defer></script>
 *     <saltbite-bench metal="copper" depth="0.2 mm" lock="metal"><a href="https://bench.example/">Open Saltbite</a></saltbite-bench>
 *
 * Its attributes are the fields, in lower case, and:
 *
 *     lock    names of fields that can't be changed, or "all"
 *     show    names of the parts that are shown; without it, all
 *     theme   light, dark or system
 *
 * A module script does not know its own element. Loaded as one, it needs a mark:
 *
 *     <script type="module" src="https://bench.example/embed.js" data-saltbite></script>
 *
 * The element fires 'saltbite:ready' when its frame is there, 'saltbite:answer'
 * with each answer, and 'saltbite:error' if the frame has not come in time.
 *
 * The frame is a file beside this one, in a sandbox that has no origin: it sees
 * nothing of the page around it but what is written here, and the page sees
 * nothing of it but its replies. Between the two go messages, each an object
 * whose `saltbite` is the number of this protocol:
 *
 *     from the frame:  {hello: true}              it is ready to be told
 *                      {height: pixels}           how tall what it shows is
 *                      {fields, reply, told}      an answer, and up to which telling it has come
 *     to the frame:    {tell: {fields, whole, lock?, show?}, told}
 *                      {wear: {theme, look}}       how it is to look; it answers nothing
 *
 * The frame has no origin that could be checked, so each side asks whether a
 * message comes from the very window that it knows, and reads nothing of it but
 * own properties of the type that is wanted. What the page around it has done to
 * the prototypes of the language is not relied upon.
 */
import { fields } from 'go:vocabulary'
import { own, protocol, textsOf } from './message.js'

const tag = 'saltbite-bench'

/**
 * How long the frame may take until the element shows its own content instead,
 * and an answer until its promise is rejected, in milliseconds.
 */
const patience = 30_000

/** The tallest that a frame is made, in pixels. */
const tallest = 20_000

/** What is told to the frame with the fields, as it stands in an attribute. */
const plain = ['lock', 'show']

/** What the page around it may style: custom properties of the element. */
const look = ['paper', 'ink', 'accent', 'font']

/** Its place is kept while it waits, so that of ten only those near the screen start. */
const shape = `:host,iframe,.tall{display:block}
iframe{inline-size:100%;block-size:40rem;border:0}
.tall{min-block-size:40rem}
:host([hidden]),[hidden]{display:none}`

/** The fields' names by those of their attributes. */
const names = new Map(fields.map((name) => [name.toLowerCase(), name]))

/**
 * @typedef {import('../engine/client.js').Reply} Reply
 * @typedef {{fields: Record<string, string>, reply: Reply}} Answer
 */

/** @param {string} page the address of the frame's page */
function elementOf(page) {
  return class SaltbiteBench extends HTMLElement {
    static observedAttributes = [...names.keys(), ...plain, 'theme']

    #root = this.attachShadow({ mode: 'open' })
    #slot = document.createElement('slot')
    #near = new IntersectionObserver((seen) => { if (seen.some(({ isIntersecting }) => isIntersecting)) this.#start() }, { rootMargin: '50%' })
    #scheme = matchMedia('(prefers-color-scheme: dark)')

    /** @type {HTMLIFrameElement | undefined} */
    #frame
    #ready = false
    /** The fields as they last were, by the frame or by a script. @type {Record<string, string> | undefined} */
    #fields
    /** Attributes that changed since the frame was told. @type {Set<string>} */
    #changed = new Set()
    /** @type {Reply | undefined} */
    #reply
    #told = 0
    /** @type {Set<(reply: Reply) => void>} */
    #waiting = new Set()

    constructor() {
      super()
      const sheet = new CSSStyleSheet()
      sheet.replaceSync(shape)
      this.#root.adoptedStyleSheets = [sheet]
      this.#slot.className = 'tall'
      this.#root.append(this.#slot)
    }

    connectedCallback() {
      this.#takeEarly()
      addEventListener('message', this.#hear)
      this.#scheme.addEventListener('change', this.#tellLook)
      this.#near.observe(this)
      if (this.#waiting.size > 0) this.#start()
    }

    disconnectedCallback() {
      removeEventListener('message', this.#hear)
      this.#scheme.removeEventListener('change', this.#tellLook)
      this.#near.disconnect()
      if (!this.#frame) return
      // Put back far from the screen it waits again, as tall as it was.
      this.#slot.style.minBlockSize = this.#frame.style.blockSize
      this.#slot.className = 'tall'
      this.#slot.hidden = false
      this.#frame.remove()
      this.#frame = undefined
      this.#ready = false
    }

    /**
     * @param {string} name
     * @param {string | null} _old
     * @param {string | null} text
     */
    attributeChangedCallback(name, _old, text) {
      const field = names.get(name)
      if (field && this.#fields) this.#fields[field] = text ?? ''
      if (!this.#frame) return
      if (name === 'theme') return this.#tellLook()
      if (this.#changed.size === 0) queueMicrotask(this.#tellChanged)
      this.#changed.add(name)
    }

    /** The fields as they stand, each with its unit. */
    get fields() {
      return { ...this.#fields ?? this.#texts([...names.keys()].filter((name) => this.hasAttribute(name))) }
    }

    /** Replaces the whole job: a field that is not among these is blank. */
    set fields(fields) {
      this.#fields = textsOf(fields, names.values())
      this.#tellAll()
    }

    /**
     * The reply to the fields as they stand, as soon as it is there. Rejects with
     * a TimeoutError after 30 s without one.
     *
     * @returns {Promise<Reply>}
     */
    answer() {
      if (this.#reply && this.#changed.size === 0) return Promise.resolve(this.#reply)
      if (this.isConnected) this.#start()
      return new Promise((resolve, reject) => {
        /** @param {Reply} reply */
        const take = (reply) => {
          clearTimeout(timer)
          resolve(reply)
        }
        const timer = setTimeout(() => {
          this.#waiting.delete(take)
          reject(new DOMException('the calculator gave no answer in 30 s', 'TimeoutError'))
        }, patience)
        this.#waiting.add(take)
      })
    }

    /**
     * Takes fields that were set before the element was defined: until then they
     * are a property like any other, which would hide the element's own.
     */
    #takeEarly() {
      const early = own(this, 'fields')
      if (early === undefined) return
      delete /** @type {{fields?: unknown}} */ (this).fields
      this.fields = /** @type {Record<string, string>} */ (early)
    }

    #start() {
      this.#near.disconnect()
      if (this.#frame) return
      const frame = document.createElement('iframe')
      frame.title = this.title || 'Saltbite: etching by current, calculated'
      frame.sandbox.value = 'allow-scripts allow-downloads allow-modals'
      frame.src = page
      this.#frame = frame
      this.#root.append(frame)
      this.#show(true)
      setTimeout(() => {
        if (frame !== this.#frame || this.#ready) return
        this.#show(false)
        this.#fire('error', `${page} has not come in 30 s`)
      }, patience)
    }

    /**
     * @param {'ready' | 'answer' | 'error'} kind
     * @param {unknown} [detail]
     */
    #fire(kind, detail) {
      this.dispatchEvent(new CustomEvent(`saltbite:${kind}`, { bubbles: true, composed: true, detail }))
    }

    /** Shows the frame, or the element's own content. @param {boolean} alive */
    #show(alive) {
      this.#slot.hidden = alive
      this.#slot.className = ''
      if (this.#frame) this.#frame.hidden = !alive
    }

    /** @param {MessageEvent<unknown>} event */
    #hear = ({ source, data }) => {
      if (!source || source !== this.#frame?.contentWindow || own(data, 'saltbite') !== protocol) return
      const height = own(data, 'height')
      if (own(data, 'hello') === true) {
        this.#ready = true
        this.#show(true)
        this.#tellLook()
        this.#tellAll()
        this.#fire('ready')
      } else if (typeof height === 'number' && height > 0 && height <= tallest) {
        this.#frame.style.blockSize = `${height}px`
      } else {
        this.#take(own(data, 'fields'), own(data, 'reply'), own(data, 'told'))
      }
    }

    /**
     * @param {unknown} given
     * @param {unknown} reply
     * @param {unknown} told
     */
    #take(given, reply, told) {
      if (typeof own(reply, 'sentence') !== 'string' || told !== this.#told) return
      this.#fields = textsOf(given, names.values())
      const detail = /** @type {Reply & {fields: Record<string, string>}} */ (reply)
      this.#reply = detail
      detail.fields = this.fields
      const waiting = [...this.#waiting]
      this.#waiting.clear()
      for (const take of waiting) take(detail)
      this.#fire('answer', detail)
    }

    #tellAll() {
      this.#tell(this.fields, true, plain)
    }

    #tellLook = () => {
      const style = getComputedStyle(this)
      const colours = Object.fromEntries(look.map((name) => [name, style.getPropertyValue(`--saltbite-${name}`).trim()]))
      this.#post({ wear: { theme: this.getAttribute('theme') ?? '', look: colours } })
    }

    #tellChanged = () => {
      const changed = [...this.#changed]
      this.#tell(this.#texts(changed.filter((name) => names.has(name))), false, plain.filter((name) => changed.includes(name)))
    }

    /**
     * @param {Record<string, string>} fields
     * @param {boolean} whole whether fields that are not among these are blank
     * @param {string[]} attributes which others are told
     */
    #tell(fields, whole, attributes) {
      this.#changed.clear()
      this.#reply = undefined
      this.#told++
      const tell = Object.fromEntries(attributes.map((name) => [name, this.getAttribute(name) ?? '']))
      this.#post({ told: this.#told, tell: { ...tell, fields, whole } })
    }

    /** @param {object} message */
    #post(message) {
      if (!this.#ready) return
      this.#frame?.contentWindow?.postMessage({ saltbite: protocol, ...message }, '*') // it has no origin, and is told only what this page shows anyway
    }

    /**
     * The fields of some attributes; one that is not there is blank.
     *
     * @param {string[]} attributes
     */
    #texts(attributes) {
      return Object.fromEntries(attributes.map((name) => [names.get(name) ?? name, this.getAttribute(name) ?? '']))
    }
  }
}

/**
 * The element of this very script. The document is asked for it through the
 * prototype: a page may have a form or a picture named currentScript.
 */
function ownScript() {
  const running = Object.getOwnPropertyDescriptor(Document.prototype, 'currentScript')?.get?.call(document)
  return running ?? document.querySelector('script[data-saltbite]')
}

// The first on a page has the tag: a second copy, of whatever version, leaves it
// that. Each talks only to the page beside it.
const script = ownScript()
if (!(script instanceof HTMLScriptElement)) console.error('embed.js as a module needs data-saltbite on its script')
else if (!customElements.get(tag)) customElements.define(tag, elementOf(new URL('embed.html', script.src).href))
