/** The program in Node, which reads it from a folder. */

/**
 * @typedef {object} NodeFiles What is used of Node's file system.
 * @property {{readFile: (url: URL) => Promise<Uint8Array<ArrayBuffer>>}} promises
 */

/**
 * @param {string} base the address of a file beside the program
 * @returns {import('./files.js').Files | undefined} undefined where this is not Node, or the address is no folder's
 */
export function filesOfNode(base) {
  const { process } = /** @type {{process?: {getBuiltinModule?: (name: string) => NodeFiles}}} */ (globalThis)
  const node = process?.getBuiltinModule?.('node:fs')
  if (!node || new URL(base).protocol !== 'file:') return undefined
  return { aside: false, module: async () => WebAssembly.compile(await node.promises.readFile(new URL('./saltbite.wasm', base))) }
}
