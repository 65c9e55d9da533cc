// The build makes this module of the toolchain's own wasm_exec.js, which it runs
// in a function whose globalThis is the scope, so that nothing is put on the page.
declare module 'go:wasm_exec' {
  interface Go {
    importObject: WebAssembly.Imports
    exit: (code: number) => void
    run(instance: WebAssembly.Instance): Promise<void>
  }
  export function installGo(scope: object): new () => Go
}
