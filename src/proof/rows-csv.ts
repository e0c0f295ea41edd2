import { placeOf } from '../diagnostic/index.ts'
import type { LedgerRow } from '../rows/ledger.ts'
import { csv, csvNumber } from './csv.ts'
import type { Proofed } from './text.ts'

/** Lines of one row: what is worked and what is stated, for its total and for each kind of stitch. */
function linesOf(row: LedgerRow, line: number): readonly (readonly string[])[] {
  const { piece, label, side, status, total, counts, stated } = row
  const lead = [piece, label ?? '', String(line), side ?? '', status]
  const worked: [string, readonly (number | null)[]][] = [['total', total], ...Object.entries(counts)]
  return [
    ...worked.map(([kind, bySize]) => [...lead, 'worked', kind, ...bySize.map(csvNumber)]),
    ...Object.entries(stated ?? {}).map(([kind, bySize]) => [...lead, 'stated', kind, ...bySize.map(csvNumber)]),
  ]
}

/** All that was stated and worked, for a spreadsheet: a line for each row and kind of stitch, a column for each size. */
export function rowsCsv({ source, pattern }: Proofed): string {
  const head = ['Piece', 'Row', 'Line', 'Side', 'Status', 'What', 'Kind', ...(pattern?.sizes ?? [])]
  const lines = (pattern?.rows ?? []).flatMap((row) => linesOf(row, placeOf(source, row.at.start).line))
  return csv([head, ...lines])
}
