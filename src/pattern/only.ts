import type { Nodes } from 'mdast'
import type { ContainerDirective, TextDirective } from 'mdast-util-directive'
import type { Diagnostic, Outcome } from '../diagnostic/index.ts'
import { diagnose, nearestTo } from '../diagnostic/index.ts'
import { type Draft, spanOf, textAt } from './draft.ts'

/** `:sizes[…]{only="…"}` in a line, or `:::sizes{only="…"}` around a passage. */
export type OnlySizes = (TextDirective | ContainerDirective) & { name: 'sizes' }

/** Whether a passage runs to the end of the draft because its closing `:::` is missing. */
export function isUnclosed(draft: Draft, node: OnlySizes): boolean {
  return node.type === 'containerDirective' && !/\n\s*:{3,}\s*$/.test(textAt(draft, spanOf(draft, node)))
}

export function isOnlySizes(node: Nodes): node is OnlySizes {
  return (node.type === 'textDirective' || node.type === 'containerDirective') && node.name === 'sizes'
}

/** Positions of the sizes that a passage is for, in the draft's order; all of them, with a finding, where it does not say. */
export function sizesOf(draft: Draft, node: OnlySizes): Outcome<readonly number[]> {
  const sizes = draft.facts.facts.sizes
  const written = node.attributes?.only
  const at = spanOf(draft, node)
  if (written === undefined || written === null || written.trim() === '') {
    return { value: sizes.map((_, index) => index), diagnostics: [diagnose('directive-without-sizes', at, {})] }
  }
  const diagnostics: Diagnostic[] = []
  const chosen = new Set<number>()
  for (const name of splitNames(written.replace(/[“”„"]/g, ''), sizes)) {
    const index = sizes.findIndex((size) => size.toLowerCase() === name.toLowerCase())
    if (index === -1)
      diagnostics.push(diagnose('size-unknown', at, { size: name, nearest: nearestTo(name, sizes), sizes }))
    else chosen.add(index)
  }
  return { value: [...chosen].sort((a, b) => a - b), diagnostics }
}

/** A size's own name may hold a comma or “and”: a whole match wins over cutting. */
function splitNames(written: string, sizes: readonly string[]): string[] {
  const whole = written.trim()
  if (sizes.some((size) => size.toLowerCase() === whole.toLowerCase())) return [whole]
  return whole
    .split(/\s*,\s*|\s+and\s+/)
    .map((name) => name.trim())
    .filter((name) => name !== '')
}
