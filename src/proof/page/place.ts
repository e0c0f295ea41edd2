import type { LedgerRow } from '../../rows/ledger.ts'

/** Names of rows for links within the page: rows that stand for one range share the first one's. */
export function rowAnchor({ at }: Pick<LedgerRow, 'at'>): string {
  return `row-${at.start}`
}

/** Where the page leads to beyond itself; each null where there is no such place, as in a file that was saved. */
export interface Links {
  /** Opens the editor at a line. */
  readonly editor: (line: number) => string | null
  /** Explains a kind of finding. */
  readonly manual: (code: string) => string | null
}
