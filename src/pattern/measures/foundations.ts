import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { PerSize } from '../../measure/index.ts'
import type { Ledger, LedgerRow } from '../../rows/ledger.ts'

/** The stitches or chains that a piece is begun with; null for a size that does not begin it so. */
function begunWith({ total, counts }: LedgerRow): PerSize<number | null> {
  return total.map((count, size) => (count === null ? null : count === 0 ? (counts.ch?.[size] ?? null) : count))
}

/** First rows that have fewer stitches in a size than in the next smaller one. */
export function foundationFalls({ rows }: Ledger, sizes: readonly string[]): readonly Diagnostic[] {
  const firsts = rows.filter((row, index) => row.status === 'worked' && rows[index - 1]?.piece !== row.piece)
  return firsts.flatMap((row) => {
    const counts = begunWith(row)
    const larger = counts.findIndex((count, size) => {
      const before = counts[size - 1] ?? null
      return count !== null && before !== null && count < before
    })
    if (larger < 0) return []
    const smaller = larger - 1
    const names = [sizes[smaller] ?? '', sizes[larger] ?? ''] as const
    const amounts = [counts[smaller] ?? 0, counts[larger] ?? 0] as const
    const details = { row: row.label ?? 'The first row', piece: row.piece, names, amounts }
    return [diagnose('foundation-falls', row.at, details, { sizes: [smaller, larger] })]
  })
}
