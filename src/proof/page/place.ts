import type { LedgerRow } from '../../rows/ledger.ts'

/** Names of rows for links within the page: rows that stand for one range share the first one's. */
export function rowAnchor({ at }: Pick<LedgerRow, 'at'>): string {
  return `row-${at.start}`
}

/** Gives the address that opens the editor at a line; null where there is none, as in a file that was saved. */
export type EditorLink = (line: number) => string | null
