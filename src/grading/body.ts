import Fraction from 'fraction.js'
import type { Diagnostic, Outcome, Span } from '../diagnostic/index.ts'
import { diagnose, nearestTo } from '../diagnostic/index.ts'
import type { BodyFound } from '../formula/index.ts'
import type { PerSize } from '../measure/index.ts'
import { toBase } from '../measure/index.ts'
import { bodyTables } from '../standards/body.ts'
import type { BodyMeasure, BodyTable, Inches } from '../standards/body-table.ts'
import { columnOf } from './column.ts'
import type { WrittenText } from './swatch.ts'

/** What `fits` says: a table and, for each size of the draft, the size of the table that it is drawn on. */
export interface WrittenFits {
  readonly table: WrittenText
  /** Null for a size that is drawn on none. */
  readonly columns: readonly (WrittenText | null)[]
  readonly at: Span
}

/** The sizes of a body table that a draft's sizes are drawn on. */
export interface BodyColumns {
  readonly table: BodyTable
  readonly columns: PerSize<number | null>
}

/** Finds a draft's body table and its columns; null when a name is unknown or the sizes do not match, which is reported. */
export function readFits(fits: WrittenFits, sizes: number): Outcome<BodyColumns | null> {
  const name = fits.table.text.trim().toLowerCase()
  const table = bodyTables.get(name)
  if (table === undefined) return { value: null, diagnostics: [unknownTable(fits.table)] }
  const columns = fits.columns.map((column) => (column === null ? null : columnOf(table, column.text)))
  const diagnostics = fits.columns.flatMap((column, size) =>
    column !== null && columns[size] === -1 ? [unknownColumn(column, name, table)] : [],
  )
  const length = lengthFinding(fits, sizes)
  const findings = [...diagnostics, ...length]
  return { value: findings.length === 0 ? { table, columns } : null, diagnostics: findings }
}

function unknownTable({ text, at }: WrittenText): Diagnostic {
  const known = [...bodyTables.keys()]
  return diagnose('body-table-unknown', at, { table: text, nearest: nearestTo(text, known), known })
}

function unknownColumn({ text, at }: WrittenText, name: string, table: BodyTable): Diagnostic {
  const nearest = nearestTo(text, table.sizes)
  return diagnose('body-column-unknown', at, { column: text, table: name, nearest, known: table.sizes })
}

function lengthFinding(fits: WrittenFits, sizes: number): readonly Diagnostic[] {
  const given = fits.columns.length
  return given === sizes ? [] : [diagnose('body-columns-length', fits.at, { given, sizes })]
}

/** A body measure for every size, in centimetres, from the inches of the table; a range gives its middle. */
export function bodyMeasure(body: BodyColumns, measure: string, unit: 'cm' | 'in'): BodyFound {
  const found = measureOf(body.table, measure)
  if (found === null) return { kind: 'unknown', known: body.table.measures.map(({ key }) => key) }
  const bySize = body.columns.map((column) => {
    const inches = column === null ? undefined : found.inches[column]
    return inches === undefined ? null : toBase(middle(inches), 'in')
  })
  return { kind: 'found', bySize, unit }
}

function middle(inches: Inches): Fraction {
  if (typeof inches === 'number') return new Fraction(String(inches))
  return new Fraction(String(inches[0])).add(String(inches[1])).div(2)
}

/** By its key or label, or by words that only one measure of the table has: `head`, `upper arm`. */
function measureOf(table: BodyTable, measure: string): BodyMeasure | null {
  const wanted = plain(measure)
  const other = wanted === 'bust' ? 'chest' : wanted === 'chest' ? 'bust' : wanted
  const exact = table.measures.find(({ key, label }) => key === wanted || plain(label) === wanted || key === other)
  if (exact !== undefined || wanted === '') return exact ?? null
  const partly = table.measures.filter(({ key }) => `_${key}_`.includes(`_${wanted}_`))
  return partly.length === 1 ? (partly[0] ?? null) : null
}

function plain(measure: string): string {
  return measure
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '_')
}
