import type { Ledger } from '../rows/ledger.ts'
import type { FlatRow } from './flat/laid.ts'

/** A piece's name as it is asked for: `Square (make 2)` is also `square`. */
export function bareName(name: string): string {
  return name
    .toLowerCase()
    .replace(/\s*[([–—:].*$/, '')
    .replace(/\s+/g, ' ')
    .trim()
}

/** Names of the pieces that have rows, in their order. */
export function pieceNames(ledger: Ledger): readonly string[] {
  return [...new Set(ledger.rows.map(({ piece }) => piece))]
}

/** Positions in the ledger of the rows of pieces, by their bare names. */
export function entriesOf(ledger: Ledger, names: ReadonlySet<string>): readonly number[] {
  return ledger.rows.flatMap(({ piece }, index) => (names.has(bareName(piece)) ? [index] : []))
}

/**
 * Rows that finish an edge, in stitches and a height of their own, are no part of a piece's measures; a piece that is all
 * edging keeps its rows.
 */
export function withoutEdging(ledger: Ledger, entries: readonly number[]): readonly number[] {
  const own = entries.filter((entry) => !/\b(?:edging|border|trim)\b/i.test(ledger.rows[entry]?.label ?? ''))
  return own.length === 0 ? entries : own
}

/** Rows of the ledger as they were worked for a size. */
export function workedRows(ledger: Ledger, entries: readonly number[], size: number): readonly FlatRow[] {
  return entries.flatMap((index) => {
    const row = ledger.fabric[index]?.[size] ?? null
    return row === null ? [] : [{ row, side: ledger.rows[index]?.side ?? null }]
  })
}

/** Whether most rows of a piece are rounds. */
export function isRound(rows: readonly FlatRow[]): boolean {
  const own = rows.filter(({ row }) => !row.row.foundation)
  return own.filter(({ row }) => row.row.circular).length * 2 > own.length
}

/** Whether a size works some of the rows beyond the foundation. */
export function isWorked(ledger: Ledger, entries: readonly number[], size: number): boolean {
  return workedRows(ledger, entries, size).some(({ row }) => !row.row.foundation)
}

/** The size in the middle of those that work the rows, whose shape stands for all; null where none does. */
export function middleSize(ledger: Ledger, entries: readonly number[], sizes: number): number | null {
  const middle = Math.floor((sizes - 1) / 2)
  const order = Array.from({ length: sizes }, (_, size) => size).sort(
    (a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b,
  )
  return order.find((size) => isWorked(ledger, entries, size)) ?? null
}
