import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import { sizesWhere } from './count.ts'
import type { ReadRow } from './cut.ts'
import type { Label } from './label.ts'
import { labelText } from './label.ts'
import type { Piece } from './piece.ts'
import { startsPiece } from './piece.ts'
import type { Entry } from './plan.ts'

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
function expected(piece: Piece, row: ReadRow, first: Entry | undefined, size: number): number | null {
  const number = first?.number?.[size] ?? null
  const last = lastsUnder(piece, row.label?.name ?? '')?.[size] ?? 0
  const skips = row.only !== null && !row.only.includes(size)
  return number === null || last === 0 || skips || number <= last + 1 ? null : last + 1
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
function countsAnew(piece: Piece, row: ReadRow, label: Label, first: Entry | undefined): boolean {
  if (label.ofPart) return true
  if (!(row.afterBreak || piece.fastened)) return false
  const lasts = lastsUnder(piece, label.name)
  return first?.number?.some((number, size) => number !== null && number < (lasts?.[size] ?? 0)) ?? false
}

function forgetLabels(piece: Piece, name: string): void {
  const lasts = lastsUnder(piece, name)
  for (const [other, own] of piece.lastByName) if (own === lasts) piece.lastByName.delete(other)
  for (const label of [...piece.labels.keys()]) if (label.startsWith(name)) piece.labels.delete(label)
}

/** The first row of a piece that begins with another number than 1, for every size. */
function lateStart(piece: Piece, row: ReadRow, first: Entry | undefined): Diagnostic | null {
  const begun = piece.labels.size > 0
  const numbers = first?.number?.filter((number) => number !== null) ?? []
  // Without a foundation the row before was not found at all, which is told as such.
  const founded = startsPiece(row) || piece.fabrics.some((fabric) => fabric.row !== null)
  if (begun || !founded || piece.broken.includes(true) || row.label === null || row.only !== null) return null
  if (first === undefined) return null
  // Rows without a label may be the first ones: a row of foundation stitches.
  const unlabelled = Math.max(...piece.rows)
  if (numbers.length === 0 || numbers.some((number) => number < 2 || number <= unlabelled + 1)) return null
  const details = { row: labelText(row.label, first.number) ?? '', piece: piece.name }
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
  const [first] = entries
  const late = lateStart(piece, row, first)
  if (countsAnew(piece, row, label, first)) forgetLabels(piece, label.name)
  const gaps = sizesWhere(sizes, (size) => expected(piece, row, first, size) !== null)
  const next = expected(piece, row, first, gaps[0] ?? -1)
  const twice = labelTwice(piece, row, entries)
  const lasts = lastsUnder(piece, label.name) ?? new Array<number>(sizes).fill(0)
  piece.lastByName.set(label.name, lasts)
  piece.lasts = lasts
  for (const entry of entries) {
    entry.number?.forEach((number, size) => {
      if (number !== null) lasts[size] = number
    })
  }
  if (twice !== null) return [twice]
  if (late !== null) return [late]
  if (next === null || first === undefined) return []
  const details = { row: labelText(label, first.number) ?? '', expected: next }
  return [diagnose('row-number-gap', label.at, details, { sizes: gaps.length === sizes ? [] : gaps })]
}
