import type { Diagnostic } from '../diagnostic/index.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { troubleWords } from './trouble-words.ts'

/** What does not come out with a reader's own numbers, or needs a look, in words for readers. */
export interface Trouble {
  /** Whether the numbers can't be shown for the sizes that it concerns. */
  readonly stops: boolean
  /** Positions of the sizes that it concerns; empty for all. */
  readonly sizes: readonly number[]
  readonly words: string
}

/** Findings that are about the draft as a whole, or hold sizes against each other, and say nothing to a reader of one. */
const idle: ReadonlySet<Diagnostic['code']> = new Set([
  'yarn-falls',
  'measure-falls',
  'measure-same',
  'foundation-falls',
  'measure-off-target',
  'gauge-scatters',
  'row-gauge-missing',
])

/** Of what was found, what was not found already as the pattern was published. `pattern` is the one worked anew. */
export function troublesOf(
  found: readonly Diagnostic[],
  published: readonly Diagnostic[],
  pattern: Pattern,
): readonly Trouble[] {
  const before = new Map(published.map((each) => [keyOf(each), each]))
  const troubles = found.flatMap((each): Trouble[] => {
    const sizes = newSizes(each, before.get(keyOf(each)))
    if (sizes === null || each.severity === 'note' || idle.has(each.code)) return []
    return [{ stops: each.severity === 'error', sizes, words: troubleWords(each, pattern) }]
  })
  // Where some sizes do not come out, what is said of no size in particular comes from those.
  const some = troubles.some(({ stops, sizes }) => stops && sizes.length > 0)
  return troubles.filter(({ stops, sizes }) => stops || sizes.length > 0 || !some)
}

/** The text of a draft stays as it is, so the same thing is found at the same place. */
function keyOf({ code, at }: Diagnostic): string {
  return `${code} ${at.start}`
}

/** Null where nothing is new. */
function newSizes({ sizes }: Diagnostic, before: Diagnostic | undefined): readonly number[] | null {
  if (before === undefined) return sizes
  if (before.sizes.length === 0 || sizes.length === 0) return null
  const more = sizes.filter((size) => !before.sizes.includes(size))
  return more.length === 0 ? null : more
}
