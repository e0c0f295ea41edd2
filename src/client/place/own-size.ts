import type { ReaderData } from '../../html/reader-data.ts'
import type { Memory } from '../memory.ts'

/**
 * The size that a reader works: the one in view, else, with all in view, the one that was chosen last. Null as long as
 * none was; a pattern of one size needs no choice.
 */
export function ownSize({ slug, sizes }: ReaderData, memory: Memory): number | null {
  if (sizes.length === 1) return 0
  const name = `own:${slug}`
  const checked = document.querySelector<HTMLInputElement>('[data-choice=size] input:checked')
  const shown = /^size-(\d+)$/.exec(checked?.id ?? '')?.[1]
  if (shown === undefined) {
    const remembered = sizes.indexOf(memory.read(name) ?? '')
    return remembered < 0 ? null : remembered
  }
  memory.write(name, sizes[Number(shown)] ?? '')
  return Number(shown)
}
