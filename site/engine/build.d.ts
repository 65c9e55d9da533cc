// The build makes these modules: of the hash of the program, and of the worker's
// script, as a function that needs nothing around it.
declare module 'build:seals' {
  interface Seal {
    /** What the file's address ends in, new with every body. */
    tag: string
    integrity: string
  }
  export const seals: Record<'saltbite.wasm', Seal>
}

declare module 'build:worker' {
  export function work(self: import('./worker.js').Port): void
}
