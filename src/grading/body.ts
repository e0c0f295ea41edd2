import type { Diagnostic, Outcome, Span } from '../diagnostic/index.ts'
import { diagnose, nearestTo } from '../diagnostic/index.ts'
import type { BodyFound } from '../formula/index.ts'
import type { PerSize } from '../measure/index.ts'
import { bodyTables } from '../standards/body.ts'
import { namesFile, pathInside, type ReadBeside } from './chart/beside.ts'
import { type BodyChart, measureOf, publishedChart } from './chart/chart.ts'
import { columnOf } from './chart/column.ts'
import { readOwnTable } from './chart/own-table.ts'
import type { WrittenText } from './gauge/measurement.ts'

/** What `fits` says: a table and, for each size of the draft, the size of the table that it is drawn on. */
export interface WrittenFits {
  readonly table: WrittenText
  /** Null for a size that is drawn on none. */
  readonly columns: readonly (WrittenText | null)[]
  readonly at: Span
}

/** The sizes of a body table that a draft's sizes are drawn on. */
export interface BodyColumns {
  readonly table: BodyChart
  readonly columns: PerSize<number | null>
}

/**
 * Finds a draft's body table and its columns; null when a name is unknown or the sizes do not match, which is reported.
 * `readBeside` reaches a table of the designer's own.
 */
export function readFits(
  fits: WrittenFits,
  sizes: number,
  readBeside: ReadBeside = () => ({ kind: 'nowhere' }),
): Outcome<BodyColumns | null> {
  const { value: table, diagnostics: slips } = readTable(fits.table, readBeside)
  if (table === null) return { value: null, diagnostics: slips }
  const columns = fits.columns.map((column) => (column === null ? null : columnOf(table.sizes, column.text)))
  const diagnostics = fits.columns.flatMap((column, size) =>
    column !== null && columns[size] === -1 ? [unknownColumn(column, fits.table.text.trim(), table)] : [],
  )
  const length = lengthFinding(fits, sizes)
  const findings = [...diagnostics, ...length]
  return { value: findings.length === 0 ? { table, columns } : null, diagnostics: findings }
}

function readTable(written: WrittenText, readBeside: ReadBeside): Outcome<BodyChart | null> {
  const table = bodyTables.get(written.text.trim().toLowerCase())
  if (table !== undefined) return { value: publishedChart(table), diagnostics: [] }
  return namesFile(written.text) ? ownTable(written, readBeside) : refuse([unknownTable(written)])
}

function ownTable({ text, at }: WrittenText, readBeside: ReadBeside): Outcome<BodyChart | null> {
  const path = pathInside(text)
  if (path === null) return refuse([diagnose('table-file-path', at, { file: text })])
  const file = readBeside(path)
  if (file.kind !== 'text') return refuse([diagnose('table-file-unreadable', at, { file: path, why: file.kind })])
  const { chart, slips } = readOwnTable(file.text)
  return { value: chart, diagnostics: slips.map((slip) => diagnose('table-slip', at, { file: path, ...slip })) }
}

function refuse(diagnostics: readonly Diagnostic[]): Outcome<null> {
  return { value: null, diagnostics }
}

function unknownTable({ text, at }: WrittenText): Diagnostic {
  const known = [...bodyTables.keys()]
  return diagnose('body-table-unknown', at, { table: text, nearest: nearestTo(text, known), known })
}

function unknownColumn({ text, at }: WrittenText, name: string, table: BodyChart): Diagnostic {
  const nearest = nearestTo(text, table.sizes)
  return diagnose('body-column-unknown', at, { column: text, table: name, nearest, known: table.sizes })
}

function lengthFinding(fits: WrittenFits, sizes: number): readonly Diagnostic[] {
  const given = fits.columns.length
  return given === sizes ? [] : [diagnose('body-columns-length', fits.at, { given, sizes })]
}

/** A body measure for every size, in centimetres; a range gives its middle. */
export function bodyMeasure({ table, columns }: BodyColumns, measure: string, unit: 'cm' | 'in'): BodyFound {
  const found = measureOf(table, measure)
  if (found === null) return { kind: 'unknown', known: table.measures.map(({ key }) => key) }
  const bySize = columns.map((column) => {
    const span = column === null ? null : (found.spans[column] ?? null)
    return span === null ? null : span.low.add(span.high).div(2)
  })
  return { kind: 'found', bySize, unit }
}
