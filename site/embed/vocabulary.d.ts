// The build makes this module of the table of fields.
declare module 'go:vocabulary' {
  export const fields: string[]
}
