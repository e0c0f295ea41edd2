import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { ReadRow } from './cut.ts'
import type { EntryWork } from './entry-row.ts'
import { labelFor } from './entry-row.ts'
import { rowName } from './findings.ts'
import type { Piece } from './piece.ts'
import { type Entry, firstNumbers } from './plan.ts'
import { sideAfter, sideOf } from './sides.ts'

/**
 * Keeps count of the side that faces, by the turns that are worked.
 *
 * @param opens whether an entry is the first of its row for a size: the label is that one's
 * @returns sizes for which the label says another side
 */
export function followSides(
  piece: Piece,
  { row, entry, worked }: EntryWork,
  opens: (size: number) => boolean,
): readonly number[] {
  const wrong: number[] = []
  worked.forEach((result, size) => {
    const steps = entry.steps[size] ?? null
    const fabric = piece.fabrics[size]
    if (result === null || result.stop !== null || steps === null || fabric === undefined) return
    const said = opens(size) ? (row.label?.side ?? null) : null
    const side = sideOf(row, steps, fabric, piece.sides[size] ?? null)
    if (said !== null && side !== null && side !== said) wrong.push(size)
    piece.sides[size] = sideAfter(steps, result, said ?? side)
  })
  return wrong
}

/** A label that says another side than the turns. */
export function sideFindings(
  row: ReadRow,
  entries: readonly Entry[],
  wrong: ReadonlySet<number>,
): readonly Diagnostic[] {
  const said = row.label?.side ?? null
  if (said === null || wrong.size === 0 || row.label === null) return []
  const numbers = firstNumbers(entries)
  const all = entries[0]?.steps.length ?? 0
  const details = { row: rowName(labelFor(row, numbers)), said, worked: said === 'RS' ? 'WS' : 'RS' } as const
  const sizes = wrong.size === all ? [] : [...wrong].sort((first, second) => first - second)
  return [diagnose('side-out-of-step', row.label.at, details, { sizes })]
}
