/**
 * Seeking another of depth, time, current and area: what was found is written
 * into the field that was blank, and the one that is sought now is made blank.
 * The density stands for the current, and a share of the face for an area, so
 * each goes with the other.
 */

/** What is blank while a row is sought. @type {Record<string, string[]>} */
export const aside = {
  depth: ['depth'],
  time: ['time'],
  current: ['current', 'density'],
  density: ['current', 'density'],
  area: ['area', 'open'],
}

/**
 * @param {import('./sheet.js').Sheet} sheet
 * @param {string} wanted the row that is sought now
 * @param {import('../engine/client.js').Reply | undefined} reply
 */
export function seek(sheet, wanted, reply) {
  const goes = aside[wanted] ?? []
  for (const name of reply?.found ?? []) {
    if (name in aside && !goes.includes(name) && sheet.blank(name)) {
      sheet.write(name, reply?.answers[name]?.text ?? '')
    }
  }
  for (const name of goes) sheet.write(name, '')
  sheet.sought.value = wanted === 'density' ? 'current' : wanted
}

/**
 * Whoever types into what is sought gives it instead.
 *
 * @param {import('./sheet.js').Sheet} sheet
 * @param {string} name
 */
export function given(sheet, name) {
  if (aside[sheet.sought.value]?.includes(name) && !sheet.blank(name)) sheet.sought.value = ''
}
