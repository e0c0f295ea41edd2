import type { Only } from './parts.ts'
import { bothOnly } from './parts.ts'
import type { Chunk } from './passage-text.ts'
import type { Prepared } from './prepare.ts'
import { prepare } from './prepare.ts'
import type { Cutter } from './row.ts'
import type { SectionState } from './state.ts'

/** Sizes named on a line of their own hold for the rows below it. */
export function restrict(
  cutter: Cutter,
  state: SectionState,
  only: Only,
  chunk: Chunk,
  further: readonly Chunk[],
): void {
  const opens = further.map((each) => prepare({ ...each, text: each.text.slice(0, 120) }, cutter).opens)
  const next = opens.find((each) => each !== null)
  state.restriction = only === null ? null : { only, lasts: next === 'all', passage: chunk.passage, within: null }
}

/**
 * A chunk for the sizes that what stands above it names. The restriction ends with the row right below it, or where a
 * row shows that it is for all sizes, or says so.
 */
export function restricted(cutter: Cutter, state: SectionState, chunk: Chunk, plain: Prepared): Prepared {
  const { restriction } = state
  if (restriction === null || plain.opens !== null) {
    state.restriction = null
    return plain
  }
  const only = bothOnly(chunk.passage.only, restriction.only)
  const own = prepare({ ...chunk, passage: { ...chunk.passage, only } }, cutter)
  const { within } = restriction
  const below = within === null || (within === chunk.passage && within !== restriction.passage)
  const proven = plain.wrong.length > own.wrong.length
  if (proven || (own.wrong.length === plain.wrong.length && (restriction.lasts || below))) {
    if (own.label !== null) restriction.within ??= chunk.passage
    return { ...own, only: bothOnly(own.only, restriction.only) }
  }
  state.restriction = null
  return plain
}
