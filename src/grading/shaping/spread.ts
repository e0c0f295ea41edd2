import type { Planned } from './schedule.ts'
import { planned, refused } from './schedule.ts'

/** A row of plain stitches with increases or decreases among them. */
export interface Spread {
  readonly change: 'inc' | 'dec' | 'none'
  /** Plain stitches before the first change, between each two, and after the last. */
  readonly plain: readonly number[]
}

/**
 * Increases (`by` above 0: two stitches in one) or decreases (below 0: two stitches together) spread over stitches:
 * half an interval before the first and after the last, so that a round closes without a gap and a flat row is
 * balanced. Intervals differ by one at most.
 *
 * Source: common practice; tests/external/shaping.test.ts has published examples.
 */
export function spread(by: number, over: number): Planned<Spread> {
  const changes = Math.abs(by)
  const used = by > 0 ? changes : 2 * changes
  if (used > over) return refused({ kind: 'stitches', needed: used, there: over })
  if (changes === 0) return planned({ change: 'none', plain: [over] })
  return planned({ change: by > 0 ? 'inc' : 'dec', plain: intervals(over - used, changes) })
}

/** A number of stitches cut in as many places as there are changes, centred. */
export function intervals(stitches: number, changes: number): readonly number[] {
  const cut = (which: number): number => Math.floor((stitches * (2 * which - 1) + changes) / (2 * changes))
  const cuts = Array.from({ length: changes }, (_, index) => cut(index + 1))
  return [...cuts, stitches].map((end, index) => end - (index === 0 ? 0 : (cuts[index - 1] ?? 0)))
}
