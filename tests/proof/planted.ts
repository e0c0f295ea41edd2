import { readFileSync } from 'node:fs'
import { fromBytes } from '../../src/cli/draft-file.ts'
import type { Code, Diagnostic } from '../../src/diagnostic/index.ts'
import type { GivenFacts } from '../../src/pattern/read-facts.ts'

/** Clean drafts of several kinds, and what is said on the command line for one that has no front matter. */
export const clean: Readonly<Record<Clean, { readonly file: string; readonly given: GivenFacts }>> = {
  vest: { file: 'tideline-vest.md', given: {} },
  motif: { file: 'buoy-motif.md', given: {} },
  jelly: { file: 'moon-jelly.md', given: {} },
  scarf: { file: 'spindrift-scarf.md', given: {} },
  hat: { file: 'pierhead-hat.md', given: {} },
  mitts: { file: 'harbour-mitts.md', given: {} },
  blanket: { file: 'estuary-blanket.md', given: {} },
  slippers: { file: 'old-quay-slippers.txt', given: { sizes: ['Small', 'Medium', 'Large'] } },
}

export type Clean = 'vest' | 'motif' | 'jelly' | 'scarf' | 'hat' | 'mitts' | 'blanket' | 'slippers'

/** One fault in a clean draft: some of its words, and what stands there instead. */
export interface Planted {
  readonly draft: Clean
  /** Words of the draft; their first appearance is changed. */
  readonly words: string
  /** ‹ and › stand around the place of the finding, unless it is found at other words. */
  readonly instead: string
  readonly code: Code
  /** Words at which it is found, where they are not those that were changed. */
  readonly at?: string
  /** Names of the sizes that it is for; left out where it is not about sizes. */
  readonly sizes?: readonly string[]
}

export function textOf(draft: Clean): string {
  return readFileSync(new URL(`clean/${clean[draft].file}`, import.meta.url), 'utf8')
}

/** What is found in a draft, and the names of its sizes. */
export function proofed(
  draft: Clean,
  text: string,
): { readonly found: readonly Diagnostic[]; sizes: readonly string[] } {
  const { file, given } = clean[draft]
  const { outcome } = fromBytes(file, new TextEncoder().encode(text), null, given)
  return { found: outcome.diagnostics, sizes: outcome.value?.sizes ?? [] }
}

export interface Faulty {
  readonly text: string
  /** Where the finding is expected. */
  readonly start: number
  readonly end: number
}

/** The draft with its fault. */
export function faulty({ draft, words, instead, at }: Planted): Faulty {
  const text = textOf(draft)
  const from = text.indexOf(words)
  if (from < 0) throw new Error(`“${words}” does not stand in the draft`)
  const marked = text.slice(0, from) + instead + text.slice(from + words.length)
  const plain = marked.replace(/[‹›]/g, '')
  if (at === undefined) return { text: plain, start: marked.indexOf('‹'), end: marked.indexOf('›') - 1 }
  const start = plain.indexOf(at)
  return { text: plain, start, end: start + at.length }
}
