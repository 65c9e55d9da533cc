// The build makes these modules: of the hash of the program, and of the worker's
// script, as a function that needs nothing around it.
declare module 'build:seal' {
  /** What the program's address ends in, new with every body. */
  export const tag: string
  export const integrity: string
}

declare module 'build:worker' {
  export function work(self: import('./worker.js').Port): void
}
