import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Count } from './count.ts'
import { printCount, sizesWhere } from './count.ts'
import type { ReadRow } from './cut.ts'
import type { Label } from './label.ts'
import { labelText } from './label.ts'
import type { Piece } from './piece.ts'
import { startsPiece } from './piece.ts'
import { type Entry, firstNumbers } from './plan.ts'

/** A label may stand twice for different sizes, whose rows are numbered differently; never for one size. */
function labelTwice(piece: Piece, row: ReadRow, entries: readonly Entry[]): Diagnostic | null {
  const { label } = row
  if (label === null) return null
  let twice: string | null = null
  for (const entry of entries) {
    const text = labelText(label, entry.number)
    if (text === null) continue
    const sizes = piece.labels.get(text) ?? new Set()
    piece.labels.set(text, sizes)
    entry.number?.forEach((number, size) => {
      const skips = row.only !== null && !row.only.includes(size)
      if (number === null || skips) return
      if (sizes.has(size)) twice ??= text
      sizes.add(size)
    })
  }
  return twice === null ? null : diagnose('row-label-twice', label.at, { row: twice, piece: row.piece })
}

const alike: readonly (readonly string[])[] = [
  ['Rnd', 'Rd', 'Round', 'R'],
  ['Row', 'R'],
]

/** The numbers so far under a name, or under another word for the same. */
function lastsUnder(piece: Piece, name: string): number[] | undefined {
  const own = piece.lastByName.get(name)
  if (own !== undefined) return own
  const others = alike.filter((group) => group.includes(name)).flat()
  return others.map((other) => piece.lastByName.get(other)).find((lasts) => lasts !== undefined)
}

/** The number a size would expect next under this name; null when the row has it or the size skips the row. */
function expected(piece: Piece, row: ReadRow, first: Count | null, size: number): number | null {
  const number = first?.[size] ?? null
  const last = lastsUnder(piece, row.label?.name ?? '')?.[size] ?? 0
  const skips = row.only !== null && !row.only.includes(size)
  const most = last + (piece.misnumbered ? 2 : 1)
  return number === null || last === 0 || skips || number <= most ? null : last + 1
}

/** `Next row`, and rows without a label: each is one more, whatever its words call it. */
function countOn(piece: Piece, entries: readonly Entry[]): void {
  const { lasts } = piece
  if (lasts === null) return
  for (const entry of entries) {
    entry.steps.forEach((steps, size) => {
      if (steps !== null && entry.number !== null) lasts[size] = (lasts[size] ?? 0) + 1
    })
  }
}

/** Whether the numbers begin again lower down: a second side, a part of its own. */
function countsAnew(piece: Piece, row: ReadRow, label: Label, first: Count | null): boolean {
  if (label.ofPart) return true
  if (!(row.afterBreak || piece.fastened)) return false
  const lasts = lastsUnder(piece, label.name)
  return first?.some((number, size) => number !== null && number < (lasts?.[size] ?? 0)) ?? false
}

function forgetLabels(piece: Piece, name: string): void {
  const lasts = lastsUnder(piece, name)
  for (const [other, own] of piece.lastByName) if (own === lasts) piece.lastByName.delete(other)
  for (const label of [...piece.labels.keys()]) if (label.startsWith(name)) piece.labels.delete(label)
}

/** The first row of a piece that begins with another number than 1, for every size. */
function lateStart(piece: Piece, row: ReadRow, first: Count | null): Diagnostic | null {
  const begun = piece.labels.size > 0 || piece.lastByName.size > 0
  const numbers = first?.filter((number) => number !== null) ?? []
  // Without a foundation the row before was not found at all, which is told as such.
  const founded = startsPiece(row) || piece.fabrics.some((fabric) => fabric.row !== null)
  if (begun || !founded || piece.broken.includes(true) || row.label === null || row.only !== null) return null
  // Rows without a label may be the first ones: a row of foundation stitches.
  const unlabelled = Math.max(...piece.rows)
  const goesOn = Math.max(...piece.rowsBefore) > 0
  if (goesOn && first?.every((number, size) => number === null || number === (piece.last[size] ?? 0) + 1)) return null
  if (numbers.length === 0 || numbers.some((number) => number < 2 || number <= unlabelled + 1)) return null
  const details = { row: labelText(row.label, first) ?? '', piece: piece.name }
  return diagnose('first-row-number', row.label.at, details)
}

/** Labels that stand twice, numbers that skip, and pieces that do not begin with the first. */
export function labelFindings(
  piece: Piece,
  row: ReadRow,
  entries: readonly Entry[],
  sizes: number,
): readonly Diagnostic[] {
  const { label } = row
  if (label === null || label.numbers.kind !== 'list') {
    countOn(piece, entries)
    return []
  }
  const first = firstNumbers(entries)
  const late = lateStart(piece, row, first)
  if (countsAnew(piece, row, label, first)) forgetLabels(piece, label.name)
  const gaps = sizesWhere(sizes, (size) => expected(piece, row, first, size) !== null)
  const next = first?.map((_, size) => expected(piece, row, first, size)) ?? []
  // A number that is too high may be a slip: the next row then has it by right.
  const slipped = late !== null || gaps.length > 0
  const twice = slipped ? null : labelTwice(piece, row, entries)
  piece.misnumbered = slipped || twice !== null
  const lasts = lastsUnder(piece, label.name) ?? new Array<number>(sizes).fill(0)
  piece.lastByName.set(label.name, lasts)
  piece.lasts = lasts
  for (const entry of entries) {
    entry.number?.forEach((number, size) => {
      if (number !== null) lasts[size] = slipped ? number - 1 : number
    })
  }
  // Rows that are missing may have been turned.
  for (const size of gaps) piece.sides[size] = null
  if (twice !== null) return [twice]
  if (late !== null) return [late]
  if (first === null || gaps.length === 0) return []
  const skipping = first.map((number, size) => (gaps.includes(size) ? number : null))
  const details = { row: labelText(label, skipping) ?? '', expected: printCount(next.filter((each) => each !== null)) }
  return [diagnose('row-number-gap', label.at, details, { sizes: gaps.length === sizes ? [] : gaps })]
}
