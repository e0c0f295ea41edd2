import type { Diagnostic } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { EntryWork } from './entry-row.ts'
import { labelFor } from './entry-row.ts'
import { rowName } from './findings.ts'
import type { Piece } from './piece.ts'
import { sideAfter, sideOf } from './sides.ts'

/** Keeps count of the side that faces, by the turns that are worked, and compares it with a label that says it. */
export function followSides(piece: Piece, { row, entry, worked }: EntryWork, opens: boolean): Diagnostic | null {
  const said = opens ? (row.label?.side ?? null) : null
  const wrong: number[] = []
  worked.forEach((result, size) => {
    const steps = entry.steps[size] ?? null
    const fabric = piece.fabrics[size]
    if (result === null || result.stop !== null || steps === null || fabric === undefined) return
    const side = sideOf(row, steps, fabric, piece.sides[size] ?? null)
    if (said !== null && side !== null && side !== said) wrong.push(size)
    piece.sides[size] = sideAfter(steps, result, said ?? side)
  })
  if (said === null || wrong.length === 0 || row.label === null) return null
  const details = { row: rowName(labelFor(row, entry.number)), said, worked: said === 'RS' ? 'WS' : 'RS' } as const
  const sizes = wrong.length === worked.length ? [] : wrong
  return diagnose('side-out-of-step', row.label.at, details, { sizes })
}
