import type { LaidRow } from './laid.ts'

/** Rows one on the other, and the parts that go on from the last of them, from left to right. */
export interface Part {
  readonly rows: readonly LaidRow[]
  readonly parts: readonly Part[]
}

/** Parts that lie on each other by more than this, in stitches, are layers of one place and not beside each other. */
const mostOverlap = 1

function besideEachOther(rows: readonly LaidRow[]): readonly LaidRow[] {
  const kept: LaidRow[] = []
  for (const row of rows) {
    const clear = kept.every((each) => row.right <= each.left + mostOverlap || row.left >= each.right - mostOverlap)
    if (clear) kept.push(row)
  }
  return kept.sort((a, b) => a.left - b.left)
}

function partFrom(first: LaidRow, above: ReadonlyMap<number, readonly LaidRow[]>): Part {
  const rows = [first]
  for (let last = first; ; ) {
    const children = above.get(last.order) ?? []
    const [only, ...more] = children
    if (only === undefined) return { rows, parts: [] }
    if (more.length > 0) return { rows, parts: children.map((child) => partFrom(child, above)) }
    rows.push(only)
    last = only
  }
}

/** The piece by its parts; null where no row lies. The foundation is the lower edge of the first row. */
export function partsOf(laid: readonly LaidRow[]): Part | null {
  const rows = laid.filter((row) => row.top > row.bottom)
  const [first, ...rest] = rows
  if (first === undefined) return null
  const above = new Map<number, readonly LaidRow[]>()
  for (const row of rest) {
    if (row.below !== null) above.set(row.below, [...(above.get(row.below) ?? []), row])
  }
  for (const [order, children] of above) above.set(order, besideEachOther(children))
  return partFrom(first, above)
}
