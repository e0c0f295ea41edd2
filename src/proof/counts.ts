import type { Pattern } from '../pattern/pattern.ts'
import { csv, csvNumber } from './csv.ts'

/** The count of every row for every size, as CSV by RFC 4180: rows down, sizes across. */
export function countsCsv({ sizes, rows }: Pattern): string {
  const head = ['Piece', 'Row', 'Side', 'Status', ...sizes]
  const lines = rows.map(({ piece, label, side, status, total }) => [
    piece,
    label ?? '',
    side ?? '',
    status,
    ...total.map(csvNumber),
  ])
  return csv([head, ...lines])
}
