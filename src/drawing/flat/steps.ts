import type { LaidRow } from './laid.ts'

/** Fewer stitches than this at one edge of a row make a slope, as many or more a step. */
export const leastStep = 2
/** Where more than this part of the rows have one, the edge slopes steeply: it has no steps. */
const mostSteps = 0.3

/** Rows, by their place, that begin a step at an edge: an armhole, the end of a shoulder. */
export function stepsAt(rows: readonly LaidRow[], edge: 'left' | 'right'): ReadonlySet<number> {
  const found = rows.flatMap((row, at) => {
    const before = rows[at - 1]
    return before !== undefined && Math.abs(row[edge] - before[edge]) >= leastStep ? [at] : []
  })
  return new Set(found.length > Math.max(3, rows.length * mostSteps) ? [] : found)
}
