/** What a picture is read as: a photograph is what has one of two fields. */

const photographs = ['corners', 'threshold']

/** What scales a picture by a ruler in it. */
export const rulers = ['ruler', 'rulerLength']

/** @param {Map<string, string>} others the fields that have no row */
export const isPhotograph = (others) => photographs.some((name) => others.has(name))

/** Nothing is said of the picture yet. @param {Map<string, string>} others */
export function asUnread(others) {
  asDrawing(others)
  for (const name of rulers) others.delete(name)
}

/** A drawing from now on. @param {Map<string, string>} others */
export function asDrawing(others) {
  for (const name of photographs) others.delete(name)
}
