// What a page may do with an answer: here it is put where the class copies it.
const slip = document.getElementById('slip')
document.querySelector('saltbite-bench')?.addEventListener('saltbite:answer', (event) => {
  const { sentence } = /** @type {CustomEvent<import('../../engine/client.js').Reply>} */ (event).detail
  if (slip && sentence) slip.textContent = sentence
})

export {}
