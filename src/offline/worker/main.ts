import { isShellBucket, shellBucket } from '../bucket.ts'
import { isRequest, type Reply } from '../message.ts'
import { answer } from './answer.ts'
import { fill, gatherPage } from './gather.ts'
import { keep, show } from './keep.ts'

/** The service worker: patterns that were opened, with their print-outs, stay there without a connection. */

/** What a worker has that a page has not. */
declare const registration: { readonly scope: string }
declare const clients: { readonly claim: () => Promise<void> }
declare function skipWaiting(): Promise<void>
/** Set by the build: differs where the page for what is not on the device differs. */
declare const shellVersion: string

interface WaitingEvent extends Event {
  readonly waitUntil: (work: Promise<unknown>) => void
}
interface FetchEvent extends WaitingEvent {
  readonly request: Request
  readonly respondWith: (response: Promise<Response>) => void
}

const isWaiting = (event: Event): event is WaitingEvent => 'waitUntil' in event
const isFetch = (event: Event): event is FetchEvent => 'respondWith' in event

const offlinePage = new URL('offline/', registration.scope).href

addEventListener('install', (event) => {
  if (isWaiting(event)) event.waitUntil(keepShell())
})

addEventListener('activate', (event) => {
  if (isWaiting(event)) event.waitUntil(dropOldShells().then(() => clients.claim()))
})

addEventListener('fetch', (event) => {
  if (!isFetch(event)) return
  const { method, url } = event.request
  if (method === 'GET' && url.startsWith(registration.scope)) event.respondWith(answer(event.request, offlinePage))
})

addEventListener('message', (event) => {
  const [port] = event.ports
  const { data } = event
  if (!isWaiting(event) || port === undefined || !isRequest(data)) return
  const work: Promise<Reply> = data.kind === 'keep' ? keep(data) : show(data)
  event.waitUntil(work.catch((): Reply => ({ kind: 'failed' })).then((reply) => port.postMessage(reply)))
})

/** A page for what is not there. Without it the worker is of no use, so it waits for another time. */
async function keepShell(): Promise<void> {
  const files = await gatherPage(offlinePage, [])
  if (files === null) throw new Error('The page for readers without a connection is not to be had.')
  await fill(shellBucket(shellVersion), files)
  await skipWaiting()
}

async function dropOldShells(): Promise<void> {
  const old = (await caches.keys()).filter((name) => isShellBucket(name) && name !== shellBucket(shellVersion))
  for (const name of old) await caches.delete(name)
}
