import type { ReaderData } from '../html/reader-data.ts'
import type { OwnPattern } from './own/core.ts'

/**
 * The buttons that make a print-out as the page is shown: the size, terms, measures and letters chosen. What that takes is
 * loaded when one of them is pressed; before that, nothing. What comes back is told of a pattern with numbers of the
 * reader's own, and, with null, of the published ones.
 */
export function startJustMine(data: ReaderData): (own: OwnPattern | null) => void {
  const line = document.querySelector<HTMLElement>('.just-mine')
  const answer = line?.querySelector('output')
  let ownPattern: OwnPattern | null = null
  let busy = false
  line?.addEventListener('click', async ({ target }) => {
    if (busy || !answer || !(target instanceof Element) || target.closest('button') === null) return
    busy = true
    answer.textContent = 'One moment …'
    const done = await import('./mine/index.ts')
      .then(({ printMine }) => printMine(line, target, data, ownPattern))
      .catch(() => false)
    answer.textContent = done ? 'Done.' : 'This could not be made. Try again when you are connected.'
    busy = false
  })
  if (line) line.hidden = false
  return (own) => {
    ownPattern = own
  }
}
