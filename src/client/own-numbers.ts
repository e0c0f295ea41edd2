import type { ReaderData } from '../html/reader-data.ts'
import type { Memory } from './memory.ts'
import type { Renew } from './own/index.ts'

/**
 * The panel for a reader's own length and gauge. What it takes is loaded when it is opened, or when the address or the
 * device has numbers of the reader's own; before that, nothing.
 */
export function startOwnNumbers({ slug }: ReaderData, memory: Memory, renew: Renew): void {
  const panel = document.querySelector<HTMLDetailsElement>('.own-numbers')
  const body = panel?.querySelector<HTMLElement>('.own-body')
  if (!panel || !body) return
  const kept = `own-numbers:${slug}`
  const asked = (): boolean => /[?&]my-/.test(location.search) || memory.read(kept) !== null
  let state: 'closed' | 'loading' | 'open' = 'closed'
  const load = async (): Promise<void> => {
    if (state !== 'closed') return
    state = 'loading'
    body.textContent = 'One moment …'
    const opened = await import('./own/index.ts')
      .then(({ openOwn }) => openOwn(panel, kept, memory, renew))
      .catch(() => false)
    state = opened ? 'open' : 'closed'
    if (opened) return
    body.textContent =
      'This could not be loaded, so the published numbers are shown. Close it and open it again when you are connected.'
    if (asked()) panel.open = true
  }
  panel.addEventListener('toggle', () => panel.open && void load())
  panel.hidden = false
  if (asked()) void load()
}
