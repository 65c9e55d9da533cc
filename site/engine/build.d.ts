// The build makes these modules: of the hashes of the programs and of the page's
// further scripts, of the worker's script as a function that needs nothing around it,
// and of where each figure comes from.
declare module 'build:seal' {
  /** tag: what the program's address ends in, new with every body. */
  type Seal = { tag: string, integrity: string }
  /** The program of the short calls, and that of the long ones. */
  export const short: Seal, long: Seal
  /** The page's other scripts: the second, the log's, what comes with the first picture, and the cut along a line. */
  export const later: Seal, log: Seal, closer: Seal, along: Seal
}

declare module 'build:closer.css' {
  export const style: string
}

declare module 'build:sourced' {
  type Origin = { name: string, label: string, formula?: string, assumes: string, uses: string[] }
  type Source = { key: string, title: string, text: string, confidence: string }
  /** metals: where a row of the catalogue was read, by its id. */
  export const sourced: { origins: Origin[], cautions: Origin[], sources: Source[], metals: Record<string, Source> }
}

declare module 'build:worker' {
  export function work(self: import('./worker.js').Port): void
}
