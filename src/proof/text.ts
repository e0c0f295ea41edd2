import type { PerSize } from '../measure/value.ts'
import type { UnknownWord } from '../rows/unknown.ts'
import { coverageText } from './coverage-text.ts'
import type { ProofDocument, ProofRow } from './document.ts'
import type { Finding } from './finding.ts'

/** The proof of one draft for a person at a terminal: findings in the order of the draft, then a table of the rows. */
export function proofText(proof: ProofDocument, unknown: readonly UnknownWord[] = []): string {
  const parts = [
    proof.draft,
    ...proof.diagnostics.map((finding) => findingText(finding, proof)),
    rowTable(proof),
    coverageText(proof, unknown),
    lastLine(proof),
  ]
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`
}

function findingText(finding: Finding, proof: ProofDocument): string {
  const place = `${proof.draft}:${finding.line}:${finding.column}`
  const sizes = finding.sizes.length === 0 || proof.sizes.length === 1 ? '' : `  (${sizeNames(finding, proof)})`
  const hint = finding.hint === null ? '' : `\n    ${finding.hint}`
  return `${place}  ${finding.severity}  ${finding.code}${sizes}\n    ${finding.message}${hint}`
}

function sizeNames(finding: Finding, proof: ProofDocument): string {
  return finding.sizes.length === proof.sizes.length ? 'every size' : finding.sizes.join(', ')
}

function rowTable(proof: ProofDocument): string {
  if (proof.rows.length === 0) return ''
  const head = ['Piece', 'Row', 'Stated', 'Worked', 'Agrees']
  const lines = proof.rows.map((row) => [row.piece, row.label ?? '·', stated(row), worked(row), agreement(row)])
  return alignColumns([head, ...lines])
}

function stated(row: ProofRow): string {
  if (row.stated === null) return ''
  return Object.entries(row.stated)
    .map(([kind, bySize]) => `${column(bySize)}${kind === 'total' ? '' : ` ${kind}`}`)
    .join(', ')
}

function worked(row: ProofRow): string {
  return row.status === 'worked' ? column(row.total) : row.status === 'unread' ? 'unread' : 'not worked'
}

function agreement(row: ProofRow): string {
  return row.agrees === null ? '' : row.agrees ? 'yes' : 'NO'
}

/** `60 (72, 84)`, or one number where all sizes agree; a size that does not work the row has a dash. */
function column(bySize: PerSize<number | null>): string {
  const [first = '–', ...others] = bySize.map((number) => (number === null ? '–' : String(number)))
  return others.every((other) => other === first) ? first : `${first} (${others.join(', ')})`
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

function lastLine(proof: ProofDocument): string {
  const count = (severity: Finding['severity']) =>
    proof.diagnostics.filter((finding) => finding.severity === severity).length
  const worked = proof.rows.filter((row) => row.status === 'worked').length
  const findings = `${plural(count('error'), 'error')}, ${plural(count('warning'), 'warning')}, ${plural(count('note'), 'note')}`
  return `${worked} of ${plural(proof.rows.length, 'row')} worked for ${plural(proof.sizes.length, 'size')}; ${findings}.`
}

/** `1 row`, `2 rows`. */
export function plural(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`
}
