import type Fraction from 'fraction.js'
import { isLengthUnit, isPositive, isUnit, type LengthUnit, readNumber, toBase } from '../../measure/index.ts'
import { type Cell, readCells, type Separator } from './cells.ts'
import { type BodyChart, type ChartMeasure, type Ends, keyOf } from './chart.ts'

/** Something that is wrong at one place of a designer's own table. */
export interface TableSlip {
  readonly line: number
  readonly column: number
  readonly says: string
  readonly wayOut: string | null
}

export type OwnTable =
  | { readonly chart: BodyChart; readonly slips: readonly [] }
  | { readonly chart: null; readonly slips: readonly TableSlip[] }

/** What a table looks like, for hints. */
const sample = '`measure, unit, Small, Medium`, then `Bust, cm, 81-86, 91.5-96.5`'

/**
 * Reads a designer's own body table: measures down, sizes across, the first measure the one that a reader chooses a size by.
 *
 *     measure,   unit, Small, Medium, Large
 *     Bust,      cm,   81-86, 91-96,  101-106
 *     Upper arm, cm,   26,    28,     30.5
 *     Head,      in,   21,    21 1/2,
 *
 * Without a `unit` column each number brings its unit; an empty cell or `none` is a size without the measure. Where cells
 * are parted by semicolons or tabs, a decimal may be written with a comma. Every slip is told of, each once.
 */
export function readOwnTable(text: string): OwnTable {
  const { rows, separator, open } = readCells(text)
  if (open !== null)
    return refused([slip(open, 'A quote is opened here and never closed', 'Close it on the same line.')])
  if (isTooLarge(rows))
    return refused([{ line: 1, column: 1, says: 'The table is too large for a body table', wayOut: null }])
  const [header, ...lines] = rows
  const heading = header === undefined ? null : readHeader(header)
  if (heading === null) {
    return refused([{ line: 1, column: 1, says: 'The table is empty', wayOut: `Write it like ${sample}.` }])
  }
  const reading: Reading = { ...heading, separator, slips: [...heading.slips] }
  // Where the sizes are in doubt, so is every cell below.
  if (reading.slips.length > 0) return refused(reading.slips)
  const measures = lines.flatMap((line) => readMeasure(line, reading))
  reading.slips.push(...measuresTwice(lines), ...nothingBelow(header, lines))
  return reading.slips.length > 0 ? refused(reading.slips) : { chart: chartOf(reading, measures), slips: [] }
}

function chartOf({ sizes }: Heading, measures: readonly ChartMeasure[]): BodyChart {
  return { sizes: sizes.map(({ text }) => text), wearers: sizes.map(() => null), measures }
}

/** More sizes and measures than any body has; the limits keep a file that is something else from taking long. */
const most = { lines: 500, cells: 100, characters: 40 }

function isTooLarge(rows: readonly (readonly Cell[])[]): boolean {
  return rows.length > most.lines || rows.some((cells) => withoutEmptyEnd(cells).length > most.cells)
}

interface Heading {
  /** Whether the second column gives units. */
  readonly hasUnits: boolean
  readonly sizes: readonly Cell[]
  readonly slips: readonly TableSlip[]
}

interface Reading extends Heading {
  readonly separator: Separator
  readonly slips: TableSlip[]
}

/** After so many slips, the rest is seldom read. */
const mostSlips = 20

function refused(slips: readonly TableSlip[]): OwnTable {
  return { chart: null, slips: slips.slice(0, mostSlips) }
}

function slip({ line, column }: Cell, says: string, wayOut: string | null = null): TableSlip {
  return { line, column, says, wayOut }
}

function readHeader(cells: readonly Cell[]): Heading | null {
  const [corner, second] = cells
  if (corner === undefined) return null
  const hasUnits = second?.text.toLowerCase() === 'unit'
  const sizes = withoutEmptyEnd(cells.slice(hasUnits ? 2 : 1))
  const slips = [...cornerSlips(corner), ...sizeSlips(corner, sizes)]
  return { hasUnits, sizes, slips }
}

function cornerSlips(corner: Cell): TableSlip[] {
  if (/^measures?$/i.test(corner.text)) return []
  const turned = /^sizes?$/i.test(corner.text)
  const wayOut = turned ? `Turn the table: measures down, sizes across, like ${sample}.` : `Write it like ${sample}.`
  return [slip(corner, 'The first row must start with `measure` and go on with the names of the sizes', wayOut)]
}

function sizeSlips(corner: Cell, sizes: readonly Cell[]): TableSlip[] {
  if (sizes.length === 0) return [slip(corner, 'The first row names no sizes', `Write it like ${sample}.`)]
  const nameless = sizes.filter(({ text }) => text === '').map((cell) => slip(cell, 'This size has no name'))
  return [...nameless, ...twice(sizes, 'The size')]
}

/** Spreadsheets leave empty cells at the end of a row. */
function withoutEmptyEnd(cells: readonly Cell[]): readonly Cell[] {
  return cells.slice(0, cells.findLastIndex(({ text }) => text !== '') + 1)
}

function twice(cells: readonly Cell[], what: string): TableSlip[] {
  const keys = cells.map(({ text }) => keyOf(text))
  return cells.flatMap((cell, index) =>
    cell.text !== '' && keys.indexOf(keys[index] ?? '') < index
      ? [slip(cell, `${what} \`${cell.text}\` stands twice`, 'Give each once.')]
      : [],
  )
}

function measuresTwice(lines: readonly (readonly Cell[])[]): TableSlip[] {
  const names = lines.flatMap(([name]) => (name === undefined ? [] : [name]))
  return twice(names, 'The measure')
}

function nothingBelow(header: readonly Cell[] | undefined, lines: readonly unknown[]): TableSlip[] {
  const [corner] = header ?? []
  if (corner === undefined || lines.length > 0) return []
  return [slip(corner, 'The table has sizes and no measures', `Add a line for each, like ${sample}.`)]
}

function readMeasure(cells: readonly Cell[], reading: Reading): ChartMeasure[] {
  const [name, second] = cells
  if (name === undefined) return []
  if (keyOf(name.text) === '') {
    reading.slips.push(slip(name, 'This line has no measure’s name'))
    return []
  }
  const unit = reading.hasUnits ? readUnit(second ?? name, reading) : null
  const values = cells.slice(reading.hasUnits ? 2 : 1)
  if (!fits(name, values, reading) || unit === 'unknown') return []
  const spans = reading.sizes.map((_, index) => readSpan(values[index], unit, reading))
  return [{ key: keyOf(name.text), label: name.text, spans }]
}

function fits(name: Cell, values: readonly Cell[], { sizes, slips }: Reading): boolean {
  const extra = withoutEmptyEnd(values)[sizes.length]
  if (extra === undefined) return true
  const wayOut = 'A decimal comma parts cells: write `86.5`, or put the cell in quotes.'
  slips.push(slip(extra, `\`${name.text}\` has more values than there are sizes`, wayOut))
  return false
}

function readUnit(cell: Cell, { slips }: Reading): LengthUnit | null | 'unknown' {
  if (cell.text === '') return null
  if (isUnit(cell.text) && isLengthUnit(cell.text)) return cell.text
  slips.push(slip(cell, `\`${cell.text}\` is not a unit of length`, 'Write `cm` or `in`.'))
  return 'unknown'
}

const bothEnds = /^(.+?)\s*(?:[-–—]|\bto\b)\s*(.+)$/

/** Null for a size without the measure, and for a cell that cannot be read, which is told of. */
function readSpan(cell: Cell | undefined, unit: LengthUnit | null, { separator, slips }: Reading): Ends | null {
  if (cell === undefined || /^(?:|none|[-–—])$/i.test(cell.text)) return null
  const text = cell.text.slice(0, most.characters)
  const [, numbers = '', ownUnit = ''] = /^(.*?)\s*([a-z]*)$/i.exec(text) ?? []
  const own = ownUnit === '' ? unit : isUnit(ownUnit) && isLengthUnit(ownUnit) ? ownUnit : null
  const [, from = numbers, to = numbers] = bothEnds.exec(numbers) ?? []
  const [low, high] = [from, to].map((end) => readNumber(separator === ',' ? end : end.replace(',', '.')))
  const problem = problemOf(cell, own, low ?? null, high ?? null, ownUnit)
  if (problem !== null) slips.push(problem)
  if (problem !== null || own === null || !low || !high) return null
  return { low: toBase(low, own), high: toBase(high, own) }
}

function problemOf(
  cell: Cell,
  unit: LengthUnit | null,
  low: Fraction | null,
  high: Fraction | null,
  ownUnit: string,
): TableSlip | null {
  const written = `\`${cell.text}\``
  if (low === null || high === null) {
    return slip(cell, `${written} is not a measure`, 'Write a number such as `86`, `33 1/2`, or from and to: `81-86`.')
  }
  if (unit === null && ownUnit !== '') {
    return slip(cell, `\`${ownUnit}\` is not a unit of length`, 'Write `cm` or `in`.')
  }
  if (unit === null)
    return slip(cell, `${written} has no unit`, 'Add a column `unit` after `measure`, or write `86 cm`.')
  if (!isPositive(low)) return slip(cell, `${written} must be above zero`)
  return low.gt(high) ? slip(cell, `${written} goes from the larger to the smaller`, 'Write the smaller first.') : null
}
