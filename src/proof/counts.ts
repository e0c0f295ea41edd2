import type { Pattern } from '../pattern/pattern.ts'

/** The count of every row for every size, as CSV by RFC 4180: rows down, sizes across. */
export function countsCsv({ sizes, rows }: Pattern): string {
  const head = ['Piece', 'Row', 'Side', 'Status', ...sizes]
  const lines = rows.map((row) => [
    row.piece,
    row.label ?? '',
    row.side ?? '',
    row.status,
    ...row.total.map((count) => (count === null ? '' : String(count))),
  ])
  return [head, ...lines].map((cells) => `${cells.map(field).join(',')}\r\n`).join('')
}

/** Quoted where it holds a comma, a quote or a line break. A leading sign would run as a formula in a spreadsheet. */
function field(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
