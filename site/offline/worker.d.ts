// What a service worker has and a page has not, as far as it is used here: the
// checker's own list of it can't stand beside that of a page.
interface ExtendableEvent extends Event {
  waitUntil(work: Promise<unknown>): void
}

interface FetchEvent extends ExtendableEvent {
  request: Request
  respondWith(reply: Promise<Response>): void
}

interface ExtendableMessageEvent extends ExtendableEvent {
  data: unknown
  ports: readonly MessagePort[]
}

interface WorkerScope {
  registration: ServiceWorkerRegistration
  serviceWorker?: ServiceWorker // this one; some browsers don't say
  skipWaiting(): Promise<void>
  addEventListener(type: 'install' | 'activate', listener: (event: ExtendableEvent) => void): void
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void
  addEventListener(type: 'message', listener: (event: ExtendableMessageEvent) => void): void
}

// The build makes this module of the files that a page is made of.
declare module 'build:kept' {
  /** The hash of each, SHA-256 in hexadecimal. */
  export const files: Record<string, string>
  /** Names what is in all of them. */
  export const content: string
}
