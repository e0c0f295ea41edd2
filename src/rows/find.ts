import type { Ledger, LedgerRow, WrittenRow } from './ledger.ts'

const rowWords: Readonly<Record<string, string>> = {
  rows: 'row',
  rnd: 'round',
  rnds: 'round',
  rounds: 'round',
  r: 'row',
}

/** `Rnd. 07` and `round 7` name the same row. */
function plainLabel(label: string): string {
  return label
    .toLowerCase()
    .replace(/[.:#]/g, ' ')
    .replace(/^r(?=\d)/, 'r ')
    .split(/\s+/)
    .filter((word) => word !== '')
    .map((word) => (/^\d+$/.test(word) ? String(Number(word)) : (rowWords[word] ?? word)))
    .join(' ')
}

/**
 * Positions in the ledger of the rows with a label, in a piece or, with null, anywhere.
 */
export function indexesOf(ledger: Ledger, piece: string | null, label: string): readonly number[] {
  const asked = plainLabel(label)
  const wanted = piece?.trim().toLowerCase() ?? null
  return ledger.rows.flatMap((row, index) => {
    const named = row.label !== null && plainLabel(row.label) === asked
    return named && (wanted === null || row.piece.trim().toLowerCase() === wanted) ? [index] : []
  })
}

/** One row of a piece that is entered more than once, for different sizes: the later entry wins where both have it. */
function merged(first: LedgerRow, second: LedgerRow): LedgerRow {
  const keys = new Set([...Object.keys(first.counts), ...Object.keys(second.counts)])
  const later = (size: number): boolean => second.total[size] !== null
  const counts = Object.fromEntries(
    [...keys].map((key) => [
      key,
      second.total.map((_, size) => ((later(size) ? second : first).counts[key] ?? [])[size] ?? 0),
    ]),
  )
  const total = second.total.map((made, size) => made ?? first.total[size] ?? null)
  return {
    ...second,
    total,
    counts,
    left: second.left.map((left, size) => (later(size) ? left : (first.left[size] ?? 0))),
  }
}

/**
 * What a written row comes to at its end: of a range the last row of each size, which may be another row for another
 * size. Null for a row that has no entry.
 */
export function lastOf(ledger: Ledger, { entries: [first, end] }: WrittenRow): LedgerRow | null {
  const rows = ledger.rows.slice(first, end)
  return rows.length === 0 ? null : rows.reduce(merged)
}

/**
 * The row with a label, in a piece or, with null, in the whole pattern. Of several pieces the last one
 * wins; rows of one piece that share a label, because sizes number them differently, are put together.
 *
 * @returns null when there is none
 */
export function findRow(ledger: Ledger, piece: string | null, label: string): LedgerRow | null {
  const found = indexesOf(ledger, piece, label).flatMap((index) => ledger.rows[index] ?? [])
  const last = found.at(-1)
  if (last === undefined) return null
  return found.filter((row) => row.piece === last.piece).reduce(merged)
}
