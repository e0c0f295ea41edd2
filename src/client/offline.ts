import { isReply, type KeepRequest, type Reply, type Request } from '../offline/message.ts'
import { announce } from './news.ts'

/** Looked for again when a page comes back into view after so long: beside the hook it may stay open for days. */
const hour = 3_600_000

const base = import.meta.env.BASE_URL.replace(/\/?$/, '/')

/**
 * Keeps the page that is open, and what belongs to it, for when there is no connection, and tells of a newer edition. In preview
 * nothing is kept: what is seen there has to be what was just saved.
 */
export async function startOffline(): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return
  await navigator.serviceWorker.register(`${base}service-worker.js`, { scope: base })
  await keepPage()
  let last = performance.now()
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || performance.now() - last < hour) return
    last = performance.now()
    void keepPage()
  })
}

async function keepPage(): Promise<void> {
  const folder = document.querySelector<HTMLElement>('main')?.dataset.folder ?? null
  const loaded = performance
    .getEntriesByType('resource')
    .map(({ name }) => new URL(name))
    .filter(({ origin, pathname }) => origin === location.origin && pathname.includes('/_astro/'))
    .map(({ pathname }) => pathname)
  const request: KeepRequest = { kind: 'keep', page: location.pathname, folder, loaded }
  const reply = await ask(request)
  if (reply.kind === 'news' && folder !== null) announce(reply, () => showNewEdition(folder))
}

async function showNewEdition(folder: string): Promise<void> {
  // Another window may have shown it already, so whatever the answer is.
  await ask({ kind: 'show', folder })
  location.reload()
}

async function ask(request: Request): Promise<Reply> {
  const { active } = await navigator.serviceWorker.ready
  const { port1, port2 } = new MessageChannel()
  return new Promise((resolve) => {
    port1.onmessage = ({ data }: MessageEvent<unknown>) => resolve(isReply(data) ? data : { kind: 'failed' })
    active?.postMessage(request, [port2])
  })
}
