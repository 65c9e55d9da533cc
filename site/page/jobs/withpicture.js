/**
 * The picture that is kept with a stored job, if asked: on this device alone, by its
 * hash. No link and no file of jobs has it.
 */
import { bringPicture, standingPicture } from '../artwork/begin.js'
import { byId, make } from '../element.js'
import { pictureOf } from './shelf.js'

/** @typedef {import('./shelf.js').KeptPicture} KeptPicture */

const box = /** @type {HTMLInputElement} */ (make('input'))
box.type = 'checkbox'
const choice = make('label', box, 'Keep the picture with it, on this device')
choice.className = 'with'

export function setUpWithPicture() {
  byId('jobs-hint').after(choice)
}

/** Offers to keep the picture, if one stands in Artwork; one that is kept already stays so. */
export function offerPicture() {
  const standing = standingPicture()
  choice.hidden = !standing || !crypto.subtle // a page that came without encryption has no hashes
  box.checked = standing?.kept ?? false
}

/**
 * What the job on the page is to know of its picture, and the picture: undefined where
 * it is to have none, and nothing at all where none stands here.
 *
 * @returns {Promise<{picture?: import('./shelf.js').WithPicture | undefined, kept?: KeptPicture}>}
 */
export async function pictureToKeep() {
  const standing = standingPicture()
  if (!standing || choice.hidden) return {}
  if (!box.checked) return { picture: undefined }
  const { file, fields } = standing
  const bytes = await file.arrayBuffer()
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
  const hash = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return { picture: { hash, fields }, kept: { name: file.name, type: file.type, bytes } }
}

/**
 * Brings the picture of a job that was just opened.
 *
 * @param {import('./shelf.js').Job} job
 * @returns {Promise<string>} what is to be said of it
 */
export async function layPicture({ picture }) {
  if (!picture) return ''
  const kept = await pictureOf(picture.hash).catch(() => undefined)
  if (!kept) return ' Its picture is no longer on this device.'
  await bringPicture(new File([kept.bytes], kept.name, { type: kept.type }), picture.fields)
  return ''
}
