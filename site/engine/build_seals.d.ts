// The build makes this module of the hashes of the engine's files.
declare module 'build:seals' {
  interface Seal {
    /** What the file's address ends in, new with every body. */
    tag: string
    integrity: string
  }
  export const seals: Record<'saltbite.wasm' | 'engine.js', Seal>
}
