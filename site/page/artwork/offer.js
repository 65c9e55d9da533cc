/** The ways in which a picture comes: chosen, from the camera, dropped or pasted. */

/**
 * @param {Element} place with the buttons and the inputs of files
 * @param {(file: File, camera?: boolean) => void} take
 */
export function setUpOffer(place, take) {
  const inputs = [...place.querySelectorAll('input')]
  for (const [at, input] of inputs.entries()) {
    input.addEventListener('change', () => {
      const file = input.files?.[0]
      input.value = '' // so that the same can be chosen again
      if (file) take(file, at === 1)
    })
  }
  for (const button of place.querySelectorAll('button')) {
    const camera = button.dataset.choose === 'camera'
    // Where there is no finger, the same button would open the files once more.
    button.hidden = camera && !matchMedia('(any-pointer: coarse)').matches
    button.addEventListener('click', () => inputs[camera ? 1 : 0].click())
  }

  document.addEventListener('dragover', (event) => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault()
  })
  document.addEventListener('drop', (event) => given(event, event.dataTransfer))
  document.addEventListener('paste', (event) => given(event, event.clipboardData))

  /**
   * Takes the file that comes with an event; text goes where it was going.
   *
   * @param {Event} event
   * @param {DataTransfer | null} data
   */
  function given(event, data) {
    const [file] = data?.files ?? []
    if (!file) return
    event.preventDefault()
    take(file)
  }
}
