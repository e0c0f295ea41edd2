import { diagnose } from '../diagnostic/index.ts'
import type { Book } from './book.ts'
import type { Count } from './count.ts'
import type { ReadRow } from './cut.ts'
import { labelFor, unworkedRow } from './entry-row.ts'
import { rowName } from './findings.ts'
import type { Label } from './label.ts'
import { longestRange } from './label.ts'
import { labelFindings } from './label-findings.ts'
import type { LedgerRow } from './ledger.ts'
import type { Piece } from './piece.ts'
import type { Entry } from './plan.ts'
import { specialUnread, unreadFinding, wordsUnread } from './report.ts'

/*
 * Rows that are entered though nothing of them has been worked.
 */

/** An entry's own count, where the rows of a range have one each. */
export function withOwnCount(row: ReadRow, index: number): ReadRow {
  const own = row.run[index]
  return own === undefined ? row : { ...row, stated: own }
}

/** Entries of a row that was not read: as many as its label names. */
export function unreadEntries(row: ReadRow, sizes: number): readonly Entry[] {
  const steps = new Array<null>(sizes).fill(null)
  const numbers = row.label?.numbers
  if (numbers?.kind !== 'list') return [{ number: null, steps }]
  return numbers.items.map((number) => ({ number, steps }))
}

function enterUnmade(book: Book, row: LedgerRow): void {
  book.rows.push(row)
  book.fabric.push(row.total.map(() => null))
}

/** Nothing can be worked on a row that was not: the piece stops here for every size. */
export function enterUnworked(
  book: Book,
  piece: Piece,
  row: ReadRow,
  entries: readonly Entry[],
  status: 'unread' | 'not-worked',
  reason: string,
): void {
  for (const [index, entry] of entries.entries()) {
    // The count of a range belongs to its last row.
    const last = index === entries.length - 1
    const own = last || row.run.length > 0 ? withOwnCount(row, index) : { ...row, stated: null }
    enterUnmade(book, unworkedRow(own, entry.number, book.settings.sizes.length, status, reason))
    entry.number?.forEach((number, size) => {
      if (number !== null) piece.last[size] = number
    })
  }
  piece.broken.fill(true)
}

function reasonUnread(words: string): string {
  return words === '' ? 'It has no steps.' : `The reader stopped at “${words}”.`
}

export function enterUnread(book: Book, piece: Piece, row: ReadRow): void {
  const entries = unreadEntries(row, book.settings.sizes.length)
  const name = rowName(labelFor(row, entries[0]?.number ?? null))
  const finding = unreadFinding(book.reporting, row, name)
  if (finding !== null) book.found.push(finding)
  book.found.push(...labelFindings(piece, row, entries, book.settings.sizes.length))
  // What is broken may be its number: none is expected next.
  if (row.broken) piece.lasts?.fill(0)
  const reason =
    finding === null
      ? (specialUnread(book.reporting, row) ?? 'A placeholder or a size list in this row is wrong.')
      : reasonUnread(wordsUnread(book.reporting, row.unread))
  enterUnworked(book, piece, row, entries, 'unread', reason)
}

/** A range past all bounds is entered once, by its first row. */
export function enterEndless(book: Book, piece: Piece, row: ReadRow): void {
  book.found.push(diagnose('range-too-long', row.at, { most: longestRange }))
  const [first] = unreadEntries(row, book.settings.sizes.length)
  enterUnworked(book, piece, row, first === undefined ? [] : [first], 'not-worked', 'It stands for too many rows.')
}

/** A range that runs backwards stands for no row that could be worked: it is entered once, as it is written. */
export function enterBackwards(book: Book, piece: Piece, row: ReadRow, label: Label, from: Count): void {
  const written = book.reporting.words(label.at).replace(/[\s.:]+$/, '')
  const finding = diagnose('range-backwards', label.at, { range: written })
  const sizes = book.settings.sizes.length
  book.found.push(finding)
  enterUnmade(book, { ...unworkedRow(row, null, sizes, 'not-worked', finding.message), label: written })
  from.forEach((number, size) => {
    if (piece.lasts !== null) piece.lasts[size] = Math.max(piece.lasts[size] ?? 0, number ?? 0)
  })
  piece.broken.fill(true)
}
