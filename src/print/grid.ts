import type { Composer, Frame, Strips } from './composer.ts'
import type { Line, Run } from './line.ts'
import { breakLines, measureRuns } from './line.ts'
import type { Pen } from './pen.ts'
import type { Strip } from './strip.ts'
import { drawLine, together } from './strip.ts'
import { colours, leading } from './style.ts'
import type { Tag } from './tag.ts'
import { tag } from './tag.ts'

export interface Cell {
  readonly runs: readonly Run[]
  readonly align: 'left' | 'right' | 'center'
  /** What the cell is a header of; null for a plain one. */
  readonly heads: 'Row' | 'Column' | null
}

/** A table's cells by row; the first row is its header. Short rows are filled up. */
export type Grid = readonly (readonly Cell[])[]

/** Space between columns; less of it, and smaller letters, where the longest words would not fit otherwise. */
const columnSpace = { roomy: 16, tight: 6 }
const tightSize = 7.5
const rowSpace = 4
/** A row of more lines than this may be cut at the foot of a page. */
const mostLines = 24

/** A table from the frame's text edge, or from its start where it is too wide for that. */
export function setGrid(wanted: Grid, composer: Composer): Strips {
  const { start, end } = composer.frame
  const fits = gridWidths(wanted, composer).least <= end - start
  const grid = fits ? wanted : wanted.map((cells) => cells.map(tighten))
  const columns = columnsOf(grid, composer, fits ? columnSpace.roomy : columnSpace.tight)
  const table = tag('Table', composer.parent)
  const [header = [], ...rows] = grid.map((cells) => setGridRow(cells, columns, { ...composer, parent: table }))
  const head = header.map((strip) => ({ ...strip, keep: true }))
  const body = rows.flatMap((strips) => strips.map((strip) => ({ ...strip, repeats: head })))
  return [...head, ...body].map((strip, index) => (index === 0 ? { ...strip, gap: 8 } : strip))
}

function tighten(cell: Cell): Cell {
  return { ...cell, runs: cell.runs.map(({ text, style }) => ({ text, style: { ...style, size: tightSize } })) }
}

interface Column {
  readonly x: number
  readonly width: number
}

/** Widths that a table needs: whole lines, or at least its longest words; points, column spaces included. */
export function gridWidths(grid: Grid, composer: Composer): { readonly whole: number; readonly least: number } {
  const needs = columnNeeds(grid, composer)
  const spaces = columnSpace.roomy * (needs.length - 1)
  return { whole: sum(needs.map((need) => need.whole)) + spaces, least: sum(needs.map((need) => need.word)) + spaces }
}

interface Need {
  readonly whole: number
  readonly word: number
}

function columnNeeds(grid: Grid, composer: Composer): readonly Need[] {
  const count = Math.max(...grid.map((cells) => cells.length))
  return Array.from({ length: count }, (_, column) => {
    const needs = grid.map((cells) => measureRuns(composer, cells[column]?.runs ?? []))
    return { whole: Math.max(...needs.map((need) => need.whole)), word: Math.max(...needs.map((need) => need.word)) }
  })
}

function columnsOf(grid: Grid, composer: Composer, space: number): readonly Column[] {
  const needs = columnNeeds(grid, composer)
  const { start, text, end } = composer.frame
  const spaces = space * (needs.length - 1)
  const left = sum(needs.map((need) => need.whole)) + spaces <= end - text ? text : start
  const widths = shareWidth(needs, end - left - spaces)
  let x = left
  return widths.map((width) => {
    const column = { x, width }
    x += width + space
    return column
  })
}

/** Whole lines where they fit; else every column its longest word and a share of what is left; else a share of all. */
function shareWidth(needs: readonly Need[], room: number): readonly number[] {
  const whole = sum(needs.map((need) => need.whole))
  const words = sum(needs.map((need) => need.word))
  if (whole <= room) return needs.map((need) => need.whole)
  if (words >= room) return needs.map((need) => Math.max(12, (room * need.word) / words))
  return needs.map((need) => need.word + ((room - words) * (need.whole - need.word)) / (whole - words))
}

interface GridLine {
  readonly line: Line
  readonly index: number
  readonly cell: Tag
  readonly column: Column
  readonly align: Cell['align']
}

/** A row as one strip; as one for each line where it is very tall. */
function setGridRow(cells: readonly Cell[], columns: readonly Column[], composer: Composer): Strips {
  const row = tag('TR', composer.parent)
  const set = columns.map((column, index) => setCell(cells[index], column, row, composer))
  const height = Math.max(1, ...set.map((lines) => lines.length))
  const lines = set.flat()
  const header = cells.some((cell) => cell.heads === 'Column')
  const announce = (pen: Pen): void => pen.announce([row, ...set.flatMap((lines) => lines[0]?.cell ?? [])])
  if (height <= mostLines) return [gridStrip(lines, 0, height, columns, header, announce)]
  const parts = Array.from({ length: height }, (_, line) => {
    const here = lines.filter((entry) => entry.index === line)
    return gridStrip(here, line, 1, columns, header && line === height - 1, announce)
  })
  return together(parts)
}

function setCell(cell: Cell | undefined, column: Column, row: Tag, composer: Composer): readonly GridLine[] {
  const heads = cell?.heads ?? null
  const structure = heads === null ? tag('TD', row) : tag('TH', row, { scope: heads })
  const lines = breakLines(composer, cell?.runs ?? [], column.width)
  return lines.map((line, index) => ({ line, index, cell: structure, column, align: cell?.align ?? 'left' }))
}

function gridStrip(
  lines: readonly GridLine[],
  from: number,
  count: number,
  columns: readonly Column[],
  header: boolean,
  announce: (pen: Pen) => void,
): Strip {
  const height = count * leading.small + 2 * rowSpace
  const { start, end } = extent(columns)
  return {
    height,
    gap: 0,
    keep: false,
    draw: (pen, top) => {
      announce(pen)
      for (const { line, index, cell, column, align } of lines) {
        const setting = { tag: cell, x: column.x, width: column.width, leading: leading.small, align }
        drawLine(pen, line, setting, top + rowSpace + (index - from) * leading.small)
      }
      pen.rule(start, top + height, end, top + height, header ? colours.ink : colours.hairline, header ? 0.75 : 0.4)
    },
  }
}

function extent(columns: readonly Column[]): Pick<Frame, 'start' | 'end'> {
  const last = columns.at(-1)
  return { start: columns[0]?.x ?? 0, end: (last?.x ?? 0) + (last?.width ?? 0) }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0)
