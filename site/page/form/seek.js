/**
 * Seeks another of depth, time, current and area: the value that was found is
 * written into its blank field, and the field that is now sought is made blank.
 * Density counts as current, and the bare share as area, so each pair is blanked
 * together.
 */

/** The fields that are blank while a row is sought. @type {Record<string, string[]>} */
export const blankWhile = {
  depth: ['depth'],
  time: ['time'],
  current: ['current', 'density'],
  density: ['current', 'density'],
  area: ['area', 'open'],
}

/**
 * @param {import('./form.js').Form} form
 * @param {string} wanted the row to seek
 * @param {import('../../engine/client.js').Reply | undefined} reply
 */
export function seek(form, wanted, reply) {
  const goes = blankWhile[wanted] ?? []
  for (const name of reply?.found ?? []) {
    if (name in blankWhile && !goes.includes(name) && form.blank(name)) {
      form.write(name, reply?.answers[name]?.text ?? '')
    }
  }
  for (const name of goes) form.write(name, '')
  form.sought.value = wanted === 'density' ? 'current' : wanted
}

/**
 * A value typed into the sought field ends the search for it.
 *
 * @param {import('./form.js').Form} form
 * @param {string} name
 */
export function given(form, name) {
  if (blankWhile[form.sought.value]?.includes(name) && !form.blank(name)) form.sought.value = ''
}
