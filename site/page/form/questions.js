/**
 * The questions that people come with. Choosing one opens the parts that it needs
 * and leads to the first of its fields that is blank; nothing else is folded away.
 */

/**
 * What each question opens, and what it is answered from: in each line the field that
 * is led to while all of the line are blank.
 *
 * @type {Record<string, {opens: string[], needs: string[][]}>}
 */
const questions = {
  time: {
    opens: ['metal', 'design', 'bite'],
    needs: [['metal'], ['width', 'area', 'diameter'], ['height', 'area', 'diameter'], ['open', 'area'], ['depth'], ['density', 'current', 'time']],
  },
  supply: {
    opens: ['supply'],
    needs: [['volts', 'amps'], ['metal'], ['width', 'area', 'diameter'], ['height', 'area', 'diameter'], ['open', 'area'], ['amps'], ['gap'], ['cathode']],
  },
  bath: {
    opens: ['bath', 'keep'],
    needs: [['salt', 'metal'], ['strength', 'saltInHand', 'haveStrength', 'strengthA', 'gravity'], ['volume', 'fill', 'waterInHand', 'haveVolume'], ['volumeNow']],
  },
  check: {
    opens: ['course'],
    needs: [['before', 'readings'], ['after', 'readings'], ['elapsed', 'readings'], ['metal'], ['width', 'area', 'diameter'], ['open', 'area']],
  },
}

/** @param {import('../page.js').Desk} desk */
export function setUpQuestions({ form }) {
  const place = /** @type {HTMLElement} */ (form.place.querySelector('.questions'))
  let byKeys = false
  place.addEventListener('pointerdown', () => { byKeys = false })
  place.addEventListener('keydown', ({ key }) => {
    byKeys = true
    if (key === 'Enter') lead()
  })
  // Keys that move through the choices stay among them until Enter.
  place.addEventListener('click', ({ target }) => { if (target instanceof HTMLInputElement && !byKeys) lead() })

  /** To the first blank of the question, or to its part. */
  function lead() {
    const question = questions[form.question.value]
    if (!question) return
    const parts = question.opens.flatMap((name) => form.parts.find(({ element }) => element.dataset.part === name) ?? [])
    form.unpack()
    for (const { element } of parts) element.open = true
    const blank = question.needs.find((names) => names.every((name) => form.blank(name) || !form.rows.has(name)))
    if (blank) {
      form.lead(blank[0])
      setTimeout(() => form.rows.get(blank[0])?.input.focus({ preventScroll: true })) // a label's press may focus its own control last
    } else parts[0]?.element.scrollIntoView({ block: 'start' })
  }
}
