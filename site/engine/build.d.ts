// The build makes these modules: of the hash of the program, and of the worker's script.
declare module 'build:seals' {
  interface Seal {
    /** What the file's address ends in, new with every body. */
    tag: string
    integrity: string
  }
  export const seals: Record<'saltbite.wasm', Seal>
}

declare module 'build:worker' {
  export const source: string
}
