/**
 * A file as an address that a picture may have here.
 *
 * @param {Blob} file
 * @returns {Promise<string>}
 */
export function address(file) {
  return new Promise((resolve, reject) => {
    const reader = new FileReader()
    reader.onload = () => resolve(String(reader.result))
    reader.onerror = reject
    reader.readAsDataURL(file)
  })
}
