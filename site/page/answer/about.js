/** What a reply says of each field, found once for a reply and not once for each row. */

/**
 * @typedef {import('../../engine/client.js').Reply} Reply
 * @typedef {import('../../engine/client.js').Caution} Caution
 * @typedef {import('../../engine/client.js').Mistake} Mistake
 *
 * @typedef {object} About
 * @property {Mistake} [mistake] the first, a blank field being none
 * @property {boolean} missing whether the field is blank and needed
 * @property {Partial<Record<Caution['level'], Caution>>} cautions the first of each level
 */

/** @type {About} */
const nothing = { missing: false, cautions: {} }

/** @type {WeakMap<Reply, Map<string, About>>} */
const known = new WeakMap()

/**
 * @param {Reply} reply
 * @param {string} field or answer
 */
export function about(reply, field) {
  let fields = known.get(reply)
  if (!fields) known.set(reply, fields = sorted(reply))
  return fields.get(field) ?? nothing
}

/** @param {Reply} reply */
function sorted({ errors, cautions }) {
  /** @type {Map<string, About>} */
  const fields = new Map()
  /** @param {string} name */
  const of = (name) => {
    const there = fields.get(name) ?? { missing: false, cautions: {} }
    fields.set(name, there)
    return there
  }
  for (const mistake of errors) {
    const field = of(mistake.field)
    if (mistake.code === 'missing') field.missing = true
    else field.mistake ??= mistake
  }
  for (const caution of cautions) of(caution.field ?? '').cautions[caution.level] ??= caution
  return fields
}
