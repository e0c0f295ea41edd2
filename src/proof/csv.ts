/** Lines of fields as RFC 4180 asks: quoted where needed, each line ended by CR and LF. */
export function csv(lines: readonly (readonly string[])[]): string {
  return lines.map((cells) => `${cells.map(field).join(',')}\r\n`).join('')
}

/** A number that a size may not have. */
export function csvNumber(count: number | null | undefined): string {
  return count === null || count === undefined ? '' : String(count)
}

/** Quoted where it holds a comma, a quote or a line break. A leading sign would run as a formula in a spreadsheet. */
function field(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
