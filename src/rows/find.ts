import type { Ledger, LedgerRow } from './ledger.ts'

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
 * The row with a label, in a piece or, with null, in the whole pattern. The last one wins, as in a
 * reader's memory.
 *
 * @returns null when there is none
 */
export function findRow(ledger: Ledger, piece: string | null, label: string): LedgerRow | null {
  const asked = plainLabel(label)
  const wanted = piece?.trim().toLowerCase() ?? null
  const found = ledger.rows.findLast(
    (row) =>
      row.label !== null &&
      plainLabel(row.label) === asked &&
      (wanted === null || row.piece.trim().toLowerCase() === wanted),
  )
  return found ?? null
}
