/**
 * The program, read from where it stands and compiled. What the network gives is
 * compared with the hash that it was built with: on a server that is being replaced,
 * files of two versions stand side by side.
 */

/** @typedef {{address: string, integrity: string}} Place */

/**
 * Not compiled while it streams in: that needs the server to say what it is, and
 * some say octet-stream; and WebKitGTK takes longer for it.
 *
 * @param {Place} place
 */
export async function compiledFrom({ address, integrity }) {
  const reply = await fetch(address, { integrity })
  if (!reply.ok) throw new Error(`${address} could not be read: ${reply.status}`)
  return WebAssembly.compile(await reply.arrayBuffer())
}
