import type { Diagnostic, Severity, Source } from '../diagnostic/index.ts'
import type { Pattern } from '../pattern/pattern.ts'
import type { UnknownWord } from '../rows/unknown.ts'
import { acceptedText } from './report/accepted.ts'
import { coverageText } from './report/coverage.ts'
import { findingsText } from './report/findings.ts'
import { plural, wrapped } from './report/lines.ts'
import { measureLines } from './report/measure-lines.ts'
import type { Paint } from './report/paint.ts'
import { plainPaint } from './report/paint.ts'
import { rowTable } from './report/row-table.ts'

/** A draft that has been read, and what was found in it. `pattern` is null where the front matter could not be used. */
export interface Proofed {
  readonly source: Source
  readonly pattern: Pattern | null
  readonly diagnostics: readonly Diagnostic[]
  /** Words that stopped the reader and are not known. */
  readonly unknown?: readonly UnknownWord[]
}

interface Options {
  readonly paint?: Paint
  /** Findings alone, without what every row makes. */
  readonly brief?: boolean
}

/**
 * The proof of one draft for a person at a terminal, 80 columns wide: findings by place with the draft's words, what each
 * row makes, what could not be checked, and a line that says it all.
 */
export function proofText(proofed: Proofed, { paint = plainPaint, brief = false }: Options = {}): string {
  const { source, pattern, diagnostics, unknown = [] } = proofed
  const rows = pattern?.rows ?? []
  const open = diagnostics.filter(({ accepted }) => accepted === undefined)
  const parts = [
    paint.strong(source.name),
    findingsText({ source, sizes: pattern?.sizes ?? [], rows, diagnostics: open }, paint),
    acceptedText(source, diagnostics),
    ...(brief
      ? []
      : [measureLines(pattern?.measures ?? [], paint), rowTable(rows, paint), coverageText(source, rows, unknown)]),
    lastLine(proofed),
  ]
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`
}

/** Cells of a table padded to columns two spaces apart. */
export function alignColumns(lines: readonly (readonly string[])[]): string {
  const widths = (lines[0] ?? []).map((_, index) => Math.max(...lines.map((cells) => cells[index]?.length ?? 0)))
  return lines
    .map((cells) =>
      cells
        .map((cell, index) => cell.padEnd(widths[index] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n')
}

/** How much was worked and how much found, in one line. */
export function lastLine({ pattern, diagnostics }: Proofed): string {
  const open = diagnostics.filter(({ accepted }) => accepted === undefined)
  const count = (severity: Severity): string =>
    plural(open.filter((finding) => finding.severity === severity).length, severity)
  const accepted = diagnostics.length - open.length
  const findings = [count('error'), count('warning'), count('note'), ...(accepted > 0 ? [`${accepted} accepted`] : [])]
  if (pattern === null) return wrapped(`The draft could not be worked; ${findings.join(', ')}.`, 0)
  const worked = pattern.rows.filter((row) => row.status === 'worked').length
  const rows = `${worked} of ${plural(pattern.rows.length, 'row')} worked for ${plural(pattern.sizes.length, 'size')}`
  return wrapped(`${rows}; ${findings.join(', ')}.`, 0)
}
