import type { PlaceKind } from '../../rows/fabric.ts'
import { orderOf, positionOf } from '../../rows/past.ts'
import { cornersIn } from '../round/corners.ts'
import type { ChartRow } from './model.ts'

/** Positions below that the corners of a round are worked into: what lies under a corner is one. */
function under({ row }: ChartRow, corners: readonly number[], below: ChartRow): readonly number[] {
  const { into } = row.trace()
  const { groups } = row.row
  const refs = corners.map((at) => {
    const group = groups[at] ?? -1
    const members = group < 0 ? [at] : groups.flatMap((each, index) => (each === group ? [index] : []))
    return members.map((member) => into[member] ?? -1).find((ref) => ref >= 0) ?? -1
  })
  return refs.flatMap((ref) => (ref >= 0 && orderOf(ref) === below.row.order ? [positionOf(ref)] : []))
}

/**
 * For each round the positions of its corners: its own, else those that the next round's corners are worked into; null for
 * a round that has none.
 */
export function cornersByRow(
  rows: readonly ChartRow[],
  kinds: readonly PlaceKind[],
  corners: number,
): readonly (readonly number[] | null)[] {
  if (corners === 0) return rows.map(() => null)
  const own = rows.map(({ row }) => {
    const found = cornersIn(row.row, kinds)
    return found.length === corners ? found : null
  })
  return rows.map((row, index) => {
    const [before, above] = [own[index] ?? null, rows[index + 1]]
    if (before !== null || above === undefined) return before
    const found = [...new Set(under(above, own[index + 1] ?? [], row))].sort((a, b) => a - b)
    return found.length === corners ? found : null
  })
}
